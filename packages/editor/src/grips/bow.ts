import { type Bay, wallName } from "@baywright/setout";
import { changeAt, onBay } from "../edits/on-bay.ts";
import { onNewFace } from "../edits/on-new-face.ts";
import type { Grip } from "./grip.ts";
import { wayOut } from "./wall.ts";

/** mm: a bow pulled as near to straight as this is straight. */
const STRAIGHT = 3;

/** A wall is bowed by pulling its middle, + away from the room; a bow pulled nearly straight is straight. One that was taped stays as it is. */
export const bowGrip: Grip = {
	move({ target: { index }, job, bay, from }, to, reach) {
		const before = job.bays[bay] as Bay;
		if (before.readings.some((reading) => reading.kind === "rise" && reading.wall === index))
			return { job, guides: [] };
		const out = wayOut(before, index, to.x - from.x, to.y - from.y);
		const rise = (before.walls[index]?.rise ?? 0) + out;
		return { job: onBay(job, bay, (it) => setRise(it, index, rise, reach > 0 ? STRAIGHT : 0)), guides: [] };
	},
	label: ({ target, job, bay }) => `bow the ${wallName(target.index, (job.bays[bay] as Bay).corners.length - 1)}`,
};

/** Bows one wall by `rise` mm, + away from the room: whole millimetres, no deeper than half its chord, and straight within `straight` mm of it; what stands on it keeps its share of the face. */
export function setRise(bay: Bay, wall: number, rise: number, straight = 0): Bay {
	const deepest = deepestBow(bay, wall);
	const held = Math.round(Math.max(-deepest, Math.min(deepest, rise)));
	// `+ 0` because a rise of −0 is not one that a file should hold.
	const next = Math.abs(held) <= straight ? 0 : held + 0;
	const moved = onNewFace(bay, wall, next);
	return { ...moved, walls: changeAt(moved.walls, wall, (old) => ({ ...old, rise: next })) };
}

/** The greatest rise a wall can have, mm: a half circle over its chord. */
export function deepestBow({ corners }: Pick<Bay, "corners">, wall: number): number {
	const [left, right] = [corners[wall], corners[wall + 1]];
	return left && right ? Math.floor(Math.hypot(right[0] - left[0], right[1] - left[1]) / 2) : 0;
}
