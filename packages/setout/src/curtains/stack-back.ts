import type { FittedTrack } from "@baywright/geometry";
import type { Glass, StackBack } from "../bay-plan.ts";
import type { Bay } from "../job/bay-schema.ts";
import { openingStretches } from "../track/opening-stations.ts";

/** Track that each stack takes up until the curtains say more, mm (common practice, no source). */
const USUAL_STACK = 150;

/** The stretches of track that the open curtains take up, at most half the track each. */
export function stackBack({ track: { draw } }: Bay, length: number): StackBack[] {
	const sides = draw === "pair" ? (["left", "right"] as const) : draw === "none" ? [] : [draw];
	const deep = Math.min(USUAL_STACK, sides.length === 2 ? length / 2 : length);
	return sides.map((side) =>
		side === "left" ? { side, from: 0, to: deep } : { side, from: length - deep, to: length },
	);
}

/** How much of each opening stays clear of the stacks with the curtains open. */
export function clearGlass(bay: Bay, track: FittedTrack, stacks: readonly StackBack[]): Glass {
	const inFront = new Map(openingStretches(bay, track).map((stretch) => [stretch.opening, stretch]));
	const openings = bay.openings.map(({ from, to }, opening) => {
		const width = to - from;
		const stretch = inFront.get(opening);
		if (stretch === undefined) return { opening, width, clearOpen: width };
		const covered = stacks.reduce((sum, stack) => sum + overlap(stretch, stack), 0);
		const long = stretch.to - stretch.from;
		return { opening, width, clearOpen: long > 0 ? width * Math.max(0, 1 - covered / long) : width };
	});
	return {
		total: openings.reduce((sum, { width }) => sum + width, 0),
		clearOpen: openings.reduce((sum, { clearOpen }) => sum + clearOpen, 0),
		openings,
	};
}

interface Stretch {
	readonly from: number;
	readonly to: number;
}

const overlap = (a: Stretch, b: Stretch): number => Math.max(0, Math.min(a.to, b.to) - Math.max(a.from, b.from));
