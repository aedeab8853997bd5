import { angleOf, createDesk, runOf } from "@baywright/editor";
import type { Bay, Operation } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import { setAngle, setRise, setRun } from "../../../packages/app/src/desk/changes.ts";
import { jobOf, SQUARE } from "../editor/sample-bay.ts";

type Job = ReturnType<typeof jobOf>;

/** The bay after something is typed. */
function typed(readings: readonly object[], operations: (job: Job) => Operation[]): Bay {
	const desk = createDesk(jobOf({ corners: SQUARE, readings }));
	expect(desk.getState().change("typed", operations(desk.getState().job))).toBeNull();
	return desk.getState().job.bays[0] as Bay;
}

describe("typing what was taped", () => {
	it("a run changes its reading, and the wall is that long", () => {
		const { readings, corners } = typed(
			[
				{ kind: "run", wall: 1, value: 1790, sd: 4 },
				{ kind: "angle", corner: 1, value: 90 },
			],
			(job) => setRun(job, 0, 1, 2000),
		);
		expect(readings).toEqual([
			{ kind: "run", wall: 1, value: 2000, sd: 4 },
			{ kind: "angle", corner: 1, value: 90, sd: null },
		]);
		expect(runOf(corners, 1)).toBeCloseTo(2000, 2);
	});

	it("several readings of the same run become one, in the place of the first; others stay", () => {
		const other = { kind: "run", wall: 0, value: 905, sd: null };
		const { readings, corners } = typed(
			[{ kind: "run", wall: 1, value: 1790 }, other, { kind: "run", wall: 1, value: 1794 }],
			(job) => setRun(job, 0, 1, 1850),
		);
		expect(readings).toEqual([{ kind: "run", wall: 1, value: 1850, sd: null }, other]);
		expect(runOf(corners, 1)).toBeCloseTo(1850, 2);
		expect(runOf(corners, 0)).toBeCloseTo(905, 2);
	});

	it("an angle changes its reading, and the corner is that wide", () => {
		const { readings, corners } = typed([{ kind: "angle", corner: 2, value: 92 }], (job) => setAngle(job, 0, 2, 120));
		expect(readings).toEqual([{ kind: "angle", corner: 2, value: 120, sd: null }]);
		expect(angleOf(corners, 2)).toBeCloseTo(120, 2);
	});

	it("a rise changes its readings to one in the middle", () => {
		const { readings, walls } = typed(
			[
				{ kind: "rise", wall: 1, at: 500, value: 60 },
				{ kind: "rise", wall: 1, at: null, value: 70 },
			],
			(job) => setRise(job, 0, 1, 110),
		);
		expect(readings).toEqual([{ kind: "rise", wall: 1, at: null, value: 110, sd: null }]);
		expect(walls[1]?.rise).toBeCloseTo(110, 2);
	});
});

describe("typing what was not taped yet of a bay that is taped", () => {
	const wide = [{ kind: "run", wall: 0, value: 900 }];

	it("makes it a reading, the last of the list, and the bay is so", () => {
		const run = typed(wide, (job) => setRun(job, 0, 1, 2000));
		expect(run.readings).toEqual([
			{ kind: "run", wall: 0, value: 900, sd: null },
			{ kind: "run", wall: 1, value: 2000, sd: null },
		]);
		expect(runOf(run.corners, 1)).toBeCloseTo(2000, 2);
		const angle = typed(wide, (job) => setAngle(job, 0, 2, 120));
		expect(angle.readings.slice(1)).toEqual([{ kind: "angle", corner: 2, value: 120, sd: null }]);
		expect(angleOf(angle.corners, 2)).toBeCloseTo(120, 2);
		const rise = typed(wide, (job) => setRise(job, 0, 1, 110.5));
		expect(rise.readings.slice(1)).toEqual([{ kind: "rise", wall: 1, at: null, value: 110.5, sd: null }]);
		expect(rise.walls[1]?.rise).toBeCloseTo(110.5, 2);
	});

	it("stands against what is read of the rest: without that, the typed run would be as the diagonal has it", () => {
		const { corners } = typed(
			[
				{ kind: "run", wall: 0, value: 900 },
				{ kind: "diagonal", from: 0, to: 2, value: Math.hypot(900, 1800) },
				{ kind: "angle", corner: 1, value: 90, sd: 0.01 },
			],
			(job) => setRun(job, 0, 1, 1810),
		);
		// Diagonal and run, both good to 2 mm, meet about half-way at a corner that stays square: the diagonal changes by 1800 / 2012 of the run.
		expect(runOf(corners, 1)).toBeGreaterThan(1803);
		expect(runOf(corners, 1)).toBeLessThan(1808);
	});

	it("an angle takes the place of the chords read there, as sure as an angle is", () => {
		const chord = { kind: "chord", corner: 2, arm: 300, value: 424, sd: 0.5 };
		const other = { kind: "run", wall: 0, value: 900, sd: null };
		const { readings, corners } = typed([chord, other, { ...chord, arm: 400, value: 566 }], (job) =>
			setAngle(job, 0, 2, 120),
		);
		expect(readings).toEqual([{ kind: "angle", corner: 2, value: 120, sd: null }, other]);
		expect(angleOf(corners, 2)).toBeCloseTo(120, 2);
		const both = typed([chord, { kind: "angle", corner: 2, value: 91, sd: 0.3 }], (job) => setAngle(job, 0, 2, 120));
		expect(both.readings).toEqual([{ kind: "angle", corner: 2, value: 120, sd: 0.3 }]);
	});

	it("a span between fitted brackets tapes a bay as well", () => {
		const desk = createDesk(
			jobOf({
				corners: SQUARE,
				fitted: { spans: [{ from: { wall: 0, at: 600 }, to: { wall: 1, at: 300 }, value: 425 }] },
			}),
		);
		desk.getState().change("typed", setRun(desk.getState().job, 0, 1, 2000));
		expect(desk.getState().job.bays[0]?.readings).toEqual([{ kind: "run", wall: 1, value: 2000, sd: null }]);
	});

	it("a wall typed straight is drawn straight: nought is a reading only where the rise was read", () => {
		const rise = { kind: "rise", wall: 1, value: 110 };
		const straight = typed([...wide, rise], (job) => setRise(job, 0, 1, 0));
		expect(straight.readings.slice(1)).toEqual([{ kind: "rise", wall: 1, at: null, value: 0, sd: null }]);
		expect(straight.walls[1]?.rise).toBe(0);
		expect(typed(wide, (job) => setRise(job, 0, 1, 0)).readings).toHaveLength(1);
	});

	it("is one step back", () => {
		const desk = createDesk(jobOf({ corners: SQUARE, readings: wide }));
		const before = desk.getState().job;
		desk.getState().change("typed", setRise(before, 0, 1, 110));
		expect(desk.getState().past).toHaveLength(1);
		desk.getState().undo();
		expect(desk.getState().job).toBe(before);
	});
});

describe("typing in a bay of which nothing was taped", () => {
	it("changes the drawing and makes no reading", () => {
		const run = typed([], (job) => setRun(job, 0, 1, 2000));
		expect(run.readings).toEqual([]);
		expect(runOf(run.corners, 1)).toBeCloseTo(2000, 2);
		const angle = typed([], (job) => setAngle(job, 0, 2, 120));
		expect(angle.readings).toEqual([]);
		expect(angleOf(angle.corners, 2)).toBeCloseTo(120, 2);
		const rise = typed([], (job) => setRise(job, 0, 1, 110));
		expect(rise.readings).toEqual([]);
		expect(rise.walls[1]?.rise).toBe(110);
	});
});
