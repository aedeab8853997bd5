import { describe, expect, it } from "vitest";
import { setRun } from "../../../packages/app/src/desk/changes.ts";
import { desk } from "../../../packages/app/src/desk/desk.ts";
import { plainJob } from "../../../packages/editor/src/plain-bays.ts";

const opened = () => desk.getState().opened;

describe("which job lies on the desk", () => {
	it("is another with every one that is opened or brought back, the same one again included", () => {
		const seen = [opened()];
		desk.getState().restore(plainJob());
		seen.push(opened());
		desk.getState().open(plainJob());
		seen.push(opened());
		desk.getState().open({ ...plainJob(), title: "Other" });
		seen.push(opened());
		expect(new Set(seen).size).toBe(4);
	});

	it("stays through changes, and goes back and forth with what was opened", () => {
		desk.getState().restore(plainJob());
		const first = opened();
		expect(desk.getState().change("run", setRun(desk.getState().job, 0, 1, 2000))).toBeNull();
		expect(opened()).toBe(first);
		desk.getState().open({ ...plainJob(), title: "Other" });
		const second = opened();
		expect(second).not.toBe(first);
		desk.getState().undo();
		expect(opened()).toBe(first);
		desk.getState().undo();
		expect(opened()).toBe(first);
		desk.getState().redo();
		desk.getState().redo();
		expect(opened()).toBe(second);
	});
});
