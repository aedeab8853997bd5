import { retaped, runOf, withRun } from "@baywright/editor";
import { type Bay, libraryOf, planBay } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { driver } from "./driver.ts";
import { jobOf, SQUARE } from "./sample-bay.ts";

/** Every distance between the corners of a bay 1800 wide with side walls of 950: it is drawn with 900. */
const HELD = [
	{ kind: "run", wall: 0, value: 950 },
	{ kind: "run", wall: 1, value: 1800 },
	{ kind: "run", wall: 2, value: 950 },
	{ kind: "diagonal", from: 0, to: 2, value: Math.hypot(950, 1800) },
	{ kind: "diagonal", from: 1, to: 3, value: Math.hypot(950, 1800) },
	{ kind: "diagonal", from: 0, to: 3, value: 1800 },
];

const taped = (readings: readonly object[], more = {}) =>
	driver(jobOf({ corners: SQUARE, readings, ...more })).reach(0);
const runsOf = ({ corners }: Pick<Bay, "corners">) => corners.slice(1).map((_, wall) => runOf(corners, wall));

/** In hundredths of a mm. */
const expectRuns = (bay: Pick<Bay, "corners">, runs: readonly number[]) => {
	for (const [wall, run] of runsOf(bay).entries()) expect(run, `wall ${wall}`).toBeCloseTo(runs[wall] as number, 2);
};

describe("a taped bay on the table", () => {
	it("lies as its readings settle it from the start, and its plan is that of the job as it lies", () => {
		const table = taped(HELD);
		expectRuns(table.bay, [950, 1800, 950]);
		const { job } = table.desk;
		const anew = planBay(job.bays[0] as Bay, libraryOf(job));
		expect(table.plan.path?.length).toBe(anew.path?.length);
		expect(table.plan.pieces[0]?.sd).toBeGreaterThan(0);
		expect(table.desk.past).toEqual([]);
	});

	it("bays with nothing taped keep even their identity", () => {
		const job = jobOf({ corners: SQUARE });
		expect(driver(job).desk.job).toBe(job);
	});

	it("a corner that readings hold stays where it is, under the hand and let go", () => {
		const table = taped(HELD);
		const [x, y] = table.corners[2] as [number, number];
		table.grab({ kind: "corner", index: 2 }, { x, y }).drag({ x: x + 120, y: y + 90 });
		expectRuns(table.bay, [950, 1800, 950]);
		expect(table.plan.chain?.corners[2]?.x).toBeCloseTo(x, 2);
		// What is shown in the tables is what is planned.
		expect(table.corners[2]?.[0]).toBeCloseTo(table.plan.chain?.corners[2]?.x as number, 2);
		table.drop();
		expectRuns(table.bay, [950, 1800, 950]);
	});

	it("what nothing tapes goes with the hand: the run holds, the angle follows", () => {
		const table = taped([{ kind: "run", wall: 2, value: 950 }]);
		expectRuns(table.bay, [900, 1800, 950]);
		const [x, y] = table.corners[3] as [number, number];
		table.grab({ kind: "corner", index: 3 }, { x, y }).drag({ x: x + 300, y: y + 20 });
		expectRuns(table.bay, [900, 1800, 950]);
		// How sure it is, nobody asks under the hand.
		expect(table.plan.pieces[0]?.sd).toBeNull();
		table.drop();
		expect(table.plan.pieces[0]?.sd).toBeGreaterThan(0);
		expectRuns(table.bay, [900, 1800, 950]);
		// From the corner before it towards where it was let go.
		const [[px, py], [cx, cy]] = [table.corners[2] as [number, number], table.corners[3] as [number, number]];
		expect(Math.atan2(cy - py, cx - px)).toBeCloseTo(Math.atan2(y + 20 - py, x + 300 - px), 3);
	});

	it("taking it back is the bay before", () => {
		const table = taped([{ kind: "run", wall: 2, value: 950 }]);
		const before = table.desk.job;
		const [x, y] = table.corners[3] as [number, number];
		table
			.grab({ kind: "corner", index: 3 }, { x, y })
			.drag({ x: x + 300, y: y + 20 })
			.drop();
		expect(table.desk.past).toHaveLength(1);
		expect(table.undo().desk.job).toEqual(before);
	});

	it("a bow whose rise was taped is not pulled, nor what stands on its wall", () => {
		const table = taped([{ kind: "rise", wall: 1, value: 100 }], {
			openings: [{ wall: 1, from: 200, to: 900, sill: 600, head: 2000 }],
		});
		const { bay } = table;
		expect(bay.walls[1]?.rise).toBeCloseTo(100, 2);
		table.grab({ kind: "bow", index: 1 }, { x: 900, y: 1000 }).drag({ x: 900, y: 1100 }).drop();
		expect(table.bay).toBe(bay);
	});

	it("an end of the track at the very end of its wall goes with it", () => {
		const table = taped(HELD, { track: { end: { wall: 2, at: 900 } } });
		expect(table.bay.track.end?.at).toBeCloseTo(950, 2);
		expect(table.plan.findings.map(({ code }) => code)).not.toContain("end-off-wall");
	});
});

describe("what nobody moved stays where it lay", () => {
	type Corners = readonly (readonly [number, number])[];
	/** mm: a tenth is far less than a tape or an eye sees. */
	const expectStill = (now: Corners, before: Corners, which: readonly number[], why = "") => {
		for (const i of which) {
			const [[x, y], [bx, by]] = [now[i] as Corners[number], before[i] as Corners[number]];
			expect(Math.hypot(x - bx, y - by), `corner ${i} ${why}`).toBeLessThanOrEqual(0.15);
		}
	};
	/** Under the hand at several places, then let go at the last. */
	const dragged = (table: ReturnType<typeof taped>, corner: number, ways: Corners, each: () => void) => {
		const [x, y] = table.corners[corner] as Corners[number];
		table.grab({ kind: "corner", index: corner }, { x, y });
		for (const [dx, dy] of ways) {
			table.drag({ x: x + dx, y: y + dy });
			each();
		}
		table.drop();
		each();
	};
	const WAYS: Corners = [
		[3, -2],
		[120, 90],
		[-200, 60],
		[10, -300],
	];

	it.each([0, 1, 2, 3])("in a bay that readings hold, whichever corner is dragged (%d)", (corner) => {
		const table = taped(HELD);
		const before = table.corners;
		dragged(table, corner, WAYS, () => expectStill(table.corners, before, [0, 1, 2, 3]));
	});

	it("does not wander off, however often a corner is dragged", () => {
		const table = taped(HELD);
		const before = table.corners;
		for (let i = 0; i < 60; i++) dragged(table, i % 4, [[40 * Math.sin(i), 70 * Math.cos(i)]], () => {});
		expectStill(table.corners, before, [0, 1, 2, 3]);
	});

	it("with only the first run taped, its left end goes round the corner and nothing else moves", () => {
		const table = taped([{ kind: "run", wall: 0, value: 950 }]);
		const before = table.corners;
		const [[x, y], [px, py]] = [before[0] as Corners[number], before[1] as Corners[number]];
		dragged(table, 0, WAYS, () => {
			expectStill(table.corners, before, [1, 2, 3]);
			expect(runOf(table.corners, 0)).toBeCloseTo(950, 2);
		});
		const [dx, dy] = WAYS.at(-1) as Corners[number];
		const [ex, ey] = table.corners[0] as Corners[number];
		expect(Math.atan2(ey - py, ex - px)).toBeCloseTo(Math.atan2(y + dy - py, x + dx - px), 3);
	});

	it("a corner held by one run goes round its other end, and no other corner moves", () => {
		const table = taped([{ kind: "run", wall: 1, value: 1800 }]);
		const before = table.corners;
		const [[x, y], [px, py]] = [before[1] as Corners[number], before[2] as Corners[number]];
		dragged(table, 1, WAYS, () => {
			expectStill(table.corners, before, [0, 2, 3]);
			expect(runOf(table.corners, 1)).toBeCloseTo(1800, 2);
		});
		const [dx, dy] = WAYS.at(-1) as Corners[number];
		const [ex, ey] = table.corners[1] as Corners[number];
		expect(Math.atan2(ey - py, ex - px)).toBeCloseTo(Math.atan2(y + dy - py, x + dx - px), 3);
	});

	it("an end held by the distance across goes round the other end", () => {
		const table = taped([{ kind: "diagonal", from: 0, to: 3, value: 1800 }]);
		const before = table.corners;
		dragged(table, 0, WAYS, () => expectStill(table.corners, before, [1, 2, 3]));
		expect(table.corners[0]?.[1]).toBeLessThan((before[0]?.[1] as number) - 250);
	});

	it("with every run taped, the end comes after its neighbour and the other half lies still", () => {
		const table = taped(HELD.slice(0, 3));
		const before = table.corners;
		const [x, y] = before[1] as Corners[number];
		table.grab({ kind: "corner", index: 1 }, { x, y }).drag({ x: x + 80, y: y + 40 });
		expectStill(table.corners, before, [2, 3]);
		expectRuns(table.bay, [950, 1800, 950]);
		// The front is square to the side: the corner goes up by what the hand went up, but for the rounding of its circle, and its end with it.
		for (const corner of [0, 1]) {
			const [[nx, ny], [bx, by]] = [table.corners[corner], before[corner]] as [Corners[number], Corners[number]];
			expect(Math.abs(nx - bx), `corner ${corner}`).toBeLessThan(1.5);
			expect(ny - by, `corner ${corner}`).toBeGreaterThan(39);
			expect(ny - by, `corner ${corner}`).toBeLessThan(43);
		}
	});

	it("the corner of two walls that are held springs back, and neither end swings", () => {
		const table = driver(
			jobOf({
				corners: SQUARE.slice(0, 3),
				readings: [
					{ kind: "run", wall: 0, value: 900 },
					{ kind: "run", wall: 1, value: 1800 },
					{ kind: "angle", corner: 1, value: 92 },
				],
			}),
		).reach(0);
		const before = table.corners;
		dragged(table, 1, WAYS, () => expectStill(table.corners, before, [0, 1, 2]));
	});

	it("a single wall that is taped turns about the end that is not dragged", () => {
		const table = driver(
			jobOf({ corners: SQUARE.slice(0, 2), readings: [{ kind: "run", wall: 0, value: 900 }] }),
		).reach(0);
		const before = table.corners;
		dragged(table, 0, WAYS, () => {
			expectStill(table.corners, before, [1]);
			expect(runOf(table.corners, 0)).toBeCloseTo(900, 2);
		});
	});

	it("a first run that is taped otherwise moves the left end, not the bay", () => {
		const table = taped(HELD.slice(0, 3));
		const before = table.corners;
		const { job } = table.desk;
		const readings = [{ ...HELD[0], value: 980, sd: null }, ...(job.bays[0] as Bay).readings.slice(1)];
		table.desk.change("taken again", [{ op: "replace", path: "/bays/0/readings", value: readings }]);
		expect(runOf(table.corners, 0)).toBeCloseTo(980, 2);
		expectStill(table.corners, before, [1, 2, 3]);
	});

	it("a run that is typed moves the rest along, as in a bay that is only drawn", () => {
		const table = taped(HELD.slice(0, 3));
		const before = table.corners;
		const bay = table.bay;
		table.desk.commit("typed", {
			...table.desk.job,
			bays: [
				retaped(
					{ ...bay, corners: withRun(bay.corners, 0, 980) as unknown as Bay["corners"] },
					{ kind: "run", wall: 0 },
					980,
				),
			],
		});
		expectStill(table.corners, before, [0]);
		expect(table.corners[1]?.[1]).toBeCloseTo((before[1]?.[1] as number) + 30, 2);
	});

	it("in any bay that every distance holds, whichever one or two are moved", () => {
		const place = fc.tuple(fc.integer({ min: -150, max: 150 }), fc.integer({ min: -150, max: 150 }));
		fc.assert(
			fc.property(
				fc.integer({ min: 3, max: 6 }),
				fc.array(place, { minLength: 7, maxLength: 7 }),
				fc.array(fc.tuple(fc.nat(6), place), { minLength: 1, maxLength: 2 }),
				(walls, off, moves) => {
					const radius = 1500;
					const corners = Array.from({ length: walls + 1 }, (_, i): [number, number] => {
						const at = Math.PI * (1 - i / walls);
						const [dx, dy] = off[i] as [number, number];
						return [Math.round(radius * Math.cos(at)) + dx, Math.round(radius * Math.sin(at)) + dy];
					});
					const readings = corners.flatMap(([x, y], from) =>
						corners.slice(from + 1).map(([tx, ty], beyond) => {
							const value = Math.hypot(tx - x, ty - y);
							return beyond === 0
								? { kind: "run", wall: from, value }
								: { kind: "diagonal", from, to: from + 1 + beyond, value };
						}),
					);
					const table = driver(jobOf({ corners, readings, track: { system: "flexible" } })).reach(0);
					const before = table.corners;
					const drawn = before.map(([x, y], i) => {
						const move = moves.find(([corner]) => corner % (walls + 1) === i);
						return move === undefined ? [x, y] : [x + move[1][0], y + move[1][1]];
					});
					const { job } = table.desk;
					table.desk.preview({ ...job, bays: [{ ...table.bay, corners: drawn as unknown as Bay["corners"] }] });
					// Two corners at least were left, and they tell where the whole lies.
					expectStill(table.corners, before, [...before.keys()]);
				},
			),
			{ seed: 3107, numRuns: 40 },
		);
	});
});
