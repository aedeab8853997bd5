import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Box, Spot, Stroke } from "../../../packages/app/src/canvas/labels/box.ts";
import { boxesOverlap, strokeEnters } from "../../../packages/app/src/canvas/labels/box.ts";
import { clipLine } from "../../../packages/app/src/canvas/labels/clip.ts";
import { placeLabels, type Wish } from "../../../packages/app/src/canvas/labels/place.ts";
import { between } from "./between.ts";
import { boxesShare, cornersOf, insideBox } from "./overlap.ts";

const size = { width: 700, height: 500 };

const box: fc.Arbitrary<Box> = fc.record({
	left: between(0, 700),
	top: between(0, 500),
	halfWidth: between(4, 70),
	halfHeight: between(4, 20),
	turn: between(-Math.PI, Math.PI),
});

const stroke: fc.Arbitrary<Stroke> = fc.record({
	from: fc.record({ left: fc.integer({ min: 0, max: 700 }), top: fc.integer({ min: 0, max: 500 }) }),
	to: fc.record({ left: fc.integer({ min: 0, max: 700 }), top: fc.integer({ min: 0, max: 500 }) }),
	half: fc.constant(2),
	leader: fc.constant(false),
});

describe("boxes", () => {
	it("overlap where an outline crosses the other or lies in it", () => {
		fc.assert(
			fc.property(box, box, (a, b) => {
				// The oracle shrinks both by a hair, so that boxes that only touch are left open.
				if (boxesShare(a, b, -0.01)) expect(boxesOverlap(a, b)).toBe(true);
				if (!boxesShare(a, b, 0.01)) expect(boxesOverlap(a, b)).toBe(false);
			}),
			{ numRuns: 2000 },
		);
	});

	it("are entered by a stroke that passes through them", () => {
		fc.assert(
			fc.property(box, stroke, (it, line) => {
				const through = Array.from({ length: 400 }, (_, i) => ({
					left: line.from.left + ((line.to.left - line.from.left) * i) / 399,
					top: line.from.top + ((line.to.top - line.from.top) * i) / 399,
				})).some((at) => insideBox(it, at));
				if (through) expect(strokeEnters(it, line)).toBe(true);
			}),
			{ numRuns: 1000 },
		);
	});
});

describe("clipping a line to the screen", () => {
	it("keeps what is on screen of it and nothing else", () => {
		const place = fc.record({ left: fc.integer({ min: -900, max: 1600 }), top: fc.integer({ min: -900, max: 1400 }) });
		fc.assert(
			fc.property(place, place, (from, to) => {
				const seen = clipLine({ from, to }, size, 0);
				const onScreen = Array.from({ length: 301 }, (_, i) => ({
					left: from.left + ((to.left - from.left) * i) / 300,
					top: from.top + ((to.top - from.top) * i) / 300,
				})).filter(({ left, top }) => left > 0 && left < size.width && top > 0 && top < size.height);
				if (onScreen.length > 0) expect(seen).not.toBeNull();
				if (seen === null) return;
				for (const { left, top } of [seen.from, seen.to]) {
					expect(left).toBeGreaterThan(-1e-6);
					expect(left).toBeLessThan(size.width + 1e-6);
					expect(top).toBeGreaterThan(-1e-6);
					expect(top).toBeLessThan(size.height + 1e-6);
				}
				const seenLength = Math.hypot(seen.to.left - seen.from.left, seen.to.top - seen.from.top);
				const sampled = (onScreen.length * Math.hypot(to.left - from.left, to.top - from.top)) / 300;
				expect(Math.abs(seenLength - sampled)).toBeLessThan(12);
			}),
		);
	});
});

describe("placing labels", () => {
	it("never lets a label cover another, what is taken, or the edge, and no line run through a label", () => {
		const wishes = fc.array(
			fc.record({
				importance: fc.integer({ min: 0, max: 9 }),
				spots: fc.array(fc.record({ box, strokes: fc.array(stroke, { maxLength: 2 }) }), {
					minLength: 1,
					maxLength: 6,
				}),
			}),
			{ minLength: 10, maxLength: 30 },
		);
		fc.assert(
			fc.property(
				wishes,
				fc.array(box, { maxLength: 6 }),
				fc.array(stroke, { maxLength: 6 }),
				(labels, boxes, strokes) => {
					const placed = [...placeLabels(labels.map(wishOf), { boxes, strokes }, size, new Map()).values()];
					placed.forEach((label, i) => {
						for (const at of cornersOf(label.box)) {
							expect(at.left).toBeGreaterThanOrEqual(0);
							expect(at.left).toBeLessThanOrEqual(size.width);
							expect(at.top).toBeGreaterThanOrEqual(0);
							expect(at.top).toBeLessThanOrEqual(size.height);
						}
						for (const other of [...boxes, ...placed.slice(i + 1).map((it) => it.box)])
							expect(boxesShare(label.box, other, -0.01)).toBe(false);
						const lines = [...strokes, ...placed.filter((it) => it !== label).flatMap((it) => it.strokes)];
						for (const line of lines) expect(passesThrough(line, label.box)).toBe(false);
					});
				},
			),
			{ numRuns: 200 },
		);
	});

	it("gives way to the more important, and to the better place of the two", () => {
		const at = (left: number): Spot => ({
			box: { left, top: 100, halfWidth: 30, halfHeight: 8, turn: 0 },
			strokes: [],
		});
		const wishes = [
			wishOf({ importance: 1, spots: [at(100)] }, 0),
			wishOf({ importance: 5, spots: [at(110), at(300)] }, 1),
			wishOf({ importance: 3, spots: [at(120), at(310), at(500)] }, 2),
		];
		const placed = placeLabels(wishes, { boxes: [], strokes: [] }, size, new Map());
		expect(placed.get("1")?.box.left).toBe(110);
		expect(placed.get("2")?.box.left).toBe(310);
		expect(placed.has("0")).toBe(false);
	});

	it("stays where it was while that still does", () => {
		const at = (left: number): Spot => ({
			box: { left, top: 100, halfWidth: 30, halfHeight: 8, turn: 0 },
			strokes: [],
		});
		const wish = wishOf({ importance: 1, spots: [at(100), at(300)] }, 0);
		const habits = new Map<string, number>();
		const inTheWay = { boxes: [at(100).box], strokes: [] };
		expect(placeLabels([wish], inTheWay, size, habits).get("0")?.box.left).toBe(300);
		expect(placeLabels([wish], { boxes: [], strokes: [] }, size, habits).get("0")?.box.left).toBe(300);
		expect(placeLabels([wish], { boxes: [], strokes: [] }, size, new Map()).get("0")?.box.left).toBe(100);
	});
});

function wishOf(label: { readonly importance: number; readonly spots: readonly Spot[] }, index: number): Wish<Spot> {
	return { key: String(index), importance: label.importance, spot: (choice) => label.spots[choice] ?? null };
}

function passesThrough({ from, to }: Stroke, it: Box): boolean {
	return Array.from({ length: 200 }, (_, i) => ({
		left: from.left + ((to.left - from.left) * i) / 199,
		top: from.top + ((to.top - from.top) * i) / 199,
	})).some((at) => insideBox(it, at));
}
