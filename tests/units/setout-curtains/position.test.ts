import { openedAt, positionOf } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planOf, track } from "./curtain-bay.ts";

const SEED = 4107;

/** A pair on 4000 mm: each half 2000, stacks of 2000 × 2 × 80 mm/m = 320 (no overlap, so that flat cloth is twice the track). */
const [left, right] = planOf({ track: track(0, 4000), curtains: [{}], makeUp: { overlap: 0 } }).curtains;
if (left === undefined || right === undefined) throw new Error("no pair");

describe("a curtain between drawn and drawn back", () => {
	test("drawn it covers its stretch, drawn back its stack", () => {
		expect(positionOf(left, 0)).toMatchObject({ from: 0, to: 2000, leading: 2000 });
		expect(positionOf(left, 1)).toMatchObject({ from: 0, to: 320, leading: 320 });
		expect(positionOf(right, 0)).toMatchObject({ from: 2000, to: 4000, leading: 2000 });
		expect(positionOf(right, 1)).toMatchObject({ from: 3680, to: 4000, leading: 3680 });
	});

	test("half-way its leading edge is half-way, and its folds are deeper", () => {
		const half = positionOf(left, 0.5);
		expect(half).toMatchObject({ from: 0, to: 1160, leading: 1160 });
		// Zigzags of 200 mm of cloth over 58 mm of track: √(200² − 58²) = 191.4; drawn √(200² − 100²) = 173.2.
		expect(half.foldDepth).toBeCloseTo(191.4, 1);
		expect(positionOf(left, 0).foldDepth).toBeCloseTo(173.2, 1);
	});

	test("the stack stays at its own end all the way, and the share is found again from the leading edge", () => {
		fc.assert(
			fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.constantFrom(left, right), (opened, curtain) => {
				const { from, to, leading } = positionOf(curtain, opened);
				expect(curtain.side === "left" ? from : to).toBe(curtain.side === "left" ? curtain.from : curtain.to);
				expect(openedAt(curtain, leading)).toBeCloseTo(opened, 9);
			}),
			{ seed: SEED, numRuns: 60 },
		);
	});

	test("past either end it stays there", () => {
		expect(positionOf(left, 7)).toEqual(positionOf(left, 1));
		expect(openedAt(left, -50)).toBe(1);
		expect(openedAt(left, 3000)).toBe(0);
	});
});
