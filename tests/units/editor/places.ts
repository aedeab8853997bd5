import type { Bay, WallPlace } from "@baywright/setout";
import { faceAt } from "./under-point.ts";

export const chordOf = ({ corners }: Bay, wall: number) => {
	const [a, b] = [corners[wall], corners[wall + 1]] as [readonly [number, number], readonly [number, number]];
	return Math.hypot(b[0] - a[0], b[1] - a[1]);
};

/** Along the face: chord c and rise h make an arc of 4·atan(2h/c) on a radius of (c²/4 + h²)/2h. */
export const faceOf = (bay: Bay, wall: number) => {
	const [c, h] = [chordOf(bay, wall), Math.abs(bay.walls[wall]?.rise ?? 0)];
	return h === 0 ? c : (4 * Math.atan((2 * h) / c) * ((c * c) / 4 + h * h)) / (2 * h);
};

/** A place on a wall as a point of the plan. */
export const pointOf = (bay: Bay, { wall, at }: WallPlace) => faceAt(bay, wall, at / faceOf(bay, wall));

export const apart = (a: { x: number; y: number }, b: { x: number; y: number }) => Math.hypot(a.x - b.x, a.y - b.y);

/** Every place that the bay names, in the order of its lists. */
export const placesOf = ({ track, openings, obstacles, fitted }: Bay): readonly WallPlace[] => [
	...[track.start, track.end].filter((it) => it !== null),
	...(typeof track.joints === "string" ? [] : track.joints),
	...track.brackets,
	...obstacles.flatMap(({ wall, from, to }) => [
		{ wall, at: from },
		{ wall, at: to },
	]),
	...openings.flatMap(({ wall, from, to }) => [
		{ wall, at: from },
		{ wall, at: to },
	]),
	...fitted.brackets.flatMap(({ wall, at, planned }) => [
		{ wall, at },
		{ wall, at: planned ?? Number.NaN },
	]),
	...fitted.spans.flatMap(({ from, to }) => [from, to]),
];

/** Every place that the bay names as points of the plan, to a whole mm, in no order. */
export const spots = (bay: Bay, move = (x: number) => x) =>
	placesOf(bay)
		.map((place) => pointOf(bay, place))
		.map(({ x, y }) => `${Math.round(move(x))} ${Math.round(y)}`)
		.sort();
