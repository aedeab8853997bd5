/** A place in the plan: mm, x to the right, y up. */
export interface Point {
	readonly x: number;
	readonly y: number;
}

export const point = (x: number, y: number): Point => ({ x, y });

export const distance = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);

/** The point `along` mm from `from` in the unit direction (ux, uy), then `right` mm to its right. */
export const step = (from: Point, ux: number, uy: number, along: number, right = 0): Point => ({
	x: from.x + ux * along + uy * right,
	y: from.y + uy * along - ux * right,
});

export const midpoint = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
