/** A place with a heading, radians counter-clockwise from +x. */
export interface Pose {
	readonly x: number;
	readonly y: number;
	readonly heading: number;
}

/**
 * Length of the shortest path from one pose to another that bends no tighter than `radius`: the least of the six words of
 * L. E. Dubins (American Journal of Mathematics 79, 1957), each laid out with circles in the plane.
 */
export function dubins(from: Pose, to: Pose, radius: number): number {
	const words = [-1, 1].flatMap((first) => [
		...[-1, 1].map((last) => bendStraightBend(from, to, radius, first, last)),
		...[false, true].map((wide) => bendBendBend(from, to, radius, first, wide)),
	]);
	return Math.min(...words);
}

/** Centre of the circle on the left (1) or right (−1) of a pose. */
const centreOf = ({ x, y, heading }: Pose, radius: number, side: number) => ({
	x: x - side * radius * Math.sin(heading),
	y: y + side * radius * Math.cos(heading),
});

/** Angle from one direction to another going left (1) or right (−1), in [0, 2π). */
function sweep(from: number, to: number, side: number): number {
	const whole = 2 * Math.PI;
	const angle = (((side * (to - from)) % whole) + whole) % whole;
	return whole - angle < 1e-9 ? 0 : angle;
}

function bendStraightBend(from: Pose, to: Pose, radius: number, first: number, last: number): number {
	const a = centreOf(from, radius, first);
	const b = centreOf(to, radius, last);
	const apart = Math.hypot(b.x - a.x, b.y - a.y);
	const across = first === last ? 0 : 2 * radius;
	if (apart < across) return Number.POSITIVE_INFINITY;
	// The common tangent runs along the line of centres, turned towards the side of the first circle where it changes sides.
	const heading = Math.atan2(b.y - a.y, b.x - a.x) + first * Math.asin(across === 0 ? 0 : across / apart);
	const straight = Math.sqrt(Math.max(0, apart * apart - across * across));
	const direction = apart < 1e-12 ? from.heading : heading;
	return radius * (sweep(from.heading, direction, first) + sweep(direction, to.heading, last)) + straight;
}

function bendBendBend(from: Pose, to: Pose, radius: number, side: number, wide: boolean): number {
	const a = centreOf(from, radius, side);
	const b = centreOf(to, radius, side);
	const apart = Math.hypot(b.x - a.x, b.y - a.y);
	if (apart > 4 * radius || apart < 1e-12) return Number.POSITIVE_INFINITY;
	// The middle circle touches both; it lies on either side of the line of centres.
	const towards = Math.atan2(b.y - a.y, b.x - a.x) + (wide ? 1 : -1) * Math.acos(apart / (4 * radius));
	const m = { x: a.x + 2 * radius * Math.cos(towards), y: a.y + 2 * radius * Math.sin(towards) };
	const headingAt = (centre: typeof a) =>
		Math.atan2((centre.y + m.y) / 2 - centre.y, (centre.x + m.x) / 2 - centre.x) + (side * Math.PI) / 2;
	const leaves = headingAt(a);
	const joins = headingAt(b);
	return radius * (sweep(from.heading, leaves, side) + sweep(leaves, joins, -side) + sweep(joins, to.heading, side));
}
