import { plainJob, plansOf, type Selection, stopsOf } from "@baywright/editor";
import type { Bay, BayPlan } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import { readKey, readTyping } from "../../../packages/app/src/canvas/keys.ts";

const press = (key: string, more: { shift?: boolean; command?: boolean } = {}) => ({
	key,
	shift: more.shift ?? false,
	command: more.command ?? false,
});

const [bay] = plainJob().bays as [Bay];
const [plan] = plansOf(plainJob()) as [BayPlan];
const STOPS = stopsOf(bay, plan);

describe("keys on the plan", () => {
	it("walk by Tab along the walls, over what stands on them and along the track, then out", () => {
		const walked: string[] = [];
		let selection: Selection | null = null;
		for (;;) {
			const wish = readKey(press("Tab"), selection, STOPS);
			if (wish?.does !== "walk") break;
			selection = wish.to;
			walked.push(`${selection.kind} ${selection.index}`);
		}
		expect(walked).toEqual([
			...["corner 0", "wall 0", "bow 0", "corner 1", "wall 1", "bow 1"],
			...["corner 2", "wall 2", "bow 2", "corner 3"],
			...["opening 0", "track-end 0", "bend 1", "bend 2"],
			...plan.brackets.map((_, i) => `bracket ${i}`),
			"track-end 1",
		]);
	});

	it("walk back by Shift+Tab and out before the left end, so that nobody is caught", () => {
		const back = (selection: Selection | null) => readKey(press("Tab", { shift: true }), selection, STOPS);
		expect(back({ kind: "corner", index: 1 })).toEqual({ does: "walk", to: { kind: "bow", index: 0 } });
		expect(back({ kind: "bow", index: 0 })).toEqual({ does: "walk", to: { kind: "wall", index: 0 } });
		expect(back({ kind: "corner", index: 0 })).toBeNull();
		expect(back(null)).toBeNull();
	});

	it("nudge what is chosen by 1 mm, with Shift by 10, y up", () => {
		const corner: Selection = { kind: "corner", index: 1 };
		expect(readKey(press("ArrowUp"), corner, STOPS)).toEqual({ does: "nudge", dx: 0, dy: 1 });
		expect(readKey(press("ArrowLeft", { shift: true }), corner, STOPS)).toEqual({ does: "nudge", dx: -10, dy: 0 });
		expect(readKey(press("ArrowUp"), { kind: "bow", index: 1 }, STOPS)).toEqual({ does: "nudge", dx: 0, dy: 1 });
		expect(readKey(press("ArrowLeft"), { kind: "bracket", index: 2 }, STOPS)).toEqual({ does: "nudge", dx: -1, dy: 0 });
		expect(readKey(press("ArrowLeft"), { kind: "piece", index: 0 }, STOPS)).toBeNull();
		expect(readKey(press("ArrowLeft"), null, STOPS)).toBeNull();
	});

	it("take up tools by a letter, and write into the run while walls are drawn", () => {
		expect(readKey(press("w"), null, STOPS)).toEqual({ does: "take", tool: "walls" });
		expect(readKey(press("Delete"), { kind: "corner", index: 1 }, STOPS)).toEqual({ does: "remove" });
		expect(readKey(press("Delete"), null, STOPS)).toBeNull();
		for (const text of ["9", ".", "½", "'", "c", " "])
			expect(readTyping(press(text))).toEqual({ does: "tell", event: { type: "type", text } });
		expect(readTyping(press("Tab"))).toEqual({ does: "tell", event: { type: "next-field" } });
		expect(readTyping(press("ArrowUp"))).toEqual({ does: "tell", event: { type: "point", heading: Math.PI / 2 } });
		expect(readTyping(press("F5"))).toBeNull();
		expect(readTyping(press("v", { command: true }))).toBeNull();
	});

	it("leave the page's own commands alone", () => {
		expect(readKey(press("z", { command: true }), null, STOPS)).toBeNull();
		expect(readKey(press("0", { command: true }), null, STOPS)).toBeNull();
		expect(readKey(press("0"), null, STOPS)).toEqual({ does: "fit" });
		expect(readKey(press("Escape"), null, STOPS)).toEqual({ does: "leave" });
	});
});
