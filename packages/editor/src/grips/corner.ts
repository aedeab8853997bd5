import { type Bay, cornerName } from "@baywright/setout";
import { type Corner, changeAt, kept, onBay } from "../edits/on-bay.ts";
import { cornerLoci } from "../snap/corner-loci.ts";
import { evenRuns, stepFor } from "../snap/even.ts";
import { snapPoint } from "../snap/snap.ts";
import type { Grip } from "./grip.ts";

/** A corner goes where the pointer goes; the walls beside it follow. */
export const cornerGrip: Grip = {
	move({ target: { index }, job, bay, from }, to, reach) {
		const before = job.bays[bay] as Bay;
		const start = before.corners[index] as Corner;
		const raw = { x: start[0] + to.x - from.x, y: start[1] + to.y - from.y };
		const neighbours = [before.corners[index - 1], before.corners[index + 1]].map((at) =>
			at ? { x: at[0], y: at[1] } : null,
		);
		const snap = snapPoint(raw, reach > 0 ? cornerLoci(before, index) : [], reach, (near) =>
			evenRuns(neighbours, near, stepFor(reach)),
		);
		const at: Corner = [kept(snap.at.x), kept(snap.at.y)];
		const corners = before.corners.map((corner, i) => (i === index ? at : corner)) as unknown as Bay["corners"];
		return { job: onBay(job, bay, (it) => ({ ...it, corners })), guides: snap.guides };
	},
	/** Only along the arrow: the other way it stays as it was taped. */
	nudge({ target: { index }, job, bay }, dx, dy) {
		const pushed = (at: number, by: number) => (by === 0 ? at : kept(Math.round(at + by)));
		return onBay(job, bay, (it) => ({
			...it,
			corners: changeAt(it.corners, index, ([x, y]) => [pushed(x, dx), pushed(y, dy)]) as Bay["corners"],
		}));
	},
	label: ({ target, job, bay }) => `move ${cornerName(target.index, (job.bays[bay] as Bay).corners.length - 1)}`,
};
