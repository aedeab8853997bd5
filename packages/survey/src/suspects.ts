import { type Adjusted, adjust } from "./adjust.ts";
import { foresee } from "./linear.ts";
import { misfit } from "./measure.ts";
import type { Network } from "./network.ts";
import { isAngular, type Observation } from "./observation.ts";
import { freelyAdjusted } from "./residual-covariance.ts";
import { startingFrom, stateOf } from "./state-of.ts";
import { BLUNDER, INSEPARABLE, MOST_SUSPICIONS } from "./tolerance.ts";

/** One reading that may be a blunder, or two that only together explain what does not close. */
export interface Suspicion {
	/** Indexes of observations; of two, the more suspect first. */
	readonly readings: readonly number[];
	/** By how much each seems to be out: taken less what all others say. */
	readonly grossErrors: readonly number[];
	/** Standardized residual of each, with all readings in. */
	readonly standardized: readonly number[];
	/** Without them: weighted sum of squares, whether the rest closes, and the largest residuals left (0 where there are none). */
	readonly sumOfSquares: number;
	readonly closes: boolean;
	readonly closesWithin: { readonly length: number; readonly angle: number };
	/** Redundant readings left without them: with none, the rest cannot but close. */
	readonly redundancy: number;
	/** Other readings that might as well be the culprit: their residuals go with this one's. */
	readonly alike: readonly number[];
}

/**
 * Which readings to doubt, the most suspect first; none where everything closes and nothing stands out. Each suspect by its standardized
 * residual (Baarda's data snooping) is left out and the network settled anew; where that does not close it, pairs are left out.
 */
export function suspects(network: Network, adjusted: Adjusted): Suspicion[] {
	const doubtful = byStandardized(adjusted);
	const worst = doubtful[0];
	if (worst === undefined || (adjusted.closes && sizeOf(adjusted, worst) <= BLUNDER)) return [];
	const { residuals } = freelyAdjusted(network, adjusted);
	const outstanding = doubtful.filter((k) => k === worst || sizeOf(adjusted, k) > BLUNDER).slice(0, MOST_SUSPICIONS);
	const left = (readings: readonly number[]) => without(network, adjusted, residuals, readings);
	const singles = outstanding.flatMap((reading) => left([reading])).sort(bySumLeft);
	if (adjusted.redundancy < LEAST_FOR_PAIRS || singles.some(({ closes }) => closes)) return singles;
	const pairs = likeliestPairs(adjusted, residuals, doubtful)
		.flatMap(left)
		.filter(({ closes }) => closes)
		.sort(bySumLeft);
	return [...pairs, ...singles].slice(0, MOST_SUSPICIONS);
}

/** With two redundant readings any pair left out leaves nothing to disagree. */
const LEAST_FOR_PAIRS = 2.5;

const bySumLeft = (a: Suspicion, b: Suspicion): number => a.sumOfSquares - b.sumOfSquares;

const sizeOf = ({ observations }: Adjusted, reading: number): number =>
	Math.abs(observations[reading]?.standardized ?? 0);

const byStandardized = (adjusted: Adjusted): number[] =>
	adjusted.observations
		.flatMap(({ standardized }, k) => (standardized === null ? [] : [k]))
		.sort((a, b) => sizeOf(adjusted, b) - sizeOf(adjusted, a));

/** The pairs that take most off the sum of squares, vᵀQ⁻¹v over both. */
function likeliestPairs(
	{ observations }: Adjusted,
	residuals: readonly Float64Array[],
	doubtful: readonly number[],
): (readonly [number, number])[] {
	const pairs = doubtful.flatMap((a, n) =>
		doubtful.slice(n + 1).flatMap((b) => {
			if (correlation(residuals, a, b) > INSEPARABLE) return [];
			const [va, vb] = [observations[a]?.residual as number, observations[b]?.residual as number];
			const [aa, ab, bb] = [at(residuals, a, a), at(residuals, a, b), at(residuals, b, b)];
			const drop = (va * va * bb - 2 * va * vb * ab + vb * vb * aa) / (aa * bb - ab * ab);
			return [{ pair: [a, b] as const, drop }];
		}),
	);
	return pairs
		.sort((a, b) => b.drop - a.drop)
		.slice(0, MOST_SUSPICIONS)
		.map(({ pair }) => pair);
}

const at = (matrix: readonly Float64Array[], i: number, j: number): number => matrix[i]?.[j] as number;

const correlation = (residuals: readonly Float64Array[], a: number, b: number): number =>
	Math.abs(at(residuals, a, b)) / Math.sqrt(at(residuals, a, a) * at(residuals, b, b));

/** The network settled without these readings; nothing where it does not come to rest. */
function without(
	network: Network,
	adjusted: Adjusted,
	residuals: readonly Float64Array[],
	readings: readonly number[],
): Suspicion[] {
	const kept = network.observations.filter((_, k) => !readings.includes(k));
	const rest = adjust({ ...startingFrom(network, adjusted), observations: kept });
	if (!rest.ok) return [];
	const { sumOfSquares, closes, redundancy } = rest.value;
	const state = stateOf(network, rest.value);
	const grossErrors = readings.map((reading) => {
		const observation = network.observations[reading] as Observation;
		return -misfit(observation, foresee(observation, state).value);
	});
	const alike = readings.length > 1 ? [] : likeness(adjusted, residuals, readings[0] as number);
	const standardized = readings.map((reading) => adjusted.observations[reading]?.standardized as number);
	const closesWithin = largestResiduals(kept, rest.value);
	return [{ readings, grossErrors, standardized, sumOfSquares, closes, closesWithin, redundancy, alike }];
}

function largestResiduals(observations: readonly Observation[], { observations: checks }: Adjusted) {
	const of = (angular: boolean) =>
		observations.reduce((most, observation, k) => {
			const counts = observation.role === "reading" && isAngular(observation) === angular;
			return counts ? Math.max(most, Math.abs(checks[k]?.residual as number)) : most;
		}, 0);
	return { length: of(false), angle: of(true) };
}

const likeness = ({ observations }: Adjusted, residuals: readonly Float64Array[], reading: number): number[] =>
	observations.flatMap(({ standardized }, k) =>
		k !== reading && standardized !== null && correlation(residuals, reading, k) > INSEPARABLE ? [k] : [],
	);
