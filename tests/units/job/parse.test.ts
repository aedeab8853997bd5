import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseJob } from "../../../packages/setout/src/job/parse.ts";
import { problemLine } from "../../../packages/setout/src/job/problem.ts";
import { fullJob, leastJob, leastSystem, withValue } from "./sample.ts";

const linesOf = (file: unknown): string[] => {
	const parsed = parseJob(file);
	return parsed.ok ? [] : parsed.problems.map(problemLine);
};

describe("a good file", () => {
	test("with every key written out comes back as it is", () => {
		expect(parseJob(fullJob())).toEqual({ ok: true, job: fullJob() });
	});

	test("with only the required keys has every default filled in, one wall for each pair of corners", () => {
		const wall = { rise: 0, projection: null, surface: "unknown", noDrill: [] };
		expect(parseJob(leastJob())).toEqual({
			ok: true,
			job: {
				format: "baywright-job",
				version: 1,
				title: "",
				site: "",
				notes: "",
				display: { length: "mm" },
				region: "GB",
				systems: [],
				cloths: [],
				prices: [],
				spare: { brackets: 0, gliders: 10, fixings: 10, cord: 5, cloth: 0 },
				bays: [
					{
						...leastJob().bays[0],
						name: "",
						walls: [wall, wall, wall],
						ceiling: null,
						ceilingSurface: "unknown",
						readings: [],
						openings: [],
						obstacles: [],
						track: {
							system: "light-corded",
							mounting: "wall",
							projection: null,
							radius: null,
							height: null,
							start: null,
							end: null,
							bends: [],
							joints: "auto",
							brackets: [],
							follow: "walls",
							draw: "pair",
							cordSide: "auto",
							cordLowest: null,
						},
						curtains: [],
						makeUp: {
							overlap: 100,
							returns: 0,
							ease: 0,
							widths: "whole",
							sideTurning: 60,
							headingTurning: 80,
							hemTurning: 200,
						},
						fitted: { brackets: [], spans: [], cut: [], done: [] },
					},
				],
			},
		});
	});

	test("keeps the walls it gives and fills in the rest, each its own", () => {
		const parsed = parseJob(withValue(leastJob(), ["bays", 0, "walls"], [{ rise: 20 }]));
		if (!parsed.ok) throw new Error("refused");
		const walls = parsed.job.bays[0]?.walls ?? [];
		expect(walls.map((wall) => wall.rise)).toEqual([20, 0, 0]);
		expect(walls[1]).not.toBe(walls[2]);
		expect(walls[1]?.noDrill).not.toBe(walls[2]?.noDrill);
	});

	test("is never changed", () => {
		const file = leastJob();
		parseJob(file);
		expect(file).toEqual(leastJob());
	});

	test.each([
		["no corner", []],
		["one corner", [[0, 0]]],
		[
			"a crossing chain",
			[
				[0, 0],
				[0, 9],
				[9, 0],
				[9, 9],
			],
		],
		[
			"walls of no length",
			[
				[0, 0],
				[0, 0],
			],
		],
		[
			"huge coordinates",
			[
				[-1e12, 0],
				[1e12, 0],
			],
		],
	])("may hold a bay that cannot be planned: %s", (_, corners) => {
		expect(linesOf(withValue(leastJob(), ["bays", 0, "corners"], corners))).toEqual([]);
	});

	test("may hold no bay yet", () => {
		expect(linesOf({ ...leastJob(), bays: [] })).toEqual([]);
	});

	test.each([
		["a reading without its deviation", ["bays", 0, "readings"], [{ kind: "diagonal", from: 0, to: 2, value: 2012 }]],
		["an opening without heights", ["bays", 0, "openings"], [{ wall: 1, from: 150, to: 1650 }]],
		["joints set by hand", ["bays", 0, "track", "joints"], [{ wall: 1, at: 900 }]],
		["a system of its own", ["systems"], [leastSystem()]],
		["a cloth", ["cloths"], [{ id: "c", width: 1370 }]],
	])("may hold %s", (_, path, value) => {
		expect(linesOf(withValue(fullJob(), path, value))).toEqual([]);
	});
});

describe("one wrong field gives one line with path, value and what is allowed", () => {
	const bay = (...rest: (string | number)[]) => ["bays", 0, ...rest];
	test.each<[readonly (string | number)[], unknown, string]>([
		[["format"], undefined, 'format: found nothing, allowed "baywright-job"'],
		[["version"], undefined, "version: found nothing, allowed 1"],
		[["version"], "1", 'version: found "1", allowed 1'],
		[["version"], 0, "version: found 0, allowed 1"],
		[["version"], 0.5, "version: found 0.5, allowed 1"],
		[["bays"], undefined, "bays: found nothing, allowed a list of bays"],
		[["bays"], {}, "bays: found an object, allowed a list of bays"],
		[["title"], 5, "title: found 5, allowed text"],
		[["display", "length"], "ft", 'display.length: found "ft", allowed one of mm, cm, in'],
		[["display", "angle"], "deg", 'display.angle: found "deg", allowed no such key; known here: length'],
		[["region"], "UK", 'region: found "UK", allowed one of GB, IE, EU, US, CA, AU, other'],
		[["prices", 0, "each"], -1, "prices[0].each: found -1, allowed a number, 0 or more"],
		[
			bay("id"),
			undefined,
			"bays[0].id: found nothing, allowed text of 1 to 80 characters, with no space at either end",
		],
		[bay("id"), " ", 'bays[0].id: found " ", allowed text of 1 to 80 characters, with no space at either end'],
		[bay("corners"), undefined, "bays[0].corners: found nothing, allowed a list of corners [x, y]"],
		[bay("corners", 1), [0], "bays[0].corners[1]: found a list of 1, allowed a corner [x, y], both numbers of mm"],
		[bay("corners", 1, 0), "0", 'bays[0].corners[1][0]: found "0", allowed a number of mm'],
		[bay("corners", 1, 0), Number.NaN, "bays[0].corners[1][0]: found NaN, allowed a number of mm"],
		[bay("corners", 1, 1), Number.POSITIVE_INFINITY, "bays[0].corners[1][1]: found Infinity, allowed a number of mm"],
		[bay("walls", 2, "rise"), "x", 'bays[0].walls[2].rise: found "x", allowed a number of mm'],
		[bay("walls", 2, "rise"), null, "bays[0].walls[2].rise: found null, allowed a number of mm"],
		[bay("walls", 2, "projection"), 0, "bays[0].walls[2].projection: found 0, allowed a number of mm, over 0, or null"],
		[bay("walls", 3), {}, "bays[0].walls: found a list of 4, allowed at most 3, one wall for each pair of corners"],
		[
			bay("walls", 0, "noDrill"),
			[[200, 100]],
			"bays[0].walls[0].noDrill[0][1]: found 100, allowed more than its start, which is 200",
		],
		[bay("ceiling"), -1, "bays[0].ceiling: found -1, allowed a number of mm, over 0, or null"],
		[bay("readings", 0), 5, "bays[0].readings[0]: found 5, allowed a reading: an object with its kind"],
		[
			bay("readings", 0, "kind"),
			"rnu",
			'bays[0].readings[0].kind: found "rnu", allowed one of run, diagonal, angle, chord, rise, square',
		],
		[
			bay("readings", 0, "kind"),
			undefined,
			"bays[0].readings[0].kind: found nothing, allowed one of run, diagonal, angle, chord, rise, square",
		],
		[
			bay("readings", 0, "value"),
			undefined,
			"bays[0].readings[0].value: found nothing, allowed a number of mm, over 0",
		],
		[bay("readings", 0, "wall"), 3, "bays[0].readings[0].wall: found 3, allowed a wall of this bay: 0 to 2"],
		[
			bay("readings", 0, "wall"),
			0.5,
			"bays[0].readings[0].wall: found 0.5, allowed the number of a wall, counted from 0",
		],
		[bay("readings", 0, "sd"), 0, "bays[0].readings[0].sd: found 0, allowed a number of mm, over 0, or null"],
		[bay("readings", 1, "to"), 4, "bays[0].readings[1].to: found 4, allowed a corner of this bay: 0 to 3"],
		[bay("readings", 1, "to"), 0, "bays[0].readings[1].to: found 0, allowed another corner than from"],
		[
			bay("readings", 2, "value"),
			360,
			"bays[0].readings[2].value: found 360, allowed a number of degrees, over 0 and under 360",
		],
		[
			bay("readings", 2, "value"),
			0,
			"bays[0].readings[2].value: found 0, allowed a number of degrees, over 0 and under 360",
		],
		[
			bay("readings", 2, "corner"),
			0,
			"bays[0].readings[2].corner: found 0, allowed a corner between two walls: 1 to 2",
		],
		[
			bay("readings", 3, "corner"),
			3,
			"bays[0].readings[3].corner: found 3, allowed a corner between two walls: 1 to 2",
		],
		[bay("readings", 3, "arm"), 0, "bays[0].readings[3].arm: found 0, allowed a number of mm, over 0"],
		[bay("readings", 4, "at"), -1, "bays[0].readings[4].at: found -1, allowed a number of mm, 0 or more, or null"],
		[
			bay("readings", 5, "corner"),
			1,
			"bays[0].readings[5].corner: found 1, allowed a corner that is not an end of wall 0",
		],
		[bay("readings", 5, "corner"), 9, "bays[0].readings[5].corner: found 9, allowed a corner of this bay: 0 to 3"],
		[bay("openings", 0, "wall"), 3, "bays[0].openings[0].wall: found 3, allowed a wall of this bay: 0 to 2"],
		[bay("openings", 0, "to"), 150, "bays[0].openings[0].to: found 150, allowed more than from, which is 150"],
		[bay("openings", 0, "head"), 500, "bays[0].openings[0].head: found 500, allowed more than sill, which is 600"],
		[bay("openings", 0, "sill"), -1, "bays[0].openings[0].sill: found -1, allowed a number of mm, 0 or more, or null"],
		[
			bay("obstacles", 0, "wall"),
			-1,
			"bays[0].obstacles[0].wall: found -1, allowed the number of a wall, counted from 0",
		],
		[bay("obstacles", 0, "to"), 1, "bays[0].obstacles[0].to: found 1, allowed more than from, which is 300"],
		[bay("obstacles", 0, "top"), 450, "bays[0].obstacles[0].top: found 450, allowed more than bottom, which is 450"],
		[bay("track"), null, "bays[0].track: found null, allowed a track"],
		[
			bay("track", "system"),
			"nope",
			'bays[0].track.system: found "nope", allowed one of light-corded, heavy-hand-drawn, flexible, ceiling-channel, fine-hand-drawn',
		],
		[bay("track", "radius"), 0, "bays[0].track.radius: found 0, allowed a number of mm, over 0, or null"],
		[bay("track", "start", "wall"), 3, "bays[0].track.start.wall: found 3, allowed a wall of this bay: 0 to 2"],
		[bay("track", "start"), 5, "bays[0].track.start: found 5, allowed a place on a wall: wall and at"],
		[bay("track", "end", "at"), undefined, "bays[0].track.end.at: found nothing, allowed a number of mm"],
		[
			bay("track", "bends", 0, "corner"),
			0,
			"bays[0].track.bends[0].corner: found 0, allowed a corner between two walls: 1 to 2",
		],
		[bay("track", "bends", 0, "radius"), -5, "bays[0].track.bends[0].radius: found -5, allowed a number of mm, over 0"],
		[
			bay("track", "bends", 1),
			{ corner: 1, radius: 9 },
			"bays[0].track.bends[1].corner: found 1, allowed a corner that no other bend has; bays[0].track.bends[0] has it",
		],
		[
			bay("track", "joints"),
			"none at all",
			'bays[0].track.joints: found "none at all", allowed "auto", "none" or a list of places on a wall',
		],
		[bay("track", "joints"), 5, 'bays[0].track.joints: found 5, allowed "auto", "none" or a list of places on a wall'],
		[bay("track", "joints"), [{ wall: 1, at: "x" }], 'bays[0].track.joints[0].at: found "x", allowed a number of mm'],
		[
			bay("track", "joints"),
			[{ wall: 1, at: 5, of: 1 }],
			"bays[0].track.joints[0].of: found 1, allowed no such key; known here: wall, at",
		],
		[
			bay("track", "joints"),
			[{ wall: 7, at: 5 }],
			"bays[0].track.joints[0].wall: found 7, allowed a wall of this bay: 0 to 2",
		],
		[
			bay("track", "brackets", 0, "wall"),
			3,
			"bays[0].track.brackets[0].wall: found 3, allowed a wall of this bay: 0 to 2",
		],
		[bay("track", "draw"), "up", 'bays[0].track.draw: found "up", allowed one of pair, left, right, none'],
		[
			bay("curtains", 0, "cloth"),
			"red",
			'bays[0].curtains[0].cloth: found "red", allowed one of sheer-voile, light-cotton, medium-cotton, printed-cotton, half-drop-weave, heavy-linen, heavy-interlined',
		],
		[
			bay("curtains", 0, "stacks"),
			"middle",
			'bays[0].curtains[0].stacks: found "middle", allowed one of auto, left, right, both',
		],
		[bay("openings", 0, "sillDepth"), -1, "bays[0].openings[0].sillDepth: found -1, allowed a number of mm, 0 or more"],
		[
			bay("curtains", 0, "heading"),
			"",
			'bays[0].curtains[0].heading: found "", allowed one of pencil, pinch, goblet, box, wave',
		],
		[bay("curtains", 0, "fullness"), 0, "bays[0].curtains[0].fullness: found 0, allowed a number, over 0"],
		[bay("curtains", 0), { from: 5, to: 5 }, "bays[0].curtains[0].to: found 5, allowed more than from, which is 5"],
		[bay("makeUp", "overlap"), -1, "bays[0].makeUp.overlap: found -1, allowed a number of mm, 0 or more"],
		[
			bay("fitted", "brackets", 0, "wall"),
			5,
			"bays[0].fitted.brackets[0].wall: found 5, allowed a wall of this bay: 0 to 2",
		],
		[
			bay("fitted", "spans", 0, "to", "wall"),
			5,
			"bays[0].fitted.spans[0].to.wall: found 5, allowed a wall of this bay: 0 to 2",
		],
		[bay("fitted", "spans", 0, "value"), 0, "bays[0].fitted.spans[0].value: found 0, allowed a number of mm, over 0"],
		[
			["systems"],
			[withValue(leastSystem(), ["stock"], [])],
			"systems[0].stock: found an empty list, allowed a list of stock lengths, at least one",
		],
		[
			["systems"],
			[withValue(leastSystem(), ["bracket"], undefined)],
			"systems[0].bracket: found nothing, allowed the brackets",
		],
		[
			["systems"],
			[withValue(leastSystem(), ["projection", "default"], 95)],
			"systems[0].projection.default: found 95, allowed from min, which is 40, to max, which is 90",
		],
		[
			["systems"],
			[withValue(leastSystem(), ["projection", "max"], 30)],
			"systems[0].projection.max: found 30, allowed min, which is 40, or more",
		],
		[
			["systems"],
			[leastSystem(), leastSystem()],
			'systems[1].id: found "s1", allowed an id that no other system has; systems[0] has it',
		],
		[["bays", 1], leastJob().bays[0], 'bays[1].id: found "b1", allowed an id that no other bay has; bays[0] has it'],
		[
			["colour"],
			"red",
			'colour: found "red", allowed no such key; known here: format, version, title, site, notes, display, region, systems, cloths, prices, spare, bays',
		],
		[
			["two words"],
			1,
			'["two words"]: found 1, allowed no such key; known here: format, version, title, site, notes, display, region, systems, cloths, prices, spare, bays',
		],
	])("%j %j", (path, value, line) => {
		expect(linesOf(withValue(fullJob(), path, value))).toEqual([line]);
	});

	test.each([
		[null, "null"],
		[undefined, "nothing"],
		[[], "an empty list"],
		["{}", '"{}"'],
		[5, "5"],
	])("the file itself: %j", (file, found) => {
		expect(linesOf(file)).toEqual([`the file: found ${found}, allowed a job: an object`]);
	});

	test("a bay with fewer than two corners has no wall to speak of", () => {
		const file = withValue(leastJob(), ["bays", 0, "corners"], [[0, 0]]);
		expect(linesOf(withValue(file, ["bays", 0, "openings"], [{ wall: 0, from: 0, to: 1 }]))).toEqual([
			"bays[0].openings[0].wall: found 0, allowed a wall of this bay, of which there is none",
		]);
	});

	test("__proto__ is an unknown key like any other", () => {
		const file: unknown = JSON.parse(JSON.stringify(leastJob()).replace("{", '{"__proto__":{"title":"x"},'));
		expect(linesOf(file)).toEqual([expect.stringMatching(/^__proto__: found an object, allowed no such key/)]);
	});

	test("what was found is cut short and cannot break the line", () => {
		const [line = ""] = linesOf({ ...leastJob(), region: `a\nb\u202e\u2028${"x".repeat(5000)}` });
		expect(line).toMatch(/^region: found "a\\u\{a\}b\\u\{202e\}\\u\{2028\}x+…", allowed one of GB/);
		expect(line.length).toBeLessThan(140);
	});
});

test("every problem of a file is told, of whatever sort", () => {
	const file = {
		...fullJob(),
		format: undefined,
		extra: 1,
		bays: [
			withValue(withValue(fullJob().bays[0], ["walls", 0, "rise"], "x"), ["track", "system"], "nope"),
			withValue(fullJob().bays[0], ["openings", 0, "wall"], 8),
		],
	};
	expect(linesOf(file).map((line) => line.split(":")[0])).toEqual([
		"format",
		"bays[0].walls[0].rise",
		"extra",
		"bays[1].id",
		"bays[0].track.system",
		"bays[1].openings[0].wall",
	]);
});

test("anything at all in any place gives a job or plain lines, and nothing throws", () => {
	const places = paths(fullJob());
	fc.assert(
		fc.property(fc.constantFrom(...places), fc.oneof(fc.jsonValue(), fc.anything()), (path, value) => {
			const parsed = parseJob(withJunk(path, value));
			if (parsed.ok) return;
			expect(parsed.problems.length).toBeGreaterThan(0);
			for (const line of parsed.problems.map(problemLine)) expect(line).toMatch(/^.+: found .+, allowed .+$/);
		}),
		{ numRuns: 2000 },
	);
});

/** Junk may hold what cannot be cloned, so it is put in by hand. */
const withJunk = (path: readonly (string | number)[], value: unknown): unknown => {
	const file = fullJob();
	// biome-ignore lint/suspicious/noExplicitAny: the point is to put anything anywhere.
	const owner = path.slice(0, -1).reduce<any>((at, key) => at[key], file);
	owner[path.at(-1) as string] = value;
	return file;
};

const paths = (value: unknown, path: readonly (string | number)[] = []): (readonly (string | number)[])[] => {
	if (typeof value !== "object" || value === null) return [path];
	const keys: (string | number)[] = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
	const own = path.length === 0 ? [] : [path];
	return [...own, ...keys.flatMap((key) => paths(value[key as never], [...path, key]))];
};
