import { type BoxTree, boxTree, visitWithin } from "./box-tree.ts";
import type { WallChain } from "./chain.ts";
import { approach, type Curve, writeBox } from "./curve.ts";
import type { Segment, TrackPath } from "./path.ts";
import type { Point } from "./point.ts";
import { nearestStation } from "./station.ts";

/** Wall faces made ready for distances. */
export interface WallIndex {
	readonly walls: readonly Curve[];
	readonly tree: BoxTree;
}

export function indexWalls(chain: WallChain): WallIndex {
	const walls = chain.walls.map((_, wall) => ({
		from: chain.corners[wall] as Point,
		to: chain.corners[wall + 1] as Point,
	}));
	return { walls, tree: boxTree(walls.length, (wall, boxes, offset) => writeBox(walls[wall] as Curve, boxes, offset)) };
}

/** Where the centre line comes near a wall face. Lengths mm. */
export interface Nearness {
	readonly distance: number;
	readonly segment: number;
	readonly wall: number;
	readonly onPath: Point;
	readonly onWall: Point;
	readonly station: number;
}

/** Where the path comes nearest to the walls; null on an empty path. */
export function clearance(path: TrackPath, index: WallIndex): Nearness | null {
	let best: Nearness | null = null;
	const box = new Float64Array(4);
	path.segments.forEach((segment, at) => {
		writeBox(segment, box, 0);
		visitWithin(
			index.tree,
			box,
			0,
			() => best?.distance ?? Number.POSITIVE_INFINITY,
			(wall) => {
				const near = nearness(segment, at, index, wall);
				if (best === null || near.distance < best.distance) best = near;
			},
		);
	});
	return best;
}

/** For each segment that comes nearer to a wall than `limit` mm, where it comes nearest. */
export function nearerThan(path: TrackPath, index: WallIndex, limit: number): Nearness[] {
	const all: Nearness[] = [];
	const box = new Float64Array(4);
	path.segments.forEach((segment, at) => {
		writeBox(segment, box, 0);
		let worst: Nearness | null = null;
		visitWithin(
			index.tree,
			box,
			0,
			() => limit,
			(wall) => {
				const near = nearness(segment, at, index, wall);
				if (near.distance < (worst?.distance ?? limit)) worst = near;
			},
		);
		if (worst !== null) all.push(worst);
	});
	return all;
}

function nearness(segment: Segment, at: number, index: WallIndex, wall: number): Nearness {
	const { distance, onA, onB } = approach(segment, index.walls[wall] as Curve);
	const place = nearestStation({ segments: [segment], length: segment.length }, onA);
	return { distance, segment: at, wall, onPath: onA, onWall: onB, station: place?.station ?? segment.start };
}
