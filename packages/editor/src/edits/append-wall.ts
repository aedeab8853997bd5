import type { Bay } from "@baywright/setout";
import { addCorner, type ChainEnd, FIRST_WAY, headingFor, pivotOf } from "./chain.ts";

/**
 * Adds a wall at an end of the bay, `run` mm long and at a room angle (degrees) to the wall there. The first wall of an
 * empty bay makes no angle and runs away from the room.
 */
export function appendWall(bay: Bay, end: ChainEnd, run: number, angle: number): Bay {
	const pivot = pivotOf(bay, end);
	if (pivot === null) return addCorner(addCorner(bay, "right", [0, 0]), "right", [0, run]);
	const first = FIRST_WAY + (end === "right" ? 0 : Math.PI);
	const way = pivot.beyond === null ? first : headingFor(pivot.beyond, angle, end);
	return addCorner(bay, end, [pivot.at.x + Math.cos(way) * run, pivot.at.y + Math.sin(way) * run]);
}
