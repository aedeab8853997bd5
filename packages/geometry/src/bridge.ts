import { bendCandidate, type Candidate, reverseCandidate, runsFrom } from "./bend-candidate.ts";
import { type BendRow, bendsOfRow, bestRow } from "./bend-row.ts";
import type { WallChain } from "./chain.ts";
import type { Elbow } from "./elbow.ts";
import type { FitRule, TrackEnds } from "./fit.ts";
import { LENGTH_SLACK } from "./tolerance.ts";

/**
 * Which corners share a bend so that every leg left is long enough at the least radii: the bridging that keeps the most legs, of these
 * the one whose tightest bridging bend is widest. Null where none does.
 */
export function bridgeFacets(
	chain: WallChain,
	projections: readonly number[],
	ends: TrackEnds,
	rule: FitRule,
): Elbow[] | null {
	const candidates: Candidate[][] = [];
	for (let first = ends.start.wall + 1; first <= ends.end.wall; first++) {
		const reverse = first < ends.end.wall ? reverseCandidate(chain, projections, first, rule) : null;
		const from = reverse === null ? [] : [reverse];
		for (const last of runsFrom(chain, first, ends.end.wall)) {
			const candidate = bendCandidate(chain, projections, first, last, rule, null);
			if (candidate !== null) from.push(candidate);
		}
		candidates[first] = from;
	}
	const row = bestRow(chain, projections, candidates, ends, rule, { radius: 0, merit: bridgingRadius, isBetter });
	return row === null ? null : bendsOfRow(row).map(({ candidate }) => candidate.elbow);
}

/** Bends at one corner are widened afterwards; bridging ones stay as tight as they may be. */
const bridgingRadius = ({ elbow, least }: Candidate): number =>
	elbow.first < elbow.last ? least : Number.POSITIVE_INFINITY;

/** More legs, then the wider tightest bend, then the longer track, which keeps nearer to the walls. */
function isBetter(a: BendRow, b: BendRow): boolean {
	if (a.count !== b.count) return a.count > b.count;
	if (Math.abs(a.tightest - b.tightest) > LENGTH_SLACK) return a.tightest > b.tightest;
	return a.length > b.length + LENGTH_SLACK;
}
