import { describe, expect, test } from "vitest";
import { readJobText, serialiseJob } from "../../../packages/setout/src/job/job-text.ts";
import { type Parsed, parseJob } from "../../../packages/setout/src/job/parse.ts";
import { problemLine } from "../../../packages/setout/src/job/problem.ts";
import { fullJob, leastJob, leastSystem } from "./sample.ts";

const jobOf = (parsed: Parsed) => {
	if (!parsed.ok) throw new Error(parsed.problems.map(problemLine).join("\n"));
	return parsed.job;
};

const linesOf = (text: string): string[] => {
	const parsed = readJobText(text);
	return parsed.ok ? [] : parsed.problems.map(problemLine);
};

describe("written text", () => {
	const job = jobOf(parseJob({ ...fullJob(), title: 'A "quoted"\ttitle', systems: [leastSystem()] }));

	test("is read back as the same job", () => {
		expect(jobOf(readJobText(serialiseJob(job)))).toEqual(job);
	});

	test("is the same to the letter whatever the order of the keys", () => {
		const turned = Object.fromEntries(Object.entries(job).reverse());
		expect(serialiseJob(turned as unknown as typeof job)).toBe(serialiseJob(job));
	});

	test("has a short list on one line, lines of at most 120 columns, and a line end at the end", () => {
		const text = serialiseJob(job);
		const lines = text.split("\n");
		expect(lines.map((line) => line.trim())).toContain('"corners": [[0, 0], [0, 900], [1800, 900], [1800, 0]],');
		expect(Math.max(...lines.map((line) => line.replaceAll("\t", "  ").length))).toBeLessThanOrEqual(120);
		expect(text.endsWith("}\n")).toBe(true);
	});

	test("of a job that the schema refuses is written all the same: no work is lost", () => {
		const broken = { ...job, title: 5 } as unknown as typeof job;
		expect(JSON.parse(serialiseJob(broken))).toEqual(broken);
	});
});

describe("text that is not JSON is one plain line with its place", () => {
	test.each([
		["", "the file: found nothing, allowed JSON"],
		[" \n", "the file: found nothing, allowed JSON"],
		[
			'{\n\t"format": "baywright-job",\n\t"version" 1\n}',
			'line 3, column 12: found "1", allowed JSON: a comma, colon, quote or bracket is wrong or missing here',
		],
		[
			'{\n\t"bays": [',
			"line 2, column 11: found the end of the file, allowed JSON: a comma, colon, quote or bracket is wrong or missing here",
		],
	])("%j", (text, line) => {
		expect(linesOf(text)).toEqual([line]);
	});

	test("a file that is nothing like JSON", () => {
		expect(linesOf("hello")).toEqual([
			expect.stringMatching(/^(the file|line 1, column 1): found "hello", allowed JSON: /),
		]);
	});

	test("a byte order mark is passed over", () => {
		expect(linesOf(`\uFEFF${JSON.stringify(leastJob())}`)).toEqual([]);
	});
});
