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
 * A bay of `walls` walls of 90 to 110 mm that turns to and fro, 35° to 80° a corner, internal and external by turns, every tenth wall
 * bowed: as many metres of track a wall whatever the size, and 2000 of them still within reach.
 */
export function mixedBay(walls: number): { readonly corners: readonly Point[]; readonly rises: readonly number[] } {
	const corners: Point[] = [{ x: -95_000, y: 0 }];
	const rises: number[] = [];
	let heading = 20;
	for (let wall = 0, x = -95_000, y = 0; wall < walls; wall++) {
		const length = 90 + (wall % 5) * 5;
		x += length * Math.cos(toRadians(heading));
		y += length * Math.sin(toRadians(heading));
		corners.push({ x, y });
		rises.push(wall % 10 === 7 ? 4 : 0);
		heading += heading > 0 ? -35 - ((wall * 17) % 26) : 35 + ((wall * 13) % 26);
	}
	return { corners, rises };
}
