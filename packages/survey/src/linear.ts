import { measure, misfit, type State } from "./measure.ts";
import type { Network, Unknown } from "./network.ts";
import type { Observed } from "./observation.ts";

/** A network seen from one state: what its observations miss by, and their slopes. */
export interface Linear {
	/** One an observation, over the unknowns. */
	readonly rows: readonly Float64Array[];
	/** Adjusted less taken. */
	readonly misfits: Float64Array;
}

export function linearise({ observations }: Network, unknowns: readonly Unknown[], state: State): Linear {
	const misfits = new Float64Array(observations.length);
	const slopes = new Float64Array(state.values.length);
	const rows = observations.map((observation, k) => {
		slopes.fill(0);
		misfits[k] = misfit(observation, measure(observation, state, slopes));
		return overUnknowns(slopes, unknowns);
	});
	return { rows, misfits };
}

/** −JᵀPv, for which no row is needed by itself: a fraction of the work. */
export function downhillFrom(
	{ observations }: Network,
	unknowns: readonly Unknown[],
	weights: Float64Array,
	state: State,
): Float64Array {
	const slopes = new Float64Array(state.values.length);
	const sums = new Float64Array(state.values.length);
	observations.forEach((observation, k) => {
		slopes.fill(0);
		const pull = -(weights[k] as number) * misfit(observation, measure(observation, state, slopes));
		for (let i = 0; i < sums.length; i++) sums[i] = (sums[i] as number) + pull * (slopes[i] as number);
	});
	return overUnknowns(sums, unknowns);
}

function overUnknowns(slopes: Float64Array, unknowns: readonly Unknown[]): Float64Array {
	const row = new Float64Array(unknowns.length);
	for (let i = 0; i < row.length; i++) {
		let sum = 0;
		for (const { column, factor } of unknowns[i] as Unknown) sum += factor * (slopes[column] as number);
		row[i] = sum;
	}
	return row;
}

/** What would be observed in a state, and its gradient over all columns. */
export function foresee(observed: Observed, state: State): { value: number; gradient: Float64Array } {
	const gradient = new Float64Array(state.values.length);
	return { value: measure(observed, state, gradient), gradient };
}
