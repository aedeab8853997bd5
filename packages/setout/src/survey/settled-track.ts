import {
	distance,
	type FittedTrack,
	fitTrack,
	type Point,
	readChain,
	stationSquareOff,
	type TrackEnds,
	type WallFace,
} from "@baywright/geometry";
import type { Joint, Piece } from "../bay-plan.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { WallPlace } from "../job/track-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { bracketRoom } from "../track/bracket-room.ts";
import { placeJoints } from "../track/joints.ts";
import { cutPieces } from "../track/pieces.ts";
import { endsOf, fitRuleOf, heightOf, projectionsOf } from "../track/track-rule.ts";

/** Where the walls of a bay stand: its corners and rises, mm. */
export interface Standing {
	readonly corners: readonly Point[];
	readonly rises: readonly number[];
}

/** A track fitted to a bay as it stands, with its pieces cut. */
export interface SettledTrack {
	readonly track: FittedTrack;
	readonly pieces: readonly Piece[];
	/** Where the pieces meet. */
	readonly joints: readonly Joint[];
	/** Which walls the track follows and which corners each bend goes round: two tracks alike in this change into each other smoothly. */
	readonly shape: string;
}

/** Fits tracks of one bay to walls wherever they stand. */
export type TrackFitter = (standing: Standing, joints?: readonly WallPlace[]) => SettledTrack | null;

/**
 * A fitter for one bay's track; it gives null where no track fits. Joints stay where they were taped if they are given, else they are
 * placed anew. An end of the track that is drawn at the very end of a wall stays there, however long the wall turns out to be.
 */
export function trackFitter(bay: Bay, system: TrackSystem): TrackFitter {
	const projections = projectionsOf(bay, system);
	const rule = fitRuleOf(bay, system);
	const ends = endsAt(bay);
	const height = heightOf(bay);
	return ({ corners, rises }, given) => {
		const chain = readChain(corners, rises);
		if (!chain.ok) return null;
		const fit = fitTrack(chain.value, projections, ends(chain.value.walls.map(({ faceLength }) => faceLength)), rule);
		if (!fit.ok) return null;
		const track = fit.value;
		const joints =
			given === undefined
				? placeJoints(bay, system, track, bracketRoom(bay, system, track, height)).joints
				: jointsAt(track, given);
		if (joints === null) return null;
		const pieces = cutPieces(track, system, joints, []);
		const { legs, elbows } = track.bends;
		const shape = `${legs.join()};${elbows.map(({ first, last, reverse }) => `${first}-${last}${reverse ? "r" : ""}`)}`;
		return { track, pieces, joints, shape };
	};
}

/** Null where one is no longer on the track, or they no longer follow one another. */
function jointsAt(track: FittedTrack, places: readonly WallPlace[]): Joint[] | null {
	const joints: Joint[] = [];
	for (const { wall, at } of places) {
		const station = stationSquareOff(track, wall, at);
		if (station === null || station <= (joints.at(-1)?.station ?? 0)) return null;
		joints.push({ wall, at, station });
	}
	return joints;
}

/** Nearer to the end of its wall than this (mm) an end of the track was drawn at the very end: what rounding to whole millimetres leaves. */
const AT_END = 0.5;

/** Whether each end of the track was drawn at the very end of a wall. */
export function drawnAtEnd({ corners, walls, track }: Bay): { readonly start: boolean; readonly end: boolean } {
	const { start, end } = track;
	if (start === null && end === null) return { start: false, end: false };
	const drawn = readChain(
		corners.map(([x, y]) => ({ x, y })),
		walls.map(({ rise }) => rise),
	);
	const isAtEnd = (place: WallPlace | null) => {
		const face = drawn.ok && place !== null ? (drawn.value.walls[place.wall] as WallFace | undefined) : undefined;
		return face !== undefined && Math.abs((place as WallPlace).at - face.faceLength) <= AT_END;
	};
	return { start: isAtEnd(start), end: isAtEnd(end) };
}

function endsAt(bay: Bay): (lengths: readonly number[]) => TrackEnds {
	const drawn = drawnAtEnd(bay);
	return (lengths) => {
		const ends = endsOf(bay, lengths);
		const atEnd = ({ wall }: WallPlace) => ({ wall, at: lengths[wall] as number });
		return {
			start: drawn.start ? atEnd(ends.start) : ends.start,
			end: drawn.end ? atEnd(ends.end) : ends.end,
		};
	};
}

/**
 * About how long the track would be with every bend as wide as preferred, whether or not it fits: Σ runs less, at every corner,
 * 2(d + R)·tan(δ/2) − R·δ. Bows are passed over.
 */
export function roughLength(bay: Bay, system: TrackSystem, { corners }: Standing): number {
	const projections = projectionsOf(bay, system);
	const radius = bay.track.radius ?? system.preferredRadius;
	let length = 0;
	corners.slice(1).forEach((right, wall) => {
		const [left, next] = [corners[wall] as Point, corners[wall + 2]];
		length += distance(left, right);
		if (next === undefined) return;
		const [ax, ay, bx, by] = [right.x - left.x, right.y - left.y, next.x - right.x, next.y - right.y];
		const turn = Math.atan2(ay * bx - ax * by, ax * bx + ay * by);
		const bent = Math.max(-STEEPEST, Math.min(STEEPEST, turn));
		const reach = (projections[wall] as number) + (projections[wall + 1] as number);
		length -= (reach + 2 * radius * Math.sign(bent)) * Math.tan(bent / 2) - radius * Math.abs(bent);
	});
	return length;
}

/** Turns beyond this are no corners of a bay (radians, 160°). */
const STEEPEST = 2.8;
