import { radians } from "./angle.ts";
import { type Candidate, MOST_CORNERS, setBetween } from "./bend-candidate.ts";
import type { WallChain, WallFace } from "./chain.ts";
import type { Corridor } from "./corridor.ts";
import { approach, atLeastApart, type Curve } from "./curve.ts";
import { bridgingElbow, type Elbow, straightEnds } from "./elbow.ts";
import { faceCurve, footOnFace, pointOffFace } from "./face.ts";
import type { FitRule } from "./fit.ts";
import type { Point } from "./point.ts";
import { LENGTH_SLACK, NO_TURN, SLIGHT_TURN, SPRUNG_RADIUS } from "./tolerance.ts";
import { wedgeOf } from "./wedge.ts";
import { straightIsWithin } from "./within-reach.ts";

/** Slight turns in a row that are passed as one, where the walls between are too short for a leg. */
const SLIGHT_IN_A_ROW = 3;

/**
 * Last corners of what a straight track could pass that leaves the wall on the left of `first`: the wall on the right of such a corner is
 * parallel to that on the left of `first`, or all but, whatever the corners between.
 */
export function* wallsPassedFrom(
	{ turns, walls }: WallChain,
	first: number,
	until: number,
	{ setRadii }: FitRule,
): Generator<number> {
	const isSlight = (turn: number) => Math.abs(turn) < SLIGHT_TURN;
	let allSlight = true;
	let turn = 0;
	for (let last = first; last <= until && last - first < MOST_CORNERS; last++) {
		const here = turns[last] as number;
		turn += here;
		allSlight &&= isSlight(here);
		const bowed = (walls[last - 1] as WallFace).bow !== null || (walls[last] as WallFace).bow !== null;
		if (bowed || setBetween(setRadii, last, last).length > 0) return;
		// Slight turns before and after what is passed are sprung round by themselves.
		const bounded = !isSlight(turns[first] as number) && !isSlight(here);
		if (isSlight(turn) && (allSlight ? last - first < SLIGHT_IN_A_ROW : bounded)) yield last;
	}
}

/**
 * Two legs that make one straight track past everything between them, or spring where they meet: clear of the walls between by the least
 * projection, nowhere further from the nearest than the greatest. Null where they are not in line or do not keep to that.
 */
export function straightPast(
	chain: WallChain,
	projections: readonly number[],
	first: number,
	last: number,
	rule: FitRule,
	corridor: Corridor,
): Candidate | null {
	const offLeft = projections[first - 1] as number;
	const offRight = projections[last] as number;
	// At one corner legs as far off both walls meet anyway.
	if (first === last && offLeft === offRight) return null;
	const elbow = inLine(chain, projections, first, last);
	if (elbow === null) return null;
	const { footLeft, footRight, turn, left, right } = elbow;
	const from = pointOffFace(chain, left, 0, offLeft);
	const apex = pointOffFace(chain, left, footLeft, offLeft);
	const to = pointOffFace(chain, right, (chain.walls[right] as WallFace).length, offRight);
	if (footLeft <= 0 || footRight >= (chain.walls[right] as WallFace).length) return null;
	const faces = Array.from({ length: right - left + 1 }, (_, i) => faceCurve(chain, left + i));
	const isNear = (stretch: Curve) => straightIsWithin(stretch, faces, corridor.greatest);
	if (!isNear({ from, to: apex }) || !isNear({ from: apex, to })) return null;

	const springs = Math.abs(turn) >= NO_TURN;
	const tightest = !springs ? 0 : turn > 0 ? rule.leastRadius.internal : rule.leastRadius.external;
	const radius = (springs ? [SPRUNG_RADIUS, tightest] : [0]).find((tried) =>
		keepsClear(chain, projections, elbow, [from, to], tried, rule.clearance, corridor.least),
	);
	if (radius === undefined || radius < tightest) return null;
	return {
		elbow: { ...elbow, limits: { least: tightest, greatest: radius, sure: 0 } },
		offLeft,
		offRight,
		least: tightest,
		greatest: Number.POSITIVE_INFINITY,
		fixed: true,
		straight: 0,
		made: 0,
	};
}

/** The legs' own meeting, or where they are one straight line the middle of what lies between. */
function inLine(chain: WallChain, projections: readonly number[], first: number, last: number): Elbow | null {
	const elbow = bridgingElbow(chain, projections, first, last);
	if (elbow !== null && Math.abs(elbow.turn) >= NO_TURN) return elbow;
	const footLeft = middleOfPassed(chain, first, last);
	const middle = pointOffFace(chain, first - 1, footLeft, projections[first - 1] as number);
	const foot = footOnFace(chain, last, middle);
	if (Math.abs(foot.off - (projections[last] as number)) > LENGTH_SLACK) return null;
	return {
		first,
		last,
		left: first - 1,
		right: last,
		turn: radians(0),
		footLeft,
		footRight: foot.at,
		slope: 0,
		feet: null,
		limits: null,
		reverse: null,
	};
}

/** Half-way from the wall on the left of `first` to that on the right of `last`, mm along the first of them. */
function middleOfPassed(chain: WallChain, first: number, last: number): number {
	const { length } = chain.walls[first - 1] as WallFace;
	return (length + footOnFace(chain, first - 1, chain.corners[last] as Point).at) / 2;
}

/** The projection along the wall on the right of `last` that meets, half-way between the two, a leg `off` mm off the wall on the left of `first`. */
export function inLineAfter(chain: WallChain, first: number, last: number, off: number): number {
	return footOnFace(chain, last, pointOffFace(chain, first - 1, middleOfPassed(chain, first, last), off)).off;
}

/** The same from right to left. */
export function inLineBefore(chain: WallChain, first: number, last: number, off: number): number {
	const middle = pointOffFace(chain, first - 1, middleOfPassed(chain, first, last), 0);
	return footOnFace(chain, first - 1, pointOffFace(chain, last, footOnFace(chain, last, middle).at, off)).off;
}

function keepsClear(
	chain: WallChain,
	projections: readonly number[],
	elbow: Elbow,
	[from, to]: readonly [Point, Point],
	radius: number,
	clearance: number,
	least: number,
): boolean {
	const { left, right, turn } = elbow;
	const feet = straightEnds(elbow, radius);
	const start = pointOffFace(chain, left, feet.left, projections[left] as number);
	const end = pointOffFace(chain, right, feet.right, projections[right] as number);
	const { apex, along } = wedgeOf(chain, projections, elbow);
	const centre = { x: apex.x + radius * along.x, y: apex.y + radius * along.y };
	const path: Curve[] = [{ from, to: start }, ...(radius > 0 ? [{ from: start, to: end, centre, radius, turn }] : [])];
	path.push({ from: end, to });
	for (let wall = left; wall <= right; wall++) {
		const face = faceCurve(chain, wall);
		// Along its own two walls it is as far off as its legs are, but for what it cuts where it springs.
		const limit = (wall === left || wall === right ? clearance : least) - LENGTH_SLACK;
		if (path.some((one) => atLeastApart(one, face) < limit && approach(one, face).distance < limit)) return false;
	}
	return true;
}
