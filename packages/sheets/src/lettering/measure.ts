import { CAPITAL, shape } from "./shape.ts";

/** Heights of capitals, mm. Source: ISO 3098-1, the nominal sizes 1.8, 2.5, 3.5, 5, 7 and 10. */
export const SIZES = { small: 1.8, usual: 2.5, heading: 3.5, title: 5, figure: 7 } as const;

/** Length of a line of lettering with capitals `height` mm high, mm. */
export const textWidth = (text: string, height: number, bold = false): number =>
	(shape(text, bold).width * height) / CAPITAL;

/** Baseline to baseline for capitals `height` mm high, mm. Source: ISO 3098-1, type B, 1.4 to 1.9 times the height with accents. */
export const LEADING = 1.75;

/** Lines of a text that are at most `width` mm long, broken at spaces; a word that is longer is broken where it must be. */
export function wrapped(text: string, width: number, height: number, bold = false): string[] {
	const lines: string[] = [];
	let row = "";
	for (const word of text.split(/[ \t\n]+/).filter((each) => each !== "")) {
		const longer = row === "" ? word : `${row} ${word}`;
		if (textWidth(longer, height, bold) <= width) {
			row = longer;
			continue;
		}
		if (row !== "") lines.push(row);
		row = word;
		while (textWidth(row, height, bold) > width && [...row].length > 1) {
			const letters = [...row];
			let kept = letters.length - 1;
			while (kept > 1 && textWidth(letters.slice(0, kept).join(""), height, bold) > width) kept--;
			lines.push(letters.slice(0, kept).join(""));
			row = letters.slice(kept).join("");
		}
	}
	return row === "" ? lines : [...lines, row];
}

/** A text in which the number of a corner never stands alone on a line. */
export const together = (text: string): string => text.replace(/(?<=\bcorners?) (?=\d)/g, "\u00a0");

/** A text that ends in … where it would be longer than `width` mm. */
export function shortened(text: string, width: number, height: number, bold = false): string {
	if (textWidth(text, height, bold) <= width) return text;
	const letters = [...text];
	while (letters.length > 0 && textWidth(`${letters.join("").trimEnd()}…`, height, bold) > width) letters.pop();
	return `${letters.join("").trimEnd()}…`;
}
