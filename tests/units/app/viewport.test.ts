import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
	centreOn,
	GREATEST_SCALE,
	keptInSight,
	LEAST_SCALE,
	panBy,
	pinch,
	type ScreenPoint,
	scaleText,
	toPlan,
	toScreen,
	type Viewport,
	zoomAt,
} from "../../../packages/editor/src/viewport.ts";
import { between } from "./between.ts";

const screenPoint = fc.record({
	left: between(-50, 2000),
	top: between(-50, 1500),
});
const viewport: fc.Arbitrary<Viewport> = fc.record({
	scale: between(0.01, 2),
	left: between(-3000, 3000),
	top: between(-3000, 3000),
});

/** px: far below what is seen, far above rounding at these sizes. */
const SAME_PLACE = 1e-6;

function expectSame(a: ScreenPoint, b: ScreenPoint): void {
	expect(Math.hypot(a.left - b.left, a.top - b.top)).toBeLessThan(SAME_PLACE);
}

describe("viewport", () => {
	it("puts y up on the plan and down on screen", () => {
		const view = { scale: 0.5, left: 100, top: 400 };
		expect(toScreen(view, { x: 0, y: 0 })).toEqual({ left: 100, top: 400 });
		expect(toScreen(view, { x: 200, y: 300 })).toEqual({ left: 200, top: 250 });
		expect(toPlan(view, { left: 200, top: 250 })).toEqual({ x: 200, y: 300 });
	});

	it("comes back from screen to the same place on screen", () => {
		fc.assert(
			fc.property(viewport, screenPoint, (view, at) => {
				expectSame(toScreen(view, toPlan(view, at)), at);
			}),
		);
	});

	it("keeps the plan's point under the pointer while zooming", () => {
		fc.assert(
			fc.property(viewport, screenPoint, between(0.2, 5), (view, at, factor) => {
				expectSame(toScreen(zoomAt(view, at, factor), toPlan(view, at)), at);
			}),
		);
	});

	it("keeps the point under the pointer at the limits of zooming too", () => {
		const at = { left: 321, top: 123 };
		const view = { scale: 1, left: 10, top: 20 };
		for (const [factor, scale] of [
			[1e9, GREATEST_SCALE],
			[1e-9, LEAST_SCALE],
		] as const) {
			const zoomed = zoomAt(view, at, factor);
			expect(zoomed.scale).toBe(scale);
			expectSame(toScreen(zoomed, toPlan(view, at)), at);
		}
	});

	it("keeps both fingers on what they took hold of while they go apart, together and along", () => {
		fc.assert(
			fc.property(
				viewport,
				screenPoint,
				between(30, 400),
				between(0, 2 * Math.PI),
				screenPoint,
				between(0.5, 2),
				(view, middle, apart, angle, nextMiddle, factor) => {
					const fingers = (centre: ScreenPoint, half: number): [ScreenPoint, ScreenPoint] => [
						{ left: centre.left - half * Math.cos(angle), top: centre.top - half * Math.sin(angle) },
						{ left: centre.left + half * Math.cos(angle), top: centre.top + half * Math.sin(angle) },
					];
					const from = fingers(middle, apart / 2);
					const to = fingers(nextMiddle, (apart / 2) * factor);
					const next = pinch(view, from, to);
					expectSame(toScreen(next, toPlan(view, from[0])), to[0]);
					expectSame(toScreen(next, toPlan(view, from[1])), to[1]);
				},
			),
		);
	});

	it("takes two fingers at one place as a pan", () => {
		const at = { left: 50, top: 60 };
		const next = pinch(
			{ scale: 1, left: 0, top: 0 },
			[at, at],
			[
				{ left: 70, top: 65 },
				{ left: 70, top: 65 },
			],
		);
		expect(next).toEqual({ scale: 1, left: 20, top: 5 });
	});

	it("pans by px and centres on a place", () => {
		expect(panBy({ scale: 2, left: 1, top: 2 }, 10, -4)).toEqual({ scale: 2, left: 11, top: -2 });
		const view = centreOn({ scale: 0.3, left: 5, top: 7 }, { x: 1000, y: -400 }, { width: 800, height: 600 });
		expectSame(toScreen(view, { x: 1000, y: -400 }), { left: 400, top: 300 });
	});

	it("says the scale as on paper, an inch of screen being 96 px", () => {
		const at = (scale: number) => scaleText({ scale, left: 0, top: 0 });
		const full = 96 / 25.4;
		expect(at(full / 8)).toBe("1 : 8");
		expect(at(full / 2.5)).toBe("1 : 2.5");
		expect(at(full / 41.3)).toBe("1 : 41");
		expect(at(full)).toBe("1 : 1");
		expect(at(2 * full)).toBe("2 : 1");
	});

	it("keeps some of what is drawn in sight, and leaves alone what is", () => {
		const size = { width: 1000, height: 700 };
		const box = { left: -200, right: 1800, bottom: 0, top: 900 };
		fc.assert(
			fc.property(viewport, (view) => {
				const kept = keptInSight(view, box, size);
				const from = toScreen(kept, { x: box.left, y: box.top });
				const to = toScreen(kept, { x: box.right, y: box.bottom });
				expect(to.left).toBeGreaterThan(60 - SAME_PLACE);
				expect(from.left).toBeLessThan(1000 - 60 + SAME_PLACE);
				expect(to.top).toBeGreaterThan(60 - SAME_PLACE);
				expect(from.top).toBeLessThan(700 - 60 + SAME_PLACE);
				expectSame(keptInSight(kept, box, size), kept);
			}),
			{ seed: 2611 },
		);
		const seen = { scale: 0.3, left: 200, top: 500 };
		expect(keptInSight(seen, box, size)).toEqual(seen);
	});
});
