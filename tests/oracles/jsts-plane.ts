import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import WKTReader from "jsts/org/locationtech/jts/io/WKTReader.js";
import DistanceOp from "jsts/org/locationtech/jts/operation/distance/DistanceOp.js";
import RelateOp from "jsts/org/locationtech/jts/operation/relate/RelateOp.js";
import IsValidOp from "jsts/org/locationtech/jts/operation/valid/IsValidOp.js";

interface Spot {
	readonly x: number;
	readonly y: number;
}

const reader = new WKTReader(new GeometryFactory());
const ring = (points: readonly Spot[]) => points.map(({ x, y }) => `${x} ${y}`).join(", ");

const lineOf = (points: readonly Spot[]) => reader.read(`LINESTRING (${ring(points)})`);

/** mm between two polylines, by the general geometry library. */
export const distanceBetween = (a: readonly Spot[], b: readonly Spot[]): number =>
	DistanceOp.distance(lineOf(a), lineOf(b));

/** Area of a closed polygon, whether a point lies in it or on its edge, and how far from its edge. */
export function polygonOf(points: readonly Spot[]) {
	const closed = [...points, points[0] as Spot];
	const polygon = reader.read(`POLYGON ((${ring(closed)}))`);
	const edge = lineOf(closed);
	const spot = ({ x, y }: Spot) => reader.read(`POINT (${x} ${y})`);
	return {
		area: polygon.getArea() as number,
		isSimple: new IsValidOp(polygon).isValid() as boolean,
		contains: (p: Spot): boolean => RelateOp.covers(polygon, spot(p)),
		distanceToEdge: (p: Spot): number => DistanceOp.distance(edge, spot(p)),
	};
}
