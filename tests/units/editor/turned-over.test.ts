import { levelWall, mirror, otherSide } from "@baywright/editor";
import type { Bay } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { between } from "../app/between.ts";
import { faceOf, spots } from "./places.ts";
import { bayOf, fullBay, SQUARE, valid } from "./sample-bay.ts";

const SEED = 4107;

describe("turned over", () => {
	it("a mirrored bay has each place on the image of its wall, as far from the other corner", () => {
		const bay = fullBay();
		const after = valid(mirror(bay, 3000));
		expect(after.corners).toEqual([
			[0, 0],
			[400, 700],
			[1400, 700],
			[2600, 700],
			[3000, 0],
		]);
		expect(after.walls.map(({ rise }) => rise)).toEqual([0, 0, 90, 0]);
		const run = Math.hypot(400, 700);
		expect(after.track.start?.wall).toBe(0);
		expect(after.track.start?.at).toBeCloseTo(run - 700, 2);
		expect(after.track.end?.at).toBeCloseTo(run - 60, 2);
		expect(after.track.joints).toEqual([
			{ wall: 1, at: 500 },
			{ wall: 2, at: expect.closeTo(faceOf(bay, 1) - 700, 2) },
		]);
		expect(after.track.bends).toEqual([
			{ corner: 1, radius: 320 },
			{ corner: 3, radius: 300 },
		]);
		expect(after.track.draw).toBe("right");
		expect(after.curtains.map(({ from, to }) => [from, to])).toEqual([
			[null, 1499.5],
			[1500, null],
		]);
		expect(after.fitted.brackets).toEqual([{ wall: 1, planned: 620, at: 600, projection: null }]);
		expect(after.fitted.spans[0]?.from.wall).toBe(2);
		expect(spots(after)).toEqual(spots(bay, (x) => 3000 - x));
	});

	it("a bay with the room on its other side has its bows the other way and its angles what is left of 360°", () => {
		const bay = fullBay();
		const after = valid(otherSide(bay, null));
		expect(after.corners).toEqual(bay.corners.toReversed());
		expect(after.walls.map(({ rise }) => rise)).toEqual([0, 0, -90, 0]);
		const reading = (kind: string) => after.readings.find((it) => it.kind === kind);
		expect(reading("angle")).toMatchObject({ corner: 1, value: 239.7 });
		expect(reading("square")).toMatchObject({ corner: 4, wall: 1, value: -700 });
		expect(reading("rise")).toMatchObject({ wall: 2, value: -90 });
		// 520 over arms of 300 is 120.13°; the turn at the other side's external corner 59.87°, a chord of 299.3.
		const chord = 2 * 300 * Math.sin((Math.PI - 2 * Math.asin(520 / 600)) / 2);
		expect(reading("chord")).toMatchObject({ corner: 1, value: expect.closeTo(chord, 6) });
		// Every place is the very same point of the plan.
		expect(spots(after)).toEqual(spots(bay));
	});

	it.each([
		["mirrored", mirror],
		["on the other side", otherSide],
	] as const)("%s twice is the same bay", (_, turn) => {
		const bay = fullBay();
		const back = valid(turn(valid(turn(bay, 2950.25)), 2950.25));
		const chord = back.readings.findIndex(({ kind }) => kind === "chord");
		expect(back.readings[chord]).toMatchObject({ value: expect.closeTo(520, 9) });
		expect({ ...back, readings: back.readings.toSpliced(chord, 1) }).toEqual({
			...bay,
			readings: bay.readings.toSpliced(chord, 1),
		});
	});

	it("stacks a curtain on the other side", () => {
		const curtains = [{ to: 1000, stacks: "right" }, { from: 1000, to: 2000, stacks: "both" }, { from: 2000 }];
		const mirrored = valid(mirror(bayOf({ corners: SQUARE, curtains }), 3500));
		expect(mirrored.curtains.map(({ from, to, stacks }) => [from, to, stacks])).toEqual([
			[null, 1500, "auto"],
			[1500, 2500, "both"],
			[2500, null, "left"],
		]);
	});

	it("leaves a curtain that hangs past the track where it is", () => {
		const bay = bayOf({
			corners: SQUARE,
			curtains: [
				{ from: 4000, to: 4400 },
				{ from: 100, to: 4400 },
			],
		});
		expect(valid(mirror(bay, 3500)).curtains.map(({ from, to }) => [from, to])).toEqual([
			[0, 3400],
			[4000, 4400],
		]);
	});
});

describe("a levelled bay", () => {
	it("has that wall level, left to right, and every run and turn as before", () => {
		fc.assert(
			fc.property(between(-3.1, 3.1), fc.integer({ min: 0, max: 3 }), (turn, wall) => {
				const full = fullBay();
				const corners = full.corners.map(([x, y]) => [
					x * Math.cos(turn) - y * Math.sin(turn),
					x * Math.sin(turn) + y * Math.cos(turn),
				]);
				const after = valid(levelWall({ ...full, corners: corners as unknown as Bay["corners"] }, wall));
				const [a, b] = [after.corners[wall], after.corners[wall + 1]] as [[number, number], [number, number]];
				expect(b[1]).toBe(a[1]);
				expect(b[0]).toBeGreaterThan(a[0]);
				for (let i = 0; i < 5; i++)
					for (let j = 0; j < i; j++) {
						const far = (it: Bay) =>
							Math.hypot(
								(it.corners[i]?.[0] ?? 0) - (it.corners[j]?.[0] ?? 0),
								(it.corners[i]?.[1] ?? 0) - (it.corners[j]?.[1] ?? 0),
							);
						expect(Math.abs(far(after) - far(full))).toBeLessThan(0.003);
					}
			}),
			{ seed: SEED, numRuns: 60 },
		);
	});

	it("that was level is the same bay", () => {
		const bay = bayOf({ corners: SQUARE });
		expect(levelWall(bay, 1)).toBe(bay);
		expect(levelWall(bay, 9)).toBe(bay);
		// Turned a quarter about the middle of its left wall, (0, 450).
		expect(levelWall(bay, 0).corners).toEqual([
			[-450, 450],
			[450, 450],
			[450, -1350],
			[-450, -1350],
		]);
	});
});
