import { headingOfFace, type Point } from "@baywright/geometry";
import type { Bay } from "@baywright/setout";
import { carryOver } from "./carry-over.ts";
import { faceLength, facesOf } from "./faces.ts";
import { type Corner, kept } from "./on-bay.ts";

/** Which end of the bay a chain of walls is drawn on from. */
export type ChainEnd = "left" | "right";

const PLAIN_WALL: Bay["walls"][number] = { rise: 0, projection: null, surface: "unknown", noDrill: [] };

/** The bay with one more corner at an end, and the wall to it; the first corner of an empty bay has none. */
export function addCorner(bay: Bay, end: ChainEnd, [x, y]: Corner): Bay {
	const corner: Corner = [kept(x), kept(y)];
	const wall = bay.corners.length === 0 ? [] : [PLAIN_WALL];
	if (end === "right")
		return { ...bay, corners: [...bay.corners, corner] as Bay["corners"], walls: [...bay.walls, ...wall] };
	const next = { ...bay, corners: [corner, ...bay.corners] as Bay["corners"], walls: [...wall, ...bay.walls] };
	const on = wall.length;
	return carryOver(next, bay, {
		place: (it, at) => ({ wall: it + on, at }),
		corner: (it) => it + 1,
		reading: (reading) => {
			if (reading.kind === "run" || reading.kind === "rise") return { ...reading, wall: reading.wall + on };
			if (reading.kind === "diagonal") return { ...reading, from: reading.from + 1, to: reading.to + 1 };
			if (reading.kind === "square") return { ...reading, corner: reading.corner + 1, wall: reading.wall + on };
			return { ...reading, corner: reading.corner + 1 };
		},
	});
}

/** Away from the room: the wall at the left is taped first, radians. */
export const FIRST_WAY = Math.PI / 2;

/** The corner that is drawn on from, and the heading of the wall that is there already. */
export interface Pivot {
	readonly at: Point;
	readonly corner: number;
	/** Heading at the corner of the wall beyond; null where there is none. */
	readonly beyond: number | null;
}

/** The corner at an end of the bay; null while there is none. */
export function pivotOf(bay: Bay, end: ChainEnd): Pivot | null {
	const corner = end === "right" ? bay.corners.length - 1 : 0;
	const at = bay.corners[corner];
	if (at === undefined) return null;
	const wall = end === "right" ? corner - 1 : 0;
	return { at: { x: at[0], y: at[1] }, corner, beyond: headingAt(bay, wall, end) };
}

function headingAt(bay: Bay, wall: number, end: ChainEnd): number | null {
	const [from, to] = [bay.corners[wall], bay.corners[wall + 1]];
	if (!from || !to) return null;
	const chain = facesOf(bay);
	if (chain === null) return Math.atan2(to[1] - from[1], to[0] - from[0]);
	return headingOfFace(chain, wall, end === "right" ? faceLength(chain, wall) : 0);
}

/** The way from an end of the bay that makes a room angle (degrees) there with the wall beyond. */
export function headingFor(beyond: number, angle: number, end: ChainEnd): number {
	const turn = ((180 - angle) * Math.PI) / 180;
	return end === "right" ? beyond - turn : beyond + turn + Math.PI;
}
