import { describe, expect, test } from "vitest";
import { applyChange } from "../../../packages/setout/src/job/change.ts";
import { parseJob } from "../../../packages/setout/src/job/parse.ts";
import { problemLine } from "../../../packages/setout/src/job/problem.ts";
import { fullJob, leastSystem, withValue } from "./sample.ts";

type Operations = Parameters<typeof applyChange>[1];

const job = (() => {
	const parsed = parseJob(fullJob());
	if (!parsed.ok) throw new Error("the sample is refused");
	return parsed.job;
})();

const linesAfter = (...operations: unknown[]): string[] => {
	const parsed = applyChange(job, operations as Operations);
	return parsed.ok ? [] : parsed.problems.map(problemLine);
};

describe("a change that can be made", () => {
	test.each<[string, Operations, readonly (string | number)[], unknown]>([
		["replaces", [{ op: "replace", path: "/bays/0/track/radius", value: 250 }], ["bays", 0, "track", "radius"], 250],
		[
			"adds at the end",
			[{ op: "add", path: "/bays/0/corners/-", value: [1800, -500] }],
			["bays", 0, "corners", 4],
			[1800, -500],
		],
		[
			"removes",
			[{ op: "remove", path: "/bays/0/readings/5" }],
			["bays", 0, "readings"],
			fullJob().bays[0]?.readings.slice(0, 5),
		],
	])("%s", (_, operations, path, value) => {
		const before = JSON.stringify(job);
		const parsed = applyChange(job, operations);
		expect(JSON.stringify(job)).toBe(before);
		if (!parsed.ok) throw new Error(parsed.problems.map(problemLine).join("\n"));
		const expected = withValue(fullJob(), path, value);
		// A new corner brings its wall with it.
		if (path.at(-1) === 4) expected.bays[0]?.walls.push({ rise: 0, projection: null, surface: "unknown", noDrill: [] });
		expect(parsed.job).toEqual(expected);
	});

	test("one edit can build on the one before", () => {
		const parsed = applyChange(job, [
			{ op: "add", path: "/systems/-", value: leastSystem() },
			{ op: "replace", path: "/systems/0/minRadius/internal", value: 150 },
			{ op: "replace", path: "/bays/0/track/system", value: "s1" },
		]);
		expect(parsed).toMatchObject({
			ok: true,
			job: { systems: [{ minRadius: { internal: 150 }, kerf: 3 }], bays: [{ track: { system: "s1" } }] },
		});
	});

	test("what is put in stays apart from what was given", () => {
		const value = leastSystem();
		const parsed = applyChange(job, [{ op: "add", path: "/systems/-", value }]);
		value.minRadius.internal = 1;
		expect(parsed).toMatchObject({ ok: true, job: { systems: [{ minRadius: { internal: 200 } }] } });
	});
});

describe("a change that cannot be made is one line, and nothing of it is done", () => {
	test.each<[unknown[], string]>([
		[
			[{ op: "replace", path: "/bays/7/name", value: "" }],
			'change[0]: found replace "/bays/7/name", allowed an edit of something that the job has',
		],
		[
			[{ op: "remove", path: "/bays/0/colour" }],
			'change[0]: found remove "/bays/0/colour", allowed an edit of something that the job has',
		],
		[
			[{ op: "replace", path: "bays", value: [] }],
			'change[0]: found replace "bays", allowed an edit of something that the job has',
		],
		[
			[
				{ op: "test", path: "/version", value: 1 },
				{ op: "test", path: "/title", value: "x" },
			],
			'change[1]: found test "/title", allowed a test that holds',
		],
		[[{ op: "move", path: "/title" }], 'change[0]: found move "/title", allowed an edit of something that the job has'],
		[
			[{ op: "grow", path: "/title" }],
			'change[0].op: found "grow", allowed one of add, remove, replace, move, copy, test',
		],
		[
			[{ op: "replace", path: "", value: {} }],
			'change[0].path: found "", allowed a path into the job, as in /bays/0/track/radius',
		],
		[
			[{ op: "add", path: 5, value: {} }],
			"change[0].path: found 5, allowed a path into the job, as in /bays/0/track/radius",
		],
		[[null], "change[0]: found null, allowed an edit: an object"],
		[
			[{ op: "replace", path: "/bays/0/track/radius", value: -1 }],
			"bays[0].track.radius: found -1, allowed a number of mm, over 0, or null",
		],
		[
			[{ op: "add", path: "/bays/0/colour", value: 1 }],
			expect.stringMatching(/^bays\[0\]\.colour: found 1, allowed no such key/) as never,
		],
	])("%j", (operations, line) => {
		expect(linesAfter(...operations)).toEqual([line]);
	});

	test.each(["/__proto__/title2", "/bays/__proto__/title2", "/constructor/prototype/title2"])(
		"%s does not reach what all objects share",
		(path) => {
			expect(linesAfter({ op: "add", path, value: "x" })).toHaveLength(1);
			expect("title2" in {}).toBe(false);
		},
	);
});
