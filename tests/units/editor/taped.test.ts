import { runOf } from "@baywright/editor";
import { type Bay, libraryOf, planBay } from "@baywright/setout";
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
