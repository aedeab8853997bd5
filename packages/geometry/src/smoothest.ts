import { bendCandidate, type Candidate, isReverse, reverseCandidate, runsFrom } from "./bend-candidate.ts";
import { type BendRow, bendsOfRow, bestRow, type Wanted } from "./bend-row.ts";
import type { WallChain } from "./chain.ts";
import type { BareBend, Corridor } from "./corridor.ts";
import type { Elbow } from "./elbow.ts";
import { faceCurve } from "./face.ts";
import type { FitRule, TrackEnds } from "./fit.ts";
import { lastThatHolds } from "./halving.ts";
import { type ProjectionsToTry, projectionsToTry } from "./projections-to-try.ts";
import { straightPast, wallsPassedFrom } from "./straight-past.ts";
import { AS_GOOD, SHORTEST_SEGMENT } from "./tolerance.ts";
import { arcIsWithin, straightIsWithin } from "./within-reach.ts";

/** Bends left to right, and the projection of the leg along each wall; that given along walls without one. */
export interface SmoothBends {
	readonly elbows: readonly Elbow[];
	readonly projections: readonly number[];
}

/** Halvings of the range in which the widest least radius is looked for: from some hundred mm to less than one. */
const HALVINGS = 10;

/**
 * The smoothest track inside a corridor along the walls: the fewest bends to be made, each round as many corners of one sense as it can
 * while it stays inside, and straight past whatever lies between two walls that one straight leg can serve; of these the row whose
 * tightest bend is widest, up to the radius preferred; of these the one whose legs are moved the least off their usual projections.
 * Null where there is none. A bend that would be too long for one that carries nothing is taken only where there is no other way. In
 * the spirit of approximating an open curve by the fewest arcs inside a tolerance channel (Drysdale, Rote and Sturm; Maier), with the
 * legs kept parallel to their walls.
 */
export function smoothBends(
	chain: WallChain,
	projections: readonly number[],
	ends: TrackEnds,
	rule: FitRule,
	corridor: Corridor,
): SmoothBends | null {
	const toTry = projectionsToTry(chain, projections, ends, rule, corridor);
	const plain = plainCandidates(chain, projections, ends, rule, corridor, toTry);
	let all: Candidate[][] | null = null;
	const fewest = (allowed: (candidate: Candidate) => Candidate[]) => {
		const widest = (candidates: Candidate[][]) =>
			widestRow(
				chain,
				projections,
				candidates.map((from) => from.flatMap(allowed)),
				ends,
				rule,
			);
		const row = widest(plain);
		// A reverse bend is two bends, and takes long to find: up to two no row with one has fewer.
		if (row !== null && row.made <= 2) return row;
		all ??= withReverses(plain, chain, projections, ends, rule, corridor, toTry);
		return all === plain ? row : widest(all);
	};
	const { bare } = corridor;
	const row = (bare ? fewest((candidate) => heldUp(candidate, bare)) : null) ?? fewest((candidate) => [candidate]);
	if (row === null) return null;
	const chosen = projections.slice();
	const elbows = bendsOfRow(row).map(({ candidate: { elbow, offLeft, offRight, least, greatest, fixed }, radius }) => {
		chosen[elbow.left] = offLeft;
		chosen[elbow.right] = offRight;
		return elbow.limits === null || fixed ? elbow : { ...elbow, limits: { least, greatest, sure: radius } };
	});
	return { elbows, projections: chosen };
}

/** Of the rows with the fewest bends the one whose tightest bend is widest, as far as the radius preferred. */
function widestRow(
	chain: WallChain,
	projections: readonly number[],
	candidates: readonly (readonly Candidate[])[],
	ends: TrackEnds,
	rule: FitRule,
): BendRow | null {
	const rowAt = (radius: number) =>
		bestRow(chain, projections, candidates, ends, rule, { radius, merit: ({ greatest }) => greatest, isBetter });
	const tight = rowAt(0);
	if (tight === null || tight.made === 0) return tight;
	const { preferredRadius } = rule;
	const preferred = rowAt(preferredRadius);
	if (preferred?.made === tight.made) return preferred;
	const asFew = (radius: number) => rowAt(radius)?.made === tight.made;
	return rowAt(lastThatHolds(asFew, 0, preferredRadius, HALVINGS));
}

/** Fewer bends, then legs less moved, then the widest that the tightest may be, then the longer track, which keeps nearer to the walls. */
const isBetter: Wanted["isBetter"] = (a, b) => {
	if (a.made !== b.made) return a.made < b.made;
	if (Math.abs(a.moved - b.moved) > AS_GOOD) return a.moved < b.moved;
	if (Math.abs(a.tightest - b.tightest) > AS_GOOD) return a.tightest > b.tightest;
	return a.length > b.length + AS_GOOD;
};

/** Every bend and every straight past others inside the corridor, for all the projections to try; by first corner. */
function plainCandidates(
	chain: WallChain,
	projections: readonly number[],
	{ start, end }: TrackEnds,
	rule: FitRule,
	corridor: Corridor,
	toTry: ProjectionsToTry,
): Candidate[][] {
	const candidates: Candidate[][] = Array.from({ length: start.wall + 1 }, () => []);
	for (let first = start.wall + 1; first <= end.wall; first++) {
		const from: Candidate[] = [];
		for (const last of runsFrom(chain, first, end.wall))
			for (const off of pairsOf(projections, toTry.all, first, last))
				from.push(...some(bendCandidate(chain, off, first, last, rule, corridor)));
		for (const last of wallsPassedFrom(chain, first, end.wall, rule))
			for (const off of pairsOf(projections, toTry.all, first, last))
				from.push(...some(straightPast(chain, off, first, last, rule, corridor)));
		candidates.push(from);
	}
	return candidates;
}

/** The same and reverse bends, for the usual and the outermost projections; the same array where there are none. */
function withReverses(
	plain: Candidate[][],
	chain: WallChain,
	projections: readonly number[],
	{ start, end }: TrackEnds,
	rule: FitRule,
	{ greatest }: Corridor,
	toTry: ProjectionsToTry,
): Candidate[][] {
	let all = plain;
	for (let first = start.wall + 1; first < end.wall; first++) {
		if (!isReverse(chain, first)) continue;
		for (const off of pairsOf(projections, toTry.own, first, first + 1)) {
			const reverse = some(reverseCandidate(chain, off, first, rule)).filter((one) => staysNear(chain, one, greatest));
			if (reverse.length > 0) all = all.with(first, [...(all[first] as Candidate[]), ...reverse]);
		}
	}
	return all;
}

/** Is a reverse bend nowhere further than `reach` from the nearest of its three walls? */
function staysNear(chain: WallChain, { elbow: { first, reverse } }: Candidate, reach: number): boolean {
	if (reverse === null) return true;
	const faces = [first - 1, first, first + 1].map((wall) => faceCurve(chain, wall));
	const { before, between, after } = reverse;
	return (
		arcIsWithin(before, faces, reach) &&
		arcIsWithin(after, faces, reach) &&
		(between.length < SHORTEST_SEGMENT || straightIsWithin(between, faces, reach))
	);
}

/** The projections with every pair in turn of those to try for the two legs of a bend. The same array each time: not to be kept. */
function* pairsOf(
	projections: readonly number[],
	toTry: readonly (readonly number[])[],
	first: number,
	last: number,
): Generator<readonly number[]> {
	const off = projections.slice();
	for (const left of toTry[first - 1] as readonly number[])
		for (const right of toTry[last] as readonly number[]) {
			off[first - 1] = left;
			off[last] = right;
			yield off;
		}
}

const some = <Value>(value: Value | null): Value[] => (value === null ? [] : [value]);

/** The bend where it is short enough to carry nothing, and where it is wide enough to carry something: both, one, or neither. */
function heldUp(candidate: Candidate, { under, longest }: BareBend): Candidate[] {
	const { elbow, made, fixed, least, greatest } = candidate;
	if (made === 0) return [candidate];
	if (elbow.reverse !== null) {
		const { before, between, after } = elbow.reverse;
		return before.length + between.length + after.length <= longest ? [candidate] : [];
	}
	// A radius that the user set is the user's.
	if (fixed || elbow.feet !== null) return [candidate];
	const shortest = longest / Math.abs(elbow.turn);
	if (shortest >= under) return [candidate];
	const short = { ...candidate, greatest: Math.min(greatest, shortest) };
	const wide = { ...candidate, least: Math.max(least, under) };
	return [short, wide].filter((one) => one.least <= one.greatest);
}
