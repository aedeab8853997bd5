import type { Point } from "@baywright/geometry";
import type { Bay, WallPlace } from "@baywright/setout";
import { faceLength, facesOf, nearestOnWalls } from "../edits/faces.ts";
import { onBay } from "../edits/on-bay.ts";
import { moveJoint, pinOf, setEnd, setPin } from "../edits/on-track.ts";
import { snapAlong, stopsOn } from "../snap/along.ts";
import type { Locus } from "../snap/locus.ts";
import { anchorOf } from "./anchor.ts";
import type { Grip, Held } from "./grip.ts";
import { guidesAt } from "./stretch.ts";

/** A track end goes along the walls; at the very end of the bay it stands where the bay ends. */
export const trackEndGrip: Grip = {
	move(held, to, reach) {
		const it = held.job.bays[held.bay] as Bay;
		const last = it.corners.length - 2;
		return placed(held, to, reach, (bay, place, length) => {
			const end = held.target.index === 0 ? "start" : "end";
			const atLimit = end === "start" ? place.wall === 0 && place.at <= 0 : place.wall === last && place.at >= length;
			return setEnd(bay, end, atLimit ? null : place);
		});
	},
	label: ({ target }) => `move the track's ${target.index === 0 ? "left" : "right"} end`,
};

/** A joint is moved along the track: from then on all joints stand where they are put. */
export const jointGrip: Grip = {
	move: (held, to, reach) =>
		placed(held, to, reach, (bay, place) => moveJoint(bay, held.plan, held.target.index, place)),
	label: () => "move the joint",
};

/** A bracket that is moved is pinned: the others give way to it. */
export const bracketGrip: Grip = {
	move(held, to, reach) {
		const pin = pinOf(held.job.bays[held.bay] as Bay, held.plan, held.target.index);
		return placed(held, to, reach, (bay, place) => setPin(bay, pin, place));
	},
	label: ({ target }) => `pin bracket ${target.index + 1}`,
};

/** What is held taken to the nearest place on a wall, drawn to what is there. */
function placed(
	{ target, job, bay, plan, from }: Held,
	to: Point,
	reach: number,
	put: (bay: Bay, place: WallPlace, length: number) => Bay,
): { readonly job: Held["job"]; readonly guides: readonly Locus[] } {
	const before = job.bays[bay] as Bay;
	const chain = plan.chain ?? facesOf(before);
	// Taken hold of a little beside its place, it does not jump there.
	const anchor = anchorOf(target, before, plan) ?? from;
	const place = { x: anchor.x + to.x - from.x, y: anchor.y + to.y - from.y };
	const near = chain === null ? null : nearestOnWalls(chain, place);
	if (chain === null || near === null) return { job, guides: [] };
	const length = faceLength(chain, near.wall);
	const drawn = snapAlong([near.at], stopsOn(before, near.wall, length), reach);
	const at = Math.min(Math.max(Math.round((near.at + drawn.by) * 10) / 10, 0), length);
	return {
		job: onBay(job, bay, (it) => put(it, { wall: near.wall, at }, length)),
		guides: guidesAt(chain, near.wall, drawn),
	};
}
