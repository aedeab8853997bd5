import type { Bend, Bow, FittedTrack } from "@baywright/geometry";
import type { Finding, Remedy } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";

/** Slack (mm) when a stretch of straight is compared with what is needed. */
const SLACK = 1e-6;

/** Does a pair that meets in the middle of the track find there the straight that its overlap needs? */
export function overlapOnBend(
	{ track: { draw }, makeUp }: Bay,
	{ overlapStraight }: TrackSystem,
	{ path }: FittedTrack,
): Finding[] {
	if (draw !== "pair" || makeUp.overlap === 0 || overlapStraight === 0) return [];
	const middle = path.length / 2;
	const half = overlapStraight / 2;
	const inWay = path.segments
		.filter((segment): segment is Bend | Bow => segment.kind === "bow" || (segment.kind === "bend" && !segment.sprung))
		.filter(({ start, length }) => start < middle + half - SLACK && start + length > middle - half + SLACK);
	// Of several the one nearest to the middle is told.
	const [nearest] = inWay.toSorted((a, b) => awayFrom(middle, a) - awayFrom(middle, b));
	if (nearest === undefined) return [];
	const corners = nearest.kind === "bend" ? nearest.corners : [];
	return [
		{
			code: "overlap-on-bend",
			where: {
				station: middle,
				...(nearest.kind === "bow" ? { wall: nearest.wall } : { corner: corners[0] as number }),
			},
			figures: {
				at: middle,
				straight: overlapStraight,
				radius: nearest.radius,
				...(corners.length > 1 ? { last: corners.at(-1) as number } : {}),
			},
			remedies: [drawToOneSide],
		},
	];
}

const awayFrom = (station: number, { start, length }: Bend | Bow): number =>
	Math.max(start - station, station - start - length, 0);

const drawToOneSide: Remedy = {
	action: "draw-to-one-side",
	figures: {},
	change: [{ op: "replace", path: "/track/draw", value: "left" }],
};
