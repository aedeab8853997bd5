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

/** From a corner along the left and the right wall face to where the bend starts, mm; null towards a wall that the bend leaves out. */
export interface SetBacks {
	readonly corner: number;
	readonly setBack: CornerSetOut["setBack"];
}

/** The set-backs alone, of the same corners in the same order: far less work. */
export function setBacksOf(track: FittedTrack): SetBacks[] {
	return track.bends.elbows.flatMap((elbow, bend) => setBacksOfBend(track, elbow, bend));
}

function setBacksOfBend(track: FittedTrack, elbow: Elbow, bend: number): SetBacks[] {
	if (goesStraightPast(elbow)) return [];
	const { segments } = track.path;
	const first = segments[track.bendOf[bend] as number] as Bend | undefined;
	const last = segments[track.bendEndOf[bend] as number] as Bend | undefined;
	if (first === undefined || last === undefined) return [{ corner: elbow.first, setBack: [0, 0] }];
	const corners = elbow.reverse === null ? first.corners : [elbow.first, elbow.first + 1];
	return corners.map((corner, i) => ({
		corner,
		setBack: [
			i === 0 ? leftSetBack(track, elbow, first) : null,
			i === corners.length - 1 ? rightSetBack(track, elbow, last) : null,
		],
	}));
}

function cornersOfBend(track: FittedTrack, elbow: Elbow, bend: number): CornerSetOut[] {
	const { chain, bends, path } = track;
	if (goesStraightPast(elbow)) return [];
	const backs = setBacksOfBend(track, elbow, bend).map(({ setBack }) => setBack);
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
				setBack: backs[i] as SetBacks["setBack"],
				sd: NOT_TAPED,
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
		return [{ ...none, setBack: [0, 0], sd: NOT_TAPED, sweep: 0, cornerGap, ...limits }];
	}
	const corners = segment.corners;
	return corners.map((corner, i) => ({
		corner,
		corners,
		kind: corners.length > 1 ? "bridge" : "bend",
		interiorAngle: angle(corner),
		radius,
		setBack: backs[i] as SetBacks["setBack"],
		sd: NOT_TAPED,
		sweep: segment.length,
		cornerGap: corners.length === 1 ? closedGap(track, elbow, segment) : nearestGap(track, bend, corner),
		...limits,
	}));
}

/** How sure a set-back is comes from the survey, once the plan stands. */
const NOT_TAPED = [null, null] as const;

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
