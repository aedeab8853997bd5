import { type Cover, coverOf, type Stock } from "./stock-cover.ts";

/** Which pieces to cut from which stock. Sizes and stock lengths have the kerf in them already. */
export interface Packing {
	/** Different sizes of piece, mm, longest first. */
	readonly sizes: readonly number[];
	/** How many there are of each size. */
	readonly counts: readonly number[];
	/** Shortest first, dearest last; the longest takes the longest piece. */
	readonly stock: readonly Stock[];
	/** Costs nearer than this are one cost. */
	readonly tie: number;
}

/** One stock length and the sizes cut from it, both by index. */
export interface Filled {
	readonly stock: number;
	readonly sizes: readonly number[];
}

export interface SearchStep {
	readonly best: readonly Filled[];
	/** What `best` costs. */
	readonly cost: number;
	/** No packing can cost less. */
	readonly bound: number;
	readonly nodes: number;
	/** Nothing cheaper exists. */
	readonly exact: boolean;
}

/** Nodes from one report of progress to the next. */
const NODES_A_STEP = 5000;

/** Nodes spent on listing the ways to fill one length. Past that the list is left short and nothing is proved by it. */
const NODES_A_LIST = 200_000;

/** States remembered; past that the search goes on without learning new ones. */
const MOST_STATES = 500_000;

/**
 * Exact least cost by depth-first branch and bound. Each step takes the longest piece left and fills the stock length
 * that it is cut from, trying every set of companions that no other set betters; whatever is left is bounded by the
 * cheapest stock of that total length. A state (what is left to cut) that was reached before at no more cost is not
 * searched again.
 *
 * Yields its progress and returns the last step.
 */
export function* searchPacking(packing: Packing, first: readonly Filled[]): Generator<SearchStep, SearchStep> {
	const { sizes, stock, tie } = packing;
	const left = Int32Array.from(packing.counts);
	const total = sizes.reduce((sum, size, index) => sum + size * (left[index] as number), 0);
	const cover = coverOf(stock, total);
	const bound = cover.costOf(total);
	const fillings = new Fillings(packing, cover, left);
	const seen = new Seen(packing.counts, left);
	let best = first;
	let cost = costOf(packing, first);
	let reported = 0;
	const step = (exact: boolean): SearchStep => ({
		best,
		cost,
		bound: exact ? cost : bound,
		nodes: fillings.nodes,
		exact,
	});

	const stack: Level[] = [];
	const open = (spent: number, length: number) => {
		stack.push({ options: fillings.of(length, cost - tie - spent), next: 0, spent, length, taken: null });
	};
	if (cost > bound + tie) open(0, total);
	while (stack.length > 0 && cost > bound + tie) {
		const level = stack[stack.length - 1] as Level;
		if (level.taken !== null) put(left, level.taken, 1);
		const option = level.options[level.next++];
		// Options come cheapest first: once one cannot beat the best, none after it can.
		if (option === undefined || level.spent + option.bound >= cost - tie) {
			stack.pop();
			continue;
		}
		level.taken = option;
		put(left, option, -1);
		const spent = level.spent + (stock[option.stock] as Stock).cost;
		if (left.every((count) => count === 0)) {
			best = stack.map(({ taken }) => taken as Option);
			cost = spent;
		} else if (seen.cheaper(spent)) {
			open(spent, level.length - option.fill);
		}
		if (fillings.nodes - reported >= NODES_A_STEP) {
			reported = fillings.nodes;
			yield step(false);
		}
	}
	return step(cost <= bound + tie || !fillings.short);
}

/** One stock length on the way down: the ways to fill it, and which one is being tried. */
interface Level {
	readonly options: readonly Option[];
	next: number;
	/** Cost of the levels above. */
	readonly spent: number;
	/** Total of the pieces not yet cut above this level, mm. */
	readonly length: number;
	taken: Option | null;
}

interface Option extends Filled {
	/** Total of its pieces, mm. */
	readonly fill: number;
	/** Least cost of this length and all that is left after it. */
	readonly bound: number;
}

export function costOf({ stock }: Packing, fillings: readonly Filled[]): number {
	return fillings.reduce((sum, filled) => sum + (stock[filled.stock] as Stock).cost, 0);
}

function put(left: Int32Array, filled: Filled, sign: 1 | -1): void {
	for (const size of filled.sizes) left[size] = (left[size] as number) + sign;
}

/** Lists the ways to fill the next stock length. */
class Fillings {
	nodes = 0;
	/** A list was left short. */
	short = false;
	private most = 0;
	private readonly chosen: Int32Array;
	/** Total of all pieces left of this size and the shorter ones, mm. */
	private readonly tail: Float64Array;
	/** Per stock length, the least total to cut from it that can still better the best packing. */
	private readonly need: Float64Array;
	private options: Option[] = [];

	constructor(
		private readonly packing: Packing,
		private readonly cover: Cover,
		private readonly left: Int32Array,
	) {
		this.chosen = new Int32Array(packing.sizes.length);
		this.tail = new Float64Array(packing.sizes.length + 1);
		this.need = new Float64Array(packing.stock.length);
	}

	/** `length` is the total left to cut; only ways whose bound is under `below` are listed, the cheapest first. */
	of(length: number, below: number): readonly Option[] {
		const { sizes, stock } = this.packing;
		this.options = [];
		this.most = this.nodes + NODES_A_LIST;
		let least = Number.POSITIVE_INFINITY;
		stock.forEach((one, index) => {
			const need = length - this.cover.lengthBelow(below - one.cost);
			this.need[index] = need;
			least = Math.min(least, need);
		});
		for (let size = sizes.length - 1; size >= 0; size--) {
			this.tail[size] = (this.tail[size + 1] as number) + (this.left[size] as number) * (sizes[size] as number);
		}
		const longest = this.left.findIndex((count) => count > 0);
		this.choose(longest, longest, 0, least, length);
		return this.options.sort((a, b) => a.bound - b.bound || b.fill - a.fill || compare(a.sizes, b.sizes));
	}

	/** Decides how many of each size from `size` on go into the length that holds at least one of size `longest`. */
	private choose(size: number, longest: number, fill: number, least: number, length: number): void {
		this.nodes++;
		if (this.nodes > this.most) {
			this.short = true;
			return;
		}
		const { sizes, stock } = this.packing;
		const room = (stock[stock.length - 1] as Stock).length - fill;
		let next = size;
		while (next < sizes.length && ((this.left[next] as number) === 0 || (sizes[next] as number) > room)) {
			this.chosen[next++] = 0;
		}
		if (fill + (this.tail[next] as number) < least) return;
		if (next === sizes.length) {
			this.keep(longest, fill, length);
			return;
		}
		const one = sizes[next] as number;
		const most = Math.min(this.left[next] as number, Math.floor(room / one));
		for (let count = most; count >= (next === longest ? 1 : 0); count--) {
			this.chosen[next] = count;
			this.choose(next + 1, longest, fill + count * one, least, length);
		}
	}

	private keep(longest: number, fill: number, length: number): void {
		const { sizes, stock } = this.packing;
		const index = stock.findIndex((one) => one.length >= fill);
		const bought = stock[index] as Stock;
		if (fill < (this.need[index] as number) || this.bettered(longest, bought.length - fill)) return;
		const pieces: number[] = [];
		for (let size = longest; size < sizes.length; size++) {
			for (let count = this.chosen[size] as number; count > 0; count--) pieces.push(size);
		}
		// Rounding must not make a total of nothing cost a length.
		const rest = Math.max(0, length - fill - 1e-7);
		this.options.push({ stock: index, sizes: pieces, fill, bound: bought.cost + this.cover.costOf(rest) });
	}

	/**
	 * Whether some piece left could be added, or put in place of a shorter one: exchanging the two between their lengths
	 * never costs more, so such a filling need not be tried.
	 */
	private bettered(longest: number, room: number): boolean {
		const { sizes } = this.packing;
		let longer = Number.POSITIVE_INFINITY;
		for (let size = longest; size < sizes.length; size++) {
			const one = sizes[size] as number;
			const chosen = (this.chosen[size] as number) - (size === longest ? 1 : 0);
			if (chosen > 0 && longer - one <= room) return true;
			if ((this.chosen[size] as number) < (this.left[size] as number)) longer = one;
		}
		return longer <= room;
	}
}

function compare(a: readonly number[], b: readonly number[]): number {
	for (let index = 0; index < a.length && index < b.length; index++) {
		const difference = (a[index] as number) - (b[index] as number);
		if (difference !== 0) return difference;
	}
	return a.length - b.length;
}

/** The least cost at which each state was reached. */
class Seen {
	private readonly costs = new Map<number | string, number>();
	/** What one piece of each size adds to a state's number; null where numbers would run out. */
	private readonly weights: readonly number[] | null;

	constructor(
		counts: readonly number[],
		private readonly left: Int32Array,
	) {
		const weights: number[] = [];
		let weight = 1;
		for (const count of counts) {
			weights.push(weight);
			weight *= count + 1;
		}
		this.weights = weight <= Number.MAX_SAFE_INTEGER ? weights : null;
	}

	/** Whether what is left was never reached for as little; remembers that it now is. */
	cheaper(cost: number): boolean {
		const key = this.key();
		const before = this.costs.get(key);
		if (before !== undefined && before <= cost) return false;
		if (before !== undefined || this.costs.size < MOST_STATES) this.costs.set(key, cost);
		return true;
	}

	private key(): number | string {
		if (this.weights === null) return this.left.join();
		return this.weights.reduce((sum, weight, index) => sum + weight * (this.left[index] as number), 0);
	}
}
