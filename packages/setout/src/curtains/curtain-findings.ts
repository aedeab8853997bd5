import type { FittedTrack } from "@baywright/geometry";
import type { CornerSetOut, CurtainSetOut } from "../bay-plan.ts";
import type { Finding } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { Library } from "../library/library.ts";
import type { TrackSystem } from "../library/system.ts";
import { onTrackFindings } from "./on-track-findings.ts";
import { stackFindings } from "./stack-findings.ts";
import { touchingBehind } from "./touching-behind.ts";
import { unusualFigures } from "./unusual-figures.ts";

/** All that is to be told of the curtains that a job gives; nothing of those that stand in while it gives none. */
export function curtainFindings(
	bay: Bay,
	{ cloths }: Pick<Library, "cloths">,
	system: TrackSystem,
	track: FittedTrack,
	curtains: readonly CurtainSetOut[],
	corners: readonly CornerSetOut[],
	height: number | null,
): Finding[] {
	if (bay.curtains.length === 0) return [];
	return [
		...onTrackFindings(bay, track.path.length),
		...stackFindings(track.path, curtains),
		...touchingBehind(bay, track, curtains, corners, height),
		...unusualFigures(bay, cloths, system, track.path.length, height),
	];
}
