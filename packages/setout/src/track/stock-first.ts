import type { Stock } from "./stock-cover.ts";
import { costOf, type Filled, type Packing } from "./stock-search.ts";

/**
 * A good packing to start the search from: the longest piece first, each into the opened length that it fills best,
 * opening the same stock length every time; then the same for every other stock length, and the cheapest of all.
 */
export function firstPacking(packing: Packing): readonly Filled[] {
	let best: readonly Filled[] = [];
	let least = Number.POSITIVE_INFINITY;
	for (let opened = 0; opened < packing.stock.length; opened++) {
		const tried = bestFit(packing, opened);
		const cost = costOf(packing, tried);
		if (cost < least) {
			least = cost;
			best = tried;
		}
	}
	return best;
}

function bestFit({ sizes, counts, stock }: Packing, opened: number): Filled[] {
	const bins: { room: number; fill: number; sizes: number[] }[] = [];
	counts.forEach((count, size) => {
		const one = sizes[size] as number;
		for (let piece = 0; piece < count; piece++) {
			let into: (typeof bins)[number] | null = null;
			for (const bin of bins) {
				if (bin.room >= one && (into === null || bin.room < into.room)) into = bin;
			}
			if (into === null) {
				into = {
					room: (stock.find(({ length }, index) => index >= opened && length >= one) as Stock).length,
					fill: 0,
					sizes: [],
				};
				bins.push(into);
			}
			into.room -= one;
			into.fill += one;
			into.sizes.push(size);
		}
	});
	return bins.map((bin) => ({ stock: stock.findIndex(({ length }) => length >= bin.fill), sizes: bin.sizes }));
}
