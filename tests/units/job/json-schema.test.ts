import { fileURLToPath } from "node:url";
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { jobJsonSchema } from "../../../packages/setout/src/job/json-schema.ts";
import { jsonText } from "../../../packages/setout/src/job/json-text.ts";
import { parseJob } from "../../../packages/setout/src/job/parse.ts";
import { jobSchema } from "../../../packages/setout/src/job/schema.ts";
import { fullJob, leastJob, leastSystem, withValue } from "./sample.ts";

const valid = new Ajv2020({ allowUnionTypes: true }).compile(jobJsonSchema());

test("the copy kept beside the schema is the one the code gives (vitest --update writes it anew)", async () => {
	const kept = fileURLToPath(new URL("../../../packages/setout/src/job/job.schema.json", import.meta.url));
	await expect(jsonText(jobJsonSchema())).toMatchFileSnapshot(kept);
});

describe("it holds for", () => {
	const system = leastSystem();
	const cloth = { id: "c", width: 1370, lining: { mass: 180 }, packing: { pencil: 95 } };
	test.each([
		["the least a job may hold", leastJob()],
		["every key written out", fullJob()],
		["a system and a cloth of its own", { ...fullJob(), systems: [system], cloths: [cloth] }],
	])("%s, before and after the defaults are filled in", (_, file) => {
		expect(valid(file), JSON.stringify(valid.errors)).toBe(true);
		const parsed = parseJob(file);
		expect(parsed.ok && valid(parsed.job), JSON.stringify(valid.errors)).toBe(true);
	});
});

test("it requires just the keys that have no default", () => {
	const schema = jobJsonSchema() as { required: string[]; properties: { bays: { items: { required: string[] } } } };
	expect(schema.required).toEqual(["format", "version", "bays"]);
	expect(schema.properties.bays.items.required).toEqual(["id", "corners"]);
});

test("it judges as the code does, whatever stands in whichever place", () => {
	const places = paths({ ...fullJob(), systems: [leastSystem()] });
	let refusals = 0;
	fc.assert(
		fc.property(fc.constantFrom(...places), value, (path, junk) => {
			const file = withValue({ ...fullJob(), systems: [leastSystem()] as unknown[] }, path, junk);
			const good = jobSchema.safeParse(file).success;
			if (!good) refusals += 1;
			expect(valid(file), `${path.join(".")} = ${JSON.stringify(junk)}`).toBe(good);
		}),
		{ numRuns: 3000 },
	);
	expect(refusals).toBeGreaterThan(500);
});

const value = fc.oneof(
	fc.jsonValue({ maxDepth: 2 }),
	fc.constantFrom(
		0,
		-1,
		1,
		0.5,
		360,
		1e300,
		"",
		" ",
		"x",
		"auto",
		"none",
		null,
		[],
		{},
		[[0, 1]],
		{ wall: 0, at: 5 },
		undefined,
	),
);

const paths = (value: unknown, path: readonly (string | number)[] = []): (readonly (string | number)[])[] => {
	if (typeof value !== "object" || value === null) return [path];
	const inner = Array.isArray(value)
		? value.flatMap((item, i) => paths(item, [...path, i]))
		: Object.entries(value).flatMap(([key, item]) => paths(item, [...path, key]));
	// A hole in a list is not JSON, so only places with a key are emptied.
	return path.length === 0 || typeof path.at(-1) === "number" ? inner : [path, ...inner];
};
