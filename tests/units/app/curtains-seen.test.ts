import { libraryOf, parseJob, planBay, positionOf } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import { foldReach, stackReaches } from "../../../packages/app/src/canvas/track-shape.ts";
import { openedState } from "../../../packages/app/src/desk/opened.ts";

/** A straight bay of 3000 whose track has gliders every 100 and stands 80 off the wall. */
function planOf(curtains: readonly object[]) {
	const read = parseJob({
		format: "baywright-job",
		version: 1,
		systems: [
			{
				id: "plain",
				name: "Plain",
				minRadius: { internal: 100, external: 100 },
				projection: { default: 80, min: 30, max: 300 },
				bracket: { maxSpacing: 500 },
				stock: [{ length: 6000 }],
				gliderSpacing: 100,
			},
		],
		bays: [
			{
				id: "b",
				corners: [
					[0, 0],
					[3000, 0],
				],
				track: { system: "plain", draw: "left" },
				curtains,
			},
		],
	});
	if (!read.ok) throw new Error(JSON.stringify(read.problems));
	const [bay] = read.job.bays;
	if (bay === undefined) throw new Error("no bay");
	return planBay(bay, libraryOf(read.job));
}

describe("curtains on the plan", () => {
	it("fold as deep as they do: a zigzag between hooks, a quarter of it behind the track, and packed deeper into the room", () => {
		const plan = planOf([{ fullness: 2 }]);
		const [curtain] = plan.curtains;
		if (curtain === undefined) throw new Error("no curtain");
		// 200 of cloth on 100 of track: a zigzag of 100 · √3 = 173.2, of which 43.3 behind.
		const drawn = foldReach(plan, curtain, positionOf(curtain, 0));
		expect(drawn.behind).toBeCloseTo(43.3, 1);
		expect(drawn.before).toBeCloseTo(129.9, 1);
		// Packed to 80 mm for each metre of cloth, so to 0.16 of the track: 100 · √(4 − 0.16²) = 199.4.
		const packed = foldReach(plan, curtain, positionOf(curtain, 1));
		expect(packed.behind).toBeCloseTo(43.3, 1);
		expect(packed.before).toBeCloseTo(199.4 - 43.3, 1);
		expect(stackReaches(plan)).toEqual([packed.before]);
	});

	it("fold alike to both sides, off the wall, while nobody has said what hangs", () => {
		const plan = planOf([]);
		const [curtain] = plan.curtains;
		if (curtain === undefined) throw new Error("no curtain");
		const { behind, before } = foldReach(plan, curtain, positionOf(curtain, 1));
		expect(behind).toBe(before);
		expect(behind).toBeLessThan(80);
	});

	it("are never drawn without end, whatever was typed", () => {
		const plan = planOf([{ fullness: 50 }]);
		expect(Math.max(...stackReaches(plan))).toBeLessThanOrEqual(400);
	});
});

describe("how the curtains are seen", () => {
	it("open or drawn, whether all at once or one by one", () => {
		expect(openedState({ all: 1, each: {}, held: null }, 2)).toBe("open");
		expect(openedState({ all: 1, each: { 0: 0 }, held: null }, 2)).toBe("between");
		expect(openedState({ all: 1, each: { 0: 0, 1: 0 }, held: null }, 2)).toBe("closed");
		expect(openedState({ all: 0, each: { 0: 1, 1: 1 }, held: null }, 2)).toBe("open");
		// One that hung there before and does no more is not asked.
		expect(openedState({ all: 1, each: { 2: 0 }, held: null }, 2)).toBe("open");
		expect(openedState({ all: 0, each: {}, held: null }, 0)).toBe("closed");
	});
});
