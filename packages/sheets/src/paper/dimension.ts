import { SIZES, textWidth } from "../lettering/measure.ts";
import { textCorners } from "./bounds.ts";
import { collide } from "./collide.ts";
import type { Mark } from "./drawing.ts";
import { line, polygon, text } from "./marks.ts";
import { at, type Box, boxRound, isWithin, type PaperPoint } from "./place.ts";

/** A length to be said between two places. */
export interface DimensionWish {
	readonly from: PaperPoint;
	readonly to: PaperPoint;
	/** On which side of the way from `from` to `to` it is to stand, as seen on the paper. */
	readonly side: "left" | "right";
	readonly text: string;
	/** From the places to the line, mm: the nearest first. */
	readonly offsets: readonly number[];
}

export interface PlacedDimension {
	readonly items: readonly Mark[];
	/** What nothing else may cover. */
	readonly shapes: readonly (readonly PaperPoint[])[];
}

/** Source: ISO 129-1, filled arrowheads; slender ones of 15°. mm. */
const ARROW = 2.8;
const ARROW_HALF = 0.4;
/** Extension lines begin so far from what is measured, and go on so far past the line, mm. */
const GAP = 1;
const PAST = 1.5;
/** The figure stands so far above its line, mm. */
const ABOVE = 0.9;

/**
 * A dimension at the first of its offsets at which its figure covers nothing: parallel to what it measures, extension lines square to it, the figure
 * above the line, read from below or from the right. Source: ISO 129-1. Null where it finds no place, or the figure is longer than its line.
 */
export function dimension(
	wish: DimensionWish,
	taken: readonly (readonly PaperPoint[])[],
	area: Box,
): PlacedDimension | null {
	const { from, to, side, offsets } = wish;
	const length = Math.hypot(to.x - from.x, to.y - from.y);
	const height = SIZES.usual;
	if (textWidth(wish.text, height) + 2 * ARROW + 1 > length) return null;
	const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
	// Left of the way as seen on the paper, where y runs down.
	const [nx, ny] = side === "left" ? [uy, -ux] : [-uy, ux];
	const turn = readable(Math.atan2(-uy, ux));
	for (const off of offsets) {
		const start = at(from.x + nx * off, from.y + ny * off);
		const end = at(to.x + nx * off, to.y + ny * off);
		const middle = at((start.x + end.x) / 2, (start.y + end.y) / 2);
		const figure = text(at(middle.x - Math.sin(turn) * ABOVE, middle.y - Math.cos(turn) * ABOVE), wish.text, {
			height,
			align: "centre",
			turn,
			layer: "DIMENSIONS",
		});
		const strip = [
			at(start.x - nx, start.y - ny),
			at(end.x - nx, end.y - ny),
			at(end.x + nx, end.y + ny),
			at(start.x + nx, start.y + ny),
		];
		const shapes = [textCorners(figure), strip];
		const inside = shapes.every((shape) => isWithin(boxRound(shape) as Box, area));
		if (!inside || shapes.some((shape) => taken.some((other) => collide(shape, other)))) continue;
		const narrow = { pen: "narrow" } as const;
		const reach = (p: PaperPoint) =>
			line(
				"DIMENSIONS",
				at(p.x + nx * GAP, p.y + ny * GAP),
				at(p.x + nx * (off + PAST), p.y + ny * (off + PAST)),
				narrow,
			);
		return {
			items: [
				reach(from),
				reach(to),
				line("DIMENSIONS", start, end, narrow),
				arrow(start, ux, uy),
				arrow(end, -ux, -uy),
				figure,
			],
			shapes,
		};
	}
	return null;
}

/** A head whose point is at `p`, its body `ARROW` mm along (ux, uy). */
const arrow = (p: PaperPoint, ux: number, uy: number): Mark =>
	polygon(
		"DIMENSIONS",
		[
			p,
			at(p.x + ux * ARROW - uy * ARROW_HALF, p.y + uy * ARROW + ux * ARROW_HALF),
			at(p.x + ux * ARROW + uy * ARROW_HALF, p.y + uy * ARROW - ux * ARROW_HALF),
		],
		{ fill: "black" },
	);

/** The same line of writing read from below or from the right, never upside down. */
function readable(turn: number): number {
	let own = turn;
	while (own > Math.PI / 2 + 1e-9) own -= Math.PI;
	while (own <= -Math.PI / 2 + 1e-9) own += Math.PI;
	return own;
}
