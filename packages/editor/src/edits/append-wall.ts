import type { Bay } from "@baywright/setout";
import { addCorner, type ChainEnd, FIRST_WAY, headingFor, pivotOf } from "./chain.ts";
import { retaped } from "./retape.ts";

/**
 * Adds a wall at an end of the bay, `run` mm long and at a room angle (degrees) to the wall there. The first wall of an
 * empty bay makes no angle and runs away from the room. In a taped bay both are readings.
 */
export function appendWall(bay: Bay, end: ChainEnd, run: number, angle: number): Bay {
	const pivot = pivotOf(bay, end);
	if (pivot === null) return addCorner(addCorner(bay, "right", [0, 0]), "right", [0, run]);
	const first = FIRST_WAY + (end === "right" ? 0 : Math.PI);
	const way = pivot.beyond === null ? first : headingFor(pivot.beyond, angle, end);
	const grown = addCorner(bay, end, [pivot.at.x + Math.cos(way) * run, pivot.at.y + Math.sin(way) * run]);
	return typedWall(grown, end, run, angle);
}

/** A taped bay with what was typed (mm, degrees; null = not typed) of the wall that was just added among its readings. */
export function typedWall(bay: Bay, end: ChainEnd, run: number | null, angle: number | null): Bay {
	const last = bay.corners.length - 2;
	const read = run === null ? bay : retaped(bay, { kind: "run", wall: end === "right" ? last : 0 }, run);
	if (angle === null || last < 1) return read;
	return retaped(read, { kind: "angle", corner: end === "right" ? last : 1 }, angle);
}
