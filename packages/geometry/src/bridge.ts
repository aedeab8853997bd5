import type { WallChain, WallFace } from "./chain.ts";
import { type Corridor, corridorLimits } from "./corridor.ts";
import { type Elbow, elbowBetween, reverseElbow } from "./elbow.ts";
import { stretchOff } from "./face.ts";
import type { FitRule, TrackEnds } from "./fit.ts";
import { feetOf, type RadiusLimits, radiusLimits } from "./radius-limits.ts";
import { reverseBetween } from "./reverse.ts";
import { LENGTH_SLACK, NO_TURN, SLIGHT_TURN } from "./tolerance.ts";

/** Most corners that one bend may go round: more than any bay has facets in a row. */
const MOST_CORNERS = 24;

/** Facets are bridged up to this turn in all (rad): at 180° the outer legs no longer meet. */
const MOST_TURN = (175 * Math.PI) / 180;

/** A bend that could be: its corners, and what it takes of its two legs at the least radius that it can have. */
interface Candidate {
	readonly elbow: Elbow;
	/** mm along the faces of its left and right wall. */
	readonly endsLeft: number;
	readonly endsRight: number;
	/** The radius by which rows with as many bends are compared: the widest that the corridor lets it have, or the least of a bridging bend. */
	readonly merit: number;
	readonly straight: number;
	/** Length of the bend at its least radius. */
	readonly sweep: number;
}

/** The best row of bends that ends in a candidate. */
interface Row {
	readonly candidate: Candidate;
	readonly before: Row | null;
	readonly bends: number;
	/** The least merit among its bends. */
	readonly tightest: number;
	/** Track up to the end of its last bend, mm. */
	readonly length: number;
}

/** What is wanted of a bridging: as many legs as possible, or inside a corridor as few bends as possible. */
type Wish = { readonly corridor: Corridor } | null;

/**
 * The smoothest track inside a corridor along the walls: the fewest bends, each round as many corners of one sense as it can while it
 * stays inside, of these the row whose tightest bend is widest. Null where there is none. In the spirit of approximating an open
 * curve by the fewest arcs inside a tolerance channel (Drysdale, Rote and Sturm; Maier), with the legs kept parallel to their walls.
 */
export function smoothBends(
	chain: WallChain,
	projections: readonly number[],
	ends: TrackEnds,
	rule: FitRule,
	corridor: Corridor,
): Elbow[] | null {
	return bestRow(chain, projections, ends, rule, { corridor });
}

/**
 * Which corners share a bend so that every leg left is long enough at the least radii: the bridging that keeps the most legs, of these
 * the one whose tightest bridging bend is widest. Null where none does. Dynamic programming over the corners from left to right.
 */
export function bridgeFacets(
	chain: WallChain,
	projections: readonly number[],
	ends: TrackEnds,
	rule: FitRule,
): Elbow[] | null {
	return bestRow(chain, projections, ends, rule, null);
}

function bestRow(
	chain: WallChain,
	projections: readonly number[],
	{ start, end }: TrackEnds,
	rule: FitRule,
	wish: Wish,
): Elbow[] | null {
	const ending: Row[][] = Array.from({ length: chain.corners.length }, () => []);
	for (let first = start.wall + 1; first <= end.wall; first++) {
		for (const candidate of candidatesFrom(chain, projections, first, end.wall, rule, wish)) {
			const row = bestBefore(chain, projections, candidate, ending[first - 1] as Row[], start, rule, wish);
			if (row !== null) (ending[candidate.elbow.last] as Row[]).push(row);
		}
	}
	let best: Row | null = null;
	for (const row of ending[end.wall] as Row[]) {
		const { candidate } = row;
		const room = trackAlong(chain, projections, candidate.elbow.right, candidate.endsRight, end.at);
		if (room + LENGTH_SLACK < candidate.straight + rule.endStraight) continue;
		const whole = { ...row, length: row.length + room };
		if (best === null || isBetter(whole, best, wish)) best = whole;
	}
	if (best === null) return null;
	const elbows: Elbow[] = [];
	for (let row: Row | null = best; row !== null; row = row.before) elbows.unshift(row.candidate.elbow);
	return elbows;
}

function* candidatesFrom(
	chain: WallChain,
	projections: readonly number[],
	first: number,
	until: number,
	rule: FitRule,
	wish: Wish,
): Generator<Candidate> {
	const reverse = first < until ? reverseCandidate(chain, projections, first, rule) : null;
	if (reverse !== null) yield reverse;
	let turn = 0;
	for (let last = first; last <= until && last - first < MOST_CORNERS; last++) {
		const here = chain.turns[last] as number;
		if (last > first && (here > 0 !== turn > 0 || isBowed(chain, last - 1) || Math.abs(turn + here) > MOST_TURN))
			return;
		turn += here;
		const elbow = elbowBetween(chain, projections, first, last);
		const candidate = elbow === null ? null : candidateOf(chain, projections, elbow, rule, wish);
		if (candidate !== null) yield candidate;
	}
}

/** Past a wall between opposite turns: as the last resort, since it keeps one leg fewer. */
function reverseCandidate(
	chain: WallChain,
	projections: readonly number[],
	first: number,
	{ leastRadius, straightBesideBend, clearance }: FitRule,
): Candidate | null {
	const turn = chain.turns[first] as number;
	const next = chain.turns[first + 1] as number;
	if (turn * next >= 0 || Math.min(Math.abs(turn), Math.abs(next)) < SLIGHT_TURN) return null;
	const radius = (of: number) => (of > 0 ? leastRadius.internal : leastRadius.external);
	const radii = [radius(turn), radius(next)] as const;
	const reverse = reverseBetween(chain, projections, first, radii, straightBesideBend, clearance);
	if (reverse === null) return null;
	return {
		elbow: reverseElbow(chain, first, reverse),
		endsLeft: reverse.footLeft,
		endsRight: reverse.footRight,
		merit: Math.min(...radii),
		straight: straightBesideBend,
		sweep: reverse.before.length + reverse.between.length + reverse.after.length,
	};
}

function candidateOf(
	chain: WallChain,
	projections: readonly number[],
	elbow: Elbow,
	{ leastRadius, clearance, straightBesideBend, setRadii }: FitRule,
	wish: Wish,
): Candidate | null {
	const { first, last, turn } = elbow;
	const slight = Math.abs(turn) < SLIGHT_TURN;
	let least = 0;
	let known: RadiusLimits | null = null;
	let merit = Number.POSITIVE_INFINITY;
	if (Math.abs(turn) >= NO_TURN) {
		const tightest = turn > 0 ? leastRadius.internal : leastRadius.external;
		const inCorridor = wish !== null && elbow.feet === null && !slight;
		const limits = inCorridor
			? corridorLimits(chain, projections, elbow, wish.corridor, clearance, tightest)
			: radiusLimits(chain, projections, elbow, clearance);
		if (inCorridor) known = limits;
		least = Math.max(tightest, limits.least);
		const set = slight ? [] : setBetween(setRadii, first, last);
		if (set.length > 1) return null;
		least = Math.max(least, ...set);
		if (!(least <= limits.greatest)) return null;
		if (wish !== null) merit = limits.greatest;
		else if (first < last) merit = least;
	}
	const feet = feetOf(elbow, least);
	if (feet === null) return null;
	return {
		elbow: known === null ? elbow : { ...elbow, limits: known },
		endsLeft: feet.left,
		endsRight: feet.right,
		merit,
		straight: slight ? 0 : straightBesideBend,
		sweep: least * Math.abs(turn),
	};
}

/** Radii that the user has set at these corners: two of them are two bends, and never bridged into one. */
function setBetween(setRadii: ReadonlyMap<number, number>, first: number, last: number): number[] {
	if (setRadii.size === 0) return [];
	const radii: number[] = [];
	for (let corner = first; corner <= last; corner++) {
		const radius = setRadii.get(corner);
		if (radius !== undefined) radii.push(radius);
	}
	return radii;
}

function bestBefore(
	chain: WallChain,
	projections: readonly number[],
	candidate: Candidate,
	rows: readonly Row[],
	start: TrackEnds["start"],
	rule: FitRule,
	wish: Wish,
): Row | null {
	const { left } = candidate.elbow;
	const tightest = candidate.merit;
	if (left === start.wall) {
		const room = trackAlong(chain, projections, start.wall, start.at, candidate.endsLeft);
		const fits = room + LENGTH_SLACK >= candidate.straight + rule.endStraight;
		return fits ? { candidate, before: null, bends: 1, tightest, length: room + candidate.sweep } : null;
	}
	let best: Row | null = null;
	for (const before of rows) {
		const room = trackAlong(chain, projections, left, before.candidate.endsRight, candidate.endsLeft);
		if (room + LENGTH_SLACK < before.candidate.straight + candidate.straight) continue;
		const row = {
			candidate,
			before,
			bends: before.bends + 1,
			tightest: Math.min(before.tightest, tightest),
			length: before.length + room + candidate.sweep,
		};
		if (best === null || isBetter(row, best, wish)) best = row;
	}
	return best;
}

/** More legs (or in a corridor fewer bends), then the wider tightest bend, then the longer track, which keeps nearer to the walls. */
function isBetter(a: Row, b: Row, wish: Wish): boolean {
	if (a.bends !== b.bends) return wish === null ? a.bends > b.bends : a.bends < b.bends;
	if (Math.abs(a.tightest - b.tightest) > LENGTH_SLACK) return a.tightest > b.tightest;
	return a.length > b.length + LENGTH_SLACK;
}

const isBowed = ({ walls }: WallChain, wall: number): boolean => (walls[wall] as WallFace).bow !== null;

const trackAlong = (chain: WallChain, projections: readonly number[], wall: number, from: number, to: number): number =>
	(to - from) * stretchOff(chain, wall, projections[wall] as number);
