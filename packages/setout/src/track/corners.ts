import {
	type Bend,
	cornerBend,
	distance,
	type Elbow,
	type FittedTrack,
	footOnFace,
	goesStraightPast,
	greatestRadius,
	nearestStation,
	type Point,
	pointAt,
	type Radians,
	radians,
	type WallFace,
} from "@baywright/geometry";
import type { CornerSetOut } from "../bay-plan.ts";

/** What a fitter marks out at each corner that the track goes round. */
export function cornersOf(track: FittedTrack): CornerSetOut[] {
	return track.bends.elbows.flatMap((elbow, bend) => cornersOfBend(track, elbow, bend));
}

function cornersOfBend(track: FittedTrack, elbow: Elbow, bend: number): CornerSetOut[] {
	const { chain, bends, path } = track;
	if (goesStraightPast(elbow)) return [];
	const chosen = bends.set.has(bend);
	const sprung = bends.sprung.has(bend);
	const angle = (corner: number) => radians(Math.PI - (chain.turns[corner] as number));
	if (elbow.reverse !== null) {
		const first = path.segments[track.bendOf[bend] as number] as Bend;
		const second = path.segments[track.bendEndOf[bend] as number] as Bend;
		return [first, second].map((half, i) => {
			const corner = elbow.first + i;
			return {
				corner,
				corners: [corner],
				kind: "reverse",
				interiorAngle: angle(corner),
				radius: half.radius,
				setBack: i === 0 ? [leftSetBack(track, elbow, half), null] : [null, rightSetBack(track, elbow, half)],
				sweep: half.length,
				cornerGap: gapAt(track, half, corner),
				sprung: false,
				least: half.radius,
				greatest: half.radius,
				chosen: false,
			};
		});
	}
	const radius = track.radii[bend] as number;
	const limits = {
		least: bends.floor[bend] as number,
		greatest: radius === 0 ? 0 : widest(track, bend),
		chosen,
		sprung,
	};
	const segment = path.segments[track.bendOf[bend] as number] as Bend | undefined;
	if (segment === undefined) {
		const corner = elbow.first;
		const cornerGap = track.projections[corner - 1] as number;
		const none = { corner, corners: [corner], kind: "bend" as const, interiorAngle: angle(corner), radius: 0 };
		return [{ ...none, setBack: [0, 0], sweep: 0, cornerGap, ...limits }];
	}
	const corners = segment.corners;
	return corners.map((corner, i) => ({
		corner,
		corners,
		kind: corners.length > 1 ? "bridge" : "bend",
		interiorAngle: angle(corner),
		radius,
		setBack: [
			i === 0 ? leftSetBack(track, elbow, segment) : null,
			i === corners.length - 1 ? rightSetBack(track, elbow, segment) : null,
		],
		sweep: segment.length,
		cornerGap: corners.length === 1 ? closedGap(track, elbow, segment) : nearestGap(track, bend, corner),
		...limits,
	}));
}

const widest = ({ bends }: FittedTrack, bend: number): number =>
	Math.min(greatestRadius(bends, bends.least, bend), bends.ceiling[bend] as number);

const leftSetBack = ({ chain }: FittedTrack, { left }: Elbow, { from }: Bend): number =>
	(chain.walls[left] as WallFace).faceLength - footOnFace(chain, left, from).at;

const rightSetBack = ({ chain }: FittedTrack, { right }: Elbow, { to }: Bend): number =>
	footOnFace(chain, right, to).at;

/** Corner to the middle of the bend; between straight walls by the closed form. */
function closedGap(track: FittedTrack, elbow: Elbow, segment: Bend): number {
	const { chain, projections } = track;
	if (elbow.feet !== null) return gapAt(track, segment, elbow.first);
	const turn = chain.turns[elbow.first] as Radians;
	return cornerBend(turn, projections[elbow.left] as number, projections[elbow.right] as number, segment.radius)
		.cornerGap;
}

/** The middle of a bend past several corners is far from most of them: from each, what a tape reads to the track in front of it. */
function nearestGap({ chain, path, bendOf }: FittedTrack, bend: number, corner: number): number {
	const at = bendOf[bend] as number;
	const segments = path.segments.slice(Math.max(0, at - 1), at + 2);
	return nearestStation({ segments, length: path.length }, chain.corners[corner] as Point)?.distance ?? 0;
}

function gapAt({ chain, path }: FittedTrack, { start, length }: Bend, corner: number): number {
	const middle = pointAt(path, start + length / 2) as { at: Point };
	return distance(chain.corners[corner] as Point, middle.at);
}
