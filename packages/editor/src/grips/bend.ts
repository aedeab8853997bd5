import { pointAt } from "@baywright/geometry";
import type { Bay, BayPlan, CornerSetOut } from "@baywright/setout";
import { onBay } from "../edits/on-bay.ts";
import { setRadius } from "../edits/on-track.ts";
import { EVEN, stepFor } from "../snap/even.ts";
import type { Grip, Held } from "./grip.ts";

/** The middle of a bend is pulled towards its corner to make it tighter, away from it to make it wider, between the least and greatest that fit. */
export const bendGrip: Grip = {
	move(held, to, reach) {
		const { target, job, bay, plan, from } = held;
		const corner = pulledIn(held);
		const pull = corner === undefined ? null : pullOf(plan, corner);
		if (corner === undefined || pull === null) return { job, guides: [] };
		const inwards = (to.x - from.x) * pull.ux + (to.y - from.y) * pull.uy;
		const wanted = corner.radius + inwards * pull.radiusPerMm;
		const radius = drawnTo(wanted, corner, plan.system.preferredRadius, reach * pull.radiusPerMm);
		return { job: onBay(job, bay, (it) => setRadius(it, target.index, radius)), guides: [] };
	},
	/** Up or right is a millimetre wider, down or left one tighter, whichever way the bend lies. */
	nudge(held, dx, dy) {
		const { target, job, bay, plan } = held;
		const corner = pulledIn(held);
		if (corner === undefined) return job;
		const radius = drawnTo(corner.radius + dx + dy, corner, plan.system.preferredRadius, 0);
		return onBay(job, bay, (it) => setRadius(it, target.index, radius));
	},
	label: ({ target }) => `radius of corner ${target.index}`,
};

/** Whether a bend's radius can be set by hand: a bend of one corner that the user may choose. */
export const isPulled = (bay: Bay, corner: CornerSetOut): boolean =>
	corner.kind === "bend" && !corner.sprung && corner.corners.length === 1 && corner.corner < bay.corners.length - 1;

const pulledIn = ({ job, bay, plan, target }: Held): CornerSetOut | undefined =>
	plan.corners.find((it) => it.corner === target.index && isPulled(job.bays[bay] as Bay, it));

/** The way from the corner through the middle of its bend (a unit direction), and how much the radius grows as the middle goes that way. */
function pullOf({ path }: BayPlan, { corner }: CornerSetOut) {
	const bend = path?.segments.find((it) => it.kind === "bend" && it.corners[0] === corner);
	if (path === null || bend?.kind !== "bend") return null;
	const middle = pointAt(path, bend.start + bend.length / 2);
	if (middle === null) return null;
	// The middle moves towards the centre by R(1/cos(δ/2) − 1) as the bend draws back from where its legs meet.
	const radiusPerMm = 1 / (1 / Math.cos(bend.turn / 2) - 1);
	if (!Number.isFinite(radiusPerMm)) return null;
	const [dx, dy] = [bend.centre.x - middle.at.x, bend.centre.y - middle.at.y];
	const length = Math.hypot(dx, dy);
	return { ux: dx / length, uy: dy / length, radiusPerMm };
}

/** Whole millimetres between least and greatest, in 5 mm where something draws; near the system's own radius that one. */
function drawnTo(wanted: number, { least, greatest }: CornerSetOut, preferred: number, reach: number): number {
	const [lowest, highest] = wholeBetween(least, greatest);
	const near = reach > 0 && Math.abs(wanted - preferred) < Math.min(reach, 4 * EVEN);
	const step = stepFor(reach);
	const drawn = near ? preferred : Math.round(wanted / step) * step;
	return Math.max(lowest, Math.min(highest, drawn));
}

/** The least and greatest whole millimetres between two limits; the limits themselves where there are none. */
function wholeBetween(least: number, greatest: number): readonly [number, number] {
	const [low, high] = [Math.ceil(least - SLACK), Math.floor(greatest + SLACK)];
	return low <= high ? [low, high] : [least, greatest];
}

/** mm that a limit may be off a whole millimetre by the way it was reckoned. */
const SLACK = 1e-6;
