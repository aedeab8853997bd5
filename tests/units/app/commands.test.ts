import { newJob, plainBay, plainBays } from "@baywright/editor";
import { parseJob } from "@baywright/setout";
import { beforeEach, expect, test } from "vitest";
import type { Now } from "../../../packages/app/src/commands/command.ts";
import { commands, findCommands } from "../../../packages/app/src/commands/commands.ts";
import { trackCommands } from "../../../packages/app/src/commands/on-track.ts";
import { wallCommands } from "../../../packages/app/src/commands/on-walls.ts";
import { desk } from "../../../packages/app/src/desk/desk.ts";
import { screen } from "../../../packages/app/src/desk/screen.ts";

const now = (): Now => ({ desk: desk.getState(), screen: screen.getState() });

const byId = (id: string) => {
	const command = commands.find((it) => it.id === id);
	if (command === undefined) throw new Error(`no command ${id}`);
	return command;
};

beforeEach(() => {
	screen.setState({ started: true, sheet: null });
	desk.getState().restore(newJob(plainBay("square")));
});

test("every command has an id and words of its own", () => {
	expect(new Set(commands.map(({ id }) => id)).size).toBe(commands.length);
	expect(new Set(commands.map(({ words }) => words)).size).toBe(commands.length);
});

test("commands are found by any of their words, the likeliest first", () => {
	expect(findCommands("")).toBe(commands);
	expect(findCommands("mirror").map(({ id }) => id)).toEqual(["mirror"]);
	expect(findCommands("FLIP bay").map(({ id }) => id)).toContain("mirror");
	expect(findCommands("joints")[0]?.id).toBe("joints-auto");
	expect(findCommands("corner remove").map(({ id }) => id)).toEqual(["remove-corner"]);
	expect(findCommands("inches").map(({ id }) => id)).toEqual(["unit-in"]);
	expect(findCommands("submarine")).toEqual([]);
});

test("without a job what needs one says so", () => {
	screen.setState({ started: false });
	expect(byId("mirror").can(now())).toBe("Take a bay first.");
	expect(byId("save").can(now())).toBe("Take a bay first.");
	expect(byId("open").can(now())).toBeNull();
});

test("what needs something chosen says what", () => {
	expect(byId("level").can(now())).toBe("Choose a wall first.");
	expect(byId("remove-corner").can(now())).toBe("Choose a corner first.");
	expect(byId("release-pin").can(now())).toBe("Choose a bracket first.");
	expect(byId("undo").can(now())).toBe("Nothing has been done yet.");
	expect(byId("remove-bay").can(now())).toBe("A job keeps at least one bay.");
	desk.getState().select({ kind: "wall", index: 1 });
	expect(byId("level").can(now())).toBeNull();
	expect(byId("straighten").can(now())).toBe("It is straight already.");
});

test("mirrored, a bay taken from the left is one taken from the right", () => {
	desk.getState().restore(newJob(plainBay("l-shaped")));
	byId("mirror").run(now());
	expect(desk.getState().job.bays[0]?.corners).toEqual([
		[0, 1200],
		[2200, 1200],
		[2200, 0],
	]);
	expect(desk.getState().past.at(-1)?.label).toBe("mirror left to right");
});

test("a corner put in the middle of a wall is chosen, and goes again", () => {
	desk.getState().select({ kind: "wall", index: 1 });
	byId("insert-corner").run(now());
	expect(desk.getState().job.bays[0]?.corners[2]).toEqual([900, 700]);
	expect(desk.getState().selection).toEqual({ kind: "corner", index: 2 });
	byId("remove-corner").run(now());
	expect(desk.getState().job.bays[0]?.corners).toEqual(plainBay("square").corners);
});

test("a radius that was set is released", () => {
	desk
		.getState()
		.change("radius", [{ op: "replace", path: "/bays/0/track/bends", value: [{ corner: 1, radius: 250 }] }]);
	desk.getState().select({ kind: "bend", index: 1 });
	expect(byId("release-radius").can(now())).toBeNull();
	byId("release-radius").run(now());
	expect(desk.getState().job.bays[0]?.track.bends).toEqual([]);
});

test("whatever a command does to a plain bay, the job stays a good one and undo brings it back", () => {
	for (const { id } of plainBays)
		for (const command of [...wallCommands, ...trackCommands])
			for (const selection of [
				{ kind: "wall", index: 0 },
				{ kind: "corner", index: 1 },
				{ kind: "bracket", index: 0 },
			] as const) {
				desk.getState().restore(newJob(plainBay(id)));
				const before = desk.getState().job;
				desk.getState().select(selection);
				if (command.can(now()) !== null) continue;
				command.run(now());
				expect(parseJob(JSON.parse(JSON.stringify(desk.getState().job))).ok, `${command.id} on ${id}`).toBe(true);
				while (desk.getState().past.length > 0) desk.getState().undo();
				expect(desk.getState().job).toEqual(before);
			}
});
