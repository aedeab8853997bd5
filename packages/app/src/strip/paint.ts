import type { Selection } from "@baywright/editor";
import type { Piece } from "@baywright/setout";
import { hatchLines } from "../canvas/hatch.ts";
import { type Pen, traceQuads } from "../canvas/paint/pen.ts";
import { fontOf, lineHeight } from "../canvas/text.ts";
import { PIECE_GAP } from "./axis.ts";
import { bendsOf, isBendOf } from "./bends.ts";
import type { StripLayout, StripRows } from "./layout.ts";

/** px by which marks reach past the track's lines. */
const BRACKET_PAST = 6;
const CUT_PAST = 11;
const BRACKET_WIDTH = 5;

/** Where brackets stand close, the share of the way from one to the next that a bar takes; never thinner than this, px. */
const BRACKET_SHARE = 0.35;
const THINNEST_BRACKET = 1.25;
const BEND_HATCH = 6;

/** The pieces: the track's double line from cut end to cut end. */
export function paintPieces(pen: Pen, strip: StripLayout): void {
	const { palette, middle } = strip;
	pen.strokeStyle = palette.track;
	pen.lineWidth = 1.75;
	pen.beginPath();
	strip.plan.pieces.forEach((piece, i) => {
		const [left, right] = endsOf(strip, piece, i);
		for (const top of [middle - strip.measures.half, middle + strip.measures.half]) {
			pen.moveTo(left, top);
			pen.lineTo(right, top);
		}
	});
	pen.stroke();
}

/** Bends and bows: hatched from start to end, with the middle marked and the radius written in. */
export function paintStripBends(pen: Pen, strip: StripLayout): void {
	const { palette, middle, size } = strip;
	pen.strokeStyle = palette.bend;
	for (const { left, right, centre } of bendsOf(strip)) {
		if (right < 0 || left > size.width) continue;
		const top = middle - strip.measures.half;
		const bottom = middle + strip.measures.half;
		const box = [
			{ left, top },
			{ left: right, top },
			{ left: right, top: bottom },
			{ left, top: bottom },
		];
		pen.lineWidth = 1;
		pen.beginPath();
		traceQuads(pen, hatchLines(box, { spacing: BEND_HATCH, angle: -Math.PI / 4, anchor: { left, top } }, size));
		pen.stroke();
		pen.lineWidth = 1.75;
		pen.strokeRect(left, top, right - left, bottom - top);
		pen.beginPath();
		if (centre !== null) {
			pen.moveTo(centre, top - 4);
			pen.lineTo(centre, bottom);
		}
		pen.stroke();
	}
	paintRadii(pen, strip);
}

/** px by which the hatch stays clear of a radius to either side. */
const CLEAR = 3;

function paintRadii(pen: Pen, { palette, middle, measures, radii }: StripLayout): void {
	pen.font = fontOf("small");
	pen.textAlign = "center";
	pen.textBaseline = "middle";
	for (const { left, half, text } of radii) {
		pen.fillStyle = palette.sheet;
		pen.fillRect(left - half - CLEAR, middle - measures.half + 1, 2 * (half + CLEAR), 2 * (measures.half - 1));
		pen.fillStyle = palette.bend;
		pen.fillText(text, left, middle + 1);
	}
}

/** Brackets: solid bars across. */
export function paintStripBrackets(pen: Pen, strip: StripLayout): void {
	const marks = marksOf(strip, "bracket");
	const apart = (strip.lengths.reduce((sum, length) => sum + length, 0) * strip.view.scale) / Math.max(1, marks.length);
	const width = Math.min(BRACKET_WIDTH, Math.max(THINNEST_BRACKET, apart * BRACKET_SHARE));
	pen.fillStyle = strip.palette.ink;
	for (const { left } of marks)
		pen.fillRect(
			left - width / 2,
			strip.middle - strip.measures.half - BRACKET_PAST,
			width,
			2 * (strip.measures.half + BRACKET_PAST),
		);
}

/** Cut ends dashed across, and a diamond in the gap where two pieces meet. */
export function paintStripEnds(pen: Pen, strip: StripLayout): void {
	const { palette, middle } = strip;
	pen.strokeStyle = palette.cut;
	pen.lineWidth = 2;
	pen.setLineDash([5, 3]);
	pen.beginPath();
	strip.plan.pieces.forEach((piece, i) => {
		for (const left of endsOf(strip, piece, i)) {
			pen.moveTo(left, middle - strip.measures.half - CUT_PAST);
			pen.lineTo(left, middle + strip.measures.half + CUT_PAST);
		}
	});
	pen.stroke();
	pen.setLineDash([]);
	pen.fillStyle = palette.cut;
	strip.plan.pieces.forEach((piece, i) => {
		const [left, right] = endsOf(strip, piece, i);
		if (strip.from !== "right") flag(pen, left, middle - strip.measures.half - CUT_PAST, 1);
		if (strip.from !== "left") flag(pen, right, middle - strip.measures.half - CUT_PAST, -1);
	});
	pen.beginPath();
	for (const { left } of jointsOf(strip)) traceDiamond(pen, left, middle, 0);
	pen.stroke();
}

/** On the cut end from which readings are taken: points the way the tape runs. */
function flag(pen: Pen, left: number, top: number, way: 1 | -1): void {
	pen.beginPath();
	pen.moveTo(left - way, top);
	pen.lineTo(left + 9 * way, top + 4.5);
	pen.lineTo(left - way, top + 9);
	pen.closePath();
	pen.fill();
}

/** Readings with their leaders, and the names of pieces. */
export function paintStripFigures(pen: Pen, strip: StripLayout): void {
	paintRows(pen, strip, strip.above, -1);
	paintRows(pen, strip, strip.below, 1);
	pen.textAlign = "center";
	pen.textBaseline = "middle";
	pen.fillStyle = strip.palette.ink;
	pen.font = fontOf("title");
	for (const { text, left, top } of strip.titles) pen.fillText(text, left, top);
}

function paintRows(pen: Pen, strip: StripLayout, rows: StripRows, side: 1 | -1): void {
	const { palette, middle, size, measures } = strip;
	const edge = middle + side * (strip.measures.half + BRACKET_PAST);
	const rowTop = (row: number) => middle + side * (strip.measures.half + measures.leader + row * rows.rowHeight);
	for (const { item, leader, row } of rows.placed) {
		const at = leader[leader.length - 1] as number;
		if (at + item.half < 0 || at - item.half > size.width) continue;
		pen.strokeStyle = palette[item.colour];
		pen.lineWidth = 1;
		pen.beginPath();
		pen.moveTo(leader[0] as number, edge);
		leader.slice(1).forEach((left, passed) => {
			pen.lineTo(left, rowTop(passed) - side * 2);
			if (passed < row) pen.lineTo(left, rowTop(passed + 1) - side * 2);
		});
		pen.stroke();

		pen.textAlign = "center";
		pen.textBaseline = "middle";
		let top = side > 0 ? rowTop(row) : rowTop(row) - rows.rowHeight;
		for (const line of item.lines) {
			const height = lineHeight(line.face);
			pen.font = fontOf(line.face);
			pen.fillStyle = palette[line.colour];
			pen.fillText(line.text, at, top + height / 2 + 1);
			top += height;
		}
	}
}

/** What is chosen or pointed at. */
export function paintStripHighlight(pen: Pen, strip: StripLayout, it: Selection | null, alpha: number): void {
	if (it === null) return;
	const { middle, palette } = strip;
	const reach = strip.measures.half + BRACKET_PAST + 4;
	pen.save();
	pen.globalAlpha = alpha;
	pen.fillStyle = palette.track;
	pen.beginPath();
	if (it.kind === "bracket")
		for (const { left, of } of marksOf(strip, "bracket")) {
			if (of === it.index) pen.roundRect(left - 9, middle - reach, 18, 2 * reach, 4);
		}
	for (const bend of bendsOf(strip)) {
		if (isBendOf(strip.plan, bend, it))
			pen.roundRect(bend.left - 5, middle - reach, bend.right - bend.left + 10, 2 * reach, 4);
	}
	if (it.kind === "joint")
		for (const { left, of } of jointsOf(strip)) if (of === it.index) traceDiamond(pen, left, middle, 6);
	// Alone it needs no telling apart.
	const piece = it.kind === "piece" && strip.alone === null ? strip.plan.pieces[it.index] : undefined;
	if (piece !== undefined) {
		const [left, right] = endsOf(strip, piece, it.index);
		pen.roundRect(left - 4, middle - reach, right - left + 8, 2 * reach, 4);
	}
	pen.fill();
	pen.restore();
}

function traceDiamond(pen: Pen, left: number, top: number, larger: number): void {
	const across = 9 + larger;
	pen.moveTo(left + across, top);
	pen.lineTo(left, top + across);
	pen.lineTo(left - across, top);
	pen.lineTo(left, top - across);
	pen.closePath();
}

export function marksOf(
	{ plan, place }: StripLayout,
	kind: "bracket",
): { readonly of: number; readonly left: number }[] {
	return plan.pieces.flatMap(({ marks }, piece) =>
		marks.flatMap((mark) => (mark.kind === kind ? [{ of: mark.of, left: place({ piece, mm: mark.fromLeft }) }] : [])),
	);
}

/** A joint stands in the gap between its two pieces. */
export function jointsOf({ plan, place }: StripLayout): { readonly of: number; readonly left: number }[] {
	return plan.pieces.slice(1).map((_, i) => ({ of: i, left: place({ piece: i + 1, mm: 0 }) - PIECE_GAP / 2 }));
}

export function endsOf({ place }: StripLayout, { cutLength }: Piece, piece: number): [number, number] {
	return [place({ piece, mm: 0 }), place({ piece, mm: cutLength })];
}
