import type { Piece } from "@baywright/setout";
import { SIZES, textWidth } from "../lettering/measure.ts";
import type { Item, Mark } from "../paper/drawing.ts";
import { type Block, whole } from "../paper/flow.ts";
import { line, rectangle, text } from "../paper/marks.ts";
import { at, boxAt } from "../paper/place.ts";
import { spreadApart } from "../paper/spread.ts";
import { HEADING, headingItems } from "../paper/words.ts";
import type { SheetOf } from "./sheet-of.ts";
import { bentParts, markItems, markName, PITCH, SLANT } from "./strip-marks.ts";
import { haveRoom, type StripRow, stripRows } from "./strip-rows.ts";

/** The strip itself, mm. */
const THICK = 6;
/** Left and right of the strip, mm. */
const SIDE = 3;

/** A piece laid flat, each mark with what a tape reads from either of its own cut ends; in rows where one has not the room. */
export function stripBlocks(of: SheetOf, piece: Piece, heading: string): Block[] {
	return [
		(width, room) => {
			const rows = rowsOf(piece, width);
			const blocks = rows.map((row, i) => rowBlock(of, piece, row, i === 0 ? heading : `${heading}, continued`));
			return stacked(blocks)(width, room);
		},
	];
}

/** Blocks one right under the other, as one. */
function stacked(blocks: readonly Block[]): Block {
	return (width, room) => {
		const [first, ...others] = blocks;
		const laid = first?.(width, room) ?? null;
		if (laid === null) return null;
		const rest = laid.rest === null ? others : [laid.rest, ...others];
		return { ...laid, rest: rest.length === 0 ? null : stacked(rest) };
	};
}

/** As few rows of equal length as give every mark's figure its room. */
function rowsOf(piece: Piece, width: number): StripRow[] {
	for (let count = 1; ; count++) {
		const rows = stripRows(piece, count);
		if (haveRoom(rows, width, SIDE) || count > piece.marks.length) return rows;
	}
}

function rowBlock(of: SheetOf, piece: Piece, row: StripRow, heading: string): Block {
	const { plan, figure } = of;
	const names = row.marks.map((mark) => markName(mark, plan));
	const above = row.marks.map(({ fromLeft }, i) => `${names[i]}   ${figure(fromLeft)}`);
	const below = row.marks.map(({ fromRight }) => figure(fromRight));
	const longest = (texts: readonly string[]) => Math.max(...texts.map((each) => textWidth(each, SIZES.usual, true)), 8);
	const top = HEADING + 0.8 + longest(above) + SLANT;
	const height = top + THICK + SLANT + longest(below) + 0.5;
	return whole(height, (width): Item[] => {
		const long = width - 2 * SIDE;
		const along = (mm: number) =>
			SIDE + ((Math.min(Math.max(mm, row.from), row.to) - row.from) / (row.to - row.from)) * long;
		const places = row.marks.map(({ fromLeft }) => along(fromLeft));
		const figures = spreadApart(places, PITCH, SIDE + 1.5, width - SIDE - 1.5);
		const bottom = top + THICK;
		return [
			...headingItems(heading),
			text(at(width, SIZES.heading + 0.4), "above: from the left cut end; below: from the right cut end", {
				height: SIZES.small,
				align: "right",
				ink: "grey",
			}),
			...bentParts(piece, row, along, { top, bottom }),
			rectangle("TRACK", boxAt(SIDE, top, long, THICK), { stroke: { pen: "wide" } }),
			...[row.isFirst ? SIDE : null, row.isLast ? width - SIDE : null].flatMap((x): Mark[] =>
				x === null ? [] : [line("CUTS", at(x, top - 2), at(x, bottom + 2), { pen: "heavy" })],
			),
			...row.marks.flatMap(({ kind }, i): Mark[] =>
				markItems(kind, places[i] as number, figures[i] as number, [above[i] as string, below[i] as string], {
					top,
					bottom,
					past: 0,
				}),
			),
		];
	});
}
