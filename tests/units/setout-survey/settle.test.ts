import { type BaySurvey, settle, surveyFaultSentence, surveyReadings, suspectSentence } from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { tape } from "../../oracles/tape.ts";
import { bayOf, systemOf } from "./bay.ts";

function settled(more: object): BaySurvey {
	const bay = bayOf(more);
	const outcome = settle(bay, systemOf(bay));
	if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
	return outcome.value;
}

const run = (wall: number, value: number) => ({ kind: "run", wall, value });
const diagonal = (from: number, to: number, value: number) => ({ kind: "diagonal", from, to, value });
/** √(900² + 1800²). */
const ACROSS = 2012.46;
const square = [
	run(0, 900),
	run(1, 1800),
	run(2, 900),
	diagonal(0, 2, ACROSS),
	diagonal(1, 3, ACROSS),
	diagonal(0, 3, 1800),
];
const words = { unit: "mm", walls: 3 } as const;

describe("a bay settled from its job", () => {
	test("nothing taped: as drawn, nothing to check, nothing to doubt", () => {
		const { corners, readings, sigma0, redundancy, closes, closesWithin, suspects } = settled({});
		expect(corners.map(({ x, y }) => [Math.round(x), Math.round(y)])).toEqual([
			[0, 0],
			[0, 900],
			[1800, 900],
			[1800, 0],
		]);
		expect({ readings, sigma0, redundancy, closes, closesWithin, suspects }).toEqual({
			readings: [],
			sigma0: null,
			redundancy: 0,
			closes: true,
			closesWithin: { length: 0, angle: 0 },
			suspects: [],
		});
	});

	test("good readings close, and nothing is doubted", () => {
		const { closes, closesWithin, redundancy, suspects } = settled({ readings: square });
		expect(closes).toBe(true);
		expect(closesWithin.length).toBeLessThan(0.1);
		// Six distances between four corners, of which five hold them together.
		expect(redundancy).toBeCloseTo(1, 6);
		expect(suspects).toEqual([]);
	});

	test("a blunder of 38 mm is named in one sentence, with what remains without it", () => {
		const again = square.map((reading) => ({ ...reading, value: reading.value + 1 }));
		const readings = [...square, ...again];
		readings[4] = diagonal(1, 3, ACROSS + 38);
		const survey = settled({ readings });
		expect(survey.closes).toBe(false);
		const [first] = survey.suspects;
		expect(first).toMatchObject({ code: "one-disagrees", readings: [4], alike: [] });
		expect(first?.without).toMatchObject({ closes: true, checked: true });
		expect(Math.abs((first?.disagreesBy[0] as number) - 38)).toBeLessThan(2);
		expect(suspectSentence(first as NonNullable<typeof first>, survey, words)).toMatch(
			/^The diagonal 1–right end disagrees by 3[78] mm; without it everything closes within 1 mm\.$/,
		);
	});

	test("with one reading to spare nothing tells which is wrong, and that is said", () => {
		const readings = square.with(4, diagonal(1, 3, ACROSS + 38));
		const survey = settled({ readings });
		const [first] = survey.suspects;
		expect(first?.code).toBe("one-of-several");
		expect(first?.alike.length).toBeGreaterThan(0);
		expect(first?.without.checked).toBe(false);
		expect(suspectSentence(first as NonNullable<typeof first>, survey, words)).toMatch(
			/without it nothing is left that could disagree\. It might as well be the run of the left wall, the .+ or the .+: take them again\.$/,
		);
	});

	test("spans between fitted brackets are readings, as far off the wall as the brackets were fitted", () => {
		const from = { wall: 0, at: 700 };
		const to = { wall: 1, at: 350 };
		const span = { kind: "span", from: { ...from, off: 52 }, to: { ...to, off: 40 } } as const;
		const value = tape(
			{
				corners: [
					{ x: 0, y: 0 },
					{ x: 0, y: 900 },
					{ x: 1800, y: 900 },
					{ x: 1800, y: 0 },
				],
				rises: [0, 0, 0],
			},
			span,
		);
		const fitted = { brackets: [{ ...from, planned: 690, projection: 52 }], spans: [{ from, to, value }] };
		const bay = bayOf({ readings: square, fitted });
		expect(surveyReadings(bay, systemOf(bay)).at(-1)).toEqual({ ...span, value, sd: null });
		const { readings, closesWithin } = settled({ readings: square, fitted });
		expect(readings).toHaveLength(square.length + 1);
		expect(closesWithin.length).toBeLessThan(0.1);
	});

	test("a rise and its bowed wall settle together", () => {
		const walls = [{}, { rise: 100 }, {}];
		const { rises } = settled({ walls, readings: [{ kind: "rise", wall: 1, at: null, value: 120 }] });
		expect(rises.map((rise) => Math.round(rise))).toEqual([0, 120, 0]);
	});

	test("what stands in the way is named", () => {
		const bay = bayOf({ readings: [run(0, 900), { kind: "chord", corner: 1, arm: 300, value: 601 }] });
		const outcome = settle(bay, systemOf(bay));
		expect(outcome).toEqual({ ok: false, faults: [{ kind: "chord-too-long", reading: 1, greatest: 600 }] });
		if (outcome.ok) return;
		expect(outcome.faults.map((fault) => surveyFaultSentence(fault, bay.readings, words))).toEqual([
			"The chord at corner 1 (reading 2) is longer than both its arms together, 600 mm.",
		]);
	});
});
