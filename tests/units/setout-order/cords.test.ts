import {
	type BayPlan,
	cautionsFor,
	cordAdvice,
	cordSentences,
	describe as inWords,
	libraryOf,
	parseJob,
	planBay,
} from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const CORNERS: readonly (readonly [number, number])[] = [
	[0, 0],
	[0, 900],
	[1800, 900],
	[1800, 0],
];

function planOf(bay: object, region = "GB"): BayPlan {
	const parsed = parseJob({
		format: "baywright-job",
		version: 1,
		region,
		bays: [{ id: "b", corners: CORNERS, ...bay }],
	});
	if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
	const [first] = parsed.job.bays;
	if (first === undefined) throw new Error("no bay");
	return planBay(first, libraryOf(parsed.job));
}

/** For the knots (common practice, no source). */
const KNOTS = 300;

test("a cord runs twice the track, and down and up again; by closed form at a right-angled bay", () => {
	const plan = planOf({ track: { system: "light-corded", projection: 40, radius: 310, height: 2300 } });
	// Virtual corners 860, 1720, 860; each bend takes 2R − πR/2 off.
	const path = 860 + 1720 + 860 - 2 * (620 - 155 * Math.PI);
	expect(plan.cords?.inTrack).toBeCloseTo(2 * path, 6);
	// 1500 above the floor in Great Britain.
	expect(plan.cords).toMatchObject({ lowest: 1500, hangs: 800, unknown: null, overOpening: null });
	expect(plan.cords?.length).toBeCloseTo(2 * path + 1600 + KNOTS, 6);
});

describe("where it hangs", () => {
	test.each([
		["pair", "auto", "right", 2],
		["right", "auto", "right", 2],
		["left", "auto", "left", 0],
		["left", "right", "right", 2],
		["pair", "left", "left", 0],
	])("draw %s, cord %s: at the %s end", (draw, cordSide, side, wall) => {
		const { cords } = planOf({ track: { draw, cordSide, height: 2300 } });
		expect(cords?.side).toBe(side);
		expect(cords?.chosen).toBe(cordSide !== "auto");
		expect(cords?.at.wall).toBe(wall);
		expect(cords?.at.at).toBeCloseTo(side === "left" ? 0 : 900, 6);
	});

	test("at the ends of the track, not of the bay", () => {
		const ends = { start: { wall: 0, at: 120 }, end: { wall: 2, at: 700 } };
		expect(planOf({ track: { ...ends, cordSide: "left" } }).cords?.at.at).toBeCloseTo(120, 6);
		expect(planOf({ track: { ...ends, cordSide: "right" } }).cords?.at.at).toBeCloseTo(700, 6);
	});

	test("nothing hangs where nothing is drawn or nothing corded", () => {
		expect(planOf({ track: { draw: "none" } }).cords).toBeNull();
		expect(planOf({ track: { system: "flexible" } }).cords).toBeNull();
	});
});

describe("what is not known is not made up", () => {
	test("no height of the track", () => {
		const { cords } = planOf({});
		expect(cords).toMatchObject({ unknown: "no-height", hangs: null, lowest: null, length: null });
		expect(cords === null ? [] : cordSentences(cords, 3, String).join(" ")).toContain("not known");
	});

	test("a track under the height its loop is to stay above", () => {
		const plan = planOf({ track: { height: 1500 } });
		expect(plan.cords).toMatchObject({ unknown: "track-too-low", hangs: null, length: null });
		expect(plan.findings.map(({ code }) => code)).toContain("cord-against-advice");
	});
});

/** The figures that each source is read to give, retyped here: lowest point of a loop and longest cord in reach, mm. */
const READ: readonly (readonly [string, number | null, number | null])[] = [
	// EN 13120 and its like, read in secondary sources.
	["GB", 1500, null],
	["EU", 1500, null],
	// nsai.ie: at least 1.6 metres above the ground.
	["IE", 1600, null],
	// nsw.gov.au on the safety standard of 2014: 220 mm or longer at or less than 1,600 mm above floor level.
	["AU", 1600, null],
	// SOR/2019-97: 22 cm.
	["CA", null, 220],
	// 16 CFR 1260: 8 inches.
	["US", null, 203],
	["other", 1600, 203],
];

test.each(READ)("%s: loop above %s, cord no longer than %s", (region, loopAbove, longest) => {
	const advice = cordAdvice(region as Parameters<typeof cordAdvice>[0]);
	expect(advice).toMatchObject({ loopAbove, longest });
	expect(advice.source.length).toBeGreaterThan(20);
	expect(advice.checked).toMatch(/^\d{1,2} [A-Z][a-z]+ 20\d\d$/);
	const { cords, findings } = planOf({ track: { height: 2300 } }, region);
	expect(cords?.lowest).toBe(loopAbove ?? 1600);
	const told = findings.filter(({ code }) => code === "cord-against-advice");
	// A loop of 700 or 800 is over any longest cord.
	expect(told.length).toBe(longest === null ? 0 : 1);
});

test("elsewhere is never laxer than any region", () => {
	const other = cordAdvice("other");
	for (const region of ["GB", "EU", "IE", "AU", "CA", "US"] as const) {
		const { loopAbove, longest } = cordAdvice(region);
		expect(other.loopAbove ?? 0).toBeGreaterThanOrEqual(loopAbove ?? 0);
		expect(other.longest ?? 0).toBeLessThanOrEqual(longest ?? Number.POSITIVE_INFINITY);
	}
});

test("no caution says that anything complies, and a corded one has source and date", () => {
	for (const region of ["GB", "EU", "IE", "AU", "CA", "US", "other"] as const) {
		const plain = cautionsFor(region, false);
		const corded = cautionsFor(region, true);
		expect(corded.length).toBe(plain.length + 1);
		expect(corded.at(-1)?.text).toContain("Source: ");
		expect(corded.at(-1)?.text).toContain("last checked 27 November 2026");
		for (const { text } of corded) expect(text).not.toMatch(/compliant|(?<!that anything )complies|certified/i);
	}
});

test("the tensioner of an opening's stretch is told to go elsewhere", () => {
	const openings = [{ wall: 2, from: 500, to: 880, sill: 800, head: 2100 }];
	const at = (mm: number) => planOf({ openings, track: { height: 2300, end: { wall: 2, at: mm } } }).cords?.overOpening;
	expect(at(870)).toBe(0);
	expect(at(890)).toBeNull();
	expect(
		planOf({ openings, track: { height: 2300, cordLowest: 700, end: { wall: 2, at: 870 } } }).cords?.overOpening,
	).toBeNull();
});

test("a loop set too low is a warning that one step undoes", () => {
	const property = fc.property(fc.integer({ min: 0, max: 2000 }), (cordLowest) => {
		const { findings } = planOf({ track: { height: 2300, cordLowest } });
		const told = findings.find(({ code }) => code === "cord-against-advice");
		expect(told !== undefined).toBe(cordLowest < 1500);
		if (told !== undefined) expect(inWords(told, { unit: "mm", walls: 3 }).message).toContain(`${cordLowest} mm`);
	});
	fc.assert(property, { seed: 1500, numRuns: 60 });
});
