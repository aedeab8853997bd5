import { type Bay, wallName } from "@baywright/setout";
import { onBay } from "../edits/on-bay.ts";
import { isRead } from "../edits/retape.ts";
import { setRise } from "../edits/rise.ts";
import type { Grip } from "./grip.ts";
import { wayOut } from "./wall.ts";

/** mm: a bow pulled as near to straight as this is straight. */
const STRAIGHT = 3;

/** A wall is bowed by pulling its middle, + away from the room, in whole mm; a bow pulled nearly straight is straight. One that was taped stays as it is. */
export const bowGrip: Grip = {
	move({ target: { index }, job, bay, from }, to, reach) {
		const before = job.bays[bay] as Bay;
		if (isRead(before, { kind: "rise", wall: index })) return { job, guides: [] };
		const out = wayOut(before, index, to.x - from.x, to.y - from.y);
		const rise = Math.round((before.walls[index]?.rise ?? 0) + out);
		const next = Math.abs(rise) <= (reach > 0 ? STRAIGHT : 0) ? 0 : rise;
		return { job: onBay(job, bay, (it) => setRise(it, index, next)), guides: [] };
	},
	label: ({ target, job, bay }) => `bow the ${wallName(target.index, (job.bays[bay] as Bay).corners.length - 1)}`,
};
