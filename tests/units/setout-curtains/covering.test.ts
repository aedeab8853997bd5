import { clearOf, positionOf } from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { planOf, track } from "./curtain-bay.ts";

const window = (from: number, to: number, more: object = {}) => ({ wall: 0, from, to, sill: 800, head: 2000, ...more });

/** A pair on a straight wall of 5000 with 320 of stack at either end (2000 × 2 × 80 mm/m), 2200 above the floor. */
const plan = (bay: object, curtain: object = {}) =>
	planOf({ track: track(500, 4500, { height: 2200 }), curtains: [curtain], makeUp: { overlap: 0 }, ...bay });

describe("glass left clear, and light lost", () => {
	test("drawn nothing is clear, open all but what the stacks cover", () => {
		// Openings 500–1500 and 2000–4000: the left stack stands at 500–820, the right one at 4180–4500 beyond the glass.
		const { glass } = plan({ openings: [window(500, 1500), window(2000, 4000)] });
		expect(glass).toMatchObject({ total: 3000, clearOpen: 2680, clearDrawn: 0 });
		expect(glass.openings.map(({ clearOpen }) => clearOpen)).toEqual([expect.closeTo(680, 9), 2000]);
		expect(glass.lostOpen).toBeCloseTo(320 / 3000, 9);
		expect(glass.lostDrawn).toBeCloseTo(1, 9);
	});

	test("a short curtain takes the light as far down as it hangs", () => {
		// Glass from 800 to 2000; a drop of 800 from 2200 hangs down to 1400: half of it.
		expect(plan({ openings: [window(1500, 3500)] }, { drop: 800 }).glass.lostDrawn).toBeCloseTo(0.5, 9);
	});

	test("a tall opening counts for more than a low one of the same width", () => {
		// 1000 × 1200 behind the stack of 320 and 1000 × 600 free: 320 × 1200 of 1 800 000 mm².
		const { glass } = plan({ openings: [window(500, 1500), window(2500, 3500, { sill: 1400 })] });
		expect(glass.lostOpen).toBeCloseTo((320 * 1200) / 1_800_000, 9);
	});

	test("anywhere between, from the plan alone", () => {
		const { glass, curtains } = plan({ openings: [window(1500, 3500)] });
		const [opening] = glass.openings;
		if (opening === undefined) throw new Error("no glass");
		const half = curtains.map((curtain) => positionOf(curtain, 0.5));
		// Leading edges at 1160 from either end of the track, so at 1660 and 3340 along the wall.
		expect(clearOf(opening, half)).toBeCloseTo(1680, 9);
	});

	test("of an opening that the track passes only in part, the rest stays clear", () => {
		// Glass 0–1500, track from 500: 1000 behind it drawn, 320 open.
		const { glass } = plan({ openings: [window(0, 1500)] });
		expect(glass.clearDrawn).toBeCloseTo(500, 9);
		expect(glass.clearOpen).toBeCloseTo(1180, 9);
		expect(glass.lostDrawn).toBeCloseTo(1000 / 1500, 9);
		expect(plan({ openings: [window(0, 400)] }).glass).toMatchObject({ clearDrawn: 400, lostDrawn: 0 });
	});

	test("curtains that overlap cover once", () => {
		const opening = { width: 1000, passed: 1000, stretch: { from: 0, to: 1000 } };
		expect(
			clearOf(opening, [
				{ from: 0, to: 600 },
				{ from: 400, to: 700 },
			]),
		).toBeCloseTo(300, 9);
	});
});

describe("obstacles behind the curtains", () => {
	const socket = (from: number, more: object = {}) => ({
		kind: "socket",
		wall: 0,
		from,
		to: from + 100,
		bottom: 400,
		top: 500,
		...more,
	});

	test("covered open and drawn, in whole and in part", () => {
		const { covered } = plan({ obstacles: [socket(600), socket(770), socket(2500), socket(4600)] });
		expect(covered).toEqual([
			{ obstacle: 0, open: 1, drawn: 1 },
			// The stack ends at 820.
			{ obstacle: 1, open: expect.closeTo(0.5, 9), drawn: 1 },
			{ obstacle: 2, open: 0, drawn: 1 },
		]);
	});

	test("not by a curtain that ends above it, nor where it is above the track", () => {
		expect(plan({ obstacles: [socket(600)] }, { drop: 1600 }).covered).toEqual([]);
		expect(plan({ obstacles: [socket(600)] }, { drop: 1750 }).covered).toHaveLength(1);
		expect(plan({ obstacles: [socket(600, { bottom: 2300, top: 2400 })] }).covered).toEqual([]);
	});
});
