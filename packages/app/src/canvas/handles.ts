import { midpoint, type Point } from "@baywright/geometry";
import type { Scene } from "./scene.ts";
import { type ScreenPoint, toScreen } from "./viewport.ts";
import type { WallShape } from "./wall-shape.ts";

/** Radius of a corner's handle, px; smaller where corners stand close. */
export const CORNER_HANDLE = 10;
const LEAST_CORNER_HANDLE = 3;

/** px: where corners stand closer than this their handles are not drawn; zooming in brings them. */
const CLOSEST = 9;

/** Half the length and half the breadth of a wall's handle, px. */
export const WALL_HANDLE = { halfLength: 15, halfBreadth: 4 } as const;

/** px: a wall shorter than this on screen has no handle of its own; it can still be taken by its body. */
const SHORTEST_WITH_HANDLE = 64;

export interface CornerHandle {
	readonly corner: number;
	readonly at: ScreenPoint;
	readonly radius: number;
}

export interface WallHandle {
	readonly wall: number;
	readonly at: ScreenPoint;
	/** Radians, clockwise on screen. */
	readonly turn: number;
}

export function cornerHandles({ corners, view }: Scene): CornerHandle[] {
	const places = corners.map((corner) => toScreen(view, corner));
	return places.flatMap((at, corner) => {
		const near = nearestNeighbour(places, corner);
		if (near < CLOSEST) return [];
		return [{ corner, at, radius: Math.max(LEAST_CORNER_HANDLE, Math.min(CORNER_HANDLE, near / 3)) }];
	});
}

/** On the outer line, clear of glass, brackets and track. */
export function wallHandles({ walls, view }: Scene): WallHandle[] {
	return walls.flatMap((shape) => {
		if (shape === null || shape.length * view.scale < SHORTEST_WITH_HANDLE) return [];
		const at = toScreen(view, outerMiddle(shape));
		const { ux, uy } = shape.along[Math.floor(shape.along.length / 2)] as WallShape["along"][number];
		return [{ wall: shape.wall, at, turn: Math.atan2(-uy, ux) }];
	});
}

function outerMiddle({ outer }: WallShape): Point {
	const middle = outer.length >> 1;
	return outer.length % 2 === 1
		? (outer[middle] as Point)
		: midpoint(outer[middle - 1] as Point, outer[middle] as Point);
}

function nearestNeighbour(places: readonly ScreenPoint[], corner: number): number {
	const at = places[corner] as ScreenPoint;
	const near = [places[corner - 1], places[corner + 1]].map((other) =>
		other === undefined ? Number.POSITIVE_INFINITY : Math.hypot(other.left - at.left, other.top - at.top),
	);
	return Math.min(...near);
}
