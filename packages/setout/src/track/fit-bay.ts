import {
	type FitFault,
	type FittedTrack,
	fitTrack,
	type Outcome,
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
