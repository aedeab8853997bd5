import {
	type FitFault,
	type FittedTrack,
	fitTrack,
	indexWalls,
	LENGTH_SLACK,
	nearerThan,
	type Outcome,
	pathCrossings,
	type WallChain,
	type WallFace,
} from "@baywright/geometry";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { endsOf, fitRuleOf, projectionsOf } from "./track-rule.ts";

/** Fits the bay's track to its wall faces. */
export function fitBay(bay: Bay, chain: WallChain, system: TrackSystem): Outcome<FittedTrack, FitFault> {
	const lengths = chain.walls.map(({ faceLength }: WallFace) => faceLength);
	return fitTrack(chain, projectionsOf(bay, system), endsOf(bay, lengths), fitRuleOf(bay, system));
}

/** Would the track fit with these changes to it? What a remedy must do before it is offered. */
export function wouldFit(bay: Bay, chain: WallChain, system: TrackSystem, track: Partial<Bay["track"]>): boolean {
	const changed = { ...bay, track: { ...bay.track, ...track } };
	const { min, max } = system.projection;
	const inRange = projectionsOf(changed, system).every((projection) => projection >= min && projection <= max);
	if (!inRange) return false;
	const fit = fitBay(changed, chain, system);
	if (!fit.ok) return false;
	const { path } = fit.value;
	return (
		nearerThan(path, indexWalls(chain), system.clearance - LENGTH_SLACK).length === 0 &&
		pathCrossings(path).length === 0
	);
}
