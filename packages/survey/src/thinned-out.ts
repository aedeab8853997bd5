import type { Adjusted } from "./adjust.ts";
import type { Gradient } from "./covariance.ts";
import { foresee } from "./linear.ts";
import type { Network } from "./network.ts";
import type { Candidate } from "./next-reading.ts";
import { stateOf } from "./state-of.ts";
import { sparse, type Taken, taken } from "./taken.ts";

/** A variance that grows by no more than this share has not grown. */
const SAME_VARIANCE = 1e-6;

/**
 * Indexes of a few candidates after which the worst figure's variance is at most `goal`; what is asked for twice is in it twice. Everything
 * is taken `most` times and then left out again, one at a time, the one least missed, as long as the goal is kept: short-sighted too, but not
 * as taking the best one each time is, since readings that only help together are all there to begin with. Null where everything together
 * does not reach the goal; with none, whatever is not missed is left out. Each putting back costs digits, so once half is left out the rest is
 * taken anew.
 */
export function thinnedOut(
	network: Network,
	adjusted: Adjusted,
	candidates: readonly Candidate[],
	figures: readonly Gradient[],
	{ most, goal }: { readonly most: number; readonly goal: number | null },
): number[] | null {
	const times = candidates.map(() => most);
	const state = stateOf(network, adjusted);
	const rows = candidates.map((candidate) => sparse(foresee(candidate, state).gradient, candidate.sd));
	const takenAnew = () => taken(adjusted, rows, figures, times);
	let at = takenAnew();
	if (goal !== null && at.worst() > goal) return null;
	const limit = goal ?? at.worst() * (1 + SAME_VARIANCE);
	let left = most * times.length;
	let lately = left;
	for (;;) {
		const out = leastMissed(at, times);
		if (out === null || at.worstWithout(out) > limit) break;
		at.putBack(out);
		times[out] = (times[out] as number) - 1;
		left -= 1;
		if (left > lately / 2) continue;
		at = takenAnew();
		lately = left;
	}
	return times.flatMap((count, index) => new Array<number>(count).fill(index));
}

function leastMissed(at: Taken, times: readonly number[]): number | null {
	let best: number | null = null;
	let least = Number.POSITIVE_INFINITY;
	for (let index = 0; index < times.length; index++) {
		if (times[index] === 0) continue;
		const variance = at.worstWithout(index);
		if (!(variance < least)) continue;
		best = index;
		least = variance;
	}
	return best;
}
