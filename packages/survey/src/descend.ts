import { found, type Outcome, refused } from "@baywright/geometry";
import { downhillFrom, type Linear, linearise } from "./linear.ts";
import type { State } from "./measure.ts";
import { extentOf, type Network, type NetworkFault, type Unknown } from "./network.ts";
import { diagonal, normalMatrix, solve, takeApart } from "./normal.ts";
import { AT_REST, AT_REST_SHARE, DAMPING_FACTOR, FIRST_DAMPING, LEAST_DAMPING, MOST_ROUNDS } from "./tolerance.ts";

/** Pivots under this (scaled diagonal 1) are rounding. */
const ROUNDING = 1e-14;

/** Rounds after which the curvature of the observations is worth its trouble. */
const SWIFT_ROUNDS = 10;

/** Differences are taken over so many standard deviations of an unknown. */
const DIFFERENCE = 1e-2;

export interface Settled {
	readonly state: State;
	readonly linear: Linear;
	readonly rounds: number;
}

/**
 * Least squares from `start`: Gauss–Newton, and where a step makes things worse or the matrix fails, damped steps (Levenberg–Marquardt)
 * until undamped ones do again. What then still creeps is brought to rest by Newton's own steps. Steps are told small by the deviations
 * that go with the `full` weights.
 */
export function descend(
	network: Network,
	unknowns: readonly Unknown[],
	weights: Float64Array,
	full: Float64Array,
	start: State,
): Outcome<Settled, NetworkFault> {
	const extent = extentOf(start);
	let state = start;
	let linear = linearise(network, unknowns, state);
	let sum = weighted(linear, weights);
	const unseen = linear.misfits.findIndex((value) => !Number.isFinite(value));
	if (unseen >= 0) return refused({ kind: "unobservable", observation: unseen });
	if (unknowns.length === 0) return found({ state, linear, rounds: 0 });

	const even = evenly(unknowns, start);
	const fullDiagonal = ({ rows }: Linear) => diagonal(normalMatrix(rows, full));
	let damping = 0;
	let furthest = Number.POSITIVE_INFINITY;
	for (let round = 1; round <= MOST_ROUNDS; round++) {
		const flat = normalMatrix(linear.rows, weights);
		const lower = round > SWIFT_ROUNDS ? curved(network, unknowns, weights, state, even(fullDiagonal(linear))) : flat;
		const more = damping === 0 ? null : even(diagonal(flat)).map((weight) => damping * weight);
		const normal = takeApart(lower, ROUNDING, more);
		if (normal === null) {
			damping = stronger(damping);
			continue;
		}
		const down = downhill(linear, weights);
		const by = solve(normal, down);
		const next = moved(state, unknowns, by);
		const trial = linearise(network, unknowns, next);
		const trialSum = weighted(trial, weights);
		const weightOf = fullDiagonal(linear);
		// A damped step may be small only because it is damped: then the slope itself must be next to nothing.
		furthest = damping === 0 ? furthestStep(by, weightOf, extent) : steepest(down, even(weightOf));
		const atRest = furthest <= AT_REST;
		if (trialSum <= sum || (atRest && Number.isFinite(trialSum))) {
			[state, linear, sum] = [next, trial, trialSum];
			if (atRest) return found({ state, linear, rounds: round });
			damping = damping > LEAST_DAMPING * DAMPING_FACTOR ? damping / DAMPING_FACTOR : 0;
		} else damping = stronger(damping);
	}
	return refused({ kind: "restless", step: furthest });
}

/**
 * Half the second derivatives of the weighted sum, from differences of its slope. Gauss–Newton leaves out the curvature of the
 * observations, and creeps where little else is left: readings that graze each other, distances that do not reach.
 */
function curved(
	network: Network,
	unknowns: readonly Unknown[],
	weights: Float64Array,
	state: State,
	weightOf: Float64Array,
): Float64Array[] {
	const columns = unknowns.map((_, i) => {
		const step = DIFFERENCE / Math.sqrt(weightOf[i] as number);
		const slopeAt = (by: number) => {
			const aside = moved(state, unknowns, new Float64Array(unknowns.length).fill(by, i, i + 1));
			return downhillFrom(network, unknowns, weights, aside);
		};
		const ahead = slopeAt(step);
		const behind = slopeAt(-step);
		return ahead.map((slope, j) => ((behind[j] as number) - slope) / (2 * step));
	});
	return columns.map((column, i) => column.map((value, j) => (value + (columns[j]?.[i] as number)) / 2));
}

/** The longest step in standard deviations of its unknown, all others held; steps that are rounding do not count. */
function furthestStep(by: Float64Array, weightOf: Float64Array, extent: number): number {
	return by.reduce((most, step, i) => {
		const size = Math.abs(step);
		return size <= AT_REST_SHARE * extent ? most : Math.max(most, size * Math.sqrt(weightOf[i] as number));
	}, 0);
}

/** The steepest slope left, by the same measure. */
function steepest(down: Float64Array, weightOf: Float64Array): number {
	return down.reduce((most, slope, i) => Math.max(most, Math.abs(slope) / Math.sqrt(weightOf[i] || 1)), 0);
}

/**
 * Weights to damp by: every coordinate of a point by the greatest of them all, so that no direction in which little is observed yet runs
 * away; a parameter by its own.
 */
function evenly(unknowns: readonly Unknown[], { firstParameter }: State): (weightOf: Float64Array) => Float64Array {
	const isPlace = unknowns.map((unknown) => (unknown[0]?.column as number) < firstParameter);
	return (weightOf) => {
		const most = weightOf.reduce((greatest, weight, i) => (isPlace[i] ? Math.max(greatest, weight) : greatest), 0);
		return weightOf.map((weight, i) => (isPlace[i] ? most : weight) || 1);
	};
}

const stronger = (damping: number): number => (damping === 0 ? FIRST_DAMPING : damping * DAMPING_FACTOR);

function weighted({ misfits }: Linear, weights: Float64Array): number {
	return misfits.reduce((sum, misfit, i) => sum + (weights[i] as number) * misfit * misfit, 0);
}

/** −JᵀPv. */
function downhill({ rows, misfits }: Linear, weights: Float64Array): Float64Array {
	const right = new Float64Array(rows[0]?.length ?? 0);
	rows.forEach((row, k) => {
		const pull = -(weights[k] as number) * (misfits[k] as number);
		for (let i = 0; i < right.length; i++) right[i] = (right[i] as number) + pull * (row[i] as number);
	});
	return right;
}

function moved({ values, firstParameter }: State, unknowns: readonly Unknown[], by: Float64Array): State {
	const next = values.slice();
	unknowns.forEach((unknown, i) => {
		for (const { column, factor } of unknown) next[column] = (next[column] as number) + factor * (by[i] as number);
	});
	return { values: next, firstParameter };
}
