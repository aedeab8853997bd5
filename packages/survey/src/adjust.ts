import { found, type Outcome, type Point, refused } from "@baywright/geometry";
import { chiSquareQuantile } from "./chi-square.ts";
import { type Covariance, spread } from "./covariance.ts";
import { descend, type Settled } from "./descend.ts";
import type { Linear } from "./linear.ts";
import type { State } from "./measure.ts";
import { faultsOf, type Network, type NetworkFault, startOf, type Unknown, unknownsOf } from "./network.ts";
import { inverse, normalMatrix, takeApart, undetermined } from "./normal.ts";
import type { Observation } from "./observation.ts";
import { GLOBAL_TEST, HOLDING_ON, LEAST_PIVOT, LETTING_GO, UNCHECKED } from "./tolerance.ts";

/** A network at rest, how sure it is, and how well its readings agree. */
export interface Adjusted extends Agreement {
	readonly points: readonly Point[];
	readonly parameters: readonly number[];
	/** A priori, from the readings' own deviations: over x and y of every point in turn, then the parameters; nought where fixed. */
	readonly covariance: Covariance;
	/** One an observation. */
	readonly observations: readonly ObservationCheck[];
	/** Steps taken. */
	readonly rounds: number;
}

/** What the readings say of each other; priors have no part in it. */
export interface Agreement {
	/** Readings beyond those needed to determine what they determine. */
	readonly redundancy: number;
	/** A-posteriori deviation of unit weight, √(Ω / redundancy); null where no reading is checked by others. */
	readonly sigma0: number | null;
	/** Weighted sum of squares of the residuals, Ω, and the most that it may be in the global test at 95 %; null with no redundancy. */
	readonly sumOfSquares: number;
	readonly greatestSum: number | null;
	readonly closes: boolean;
}

export interface ObservationCheck {
	/** Adjusted less taken. */
	readonly residual: number;
	/** Share of an error in this reading that shows in its residual, 0 to 1; 0 for a prior. */
	readonly redundancy: number;
	/** Residual over its own standard deviation; null where nothing checks the reading. */
	readonly standardized: number | null;
}

/**
 * Weighted least squares over the whole network. Refuses, by name, figures that are none, points that coincide and what nothing determines.
 * Sources: C. D. Ghilani, Adjustment Computations (observation equations, error propagation); W. Baarda 1968 (redundancy numbers, data snooping).
 */
export function adjust(network: Network): Outcome<Adjusted, NetworkFault> {
	const faults = faultsOf(network);
	if (faults.length > 0) return { ok: false, faults };
	const unknowns = unknownsOf(network);
	const weights = settlingWeights(network.observations);
	const settled = descend(network, unknowns, weights, fullWeights(network.observations), startOf(network));
	return settled.ok ? measured(network, unknowns, settled.value) : settled;
}

function measured(
	network: Network,
	unknowns: readonly Unknown[],
	{ state, linear, rounds }: Settled,
): Outcome<Adjusted, NetworkFault> {
	const { observations } = network;
	const weights = fullWeights(observations);
	const matrix = normalMatrix(linear.rows, weights);
	const normal = unknowns.length === 0 ? undefined : takeApart(matrix, LEAST_PIVOT);
	if (normal === null) return refused(looseEnds(network, unknowns, undetermined(matrix, LEAST_PIVOT)));
	const covariance = normal === undefined ? [] : inverse(normal);
	const checks = checksOf(observations, linear, freeCovariance(observations, linear, covariance));
	return found({
		...placesOf(network, state),
		covariance: spread(covariance, unknowns, state.values.length),
		observations: checks,
		rounds,
		...agreementOf(observations, checks),
	});
}

export const fullWeights = (observations: readonly Observation[]): Float64Array =>
	weightsOf(observations, { reading: 1, prior: 1 });

/** Priors all but gone, except that some hold on to what the others then give. */
const settlingWeights = (observations: readonly Observation[]): Float64Array =>
	Float64Array.from(observations, ({ sd, role, holdsOn }) => {
		const factor = role === "reading" ? 1 : holdsOn ? HOLDING_ON : LETTING_GO;
		return factor / (sd * sd);
	});

/** Inverse variances, times a factor for each role. */
const weightsOf = (observations: readonly Observation[], factor: Record<Observation["role"], number>): Float64Array =>
	Float64Array.from(observations, ({ sd, role }) => factor[role] / (sd * sd));

/** The unknowns' covariance with the priors all but gone: what the readings say by themselves of each other. */
export function freeCovariance(
	observations: readonly Observation[],
	{ rows }: Linear,
	covariance: readonly Float64Array[],
): readonly Float64Array[] {
	if (covariance.length === 0 || !observations.some(({ role }) => role === "prior")) return covariance;
	const free = takeApart(normalMatrix(rows, weightsOf(observations, { reading: 1, prior: LETTING_GO })), 0);
	return free === null ? covariance : inverse(free);
}

function checksOf(
	observations: readonly Observation[],
	{ rows, misfits }: Linear,
	free: readonly Float64Array[],
): ObservationCheck[] {
	return observations.map(({ sd, role }, k) => {
		const residual = misfits[k] as number;
		const share = role === "prior" ? 0 : 1 - quadratic(free, rows[k] as Float64Array) / (sd * sd);
		if (share < UNCHECKED) return { residual, redundancy: 0, standardized: null };
		return { residual, redundancy: Math.min(1, share), standardized: residual / (sd * Math.sqrt(share)) };
	});
}

/** aᵀCa. */
function quadratic(matrix: readonly Float64Array[], row: Float64Array): number {
	let sum = 0;
	for (let i = 0; i < row.length; i++) {
		const left = row[i] as number;
		if (left === 0) continue;
		const line = matrix[i] as Float64Array;
		for (let j = 0; j < row.length; j++) sum += left * (line[j] as number) * (row[j] as number);
	}
	return sum;
}

function agreementOf(observations: readonly Observation[], checks: readonly ObservationCheck[]): Agreement {
	let redundancy = 0;
	let sumOfSquares = 0;
	checks.forEach((check, k) => {
		const { sd, role } = observations[k] as Observation;
		if (role === "prior") return;
		redundancy += check.redundancy;
		sumOfSquares += (check.residual / sd) ** 2;
	});
	// A whole number but for rounding: readings less what they determine.
	const freedom = Math.round(redundancy);
	if (freedom === 0) return { redundancy: 0, sigma0: null, sumOfSquares, greatestSum: null, closes: true };
	const greatestSum = greatestSumOf(freedom);
	return {
		redundancy,
		sigma0: Math.sqrt(sumOfSquares / redundancy),
		sumOfSquares,
		greatestSum,
		closes: sumOfSquares <= greatestSum,
	};
}

const greatestSums = new Map<number, number>();

/** The limit of the global test, reckoned once for each number of redundant readings. */
function greatestSumOf(freedom: number): number {
	const known = greatestSums.get(freedom);
	if (known !== undefined) return known;
	const limit = chiSquareQuantile(GLOBAL_TEST, freedom);
	greatestSums.set(freedom, limit);
	return limit;
}

function placesOf({ points, parameters }: Network, { values, firstParameter }: State) {
	return {
		points: points.map((_, i): Point => ({ x: values[2 * i] as number, y: values[2 * i + 1] as number })),
		parameters: parameters.map((_, i) => values[firstParameter + i] as number),
	};
}

function looseEnds({ points }: Network, unknowns: readonly Unknown[], loose: readonly number[]): NetworkFault {
	const columns = loose.flatMap((unknown) => (unknowns[unknown] as Unknown).map(({ column }) => column));
	const firstParameter = 2 * points.length;
	return {
		kind: "undetermined",
		points: [...new Set(columns.filter((column) => column < firstParameter).map((column) => column >> 1))],
		parameters: columns.filter((column) => column >= firstParameter).map((column) => column - firstParameter),
	};
}
