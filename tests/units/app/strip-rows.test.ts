import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { standInRows } from "../../../packages/app/src/strip/rows.ts";
import { spreadRow, type Wanted } from "../../../packages/app/src/strip/spread.ts";
import { between } from "./between.ts";

const GAP = 7;

const wanted: fc.Arbitrary<Wanted[]> = fc
	.array(
		fc.record({
			want: between(0, 1000),
			half: between(3, 30),
		}),
		{ minLength: 1, maxLength: 40 },
	)
	.map((items) => items.sort((a, b) => a.want - b.want));

const cost = (items: readonly Wanted[], middles: readonly number[]) =>
	items.reduce((sum, { want }, i) => sum + (want - (middles[i] as number)) ** 2, 0);

describe("labels in one row", () => {
	it("stay in order, apart and within, as near to their marks as least squares can bring them", () => {
		fc.assert(
			fc.property(wanted, fc.array(between(-1, 1), { minLength: 40, maxLength: 40 }), (items, nudge) => {
				const middles = spreadRow(items, 0, 1000, GAP);
				const need = items.reduce((sum, { half }) => sum + 2 * half, 0) + GAP * (items.length - 1);
				expect(middles === null).toBe(need > 1000);
				if (middles === null) return;
				expect(isRow(items, middles, 1e-6)).toBe(true);
				// The least of a convex cost: no other row near by or half-way to anywhere allowed costs less.
				for (const size of [0.01, 1, 20]) {
					const other = middles.map((middle, i) => middle + size * (nudge[i] as number));
					if (isRow(items, other, 0)) expect(cost(items, other)).toBeGreaterThan(cost(items, middles) - 1e-6);
				}
				const shift = (by: number) => middles.map((middle) => middle + by);
				for (const by of [-1, 1])
					if (isRow(items, shift(by), 0)) expect(cost(items, shift(by))).toBeGreaterThan(cost(items, middles) - 1e-6);
			}),
			{ numRuns: 500 },
		);
	});

	it("leave labels at their marks where there is room, and part two equally where there is not", () => {
		expect(
			spreadRow(
				[
					{ want: 100, half: 10 },
					{ want: 300, half: 10 },
				],
				0,
				400,
				GAP,
			),
		).toEqual([100, 300]);
		const [a, b] = spreadRow(
			[
				{ want: 200, half: 10 },
				{ want: 200, half: 10 },
			],
			0,
			400,
			GAP,
		) as [number, number];
		expect(a).toBeCloseTo(186.5, 9);
		expect(b).toBeCloseTo(213.5, 9);
		expect(spreadRow([{ want: 2, half: 10 }], 0, 400, GAP)).toEqual([10]);
		expect(spreadRow([], 0, 400, GAP)).toEqual([]);
	});
});

describe("labels in rows", () => {
	const items = wanted.map((all) => all.map((item, i) => ({ ...item, importance: i % 3 })));

	it("never touch, and their leaders run between labels without crossing", () => {
		fc.assert(
			fc.property(items, fc.integer({ min: 1, max: 3 }), (all, most) => {
				const { placed, rows, left } = standInRows(all, 0, 1000, most);
				expect(placed.length + left).toBe(all.length);
				expect(rows).toBeLessThanOrEqual(most);
				for (let row = 0; row < rows; row++) {
					const here = placed.filter((it) => it.row >= row);
					here.forEach((it, i) => {
						const place = it.leader[row + 1] as number;
						const half = it.row === row ? it.item.half : 0;
						const next = here[i + 1];
						if (next === undefined) return;
						const nextHalf = next.row === row ? next.item.half : 0;
						expect(next.leader[row + 1] as number).toBeGreaterThanOrEqual(place + half + nextHalf + GAP - 1e-6);
					});
				}
			}),
			{ numRuns: 500 },
		);
	});

	it("take one row while one will do, and leave out the least important first", () => {
		const close = [100, 110, 120, 130].map((want, i) => ({ want, half: 20, importance: i === 1 ? 1 : 2 }));
		expect(standInRows(close, 0, 1000, 3).rows).toBe(1);
		const tight = standInRows(close, 90, 90 + 4 * 40 + 3 * GAP - 1, 1);
		expect(tight.left).toBe(1);
		expect(tight.placed.map(({ item }) => item.want)).toEqual([100, 120, 130]);
	});

	it("leaves out everything rather than put two labels where one fits", () => {
		const { placed } = standInRows([{ want: 5, half: 50, importance: 1 }], 0, 40, 1);
		expect(placed).toEqual([]);
	});
});

function isRow(items: readonly Wanted[], middles: readonly number[], slack: number): boolean {
	return items.every(({ half }, i) => {
		const middle = middles[i] as number;
		const before = items[i - 1];
		const clear = before === undefined || middle - half - ((middles[i - 1] as number) + before.half) >= GAP - slack;
		return clear && middle - half >= -slack && middle + half <= 1000 + slack;
	});
}
