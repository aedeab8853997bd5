import type { FittedTrack, Segment } from "@baywright/geometry";
import type { Finding } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";

/** A piece longer than any stock that is left to the plan to join: why there is no joint in it, and where that is a bow, along which wall. */
export function whyNoJoint(finding: Finding, bay: Bay, { joint }: TrackSystem, { path }: FittedTrack): Finding {
	if (finding.code !== "piece-longer-than-stock" || bay.track.joints !== "auto") return finding;
	if (joint === null) return { ...finding, figures: { ...finding.figures, why: "no-joints" } };
	const bow = bowInTheWay(path.segments, path.length, joint.clearOfBend, Number(finding.figures.longest));
	const why = bow === null ? { why: "no-place" } : { why: "bow", wall: bow.wall };
	return { ...finding, figures: { ...finding.figures, ...why } };
}

type Bow = Extract<Segment, { kind: "bow" }>;

/** The bow that makes up most of a stretch longer than any stock without a straight that takes a joint; null where there is none. */
function bowInTheWay(segments: readonly Segment[], length: number, clear: number, longest: number): Bow | null {
	let from = 0;
	let bow: Bow | null = null;
	const isReason = (to: number) => bow !== null && to - from > longest && bow.length > (to - from) / 2;
	for (const one of segments) {
		if (one.kind === "bow" && one.length > (bow?.length ?? 0)) bow = one;
		if (one.kind !== "straight" || one.length <= 2 * clear) continue;
		if (isReason(one.start + clear)) return bow;
		from = one.start + one.length - clear;
		bow = null;
	}
	return isReason(length) ? bow : null;
}
