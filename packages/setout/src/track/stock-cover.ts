/** A length on sale, as the search sees it. */
export interface Stock {
	/** mm. */
	readonly length: number;
	/** What one costs in the measure that is made least. */
	readonly cost: number;
}

/** Entries kept before neighbours are merged, which loosens the bound but never breaks it. */
const MOST_ENTRIES = 1024;

/**
 * The least cost of any set of stock lengths with a given total length, however the pieces would fit into them: a bound
 * below what any way of cutting can cost.
 */
export interface Cover {
	/** Least cost of stock for `length` mm. */
	readonly costOf: (length: number) => number;
	/** Greatest total length that can be had for less than `cost`; below zero where not even nothing can. */
	readonly lengthBelow: (cost: number) => number;
}

/** Good up to the total `most`, mm. */
export function coverOf(stock: readonly Stock[], most: number): Cover {
	let lengths = [0];
	let costs = [0];
	for (const one of stock) ({ lengths, costs } = withMultiples(lengths, costs, one, most));

	const firstReaching = (length: number): number => {
		let low = 0;
		let high = lengths.length - 1;
		while (low < high) {
			const middle = (low + high) >> 1;
			if ((lengths[middle] as number) < length) low = middle + 1;
			else high = middle;
		}
		return low;
	};
	const lengthBelow = (cost: number): number => {
		let low = 0;
		let high = costs.length;
		while (low < high) {
			const middle = (low + high) >> 1;
			if ((costs[middle] as number) < cost) low = middle + 1;
			else high = middle;
		}
		return low === 0 ? -1 : (lengths[low - 1] as number);
	};
	return { costOf: (length) => costs[firstReaching(length)] as number, lengthBelow };
}

/** Adds any number of one more stock length to every entry; keeps those that no cheaper one outreaches. */
function withMultiples(lengths: number[], costs: number[], stock: Stock, most: number) {
	const all: { length: number; cost: number }[] = [];
	lengths.forEach((start, index) => {
		let length = start;
		let cost = costs[index] as number;
		all.push({ length, cost });
		while (length < most) {
			length += stock.length;
			cost += stock.cost;
			all.push({ length, cost });
		}
	});
	all.sort((a, b) => b.length - a.length || a.cost - b.cost);
	const kept: { length: number; cost: number }[] = [];
	let cheapest = Number.POSITIVE_INFINITY;
	for (const entry of all) {
		if (entry.cost >= cheapest) continue;
		cheapest = entry.cost;
		kept.push(entry);
	}
	kept.reverse();
	const step = Math.ceil(kept.length / MOST_ENTRIES);
	const thinned: { length: number; cost: number }[] = [];
	for (let index = 0; index < kept.length; index += step) {
		const last = kept[Math.min(index + step, kept.length) - 1];
		const first = kept[index];
		if (first !== undefined && last !== undefined) thinned.push({ length: last.length, cost: first.cost });
	}
	return { lengths: thinned.map((entry) => entry.length), costs: thinned.map((entry) => entry.cost) };
}
