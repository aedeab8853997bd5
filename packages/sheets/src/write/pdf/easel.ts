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
	const name = `${bold ? "bold" : "regular"}-${subset}`;
	if (!fonts.has(name)) {
		const file = (bold ? BOLD_FILES : REGULAR_FILES)[subset];
		if (file === undefined) throw new Error(`Broken invariant: no font ${name}.`);
		document.registerFont(name, plainFont(file) as never);
		fonts.add(name);
	}
	document.font(name, size);
}
