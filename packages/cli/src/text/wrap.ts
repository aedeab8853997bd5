/** Columns that everything for people keeps within. */
export const PAGE = 100;

/** Columns that a text takes in a terminal: none for a mark upon a letter, two for a full-width sign. */
export function columnsOf(text: string): number {
	let columns = 0;
	for (const sign of text) columns += NO_COLUMN.test(sign) ? 0 : TWO_COLUMNS.test(sign) ? 2 : 1;
	return columns;
}

const NO_COLUMN = /\p{Mn}|\p{Me}/u;
const TWO_COLUMNS =
	/\p{Script=Han}|\p{Script=Hangul}|\p{Script=Hiragana}|\p{Script=Katakana}|\p{Emoji_Presentation}|[\u3000-\u303F\uFF01-\uFF60]/u;

/** Lines of at most `width` columns with `indent` before each; a word longer than a line is broken. */
export function wrap(text: string, { width = PAGE, indent = "" } = {}): string[] {
	const room = Math.max(1, width - columnsOf(indent));
	const lines: string[] = [];
	let line = "";
	for (const word of text.split(BREAK).flatMap((each) => broken(each, room))) {
		const longer = line === "" ? word : `${line} ${word}`;
		if (columnsOf(longer) <= room) {
			line = longer;
			continue;
		}
		lines.push(line);
		line = word;
	}
	return [...lines, line].map((each) => indent + each);
}

/** A figure stays with its unit, a whole number with its fraction. */
const BREAK = / (?!(?:mm|cm)\b|\d+\/\d)/;

function broken(word: string, room: number): string[] {
	if (columnsOf(word) <= room) return [word];
	const parts: string[] = [];
	let part = "";
	for (const sign of word) {
		if (part !== "" && columnsOf(part + sign) > room) {
			parts.push(part);
			part = "";
		}
		part += sign;
	}
	return [...parts, part];
}
