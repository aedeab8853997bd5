import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hatchLines } from "../../../packages/app/src/canvas/hatch.ts";
import type { ScreenPoint } from "../../../packages/editor/src/viewport.ts";
import { between } from "./between.ts";

const window = { width: 1000, height: 800 };

describe("hatch", () => {
	it("crosses a square from side to side at its spacing", () => {
		const square = [
			{ left: 100, top: 100 },
			{ left: 200, top: 100 },
			{ left: 200, top: 200 },
			{ left: 100, top: 200 },
		];
		const lines = hatchLines(square, { spacing: 10, angle: 0, anchor: { left: 0, top: 5 } }, window);
		expect(lines.length).toBe(10 * 4);
		expect(lines.slice(0, 4)).toEqual([100, 105, 200, 105]);
		expect(lines.slice(-4)).toEqual([100, 195, 200, 195]);
	});

	it("is hatched for as much of a polygon as the polygon is large", () => {
		fc.assert(
			fc.property(fc.array(between(60, 300), { minLength: 3, maxLength: 9 }), between(0, Math.PI), (radii, angle) => {
				const star = radii.map((radius, i) => {
					const turn = (2 * Math.PI * i) / radii.length;
					return { left: 500 + radius * Math.cos(turn), top: 400 + radius * Math.sin(turn) };
				});
				const spacing = 0.5;
				const lines = hatchLines(star, { spacing, angle, anchor: { left: 3, top: 7 } }, window);
				let length = 0;
				for (let i = 0; i < lines.length; i += 4) {
					const [a, b, c, d] = lines.slice(i, i + 4) as [number, number, number, number];
					length += Math.hypot(c - a, d - b);
					// From above: the line lies along the hatch's direction.
					expect(Math.abs((d - b) * Math.cos(angle) - (c - a) * Math.sin(angle))).toBeLessThan(1e-6);
				}
				const area = Math.abs(shoelace(star));
				expect(Math.abs(length * spacing - area) / area).toBeLessThan(0.02);
			}),
			{ numRuns: 60 },
		);
	});

	it("makes no lines beyond the window, however large the polygon", () => {
		const huge = [
			{ left: -1e7, top: -1e7 },
			{ left: 1e7, top: -1e7 },
			{ left: 1e7, top: 1e7 },
			{ left: -1e7, top: 1e7 },
		];
		const lines = hatchLines(huge, { spacing: 8, angle: Math.PI / 4, anchor: { left: 0, top: 0 } }, window);
		expect(lines.length / 4).toBeLessThan((window.width + window.height) / 8 + 2);
	});

	it("has nothing to hatch in a polygon off the window", () => {
		const away = [
			{ left: 5000, top: 5000 },
			{ left: 5100, top: 5000 },
			{ left: 5000, top: 5100 },
		];
		expect(hatchLines(away, { spacing: 8, angle: 0, anchor: { left: 0, top: 0 } }, window)).toEqual([]);
	});
});

function shoelace(polygon: readonly ScreenPoint[]): number {
	return polygon.reduce((sum, a, i) => {
		const b = polygon[(i + 1) % polygon.length] as ScreenPoint;
		return sum + (a.left * b.top - b.left * a.top) / 2;
	}, 0);
}
