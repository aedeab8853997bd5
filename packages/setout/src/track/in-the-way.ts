import {
	type FittedTrack,
	indexWalls,
	nearerThan,
	pathCrossings,
	stationSquareOff,
	tapedFrom,
} from "@baywright/geometry";
import type { Finding, Remedy } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { reachesTrack } from "./bracket-room.ts";

/** Slack (mm) when a clearance is compared with its limit: far below any tape. */
const SLACK = 1e-6;

/** What the track comes too near to or runs into: walls, obstacles at its height, itself. */
export function inTheWay(bay: Bay, system: TrackSystem, track: FittedTrack, height: number | null): Finding[] {
	return [...nearWalls(system, track), ...acrossItself(track), ...nearObstacles(bay, system, track, height)];
}

function nearWalls({ clearance }: TrackSystem, track: FittedTrack): Finding[] {
	return nearerThan(track.path, indexWalls(track.chain), clearance - SLACK).map(
		({ distance, wall, onPath, station }) => ({
			code: "track-too-near-wall",
			where: { wall, station, at: onPath },
			figures: { distance, clearance },
			remedies: [],
		}),
	);
}

function acrossItself(track: FittedTrack): Finding[] {
	return pathCrossings(track.path).map(({ at }) => ({
		code: "track-crosses-itself",
		where: { at },
		figures: {},
		remedies: [],
	}));
}

function nearObstacles(bay: Bay, system: TrackSystem, track: FittedTrack, height: number | null): Finding[] {
	return bay.obstacles.flatMap(({ wall, from, to, bottom, top, depth, kind }, obstacle): Finding[] => {
		if (!reachesTrack(bottom, top, height, system.profile.height)) return [];
		const left = stationSquareOff(track, wall, from);
		const right = stationSquareOff(track, wall, to);
		if (left === null || right === null || right - left < SLACK) return [];
		// Along a wall the track stands least far off where it is straight, at one end of the stretch if not between.
		const stands = Math.min(tapedFrom(track, left).projection, tapedFrom(track, right).projection);
		const needed = depth + system.clearance;
		if (stands >= needed - SLACK) return [];
		return [
			{
				code: "obstacle-in-the-way",
				where: { wall, obstacle, station: (left + right) / 2 },
				figures: { kind, depth, projection: stands, needed },
				remedies: moreProjection(system, Math.ceil(needed)),
			},
		];
	});
}

const moreProjection = ({ projection: { max } }: TrackSystem, projection: number): Remedy[] =>
	projection > max
		? []
		: [
				{
					action: "set-projection",
					figures: { projection },
					change: [{ op: "replace", path: "/track/projection", value: projection }],
				},
			];
