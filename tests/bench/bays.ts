import { type Point, toRadians } from "@baywright/geometry";

/**
 * A bay of `walls` walls with right-angled internal corners only: a square spiral inwards, 90 mm between its arms, so that
 * every corner is a true bend and no wall crosses another even with thousands of them.
 */
export function spiralBay(walls: number): Point[] {
	const corners: Point[] = [{ x: 0, y: 0 }];
	let length = 600 + 45 * walls;
	for (let wall = 0, x = 0, y = 0; wall < walls; wall++) {
		const heading = toRadians(90 - 90 * wall);
		x += Math.round(length * Math.cos(heading));
		y += Math.round(length * Math.sin(heading));
		corners.push({ x, y });
		if (wall > 0) length -= 45;
	}
	return corners;
}

/** Projection and radius (mm) that go with the spiral's arms. */
export const SPIRAL_TRACK = { projection: 20, radius: 22 } as const;

/**
 * A bay of `walls` walls of 240 mm that goes 310° round: as many metres of track a wall whatever the size. From about a hundred
 * walls on its corners are slight turns.
 */
export function roundBay(walls: number): Point[] {
	const corners: Point[] = [{ x: 0, y: 0 }];
	for (let wall = 0, x = 0, y = 0; wall < walls; wall++) {
		const heading = toRadians(245 - (310 * (wall + 0.5)) / walls);
		x += 240 * Math.cos(heading);
		y += 240 * Math.sin(heading);
		corners.push({ x, y });
	}
	const middle = corners.reduce((sum, { x, y }) => ({ x: sum.x + x / (walls + 1), y: sum.y + y / (walls + 1) }), {
		x: 0,
		y: 0,
	});
	return corners.map(({ x, y }) => ({ x: x - middle.x, y: y - middle.y }));
}
