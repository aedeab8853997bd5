import type { WallFace } from "@baywright/geometry";
import type { Finding, Remedy } from "../finding/finding.ts";
import { endAtCorner, moveEnd, type TrackEnd } from "./remedies.ts";
import { curing, nearestCure, type Refused } from "./search-remedies.ts";
import { endsOf } from "./track-rule.ts";

/** From an external edge to the end of a track that stops at it, mm: where the wall no longer breaks out. */
const SHORT_OF_EDGE = 75;

/** A shorter track than this, mm, is no cure for a long one (common practice, no source). */
const WORTH_HANGING = 300;

/** Walls along which an end is looked for, the nearest first, and places tried on each of the further ones. */
const WALLS_BACK = 8;
const TRIES_FURTHER = 4;

/** A stretch that a track cannot pass: from a place on one wall to a place on the same or a later one. */
export interface Stretch {
	readonly from: { readonly wall: number; readonly at: number };
	readonly to: { readonly wall: number; readonly at: number };
}

/** The track ended short of a corner that it cannot pass: the longer part that plans, else the other. */
export function endedAtCorner(refused: Refused, finding: Finding, corner: number): Remedy[] {
	const before = refused.chain?.walls[corner - 1]?.faceLength ?? 0;
	const short = Math.floor(before - SHORT_OF_EDGE);
	const stretch = { from: { wall: corner - 1, at: short }, to: { wall: corner, at: SHORT_OF_EDGE } };
	const atCorner = {
		right: endAtCorner("right", corner, corner - 1, short),
		left: endAtCorner("left", corner, corner, SHORT_OF_EDGE),
	};
	return longerFirst(refused, stretch, (end) => {
		const atEdge = end === "left" || short > 0 ? curing(refused, finding, [atCorner[end]]) : [];
		return atEdge.length > 0 ? atEdge : endedBefore(refused, finding, stretch, end);
	});
}

/** The track ended before something that it cannot pass: the longer part that plans, else the other. */
export const endedBeforeStretch = (refused: Refused, finding: Finding, stretch: Stretch): Remedy[] =>
	longerFirst(refused, stretch, (end) => endedBefore(refused, finding, stretch, end));

function longerFirst(refused: Refused, { from, to }: Stretch, endedAt: (end: TrackEnd) => readonly Remedy[]): Remedy[] {
	const { bay, chain } = refused;
	if (chain === null) return [];
	const lengths = chain.walls.map(({ faceLength }) => faceLength);
	const { start, end } = endsOf(bay, lengths);
	const left = along(lengths, start, from);
	const right = along(lengths, to, end);
	const parts = [
		{ end: "right", length: left },
		{ end: "left", length: right },
	] as const;
	for (const part of left >= right ? parts : parts.toReversed()) {
		if (part.length < WORTH_HANGING) continue;
		const remedies = endedAt(part.end);
		if (remedies.length > 0) return [...remedies];
	}
	return [];
}

/** The place nearest to the stretch at which the track can end on its left (`end` right) or start on its right. */
function endedBefore(refused: Refused, finding: Finding, { from, to }: Stretch, end: TrackEnd): Remedy[] {
	const faces = refused.chain?.walls ?? [];
	const lengths = faces.map(({ faceLength }) => faceLength);
	const ends = endsOf(refused.bay, lengths);
	const way = end === "right" ? -1 : 1;
	const place = end === "right" ? from : to;
	const last = end === "right" ? ends.start : ends.end;
	for (let i = 0, wall = place.wall; i < WALLS_BACK && (last.wall - wall) * way >= 0; i++, wall += way) {
		const length = (faces[wall] as WallFace).faceLength;
		const furthest = wall === last.wall ? last.at : end === "right" ? 0 : length;
		const aim = wall === place.wall ? place.at : end === "right" ? length : 0;
		const range: [number, number] = end === "right" ? [furthest, aim] : [aim, furthest];
		const kept = wall === last.wall ? Math.abs(last.at - aim) : WORTH_HANGING;
		if (kept < WORTH_HANGING) return [];
		const found = nearestCure(
			refused,
			finding,
			(at) => moveEnd(end, wall, at),
			aim,
			range,
			i === 0 ? undefined : TRIES_FURTHER,
		);
		if (found.length > 0) return found;
	}
	return [];
}

/** The nearest place to which an end of the track can be moved along its own wall, either way. */
export function endMovedAlong(refused: Refused, finding: Finding, end: TrackEnd): Remedy[] {
	const lengths = refused.chain?.walls.map(({ faceLength }) => faceLength) ?? [];
	const ends = endsOf(refused.bay, lengths);
	const { wall, at } = end === "left" ? ends.start : ends.end;
	const length = lengths[wall] ?? 0;
	const other = end === "left" ? ends.end : ends.start;
	const range: [number, number] =
		other.wall !== wall ? [0, length] : end === "left" ? [0, other.at] : [other.at, length];
	return nearestCure(refused, finding, (one) => moveEnd(end, wall, one), at, range);
}

/** The track ended short of the wall on which one of its ends finds no place: on the wall after (its start) or before (its end). */
export function endMovedPast(refused: Refused, finding: Finding, end: TrackEnd, corner: number): Remedy[] {
	const before = refused.chain?.walls[corner - 1]?.faceLength ?? 0;
	const stretch = { from: { wall: corner - 1, at: before }, to: { wall: corner, at: 0 } };
	return endedBefore(refused, finding, stretch, end);
}

function along(lengths: readonly number[], from: Stretch["from"], to: Stretch["from"]): number {
	const whole = lengths.slice(from.wall, to.wall).reduce((sum, length) => sum + length, 0);
	return whole + to.at - from.at;
}
