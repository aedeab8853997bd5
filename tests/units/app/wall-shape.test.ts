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

	it("follow the arc of a bow to the millimetre: its length, its places and its directions", () => {
		for (const rise of [700, 240, 0.4, -90, -700]) {
			const [wall] = shapes(
				[
					[100, 50],
					[100, 1450],
				],
				[rise],
			) as [WallShape];
			// Length of an arc, radius times angle, the angle from its half chord: from memory, school geometry.
			const radius = (1400 ** 2 / 4 + rise ** 2) / (2 * Math.abs(rise));
			const angle = 2 * Math.asin(Math.min(1, 700 / radius));
			expect(Math.abs(wall.length - radius * angle)).toBeLessThan(1e-6 * radius);
			// Up this wall the room is on the right: away from it is to the left.
			expectAt(onFace(wall, wall.length / 2).at, 100 - rise, 750);
			for (let i = 0; i < 20; i++) {
				const [a, b] = [onFace(wall, (wall.length * i) / 20), onFace(wall, (wall.length * (i + 0.001)) / 20)];
				const apart = Math.hypot(b.at.x - a.at.x, b.at.y - a.at.y);
				expect(apart).toBeCloseTo(wall.length / 20_000, 4);
				expect((b.at.x - a.at.x) / apart).toBeCloseTo(a.ux, 3);
				expect((b.at.y - a.at.y) / apart).toBeCloseTo(a.uy, 3);
			}
			wall.outer.forEach((outer, i) => {
				const face = wall.face[i] as { x: number; y: number };
				expect(Math.hypot(outer.x - face.x, outer.y - face.y)).toBeCloseTo(T, 6);
			});
		}
	});

	it("share one corner of their outer lines where a bow meets a wall or another bow, on the arc and on the line", () => {
		const rise = fc.integer({ min: -500, max: 500 });
		fc.assert(
			fc.property(rise, rise, fc.integer({ min: -80, max: 80 }), (first, second, degrees) => {
				const turn = (degrees * Math.PI) / 180;
				const [a, b] = shapes(
					[
						[0, 0],
						[1600, 0],
						[1600 + 1600 * Math.cos(turn), -1600 * Math.sin(turn)],
					],
					[first, second],
				) as [WallShape, WallShape];
				const [p, q] = [a.outer.at(-1), b.outer[0]] as [{ x: number; y: number }, { x: number; y: number }];
				const between = (Math.atan2(b.along[0]?.uy ?? 0, b.along[0]?.ux ?? 1) -
					Math.atan2(a.along.at(-1)?.uy ?? 0, a.along.at(-1)?.ux ?? 1)) as number;
				// Where the faces all but fold back there is a bevel instead, or no corner to share.
				fc.pre(a.bevel === null && Math.abs(Math.sin(between / 2)) < 0.75);
				expect(Math.hypot(p.x - q.x, p.y - q.y)).toBeLessThan(0.05);
			}),
			{ numRuns: 300 },
		);
	});

	it("are no thicker than half a nib whose end they reach", () => {
		const walls = shapes([
			[0, 0],
			[900, 0],
			[900, -700],
			[1020, -700],
			[1020, 0],
			[1900, 0],
		]) as WallShape[];
		expect(walls.map(({ thickness }) => thickness)).toEqual([T, 60, T, 60, T]);
		for (const { x } of [...(walls[1]?.outer ?? []), ...(walls[3]?.outer ?? [])]) expect(x).toBeCloseTo(960, 6);
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
