import { parseJob, planJob } from "@baywright/setout";
import { describe, expect, test } from "vitest";

/**
 * Widths and cut drops worked out in public sewing guides. A straight track of the finished width, one curtain, no overlap, returns or
 * side turnings, since the guides count none.
 */
const INCH = 25.4;

function cut(width: number, fullness: number, cloth: object, drop: number | null, turnings: number) {
	const read = parseJob({
		format: "baywright-job",
		version: 1,
		cloths: [{ id: "cloth", ...cloth }],
		bays: [
			{
				id: "b",
				corners: [
					[0, 0],
					[5000, 0],
				],
				track: { draw: "left", start: { wall: 0, at: 100 }, end: { wall: 0, at: 100 + width } },
				curtains: [{ cloth: "cloth", fullness, drop }],
				makeUp: { sideTurning: 0, headingTurning: turnings, hemTurning: 0 },
			},
		],
	});
	if (!read.ok) throw new Error(JSON.stringify(read.problems));
	const [curtain] = planJob(read.job)[0]?.curtains ?? [];
	if (curtain === undefined) throw new Error("no curtain");
	return { ...curtain, ...curtain.cutting };
}

describe("widths of cloth and cut drops", () => {
	test("65 in at 2.25 from cloth of 54 in, drop 80 and turnings 16: 3 widths of 96 in, 8 yd (homesteady.com 7849834)", () => {
		const { widths, cutDrop, metres } = cut(65 * INCH, 2.25, { width: 54 * INCH }, 80 * INCH, 16 * INCH);
		expect(widths).toBe(3);
		expect(cutDrop).toBeCloseTo(96 * INCH, 6);
		expect(metres).toBeCloseTo(8 * 0.9144, 6);
	});

	test("180 cm at 2.25 from cloth of 135 cm is exactly 3 widths, not 4 (ehow.co.uk 7849834)", () => {
		expect(cut(1800, 2.25, { width: 1350 }, null, 0).widths).toBe(3);
	});

	test("70 in at 2 from cloth of 54 in: 3 widths (living.thebump.com 6420)", () => {
		expect(cut(70 * INCH, 2, { width: 54 * INCH }, null, 0).widths).toBe(3);
	});

	test("a cut of 96 in with a repeat of 27 takes 108 in (diyideas.com, fabric repeats)", () => {
		const { cutDrop } = cut(65 * INCH, 2.25, { width: 54 * INCH, repeat: 27 * INCH }, 80 * INCH, 16 * INCH);
		expect(cutDrop).toBeCloseTo(108 * INCH, 6);
	});

	// By hand: 96 in is 3.56 repeats of 27; half a repeat on the next width begins at 4.5, so 121.5 in each (common practice, no source).
	test("with a half drop the next width begins half a repeat on", () => {
		const half = { width: 54 * INCH, repeat: 27 * INCH, match: "half-drop" };
		expect(cut(65 * INCH, 2.25, half, 80 * INCH, 16 * INCH).cutDrop).toBeCloseTo(121.5 * INCH, 6);
	});

	// 3 × 1350 wide and 2.4 m long: 9.72 m² of 400 g/m².
	test("the mass is that of the widths cut", () => {
		expect(cut(1800, 2.25, { width: 1350, mass: 400 }, 2200, 200).mass).toBeCloseTo(3.888, 9);
		expect(cut(1800, 2.25, { width: 1350 }, 2200, 200).mass).toBeNull();
	});
});
