import type { WallChain } from "@baywright/geometry";
import type { Bracket } from "../bay-plan.ts";
import type { Finding } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { accessoriesOf, cableZones } from "./cable-zones.ts";
import type { CableZone, Fixing } from "./fixing.ts";

/** How each bracket is held. Zones are of walls: over a ceiling cables lie anywhere, and there is none to tell. */
export function setOutFixings(
	bay: Bay,
	system: TrackSystem,
	chain: WallChain,
	height: number | null,
	brackets: readonly Bracket[],
): Fixing[] {
	const { walls, ceiling, ceilingSurface, obstacles } = bay;
	const overhead = bay.track.mounting === "ceiling";
	if (overhead) return brackets.map(() => ({ into: ceilingSurface, overhead, zones: [] }));
	const accessories = accessoriesOf(obstacles);
	const about = { ceiling, height, half: system.bracket.width / 2 };
	return brackets.map((bracket) => ({
		into: walls[bracket.wall]?.surface ?? "unknown",
		overhead,
		zones: cableZones(bracket, chain, about, accessories),
	}));
}

/** Said once for a bay: how many holes lie in such zones, and in which. */
export function zoneFindings(fixings: readonly Fixing[]): Finding[] {
	const having = (test: (zone: CableZone) => boolean) => fixings.filter(({ zones }) => zones.some(test)).length;
	const holes = having(({ sure }) => sure);
	const perhaps = having(() => true) - holes;
	if (holes + perhaps === 0) return [];
	const sureOf = (kind: CableZone["kind"]) => having((zone) => zone.sure && zone.kind === kind);
	const unmeasured = having((zone) => zone.kind === "wall-top" && zone.below === null);
	return [
		{
			code: "holes-in-cable-zones",
			where: {},
			figures: {
				holes,
				perhaps,
				total: fixings.length,
				top: sureOf("wall-top"),
				corner: sureOf("corner"),
				accessory: sureOf("accessory"),
				unmeasured,
			},
			remedies: [],
		},
	];
}
