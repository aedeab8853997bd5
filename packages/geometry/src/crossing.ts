import { boxTree, visitWithin } from "./box-tree.ts";
import type { WallChain } from "./chain.ts";
import { type Curve, writeBox } from "./curve.ts";
import { faceCurve } from "./face.ts";
import { toFlatten } from "./flatten.ts";
import type { Segment, TrackPath } from "./path.ts";
import type { Point } from "./point.ts";
import { LOOP } from "./tolerance.ts";

/** Two stretches that cross or touch, by index, the first the lower. */
export interface Crossing {
	readonly first: number;
	readonly second: number;
	readonly at: Point;
}

/** Walls that cross or touch other walls than their neighbours. */
export function wallCrossings(chain: WallChain): Crossing[] {
	const faces = chain.walls.map((_, wall) => faceCurve(chain, wall));
	return crossings(faces, (first, second) => second <= first + 1);
}

/** Places where a path crosses itself. */
export function pathCrossings({ segments }: TrackPath): Crossing[] {
	const joined = (first: number, second: number) => {
		const before = segments[first] as Segment;
		return (segments[second] as Segment).start - before.start - before.length < LOOP;
	};
	return crossings(segments, joined);
}

/** The tree leaves few pairs to ask @flatten-js/core about; `joined` pairs meet anyway and are left out. */
function crossings(curves: readonly Curve[], joined: (first: number, second: number) => boolean): Crossing[] {
	const tree = boxTree(curves.length, (item, boxes, offset) => writeBox(curves[item] as Curve, boxes, offset));
	const all: Crossing[] = [];
	const touching = () => 0;
	curves.forEach((curve, first) => {
		const visit = (second: number) => {
			if (second <= first || joined(first, second)) return;
			const meet = toFlatten(curve).intersect(toFlatten(curves[second] as Curve))[0];
			if (meet !== undefined) all.push({ first, second, at: { x: meet.x, y: meet.y } });
		};
		visitWithin(tree, tree.boxes, 4 * first, touching, visit);
	});
	return all;
}
