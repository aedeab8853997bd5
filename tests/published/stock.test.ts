import { buyStock } from "@baywright/setout";
import { expect, test } from "vitest";

/**
 * Source: Wikipedia, "Cutting stock problem", illustration of the one-dimensional problem (rolls 5600 wide): the optimum
 * is 73 with 0.401 % waste. It knows no kerf.
 */
const WANTED: readonly (readonly [length: number, count: number])[] = [
	[1380, 22],
	[1520, 25],
	[1560, 12],
	[1710, 14],
	[1820, 18],
	[1880, 18],
	[1930, 20],
	[2000, 10],
	[2050, 12],
	[2100, 14],
	[2140, 16],
	[2150, 18],
	[2200, 20],
];

test("the published illustration of cutting stock takes 73 lengths, and that is proved", () => {
	const cuts = WANTED.flatMap(([length, count]) =>
		Array.from({ length: count }, (_, index) => ({ piece: `${length}/${index + 1}`, length })),
	);
	expect(cuts).toHaveLength(219);
	const answer = buyStock({ cuts, stock: [{ length: 5600, cost: null }], kerf: 0 });
	if (!answer.ok) throw new Error("refused");
	expect(answer.plan.buy).toEqual([{ length: 5600, count: 73 }]);
	expect(answer.plan.exact).toBe(true);
	expect(((answer.plan.waste / (73 * 5600)) * 100).toFixed(3)).toBe("0.401");
	expect(answer.plan.cuts.flatMap(({ pieces }) => pieces)).toHaveLength(219);
});
