import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { GREATEST_LENGTH, parseLength } from "../../../packages/setout/src/job/length.ts";
import { formatAngle, formatLength } from "../../../packages/setout/src/job/length-text.ts";

const mmOf = (text: string, unit: "mm" | "cm" | "in" = "mm", negative = false): number => {
	const read = parseLength(text, unit, { negative });
	if (!read.ok) throw new Error(read.message);
	return read.value;
};

const messageOf = (text: string, unit: "mm" | "cm" | "in" = "mm"): string => {
	const read = parseLength(text, unit);
	return read.ok ? `taken as ${read.value}` : read.message;
};

describe("a typed length", () => {
	// 94 1/2 in × 25.4 = 2400.3; 7 ft 10 in = 94 in = 2387.6; all worked by hand.
	test.each([
		["2400", 2400],
		["  2400  ", 2400],
		["2400mm", 2400],
		["2400 MM", 2400],
		["2.4 m", 2400],
		["2,4 m", 2400],
		["240cm", 2400],
		["240,5 cm", 2405],
		[".5 m", 500],
		["0", 0],
		["0,125 in", 3.175],
		['94 1/2"', 2400.3],
		["94.5 in", 2400.3],
		['94½"', 2400.3],
		["94 ½ in", 2400.3],
		['94-1/2"', 2400.3],
		['94-½"', 2400.3],
		["94 1⁄2″", 2400.3],
		["94 1/2 inches", 2400.3],
		["1 1/2in", 38.1],
		['1-1/2"', 38.1],
		['1/2"', 12.7],
		["½ in", 12.7],
		["1 inch", 25.4],
		["1''", 25.4],
		['7/16"', 11.1125],
		["7' 10 1/2\"", 2400.3],
		["7ft 10 1/2in", 2400.3],
		["7 ft 10 1/2", 2400.3],
		["7′ 10½″", 2400.3],
		["7’ 10½”", 2400.3],
		["7'-10 1/2\"", 2400.3],
		["7'10", 2387.6],
		["7'", 2133.6],
		["7 feet", 2133.6],
		["7.5 ft", 2286],
		["7 1/2 ft", 2286],
	])("%s is %d mm", (text, mm) => {
		expect(mmOf(text)).toBe(mm);
	});

	test.each([
		["94.5", "in", 2400.3],
		["94 1/2", "in", 2400.3],
		["½", "in", 12.7],
		["240", "cm", 2400],
		["2400 mm", "in", 2400],
	] as const)("bare numbers take the unit on show: %s with %s is %d mm", (text, unit, mm) => {
		expect(mmOf(text, unit)).toBe(mm);
	});

	test.each([
		["-5", -5],
		["−5 mm", -5],
		["- 5", -5],
		["+5", 5],
		['-1 1/2"', -38.1],
		["-½ in", -12.7],
		["-0", 0],
	])("under 0 where it may be: %s is %d mm", (text, mm) => {
		expect(mmOf(text, "mm", true)).toBe(mm);
	});
});

describe("what is no length is refused, naming what was typed and what is allowed", () => {
	const example = "a length such as 2400, 240 cm, 2.4 m or 94 1/2 in";
	test.each([
		["", `found nothing, allowed ${example}`],
		["   ", `found nothing, allowed ${example}`],
		["abc", `found "abc", allowed ${example}`],
		["1e9", `found "1e9", allowed ${example}`],
		["0x10", `found "0x10", allowed ${example}`],
		["NaN", `found "NaN", allowed ${example}`],
		["Infinity", `found "Infinity", allowed ${example}`],
		["mm", `found "mm", allowed ${example}`],
		["2m 40cm", `found "2m 40cm", allowed ${example}`],
		["10\" 7'", `found “10" 7'”, allowed ${example}`],
		["2400 yards", 'found "2400 yards", allowed the units mm, cm, m, in and ft'],
		["12 34", 'found "12 34", allowed one number, as in 2400, 2.4 or 94 1/2'],
		["1 000 mm", 'found "1 000 mm", allowed one number, as in 2400, 2.4 or 94 1/2'],
		["5..2", 'found "5..2", allowed one number, as in 2400, 2.4 or 94 1/2'],
		["2.", 'found "2.", allowed one number, as in 2400, 2.4 or 94 1/2'],
		["2.400,5", 'found "2.400,5", allowed one number, as in 2400, 2.4 or 94 1/2'],
		["1/2/3 in", 'found "1/2/3 in", allowed one number, as in 2400, 2.4 or 94 1/2'],
		["1.5 1/2 in", 'found "1.5 1/2 in", allowed one number, as in 2400, 2.4 or 94 1/2'],
		["94 -1/2 in", 'found "94 -1/2 in", allowed one number, as in 2400, 2.4 or 94 1/2'],
		["2,400", 'found "2,400", allowed 2400 or 2.400: a comma before three digits could mean either'],
		["1,234,567", 'found "1,234,567", allowed 1234567, with nothing between thousands'],
		["1/0 in", 'found "1/0 in", allowed a fraction of something other than 0'],
		["94 3/2 in", 'found "94 3/2 in", allowed a fraction under 1 after a whole number, as in 94 1/2'],
		["94 1/2", 'found "94 1/2", allowed fractions with in or ft only, as in 94 1/2 in'],
		["½ m", 'found "½ m", allowed fractions with in or ft only, as in 94 1/2 in'],
		["7.5' 3", 'found "7.5\' 3", allowed whole feet before inches, as in 7\' 10 1/2"'],
		["7' 12", 'found "7\' 12", allowed less than 12 inches after feet, as in 7\' 10 1/2"'],
		["-5", 'found "-5", allowed a length without a sign'],
		["1001 m", 'found "1001 m", allowed a length up to 1 km'],
		["9".repeat(50), `found "${"9".repeat(39)}…", allowed a length up to 1 km`],
		["1".repeat(100_000), `found "${"1".repeat(39)}…", allowed ${example}`],
	])("%.20s", (text, message) => {
		expect(messageOf(text)).toBe(message);
	});

	test("examples fit the unit on show", () => {
		expect(messageOf("x", "in")).toBe('found "x", allowed a length such as 94 1/2, 7\' 10 1/2", 2400 mm or 2.4 m');
	});
});

describe("a length as shown", () => {
	test.each([
		[2400, "mm", {}, "2400"],
		[2400.04, "mm", { precision: 1 }, "2400.0"],
		[2400.3, "mm", { precision: 1, unit: true }, "2400.3 mm"],
		[-0.4, "mm", {}, "0"],
		[-0.04, "mm", { precision: 1 }, "0.0"],
		[-0, "mm", {}, "0"],
		[2403, "cm", {}, "240.3"],
		[2403.4, "cm", { precision: 1, unit: true }, "240.34 cm"],
		[0, "in", {}, '0"'],
		[2400.3, "in", {}, '94 1/2"'],
		[2400, "in", {}, '94 1/2"'],
		[12.7, "in", {}, '1/2"'],
		[11.1125, "in", {}, '7/16"'],
		[-38.1, "in", {}, '-1 1/2"'],
		[-0.5, "in", {}, '0"'],
		[25.3, "in", {}, '1"'],
		[2400.3, "in", { feet: true }, "7' 10 1/2\""],
		[304.5, "in", { feet: true }, "1' 0\""],
		[303, "in", { feet: true }, '11 15/16"'],
		[266.7, "in", { feet: true }, '10 1/2"'],
	] as const)("%d mm in %s %j is %s", (mm, unit, style, text) => {
		expect(formatLength(mm, unit, style)).toBe(text);
	});

	test.each([
		[135, "135.0°"],
		[92.46, "92.5°"],
		[-0.04, "0.0°"],
		[-12.5, "-12.5°"],
	])("%d degrees are %s", (degrees, text) => {
		expect(formatAngle(degrees)).toBe(text);
	});
});

test("what is shown reads back within half of the last place shown, with the unit written or not", () => {
	const half = { mm: [0.5, 0.05], cm: [0.5, 0.05], in: [25.4 / 32, 25.4 / 32] } as const;
	fc.assert(
		fc.property(
			fc.double({ min: -GREATEST_LENGTH + 1, max: GREATEST_LENGTH - 1, noNaN: true }),
			fc.constantFrom("mm", "cm", "in"),
			fc.constantFrom(0, 1),
			fc.boolean(),
			fc.boolean(),
			(mm, unit, precision, withUnit, feet) => {
				const text = formatLength(mm, unit, { precision, unit: withUnit, feet });
				const back = mmOf(text, unit, true);
				expect(Math.abs(back - mm)).toBeLessThanOrEqual(half[unit][precision] + 1e-6);
				expect(Object.is(back, -0)).toBe(false);
				expect(formatLength(back, unit, { precision, unit: withUnit, feet })).toBe(text);
			},
		),
		{ numRuns: 3000 },
	);
});

test("whatever is typed, the answer is a length in bounds or one plain line", () => {
	const typed = fc.oneof(
		fc.string({ unit: "binary", maxLength: 80 }),
		fc
			.array(fc.constantFrom("1", "0", "7", "/", " ", ".", ",", "-", "'", '"', "½", "″", "m", "cm", "ft", "in", "e"), {
				maxLength: 12,
			})
			.map((parts) => parts.join("")),
	);
	fc.assert(
		fc.property(typed, fc.constantFrom("mm", "cm", "in"), (text, unit) => {
			const read = parseLength(text, unit);
			if (read.ok) {
				expect(read.value).toBeGreaterThanOrEqual(0);
				expect(read.value).toBeLessThanOrEqual(GREATEST_LENGTH);
			} else {
				expect(read.message).toMatch(/^found .+, allowed .+$/);
			}
		}),
		{ numRuns: 5000 },
	);
});
