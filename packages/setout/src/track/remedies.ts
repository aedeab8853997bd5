import type { WallChain } from "@baywright/geometry";
import type { Remedy } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { wouldFit } from "./fit-bay.ts";

export const setProjection = (projection: number): Remedy => ({
	action: "set-projection",
	figures: { projection },
	change: [{ op: "replace", path: "/track/projection", value: projection }],
});

/** Other systems that bend more tightly, at their own usual projection where this one is out of their range. */
export function otherSystems(bay: Bay, chain: WallChain, others: readonly TrackSystem[]): Remedy[] {
	const remedies: Remedy[] = [];
	for (const other of others) {
		const { id, name, projection: range } = other;
		const kept = bay.track.projection;
		const projection = kept !== null && kept >= range.min && kept <= range.max ? kept : null;
		const track = { system: id, projection, radius: null };
		if (!wouldFit(bay, chain, other, track)) continue;
		remedies.push({
			action: "use-system",
			figures: { system: name },
			change: Object.entries(track).map(([key, value]) => ({ op: "replace", path: `/track/${key}`, value })),
		});
	}
	return remedies;
}
