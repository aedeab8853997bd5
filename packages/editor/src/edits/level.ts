import type { Bay } from "@baywright/setout";
import { type Corner, kept } from "./on-bay.ts";

/** Turns the whole plan about the middle of one wall so that this wall runs level, left to right, with the room below it. */
export function levelWall(bay: Bay, wall: number): Bay {
	const from = bay.corners[wall];
	const to = bay.corners[wall + 1];
	if (!from || !to) return bay;
	const heading = Math.atan2(to[1] - from[1], to[0] - from[0]);
	if (Math.abs(heading) < LEVEL) return bay;
	const [cos, sin] = [Math.cos(-heading), Math.sin(-heading)];
	const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
	const turned = bay.corners.map((corner): Corner => {
		const [dx, dy] = [corner[0] - x, corner[1] - y];
		return [kept(x + dx * cos - dy * sin), kept(y + dx * sin + dy * cos)];
	});
	// Both ends of the wall at the very same height, whatever the rounding.
	const height = turned[wall]?.[1] ?? 0;
	return {
		...bay,
		corners: turned.map((corner, i) => (i === wall + 1 ? [corner[0], height] : corner)) as unknown as Bay["corners"],
	};
}

/** Radians: a wall this near to level is level. */
const LEVEL = 1e-12;
