import { type Adjusted, freeCovariance, fullWeights } from "./adjust.ts";
import { dot } from "./covariance.ts";
import { type Linear, linearise } from "./linear.ts";
import { type Network, unknownsOf } from "./network.ts";
import { inverse, normalMatrix, takeApart } from "./normal.ts";
import { stateOf } from "./state-of.ts";
import { LEAST_PIVOT } from "./tolerance.ts";

/** An adjusted network as its readings alone say it is. */
export interface FreelyAdjusted {
	readonly linear: Linear;
	/** Of the unknowns, with the priors all but gone. */
	readonly covariance: readonly Float64Array[];
	/** Of the residuals, Σ − JCJᵀ; rows and columns of priors are of no use. */
	readonly residuals: readonly Float64Array[];
}

export function freelyAdjusted(network: Network, adjusted: Adjusted): FreelyAdjusted {
	const { observations } = network;
	const linear = linearise(network, unknownsOf(network), stateOf(network, adjusted));
	const normal = takeApart(normalMatrix(linear.rows, fullWeights(observations)), LEAST_PIVOT);
	if (normal === null) throw new Error("Broken invariant: an adjusted network is undetermined.");
	const covariance = freeCovariance(observations, linear, inverse(normal));
	const across = linear.rows.map((row) => Float64Array.from(covariance, (line) => dot(line, row)));
	const residuals = observations.map(({ sd }, k) =>
		Float64Array.from(
			observations,
			(_, l) => (k === l ? sd * sd : 0) - dot(across[k] as Float64Array, linear.rows[l] as Float64Array),
		),
	);
	return { linear, covariance, residuals };
}
