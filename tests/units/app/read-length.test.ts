import { describe, expect, it } from "vitest";
import { readLength } from "../../../packages/app/src/fields/read-length.ts";

describe("a length typed in a field", () => {
	it.each([
		["2.1 m", 2100],
		["12 in", 304.8],
		["40", 40],
	])("%s is read", (text, value) => {
		expect(readLength(text, "mm")).toEqual({ ok: true, value });
	});

	it.each([
		["12 34", "“12 34” is not a length: write one number, as in 2400, 2.4 or 94 1/2."],
		["a, allowed b", "“a, allowed b” is not a length: write a length such as 2400, 240 cm, 2.4 m or 94 1/2 in."],
		[" ", "Write a length such as 2400, 240 cm, 2.4 m or 94 1/2 in."],
	])("%s is answered in the field's own voice", (text, message) => {
		expect(readLength(text, "mm")).toEqual({ ok: false, message });
	});

	it("beyond its bounds it is answered with the bound, in the unit of the field", () => {
		expect(readLength("5", "mm", { least: 20 })).toEqual({
			ok: false,
			message: "5 is too small: write 20 or more.",
		});
		expect(readLength("12", "cm", { greatest: 101 })).toEqual({
			ok: false,
			message: "12.0 is too large: write 10.1 or less.",
		});
		expect(readLength("20", "mm", { least: 20, greatest: 20 })).toEqual({ ok: true, value: 20 });
	});
});
