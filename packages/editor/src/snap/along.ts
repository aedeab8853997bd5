import type { Bay } from "@baywright/setout";
import { stepFor } from "./even.ts";

/** A place along a wall, mm, that draws what slides there, and why. */
export interface Stop {
	readonly at: number;
	readonly why: string;
}

/** What draws things that slide along a wall of `length` mm: its corners and its middle, and the ends and middles of its openings but `besides`. */
export function stopsOn(bay: Bay, wall: number, length: number, besides: number | null = null): readonly Stop[] {
	const openings = bay.openings.filter((it, i) => it.wall === wall && i !== besides);
	return [
		{ at: 0, why: "at the corner" },
		{ at: length, why: "at the corner" },
		{ at: length / 2, why: "middle of the wall" },
		...openings.flatMap(({ from, to }) => [
			{ at: from, why: "edge of the opening" },
			{ at: to, why: "edge of the opening" },
			{ at: (from + to) / 2, why: "middle of the opening" },
		]),
	];
}

export interface SnapAlong {
	/** mm to add to what was moved. */
	readonly by: number;
	readonly stop: Stop | null;
}

/**
 * Draws places of something that slides (its ends, its middle: mm along the wall) to the nearest stop within reach; where
 * there is none the first of them comes to stand on whole 5 mm, and without reach on whole millimetres.
 */
export function snapAlong(places: readonly number[], stops: readonly Stop[], reach: number): SnapAlong {
	let best: { readonly by: number; readonly stop: Stop } | null = null;
	for (const place of reach > 0 ? places : []) {
		for (const stop of stops) {
			const by = stop.at - place;
			if (Math.abs(by) <= reach && (best === null || Math.abs(by) < Math.abs(best.by))) best = { by, stop };
		}
	}
	if (best !== null) return best;
	const [first = 0] = places;
	const whole = stepFor(reach);
	return { by: Math.round(first / whole) * whole - first, stop: null };
}
