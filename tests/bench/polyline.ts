import type { Point, Segment, TrackPath } from "@baywright/geometry";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";

const factory = new GeometryFactory();

/** A polyline for jsts. */
export const lineString = (points: readonly Point[]): unknown =>
	factory.createLineString(points.map(({ x, y }) => new Coordinate(x, y)));

/** The path with its arcs sampled: greatest chord error 0.1 mm, as a drawing would have it. */
export function sampled({ segments }: TrackPath): Point[] {
	const points: Point[] = segments.length === 0 ? [] : [(segments[0] as Segment).from];
	for (const segment of segments) {
		if (segment.kind !== "straight") {
			const step = 2 * Math.acos(1 - 0.1 / segment.radius);
			const count = Math.max(1, Math.ceil(Math.abs(segment.turn) / step));
			const from = Math.atan2(segment.from.y - segment.centre.y, segment.from.x - segment.centre.x);
			for (let i = 1; i < count; i++) {
				const angle = from - (segment.turn * i) / count;
				points.push({
					x: segment.centre.x + segment.radius * Math.cos(angle),
					y: segment.centre.y + segment.radius * Math.sin(angle),
				});
			}
		}
		points.push(segment.to);
	}
	return points;
}
