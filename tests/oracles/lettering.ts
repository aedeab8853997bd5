import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "@baywright/sheets";

// Where the letters of a page lie, by the font's own files, and whether any of them meet. Shares no code with the sheets.

const require = createRequire(import.meta.url);
const { create } = createRequire(createRequire(require.resolve("@baywright/sheets")).resolve("pdfkit"))("fontkit");

interface Font {
	readonly hasGlyphForCodePoint: (code: number) => boolean;
	readonly glyphForCodePoint: (code: number) => { readonly advanceWidth: number };
}

const fontsOf = (weight: number): readonly Font[] =>
	["latin", "latin-ext", "greek", "cyrillic"].map((subset) =>
		create(readFileSync(require.resolve(`@fontsource/noto-sans/files/noto-sans-${subset}-${weight}-normal.woff2`))),
	);

const fonts = { bold: fontsOf(700), regular: fontsOf(400) };
const widths = { bold: new Map<string, number | null>(), regular: new Map<string, number | null>() };

/** Width of a letter in thousandths of the em; null where the font has none. */
export function letterWidth(letter: string, bold: boolean): number | null {
	const weight = bold ? "bold" : "regular";
	let width = widths[weight].get(letter);
	if (width === undefined) {
		const code = letter.codePointAt(0) as number;
		const font = fonts[weight].find((each) => each.hasGlyphForCodePoint(code));
		width = font === undefined ? null : font.glyphForCodePoint(code).advanceWidth;
		widths[weight].set(letter, width);
	}
	return width;
}

/** Of signs that are put together. */
const USUAL_SIGN = 830;

type Place = readonly [x: number, y: number];

/** A line of letters on the page: what it says and the outline of its letters, mm, y down. */
interface TextShape {
	readonly text: string;
	readonly corners: readonly Place[];
}

/** From the foot of `y` to the head of `b`, as parts of the em by the font's own outlines (−0.24 and 0.77). */
const FOOT = 0.23;
const HEAD = 0.76;

function textShapes({ items }: Pick<Page, "items">): TextShape[] {
	return items.flatMap((item) => {
		if (item.kind !== "text" || item.text === "") return [];
		const { at, text, height, bold, align, turn } = item;
		const em = height / 0.714;
		const width = [...text].reduce((sum, letter) => sum + (letterWidth(letter, bold) ?? USUAL_SIGN), 0) * (em / 1000);
		const left = { left: 0, centre: -width / 2, right: -width }[align];
		const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
		const corner = (x: number, y: number): Place => [at.x + x * cos - y * sin, at.y - x * sin - y * cos];
		return [
			{
				text,
				corners: [
					corner(left, -FOOT * em),
					corner(left + width, -FOOT * em),
					corner(left + width, HEAD * em),
					corner(left, HEAD * em),
				],
			},
		];
	});
}

/** Pairs of texts whose letters meet. */
export function meetings(page: Pick<Page, "items">): string[] {
	const shapes = textShapes(page);
	return shapes.flatMap((a, i) =>
		shapes.slice(i + 1).flatMap((b) => (meet(a.corners, b.corners) ? [`"${a.text}" on "${b.text}"`] : [])),
	);
}

/** By the edges' normals: two convex outlines are apart if any of them parts the two. */
function meet(a: readonly Place[], b: readonly Place[]): boolean {
	for (const outline of [a, b]) {
		for (let i = 0; i < outline.length; i++) {
			const [x, y] = outline[i] as Place;
			const [u, v] = outline[(i + 1) % outline.length] as Place;
			const over = (points: readonly Place[]) => points.map(([p, q]) => (p - x) * (v - y) - (q - y) * (u - x));
			const [own, other] = [over(a), over(b)];
			const slack = 1e-3 * Math.hypot(u - x, v - y);
			if (Math.max(...own) <= Math.min(...other) + slack || Math.max(...other) <= Math.min(...own) + slack)
				return false;
		}
	}
	return true;
}

/** Texts that a straight line goes through. */
export const struckThrough = (
	items: Pick<Page, "items">,
	lines: readonly (readonly [{ readonly x: number; readonly y: number }, { readonly x: number; readonly y: number }])[],
): string[] =>
	textShapes(items).flatMap(({ text, corners }) =>
		lines.some(([a, b]) =>
			meet(corners, [
				[a.x, a.y],
				[b.x, b.y],
			]),
		)
			? [`"${text}"`]
			: [],
	);

/** Texts that reach out of the frame. */
export function outside({ items, inside }: Pick<Page, "items" | "inside">): string[] {
	const { left, top, right, bottom } = inside;
	const slack = 0.05;
	return textShapes({ items }).flatMap(({ text, corners }) =>
		corners.every(([x, y]) => x > left - slack && x < right + slack && y > top - slack && y < bottom + slack)
			? []
			: [`"${text}"`],
	);
}
