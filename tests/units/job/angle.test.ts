import { parseDegrees } from "@baywright/setout";
import fc from "fast-check";
import { expect, test } from "vitest";

test.each([
	["135", 135],
	["133.4°", 133.4],
	["92,5 deg", 92.5],
	[" 90 degrees ", 90],
	["90°", 90],
	["+90", 90],
	["-7.5", -7.5],
	["-0", 0],
])("%s is %d degrees", (text, degrees) => {
	expect(parseDegrees(text)).toBe(degrees);
});

test.each(["", " ", "square", "90 mm", "1e2", "90.", ".5", "9 0", "90°°", "1,000.5", "--9", "9".repeat(400)])(
	"%s is no angle",
	(text) => {
		expect(parseDegrees(text)).toBeNull();
	},
);

test("whatever degrees are written with up to nine decimals are read back, with a point or a comma", () => {
	fc.assert(
		fc.property(fc.double({ min: -360, max: 360, noNaN: true }), fc.constantFrom(".", ","), (degrees, mark) => {
			const text = degrees.toFixed(9);
			expect(parseDegrees(`${text.replace(".", mark)}°`)).toBe(Number(text) + 0);
		}),
		{ seed: 135 },
	);
});
