import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type FitMark, fitView, isInView } from "../../../packages/app/src/canvas/fit.ts";
import { GREATEST_SCALE, toScreen, type Viewport } from "../../../packages/editor/src/viewport.ts";

const MARGIN = 14;
const size = { width: 900, height: 560 };

const mark: fc.Arbitrary<FitMark> = fc.record({
	at: fc.record({ x: fc.integer({ min: -20_000, max: 20_000 }), y: fc.integer({ min: -20_000, max: 20_000 }) }),
	right: fc.integer({ min: -60, max: 60 }),
	down: fc.integer({ min: -60, max: 60 }),
	round: fc.integer({ min: 0, max: 30 }),
});

/** px by which bisection may fall short. */
const SLACK = 0.01;

function overhang(view: Viewport, marks: readonly FitMark[]): number {
	return Math.max(
		...marks.flatMap(({ at, right, down, round }) => {
			const { left, top } = toScreen(view, at);
			return [
				MARGIN - (left + right - round),
				left + right + round - (size.width - MARGIN),
				MARGIN - (top + down - round),
				top + down + round - (size.height - MARGIN),
			];
		}),
	);
}

describe("fitting the view", () => {
	it("shows everything, labels outside the walls included, and no smaller than it must be", () => {
		fc.assert(
			fc.property(fc.array(mark, { minLength: 2, maxLength: 12 }), (marks) => {
				const view = fitView(marks, size, MARGIN);
				expect(overhang(view, marks)).toBeLessThan(SLACK);
				if (view.scale >= GREATEST_SCALE * 0.999) return;
				const closer = marks.map((it) => toScreen({ scale: view.scale * 1.01, left: 0, top: 0 }, it.at));
				const width = spread(marks.map(({ right, round }, i) => [(closer[i]?.left ?? 0) + right, round]));
				const height = spread(marks.map(({ down, round }, i) => [(closer[i]?.top ?? 0) + down, round]));
				expect(width > size.width - 2 * MARGIN || height > size.height - 2 * MARGIN).toBe(true);
			}),
		);
	});

	it("tells whether everything is in view: a pixel beyond any edge is not", () => {
		const view = { scale: 0.5, left: 100, top: 200 };
		// On screen at (100, 200), 20 px to the right and 10 down, 5 px round.
		const at = { at: { x: 0, y: 0 }, right: 20, down: 10, round: 5 };
		const just = { width: 125, height: 215 };
		expect(isInView([at], view, just)).toBe(true);
		expect(isInView([at], view, { ...just, width: 124 })).toBe(false);
		expect(isInView([at], view, { ...just, height: 214 })).toBe(false);
		expect(isInView([at], { ...view, left: -15 }, just)).toBe(true);
		expect(isInView([at], { ...view, left: -16 }, just)).toBe(false);
		expect(isInView([at], { ...view, top: -5 }, just)).toBe(true);
		expect(isInView([at], { ...view, top: -6 }, just)).toBe(false);
	});

	it("does not zoom without end into a single point", () => {
		const view = fitView([{ at: { x: 5, y: 5 }, right: 0, down: 0, round: 3 }], size, MARGIN);
		expect(view.scale).toBeCloseTo(GREATEST_SCALE, 6);
		expect(toScreen(view, { x: 5, y: 5 }).left).toBeCloseTo(450, 6);
	});
});

function spread(places: readonly (readonly [middle: number, round: number])[]): number {
	return (
		Math.max(...places.map(([middle, round]) => middle + round)) -
		Math.min(...places.map(([middle, round]) => middle - round))
	);
}
