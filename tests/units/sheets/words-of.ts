import type { Sheet } from "@baywright/sheets";
import { expect } from "vitest";
import { meetings, outside } from "../../oracles/lettering.ts";

/** Every line of lettering of a sheet, page after page. */
export const linesOf = ({ pages }: Pick<Sheet, "pages">): string[] =>
	pages.flatMap(({ items }) => items.flatMap((item) => (item.kind === "text" ? [item.text] : [])));

/** The same as one text, lines parted by spaces, so that what is broken over lines is found too. */
export const wordsOf = (sheet: Pick<Sheet, "pages">): string => linesOf(sheet).join(" ");

/** No words on one another, none outside the frame. */
export function expectCalm(sheet: Sheet): void {
	sheet.pages.forEach((page, i) => {
		expect(meetings(page), `${sheet.name} ${i + 1}`).toEqual([]);
		expect(outside(page), `${sheet.name} ${i + 1}`).toEqual([]);
	});
}
