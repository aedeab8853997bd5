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

describe("typing what was not taped", () => {
	it("changes the drawing and makes no reading", () => {
		const wide = [{ kind: "run", wall: 0, value: 900 }];
		const run = typed(wide, (job) => setRun(job, 0, 1, 2000));
		expect(run.readings).toHaveLength(1);
		expect(runOf(run.corners, 1)).toBeCloseTo(2000, 2);
		expect(angleOf(typed([], (job) => setAngle(job, 0, 2, 120)).corners, 2)).toBeCloseTo(120, 2);
		expect(typed([], (job) => setRise(job, 0, 1, 110)).walls[1]?.rise).toBe(110);
		expect(typed([], (job) => setRun(job, 0, 1, 2000)).readings).toEqual([]);
	});
});
