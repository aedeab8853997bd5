import type { WallChain, WallFace } from "./chain.ts";
import { type Elbow, elbowBetween, reverseElbow } from "./elbow.ts";
import { stretchOff } from "./face.ts";
import type { FitRule, TrackEnds } from "./fit.ts";
import { feetOf, radiusLimits } from "./radius-limits.ts";
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
	readonly least: number;
	readonly straight: number;
}

/** The best row of bends that ends in a candidate. */
interface Row {
	readonly candidate: Candidate;
	readonly before: Row | null;
	readonly bends: number;
	/** Least radius among its bridging bends. */
	readonly tightest: number;
}

/**
 * Which corners share a bend so that every leg left is long enough at the least radii: the bridging that keeps the most legs, of these
 * the one whose tightest bridging bend is widest. Null where none does. Dynamic programming over the corners from left to right.
 */
export function bridgeFacets(
	chain: WallChain,
	projections: readonly number[],
	{ start, end }: TrackEnds,
	rule: FitRule,
): Elbow[] | null {
	const ending: Row[][] = Array.from({ length: chain.corners.length }, () => []);
	for (let first = start.wall + 1; first <= end.wall; first++) {
		for (const candidate of candidatesFrom(chain, projections, first, end.wall, rule)) {
			const row = bestBefore(chain, projections, candidate, ending[first - 1] as Row[], start, rule);
			if (row !== null) (ending[candidate.elbow.last] as Row[]).push(row);
		}
	}
	let best: Row | null = null;
	for (const row of ending[end.wall] as Row[]) {
		const { candidate } = row;
		const room = trackAlong(chain, projections, candidate.elbow.right, candidate.endsRight, end.at);
		if (room + LENGTH_SLACK < candidate.straight + rule.endStraight) continue;
		if (best === null || isBetter(row, best)) best = row;
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
		const candidate = elbow === null ? null : candidateOf(chain, projections, elbow, rule);
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
		least: Math.min(...radii),
		straight: straightBesideBend,
	};
}

function candidateOf(
	chain: WallChain,
	projections: readonly number[],
	elbow: Elbow,
	{ leastRadius, clearance, straightBesideBend, setRadii }: FitRule,
): Candidate | null {
	const { first, last, turn } = elbow;
	const slight = Math.abs(turn) < SLIGHT_TURN;
	let least = 0;
	if (Math.abs(turn) >= NO_TURN) {
		const limits = radiusLimits(chain, projections, elbow, clearance);
		least = Math.max(turn > 0 ? leastRadius.internal : leastRadius.external, limits.least);
		for (let corner = first; corner <= last && !slight; corner++) least = Math.max(least, setRadii.get(corner) ?? 0);
		if (!(least <= limits.greatest)) return null;
	}
	const feet = feetOf(elbow, least);
	if (feet === null) return null;
	return {
		elbow,
		endsLeft: feet.left,
		endsRight: feet.right,
		least,
		straight: slight ? 0 : straightBesideBend,
	};
}

function bestBefore(
	chain: WallChain,
	projections: readonly number[],
	candidate: Candidate,
	rows: readonly Row[],
	start: TrackEnds["start"],
	rule: FitRule,
): Row | null {
	const { left } = candidate.elbow;
	const bridges = candidate.elbow.first < candidate.elbow.last;
	const tightest = bridges ? candidate.least : Number.POSITIVE_INFINITY;
	if (left === start.wall) {
		const room = trackAlong(chain, projections, start.wall, start.at, candidate.endsLeft);
		const fits = room + LENGTH_SLACK >= candidate.straight + rule.endStraight;
		return fits ? { candidate, before: null, bends: 1, tightest } : null;
	}
	let best: Row | null = null;
	for (const before of rows) {
		const room = trackAlong(chain, projections, left, before.candidate.endsRight, candidate.endsLeft);
		if (room + LENGTH_SLACK < before.candidate.straight + candidate.straight) continue;
		if (best === null || isBetter(before, best)) best = before;
	}
	return best === null
		? null
		: { candidate, before: best, bends: best.bends + 1, tightest: Math.min(best.tightest, tightest) };
}

const isBetter = (a: Row, b: Row): boolean => a.bends > b.bends || (a.bends === b.bends && a.tightest > b.tightest);

const isBowed = ({ walls }: WallChain, wall: number): boolean => (walls[wall] as WallFace).bow !== null;

const trackAlong = (chain: WallChain, projections: readonly number[], wall: number, from: number, to: number): number =>
	(to - from) * stretchOff(chain, wall, projections[wall] as number);
