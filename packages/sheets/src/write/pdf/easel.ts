import { BOLD_FILES } from "../../fonts/bold.ts";
import { REGULAR_FILES } from "../../fonts/regular.ts";
import { plainFont } from "../font-file.ts";

/** Points for each mm. Source: ISO 32000-1, 8.3.2.3, 72 to the inch. */
export const POINTS = 72 / 25.4;

/** A document and the fonts that it has so far. */
export interface Easel {
	readonly document: PDFKit.PDFDocument;
	readonly fonts: Set<string>;
}

/** Takes a font in hand, `size` points large; it comes into the document where it is first used. */
export function takeFont({ document, fonts }: Easel, bold: boolean, subset: number, size: number): void {
	const name = nameOf(bold, subset);
	if (!fonts.has(name)) {
		document.registerFont(name, fontFor(bold, subset) as never);
		fonts.add(name);
	}
	document.font(name, size);
	keepRead(document, name);
}

/** The font as it was read for an earlier document, else its file: reading the letters took as long as drawing with them. */
export function fontFor(bold: boolean, subset: number): object {
	const name = nameOf(bold, subset);
	const file = (bold ? BOLD_FILES : REGULAR_FILES)[subset];
	if (file === undefined) throw new Error(`Broken invariant: no font ${name}.`);
	return read.get(name) ?? plainFont(file);
}

/** Fonts that a document has read. Each document takes its own letters out of them and changes nothing in them. */
const read = new Map<string, object>();

function keepRead(document: PDFKit.PDFDocument, name: string): void {
	if (read.has(name)) return;
	const { font } = (document as unknown as { _font: { font: object } })._font;
	read.set(name, font);
}

const nameOf = (bold: boolean, subset: number): string => `${bold ? "bold" : "regular"}-${subset}`;
