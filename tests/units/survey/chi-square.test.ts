import { describe, expect, test } from "vitest";
import { chiSquareBelow, chiSquareQuantile } from "../../../packages/survey/src/chi-square.ts";

describe("the chi-square distribution", () => {
	// Abramowitz & Stegun, Handbook of Mathematical Functions, table 26.8 (from memory): greatest values at 95 %.
	test.each([
		[1, 3.84146],
		[2, 5.99146],
		[3, 7.81473],
		[5, 11.0705],
		[10, 18.307],
		[20, 31.4104],
		[30, 43.7729],
		[100, 124.342],
	])("%i degrees of freedom at 95 %%: %d", (freedom, value) => {
		expect(Math.abs(chiSquareQuantile(0.95, freedom) - value)).toBeLessThan(value * 5e-6);
	});

	test("two degrees of freedom are an exponential distribution", () => {
		for (const x of [1e-9, 0.3, 2, 17, 60]) expect(chiSquareBelow(x, 2)).toBeCloseTo(1 - Math.exp(-x / 2), 13);
	});

	test("nothing lies under nought, all under a large figure", () => {
		expect(chiSquareBelow(0, 3)).toBe(0);
		expect(chiSquareBelow(5000, 3)).toBeCloseTo(1, 12);
	});
});
