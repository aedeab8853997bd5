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
	type WallChain,
	type WallFace,
} from "@baywright/geometry";
import type { Finding, Remedy } from "../finding/finding.ts";
import type { Bay, Obstacle } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { reachesTrack } from "./bracket-room.ts";
import { fitBay, wouldFit } from "./fit-bay.ts";
import { otherSystems, setProjection } from "./remedies.ts";

/** Slack (mm) when a clearance is compared with its limit: far below any tape. */
const SLACK = 1e-6;

/** What the track comes too near to or runs into: walls, obstacles at its height, itself. */
export function inTheWay(
	bay: Bay,
	system: TrackSystem,
	track: FittedTrack,
	height: number | null,
	others: readonly TrackSystem[],
): Finding[] {
	return [
		...nearWalls(bay, system, track, others),
		...acrossItself(track),
		...nearObstacles(bay, system, track, height),
	];
}

function nearWalls(bay: Bay, system: TrackSystem, track: FittedTrack, others: readonly TrackSystem[]): Finding[] {
	const { clearance } = system;
	const near = nearerThan(track.path, indexWalls(track.chain), clearance - SLACK);
	if (near.length === 0) return [];
	const remedies = [...nextProjection(bay, track.chain, system), ...otherSystems(bay, track.chain, others)];
	return near.map(({ distance, curve, onPath, onCurve, station }) => ({
		code: "track-too-near-wall",
		where: { wall: curve, station, at: onPath, from: onCurve },
		figures: { distance, clearance },
		remedies,
	}));
}

/** Projections tried across the system's range. */
const TRIES = 12;

/** The projection nearest to the present one with which the track clears every wall. */
function nextProjection(bay: Bay, chain: WallChain, system: TrackSystem): Remedy[] {
	const { min, max } = system.projection;
	const usual = bay.track.projection ?? system.projection.default;
	const tried = Array.from({ length: TRIES + 1 }, (_, i) => Math.round(min + (i * (max - min)) / TRIES));
	const nearest = tried.toSorted((a, b) => Math.abs(a - usual) - Math.abs(b - usual));
	const projection = nearest.find((one) => one !== usual && wouldFit(bay, chain, system, { projection: one }));
	return projection === undefined ? [] : [setProjection(projection)];
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
				figures: { kind, depth, distance: near.distance, clearance: system.clearance },
				remedies: moreProjection(bay, obstacle, system, track),
			},
		];
	});
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

/** As much projection as clears the obstacle on its own wall, where the system has it and the track then fits. */
function moreProjection(bay: Bay, obstacle: Obstacle, system: TrackSystem, track: FittedTrack): Remedy[] {
	const projection = Math.ceil(obstacle.depth + system.clearance);
	if (projection > system.projection.max) return [];
	const fit = fitBay({ ...bay, track: { ...bay.track, projection } }, track.chain, system);
	if (!fit.ok || nearestTo(obstacle, fit.value, system) !== null) return [];
	return [setProjection(projection)];
}
