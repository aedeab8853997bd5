import type { Size, Viewport } from "@baywright/editor";
import { type FitMark, fitView } from "../canvas/fit.ts";
import type { Measure } from "../canvas/text.ts";
import { ladderWidth, rungsOf } from "./ladder.ts";
import type { Elevation } from "./scene.ts";

/** px kept for corner numbers above, runs below, and at the right. */
const ABOVE = 36;
const BELOW = 50;
const RIGHT = 22;
const MARGIN = 4;

/** The view that shows all of the walls with what is written round them. */
export function fitElevation(elevation: Elevation, size: Size, measure: Measure): Viewport {
	const { unrolled, heights } = elevation;
	const left = ladderWidth({ measure }, rungsOf(elevation)) + 26;
	const mark = (x: number, y: number, right: number, down: number): FitMark => ({
		at: { x, y },
		right,
		down,
		round: 0,
	});
	return fitView(
		[
			mark(0, 0, -left, BELOW),
			mark(unrolled.length, 0, RIGHT, BELOW),
			mark(0, heights.ceiling.mm, -left, -ABOVE),
			mark(unrolled.length, heights.ceiling.mm, RIGHT, -ABOVE),
		],
		size,
		MARGIN,
	);
}
