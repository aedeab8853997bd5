import { type Curve, nearestOn } from "./curve.ts";
import type { Point } from "./point.ts";
import { LENGTH_SLACK, NO_TURN } from "./tolerance.ts";

/** An arc is looked at in pieces no longer than this (mm) where it is near the limit. */
const FINEST = 1;

/**
 * Is every point of an arc within `reach` of one of the walls? The distance to the nearest wall changes by no more than one goes along, so
 * a piece whose middle is well within is within as a whole, and others are halved.
 */
export function arcIsWithin(arc: Required<Curve>, faces: readonly Curve[], reach: number): boolean {
	const { from, centre, radius, turn } = arc;
	const isWithin = (start: number, end: number): boolean => {
		const middle = (start + end) / 2;
		const cos = Math.cos(-turn * middle);
		const sin = Math.sin(-turn * middle);
		const x = from.x - centre.x;
		const y = from.y - centre.y;
		const away = toNearest(faces, { x: centre.x + x * cos - y * sin, y: centre.y + x * sin + y * cos });
		const half = (radius * Math.abs(turn) * (end - start)) / 2;
		if (away > reach + LENGTH_SLACK) return false;
		return away + half <= reach || half < FINEST || (isWithin(start, middle) && isWithin(middle, end));
	};
	return isWithin(0, 1);
}

function toNearest(faces: readonly Curve[], p: Point): number {
	let least = Number.POSITIVE_INFINITY;
	for (const face of faces) {
		const { x, y } = nearestOn(face, p);
		least = Math.min(least, Math.hypot(x - p.x, y - p.y));
	}
	return least;
}

/** Is every point of a straight stretch within `reach` of one of the straight walls? By the stretch that each of them covers. */
export function straightIsWithin({ from, to }: Curve, faces: readonly Curve[], reach: number): boolean {
	const length = Math.hypot(to.x - from.x, to.y - from.y);
	const stretches: (readonly [number, number])[] = [];
	for (const face of faces) {
		const covered = coveredBy(face, from, (to.x - from.x) / length, (to.y - from.y) / length, reach);
		if (covered !== null) stretches.push(covered);
	}
	stretches.sort((a, b) => a[0] - b[0]);
	let upTo = 0;
	for (const [start, end] of stretches) if (start <= upTo + LENGTH_SLACK) upTo = Math.max(upTo, end);
	return upTo >= length - LENGTH_SLACK;
}

/** The stretch of a line within `reach` of a straight wall: what its ends' circles and the strip along it cover, which is one stretch. */
function coveredBy(
	face: Curve,
	{ x, y }: Point,
	ux: number,
	uy: number,
	reach: number,
): readonly [number, number] | null {
	let low = Number.POSITIVE_INFINITY;
	let high = Number.NEGATIVE_INFINITY;
	const cover = (start: number, end: number) => {
		if (!(start <= end)) return;
		low = Math.min(low, start);
		high = Math.max(high, end);
	};
	for (const corner of [face.from, face.to]) {
		const along = (corner.x - x) * ux + (corner.y - y) * uy;
		const off = (corner.x - x) * uy - (corner.y - y) * ux;
		const half = Math.sqrt(reach * reach - off * off);
		cover(along - half, along + half);
	}
	const long = Math.hypot(face.to.x - face.from.x, face.to.y - face.from.y);
	const wx = (face.to.x - face.from.x) / long;
	const wy = (face.to.y - face.from.y) / long;
	const across = between(-reach, reach, (x - face.from.x) * wy - (y - face.from.y) * wx, ux * wy - uy * wx);
	const beside = between(0, long, (x - face.from.x) * wx + (y - face.from.y) * wy, ux * wx + uy * wy);
	cover(Math.max(across[0], beside[0]), Math.min(across[1], beside[1]));
	return low <= high ? [low, high] : null;
}

/** Where on a line a figure that starts at `at` and grows by `rate` lies from `low` to `high`. */
function between(low: number, high: number, at: number, rate: number): readonly [number, number] {
	if (Math.abs(rate) < NO_TURN)
		return at >= low - LENGTH_SLACK && at <= high + LENGTH_SLACK
			? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
			: [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
	const ends = [(low - at) / rate, (high - at) / rate] as const;
	return ends[0] < ends[1] ? ends : [ends[1], ends[0]];
}
