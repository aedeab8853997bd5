import { describe, expect, test } from "vitest";
import { type Migration, migrate } from "../../../packages/setout/src/job/migrate.ts";
import { parseJob } from "../../../packages/setout/src/job/parse.ts";
import { problemLine } from "../../../packages/setout/src/job/problem.ts";
import { leastJob } from "./sample.ts";

const line = (file: unknown): string[] => {
	const parsed = parseJob(file);
	return parsed.ok ? [] : parsed.problems.map(problemLine);
};

test("a newer file is refused politely, and nothing else in it is judged", () => {
	expect(line({ ...leastJob(), version: 3, somethingNew: true })).toEqual([
		"version: found 3, allowed up to 1: the file was made by a newer Baywright, this one reads up to 1",
	]);
});

test("a file of another format is refused, and nothing else in it is judged", () => {
	expect(line({ format: "recipe", version: 9, flour: 500 })).toEqual([
		'format: found "recipe", allowed "baywright-job": this is not a Baywright job',
	]);
});

describe("steps between versions, with versions invented here", () => {
	const steps: Migration[] = [
		{ from: 1, apply: ({ label, ...rest }) => ({ ...rest, title: label }) },
		{ from: 2, apply: (file) => ({ ...file, site: "unknown" }) },
	];

	test.each([
		[{ format: "baywright-job", version: 1, label: "Bay" }],
		[{ format: "baywright-job", version: 2, title: "Bay" }],
		[{ format: "baywright-job", version: 3, title: "Bay", site: "unknown" }],
	])("%j becomes version 3", (file) => {
		const before = structuredClone(file);
		expect(migrate(file, steps, 3)).toEqual({
			ok: true,
			file: { format: "baywright-job", version: 3, title: "Bay", site: "unknown" },
		});
		expect(file).toEqual(before);
	});

	test.each([[0], ["1"], [undefined], [null], [1.5]])("version %j is left for the schema to name", (version) => {
		const file = { format: "baywright-job", version };
		expect(migrate(file, steps, 3)).toEqual({ ok: true, file });
	});
});
