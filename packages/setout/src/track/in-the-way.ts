import {
	type Curve,
	type FittedTrack,
	footOnFace,
	indexCurves,
	indexWalls,
	type Nearness,
	nearerThan,
	type Point,
	pathCrossings,
	pointOffFace,
	type WallFace,
} from "@baywright/geometry";
import type { Finding } from "../finding/finding.ts";
import type { Bay, Obstacle } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { reachesTrack } from "./bracket-room.ts";

/** Slack (mm) when a clearance is compared with its limit: far below any tape. */
const SLACK = 1e-6;

/** What the track comes too near to or runs into: walls, obstacles at its height, itself. */
export function inTheWay(bay: Bay, system: TrackSystem, track: FittedTrack, height: number | null): Finding[] {
	return [...nearWalls(system, track), ...acrossItself(track), ...nearObstacles(bay, system, track, height)];
}

function nearWalls({ clearance }: TrackSystem, track: FittedTrack): Finding[] {
	const near = nearerThan(track.path, indexWalls(track.chain), clearance - SLACK);
	return near.map(({ distance, curve, onPath, onCurve, station }) => ({
		code: "track-too-near-wall",
		where: { wall: curve, station, at: onPath, from: onCurve },
		figures: { distance, clearance },
		remedies: [],
	}));
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
	return bay.obstacles.flatMap((obstacle, index): Finding[] => {
		const { wall, bottom, top, depth, kind } = obstacle;
		if (depth === 0 || !reachesTrack(bottom, top, height, system.profile.height)) return [];
		const near = nearestTo(obstacle, track, system);
		if (near === null) return [];
		return [
			{
				code: "obstacle-in-the-way",
				where: { wall, obstacle: index, station: near.station, at: near.onPath, from: near.onCurve },
				figures: {
					kind,
					depth,
					distance: near.distance,
					clearance: system.clearance,
					...projectionPast(obstacle, near, track, system),
				},
				remedies: [],
			},
		];
	});
}

/** The projection that passes an obstacle where the track runs along its own wall; round a bend no one figure says it. */
function projectionPast({ wall, depth }: Obstacle, near: Nearness, { path }: FittedTrack, { clearance }: TrackSystem) {
	const segment = path.segments[near.segment];
	return segment?.kind === "bend" || segment?.wall !== wall ? {} : { needed: depth + clearance };
}

/** Where the track comes nearest to an obstacle, if nearer than the system's clearance; distance 0 where it runs through. */
function nearestTo(obstacle: Obstacle, track: FittedTrack, { clearance }: TrackSystem): Nearness | null {
	const near = nearerThan(track.path, indexCurves(outline(obstacle, track)), clearance - SLACK);
	const inside = track.path.segments.findIndex(({ from }) => isInside(from, obstacle, track));
	if (inside >= 0) {
		const { from, start } = track.path.segments[inside] as FittedTrack["path"]["segments"][number];
		return { distance: 0, segment: inside, curve: 0, onPath: from, onCurve: from, station: start };
	}
	return near.reduce<Nearness | null>(
		(worst, each) => (worst !== null && worst.distance <= each.distance ? worst : each),
		null,
	);
}

/** The three sides of an obstacle that stand off its wall. */
function outline({ wall, from, to, depth }: Obstacle, { chain }: FittedTrack): Curve[] {
	const at = (along: number, off: number) => pointOffFace(chain, wall, along, off);
	const front: Curve = { from: at(from, depth), to: at(to, depth) };
	const { bow } = chain.walls[wall] as WallFace;
	const side = Math.sign(bow?.turn ?? 0);
	const bowed =
		bow === null
			? {}
			: { centre: bow.centre, radius: bow.radius - side * depth, turn: (side * (to - from)) / bow.radius };
	return [
		{ from: at(from, 0), to: at(from, depth) },
		{ ...front, ...bowed },
		{ from: at(to, depth), to: at(to, 0) },
	];
}

function isInside(p: Point, { wall, from, to, depth }: Obstacle, { chain }: FittedTrack): boolean {
	const { at, off } = footOnFace(chain, wall, p);
	return at >= from && at <= to && off >= 0 && off <= depth;
}
