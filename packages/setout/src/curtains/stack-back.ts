import type { FittedTrack } from "@baywright/geometry";
import type { CurtainSetOut, Glass, StackBack, Stretch } from "../bay-plan.ts";
import type { Bay } from "../job/bay-schema.ts";
import { openingStretches } from "../track/opening-stations.ts";

/** The stretches of track that the open curtains take up. */
export const stackBack = (curtains: readonly CurtainSetOut[]): StackBack[] =>
	curtains.map(({ side, stack }) => ({ side, ...stack }));

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

const overlap = (a: Stretch, b: Stretch): number => Math.max(0, Math.min(a.to, b.to) - Math.max(a.from, b.from));
