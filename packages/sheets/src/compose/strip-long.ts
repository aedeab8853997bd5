import type { Piece } from "@baywright/setout";
import { checkBarItems } from "../paper/check-bar.ts";
import type { Item, PaperSize } from "../paper/drawing.ts";
import { layoutOfSize, MARGIN } from "../paper/frame.ts";
import { at, heightOf } from "../paper/place.ts";
import { scaleName } from "../paper/scales.ts";
import { shifted } from "../paper/shifted.ts";
import { TITLE_HEIGHT, TITLE_WIDTH } from "../paper/title-block.ts";
import { type Entry, entries } from "../paper/words.ts";
import type { PageBody } from "./pages.ts";
import { pieceFacts } from "./piece-facts.ts";
import { CHECK_BAR, type SheetOf } from "./sheet-of.ts";
import { haveRoom, type RowLook, SIDE, stripRow, stripRows } from "./strip-rows.ts";

/** Heights of rolls and of folded strips, mm: the short sides of A4, A3 and A2. */
const HEIGHTS = [210, 297, 420];

/** A page of a PDF may be 14 400 points long (5080 mm). Source: ISO 32000-1, annex C.2. So much of it is left for the strip, mm. */
const LONGEST = 4900;

/** Scales for one long page, the smallest first: a larger one only where the figures need it. */
const LONG_SCALES = [5, 2, 1];

/** Round the frame: the filing edge and the other edge, mm. */
const FRAME = 30;
/** Room for what is said of the piece, mm wide. */
const FACTS = 150;

/** Each piece on one page as long as it needs: to scale, or at true size for a roll of paper. */
export function longPages(of: SheetOf, paper: "long" | "roll"): PageBody[] {
	return of.plan.pieces.flatMap((piece) => (paper === "roll" ? rollPages(of, piece) : [longPage(of, piece)]));
}

function longPage(of: SheetOf, piece: Piece): PageBody {
	const widthAt = (scale: number) => Math.max(piece.cutLength / scale + 2 * SIDE, TITLE_WIDTH - 2 * MARGIN);
	const rows = stripRows(piece, 1);
	const scale = LONG_SCALES.find((each) => widthAt(each) <= LONGEST && haveRoom(rows, widthAt(each))) ?? 5;
	const look = { perMm: 1 / scale, thick: 8, past: 0, width: widthAt(scale) };
	return pageOf(of, piece, 0, 1, look, { name: "long", scale: scaleName(scale), told: [] });
}

function rollPages(of: SheetOf, piece: Piece): PageBody[] {
	const across = CHECK_BAR / of.measured.across;
	const down = CHECK_BAR / of.measured.down;
	const count = Math.ceil((piece.cutLength * across) / LONGEST);
	const width = Math.max((piece.cutLength * across) / count + 2 * SIDE, TITLE_WIDTH - 2 * MARGIN);
	const told: Entry[] = [
		{
			sign: "none",
			lead: "Before anything is marked by it",
			text: `Print at 100 % (actual size). The bar must measure 100 mm and the strip from cut end to cut end ${of.fine(piece.cutLength)}, by a steel tape. A long print is easily some mm out: where it is, mark by the figures.`,
		},
	];
	return Array.from({ length: count }, (_, i) => {
		const look: RowLook = {
			perMm: across,
			thick: of.plan.system.profile.width * down,
			past: 7,
			width,
			goesOn: { before: "lay on the dashed line of the part before", after: "the next part goes on here" },
		};
		return pageOf(of, piece, i, count, look, { name: "roll", scale: "1:1", told });
	});
}

interface LongPaper {
	readonly name: string;
	readonly scale: string;
	/** Said besides what the piece is. */
	readonly told: readonly Entry[];
}

function pageOf(of: SheetOf, piece: Piece, part: number, parts: number, look: RowLook, paper: LongPaper): PageBody {
	const row = stripRows(piece, parts)[part];
	if (row === undefined) throw new Error("Broken invariant: a piece has as many rows as it is parted into.");
	const heading = parts === 1 ? `Piece ${piece.name}` : `Piece ${piece.name}, part ${part + 1} of ${parts}`;
	const width = look.width + 2 * MARGIN;
	const facts = entries(pieceFacts(of, piece), { heading })(Math.min(FACTS, look.width), Infinity);
	const strip = stripRow(of, piece, row, look);
	const told = paper.told.length === 0 ? null : entries(paper.told)(FACTS, Infinity);
	const tall =
		(facts?.height ?? 0) + APART + strip.height + (told === null ? 0 : APART + told.height + BAR) + 2 * MARGIN;
	const needed = tall + TITLE_HEIGHT + 20;
	const size: PaperSize = { width: width + FRAME, height: HEIGHTS.find((each) => each >= needed) ?? needed };
	const { above } = layoutOfSize(size);
	const [left, top] = [above.left + MARGIN, above.top + MARGIN];
	// What is to spare goes half above the strip, half below.
	const spare = Math.max(0, heightOf(above) - tall) / 2;
	const stripTop = top + (facts?.height ?? 0) + APART + spare;
	const foot = stripTop + strip.height + APART;
	const items: Item[] = [
		...(facts?.items ?? []).map((item) => shifted(item, left, top)),
		...strip.items.map((item) => shifted(item, left, stripTop)),
		...(told === null
			? []
			: [
					...checkBarItems({ from: at(left + SIDE, foot + 5), way: "across", length: CHECK_BAR, by: look.perMm }),
					...told.items.map((item) => shifted(item, left, foot + BAR)),
				]),
	];
	return { items, scale: paper.scale, on: { size, name: paper.name } };
}

const APART = 6;
/** Room for the check bar, mm. */
const BAR = 11;
