import type { Adjusted } from "./adjust.ts";
import { applied, dot } from "./covariance.ts";
import { linearise } from "./linear.ts";
import { type Network, unknownsOf } from "./network.ts";
import type { Candidate } from "./next-reading.ts";
import { freelyAdjusted } from "./residual-covariance.ts";
import { stateOf } from "./state-of.ts";
import { INSEPARABLE } from "./tolerance.ts";

/**
 * Of the candidates the one that best tells readings apart of which any might as well be the wrong one: with it taken the fewest pairs of them
 * still go together, and of equals all pairs go together least. What it will read does not matter: a reading with slopes a and deviation σ
 * adds (r·Ca)(s·Ca) / (σ² + a·Ca) to the covariance of two residuals (Sherman–Morrison). Its index; null where none tells any of them apart.
 */
export function tellApart(
	network: Network,
	adjusted: Adjusted,
	readings: readonly number[],
	candidates: readonly Candidate[],
): number | null {
	const { linear, covariance, residuals } = freelyAdjusted(network, adjusted);
	const asked = candidates.map((candidate) => ({ ...candidate, value: 0, role: "reading" as const }));
	const { rows } = linearise({ ...network, observations: asked }, unknownsOf(network), stateOf(network, adjusted));
	const pairs = readings.flatMap((k, n) => readings.slice(n + 1).map((l) => [k, l] as const));
	let best: number | null = null;
	let least = { together: pairs.length, likeness: pairs.length };
	candidates.forEach(({ sd }, index) => {
		const slopes = rows[index] as Float64Array;
		const toAll = applied(covariance, slopes);
		const share = sd * sd + dot(toAll, slopes);
		const along = linear.rows.map((row) => dot(toAll, row));
		const after = (k: number, l: number) =>
			(residuals[k]?.[l] as number) + ((along[k] as number) * (along[l] as number)) / share;
		const correlations = pairs.map(([k, l]) => Math.abs(after(k, l)) / Math.sqrt(after(k, k) * after(l, l)));
		const together = correlations.filter((correlation) => !(correlation <= INSEPARABLE)).length;
		const likeness = correlations.reduce((sum, correlation) => sum + correlation, 0);
		const isBetter = together < least.together || (together === least.together && likeness < least.likeness);
		if (together === pairs.length || !isBetter) return;
		best = index;
		least = { together, likeness };
	});
	return best;
}
