import { wallLength } from "@baywright/editor";
import type { Bay } from "@baywright/setout";
import type { BracketMark } from "./marks.ts";

/** A drawn run may be off by as much (a share of it; common practice, no source). */
const DRAWN_RUN = 0.1;

/** What the straight span between two brackets past a corner or more can be at most, mm: as if the walls went on in one line. */
export function longestSpan(bay: Bay, before: BracketMark, after: BracketMark): number {
	const between = bay.walls
		.map((_, wall) => wall)
		.filter((wall) => wall > before.place.wall && wall < after.place.wall)
		.reduce((sum, wall) => sum + wallLength(bay, wall), 0);
	const sum = reach(before, before.place.wall + 1) + between + reach(after, after.place.wall);
	return Math.ceil((1 + DRAWN_RUN) * sum);
}

/** From a corner at the end of a bracket's wall straight to the bracket. */
function reach({ nearer, further, standsOff, projection }: BracketMark, corner: number): number {
	const { mm } = nearer.corner === corner ? nearer : further;
	return Math.hypot(mm, standsOff ?? projection);
}
