import { type Radians, radians, wrapHeading } from "./angle.ts";
import { readChain, type WallChain, type WallFace } from "./chain.ts";
import { approach, atLeastApart, type Curve, nearestOn } from "./curve.ts";
import { faceCurve, footOnFace, pointOffFace } from "./face.ts";
import { lastThatHolds } from "./halving.ts";
import type { Point } from "./point.ts";
import { SLIGHT_TURN } from "./tolerance.ts";

/** A stretch of track with a heading at its start. */
interface Stretch extends Curve {
	readonly heading: Radians;
	readonly length: number;
}

/** An arc of a reverse bend. mm; turn right positive. */
export interface ReverseArc extends Stretch {
	readonly centre: Point;
	readonly radius: number;
	readonly turn: Radians;
}

/**
 * A reverse bend: two bends of opposite sense with a straight between that is tangent to both and follows no wall, in place of the
 * two bends of a leg too short for them. It starts `footLeft` mm along the wall on its left and ends `footRight` along that on its right.
 */
export interface Reverse {
	readonly footLeft: number;
	readonly footRight: number;
	readonly before: ReverseArc;
	readonly between: Stretch;
	readonly after: ReverseArc;
}

/** Steps in which a reverse bend is slid along its left leg in search of clearance; the last step is then halved to the exact limit. */
const STEPS = 64;
const HALVINGS = 40;

/**
 * The reverse bend past the short wall between corners `first` and `first` + 1, which turn opposite ways: both radii as given, the straight
 * between `straight` mm long, as near to the wall it passes as its clearance from every wall lets it. Null where there is none.
 */
export function reverseBetween(
	chain: WallChain,
	projections: readonly number[],
	first: number,
	radii: readonly [before: number, after: number],
	straight: number,
	clearance: number,
): Reverse | null {
	const walls = [first - 1, first, first + 1];
	if (walls.some((wall) => (chain.walls[wall] as WallFace).bow !== null)) return null;
	const corners = [...walls, first + 2].map((corner) => chain.corners[corner] as Point);
	const off = walls.map((wall) => projections[wall] as number);
	const reach = (chain.walls[first] as WallFace).length + 2 * (radii[0] + radii[1]) + straight;
	const near = facesNear(chain, first, 2 * reach + clearance);
	// Out round an external corner first, it is the mirror image of one that goes in first, read from the other end.
	if ((chain.turns[first] as number) > 0) return inFirst(corners, off, radii, straight, reach, near, clearance);
	const mirrored = inFirst(
		corners.map(mirror).toReversed(),
		off.toReversed(),
		[radii[1], radii[0]],
		straight,
		reach,
		near.map(mirrorFace),
		clearance,
	);
	const length = (wall: number) => (chain.walls[wall] as WallFace).length;
	return mirrored === null ? null : unmirror(mirrored, length(first - 1), length(first + 1));
}

/** The faces that come within `reach` of a corner: no reverse bend there is near any other. */
function facesNear(chain: WallChain, corner: number, reach: number): Curve[] {
	const at = chain.corners[corner] as Point;
	return chain.walls
		.map((_, wall) => faceCurve(chain, wall))
		.filter((face) => {
			const nearest = nearestOn(face, at);
			return Math.hypot(nearest.x - at.x, nearest.y - at.y) <= reach;
		});
}

/** Past a wall with an internal corner at its left and an external one at its right end: it starts as late as it can. */
function inFirst(
	corners: readonly Point[],
	projections: readonly number[],
	radii: readonly [number, number],
	straight: number,
	reach: number,
	near: readonly Curve[],
	clearance: number,
): Reverse | null {
	const read = readChain(corners);
	if (!read.ok) return null;
	const chain = read.value;
	const clears = (one: Curve) => (face: Curve) =>
		atLeastApart(one, face) >= clearance || approach(one, face).distance >= clearance;
	const clear = (at: number): Reverse | null => {
		const reverse = startingAt(chain, projections, radii, straight, at);
		if (reverse === null) return null;
		return [reverse.before, reverse.between, reverse.after].every((one) => near.every(clears(one))) ? reverse : null;
	};
	const length = (chain.walls[0] as WallFace).length;
	const step = Math.min(length, reach) / STEPS;
	for (let i = 0; i <= STEPS; i++) {
		const at = length - i * step;
		const reverse = clear(at);
		if (reverse === null) continue;
		return i === 0 ? reverse : clear(lastThatHolds((tried) => clear(tried) !== null, at, at + step, HALVINGS));
	}
	return null;
}

/**
 * The reverse bend that leaves the leg along wall 0 at `at` and ends on the leg along wall 2. How far its end is off wall 2 is
 * off₀ + R₁(cos Δ − cos φ) − m sin φ − R₂(cos φ − 1) for the net turn Δ and its second turn φ, which gives φ in closed form.
 */
function startingAt(
	chain: WallChain,
	projections: readonly number[],
	[r1, r2]: readonly [number, number],
	straight: number,
	at: number,
): Reverse | null {
	const turnIn = chain.turns[1] as number;
	const net = turnIn + (chain.turns[2] as number);
	const from = pointOffFace(chain, 0, at, projections[0] as number);
	const off = footOnFace(chain, 2, from).off;
	const across = off + r1 * Math.cos(net) + r2 - (projections[2] as number);
	const along = Math.hypot(r1 + r2, straight);
	if (Math.abs(across) > along) return null;
	const lean = Math.atan2(straight, r1 + r2);
	const swing = Math.acos(across / along);
	const second = wrapHeading(lean - swing);
	const firstTurn = net - second;
	// No steeper than the wall it passes: beyond that a wider projection is the cure. And with one bend alone it is no reverse bend.
	if (firstTurn > turnIn || Math.min(firstTurn, -second) < SLIGHT_TURN) return null;

	const before = arc(from, (chain.walls[0] as WallFace).heading, firstTurn, r1);
	const middle = before.heading - firstTurn;
	const to = { x: before.to.x + Math.cos(middle) * straight, y: before.to.y + Math.sin(middle) * straight };
	const after = arc(to, middle, second, r2);
	return {
		footLeft: at,
		footRight: footOnFace(chain, 2, after.to).at,
		before,
		between: { from: before.to, to, heading: radians(middle), length: straight },
		after,
	};
}

function arc(from: Point, heading: number, turn: number, radius: number): ReverseArc {
	const side = Math.sign(turn) * radius;
	const centre = { x: from.x + Math.sin(heading) * side, y: from.y - Math.cos(heading) * side };
	const end = heading - turn;
	const to = { x: centre.x - Math.sin(end) * side, y: centre.y + Math.cos(end) * side };
	return { from, to, centre, radius, turn: radians(turn), heading: radians(heading), length: radius * Math.abs(turn) };
}

const mirror = ({ x, y }: Point): Point => ({ x: -x, y });

/** A face in the mirror, from its other end: so a bow turns the way it did. */
function mirrorFace({ from, to, centre, radius, turn }: Curve): Curve {
	const straight = { from: mirror(to), to: mirror(from) };
	return centre === undefined || radius === undefined || turn === undefined
		? straight
		: { ...straight, centre: mirror(centre), radius, turn };
}

/** A reverse bend found in the mirror, read from its other end. */
function unmirror({ footLeft, footRight, before, between, after }: Reverse, left: number, right: number): Reverse {
	const back = (arcThere: ReverseArc): ReverseArc => ({
		from: mirror(arcThere.to),
		to: mirror(arcThere.from),
		centre: mirror(arcThere.centre),
		radius: arcThere.radius,
		turn: arcThere.turn,
		heading: radians(arcThere.turn - arcThere.heading),
		length: arcThere.length,
	});
	return {
		footLeft: left - footRight,
		footRight: right - footLeft,
		before: back(after),
		between: {
			from: mirror(between.to),
			to: mirror(between.from),
			heading: radians(-between.heading),
			length: between.length,
		},
		after: back(before),
	};
}
