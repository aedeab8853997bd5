import type { Adjusted } from "./adjust.ts";
import type { State } from "./measure.ts";
import { type Network, startOf } from "./network.ts";

/** The state that an adjusted network rests in. */
export const stateOf = (network: Network, adjusted: Adjusted): State => startOf(startingFrom(network, adjusted));

/** The same network with everything where it came to rest. */
export function startingFrom(network: Network, adjusted: Adjusted): Network {
	return {
		...network,
		points: network.points.map(({ goes }, i) => ({ ...(adjusted.points[i] as Adjusted["points"][number]), goes })),
		parameters: network.parameters.map(({ fixed }, i) => ({ value: adjusted.parameters[i] as number, fixed })),
	};
}
