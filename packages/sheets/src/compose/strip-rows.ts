import type { BayPlan, Piece, Mark as StripMark } from "@baywright/setout";
import { SIZES, textWidth } from "../lettering/measure.ts";
import type { Mark } from "../paper/drawing.ts";
import { line, polygon, text } from "../paper/marks.ts";
import { at, type PaperPoint } from "../paper/place.ts";
import { spreadApart } from "../paper/spread.ts";
import type { SheetOf } from "./sheet-of.ts";
import { bentParts, markItems, markName, PITCH, SLANT } from "./strip-marks.ts";

/** A part of a piece that lies in one row on the paper. */
export interface StripRow {
	/** From the piece's left cut end, mm. */
	readonly from: number;
	readonly to: number;
	readonly marks: readonly StripMark[];
	readonly isFirst: boolean;
	readonly isLast: boolean;
}

/** How a row is put on the paper. */
export interface RowLook {
	/** mm of paper for each mm of track. */
	readonly perMm: number;
	/** How wide the strip is drawn, mm of the paper. */
	readonly thick: number;
	/** How far marks go on past the strip's edges, mm of the paper. */
	readonly past: number;
	/** All that there is from side to side, mm. */
	readonly width: number;
	/** Said where the strip goes on in another row or on another sheet. */
	readonly goesOn?: { readonly before: string; readonly after: string };
}

/** Left and right of the strip, mm. */
export const SIDE = 4;
/** The lines that say from where one reads, mm. */
const FROM = 5;
/** The cut ends stand out of the strip by so much, mm. */
const CUT = 2;

/** A piece in so many rows of one length. */
export function stripRows({ cutLength, marks }: Piece, count: number): StripRow[] {
	const long = cutLength / count;
	return Array.from({ length: count }, (_, i) => {
		const [from, to] = [i * long, (i + 1) * long];
		const [isFirst, isLast] = [i === 0, i === count - 1];
		const own = marks.filter(({ fromLeft }) => (fromLeft >= from || isFirst) && (fromLeft < to || isLast));
		return { from, to, marks: own, isFirst, isLast };
	});
}

/** Whether the figures of every row have room beside one another. */
export const haveRoom = (rows: readonly StripRow[], width: number, side = SIDE): boolean =>
	rows.every(({ marks }) => marks.length <= Math.floor((width - 2 * side) / PITCH));

/** A row of a strip to scale: above it what a tape reads from the piece's left cut end, below it from its right one. */
export function stripRow(
	{ plan, figure }: SheetOf,
	piece: Piece,
	row: StripRow,
	look: RowLook,
): { readonly items: readonly Mark[]; readonly height: number } {
	const { perMm, thick, past, width, goesOn } = look;
	const above = row.marks.map((mark) => `${markName(mark, plan)}   ${figure(mark.fromLeft)}`);
	const below = row.marks.map((mark) => figure(mark.fromRight));
	const longest = (texts: readonly string[]) => Math.max(...texts.map((each) => textWidth(each, SIZES.usual, true)), 8);
	const top = FROM + longest(above) + SLANT + past + 2;
	const bottom = top + thick;
	const height = bottom + past + SLANT + longest(below) + 2 + FROM;
	const along = (mm: number) => SIDE + (Math.min(Math.max(mm, row.from), row.to) - row.from) * perMm;
	const end = along(row.to);
	const places = row.marks.map(({ fromLeft }) => along(fromLeft));
	const figures = spreadApart(places, PITCH, SIDE + 1.5, width - SIDE - 1.5);
	const items = [
		...readFrom("left", piece, row.isFirst, at(SIDE, FROM - 2), width),
		...readFrom("right", piece, row.isLast, at(end, height - 1.2), width),
		...bentParts(piece, row, along, { top, bottom }),
		line("TRACK", at(SIDE, top), at(end, top), { pen: "wide" }),
		line("TRACK", at(SIDE, bottom), at(end, bottom), { pen: "wide" }),
		edge(SIDE, row.isFirst, top, bottom),
		edge(end, row.isLast, top, bottom),
		...(goesOn === undefined || row.isFirst ? [] : [goesOnItem(goesOn.before, "left", at(SIDE, height - 1.2))]),
		...(goesOn === undefined || row.isLast ? [] : [goesOnItem(goesOn.after, "right", at(end, FROM - 2))]),
		...row.marks.flatMap(({ kind }, i) =>
			markItems(kind, places[i] as number, figures[i] as number, [above[i] as string, below[i] as string], {
				top,
				bottom,
				past,
			}),
		),
	];
	return { items, height };
}

/** From which cut end the figures on this side are read: an arrow that runs as the tape does, from a stroke where that end is in this row. */
function readFrom(side: "left" | "right", { name }: Piece, isHere: boolean, from: PaperPoint, width: number): Mark[] {
	const isLeft = side === "left";
	const end = `the ${side} cut end of piece ${name}`;
	const words = `${isLeft ? "above" : "below"}: read from ${end}${isHere ? "" : ", which is not in this row"}`;
	const long = textWidth(words, SIZES.small, true) + 2;
	const way = isLeft ? 1 : -1;
	// A short row has no room for the words on the side to which its tape runs.
	const start = isLeft ? from.x : Math.max(from.x, Math.min(width, SIDE + ARROW + 2 + long));
	const tip = start + way * ARROW;
	const base = tip - way * HEAD;
	return [
		...(isHere ? [line("DIMENSIONS", at(start, from.y - 1.6), at(start, from.y + 1.6), { pen: "wide" })] : []),
		line("DIMENSIONS", at(start, from.y), at(tip, from.y), { pen: "narrow", ...(isHere ? {} : { dash: "dashed" }) }),
		polygon("DIMENSIONS", [at(tip, from.y), at(base, from.y - 0.7), at(base, from.y + 0.7)], { fill: "black" }),
		text(at(tip + way * 2, from.y + SIZES.small / 2), words, {
			height: SIZES.small,
			bold: true,
			align: isLeft ? "left" : "right",
		}),
	];
}

const HEAD = 3;
const ARROW = 12;

/** A cut end, or where the strip goes on elsewhere. */
const edge = (x: number, isCut: boolean, top: number, bottom: number): Mark =>
	isCut
		? line("CUTS", at(x, top - CUT), at(x, bottom + CUT), { pen: "heavy" })
		: line("PAPER", at(x, top - CUT), at(x, bottom + CUT), { pen: "medium", dash: "dashed" });

/** In the row over or under the strip that has no words on this side. */
const goesOnItem = (words: string, align: "left" | "right", { x, y }: PaperPoint): Mark =>
	text(at(x, y + SIZES.small / 2), words, { height: SIZES.small, align, ink: "grey" });

/** What end hardware takes off a piece's left end and its right one, mm: nothing at a joint. */
export function takenUp({ pieces, system }: BayPlan, piece: Piece): readonly [left: number, right: number] {
	const end = (isEnd: boolean) => (isEnd ? system.endTakeUp : 0);
	return [end(piece === pieces[0]), end(piece === pieces.at(-1))];
}
