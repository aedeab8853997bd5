import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fitRise } from "../../../packages/setout/src/survey/rise.ts";

/** How far a circle through both ends of a chord stands off it, a given way along its arc: from the circle's own equation. */
function offChord(chord: number, rise: number, along: number): number {
	const radius = (chord ** 2 / 4 + rise ** 2) / (2 * Math.abs(rise));
	const start = Math.asin(chord / (2 * radius));
	const angle = start - along / radius;
	return Math.sign(rise) * (radius * Math.cos(angle) - (radius - Math.abs(rise)));
}

const taped = (at: number | null, value: number, sd: number | null = null) => ({ at, value, sd });

describe("the rise of a bow", () => {
	test("taped once at mid-chord is what was taped", () => {
		expect(fitRise(2000, [taped(null, 210)])).toBeCloseTo(210, 6);
		expect(fitRise(2000, [taped(null, -35)])).toBeCloseTo(-35, 6);
	});

	test("taped exactly at several stations comes out exactly, whichever they are", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 300, max: 5000, noNaN: true }),
				fc.double({ min: 0.01, max: 0.34, noNaN: true }),
				fc.boolean(),
				fc.array(fc.double({ min: 0.15, max: 0.85, noNaN: true }), { minLength: 1, maxLength: 6 }),
				(chord, share, inwards, places) => {
					const rise = (inwards ? -1 : 1) * share * chord;
					const radius = (chord ** 2 / 4 + rise ** 2) / (2 * Math.abs(rise));
					const arc = 2 * radius * Math.asin(chord / (2 * radius));
					const readings = places.map((place) => taped(place * arc, offChord(chord, rise, place * arc)));
					expect(Math.abs(fitRise(chord, readings) - rise)).toBeLessThan(1e-4);
				},
			),
			{ seed: 1407, numRuns: 1000 },
		);
	});

	test("readings that disagree are weighed: twice as sure counts four times", () => {
		expect(fitRise(2000, [taped(null, 200, 1), taped(null, 210, 2)])).toBeCloseTo(202, 4);
	});

	test("never bows deeper than a half circle", () => {
		expect(fitRise(1000, [taped(null, 900)])).toBeCloseTo(500, 6);
	});
});
