import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { StockPlan } from "../../../packages/setout/src/bay-plan.ts";
import { buyStock, type StockOrder, searchStock } from "../../../packages/setout/src/track/stock.ts";
import { cheapestByProgramme } from "../../oracles/stock-programme.ts";

const SEED = 20240612;
/** mm; slack allowed when pieces are fitted into a length. */
const SLACK = 1e-5;

function planFor(order: StockOrder): StockPlan {
	const answer = buyStock(order);
	if (!answer.ok) throw new Error(`refused: ${answer.tooLong.map(({ piece }) => piece).join()}`);
	return answer.plan;
}

const cutsOf = (...lengths: number[]) =>
	lengths.map((length, index) => ({ piece: String.fromCharCode(65 + index), length }));
const unpriced = (...lengths: number[]) => lengths.map((length) => ({ length, cost: null }));

describe("small orders", () => {
	test("pieces that end flush need no last kerf", () => {
		const flush = planFor({ cuts: cutsOf(1000, 997), stock: unpriced(2000), kerf: 3 });
		expect(flush.buy).toEqual([{ length: 2000, count: 1 }]);
		expect(flush.cuts[0]?.offcut).toBe(0);
		expect(flush.waste).toBe(3);
		expect(planFor({ cuts: cutsOf(1000, 998), stock: unpriced(2000), kerf: 3 }).buy).toEqual([
			{ length: 2000, count: 2 },
		]);
	});

	test("a shorter piece always fits where a longer one does: the last cut may run off the end", () => {
		expect(planFor({ cuts: cutsOf(1000, 996), stock: unpriced(2000), kerf: 3 }).cuts).toHaveLength(1);
		expect(planFor({ cuts: cutsOf(2999), stock: unpriced(3000), kerf: 3 }).cuts[0]?.offcut).toBe(0);
		expect(planFor({ cuts: cutsOf(3000), stock: unpriced(3000), kerf: 3 }).cuts[0]?.offcut).toBe(0);
	});

	test("without costs the least total length is bought, of equal totals the fewest lengths", () => {
		// Three of 1600 and one of 3000 would come to 7800.
		expect(planFor({ cuts: cutsOf(1500, 1500, 2900, 1400), stock: unpriced(1600, 3000, 6000), kerf: 2 }).buy).toEqual([
			{ length: 6000, count: 1 },
			{ length: 1600, count: 1 },
		]);
		expect(planFor({ cuts: cutsOf(1400, 1400, 1400, 1400), stock: unpriced(3000, 6000), kerf: 2 }).buy).toEqual([
			{ length: 6000, count: 1 },
		]);
	});

	test("with costs the cheapest is bought, whatever the waste", () => {
		const stock = [
			{ length: 2000, cost: 30 },
			{ length: 6000, cost: 29 },
		];
		expect(planFor({ cuts: cutsOf(1800), stock, kerf: 3 }).buy).toEqual([{ length: 6000, count: 1 }]);
		const onePriced = [{ length: 2000, cost: null }, stock[1] as { length: number; cost: number }];
		expect(planFor({ cuts: cutsOf(1800), stock: onePriced, kerf: 3 }).buy).toEqual([{ length: 2000, count: 1 }]);
	});

	test("what is left over is gathered in one offcut", () => {
		// Two lengths of 3000 either way; 1500 + 1000 beside 1200 + 1100 would leave 500 and 700.
		const plan = planFor({ cuts: cutsOf(1500, 1200, 1100, 1000), stock: unpriced(3000), kerf: 0 });
		expect(plan.cuts.map(({ offcut }) => offcut).sort((a, b) => a - b)).toEqual([300, 900]);
	});

	test("pieces and lengths stand in the order given", () => {
		const plan = planFor({ cuts: cutsOf(900, 2000, 900, 2000, 900, 2000), stock: unpriced(3000), kerf: 3 });
		expect(plan.cuts.map(({ pieces }) => pieces.map(({ piece }) => piece).join(""))).toEqual(["AB", "CD", "EF"]);
	});

	test("nothing to cut buys nothing", () => {
		expect(planFor({ cuts: [], stock: unpriced(3000), kerf: 3 })).toEqual({ buy: [], cuts: [], waste: 0, exact: true });
	});

	test("cuts that no stock is long enough for are named", () => {
		const cuts = cutsOf(2000, 3001, 3000, 5000);
		expect(buyStock({ cuts, stock: unpriced(2500, 3000), kerf: 3 })).toEqual({
			ok: false,
			tooLong: [cuts[1], cuts[3]],
			longest: 3000,
		});
		expect(buyStock({ cuts: cutsOf(10), stock: [], kerf: 3 })).toEqual({ ok: false, tooLong: cutsOf(10), longest: 0 });
	});

	test("lengths of nothing and a negative kerf are broken invariants", () => {
		expect(() => buyStock({ cuts: cutsOf(0), stock: unpriced(3000), kerf: 3 })).toThrow(/above zero/);
		expect(() => buyStock({ cuts: cutsOf(10), stock: unpriced(Number.NaN), kerf: 3 })).toThrow(/above zero/);
		expect(() => buyStock({ cuts: cutsOf(10), stock: unpriced(3000), kerf: -1 })).toThrow(/kerf/);
	});
});

/** Whole millimetres, so that no rounding blurs what fits. */
const orders = (fewest: number, most: number, shortest: number) =>
	fc
		.record({
			lengths: fc.array(fc.integer({ min: shortest, max: 2400 }), { minLength: fewest, maxLength: most }),
			copies: fc.integer({ min: 0, max: 3 }),
			stock: fc.uniqueArray(fc.integer({ min: 24, max: 60 }), { minLength: 1, maxLength: 3 }),
			pence: fc.option(fc.array(fc.integer({ min: 800, max: 1200 }), { minLength: 3, maxLength: 3 }), { nil: null }),
			kerf: fc.constantFrom(0, 2, 3),
		})
		.map(({ lengths, copies, stock, pence, kerf }): StockOrder => {
			const all = [...lengths, ...lengths.slice(0, copies)];
			return {
				cuts: all.map((length, index) => ({ piece: `${index}`, length })),
				stock: stock.map((decimetres, index) => ({
					length: decimetres * 100,
					cost: pence === null ? null : Math.round(decimetres * (pence[index] ?? 0)) / 100,
				})),
				kerf,
			};
		});

function totals(order: StockOrder, plan: StockPlan): { cost: number; count: number } {
	const cost = (length: number) =>
		Math.min(...order.stock.filter((one) => one.length === length).map((one) => one.cost ?? one.length));
	return {
		cost: plan.buy.reduce((sum, { length, count }) => sum + cost(length) * count, 0),
		count: plan.buy.reduce((sum, { count }) => sum + count, 0),
	};
}

test.each([
	{ name: "a few pieces", sample: orders(1, 9, 200), runs: 80 },
	{ name: "a dozen or so longer pieces", sample: orders(12, 13, 900), runs: 12 },
])(
	"cost and number of lengths are those of an integer programme over all ways to cut, for $name",
	({ sample, runs }) => {
		fc.assert(
			fc.property(sample, (order) => {
				const plan = planFor(order);
				expect(plan.exact).toBe(true);
				const best = cheapestByProgramme({
					lengths: order.cuts.map(({ length }) => length),
					stock: order.stock.map(({ length, cost }) => ({ length, cost: cost ?? length })),
					kerf: order.kerf,
				});
				const ours = totals(order, plan);
				expect(ours.cost).toBeCloseTo(best.cost, 4);
				expect(ours.count).toBe(best.count);
			}),
			{ seed: SEED, numRuns: runs },
		);
	},
);

test("a state met again at a little more cost is not mistaken for one met at less", () => {
	const lengths = [2000, 1980, 1730, 2080, 1750, 2030, 1500, 420, 1650, 1250, 1540, 980];
	const stock = [
		{ length: 2400, cost: 239 },
		{ length: 3700, cost: 384 },
		{ length: 5800, cost: 680 },
	];
	const order: StockOrder = { cuts: cutsOf(...lengths), stock, kerf: 3 };
	const best = cheapestByProgramme({ lengths, stock, kerf: 3 });
	const ours = totals(order, planFor(order));
	expect(ours.cost).toBeCloseTo(best.cost, 4);
	expect(ours.count).toBe(best.count);
});

test("every piece is cut once, no length is used beyond its end, waste adds up, and it comes out the same again", () => {
	fc.assert(
		fc.property(orders(1, 24, 200), fc.double({ min: 0, max: 1, noNaN: true }), (whole, part) => {
			const order = {
				...whole,
				cuts: whole.cuts.map((cut) => ({ ...cut, length: cut.length - part })),
				budget: 100_000,
			};
			const plan = planFor(order);
			expect(planFor(order)).toEqual(plan);
			const cut = plan.cuts.flatMap(({ pieces }) => pieces);
			expect(new Set(cut)).toEqual(new Set(order.cuts));
			expect(cut).toHaveLength(order.cuts.length);
			for (const { stock, pieces, offcut } of plan.cuts) {
				expect(order.stock.some(({ length }) => length === stock)).toBe(true);
				const used = pieces.reduce((sum, { length }) => sum + length, 0);
				expect(used + order.kerf * (pieces.length - 1)).toBeLessThanOrEqual(stock + SLACK);
				expect(offcut).toBeCloseTo(Math.max(0, stock - used - order.kerf * pieces.length), 6);
				const places = pieces.map((piece) => order.cuts.indexOf(piece));
				expect(places).toEqual([...places].sort((a, b) => a - b));
			}
			for (const { length, count } of plan.buy) {
				expect(plan.cuts.filter(({ stock }) => stock === length)).toHaveLength(count);
			}
			const bought = plan.cuts.reduce((sum, { stock }) => sum + stock, 0);
			expect(plan.waste).toBeCloseTo(bought - order.cuts.reduce((sum, { length }) => sum + length, 0), 6);
		}),
		{ seed: SEED, numRuns: 1000 },
	);
});

describe("the search", () => {
	/** Lengths with no pattern to them, from a fixed linear congruence. */
	const scattered = (count: number, shortest: number, longest: number) => {
		let state = 12345;
		return Array.from({ length: count }, (_, index) => {
			state = (state * 1103515245 + 12345) % 2147483648;
			return { piece: `${index}`, length: Math.round(shortest + (state / 2147483648) * (longest - shortest)) };
		});
	};
	const hard: StockOrder = { cuts: scattered(70, 300, 2900), stock: unpriced(3130, 4270, 5810), kerf: 3 };

	test("reports whole plans that get no worse and a bound that stays below them", () => {
		let before = Number.POSITIVE_INFINITY;
		let steps = 0;
		for (const { bestSoFar, bound, nodes } of searchStock(hard)) {
			const { cost } = totals(hard, bestSoFar);
			expect(cost).toBeLessThanOrEqual(before);
			expect(bound).toBeLessThanOrEqual(cost + 1e-3);
			expect(bestSoFar.cuts.flatMap(({ pieces }) => pieces)).toHaveLength(70);
			expect(bestSoFar.exact).toBe(false);
			expect(nodes).toBeGreaterThan(0);
			before = cost;
			if (++steps === 50) break;
		}
		expect(steps).toBeGreaterThan(1);
	});

	test("a budget that ends it first is owned up to", () => {
		expect(planFor({ ...hard, budget: 1 }).exact).toBe(false);
	});

	test("a great many short pieces do not run away with it", () => {
		const plan = planFor({ cuts: scattered(400, 100, 900), stock: unpriced(5000, 6000), kerf: 2 });
		expect(plan.cuts.flatMap(({ pieces }) => pieces)).toHaveLength(400);
	});
});
