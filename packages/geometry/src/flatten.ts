import { Arc, Point as FlattenPoint, Polygon, Segment } from "@flatten-js/core";
import type { Curve } from "./curve.ts";
import type { Point } from "./point.ts";

/** The same curve for @flatten-js/core, which measures arcs counter-clockwise from start to end when `counterClockwise` is set. */
export function toFlatten(curve: Curve): Segment | Arc {
	const { from, to, centre, radius, turn } = curve;
	if (centre === undefined || radius === undefined || turn === undefined) {
		return new Segment(new FlattenPoint(from.x, from.y), new FlattenPoint(to.x, to.y));
	}
	return new Arc(
		new FlattenPoint(centre.x, centre.y),
		radius,
		Math.atan2(from.y - centre.y, from.x - centre.x),
		Math.atan2(to.y - centre.y, to.x - centre.x),
		turn < 0,
	);
}

export function toFlattenPolygon(corners: readonly Point[]): Polygon {
	return new Polygon(corners.map(({ x, y }): [number, number] => [x, y]));
}
