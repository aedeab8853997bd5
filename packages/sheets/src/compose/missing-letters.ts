import { shape } from "../lettering/shape.ts";
import type { Sheet } from "../paper/drawing.ts";

/** Letters of a job's own words that the sheets' font lacks, each once: they are drawn as empty boxes, and that must be told. */
export function missingLetters(sheets: readonly Sheet[]): string[] {
	const missing = new Set<string>();
	for (const { pages } of sheets)
		for (const { items } of pages)
			for (const item of items)
				if (item.kind === "text") for (const letter of shape(item.text, item.bold).missing) missing.add(letter);
	return [...missing];
}
