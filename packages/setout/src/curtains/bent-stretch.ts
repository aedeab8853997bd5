import type { Bend, Bow, TrackPath } from "@baywright/geometry";
import type { Stretch } from "../bay-plan.ts";

/** Slack (mm) when stretches of track are compared. */
const SLACK = 1e-6;

/** A bend at least as wide as this (mm) is as good as straight for a stack or where curtains meet (common practice, no source). */
const AS_GOOD_AS_STRAIGHT = 1000;

/** What of the track is bent within a stretch: made bends and bows tighter than `under`, nearest to a station first. */
export function bentWithin(
	{ segments }: TrackPath,
	{ from, to }: Stretch,
	near: number,
	under = AS_GOOD_AS_STRAIGHT,
): (Bend | Bow)[] {
	return segments
		.filter((segment): segment is Bend | Bow => segment.kind === "bow" || (segment.kind === "bend" && !segment.sprung))
		.filter(
			({ start, length, radius }) => start < to - SLACK && start + length > from + SLACK && Math.abs(radius) < under,
		)
		.toSorted((a, b) => awayFrom(near, a) - awayFrom(near, b));
}

/** Where a bend is, and its figures, as a finding has them. */
export function bentPlace(bent: Bend | Bow) {
	const corners = bent.kind === "bend" ? bent.corners : [];
	return {
		where: bent.kind === "bow" ? { wall: bent.wall } : { corner: corners[0] as number },
		figures: { radius: bent.radius, ...(corners.length > 1 ? { last: corners.at(-1) as number } : {}) },
	};
}

const awayFrom = (station: number, { start, length }: Bend | Bow): number =>
	Math.max(start - station, station - start - length, 0);
