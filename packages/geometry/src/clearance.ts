import { type BoxTree, boxTree, visitWithin } from "./box-tree.ts";
import type { WallChain } from "./chain.ts";
import { approach, type Curve, writeBox } from "./curve.ts";
import { faceCurve } from "./face.ts";
import type { Segment, TrackPath } from "./path.ts";
import type { Point } from "./point.ts";
import { nearestStation } from "./station.ts";

/** Stretches that a path is kept clear of, made ready for distances. */
export interface CurveIndex {
	readonly curves: readonly Curve[];
	readonly tree: BoxTree;
}

/** Any stretches, best in an order in which neighbours lie close together. */
export function indexCurves(curves: readonly Curve[]): CurveIndex {
	return { curves, tree: boxTree(curves.length, (item, boxes, at) => writeBox(curves[item] as Curve, boxes, at)) };
}

/** The wall faces: curve i is wall i. */
export function indexWalls(chain: WallChain): CurveIndex {
	return indexCurves(chain.walls.map((_, wall) => faceCurve(chain, wall)));
}

/** Where the centre line comes near one of the stretches. Lengths mm. */
export interface Nearness {
	readonly distance: number;
	/** Index of the path's segment and of the other stretch. */
	readonly segment: number;
	readonly curve: number;
	readonly onPath: Point;
	readonly onCurve: Point;
	readonly station: number;
}

/** Where the path comes nearest to any of the stretches; null where there are none. */
export function clearance(path: TrackPath, index: CurveIndex): Nearness | null {
	let best: Nearness | null = null;
	const box = new Float64Array(4);
	path.segments.forEach((segment, at) => {
		writeBox(segment, box, 0);
		visitWithin(
			index.tree,
			box,
			0,
			() => best?.distance ?? Number.POSITIVE_INFINITY,
			(curve) => {
				const near = nearness(segment, at, index, curve);
				if (best === null || near.distance < best.distance) best = near;
			},
		);
	});
	return best;
}

/** For each segment that comes nearer to a stretch than `limit` mm, where it comes nearest. */
export function nearerThan(path: TrackPath, index: CurveIndex, limit: number): Nearness[] {
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
			(curve) => {
				const near = nearness(segment, at, index, curve);
				if (near.distance < (worst?.distance ?? limit)) worst = near;
			},
		);
		if (worst !== null) all.push(worst);
	});
	return all;
}

function nearness(segment: Segment, at: number, index: CurveIndex, curve: number): Nearness {
	const { distance, onA, onB } = approach(segment, index.curves[curve] as Curve);
	const place = nearestStation({ segments: [segment], length: segment.length }, onA);
	return { distance, segment: at, curve, onPath: onA, onCurve: onB, station: place?.station ?? segment.start };
}
