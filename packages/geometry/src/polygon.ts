import { Point as FlattenPoint } from "@flatten-js/core";
import type { WallChain } from "./chain.ts";
import { toFlattenPolygon } from "./flatten.ts";
import type { Point } from "./point.ts";

/** The floor of a bay: its wall faces, closed straight across the room side. */
export interface BayPolygon {
	/** mm². */
	readonly area: number;
	/** Is the point inside or on the edge? */
	contains(p: Point): boolean;
	/** mm from the point to the nearest edge, the room side counted as an edge. */
	distanceToEdge(p: Point): number;
}

/** Null for a chain of one wall, which encloses nothing. */
export function bayPolygon({ corners }: WallChain): BayPolygon | null {
	if (corners.length < 3) return null;
	const polygon = toFlattenPolygon(corners);
	return {
		area: polygon.area(),
		contains: ({ x, y }) => polygon.contains(new FlattenPoint(x, y)),
		distanceToEdge: ({ x, y }) =>
			Math.min(...[...polygon.edges].map((edge) => new FlattenPoint(x, y).distanceTo(edge.shape)[0])),
	};
}
