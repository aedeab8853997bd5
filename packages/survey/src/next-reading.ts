import type { Adjusted } from "./adjust.ts";
import { applied, dot, type Gradient } from "./covariance.ts";
import { foresee } from "./linear.ts";
import type { Network } from "./network.ts";
import type { Observed } from "./observation.ts";
import { stateOf } from "./state-of.ts";
import { SAME_DEVIATION } from "./tolerance.ts";

/** What might be read, and one standard deviation with which. */
export type Candidate = Observed & { readonly sd: number };

export interface NextReading {
	/** Index of the candidate. */
	readonly candidate: number;
	/** Standard deviation of the worst figure now, and with this reading taken. */
	readonly from: number;
	readonly reaches: number;
}

/**
 * Of the candidates (one that repeats a taken reading counts like any other) the one after which the worst of the figures is surest. What
 * it will read does not matter, only what it would show: a reading with gradient a and deviation σ takes (gᵀCa)² / (σ² + aᵀCa) off a
 * figure's variance (Sherman–Morrison on the normal matrix). Of equals, the one that leaves the next worst surest, and so on; null where
 * none makes any figure surer.
 */
export function nextReading(
	network: Network,
	adjusted: Adjusted,
	candidates: readonly Candidate[],
	figures: readonly Gradient[],
): NextReading | null {
	const { covariance } = adjusted;
	const state = stateOf(network, adjusted);
	const known = figures.map((gradient) => {
		const toAll = applied(covariance, gradient);
		return { toAll, variance: dot(toAll, gradient) };
	});
	const now = known.map(({ variance }) => Math.sqrt(Math.max(0, variance))).sort(greatestFirst);
	let best: { candidate: number; after: readonly number[] } = { candidate: -1, after: now };
	candidates.forEach((candidate, index) => {
		const { gradient } = foresee(candidate, state);
		const share = candidate.sd ** 2 + dot(applied(covariance, gradient), gradient);
		const after = known
			.map(({ toAll, variance }) => Math.sqrt(Math.max(0, variance - dot(toAll, gradient) ** 2 / share)))
			.sort(greatestFirst);
		if (isSurer(after, best.after)) best = { candidate: index, after };
	});
	if (best.candidate < 0) return null;
	return { candidate: best.candidate, from: now[0] as number, reaches: best.after[0] as number };
}

const greatestFirst = (a: number, b: number): number => b - a;

/** Is the first unequal deviation the smaller one? Not a number is never surer. */
function isSurer(after: readonly number[], than: readonly number[]): boolean {
	for (let i = 0; i < after.length; i++) {
		const [a, b] = [after[i] as number, than[i] as number];
		if (Math.abs(a - b) <= SAME_DEVIATION * b) continue;
		return a < b;
	}
	return false;
}
