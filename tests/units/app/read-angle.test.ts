import { describe, expect, it } from "vitest";
import { readAngle } from "../../../packages/app/src/fields/read-angle.ts";

describe("a typed angle", () => {
	it.each([
		["135", 135],
		["133.4°", 133.4],
		["92,5 deg", 92.5],
		[" 90 degrees ", 90],
	])("%s is read", (text, value) => {
		expect(readAngle(text, 340)).toEqual({ ok: true, value });
	});

	it.each(["", "square", "90 mm", "1e2", "19.9", "341", "-90"])("%s is refused by name", (text) => {
		const reading = readAngle(text, 340);
		expect(reading.ok).toBe(false);
		if (!reading.ok) expect(reading.message).toContain(text);
	});
});
