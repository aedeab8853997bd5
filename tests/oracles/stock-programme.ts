import loadHighs from "highs";

const highs = await loadHighs();

export interface StockProblem {
	readonly lengths: readonly number[];
	readonly stock: readonly { readonly length: number; readonly cost: number }[];
	readonly kerf: number;
}

/**
 * Least cost, and the fewest stock lengths at that cost, by an integer programme over every way to cut each stock
 * length: how often each is used, so that every length wanted is cut at least as often as it is wanted.
 */
export function cheapestByProgramme({ lengths, stock, kerf }: StockProblem): { cost: number; count: number } {
	const wanted = new Map<number, number>();
	for (const length of lengths) wanted.set(length, (wanted.get(length) ?? 0) + 1);
	const kinds = [...wanted.keys()];
	const patterns = stock.flatMap(({ length, cost }) =>
		waysToCut(length, kinds, wanted, kerf).map((yields) => ({ cost, yields })),
	);

	const sum = (weight: (pattern: (typeof patterns)[number]) => number) => {
		const terms = patterns.map((pattern, index) => `${weight(pattern)} p${index}`).filter((term) => !/^0 /.test(term));
		return terms.join(" + ");
	};
	const rows = kinds.map(
		(kind, index) => `k${index}: ${sum(({ yields }) => yields[index] ?? 0)} >= ${wanted.get(kind)}`,
	);
	const names = patterns.map((_, index) => `p${index}`).join(" ");
	const least = (goal: string, more: readonly string[]): number => {
		const model = ["Minimize", `goal: ${goal}`, "Subject To", ...rows, ...more, "Bounds", "General", names, "End"];
		// The default gap of the solver lets it stop up to 0.01 % above the optimum.
		const solution = highs.solve(model.join("\n"), { mip_rel_gap: 0, output_flag: false, time_limit: 20 });
		if (solution.Status !== "Optimal") throw new Error(`programme not solved: ${solution.Status}`);
		return solution.ObjectiveValue;
	};
	const cost = least(
		sum((pattern) => pattern.cost),
		[],
	);
	const count = least(
		sum(() => 1),
		[`cost: ${sum((pattern) => pattern.cost)} <= ${cost + 1e-6}`],
	);
	return { cost, count: Math.round(count) };
}

/** Numbers of each kind that one stock length yields: the saw goes between the pieces, and once more where there is room. */
function waysToCut(
	stock: number,
	kinds: readonly number[],
	wanted: ReadonlyMap<number, number>,
	kerf: number,
): number[][] {
	let ways: { yields: number[]; used: number; pieces: number }[] = [{ yields: [], used: 0, pieces: 0 }];
	for (const kind of kinds) {
		ways = ways.flatMap(({ yields, used, pieces }) => {
			const more: typeof ways = [];
			for (let count = 0; count <= (wanted.get(kind) ?? 0); count++) {
				const total = used + count * kind;
				const cuts = Math.max(0, pieces + count - 1);
				if (total + cuts * kerf <= stock)
					more.push({ yields: [...yields, count], used: total, pieces: pieces + count });
			}
			return more;
		});
	}
	return ways.filter(({ pieces }) => pieces > 0).map(({ yields }) => yields);
}
