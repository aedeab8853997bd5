import { describe, expect, it } from "vitest";
import { readKey } from "../../../packages/app/src/canvas/keys.ts";
import type { Selection } from "../../../packages/app/src/desk/selection.ts";

const press = (key: string, more: { shift?: boolean; command?: boolean } = {}) => ({
	key,
	shift: more.shift ?? false,
	command: more.command ?? false,
});

describe("keys on the plan", () => {
	it("walk by Tab from the left end over every wall, its bow and the next corner to the right end, then out", () => {
		const walked: string[] = [];
		let selection: Selection | null = null;
		for (;;) {
			const wish = readKey(press("Tab"), selection, 4);
			if (wish?.does !== "walk") break;
			selection = wish.to;
			walked.push(`${selection.kind} ${selection.index}`);
		}
		expect(walked).toEqual([
			...["corner 0", "wall 0", "bow 0", "corner 1", "wall 1", "bow 1"],
			...["corner 2", "wall 2", "bow 2", "corner 3"],
		]);
	});

	it("walk back by Shift+Tab and out before the left end, so that nobody is caught", () => {
		const back = (selection: Selection | null) => readKey(press("Tab", { shift: true }), selection, 4);
		expect(back({ kind: "corner", index: 1 })).toEqual({ does: "walk", to: { kind: "bow", index: 0 } });
		expect(back({ kind: "bow", index: 0 })).toEqual({ does: "walk", to: { kind: "wall", index: 0 } });
		expect(back({ kind: "corner", index: 0 })).toBeNull();
		expect(back(null)).toBeNull();
	});

	it("nudge what is chosen by 1 mm, with Shift by 10, y up", () => {
		const corner: Selection = { kind: "corner", index: 1 };
		expect(readKey(press("ArrowUp"), corner, 4)).toEqual({ does: "nudge", dx: 0, dy: 1 });
		expect(readKey(press("ArrowLeft", { shift: true }), corner, 4)).toEqual({ does: "nudge", dx: -10, dy: 0 });
		expect(readKey(press("ArrowUp"), { kind: "bow", index: 1 }, 4)).toEqual({ does: "nudge", dx: 0, dy: 1 });
		expect(readKey(press("ArrowLeft"), { kind: "bracket", index: 2 }, 4)).toBeNull();
		expect(readKey(press("ArrowLeft"), null, 4)).toBeNull();
	});

	it("leave the page's own commands alone", () => {
		expect(readKey(press("z", { command: true }), null, 4)).toBeNull();
		expect(readKey(press("0", { command: true }), null, 4)).toBeNull();
		expect(readKey(press("0"), null, 4)).toEqual({ does: "fit" });
		expect(readKey(press("Escape"), null, 4)).toEqual({ does: "leave" });
	});
});
