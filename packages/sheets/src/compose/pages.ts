import type { Item, Page, PaperSize } from "../paper/drawing.ts";
import { frameItems, layoutOfSize, layoutOn } from "../paper/frame.ts";
import { titleBlockItems } from "../paper/title-block.ts";
import type { SheetOf } from "./sheet-of.ts";

export interface PageBody {
	readonly items: readonly Item[];
	/** `1:20`; a dash where nothing is drawn to scale. */
	readonly scale: string;
	/** Paper of its own, and what it is called; left out, the sheet's. */
	readonly on?: { readonly size: PaperSize; readonly name: string };
}

export interface SheetTitle {
	/** Kind of document: `Bend template`. */
	readonly kind: string;
	/** What its number ends in: `B`. */
	readonly mark: string;
}

/** Frames and numbers the pages of a sheet. */
export function pagesOf(of: SheetOf, { kind, mark }: SheetTitle, bodies: readonly PageBody[]): Page[] {
	const { job, bay, paper, date, unit } = of;
	return bodies.map(({ items, scale, on }, i) => {
		const layout = on === undefined ? layoutOn(paper) : layoutOfSize(on.size);
		return {
			size: layout.size,
			label: `${mark}-${i + 1}`,
			inside: layout.inside,
			items: [
				...items,
				...frameItems(layout),
				...titleBlockItems(
					{
						owner: "",
						madeBy: "",
						approvedBy: "",
						title: job.title.trim() || "Untitled job",
						supplement: [job.site, bay.name || `Bay ${bay.id}`].filter((each) => each.trim() !== "").join(", "),
						kind,
						number: `${bay.id}-${mark}`,
						date,
						scale,
						paper: on?.name ?? paper,
						unit,
						sheet: i + 1,
						sheets: bodies.length,
					},
					layout.title,
				),
			],
		};
	});
}
