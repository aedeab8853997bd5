import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { between } from "../app/between.ts";
import { driver } from "./driver.ts";
import { jobOf } from "./sample-bay.ts";
import type { Place } from "./under-point.ts";

const SEED = 4104;

type Corner = readonly [number, number];

/** Room angle at a corner, degrees: from the walls' headings, the room on the right of travel. */
function roomAngle(a: Corner, b: Corner, c: Corner): number {
	const turn = Math.atan2(b[1] - a[1], b[0] - a[0]) - Math.atan2(c[1] - b[1], c[0] - b[0]);
	return 180 - ((((turn * 180) / Math.PI + 540) % 360) - 180);
}

const runOf = (a: Corner, b: Corner) => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** How far a run is off whole 5 mm. */
const offFive = (run: number) => Math.min(run % 5, 5 - (run % 5));

const turned = ([x, y]: Corner, by: number): Corner => [
	x * Math.cos(by) - y * Math.sin(by),
	x * Math.sin(by) + y * Math.cos(by),
];

/** Takes a corner somewhere and lets go: where it came to stand, and what the guides shown on the way said. */
function taken(corners: readonly Corner[], index: number, to: Place, reach: number, walls: readonly object[] = []) {
	const table = driver(jobOf({ corners, walls })).reach(reach);
	const [x, y] = corners[index] as Corner;
	table.grab({ kind: "corner", index }, { x: x + 3, y: y - 2 }).drag({ x: to.x + 3, y: to.y - 2 });
	const why = table.toolbox.sketch?.guides.map((it) => it.why) ?? [];
	table.drop();
	return { at: table.corners[index] as Corner, corners: table.corners as readonly Corner[], why };
}

/** A bay that nothing in it lines up with: every angle, run and height its own. */
const ODD: readonly Corner[] = [
	[13, -77],
	[104, 871],
	[1330, 1422],
	[2451, 1167],
	[3377, 244],
];

describe("a corner that is dragged", () => {
	it.each([
		[90, "90°"],
		[120, "120°"],
		[135, "135°"],
		[150, "150°"],
	])("is drawn to %d° at itself", (degrees, name) => {
		// The neighbours 2000 apart, level but for a little turn so that nothing else draws; the corner on the circle of that angle.
		for (const share of [0.31, 0.5, 0.83])
			for (const outside of [1, -1]) {
				const turn = 0.137;
				const theta = (degrees * Math.PI) / 180;
				// Inscribed angle θ over a chord of 2000: radius 1000/sin θ, its arc 2(π − θ), walked by share from one end.
				const radius = 1000 / Math.sin(theta);
				const swung = (Math.PI - theta) * (1 - 2 * share);
				const spot: Corner = [
					1000 - radius * Math.sin(swung),
					outside * (radius * Math.cos(swung) + 1000 / Math.tan(theta)),
				];
				const corners = (
					[
						[0, 0],
						[spot[0] - 60, spot[1] + 50],
						[2000, 0],
					] as const
				).map((it) => turned(it, turn));
				const [x, y] = turned([spot[0] + 1.7, spot[1] - 2.2], turn);
				const after = taken(corners, 1, { x, y }, 4);
				const [a, b, c] = after.corners as [Corner, Corner, Corner];
				const wanted = outside === 1 ? degrees : 360 - degrees;
				expect(Math.abs(roomAngle(a, b, c) - wanted)).toBeLessThan(0.001);
				expect(after.why).toContain(`${outside === 1 ? name : `${wanted}°`} at corner 1`);
			}
	});

	it.each([90, 120, 135, 150, 210, 225, 240, 270])("is drawn to %d° at the corners beside it", (degrees) => {
		const turn = ((180 - degrees) * Math.PI) / 180;
		// Corner 2 seen from corner 1, where the left wall comes in; corner 2 seen from corner 3, where the right wall goes out.
		for (const [beside, other, sign, back] of [
			[1, 0, -1, 0],
			[3, 4, 1, 0],
		] as const) {
			const [pivot, far] = [ODD[beside] as Corner, ODD[other] as Corner];
			const heading = Math.atan2(pivot[1] - far[1], pivot[0] - far[0]) + sign * turn + back;
			const run = 1103;
			const to = {
				x: pivot[0] + Math.cos(heading) * run - Math.sin(heading) * 2,
				y: pivot[1] + Math.sin(heading) * run + Math.cos(heading) * 2,
			};
			const after = taken(ODD, 2, to, 3);
			const at = roomAngle(...(after.corners.slice(beside - 1, beside + 2) as unknown as [Corner, Corner, Corner]));
			expect(Math.abs(at - degrees)).toBeLessThan(0.001);
			expect(after.why).toContain(`${degrees}° at corner ${beside}`);
			// Nothing else near: one of the runs beside it is whole 5 mm.
			const whole = [1, 3].map((it) => offFive(runOf(after.at, ODD[it] as Corner)));
			if (after.why.length === 1) expect(Math.min(...whole)).toBeLessThan(0.002);
		}
	});

	it("is drawn into line with another wall, level with other corners and straight out from them", () => {
		// In line with the last wall of five: its line goes through corners 3 and 4.
		const [p, q] = [ODD[3] as Corner, ODD[4] as Corner];
		const along = -0.9;
		const line = { x: p[0] + (q[0] - p[0]) * along + 1.5, y: p[1] + (q[1] - p[1]) * along + 1.5 };
		const lined = taken(ODD, 1, line, 4);
		const across = (lined.at[0] - p[0]) * (q[1] - p[1]) - (lined.at[1] - p[1]) * (q[0] - p[0]);
		expect(Math.abs(across) / runOf(p, q)).toBeLessThan(0.001);
		expect(lined.why.some((why) => why.startsWith("in line with the wall 3"))).toBe(true);
		const level = taken(ODD, 4, { x: 3301, y: -75 }, 3);
		expect(level.at[1]).toBe(-77);
		expect(level.why).toContain("level with the left end");
		const out = taken(ODD, 0, { x: 102.5, y: -200 }, 3);
		expect(out.at[0]).toBe(104);
		expect(out.why).toContain("straight out from corner 1");
	});

	it("is drawn to a wall as long as another", () => {
		const wanted = runOf(ODD[0] as Corner, ODD[1] as Corner);
		const pivot = ODD[3] as Corner;
		const way = -0.41;
		const to = { x: pivot[0] + Math.cos(way) * (wanted + 2), y: pivot[1] + Math.sin(way) * (wanted + 2) };
		const after = taken(ODD, 4, to, 3);
		expect(runOf(pivot, after.at)).toBeCloseTo(wanted, 2);
		expect(after.why.some((why) => why.startsWith("as long as the wall left end"))).toBe(true);
	});

	it("stands where two of them meet, if both are in reach", () => {
		const square: readonly Corner[] = [
			[0, 0],
			[0, 900],
			[1777, 866],
			[1800, 0],
		];
		const after = taken(square, 2, { x: 1797, y: 905 }, 12);
		expect(after.at).toEqual([1800, 900]);
		expect(after.why).toHaveLength(2);
	});

	it("makes runs of whole 5 mm where nothing draws it", () => {
		fc.assert(
			fc.property(between(700, 1900), between(1500, 2300), (x, y) => {
				const after = taken(ODD, 2, { x, y }, 8);
				fc.pre(after.why.length === 0);
				const moved = Math.hypot(after.at[0] - x, after.at[1] - y);
				expect(moved).toBeLessThanOrEqual(8);
				for (const beside of [1, 3]) {
					expect(offFive(runOf(after.at, ODD[beside] as Corner))).toBeLessThan(0.002);
				}
			}),
			{ seed: SEED, numRuns: 60 },
		);
	});

	it("is never further from the pointer than the reach, but for what makes runs whole", () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 0, max: 4 }),
				between(-200, 3600),
				between(-300, 1900),
				between(0.5, 60),
				(index, x, y, reach) => {
					const { at } = taken(ODD, index, { x, y }, reach);
					expect(Math.hypot(at[0] - x, at[1] - y)).toBeLessThanOrEqual(
						Math.max(reach + Math.min(reach, 7.5), 0.71) + 0.002,
					);
				},
			),
			{ seed: SEED, numRuns: 100 },
		);
	});

	it("comes on whole millimetres and to nothing at all while nothing may draw it", () => {
		const square: readonly Corner[] = [
			[0, 0],
			[0, 900],
			[1777, 866],
			[1800, 0],
		];
		expect(taken(square, 2, { x: 1799.4, y: 898.6 }, 0)).toMatchObject({ at: [1799, 899], why: [] });
	});

	it("has no angles drawn beside a bowed wall, which turn with its chord", () => {
		const bowed = taken(ODD, 2, { x: 1500, y: 1500 }, 5000, [{}, { rise: 80 }, { rise: 80 }, {}]);
		expect(bowed.why.some((why) => why.includes("°") || why.startsWith("straight at"))).toBe(false);
	});

	it("pushed by an arrow keeps its place the other way", () => {
		const table = driver(
			jobOf({
				corners: [
					[0, 0],
					[636.396, 636.396],
					[2436.4, 636.4],
				],
			}),
		);
		table.desk.select({ kind: "corner", index: 1 });
		expect(table.key("right").corners[1]).toEqual([637, 636.396]);
		expect(table.key("down").corners[1]).toEqual([637, 635]);
	});
});

describe("a wall that is dragged", () => {
	const SQUARE: readonly Corner[] = [
		[0, 0],
		[0, 902],
		[1800, 902],
		[1800, 0],
	];
	const out = (by: number, reach: number, corners: readonly Corner[] = SQUARE, index = 1) => {
		const table = driver(jobOf({ corners })).reach(reach);
		table.grab({ kind: "wall", index }, { x: 900, y: 900 }).drag({ x: 1200, y: 900 + by });
		const why = table.toolbox.sketch?.guides.map((it) => it.why) ?? [];
		return { corners: table.drop().corners, why };
	};

	it("goes square to itself, and makes the runs beside it whole 5 mm", () => {
		expect(out(41, 10).corners).toEqual([
			[0, 0],
			[0, 945],
			[1800, 945],
			[1800, 0],
		]);
		expect(out(41.4, 0).corners).toEqual([
			[0, 0],
			[0, 943],
			[1800, 943],
			[1800, 0],
		]);
		// Closer than that is seen: whole millimetres.
		expect(out(41.4, 1).corners[1]).toEqual([0, 943]);
	});

	it("is drawn into line with a parallel wall", () => {
		const stepped: readonly Corner[] = [
			[0, 0],
			[800, 0],
			[800, 417],
			[1700, 417],
			[1700, 88],
			[2500, 88],
		];
		const up = out(84, 8, stepped, 0);
		expect([up.corners[0], up.corners[1]]).toEqual([
			[0, 88],
			[800, 88],
		]);
		expect(up.why).toEqual(["in line with the wall 4–right end"]);
	});

	it("whose middle is pulled bows by as much, whole millimetres, straight within 3 and no deeper than half its chord", () => {
		const bowed = (by: number, reach: number, rise = 0) => {
			const table = driver(jobOf({ corners: SQUARE, walls: [{}, { rise }] })).reach(reach);
			table
				.grab({ kind: "bow", index: 1 }, { x: 900, y: 900 })
				.drag({ x: 700, y: 900 + by })
				.drop();
			return table.bay.walls[1]?.rise;
		};
		expect(bowed(119.6, 9)).toBe(120);
		expect(bowed(-121, 9, 120)).toBe(0);
		expect(bowed(-121, 0, 120)).toBe(-1);
		expect(bowed(5000, 9)).toBe(900);
		expect(bowed(-5000, 9)).toBe(-900);
	});
});
