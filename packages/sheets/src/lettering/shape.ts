import { BOLD_WIDTHS, REGULAR_WIDTHS } from "../fonts/widths.ts";
import { type SignStroke, signFor, UNKNOWN } from "./signs.ts";

/** Height of a capital in parts of the em. Source: the font's own capHeight, 714 of 1000. */
export const CAPITAL = 0.714;

/** How far letters reach over and under the baseline, in parts of the em: `b`, `(` and `g`, `,`. Capitals with accents reach further. */
export const REACH_UP = 0.78;
export const REACH_DOWN = 0.24;

/** Letters of one part of the font, in a row. Measures in parts of the em, y up from the baseline. */
export interface LetterRun {
	/** Index into SUBSETS. */
	readonly subset: number;
	readonly text: string;
	readonly x: number;
	readonly y: number;
	readonly size: number;
}

/** A line of lettering, ready to be drawn: no writer lays out letters itself, so that all give the very same boxes. */
export interface Shaped {
	/** In parts of the em. */
	readonly width: number;
	readonly runs: readonly LetterRun[];
	readonly strokes: readonly SignStroke[];
	/** Characters that no font here has, each once: they are drawn as an empty box. */
	readonly missing: readonly string[];
}

/** What was shaped before: the same words come again and again. */
const shaped = [new Map<string, Shaped>(), new Map<string, Shaped>()] as const;
const MOST_KEPT = 5000;

/** Letters are set by their own widths, without kerning: figures stand under one another. */
export function shape(text: string, bold: boolean): Shaped {
	const kept = shaped[bold ? 1 : 0];
	let own = kept.get(text);
	if (own === undefined) {
		own = shapeAnew(text, bold);
		if (kept.size >= MOST_KEPT) kept.clear();
		kept.set(text, own);
	}
	return own;
}

function shapeAnew(text: string, bold: boolean): Shaped {
	const runs: RunSoFar[] = [];
	const strokes: SignStroke[] = [];
	const missing = new Set<string>();
	let x = 0;
	const letter = (character: string, left: number, y: number, size: number): boolean => {
		const found = findLetter(character, bold);
		if (found === undefined) return false;
		const before = runs.at(-1);
		if (before?.subset === found.subset && before.size === size && before.y === y && endOf(before) === left) {
			before.text += character;
			before.thousandths += found.width;
		} else runs.push({ subset: found.subset, text: character, x: left, y, size, thousandths: found.width });
		return true;
	};
	for (const character of plainSpaces(text)) {
		if (letter(character, x, 0, 1)) {
			x = endOf(runs.at(-1) as RunSoFar);
			continue;
		}
		const sign = signFor(character, bold ? 0.1 : 0.065) ?? UNKNOWN;
		if (sign === UNKNOWN) missing.add(character);
		for (const part of sign.letters) letter(part.text, x + part.x, part.y, part.size);
		for (const { width, points } of sign.strokes)
			strokes.push({ width, points: points.map(([right, up]) => [x + right, up] as const) });
		x += sign.advance;
	}
	return { width: x, runs: runs.map(({ thousandths, ...run }) => run), strokes, missing: [...missing] };
}

/** A run that letters are still added to, and the sum of their widths. */
interface RunSoFar extends LetterRun {
	text: string;
	thousandths: number;
}

/** Where the letters of a run end: reckoned from its start by the whole sum, so that a run's width is what a writer draws. */
const endOf = ({ x, size, thousandths }: RunSoFar): number => x + (thousandths / 1000) * size;

/** Tabs and breaks have no letter; they are spaces on a line. */
const plainSpaces = (text: string): string => text.replace(/[\t\n\r\v\f\u2028\u2029]+/g, " ").normalize("NFC");

interface Letter {
	readonly subset: number;
	/** In thousandths of the em. */
	readonly width: number;
}

const known = new Map<boolean, ReadonlyMap<number, Letter>>();

function findLetter(character: string, bold: boolean): Letter | undefined {
	let letters = known.get(bold);
	if (letters === undefined) {
		letters = lettersOf(bold ? BOLD_WIDTHS : REGULAR_WIDTHS);
		known.set(bold, letters);
	}
	return letters.get(character.codePointAt(0) as number);
}

function lettersOf(subsets: readonly string[]): Map<number, Letter> {
	const letters = new Map<number, Letter>();
	subsets.forEach((runs, subset) => {
		for (const run of runs.split(";")) {
			const [first = "", widths = ""] = run.split(" ");
			widths.split(",").forEach((width, i) => {
				const code = Number.parseInt(first, 16) + i;
				if (!letters.has(code)) letters.set(code, { subset, width: Number(width) });
			});
		}
	});
	return letters;
}
