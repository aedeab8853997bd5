import { bracketReactions } from "@baywright/setout";
import { describe, expect, test } from "vitest";

/** Metres of track and kilogrammes, so that a span is a thousand of our mm. */
const beam = (supports: readonly number[], length: number, massPerMetre: number) => ({
	length: 1000 * length,
	brackets: supports.map((at) => 1000 * at),
	bracketWidth: 30,
	massPerMetre,
});

const pointLoad = (at: number, mass: number) => {
	const stretch = { from: 1000 * at, to: 1000 * at };
	return { ...stretch, stack: stretch, mass };
};

/** The track itself without weight. */
const UNLADEN = 0;

describe("equal spans under a uniform load, reactions in wl (T. G. Hicks, Civil Engineering Formulas, table 2.1)", () => {
	const published = [
		[1 / 2, 1 / 2],
		[3 / 8, 10 / 8, 3 / 8],
		[4 / 10, 11 / 10, 11 / 10, 4 / 10],
		[11 / 28, 32 / 28, 26 / 28, 32 / 28, 11 / 28],
	];
	test.each(published.map((shares) => [shares.length - 1, shares] as const))("%i spans", (spans, shares) => {
		const [l, w] = [0.38, 2.5];
		const supports = Array.from({ length: spans + 1 }, (_, i) => i * l);
		const reactions = bracketReactions(beam(supports, spans * l, w), []);
		expect(reactions).toHaveLength(spans + 1);
		reactions.forEach(({ drawn }, i) => {
			expect(drawn / (w * l)).toBeCloseTo(shares[i] as number, 9);
		});
	});
});

/** piping-designer.com, structural beam tables, 2399. */
test("two equal spans with a load in the middle of one: 13P/32, 11P/16, −3P/32", () => {
	const reactions = bracketReactions(beam([0, 1, 2], 2, UNLADEN), [pointLoad(0.5, 32)]);
	expect(reactions[0]?.drawn).toBeCloseTo(13, 6);
	expect(reactions[1]?.drawn).toBeCloseTo(22, 6);
	expect(reactions[2]?.drawn).toBeCloseTo(-3, 6);
});

/** piping-designer.com, structural beam tables, 2379: R1 = wL(L − 2c)/2b, R2 = wL(L − 2a)/2b. */
test.each([
	[0.2, 1.1, 0.05],
	[0, 0.9, 0.6],
	[0.7, 1, 0.7],
])("a uniform load over two supports with overhangs: a = %d, b = %d, c = %d", (a, b, c) => {
	const [w, L] = [1.7, a + b + c];
	const reactions = bracketReactions(beam([a, a + b], L, w), []);
	expect(reactions[0]?.drawn).toBeCloseTo((w * L * (L - 2 * c)) / (2 * b), 9);
	expect(reactions[1]?.drawn).toBeCloseTo((w * L * (L - 2 * a)) / (2 * b), 9);
});

/** piping-designer.com, structural beam tables: −Fa/l at the far support, F(l + a)/l at the near one. */
test("a load at the tip of an overhang lifts the far support, at either end", () => {
	const [F, a, l] = [6, 0.15, 0.4];
	const right = bracketReactions(beam([0, l], l + a, UNLADEN), [pointLoad(l + a, F)]);
	expect(right[0]?.drawn).toBeCloseTo((-F * a) / l, 6);
	expect(right[1]?.drawn).toBeCloseTo((F * (l + a)) / l, 6);
	const left = bracketReactions(beam([a, a + l], l + a, UNLADEN), [pointLoad(0, F)]);
	expect(left[0]?.drawn).toBeCloseTo((F * (l + a)) / l, 6);
	expect(left[1]?.drawn).toBeCloseTo((-F * a) / l, 6);
});
