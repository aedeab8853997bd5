import type { Size } from "@baywright/editor";
import { type BayPlan, formatLength, type LengthUnit } from "@baywright/setout";
import type { Palette } from "../canvas/palette.ts";
import { lineHeight, type Measure } from "../canvas/text.ts";
import { fitStrip, holdStrip, type PiecePlace, placeOn, STRIP_MARGIN, type StripView } from "./axis.ts";
import { radiiOf, type StripRadius } from "./bends.ts";
import { type ReadFrom, type StripFigure, stripFigures } from "./figures.ts";
import { withPiece } from "./one-piece.ts";
import { type Rows, standInRows } from "./rows.ts";

/** The strip of one frame, placed. px. */
export interface StripLayout {
	readonly plan: BayPlan;
	readonly size: Size;
	readonly palette: Palette;
	readonly from: ReadFrom;
	readonly view: StripView;
	readonly lengths: readonly number[];
	/** Index of the piece that stands here alone; null where all do. */
	readonly alone: number | null;
	/** Middle of the track. */
	readonly middle: number;
	readonly measures: StripMeasures;
	readonly above: StripRows;
	readonly below: StripRows;
	readonly titles: readonly PieceTitle[];
	readonly radii: readonly StripRadius[];
	/** Readings left out until there is more room. */
	readonly left: number;
	place(at: PiecePlace): number;
}

export interface StripRows extends Rows<StripFigure> {
	readonly rowHeight: number;
}

export interface PieceTitle {
	readonly piece: number;
	readonly text: string;
	/** Middle of the text. */
	readonly left: number;
	readonly top: number;
}

/** Heights, px. Across, the strip is no more to scale than a tape. */
export interface StripMeasures {
	/** Half the height of the laid-flat track. */
	readonly half: number;
	/** What leaders take between the track and the first row. */
	readonly leader: number;
	readonly title: number;
	/** By which rows stand closer than lines of writing: their faces leave that free anyway. */
	readonly closer: number;
}

const ROOMY: StripMeasures = { half: 9, leader: 16, title: 24, closer: 0 };
const TIGHT: StripMeasures = { half: 7, leader: 11, title: 19, closer: 1.5 };

const MOST_ROWS = 3;
const EDGE = 3;

/** px between a piece's name and its track, for cut ends and brackets to reach into. */
const CUT_ROOM = 9;

/** px between readings and the sides of the drawing. */
const SIDE = 12;

export interface StripInput {
	readonly plan: BayPlan;
	/** Index of the piece to show alone; null for all. */
	readonly alone: number | null;
	readonly unit: LengthUnit;
	readonly size: Size;
	readonly palette: Palette;
	readonly from: ReadFrom;
	/** Null while the whole strip shows. */
	readonly view: StripView | null;
	readonly measure: Measure;
}

/** Lays the strip out with air, or tight where readings would have to be left out otherwise. */
export function layStrip(input: StripInput): StripLayout {
	const roomy = layWith(ROOMY, input);
	return roomy.left === 0 ? roomy : layWith(TIGHT, input);
}

function layWith(
	measures: StripMeasures,
	{ plan: whole, alone, unit, size, palette, from, view: asked, measure }: StripInput,
): StripLayout {
	const plan = withPiece(whole, alone);
	const lengths = plan.pieces.map(({ cutLength }) => cutLength);
	const view = asked === null ? fitStrip(lengths, size.width) : holdStrip(asked, lengths, size.width);
	const place = (at: PiecePlace) => placeOn(view, lengths, at);
	const figures = stripFigures(plan, unit, from, place, measure);

	const high =
		Math.max(size.width, place({ piece: lengths.length - 1, mm: lengths.at(-1) ?? 0 }) + STRIP_MARGIN) - SIDE;
	const low = Math.min(SIDE, view.left - STRIP_MARGIN + SIDE);
	const { half, leader, title, closer } = measures;
	const line = lineHeight("name") - closer;
	const rowHeight = from === "both" ? line + lineHeight("small") : line;
	const bends = figures.above.length > 0;
	const room = size.height - 2 * half - title - (bends ? 2 : 1) * leader - 2 * EDGE;
	const most = Math.max(1, Math.min(MOST_ROWS, Math.floor(room / rowHeight) - (bends ? 1 : 0)));
	const below = { ...standInRows(figures.below, low, high, most), rowHeight };
	const leftOver = Math.max(1, Math.floor(room / rowHeight) - below.rows);
	const above = { ...standInRows(figures.above, low, high, Math.min(MOST_ROWS, leftOver)), rowHeight };

	const heightAbove = title + (bends ? above.rows * rowHeight + leader : CUT_ROOM);
	const heightBelow = below.rows * rowHeight + leader;
	const top = Math.max(EDGE, (size.height - heightAbove - heightBelow - 2 * half) / 2);
	return {
		plan,
		size,
		palette,
		from,
		view,
		lengths,
		alone,
		middle: Math.round(top + heightAbove + half),
		measures,
		above,
		below,
		titles: titlesOf(plan, unit, place, size, top + title / 2 - 1, measure),
		radii: radiiOf({ plan, place }, bracketPlaces(plan, place), unit, measure),
		left: above.left + below.left,
		place,
	};
}

const bracketPlaces = ({ pieces }: BayPlan, place: StripLayout["place"]): number[] =>
	pieces.flatMap(({ marks }, piece) =>
		marks.flatMap(({ kind, fromLeft }) => (kind === "bracket" ? [place({ piece, mm: fromLeft })] : [])),
	);

/** Each piece's name and cut length over the part of it that shows; shorter where there is no room. */
function titlesOf(
	{ pieces }: BayPlan,
	unit: LengthUnit,
	place: StripLayout["place"],
	size: Size,
	top: number,
	measure: Measure,
): PieceTitle[] {
	return pieces.flatMap(({ name, cutLength }, piece) => {
		const from = Math.max(EDGE, place({ piece, mm: 0 }));
		const to = Math.min(size.width - EDGE, place({ piece, mm: cutLength }));
		const length = formatLength(cutLength, unit);
		const text = [`Piece ${name}, cut ${length}`, `${name} ${length}`, name].find(
			(words) => measure(words, "title") <= to - from,
		);
		return text === undefined ? [] : [{ piece, text, left: (from + to) / 2, top }];
	});
}
