import type { Point } from "@baywright/geometry";
import { circle, type Locus } from "./locus.ts";

/** mm that runs come in where nothing else decides. */
export const EVEN = 5;

/** What lengths come in (mm) while things draw within `reach` mm: closer than `EVEN` can be told apart, or where nothing draws, whole millimetres. */
export const stepFor = (reach: number): number => (reach >= EVEN / 2 ? EVEN : 1);

/** Circles that make the runs to the neighbours of a corner whole steps: at most two. */
export function evenRuns(neighbours: readonly (Point | null)[], near: Point, step: number): readonly Locus[] {
	return neighbours.flatMap((at) => {
		if (at === null) return [];
		const run = Math.round(Math.hypot(near.x - at.x, near.y - at.y) / step) * step;
		return run === 0 ? [] : [circle(at, run, "")];
	});
}
