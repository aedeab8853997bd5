import { type BayPlan, bendName, bentAt, type Piece, type Mark as StripMark, wallName } from "@baywright/setout";
import { SIZES, textWidth } from "../lettering/measure.ts";
import type { Item, Mark } from "../paper/drawing.ts";
import { type Block, whole } from "../paper/flow.ts";
import { line, rectangle, text } from "../paper/marks.ts";
import { at, boxAt } from "../paper/place.ts";
import { spreadApart } from "../paper/spread.ts";
import { HEADING, headingItems } from "../paper/words.ts";
import type { SheetOf } from "./sheet-of.ts";

/** Between two figures that stand side by side on end, mm. */
const PITCH = 4.1;
/** The strip itself, and the slant of the lines from its marks to their figures, mm. */
const THICK = 6;
const SLANT = 6;
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

interface Row {
	/** From the piece's left cut end, mm. */
	readonly from: number;
	readonly to: number;
	readonly marks: readonly StripMark[];
}

/** As few rows of equal length as give every mark's figure its room. */
function rowsOf({ cutLength, marks }: Piece, width: number): Row[] {
	const most = Math.floor((width - 2 * SIDE) / PITCH);
	for (let count = 1; ; count++) {
		const long = cutLength / count;
		const rows = Array.from({ length: count }, (_, i) => {
			const [from, to] = [i * long, (i + 1) * long];
			const isLast = i === count - 1;
			return {
				from,
				to,
				marks: marks.filter(({ fromLeft }) => (fromLeft >= from || i === 0) && (fromLeft < to || isLast)),
			};
		});
		if (rows.every((row) => row.marks.length <= most) || count > marks.length) return rows;
	}
}

function rowBlock(of: SheetOf, piece: Piece, row: Row, heading: string): Block {
	const { plan, figure } = of;
	const names = row.marks.map((mark) => markName(mark, plan));
	const above = row.marks.map(({ fromLeft }, i) => `${names[i]}   ${figure(fromLeft)}`);
	const below = row.marks.map(({ fromRight }) => figure(fromRight));
	const longest = (texts: readonly string[]) => Math.max(...texts.map((each) => textWidth(each, SIZES.usual, true)), 8);
	const top = HEADING + 0.8 + longest(above) + SLANT;
	const height = top + THICK + SLANT + longest(below) + 0.5;
	return whole(height, (width): Item[] => {
		const long = width - 2 * SIDE;
		const along = (mm: number) => SIDE + ((mm - row.from) / (row.to - row.from)) * long;
		const places = row.marks.map(({ fromLeft }) => along(Math.min(Math.max(fromLeft, row.from), row.to)));
		const figures = spreadApart(places, PITCH, SIDE + 1.5, width - SIDE - 1.5);
		const [isFirst, isLast] = [row.from === 0, row.to >= piece.cutLength - 1e-6];
		return [
			...headingItems(heading),
			text(at(width, SIZES.heading + 0.4), "above: from the left cut end; below: from the right cut end", {
				height: SIZES.small,
				align: "right",
				ink: "grey",
			}),
			...bentParts(piece, row, along, top),
			rectangle("TRACK", boxAt(SIDE, top, long, THICK), { stroke: { pen: "wide" } }),
			...[isFirst ? SIDE : null, isLast ? width - SIDE : null].flatMap((x): Mark[] =>
				x === null ? [] : [line("CUTS", at(x, top - 2), at(x, top + THICK + 2), { pen: "heavy" })],
			),
			...row.marks.flatMap((mark, i): Mark[] =>
				markItems(mark, places[i] as number, figures[i] as number, [above[i] as string, below[i] as string], top),
			),
		];
	});
}

/** Tint where the track is bent. */
function bentParts({ marks }: Piece, row: Row, along: (mm: number) => number, top: number): Mark[] {
	return marks.flatMap((mark, i): Mark[] => {
		if (mark.kind !== "bend-start") return [];
		const end = marks.slice(i).find(({ kind, of, bow }) => kind === "bend-end" && of === mark.of && bow === mark.bow);
		const [from, to] = [Math.max(mark.fromLeft, row.from), Math.min(end?.fromLeft ?? mark.fromLeft, row.to)];
		if (!(to > from)) return [];
		return [rectangle("STACK", boxAt(along(from), top, along(to) - along(from), THICK), { fill: "tint" })];
	});
}

function markItems(
	{ kind }: StripMark,
	x: number,
	figureX: number,
	[above, below]: readonly [string, string],
	top: number,
): Mark[] {
	const isBend = kind.startsWith("bend");
	const pen =
		kind === "bend-middle"
			? ({ pen: "narrow", dash: "dashed" } as const)
			: ({ pen: isBend || kind === "joint" ? "wide" : "narrow" } as const);
	const leader = { pen: "narrow", ink: "grey" } as const;
	const half = SIZES.usual / 2;
	const bottom = top + THICK;
	return [
		line(isBend ? "CUTS" : "BRACKETS", at(x, top), at(x, bottom), pen),
		line("DIMENSIONS", at(x, top), at(figureX, top - SLANT + 1), leader),
		line("DIMENSIONS", at(x, bottom), at(figureX, bottom + SLANT - 1), leader),
		text(at(figureX + half, top - SLANT), above, { height: SIZES.usual, turn: Math.PI / 2, bold: isBend }),
		text(at(figureX + half, bottom + SLANT), below, {
			height: SIZES.usual,
			turn: Math.PI / 2,
			align: "right",
			bold: isBend,
		}),
	];
}

const BEND_WORDS = { "bend-start": "starts", "bend-middle": "middle", "bend-end": "ends" } as const;

/** What a mark on a strip is called. */
export function markName(mark: StripMark, plan: BayPlan): string {
	if (mark.kind === "bracket") return `bracket ${mark.of + 1}`;
	if (mark.kind === "joint") return `joint ${mark.of + 1}`;
	const bent = bentAt(mark, plan);
	const walls = plan.projections.length;
	const what =
		bent === null || bent.wall === null
			? `bend ${bendName(bent?.corners ?? [mark.of], walls)}`
			: `bow ${wallName(bent.wall, walls)}`;
	return `${what} ${BEND_WORDS[mark.kind]}`;
}
