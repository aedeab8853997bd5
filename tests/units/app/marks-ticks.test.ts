import { type Bay, parseJob } from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { changeWords, measuredWords } from "../../../packages/app/src/phone/mark-words.ts";
import type { SiteMark } from "../../../packages/app/src/phone/marks.ts";
import { forgetHole, measure, tick, ticksOf, untick } from "../../../packages/app/src/phone/ticks.ts";
import { marked, rightAngled } from "./marks-right-angled.ts";

const named = (marks: readonly SiteMark[], name: string): SiteMark => {
	const mark = marks.find((each) => each.name === name);
	if (mark === undefined) throw new Error(`no ${name} in ${marks.map((each) => each.name).join()}`);
	return mark;
};

const stateOf = (bay: Bay, name: string) => ticksOf(bay, marked(bay)).of.get(name)?.state;

const ticked = (bay: Bay, ...names: string[]): Bay =>
	names.reduce((before, name) => tick(before, marked(before), named(marked(before), name)), bay);

/** The bay with other pins and all else, ticks included, as it was. */
const pinnedAt = (bay: Bay, ...at: number[]): Bay => ({
	...bay,
	track: { ...bay.track, brackets: at.map((each) => ({ wall: 0, at: each })) },
});

const whole = (mm: number) => mm.toFixed(0);

/** The bracket that stands at a place of the left wall. */
function at(bay: Bay, mm: number): string {
	const mark = marked(bay).find(
		(each) => each.kind === "bracket" && each.place.wall === 0 && Math.abs(each.place.at - mm) < 0.5,
	);
	if (mark === undefined) throw new Error(`no bracket at ${mm}`);
	return mark.name;
}

test("ticks are kept under their names, with where the bracket was planned, in a job that reads back the same", () => {
	const bay = ticked(rightAngled(), "bracket-1", "bend-1", "joint-1");
	expect(bay.fitted.done).toContain("bracket-1");
	expect(bay.fitted.done).toContain("bend-1");
	expect(bay.fitted.done).toContain("joint-1");
	const first = named(marked(bay), "bracket-1");
	if (first.kind !== "bracket") throw new Error("not a bracket");
	expect(bay.fitted.brackets).toEqual([
		{ wall: 0, planned: expect.closeTo(first.place.at, 1), at: expect.closeTo(first.place.at, 1), projection: null },
	]);
	const read = parseJob({ format: "baywright-job", version: 1, bays: [bay] });
	expect(read.ok && read.job.bays[0]?.fitted).toEqual(bay.fitted);
	for (const name of ["bracket-1", "bend-1", "joint-1"]) expect(stateOf(bay, name)).toBe("done");
	expect(stateOf(bay, "bracket-2")).toBe("open");
	expect(stateOf(bay, "bend-2")).toBe("open");
});

test("unticking leaves the job as it was", () => {
	const start = rightAngled();
	let bay = ticked(start, "bracket-2", "bend-1", "joint-1", "bracket-1");
	for (const name of ["bend-1", "bracket-2", "joint-1", "bracket-1"])
		bay = untick(bay, marked(bay), named(marked(bay), name));
	expect(bay.fitted).toEqual(start.fitted);
});

test("a bracket that the plan moves after it was ticked is to be done again, and says from where to where", () => {
	const start = pinnedAt(rightAngled(), 300);
	const name = at(start, 300);
	const moved = pinnedAt(ticked(start, name), 325);
	expect(at(moved, 325)).toBe(name);
	expect(ticksOf(moved, marked(moved)).of.get(name)).toEqual({ state: "moved", was: { wall: 0, at: 300 } });
	const words = changeWords(
		named(marked(moved), name),
		ticksOf(moved, marked(moved)).of.get(name) ?? { state: "open" },
		3,
		whole,
	);
	expect(words).toBe("moved since it was ticked: was 300, now 325");
	const again = ticked(moved, name);
	expect(stateOf(again, name)).toBe("done");
	expect(again.fitted.brackets.map(({ at }) => at)).toEqual([325]);
});

test("what is taped from the right corner tells its move from there too", () => {
	const start = pinnedAt(rightAngled(), 520);
	const name = at(start, 520);
	const moved = pinnedAt(ticked(start, name), 490);
	const tickNow = ticksOf(moved, marked(moved)).of.get(name) ?? { state: "open" as const };
	// 900 − 520 and 900 − 490.
	expect(changeWords(named(marked(moved), name), tickNow, 3, whole)).toBe(
		"moved since it was ticked: was 380, now 410",
	);
});

test("a hole belongs to the bracket that stands at it, whatever its number is by now", () => {
	const start = pinnedAt(rightAngled(), 400);
	const before = at(start, 400);
	const bay = pinnedAt(ticked(start, before), 250, 400);
	const after = at(bay, 400);
	expect(after).not.toBe(before);
	expect(stateOf(bay, after)).toBe("done");
	expect(stateOf(bay, at(bay, 250))).toBe("open");
});

test("a hole that no bracket uses any more is told until it is forgotten", () => {
	const start = pinnedAt(rightAngled(), 400);
	const bay = ticked(start, at(start, 400));
	// As from another visit: the tick is gone, the hole is not.
	const spare = pinnedAt({ ...bay, fitted: { ...bay.fitted, done: [] } }, 300);
	expect(ticksOf(spare, marked(spare)).spare).toEqual([0]);
	expect(ticksOf(forgetHole(spare, 0), marked(spare)).spare).toEqual([]);
});

test("names alone, as another program may write them, are ticks too, and stay so when more are added", () => {
	const bay = rightAngled({ fitted: { done: ["bracket-1", "bracket-2", "bend-2"] } });
	expect(["bracket-1", "bracket-2", "bracket-3", "bend-1", "bend-2"].map((name) => stateOf(bay, name))).toEqual([
		"done",
		"done",
		"open",
		"open",
		"done",
	]);
	const more = ticked(bay, "bracket-3");
	expect(["bracket-1", "bracket-2", "bracket-3"].map((name) => stateOf(more, name))).toEqual(["done", "done", "done"]);
});

test("a bend of another radius, and a joint at another place, are to be done again", () => {
	const bay = ticked(rightAngled(), "bend-1", "joint-1");
	const wider: Bay = { ...bay, track: { ...bay.track, radius: 290, joints: [{ wall: 1, at: 860 }] } };
	const { of } = ticksOf(wider, marked(wider));
	// 310·π/2, kept to the tenth.
	expect(of.get("bend-1")).toEqual({ state: "reshaped", was: { radius: 310, sweep: 486.9 } });
	expect(of.get("joint-1")).toEqual({ state: "moved", was: { wall: 1, at: 900 } });
	// 290·π/2 = 455.5.
	expect(changeWords(named(marked(wider), "bend-1"), of.get("bend-1") ?? { state: "open" }, 3, whole)).toBe(
		"changed since it was ticked: was radius 310, sweep 487, now radius 290, sweep 456",
	);
	const again = ticked(wider, "bend-1");
	expect(stateOf(again, "bend-1")).toBe("done");
	expect(again.fitted.done.filter((name) => name.startsWith("bend-1"))).toHaveLength(2);
});

describe("a bracket that was measured", () => {
	const bracket = (bay: Bay, name: string) => {
		const mark = named(marked(bay), name);
		if (mark.kind !== "bracket") throw new Error(`${name} is not a bracket`);
		return mark;
	};
	const measured = (bay: Bay, name: string, figures: Parameters<typeof measure>[3]) =>
		measure(bay, marked(bay), bracket(bay, name), figures);

	test("is there, so it is ticked, and stays so with the plan gone round it", () => {
		const start = pinnedAt(rightAngled(), 400);
		const name = at(start, 400);
		const bay = measured(start, name, { at: 412 });
		expect(at(bay, 412)).toBe(name);
		expect(stateOf(bay, name)).toBe("done");
		expect(bay.fitted.done).toEqual([name]);
		expect(ticksOf(bay, marked(bay)).spare).toEqual([]);
		expect(ticksOf(bay, marked(bay)).fitted.get(name)).toEqual({ wall: 0, planned: 400, at: 412, projection: null });
	});

	test("leaves names that are ticked alone as they were", () => {
		const bay = measured(rightAngled({ fitted: { done: ["bracket-1", "bracket-2"] } }), "bracket-3", {
			projection: 44,
		});
		expect(["bracket-1", "bracket-2", "bracket-3"].map((name) => stateOf(bay, name))).toEqual(["done", "done", "done"]);
		expect(stateOf(bay, "bracket-4")).toBe("open");
		const twice = measured(bay, "bracket-1", { projection: 44 });
		expect(["bracket-1", "bracket-2", "bracket-3", "bracket-4"].map((name) => stateOf(twice, name))).toEqual([
			"done",
			"done",
			"done",
			"open",
		]);
	});

	test("is the job as it was once both figures are taken back", () => {
		const start = rightAngled();
		const bay = measured(measured(start, "bracket-2", { at: 312 }), "bracket-2", { projection: 45 });
		const back = measured(measured(bay, "bracket-2", { at: null }), "bracket-2", { projection: null });
		expect(back.fitted).toEqual(start.fitted);
	});

	test("that is unticked leaves nothing behind, and its pin where it was", () => {
		const start = pinnedAt(rightAngled(), 400);
		const name = at(start, 400);
		const bay = measured(measured(start, name, { at: 412 }), name, { projection: 45 });
		expect(bay.track.brackets).toEqual([{ wall: 0, at: 412 }]);
		expect(untick(bay, marked(bay), bracket(bay, name))).toEqual(start);
	});

	test("keeps what it stands off when it is ticked at another place of its wall", () => {
		const start = measured(pinnedAt(rightAngled(), 400), at(pinnedAt(rightAngled(), 400), 400), { projection: 45 });
		const name = at(start, 400);
		const kept = ticksOf(start, marked(start)).fitted.get(name);
		const mark = { ...bracket(start, name), place: { wall: 0, at: 430 } };
		const again = tick(
			start,
			marked(start).map((each) => (each.name === name ? mark : each)),
			mark,
		);
		expect(kept?.projection).toBe(45);
		expect(again.fitted.brackets).toEqual([{ wall: 0, planned: 430, at: 430, projection: 45 }]);
	});

	test("is told from the corner that its row reads from", () => {
		const start = pinnedAt(rightAngled(), 500);
		const name = at(start, 500);
		const words = (bay: Bay) =>
			measuredWords(bracket(bay, name), ticksOf(bay, marked(bay)).fitted.get(name) ?? null, whole);
		expect(words(start)).toBe("");
		// The right corner, 900 along, is nearer: 12 further right is 12 nearer to it.
		expect(words(measured(start, name, { at: 512 }))).toBe("12 nearer than planned");
		expect(words(measured(start, name, { at: 488 }))).toBe("12 further than planned");
		expect(words(measured(start, name, { projection: 45 }))).toBe("projection 45 taped");
	});
});
