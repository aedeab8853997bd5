import { readFileSync } from "node:fs";
import { emptyBay, newJob, plansOf } from "@baywright/editor";
import { type Job, readJobText } from "@baywright/setout";
import { expect, test } from "vitest";
import { planText } from "../../../packages/app/src/panels/plan-text.ts";

function example(name: string): Job {
	const read = readJobText(readFileSync(new URL(`../../../examples/${name}.baywright.json`, import.meta.url), "utf8"));
	if (!read.ok) throw new Error(name);
	return read.job;
}

const textOf = (job: Job) => planText(job, 0, plansOf(job));

test("the words of a splayed bay hold the figures that the README gives for it", () => {
	const text = textOf(example("saltmarsh-house"));
	expect(text).toMatch(/^Saltmarsh House/);
	// README: set-back 145.0, sweep 243.5 at 135° with radius 310 and projection 40.
	expect(text).toContain("1  135.0°: radius 310, set-back 145 and 145, sweep 243");
	expect(text).toContain("PIECE A: CUT 3187");
	expect(text).toContain("1 × 4000");
	expect(text).not.toContain("undefined");
	expect(text).not.toContain("NaN");
});

test("each mark is read from both cut ends, and the two readings make the cut length", () => {
	const text = textOf(example("saltmarsh-house"));
	const marks = [...text.matchAll(/^(\d+) from the left, (\d+) from the right: /gm)];
	expect(marks.length).toBeGreaterThan(10);
	for (const [, left, right] of marks) expect(Math.abs(Number(left) + Number(right) - 3187)).toBeLessThanOrEqual(1);
});

test("a bay that cannot be fitted says so and holds nothing to cut by", () => {
	const text = textOf(example("pepperpot"));
	expect(text).toContain("DO NOT CUT");
	expect(text).toContain("Refused: ");
	expect(text).not.toMatch(/PIECE|BUY/);
});

test("inches are written as inches, an empty bay as one line of refusal", () => {
	expect(textOf(example("gable-end"))).toContain("Lengths in inches.");
	expect(textOf(newJob(emptyBay()))).toContain("DO NOT CUT");
});
