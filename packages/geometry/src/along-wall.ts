import type { WallFace } from "./chain.ts";
import { nearestOn } from "./curve.ts";
import { type Elbow, goesStraightPast } from "./elbow.ts";
import { faceCurve, footOnFace, pointOffFace, stretchOff } from "./face.ts";
import type { FittedTrack } from "./fit.ts";
import type { Bend, Bow, Segment, Straight } from "./path.ts";
import type { Point } from "./point.ts";
import { nearestStation, pointAt, pointOn, segmentAt } from "./station.ts";

/** Where a place on the track is taped from. Lengths mm. */
export interface Taped {
	readonly wall: number;
	/** Along the wall face from its left corner to the foot of the place. */
	readonly at: number;
	/** Square off the wall face to the centre line. */
	readonly projection: number;
}

/** The wall that a station belongs to (in a bend: the left wall up to about its middle, then the right) and its place on it. */
export function tapedFrom(track: FittedTrack, station: number): Taped {
	const segment = track.path.segments[segmentAt(track.path, station)] as Segment;
	const { at: place } = pointAt(track.path, station) as { at: Point };
	const wall = wallOf(track, segment, station, place);
	const { at, off } = footOnFace(track.chain, wall, place);
	return { wall, at, projection: off };
}

function wallOf(track: FittedTrack, segment: Segment, station: number, place: Point): number {
	if (segment.kind === "straight" && segment.crosses)
		return nearestWall(track, segment.wall - 1, segment.wall + 1, place);
	if (segment.kind !== "bend") {
		const past = straightPastAt(track, segment.wall, footOnFace(track.chain, segment.wall, place).at);
		return past === null ? segment.wall : nearestWall(track, past.left, past.right, place);
	}
	const left = (segment.corners[0] as number) - 1;
	const right = segment.corners.at(-1) as number;
	if (!isPlain(track, segment)) return nearestWall(track, left, right, place);
	return station - segment.start <= passesOver(track, segment) * segment.radius ? left : right;
}

/** What a leg goes straight past where it lies beyond its own wall; null where it does not. */
function straightPastAt({ chain, bends }: FittedTrack, wall: number, at: number): Elbow | null {
	if (at >= 0 && at <= (chain.walls[wall] as WallFace).faceLength) return null;
	return bends.elbows.find((elbow) => goesStraightPast(elbow) && (at < 0 ? elbow.right : elbow.left) === wall) ?? null;
}

/** Does the bend go round one corner between two straight walls? */
function isPlain({ chain: { walls } }: FittedTrack, { corners, reverse }: Bend): boolean {
	const corner = corners[0] as number;
	return !reverse && corners.length === 1 && walls[corner - 1]?.bow === null && walls[corner]?.bow === null;
}

/** Of the walls from `left` to `right` the one whose face is nearest, one that has the place on its room side before one that has not. */
function nearestWall({ chain }: FittedTrack, left: number, right: number, place: Point): number {
	const walls = Array.from({ length: right - left + 1 }, (_, i) => left + i).map((wall) => {
		const p = nearestOn(faceCurve(chain, wall), place);
		return { wall, behind: footOnFace(chain, wall, place).off <= 0, away: Math.hypot(p.x - place.x, p.y - place.y) };
	});
	walls.sort((a, b) => Number(a.behind) - Number(b.behind) || a.away - b.away);
	return (walls[0] as { wall: number }).wall;
}

/**
 * How far (rad) into a bend between straight walls the track passes from the wall on the left to the one on the right: half-way, or
 * where it is no longer square off one of them, which comes sooner or later where their projections differ.
 */
function passesOver({ chain }: FittedTrack, { from, to, corners, turn, radius }: Bend): number {
	const left = (corners[0] as number) - 1;
	const right = corners.at(-1) as number;
	const whole = Math.abs(turn);
	const leavesLeft = swungAfter((chain.walls[left] as WallFace).length - footOnFace(chain, left, from).at, radius);
	const meetsRight = whole - swungAfter(footOnFace(chain, right, to).at, radius);
	return Math.max(Math.min(whole / 2, leavesLeft), meetsRight);
}

/** Angle (rad) after which an arc has gone `along` mm in the direction in which it starts. */
const swungAfter = (along: number, radius: number): number => Math.asin(Math.min(Math.max(along / radius, 0), 1));

/**
 * The station square off `at` mm along a wall face. Places that no part of the track lies square off (in a corner, beyond the
 * track's end) are read as the nearest that one does. Null where the track does not follow that wall.
 */
export function stationSquareOff(track: FittedTrack, wall: number, at: number): number | null {
	const { legs, elbows } = track.bends;
	const leg = lastAtOrBefore(legs, wall);
	if (leg < 0 || wall > (legs.at(-1) as number)) return null;
	const { segments } = track.path;
	const bend = segments[track.bendOf[leg] ?? -1] as Bend | undefined;
	const isPast = (elbow: number) => elbows[elbow] !== undefined && goesStraightPast(elbows[elbow] as Elbow);
	if (legs[leg] !== wall) {
		if (isPast(leg)) return squareOffPast(track, leg, wall, at);
		if (bend === undefined) return null;
		const last = segments[track.bendEndOf[leg] as number] as Bend;
		return bend.reverse
			? squareOffBetween(track, bend.start, last.start + last.length, wall, at)
			: squareOffFacet(track, bend, wall, at);
	}
	const along = segments[track.legOf[leg] as number] as Straight | Bow | undefined;
	const before = segments[track.bendEndOf[leg - 1] ?? -1] as Bend | undefined;
	const foot = (p: Point | undefined, otherwise: number) =>
		p === undefined ? otherwise : footOnFace(track.chain, wall, p).at;

	const startsAt = foot(
		along?.from ?? before?.to ?? bend?.from,
		(elbows[leg - 1] as Elbow | undefined)?.footRight ?? 0,
	);
	const endsAt = foot(along?.to ?? bend?.from ?? before?.to, startsAt);
	if (at < startsAt && isPast(leg - 1)) return squareOffPast(track, leg - 1, wall, at);
	if (at > endsAt && isPast(leg)) return squareOffPast(track, leg, wall, at);
	if (at < startsAt && before?.reverse === true)
		return squareOffBetween(
			track,
			(segments[track.bendOf[leg - 1] as number] as Bend).start,
			before.start + before.length,
			wall,
			at,
		);
	if (at > endsAt && bend?.reverse === true) {
		const last = segments[track.bendEndOf[leg] as number] as Bend;
		return squareOffBetween(track, bend.start, last.start + last.length, wall, at);
	}
	if (at < startsAt && before !== undefined)
		return before.start + before.length - intoBend(track, before, wall, startsAt - at, at, -1);
	if (at > endsAt && bend !== undefined) return bend.start + intoBend(track, bend, wall, at - endsAt, at, 1);
	if (along === undefined) return bend?.start ?? (before === undefined ? null : before.start + before.length);
	const stretch = stretchOff(track.chain, wall, track.projections[wall] as number);
	return along.start + Math.min(Math.max((at - startsAt) * stretch, 0), along.length);
}

/** Index of the last leg along a wall at or before `wall`; −1 where there is none. */
function lastAtOrBefore(legs: readonly number[], wall: number): number {
	let low = -1;
	let high = legs.length - 1;
	while (low < high) {
		const middle = (low + high + 1) >> 1;
		if ((legs[middle] as number) <= wall) low = middle;
		else high = middle - 1;
	}
	return low;
}

/** Where a bridging bend passes square off a place on a facet that it leaves out. */
function squareOffFacet({ chain }: FittedTrack, bend: Bend, facet: number, at: number): number {
	const centre = footOnFace(chain, facet, bend.centre);
	const side = Math.sign(bend.turn);
	const across = Math.sqrt(Math.max(0, bend.radius ** 2 - (at - centre.at) ** 2));
	const off = centre.off - side * across;
	const { x, y } = chain.corners[facet] as Point;
	const { ux, uy } = chain.walls[facet] as WallFace;
	const p = { x: x + ux * at + uy * off, y: y + uy * at - ux * off };
	return nearestStation({ segments: [bend], length: bend.length }, p)?.station ?? bend.start;
}

/** Walls whose heading is this near (cosine) to square to a straight track have no one place of it square off each of theirs. */
const HARDLY_ALONG = 0.05;

/** Where a track straight past walls is square off a place on one of them, or nearest to it where the wall hardly goes along with it. */
function squareOffPast(track: FittedTrack, past: number, wall: number, at: number): number {
	const { chain, path, legOf, bendOf } = track;
	const segments = [legOf[past], bendOf[past], legOf[past + 1]].flatMap((i) => path.segments[i as number] ?? []);
	const [first, last] = [segments[0] as Segment, segments.at(-1) as Segment];
	const forward = Math.cos(first.heading - (chain.walls[wall] as WallFace).heading);
	if (forward > HARDLY_ALONG) return squareOffBetween(track, first.start, last.start + last.length, wall, at);
	const place = pointOffFace(chain, wall, at, 0);
	return nearestStation({ segments, length: path.length }, place)?.station ?? first.start;
}

/** Where a stretch of track is square off a place on a wall along which it only goes forward. */
function squareOffBetween({ chain, path }: FittedTrack, from: number, to: number, wall: number, at: number): number {
	let low = from;
	let high = to;
	for (let i = 0; i < 50; i++) {
		const middle = (low + high) / 2;
		if (footOnFace(chain, wall, (pointAt(path, middle) as { at: Point }).at).at < at) low = middle;
		else high = middle;
	}
	return high;
}

/** Length of bend from its end on `wall` (the bend before it: −1, after it: 1) to where it is square off `at`, as far as it is that wall's. */
function intoBend(track: FittedTrack, bend: Bend, wall: number, along: number, at: number, way: 1 | -1): number {
	const whole = Math.abs(bend.turn);
	if ((track.chain.walls[wall] as WallFace).bow === null) {
		const over = isPlain(track, bend) ? passesOver(track, bend) : whole;
		return Math.min(swungAfter(along, bend.radius), way > 0 || over === whole ? over : whole - over) * bend.radius;
	}
	let low = 0;
	let high = bend.length / 2;
	for (let i = 0; i < 50; i++) {
		const middle = (low + high) / 2;
		const p = pointOn(bend, way > 0 ? middle : bend.length - middle);
		const past = (footOnFace(track.chain, wall, p).at - at) * way;
		if (past < 0) low = middle;
		else high = middle;
	}
	return high;
}
