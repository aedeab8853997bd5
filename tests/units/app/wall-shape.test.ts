import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
	DRAWN_THICKNESS,
	onFace,
	shapeWalls,
	type WallShape,
	wallBand,
} from "../../../packages/app/src/canvas/wall-shape.ts";

const T = DRAWN_THICKNESS;
const shapes = (corners: readonly (readonly [number, number])[], rises: number[] = []) =>
	shapeWalls(
		corners.map(([x, y]) => ({ x, y })),
		rises,
	);

function expectAt(at: { readonly x: number; readonly y: number } | undefined, x: number, y: number): void {
	expect(at?.x).toBeCloseTo(x, 6);
	expect(at?.y).toBeCloseTo(y, 6);
}

describe("walls as drawn", () => {
	it("stand outside the room and meet in a mitre at a square corner", () => {
		const [left, front] = shapes([
			[0, 0],
			[0, 700],
			[1800, 700],
			[1800, 0],
		]) as [WallShape, WallShape];
		expectAt(left.outer[0], -T, 0);
		expectAt(left.outer[1], -T, 700 + T);
		expectAt(front.outer[0], -T, 700 + T);
		expectAt(front.outer[1], 1800 + T, 700 + T);
		expect(left.bevel).toBeNull();
	});

	it("stop short of the corner where it stands out into the room", () => {
		const [first, second] = shapes([
			[0, 0],
			[1000, 0],
			[1000, 800],
		]) as [WallShape, WallShape];
		expectAt(first.outer[1], 1000 - T, T);
		expectAt(second.outer[0], 1000 - T, T);
	});

	it("are bevelled where a mitre would run away", () => {
		const [first] = shapes([
			[0, 0],
			[0, 1000],
			[150, 0],
		]) as [WallShape];
		expect(first.bevel).not.toBeNull();
		for (const { x, y } of [...first.outer, ...(first.bevel ?? [])]) expect(Math.hypot(x, y - 1000)).toBeLessThan(1010);
	});

	it("find a place along the face, beyond its ends too", () => {
		const [wall] = shapes([
			[100, 100],
			[400, 500],
		]) as [WallShape];
		expect(wall.length).toBeCloseTo(500, 9);
		expectAt(onFace(wall, 250).at, 250, 300);
		expectAt(onFace(wall, -50).at, 70, 60);
		expectAt(onFace(wall, 600).at, 460, 580);
	});

	it("bow by their rise, away from the room where it is over 0", () => {
		for (const rise of [120, -120]) {
			const [wall] = shapes(
				[
					[0, 0],
					[1600, 0],
				],
				[rise],
			) as [WallShape];
			// Radius of the face (c²/4 + h²)/(2h), design section 5.
			const radius = (1600 ** 2 / 4 + 120 ** 2) / 240;
			const centre = { x: 800, y: rise - Math.sign(rise) * radius };
			for (const { x, y } of wall.face) expect(Math.hypot(x - centre.x, y - centre.y)).toBeCloseTo(radius, 6);
			expectAt(wall.face[0], 0, 0);
			expectAt(wall.face.at(-1), 1600, 0);
			expect(Math.abs(onFace(wall, wall.length / 2).at.y - rise)).toBeLessThan(0.3);
			const chords = wall.face
				.slice(1)
				.map((at, i) => Math.hypot(at.x - (wall.face[i]?.x ?? 0), at.y - (wall.face[i]?.y ?? 0)));
			expect(Math.abs(chords.reduce((sum, length) => sum + length, 0) - wall.length)).toBeLessThan(1);
		}
	});

	it("give the band between two places as a closed outline", () => {
		const [wall] = shapes([
			[0, 0],
			[1000, 0],
		]) as [WallShape];
		expect(wallBand(wall, 200, 700, 0, 110)).toEqual([
			{ x: 200, y: 0 },
			{ x: 700, y: 0 },
			{ x: 700, y: 110 },
			{ x: 200, y: 110 },
		]);
	});

	it("are drawn for any corners whatever, except where there is no wall at all", () => {
		const coordinate = fc.oneof(fc.integer({ min: -3000, max: 3000 }), fc.constant(0));
		fc.assert(
			fc.property(fc.array(fc.tuple(coordinate, coordinate), { minLength: 2, maxLength: 8 }), (corners) => {
				const walls = shapes(corners);
				expect(walls.length).toBe(corners.length - 1);
				walls.forEach((wall, i) => {
					const [a, b] = [corners[i], corners[i + 1]] as [[number, number], [number, number]];
					expect(wall === null).toBe(a[0] === b[0] && a[1] === b[1]);
					for (const { x, y } of wall?.outer ?? []) expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true);
				});
			}),
		);
	});
});
