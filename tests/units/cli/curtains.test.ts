import { expect, test } from "vitest";
import { baywrightHere, jobText } from "./run.ts";

// What a table calls a curtain is what the findings call it: see tests/units/finding.

const rowsUnder = (out: string, head: string): string[] => {
	const lines = out.split("\n");
	const from = lines.findIndex((line) => line.startsWith(head));
	return lines
		.slice(from + 2)
		.slice(0, 2)
		.map((line) => line.trim().replace(/\s+/g, " "));
};

test("curtains stand in the plan by their names, each with the side that it is drawn to", async () => {
	const curtains = [
		{ from: 0, to: 900, stacks: "left", fullness: 2 },
		{ from: 900, to: null, stacks: "right", fullness: 2 },
	];
	const { out } = await baywrightHere(["plan", "-"], jobText({}, { curtains }));
	expect(rowsUnder(out, "Curtains")).toEqual([
		expect.stringMatching(/^curtain 1 left \d/),
		expect.stringMatching(/^curtain 2 right \d/),
	]);
	expect(rowsUnder(out, "Stack-back")).toEqual([
		expect.stringMatching(/^curtain 1 left \d/),
		expect.stringMatching(/^curtain 2 right \d/),
	]);
});

test("the two parts of one curtain are told apart", async () => {
	const { out } = await baywrightHere(["plan", "-"], jobText({}, { curtains: [{ stacks: "both", fullness: 2 }] }));
	expect(rowsUnder(out, "Curtains")).toEqual([
		expect.stringMatching(/^left part of curtain 1 left \d/),
		expect.stringMatching(/^right part of curtain 1 right \d/),
	]);
});

test("where the job names no curtain there is nothing to call them by", async () => {
	const { out } = await baywrightHere(["plan", "-"], jobText());
	expect(out).not.toContain("curtain 1 ");
	expect(rowsUnder(out, "Stack-back")).toEqual([
		expect.stringMatching(/^left 0\.0 \d/),
		expect.stringMatching(/^right \d/),
	]);
});
