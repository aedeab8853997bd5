import { angleOf, runOf, withAngle, withRun } from "@baywright/editor";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

type Corner = readonly [number, number];

const square: readonly Corner[] = [
	[0, 0],
	[0, 900],
	[1800, 900],
	[1800, 0],
];

/** Coordinates are kept to 0.001 mm; over a wall of 100 mm that is 0.001°. */
const MM = 0.003;
const DEGREES = 0.005;

describe("runs and angles of a square bay", () => {
	it("are read as a tape and a bevel read them, seen from the room", () => {
		expect([0, 1, 2].map((wall) => runOf(square, wall))).toEqual([900, 1800, 900]);
		expect(angleOf(square, 1)).toBeCloseTo(90, 9);
		expect(angleOf(square, 2)).toBeCloseTo(90, 9);
	});

	it("a corner that stands out into the room is over 180°", () => {
		const pier: readonly Corner[] = [
			[0, 0],
			[900, 0],
			[900, 500],
		];
		expect(angleOf(pier, 1)).toBeCloseTo(270, 9);
	});

	it("a typed run moves what comes after it along the wall", () => {
		expect(withRun(square, 1, 2000)).toEqual([
			[0, 0],
			[0, 900],
			[2000, 900],
			[2000, 0],
		]);
	});

	it("a typed angle leaves the front wall where it is: at 135° the left wall runs off at 45°", () => {
		const turned = withAngle(square, 1, 135);
		expect(turned.slice(1)).toEqual(square.slice(1));
		expect(turned[0]?.[0]).toBeCloseTo(-900 * Math.SQRT1_2, 2);
		expect(turned[0]?.[1]).toBeCloseTo(900 - 900 * Math.SQRT1_2, 2);
	});

	it("a typed angle on the right turns the right wall alone", () => {
		const turned = withAngle(square, 2, 135);
		expect(turned.slice(0, 3)).toEqual(square.slice(0, 3));
		expect(turned[3]?.[0]).toBeCloseTo(1800 + 900 * Math.SQRT1_2, 2);
		expect(turned[3]?.[1]).toBeCloseTo(900 - 900 * Math.SQRT1_2, 2);
	});

	it("of two walls as near to the middle the longer stays, of two as long the left", () => {
		const ell = (left: number, right: number): readonly Corner[] => [
			[0, 0],
			[0, left],
			[right, left],
		];
		expect(withAngle(ell(900, 1800), 1, 120).slice(1)).toEqual(ell(900, 1800).slice(1));
		expect(withAngle(ell(1800, 900), 1, 120).slice(0, 2)).toEqual(ell(1800, 900).slice(0, 2));
		expect(withAngle(ell(900, 900), 1, 120).slice(0, 2)).toEqual(ell(900, 900).slice(0, 2));
	});
});

describe("in any bay", () => {
	const bay = fc
		.array(
			fc.record({
				run: fc.double({ min: 100, max: 4000, noNaN: true }),
				turn: fc.double({ min: -2.6, max: 2.6, noNaN: true }),
			}),
			{
				minLength: 2,
				maxLength: 7,
			},
		)
		.map(laid);

	it("a typed run is that run, and every other run and angle stays", () => {
		fc.assert(
			fc.property(bay, fc.nat(), fc.double({ min: 100, max: 5000, noNaN: true }), (corners, pick, length) => {
				const wall = pick % (corners.length - 1);
				const changed = withRun(corners, wall, length);
				for (let i = 0; i < corners.length - 1; i++)
					expect(Math.abs(runOf(changed, i) - (i === wall ? length : runOf(corners, i)))).toBeLessThan(MM);
				for (let i = 1; i < corners.length - 1; i++)
					expect(Math.abs(angleOf(changed, i) - angleOf(corners, i))).toBeLessThan(DEGREES);
			}),
		);
	});

	it("a typed angle is that angle, and every other run and angle stays", () => {
		fc.assert(
			fc.property(bay, fc.nat(), fc.double({ min: 25, max: 335, noNaN: true }), (corners, pick, angle) => {
				const corner = 1 + (pick % (corners.length - 2));
				const changed = withAngle(corners, corner, angle);
				for (let i = 0; i < corners.length - 1; i++)
					expect(Math.abs(runOf(changed, i) - runOf(corners, i))).toBeLessThan(MM);
				for (let i = 1; i < corners.length - 1; i++)
					expect(Math.abs(angleOf(changed, i) - (i === corner ? angle : angleOf(corners, i)))).toBeLessThan(DEGREES);
			}),
		);
	});

	it("a typed angle leaves a wall next to the middle of the chain where it was, to the last figure", () => {
		fc.assert(
			fc.property(bay, fc.nat(), fc.double({ min: 25, max: 335, noNaN: true }), (corners, pick, angle) => {
				const corner = 1 + (pick % (corners.length - 2));
				const changed = withAngle(corners, corner, angle);
				const walls = corners.length - 1;
				const middles = walls % 2 === 1 ? [(walls - 1) / 2] : [walls / 2 - 1, walls / 2];
				const stays = (wall: number) =>
					[wall, wall + 1].every((i) => JSON.stringify(changed[i]) === JSON.stringify(corners[i]));
				expect(middles.some(stays)).toBe(true);
			}),
		);
	});

	it("are told between tangents where a wall bows", () => {
		// A half circle meets its chord square (from memory): away from the room that adds 90° to the corner, into it takes them off.
		expect(angleOf(square, 1, [{ rise: 0 }, { rise: 900 }, { rise: 0 }])).toBeCloseTo(180, 9);
		expect(angleOf(square, 2, [{ rise: 0 }, { rise: 0 }, { rise: -450 }])).toBeCloseTo(0, 9);
		// A quarter circle of radius r leaves its chord of r√2 at 45°; it rises by r(1 − cos 45°) (from memory).
		const quarter = (1800 / Math.SQRT2) * (1 - Math.SQRT1_2);
		const walls = [{ rise: 0 }, { rise: -quarter }, { rise: 0 }];
		expect(angleOf(square, 1, walls)).toBeCloseTo(45, 9);
		expect(angleOf(withAngle(square, 1, 60, walls), 1, walls)).toBeCloseTo(60, 3);
	});
});

function laid(walls: readonly { readonly run: number; readonly turn: number }[]): Corner[] {
	const corners: Corner[] = [[0, 0]];
	let heading = Math.PI / 2;
	for (const { run, turn } of walls) {
		const [x, y] = corners.at(-1) ?? [0, 0];
		corners.push([x + run * Math.cos(heading), y + run * Math.sin(heading)]);
		heading -= turn;
	}
	return corners;
}
