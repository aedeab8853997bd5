import type { Piece } from "@baywright/setout";
import type { Figure, Item, Sheet } from "../paper/drawing.ts";
import { type Block, flow, whole } from "../paper/flow.ts";
import { layoutOn, wideColumn } from "../paper/frame.ts";
import { heightOf, widthOf } from "../paper/place.ts";
import { SCALES, scaleName } from "../paper/scales.ts";
import { tableSideBySide } from "../paper/side-by-side.ts";
import { table } from "../paper/table.ts";
import { entries } from "../paper/words.ts";
import { markTable } from "./fitting-tables.ts";
import { type PageBody, pagesOf } from "./pages.ts";
import { pieceFacts } from "./piece-facts.ts";
import type { SheetOf } from "./sheet-of.ts";
import { longPages } from "./strip-long.ts";
import { haveRoom, type RowLook, SIDE, type StripRow, stripRow, stripRows } from "./strip-rows.ts";

/** No more rows than this of one piece on a sheet. */
const MOST_ROWS = 3;
/** How a strip is drawn to scale, mm of the paper. */
const THICK = 6;
/** Between the blocks of a page, mm. */
const APART = 6;

/** Every piece of track laid flat, with every mark read from its own cut ends; null where there is nothing to cut. */
export function stripSheet(of: SheetOf): Sheet | null {
	const { plan, strips } = of;
	if (plan.pieces.length === 0) return null;
	const bodies = strips === "sheets" ? plan.pieces.flatMap((piece) => piecePages(of, piece)) : longPages(of, strips);
	return {
		name: "strips",
		bay: plan.id,
		title: "Strip sheet",
		pages: pagesOf(of, { kind: strips === "roll" ? "Strips, true size" : "Strip sheet", mark: "S" }, bodies),
		figures: plan.pieces.map((piece) => pieceFigure(of, piece)),
		tables: plan.pieces.map((piece) => markTable(of, piece)),
		trueSize: strips === "roll",
	};
}

/** A piece to scale, and its marks once more to be ticked off. */
function piecePages(of: SheetOf, piece: Piece): PageBody[] {
	const column = wideColumn(layoutOn(of.paper));
	const width = widthOf(column);
	const about = entries(pieceFacts(of, piece), { heading: `Piece ${piece.name}` });
	const marks = tickBlock(of, piece);
	const besides = (about(width, Infinity)?.height ?? 0) + (marks(width, Infinity)?.height ?? 0) + APART;
	const { rows, scale } = rowsFor(of, piece, width, heightOf(column) - besides);
	const drawn = rows.map((row): Block => {
		const { items, height } = stripRow(of, piece, row, lookAt(scale, width));
		return whole(height, () => items);
	});
	return flow([about, ...drawn, marks], [column]).map((items: Item[], i) => ({
		items,
		scale: i === 0 ? scaleName(scale) : "–",
	}));
}

const lookAt = (scale: number, width: number): RowLook => ({ perMm: 1 / scale, thick: THICK, past: 0, width });

/** Rows shorter than this part of the column look lost. */
const FULL = 0.6;

/** The largest scale at which the rows fill their column and stand on one sheet with their table; else the largest that takes few enough rows. */
function rowsFor(of: SheetOf, piece: Piece, width: number, room: number): { rows: StripRow[]; scale: number } {
	const long = width - 2 * SIDE;
	const choices = SCALES.filter((scale) => scale >= 5).map((scale) => {
		let count = Math.ceil(piece.cutLength / scale / long);
		let rows = stripRows(piece, count);
		while (!haveRoom(rows, width) && count <= piece.marks.length) rows = stripRows(piece, ++count);
		const height = rows.reduce((sum, row) => sum + APART + stripRow(of, piece, row, lookAt(scale, width)).height, 0);
		return { rows, scale, height, isFull: piece.cutLength / scale / count >= FULL * long };
	});
	const few = choices.filter(({ rows }) => rows.length <= MOST_ROWS);
	const fitting = few.filter(({ height }) => height <= room);
	const best = fitting.find(({ isFull }) => isFull) ?? fitting[0] ?? few[0] ?? choices.at(-1);
	if (best === undefined) throw new Error("Broken invariant: there is a scale at which a piece is drawn.");
	return best;
}

/** A list of marks is read more easily where it is no wider than this, mm. */
const LIST = 80;

function tickBlock(of: SheetOf, piece: Piece): Block {
	const { columns, rows, ...rest } = markTable(of, piece);
	const ticked = {
		...rest,
		title: "To tick off",
		columns: [
			{ heading: "", of: "tick" } as const,
			...columns.map(({ heading, of: kind }) => ({
				heading: heading.replace(" cut end", "\ncut end"),
				of: kind,
				bold: kind === "figures",
			})),
		],
		rows: rows.map((cells) => ["", ...cells]),
	};
	const beside = tableSideBySide(ticked, LIST);
	// A list longer than a sheet runs down it as any other table.
	return (width, room) => {
		const high = beside(width, Infinity)?.height ?? 0;
		return high > heightOf(wideColumn(layoutOn(of.paper))) ? table(ticked)(width, room) : beside(width, room);
	};
}

/** The strip in one row at true size, for other programs. */
function pieceFigure(of: SheetOf, piece: Piece): Figure {
	const [row] = stripRows(piece, 1);
	const width = piece.cutLength + 2 * SIDE;
	const { width: thick } = of.plan.system.profile;
	const { items } = stripRow(of, piece, row as StripRow, { perMm: 1, thick, past: 0, width });
	return { name: `piece-${piece.name.toLowerCase()}`, scale: 1, items };
}
