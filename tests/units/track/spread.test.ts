import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	contains,
	fillSpan,
	type Interval,
	nearestAllowed,
	type Span,
	subtract,
} from "../../../packages/setout/src/track/spread.ts";
import { spreadApart } from "../../../packages/setout/src/track/spread-apart.ts";
import { fewestByProgramme, type GridSpan, leastGapOnGrid } from "../../oracles/bracket-programme.ts";

const SEED = 20240611;
const EVERYWHERE: readonly Interval[] = [[-1e6, 1e6]];
/** mm; what `fillSpan` promises on a gap. */
const TOLERANCE = 1e-6;

function gapsOf(span: Span, places: readonly number[]): number[] {
	const all = [span.from, ...places, span.to];
	return all.slice(1).map((at, index) => at - (all[index] as number));
}

describe("an unobstructed span", () => {
	test.each([
		{ length: 500, spacing: 500, count: 0 },
		{ length: 501, spacing: 500, count: 1 },
		{ length: 1000, spacing: 500, count: 1 },
		{ length: 1500.3, spacing: 500.1, count: 2 },
		{ length: 3400, spacing: 450, count: 7 },
		{ length: 30_000, spacing: 400, count: 74 },
	])("of $length at $spacing takes $count brackets at equal gaps", ({ length, spacing, count }) => {
		const span: Span = { from: 87.3, to: 87.3 + length, spacing, allowed: EVERYWHERE, least: 40 };
		const filling = fillSpan(span);
		expect(filling.ok).toBe(true);
		expect(filling.blocked).toBeNull();
		expect(filling.places).toHaveLength(count);
		for (const gap of gapsOf(span, filling.places))
			expect(Math.abs(gap - length / (count + 1))).toBeLessThan(TOLERANCE);
	});
});

describe("forbidden stretches", () => {
	test("a bracket in a forbidden middle goes to its left side, and the greatest gap is the least possible", () => {
		const allowed = subtract(EVERYWHERE, [[380, 420]]);
		const filling = fillSpan({ from: 0, to: 800, spacing: 500, allowed, least: 40 });
		expect(filling.places).toEqual([380]);
		expect(filling.widest).toBe(420);
	});

	test("what is not forced is spread evenly", () => {
		// Forced: 100 and 600 stand at the two sides of the obstacle. The 1200 beyond needs two more, at 400 each.
		const allowed = subtract(EVERYWHERE, [[100, 600]]);
		const filling = fillSpan({ from: 0, to: 1800, spacing: 500, allowed, least: 40 });
		expect(filling.ok).toBe(true);
		expect(filling.widest).toBe(500);
		expect(filling.places.map((at) => Math.round(at * 1e6) / 1e6)).toEqual([100, 600, 1000, 1400]);
	});

	test("a stretch longer than the spacing gets a bracket at each side and is named", () => {
		const allowed = subtract(EVERYWHERE, [[700, 1500]]);
		const filling = fillSpan({ from: 0, to: 2400, spacing: 500, allowed, least: 40 });
		expect(filling).toEqual({ places: [350, 700, 1500, 1950], widest: 800, ok: false, blocked: [700, 1500] });
	});

	test("of two such stretches the longer is named", () => {
		const allowed = subtract(EVERYWHERE, [
			[300, 900],
			[1000, 1700],
		]);
		const filling = fillSpan({ from: 0, to: 2000, spacing: 500, allowed, least: 40 });
		expect(filling).toEqual({ places: [300, 900, 1000, 1700], widest: 700, ok: false, blocked: [1000, 1700] });
	});

	test("nothing is placed where nothing is allowed", () => {
		const filling = fillSpan({ from: 0, to: 900, spacing: 500, allowed: [], least: 40 });
		expect(filling).toEqual({ places: [], widest: 900, ok: false, blocked: [0, 900] });
	});

	test("brackets never stand nearer than the least distance, even where that takes a bigger gap", () => {
		// Without a least distance 60, 140, 220 would do with gaps of 80 at most, but 220 is too near the end.
		const allowed = [30, 40, 60, 80, 120, 140, 180, 220, 250, 260].map((at): Interval => [at, at]);
		const filling = fillSpan({ from: 0, to: 270, spacing: 90, allowed, least: 60 });
		expect(filling).toEqual({ places: [60, 120, 180], widest: 90, ok: true, blocked: null });
	});

	test("a span too short for the least distance says so without a stretch", () => {
		const filling = fillSpan({ from: 0, to: 600, spacing: 500, allowed: EVERYWHERE, least: 350 });
		expect(filling).toEqual({ places: [], widest: 600, ok: false, blocked: null });
	});

	test("a spacing of nothing is a broken invariant", () => {
		expect(() => fillSpan({ from: 0, to: 600, spacing: 0, allowed: EVERYWHERE, least: 0 })).toThrow(/no span/);
	});
});

/** Spans on a 10 mm grid, with up to six forbidden stretches. */
const barredGrid = (longest: number) =>
	fc
		.record({
			end: fc.integer({ min: 2, max: longest }),
			spacing: fc.integer({ min: 5, max: 60 }),
			least: fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 12 })),
			bars: fc.array(fc.tuple(fc.integer({ min: 0, max: longest }), fc.integer({ min: 1, max: 30 })), { maxLength: 6 }),
		})
		.map(({ end, spacing, least, bars }) => {
			const forbidden = bars.map(([from, length]): Interval => [from * 10, (from + length) * 10]);
			return onGrid(end, spacing, least, subtract([[-500, longest * 10 + 500]], forbidden));
		});

/** Spans on a 10 mm grid with a few single places, close enough together for the least distance to matter. */
const loneGrid = fc
	.record({
		end: fc.integer({ min: 15, max: 45 }),
		spacing: fc.integer({ min: 5, max: 16 }),
		nearness: fc.double({ min: 0.3, max: 1, noNaN: true }),
		at: fc.uniqueArray(fc.integer({ min: 1, max: 44 }), { minLength: 4, maxLength: 16 }),
	})
	.map(({ end, spacing, nearness, at }) => {
		const allowed = at.sort((a, b) => a - b).map((place): Interval => [place * 10, place * 10]);
		return onGrid(end, spacing, Math.floor(spacing * nearness), allowed);
	});

function onGrid(end: number, spacing: number, least: number, allowed: readonly Interval[]) {
	const free = Array.from({ length: end + 1 }, (_, at) =>
		allowed.some(([from, to]) => from <= at * 10 && at * 10 <= to),
	);
	const span: Span = { from: 0, to: end * 10, spacing: spacing * 10, least: least * 10, allowed };
	const grid: GridSpan = { end, spacing, least, free };
	return { span, grid };
}

/** Real-valued spans with forbidden stretches. */
const spans = fc
	.record({
		from: fc.double({ min: -500, max: 500, noNaN: true }),
		length: fc.double({ min: 1, max: 9000, noNaN: true }),
		spacing: fc.double({ min: 100, max: 800, noNaN: true }),
		least: fc.double({ min: 0, max: 99, noNaN: true }),
		bars: fc.array(
			fc.tuple(fc.double({ min: -200, max: 9000, noNaN: true }), fc.double({ min: 1, max: 900, noNaN: true })),
			{ maxLength: 12 },
		),
	})
	.map(({ from, length, spacing, least, bars }): Span => {
		const forbidden = bars.map(([start, extent]): Interval => [from + start, from + start + extent]);
		return { from, to: from + length, spacing, least, allowed: subtract([[from - 900, from + 9900]], forbidden) };
	});

describe.each([
	{ name: "forbidden stretches", spans: barredGrid(140), longer: barredGrid(250), runs: 400 },
	{ name: "single places", spans: loneGrid, longer: loneGrid, runs: 2000 },
])("against other methods, on a 10 mm grid with $name", ({ spans, longer, runs }) => {
	test("the count is that of an integer programme", () => {
		const counts = new Set<number | null>();
		fc.assert(
			fc.property(spans, ({ span, grid }) => {
				const filling = fillSpan(span);
				const fewest = fewestByProgramme(grid);
				counts.add(fewest);
				expect(filling.ok ? filling.places.length : null).toBe(fewest);
			}),
			{ seed: SEED, numRuns: runs },
		);
		// The spans tried must have included impossible ones and several counts.
		expect(counts.has(null)).toBe(true);
		expect(counts.size).toBeGreaterThan(5);
	});

	test("the greatest gap is the least that any places on the grid give, or up to a grid step better", () => {
		let filled = 0;
		fc.assert(
			fc.property(longer, ({ span, grid }) => {
				const filling = fillSpan(span);
				if (!filling.ok || filling.places.length === 0) return;
				filled++;
				const gridGap = leastGapOnGrid(grid, filling.places.length) * 10;
				expect(filling.widest).toBeLessThanOrEqual(gridGap + TOLERANCE);
				expect(filling.widest).toBeGreaterThanOrEqual(gridGap - 10);
			}),
			{ seed: SEED, numRuns: 3000 },
		);
		expect(filled).toBeGreaterThan(300);
	});
});

test("carrying along all places that each bracket can have gives the same on single places as trying them all", () => {
	let filled = 0;
	fc.assert(
		fc.property(loneGrid, ({ span, grid }) => {
			if (span.to <= span.spacing) return;
			const fewest = fewestByProgramme(grid);
			const spread = spreadApart(span, span.spacing);
			expect(spread.ok ? spread.places.length : null).toBe(fewest);
			if (!spread.ok) return;
			filled++;
			// Every gap lies between places on the grid, so the two agree but for rounding.
			const gap = Math.max(...gapsOf(span, spread.places));
			expect(Math.abs(gap - leastGapOnGrid(grid, spread.places.length) * 10)).toBeLessThan(TOLERANCE);
			expect(Math.min(...gapsOf(span, spread.places))).toBeGreaterThanOrEqual(span.least);
		}),
		{ seed: SEED, numRuns: 2000 },
	);
	expect(filled).toBeGreaterThan(200);
});

describe("whatever the span", () => {
	test("places are allowed, in order, apart, and the answer tells the truth about them", () => {
		fc.assert(
			fc.property(spans, (span) => {
				const filling = fillSpan(span);
				const gaps = gapsOf(span, filling.places);
				for (const at of filling.places) expect(contains(span.allowed, at)).toBe(true);
				if (filling.places.length > 0) {
					expect(Math.min(...gaps)).toBeGreaterThanOrEqual(span.least - 2 * TOLERANCE);
					expect(Math.min(...gaps)).toBeGreaterThan(0);
				}
				expect(filling.widest).toBe(Math.max(...gaps));
				expect(filling.ok).toBe(filling.widest <= span.spacing + 2 * TOLERANCE);
				if (filling.ok) expect(filling.blocked).toBeNull();
				if (filling.blocked !== null) {
					const [from, to] = filling.blocked;
					expect(from >= span.from && to <= span.to && from < to).toBe(true);
					expect(nearestAllowed(span.allowed, (from + to) / 2, from + 1e-9, to - 1e-9)).toBeNull();
				}
			}),
			{ seed: SEED, numRuns: 3000 },
		);
	});

	test("the span seen from its other end takes as many brackets with the same greatest gap", () => {
		fc.assert(
			fc.property(spans, (span) => {
				const allowed = span.allowed.map(([a, b]): Interval => [-b, -a]).reverse();
				const other = fillSpan({ ...span, from: -span.to, to: -span.from, allowed });
				const one = fillSpan(span);
				expect(other.ok).toBe(one.ok);
				if (!one.ok) return;
				expect(other.places).toHaveLength(one.places.length);
				expect(Math.abs(other.widest - one.widest)).toBeLessThan(TOLERANCE);
			}),
			{ seed: SEED, numRuns: 2000 },
		);
	});

	test("one obstacle in the very middle leaves a symmetric spread of an even count", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 900, max: 6000, noNaN: true }),
				fc.double({ min: 1, max: 240, noNaN: true }),
				(length, half) => {
					const allowed = subtract(EVERYWHERE, [[-half, half]]);
					const filling = fillSpan({ from: -length / 2, to: length / 2, spacing: 500, allowed, least: 1 });
					if (filling.places.length % 2 === 1) return;
					filling.places.forEach((at, index) => {
						expect(Math.abs(at + (filling.places.at(-1 - index) as number))).toBeLessThan(TOLERANCE);
					});
				},
			),
			{ seed: SEED, numRuns: 1000 },
		);
	});

	test("no bracket between two others could be nudged to make its two gaps more even, unless that is forbidden", () => {
		fc.assert(
			fc.property(spans, (span) => {
				const { ok, places } = fillSpan({ ...span, least: 0 });
				if (!ok) return;
				const all = [span.from, ...places, span.to];
				for (let index = 1; index + 1 < all.length; index++) {
					const [before, at, after] = all.slice(index - 1, index + 2) as [number, number, number];
					const toward = Math.sign((before + after) / 2 - at);
					if (Math.abs((before + after) / 2 - at) < 1e-4) continue;
					expect(contains(span.allowed, at + toward * 1e-5)).toBe(false);
				}
			}),
			{ seed: SEED, numRuns: 2000 },
		);
	});
});

describe("sets of intervals", () => {
	test("subtracting keeps the ends of what is forbidden, drops lone points, minds no order", () => {
		expect(
			subtract(
				[
					[0, 100],
					[200, 300],
				],
				[
					[250, 400],
					[0, 20],
					[40, 60],
					[50, 70],
					[70, 80],
				],
			),
		).toEqual([
			[20, 40],
			[80, 100],
			[200, 250],
		]);
		expect(subtract([[50, 50]], [[40, 60]])).toEqual([]);
		expect(subtract([[50, 50]], [[50, 60]])).toEqual([[50, 50]]);
	});

	test("the nearest place is never outside the limits; of two the left one", () => {
		const allowed: Interval[] = [
			[0, 10],
			[30, 40],
		];
		expect(nearestAllowed(allowed, 20, 0, 40)).toBe(10);
		expect(nearestAllowed(allowed, 21, 0, 40)).toBe(30);
		expect(nearestAllowed(allowed, 21, 0, 25)).toBe(10);
		expect(nearestAllowed(allowed, 5, 32, 35)).toBe(32);
		expect(nearestAllowed(allowed, 20, 11, 29)).toBeNull();
		expect(nearestAllowed(allowed, 20, 30, 10)).toBeNull();
	});

	test("subtracting agrees with asking place by place", () => {
		const sets = fc.array(fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 1, max: 20 })), { maxLength: 5 });
		fc.assert(
			fc.property(sets, fc.integer({ min: 0, max: 80 }), (bars, at) => {
				const left = subtract(
					[[10, 70]],
					bars.map(([from, length]): Interval => [from, from + length]),
				);
				const x = at + 0.5;
				const free = x > 10 && x < 70 && !bars.some(([from, length]) => from < x && x < from + length);
				expect(contains(left, x)).toBe(free);
			}),
			{ seed: SEED, numRuns: 1000 },
		);
	});
});
