import { csvField, csvText } from "@baywright/setout";
import type { TableData } from "../paper/table.ts";

const NUMBER = /^-?\d+(?:[.,]\d+)?$/;

/** A table as CSV (RFC 4180), its headings first, without boxes to tick. What a spreadsheet would take for a formula is written so that it stays text. */
export function writeCsv({ columns, rows }: TableData): string {
	const headings = columns.map(({ heading }) => heading.replace(/\s+/g, " "));
	return [headings, ...rows]
		.map(
			(cells) =>
				`${cells
					.filter((_, i) => columns[i]?.of !== "tick")
					.map(safeField)
					.join(",")}\r\n`,
		)
		.join("");
}

/** What keeps words together on paper is a plain space here. */
const safeField = (text: string): string => {
	const words = text.replaceAll("\u00a0", " ");
	return csvField(NUMBER.test(words) ? words : csvText(words));
};
