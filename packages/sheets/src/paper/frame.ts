import type { Item, PaperSize } from "./drawing.ts";
import { line, rectangle } from "./marks.ts";
import { PAPERS, type PaperName } from "./papers.ts";
import { at, type Box, boxAt, heightOf, middleOf } from "./place.ts";
import { TITLE_HEIGHT, TITLE_WIDTH } from "./title-block.ts";

/** From the edges of the paper to the frame, mm. Source: ISO 5457:1999, 20 on the filing edge and 10 elsewhere. */
const FILING_EDGE = 20;
const OTHER_EDGES = 10;

/** A centring mark reaches this far into the drawing, mm. Source: ISO 5457:1999, a line 0.7 wide from the edge of the grid to 5 inside the frame. */
const CENTRING = 5;

/** Between two columns of a sheet that is wide enough for them, and between what lies in the frame and the frame, mm. */
const GUTTER = 8;
export const MARGIN = 4;

/** Where things go on a sheet of paper. All boxes in mm of the paper. */
export interface SheetLayout {
	readonly size: PaperSize;
	/** Within the frame line. */
	readonly inside: Box;
	readonly title: Box;
	/** All of the width above the title block. */
	readonly above: Box;
	/** Text and tables run down these one after the other. */
	readonly columns: readonly Box[];
}

export const layoutOn = (paper: PaperName): SheetLayout => layoutOfSize(PAPERS[paper]);

export function layoutOfSize(size: PaperSize): SheetLayout {
	const inside = boxAt(FILING_EDGE, OTHER_EDGES, size.width - FILING_EDGE - OTHER_EDGES, size.height - 2 * OTHER_EDGES);
	const title = { ...inside, left: inside.right - TITLE_WIDTH, top: inside.bottom - TITLE_HEIGHT };
	const above = { ...inside, bottom: title.top };
	const isWide = inside.right - inside.left >= 2 * TITLE_WIDTH;
	const alone = { ...above, left: inside.left, right: inside.right };
	if (!isWide) return { size, inside, title, above, columns: [inset(alone)] };
	const count = Math.floor((inside.right - inside.left) / TITLE_WIDTH);
	const width = (inside.right - inside.left) / count;
	const columns = Array.from({ length: count }, (_, i) => {
		const last = i === count - 1;
		const left = inside.left + i * width + (i === 0 ? MARGIN : GUTTER / 2);
		const right = inside.left + (i + 1) * width - (last ? MARGIN : GUTTER / 2);
		const meetsTitle = inside.left + (i + 1) * width > title.left;
		return { left, right, top: inside.top + MARGIN, bottom: (meetsTitle ? title.top : inside.bottom) - MARGIN };
	});
	return { size, inside, title, above, columns };
}

/** A column as wide as the frame, above the title block. */
export const wideColumn = ({ above, inside }: SheetLayout): Box =>
	inset({ ...above, left: inside.left, right: inside.right });

const inset = ({ left, top, right, bottom }: Box): Box => ({
	left: left + MARGIN,
	top: top + MARGIN,
	right: right - MARGIN,
	bottom: bottom - MARGIN,
});

/** The frame line, and marks at the middle of each side by which copies are centred. */
export function frameItems({ inside, size }: SheetLayout): Item[] {
	const heavy = { pen: "heavy" } as const;
	const { x, y } = middleOf(inside);
	const reach = Math.min(CENTRING, heightOf(inside));
	return [
		rectangle("PAPER", inside, { stroke: heavy }),
		line("PAPER", at(x, inside.top - reach), at(x, inside.top), heavy),
		line("PAPER", at(x, inside.bottom), at(x, Math.min(inside.bottom + reach, size.height)), heavy),
		line("PAPER", at(inside.left - reach, y), at(inside.left, y), heavy),
		line("PAPER", at(inside.right, y), at(Math.min(inside.right + reach, size.width), y), heavy),
	];
}
