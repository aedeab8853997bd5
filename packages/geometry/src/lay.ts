import { type Radians, radians } from "./angle.ts";
import type { BendPlan } from "./bend-plan.ts";
import type { WallChain, WallFace } from "./chain.ts";
import { type Elbow, straightEnds } from "./elbow.ts";
import { headingOfFace, pointOffFace } from "./face.ts";
import type { FittedTrack, TrackEnds } from "./fit.ts";
import type { Bow, Segment, Straight } from "./path.ts";
import type { Point } from "./point.ts";
import type { Reverse, ReverseArc } from "./reverse.ts";
import { JOIN_HEADING, NO_TURN, SHORTEST_SEGMENT } from "./tolerance.ts";

/** Lays the centre line along its legs and bends from the track's left end to its right. */
export function layTrack(
	chain: WallChain,
	projections: readonly number[],
	{ start, end }: TrackEnds,
	bends: BendPlan,
	radii: readonly number[],
): FittedTrack {
	const { elbows, legs } = bends;
	const segments: Segment[] = [];
	const legOf: number[] = [];
	const bendOf: number[] = [];
	const bendEndOf: number[] = [];
	let station = 0;
	let from = start.at;
	let here = pointOffFace(chain, start.wall, from, projections[start.wall] as number);

	for (let leg = 0; leg < legs.length; leg++) {
		const wall = legs[leg] as number;
		const elbow = elbows[leg];
		const radius = radii[leg] ?? 0;
		const bent = elbow !== undefined && elbow.reverse === null && Math.abs(elbow.turn) >= NO_TURN;
		const feet = elbow === undefined ? null : bent ? endsOf(elbow, radius) : null;
		const to = elbow === undefined ? end.at : (feet?.left ?? elbow.footLeft);
		const off = projections[wall] as number;
		const segment = legSegment(chain, wall, off, from, to, here, station);
		if (segment.length > shortest(segment)) {
			legOf.push(segments.length);
			segments.push(segment);
			station += segment.length;
			here = segment.to;
		} else legOf.push(-1);
		if (elbow === undefined) break;
		if (elbow.reverse !== null) {
			bendOf.push(segments.length);
			station = layReverse(elbow, here, station, segments);
			bendEndOf.push(segments.length - 1);
			here = (segments.at(-1) as Segment).to;
			from = elbow.footRight;
			continue;
		}
		if (feet === null) {
			bendOf.push(-1);
			bendEndOf.push(-1);
			from = elbow.footRight;
			continue;
		}
		from = feet.right;
		const exit = pointOffFace(chain, elbow.right, from, projections[elbow.right] as number);
		const { turn } = feet;
		bendOf.push(segments.length);
		bendEndOf.push(segments.length);
		const sweep = radius * Math.abs(turn);
		segments.push({
			kind: "bend",
			from: here,
			to: exit,
			start: station,
			length: sweep,
			heading: headingOfFace(chain, wall, to),
			centre: feet.centre ?? centreFrom(exit, chain.walls[elbow.right] as WallFace, turn > 0 ? radius : -radius),
			radius,
			turn,
			corners: cornersOf(elbow),
			sprung: bends.sprung.has(leg),
			reverse: false,
		});
		station += sweep;
		here = exit;
	}
	return { chain, projections, path: { segments, length: station }, bends, radii, legOf, bendOf, bendEndOf };
}

/** Length up to which a leg is dropped: on a bow so little that what it turns through is not told either. */
const shortest = (leg: Straight | Bow): number =>
	leg.kind === "straight" ? SHORTEST_SEGMENT : Math.min(SHORTEST_SEGMENT, (JOIN_HEADING / 2) * leg.radius);

/** The two bends and the straight of a reverse bend; returns the station at its end. */
function layReverse({ first, last, left, reverse }: Elbow, from: Point, start: number, segments: Segment[]): number {
	const { before, between, after } = reverse as Reverse;
	let station = start;
	const bend = (arc: ReverseArc, corner: number, at: Point) => {
		segments.push({ kind: "bend", ...arc, from: at, start: station, corners: [corner], sprung: false, reverse: true });
		station += arc.length;
	};
	bend(before, first, from);
	if (between.length > SHORTEST_SEGMENT) {
		segments.push({ kind: "straight", ...between, start: station, wall: left + 1, crosses: true });
		station += between.length;
	}
	bend(after, last, between.to);
	return station;
}

interface BendEnds {
	readonly left: number;
	readonly right: number;
	readonly turn: Radians;
	readonly centre: Point | null;
}

function endsOf(elbow: Elbow, radius: number): BendEnds {
	if (elbow.feet !== null) {
		const feet = elbow.feet(radius);
		if (feet === null) throw new Error("Broken invariant: a bend was given a radius that it cannot have.");
		return feet;
	}
	// Written out: to spread an object costs as much as all else that a bend takes.
	const { left, right } = straightEnds(elbow, radius);
	return { left, right, turn: elbow.turn, centre: null };
}

function legSegment(
	chain: WallChain,
	wall: number,
	off: number,
	from: number,
	to: number,
	here: Point,
	start: number,
): Straight | Bow {
	const { ux, uy, heading, bow } = chain.walls[wall] as WallFace;
	if (bow === null) {
		const length = to - from;
		const end = { x: here.x + ux * length, y: here.y + uy * length };
		return { kind: "straight", from: here, to: end, start, length, heading, wall, crosses: false };
	}
	const side = Math.sign(bow.turn);
	const turn = (side * (to - from)) / bow.radius;
	const radius = bow.radius - side * off;
	return {
		kind: "bow",
		from: here,
		to: pointOffFace(chain, wall, to, off),
		start,
		length: radius * Math.abs(turn) * Math.sign(to - from),
		heading: headingOfFace(chain, wall, from),
		centre: bow.centre,
		radius,
		turn: radians(turn),
		wall,
	};
}

/** The centre of an arc that ends at `exit` along a straight wall, `side` mm to its right. */
const centreFrom = ({ x, y }: Point, { ux, uy }: WallFace, side: number): Point => ({
	x: x + uy * side,
	y: y - ux * side,
});

function cornersOf({ first, last }: Elbow): readonly number[] {
	if (first === last) return [first];
	return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}
