import { type FittedTrack, SLIGHT_TURN, stationSquareOff } from "@baywright/geometry";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { carryingOf } from "./bend-spans.ts";
import { type Interval, subtract } from "./spread.ts";

/** No drill reaches nearer than this to an internal corner, mm (common practice, no source). */
const DRILL_REACH = 50;

/** Nearer than this to an external edge the wall breaks out, mm (common practice, no source). */
const EDGE_DISTANCE = 75;

/** How far above and below the track a bracket's plate may come, mm. */
export const PLATE_REACH = 50;

/** The stations at which the middle of a bracket may be, sorted and apart. */
export function bracketRoom(bay: Bay, system: TrackSystem, track: FittedTrack, height: number | null): Interval[] {
	const half = system.bracket.width / 2;
	const onCentreLine: Interval = [system.endTakeUp + half, track.path.length - system.endTakeUp - half];
	if (onCentreLine[0] > onCentreLine[1]) return [];
	const closed = [
		...bendStretches(track, system),
		...(bay.track.mounting === "wall" ? cornerStretches(track) : []),
		...noDrillStretches(bay, track),
		...(bay.track.mounting === "wall" ? obstacleStretches(bay, track, height, half) : []),
	];
	return subtract([onCentreLine], closed);
}

function bendStretches(track: FittedTrack, system: TrackSystem): Interval[] {
	const half = system.bracket.width / 2;
	return carryingOf(track, system).bare.map(({ start, length }) => [start - half, start + length + half]);
}

/** Round every corner beside the track, those beyond its ends included: no drill reaches into one, and the wall breaks out at the other. */
function cornerStretches(track: FittedTrack): Interval[] {
	const { chain, bends, path } = track;
	const stretches: Interval[] = [];
	const last = bends.legs.at(-1) as number;
	for (let corner = bends.legs[0] as number; corner <= last + 1; corner++) {
		const turn = chain.turns[corner] as number;
		if (Math.abs(turn) < SLIGHT_TURN) continue;
		const keepOff = turn > 0 ? DRILL_REACH : EDGE_DISTANCE;
		const left = chain.walls[corner - 1]?.faceLength ?? 0;
		const from = stationSquareOff(track, corner - 1, left - keepOff) ?? 0;
		const to = stationSquareOff(track, corner, keepOff) ?? path.length;
		if (from < to) stretches.push([from, to]);
	}
	return stretches;
}

function noDrillStretches({ walls }: Bay, track: FittedTrack): Interval[] {
	return walls.flatMap(({ noDrill }, wall) => noDrill.flatMap(([from, to]) => stretchOnTrack(track, wall, from, to)));
}

function obstacleStretches({ obstacles }: Bay, track: FittedTrack, height: number | null, half: number): Interval[] {
	return obstacles
		.filter(({ bottom, top }) => reachesTrack(bottom, top, height, PLATE_REACH))
		.flatMap(({ wall, from, to }) => stretchOnTrack(track, wall, from - half, to + half));
}

/** Does a box from `bottom` (null = the floor) to `top` (null = the ceiling) come within `reach` of the track's height? With no height known it may: it counts. */
export function reachesTrack(bottom: number | null, top: number | null, height: number | null, reach: number): boolean {
	return height === null || ((bottom ?? 0) <= height + reach && (top ?? Number.POSITIVE_INFINITY) >= height - reach);
}

function stretchOnTrack(track: FittedTrack, wall: number, from: number, to: number): Interval[] {
	const left = stationSquareOff(track, wall, from);
	const right = stationSquareOff(track, wall, to);
	return left === null || right === null || right <= left ? [] : [[left, right]];
}
