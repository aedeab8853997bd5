import type { Bay, BayPlan, WallPlace } from "@baywright/setout";
import { changeAt, withoutAt } from "./on-bay.ts";

/** Where the track's left or right end stands; null = at the end of the bay. */
export function setEnd(bay: Bay, end: "start" | "end", place: WallPlace | null): Bay {
	return { ...bay, track: { ...bay.track, [end]: place } };
}

/** Gives one corner a radius of its own (mm), or leaves it to be chosen again (null). */
export function setRadius(bay: Bay, corner: number, radius: number | null): Bay {
	const others = bay.track.bends.filter((bend) => bend.corner !== corner);
	const bends = radius === null ? others : [...others, { corner, radius }];
	return { ...bay, track: { ...bay.track, bends: bends.sort((a, b) => a.corner - b.corner) } };
}

/** The joints as places, however they came about. */
export function jointPlaces({ track }: Bay, plan: BayPlan): readonly WallPlace[] {
	return typeof track.joints === "string" ? plan.joints.map(({ wall, at }) => ({ wall, at })) : track.joints;
}

/** Joints of the user's own, from left to right. */
export function setJoints(bay: Bay, joints: readonly WallPlace[] | "auto" | "none"): Bay {
	const next = typeof joints === "string" ? joints : joints.toSorted((a, b) => a.wall - b.wall || a.at - b.at);
	return { ...bay, track: { ...bay.track, joints: next.length === 0 ? "none" : next } };
}

/** Moves a joint of the plan; from then on all joints stand where they are put. */
export const moveJoint = (bay: Bay, plan: BayPlan, index: number, place: WallPlace): Bay =>
	setJoints(
		bay,
		changeAt(jointPlaces(bay, plan), ownJoint(bay, plan, index), () => place),
	);

export const removeJoint = (bay: Bay, plan: BayPlan, index: number): Bay =>
	setJoints(bay, withoutAt(jointPlaces(bay, plan), ownJoint(bay, plan, index)));

export const addJoint = (bay: Bay, plan: BayPlan, place: WallPlace): Bay =>
	setJoints(bay, [...jointPlaces(bay, plan), place]);

/** A joint of the plan among the places: the user's own need not stand in order, and some may lie off the track. */
function ownJoint(bay: Bay, plan: BayPlan, index: number): number {
	const joint = plan.joints[index];
	if (joint === undefined) return index;
	const away = ({ wall, at }: WallPlace) => (wall === joint.wall ? Math.abs(at - joint.at) : Number.POSITIVE_INFINITY);
	const aways = jointPlaces(bay, plan).map(away);
	return aways.indexOf(Math.min(...aways));
}

/** mm along a wall within which a bracket is the one that was pinned there. */
export const SAME_PIN = 1;

/** The pin that holds a bracket of the plan: its place in the list of pins, or null where the rule has put the bracket there. */
export function pinOf(bay: Bay, plan: BayPlan, bracket: number): number | null {
	const it = plan.brackets[bracket];
	if (it === undefined) return null;
	const pin = bay.track.brackets.findIndex(
		({ wall, at }) => wall === it.wall && Math.abs(at - it.fromLeftCorner) < SAME_PIN,
	);
	return pin < 0 ? null : pin;
}

/** Pins a bracket at a place: `pin` is moved, or where it is null there is one more. */
export function setPin(bay: Bay, pin: number | null, place: WallPlace): Bay {
	const { brackets } = bay.track;
	const next = pin === null ? [...brackets, place] : changeAt(brackets, pin, () => place);
	return { ...bay, track: { ...bay.track, brackets: next } };
}

export const releasePin = (bay: Bay, pin: number): Bay => ({
	...bay,
	track: { ...bay.track, brackets: withoutAt(bay.track.brackets, pin) },
});
