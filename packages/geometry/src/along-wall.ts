import type { WallFace } from "./chain.ts";
import type { FittedTrack } from "./fit.ts";
import type { Bend, Segment, Straight } from "./path.ts";
import type { Point } from "./point.ts";
import { pointAt, segmentAt } from "./station.ts";

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
	const index = segmentAt(track.path, station);
	const segment = track.path.segments[index] as Segment;
	const wall = wallOf(track, segment, station);
	const { at } = pointAt(track.path, station) as { at: Point };
	const corner = track.chain.corners[wall] as Point;
	const { ux, uy } = track.chain.walls[wall] as WallFace;
	const x = at.x - corner.x;
	const y = at.y - corner.y;
	return { wall, at: x * ux + y * uy, projection: x * uy - y * ux };
}

function wallOf(track: FittedTrack, segment: Segment, station: number): number {
	if (segment.kind !== "bend") return segment.wall;
	const onLeft = station - segment.start <= passesOver(track, segment) * segment.radius;
	return onLeft ? (segment.corners[0] as number) - 1 : (segment.corners.at(-1) as number);
}

/**
 * How far (rad) into a bend the track passes from the wall on the left to the one on the right: half-way, or where it is no
 * longer square off one of them, which comes sooner or later where their projections differ.
 */
function passesOver(track: FittedTrack, { from, to, corners, turn, radius }: Bend): number {
	const left = (corners[0] as number) - 1;
	const right = corners.at(-1) as number;
	const whole = Math.abs(turn);
	const leavesLeft = swungAfter((track.chain.walls[left] as WallFace).length - footOn(track, left, from), radius);
	const meetsRight = whole - swungAfter(footOn(track, right, to), radius);
	// Round the outside of a corner there is a stretch that is square off neither wall.
	if (leavesLeft < meetsRight) return whole / 2;
	return Math.max(Math.min(whole / 2, leavesLeft), meetsRight);
}

/** Angle (rad) after which an arc has gone `along` mm in the direction in which it starts. */
const swungAfter = (along: number, radius: number): number => Math.asin(Math.min(Math.max(along / radius, 0), 1));

/**
 * The station square off `at` mm along a wall face. Places that no part of the track lies square off (in a corner, beyond the
 * track's end) are read as the nearest that one does. Null where the track does not follow that wall.
 */
export function stationSquareOff(track: FittedTrack, wall: number, at: number): number | null {
	const leg = wall - track.bends.first;
	if (leg < 0 || leg >= track.straightOf.length) return null;
	const { segments } = track.path;
	const straight = segments[track.straightOf[leg] as number] as Straight | undefined;
	const before = segments[track.bendOf[leg - 1] ?? -1] as Bend | undefined;
	const after = segments[track.bendOf[leg] ?? -1] as Bend | undefined;

	const startsAt = footOn(track, wall, straight?.from ?? before?.to ?? after?.from);
	const endsAt = footOn(track, wall, straight?.to ?? after?.from ?? before?.to);
	if (at < startsAt && before !== undefined) {
		const most = Math.abs(before.turn) - passesOver(track, before);
		return before.start + before.length - before.radius * Math.min(swungAfter(startsAt - at, before.radius), most);
	}
	if (at > endsAt && after !== undefined)
		return after.start + after.radius * Math.min(swungAfter(at - endsAt, after.radius), passesOver(track, after));
	if (straight === undefined) return after?.start ?? (before === undefined ? null : before.start + before.length);
	return straight.start + Math.min(Math.max(at - startsAt, 0), straight.length);
}

function footOn({ chain }: FittedTrack, wall: number, at: Point | undefined): number {
	if (at === undefined) return 0;
	const corner = chain.corners[wall] as Point;
	const { ux, uy } = chain.walls[wall] as WallFace;
	return (at.x - corner.x) * ux + (at.y - corner.y) * uy;
}
