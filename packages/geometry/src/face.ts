import { type Radians, radians, wrapHeading } from "./angle.ts";
import type { WallChain, WallFace } from "./chain.ts";
import type { Curve } from "./curve.ts";
import type { Point } from "./point.ts";

/** A place by a wall: mm along its face from its left corner, and mm off it into the room. */
export interface FacePlace {
	readonly at: number;
	readonly off: number;
}

/** The point `off` mm into the room from `at` mm along a wall face. Beyond its ends a straight face goes on straight, a bowed one round. */
export function pointOffFace({ corners, walls }: WallChain, wall: number, at: number, off: number): Point {
	const { x, y } = corners[wall] as Point;
	const { ux, uy, bow } = walls[wall] as WallFace;
	if (bow === null) return { x: x + ux * at + uy * off, y: y + uy * at - ux * off };
	const side = Math.sign(bow.turn);
	const swung = -side * (at / bow.radius);
	const cos = Math.cos(swung);
	const sin = Math.sin(swung);
	const reach = (bow.radius - side * off) / bow.radius;
	const rx = (x - bow.centre.x) * reach;
	const ry = (y - bow.centre.y) * reach;
	return { x: bow.centre.x + rx * cos - ry * sin, y: bow.centre.y + rx * sin + ry * cos };
}

/** Heading of a wall face `at` mm along it. */
export function headingOfFace({ walls }: WallChain, wall: number, at: number): Radians {
	const { heading, bow } = walls[wall] as WallFace;
	if (bow === null) return heading;
	return radians(heading + bow.turn / 2 - Math.sign(bow.turn) * (at / bow.radius));
}

/** The foot of a point on a wall face, which goes on beyond its ends. */
export function footOnFace({ corners, walls }: WallChain, wall: number, p: Point): FacePlace {
	const corner = corners[wall] as Point;
	const { ux, uy, bow } = walls[wall] as WallFace;
	if (bow === null) {
		const x = p.x - corner.x;
		const y = p.y - corner.y;
		return { at: x * ux + y * uy, off: x * uy - y * ux };
	}
	const side = Math.sign(bow.turn);
	const away = Math.sqrt((p.x - bow.centre.x) ** 2 + (p.y - bow.centre.y) ** 2);
	const start = Math.atan2(corner.y - bow.centre.y, corner.x - bow.centre.x);
	const here = Math.atan2(p.y - bow.centre.y, p.x - bow.centre.x);
	// Measured from mid-face, so that places a little before its left end come out a little below 0.
	const middle = start - bow.turn / 2;
	const at = -side * wrapHeading(here - middle) * bow.radius + (bow.radius * Math.abs(bow.turn)) / 2;
	return { at, off: side * (bow.radius - away) };
}

/** Length of track per mm of face, for a track `off` mm off it. */
export function stretchOff({ walls }: WallChain, wall: number, off: number): number {
	const { bow } = walls[wall] as WallFace;
	return bow === null ? 1 : (bow.radius - Math.sign(bow.turn) * off) / bow.radius;
}

/** A wall face as a curve. */
export function faceCurve({ corners, walls }: WallChain, wall: number): Curve {
	const from = corners[wall] as Point;
	const to = corners[wall + 1] as Point;
	const { bow } = walls[wall] as WallFace;
	return bow === null ? { from, to } : { from, to, centre: bow.centre, radius: bow.radius, turn: bow.turn };
}
