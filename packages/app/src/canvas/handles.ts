import { type ScreenPoint, toScreen } from "@baywright/editor";
import { step } from "@baywright/geometry";
import type { Scene } from "./scene.ts";
import { DRAWN_THICKNESS, onFace, type WallShape } from "./wall-shape.ts";

/** Radius of a corner's handle, px; smaller where corners stand close. */
export const CORNER_HANDLE = 10;
const LEAST_CORNER_HANDLE = 3;

/** px: below this radius a corner's handle has no room for its number. */
export const NUMBERED = 9;

/** px: where corners stand closer than this their handles are not drawn; zooming in brings them. */
const CLOSEST = 9;

/** Half the length and half the breadth of a wall's handle, px. */
export const WALL_HANDLE = { halfLength: 15, halfBreadth: 4 } as const;

/** Half the width of a bow's handle and how far its ends hang behind its middle, px. */
export const BOW_HANDLE = { halfWidth: 14, drop: 9 } as const;

/** px: a wall shorter than this on screen has no handle of its own; it can still be taken by its body. */
const SHORTEST_WITH_HANDLE = 64;

/** px from the middle of the bow's handle to that of the wall's: a finger for each. */
const APART = 48;

/** px: from this length on the bow's handle is in the middle of its wall; down to the shorter one the two share the middle, and then only the wall's is left. */
const BOW_IN_MIDDLE = 150;
const SHORTEST_WITH_BOW = 102;

/** px: shorter nibs show only the handles of their walls. */
const SHORTEST_NIB = 190;

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

export interface BowHandle extends WallHandle {
	/** 1 where it arches away from the room, −1 where the wall bows into it. */
	readonly side: 1 | -1;
}

export function cornerHandles({ corners, view }: Scene): CornerHandle[] {
	const places = corners.map((corner) => toScreen(view, corner));
	return places.flatMap((at, corner) => {
		const near = nearestNeighbour(places, corner);
		if (near < CLOSEST) return [];
		return [{ corner, at, radius: Math.max(LEAST_CORNER_HANDLE, Math.min(CORNER_HANDLE, near / 3)) }];
	});
}

/** Bars that move a wall, on the outer line, clear of glass, brackets and track. */
export function wallHandles({ walls, view }: Scene): WallHandle[] {
	return walls.flatMap((shape) => {
		if (shape === null || shape.length * view.scale < SHORTEST_WITH_HANDLE) return [];
		return [{ wall: shape.wall, ...onOuterLine(shape, view, placesOf(shape, view).wall) }];
	});
}

/** Arches that bow a wall, beside its bar. */
export function bowHandles({ walls, view }: Scene): BowHandle[] {
	return walls.flatMap((shape): BowHandle[] => {
		const along = shape === null ? null : placesOf(shape, view).bow;
		if (shape === null || along === null) return [];
		const place = onOuterLine(shape, view, along);
		return [{ wall: shape.wall, ...place, side: (shape.arc?.rise ?? 0) < 0 ? -1 : 1 }];
	});
}

/** px along a wall from its middle to its handles, so that none jumps as the wall grows; null for no handle. */
function placesOf(shape: WallShape, view: Scene["view"]): { readonly wall: number; readonly bow: number | null } {
	const length = shape.length * view.scale;
	// In a nib the wall on the other side, which runs the other way, has its handles on the same line.
	if (shape.arc === null && shape.thickness < DRAWN_THICKNESS)
		return length < SHORTEST_NIB ? { wall: APART / 2, bow: null } : { wall: 1.5 * APART, bow: APART / 2 };
	if (length >= SHORTEST_WITH_BOW) {
		const bow = Math.min(APART / 2, Math.max(0, (BOW_IN_MIDDLE - length) / 2));
		return { wall: bow - APART, bow };
	}
	const share = (SHORTEST_WITH_BOW - length) / (SHORTEST_WITH_BOW - SHORTEST_WITH_HANDLE);
	return { wall: (APART / 2) * (Math.min(1, share) - 1), bow: null };
}

/** The place `along` px from the middle of a wall. */
function onOuterLine(shape: WallShape, view: Scene["view"], along: number): Pick<WallHandle, "at" | "turn"> {
	const { at, ux, uy } = onFace(shape, shape.length / 2 + along / view.scale);
	return { at: toScreen(view, step(at, ux, uy, 0, -shape.thickness)), turn: Math.atan2(-uy, ux) };
}

function nearestNeighbour(places: readonly ScreenPoint[], corner: number): number {
	const at = places[corner] as ScreenPoint;
	const near = [places[corner - 1], places[corner + 1]].map((other) =>
		other === undefined ? Number.POSITIVE_INFINITY : Math.hypot(other.left - at.left, other.top - at.top),
	);
	return Math.min(...near);
}
