import { cutAnswer } from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { planned } from "../app/marks-right-angled.ts";
import { bayOf } from "../setout-survey/bay.ts";

/** Walls of 1500, 2500 and 1500 at right angles, track 40 off, bends of 310, end hardware 100 an end. */
const plannedWith = (fitted: object) => {
	const corners = [
		[0, 0],
		[0, 1500],
		[2500, 1500],
		[2500, 0],
	];
	return planned(bayOf({ corners, track: { system: "light-corded", projection: 40, radius: 310 }, fitted }));
};

// Between virtual corners 1460, 2420, 1460; each right-angled bend takes 2R − πR/2 off (closed form).
const BENDS = 2 * (620 - 155 * Math.PI);
const CUT = 1460 + 2420 + 1460 - BENDS - 200;

describe("brackets that stand off otherwise than planned", () => {
	test("set the projection of their leg and so the lengths of the legs beside it", () => {
		const fitted = [45, 47].map((projection, i) => ({
			wall: 0,
			planned: 400 + 300 * i,
			at: 400 + 300 * i,
			projection,
		}));
		const plan = plannedWith({ brackets: fitted });
		expect(plan.projections).toEqual([46, 40, 40]);
		// The front leg loses the 6 by which the left one stands further off; the left leg's own length stays.
		expect(plan.pieces[0]?.cutLength).toBeCloseTo(CUT - 6, 6);
		expect(plan.fitted?.brackets.map(({ further }) => further)).toEqual([5, 7]);
		expect(plan.findings.map(({ code }) => code)).not.toContain("bracket-off-projection");
	});

	test("are a warning where they are not in one line", () => {
		const fitted = [40, 46].map((projection, i) => ({
			wall: 0,
			planned: 400 + 300 * i,
			at: 400 + 300 * i,
			projection,
		}));
		const finding = plannedWith({ brackets: fitted }).findings.find(({ code }) => code === "bracket-off-projection");
		expect(finding?.figures).toEqual({ least: 40, greatest: 46, mean: 43 });
	});
});

test("a bracket fitted elsewhere is kept and the rest go round it; one only ticked pins nothing", () => {
	const at = (plan: ReturnType<typeof plannedWith>) =>
		plan.brackets.filter(({ wall }) => wall === 1).map(({ fromLeftCorner }) => Math.round(fromLeftCorner));
	const usual = plannedWith({});
	const moved = plannedWith({ brackets: [{ wall: 1, planned: 1250, at: 1211, projection: null }] });
	expect(at(usual)).not.toContain(1211);
	expect(at(moved)).toContain(1211);
	expect(moved.fitted?.brackets[0]?.off).toBe(-39);
	const ticked = plannedWith({ brackets: [{ wall: 1, planned: 1211, at: 1211, projection: null }] });
	expect(at(ticked)).toEqual(at(usual));
});

describe("a piece that is cut", () => {
	const answer = (length: number) => {
		const [cut] = plannedWith({ cut: [{ piece: "A", length }] }).fitted?.cut ?? [];
		if (cut === undefined) throw new Error("no answer");
		expect(cut.needed).toBeCloseTo(CUT, 6);
		return cutAnswer(cut, "mm");
	};
	test("fits to a saw's breadth", () => {
		expect(answer(CUT)).toBe("Still fits, to the length.");
		expect(answer(CUT + 1.9)).toBe("Still fits, 2 mm to spare.");
	});
	test("is told what to saw off, rounded down", () => {
		expect(answer(CUT + 8.7)).toMatch(/^8 mm too long: saw 8 mm off either end/);
	});
	test("may hang a little short, and is cut anew beyond", () => {
		const { brackets, path, system } = plannedWith({});
		// From the cut end, which lies the take-up in from the finished one, to the near edge of the last bracket.
		const [left, right] = [brackets[0]?.station ?? 0, (path?.length ?? 0) - (brackets.at(-1)?.station ?? 0)].map(
			(gap) => gap - system.endTakeUp - system.bracket.width / 2,
		) as [number, number];
		expect(answer(CUT - 13.2)).toContain("14 mm too short: let each end stand 7 mm further in");
		expect(answer(CUT - left - right - 1)).toContain("cut it anew");
	});
});
