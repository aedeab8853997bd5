import { type BoxTree, boxTree, visitWithin } from "./box-tree.ts";
import type { WallChain } from "./chain.ts";
import { approach, atLeastApart, type Curve, writeBox } from "./curve.ts";
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
export function clearance({ segments }: TrackPath, index: CurveIndex): Nearness | null {
	const best = new Nearest(index, Number.POSITIVE_INFINITY);
	for (let at = 0; at < segments.length; at++) best.look(segments[at] as Segment, at);
	return best.found(segments);
}

/** For each segment that comes nearer to a stretch than `limit` mm, where it comes nearest. */
export function nearerThan({ segments }: TrackPath, index: CurveIndex, limit: number): Nearness[] {
	const all: Nearness[] = [];
	const one = new Nearest(index, limit);
	for (let at = 0; at < segments.length; at++) {
		one.look(segments[at] as Segment, at);
		const near = one.found(segments);
		if (near === null) continue;
		all.push(near);
		one.forget(limit);
	}
	return all;
}

/** The nearest pair so far, within a limit. A search object, so that a look at a segment makes nothing that must be thrown away. */
class Nearest {
	readonly index: CurveIndex;
	private readonly box = new Float64Array(4);
	private distance: number;
	private segment = -1;
	private curve = -1;

	constructor(index: CurveIndex, limit: number) {
		this.index = index;
		this.distance = limit;
	}

	forget(limit: number): void {
		this.distance = limit;
		this.segment = -1;
	}

	look(segment: Segment, at: number): void {
		const { curves, tree } = this.index;
		writeBox(segment, this.box, 0);
		visitWithin(tree, this.box, 0, this.reach, (curve) => {
			const other = curves[curve] as Curve;
			if (atLeastApart(segment, other) >= this.distance) return;
			const { distance } = approach(segment, other);
			if (distance >= this.distance) return;
			this.distance = distance;
			this.segment = at;
			this.curve = curve;
		});
	}

	private readonly reach = (): number => this.distance;

	found(segments: readonly Segment[]): Nearness | null {
		const segment = segments[this.segment];
		if (segment === undefined) return null;
		const { curve, segment: at } = this;
		const { distance, onA, onB } = approach(segment, this.index.curves[curve] as Curve);
		const place = nearestStation({ segments: [segment], length: segment.length }, onA);
		return { distance, segment: at, curve, onPath: onA, onCurve: onB, station: place?.station ?? segment.start };
	}
}
