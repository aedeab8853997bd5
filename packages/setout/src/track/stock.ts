import type { Cut, StockPlan } from "../bay-plan.ts";
import type { Stock } from "./stock-cover.ts";
import { firstPacking } from "./stock-first.ts";
import { gatherOffcut } from "./stock-gather.ts";
import { type Filled, type Packing, searchPacking } from "./stock-search.ts";

/** What is to be cut, from what. All lengths mm. */
export interface StockOrder {
	readonly cuts: readonly Cut[];
	/** Lengths on sale, any number of each. Costs count only where every length has one. */
	readonly stock: readonly { readonly length: number; readonly cost: number | null }[];
	/** What one saw cut takes away. */
	readonly kerf: number;
	/** Search nodes after which the best plan so far is taken. */
	readonly budget?: number;
}

export type StockAnswer =
	| { readonly ok: true; readonly plan: StockPlan }
	/** Cuts that no stock length is long enough for, and the longest stock (0 where there is none). */
	| { readonly ok: false; readonly tooLong: readonly Cut[]; readonly longest: number };

export interface StockProgress {
	/** The best plan so far; not proved yet. */
	readonly bestSoFar: StockPlan;
	/** No plan can have a lower total: of cost where every stock length has one, otherwise of length bought, mm. */
	readonly bound: number;
	readonly nodes: number;
}

/** Enough to prove nearly every job of a house or two; a fraction of a second. */
const NODE_BUDGET = 4_000_000;

/** Slack (mm) when pieces are fitted into a length: far below any saw, far above rounding. */
const SLACK = 1e-6;

/** One more length bought costs this part of the dearest one: enough to settle a tie, too little to win against a cost. */
const COUNT_WEIGHT = 1e-8;

/**
 * The stock lengths to buy and how to cut them, at the least total cost where every length has a cost, otherwise at the
 * least total length; among equals the fewest lengths. With these settled, what is left over is gathered into one
 * offcut as long as exchanging pieces can make it.
 *
 * Each piece takes one saw cut. The last cut of a length needs no more than is left there: a piece that ends flush, or
 * short of the end by less than the kerf, still fits.
 *
 * Throws on a length that is not above zero and on a negative kerf.
 */
export function buyStock(order: StockOrder): StockAnswer {
	const search = searchStock(order);
	const budget = order.budget ?? NODE_BUDGET;
	for (;;) {
		const step = search.next();
		if (step.done) return step.value;
		if (step.value.nodes >= budget) return { ok: true, plan: step.value.bestSoFar };
	}
}

/** The search of `buyStock`, to be stopped whenever its caller likes: every step has a whole plan. */
export function* searchStock(order: StockOrder): Generator<StockProgress, StockAnswer> {
	const longest = order.stock.reduce((most, { length }) => Math.max(most, length), 0);
	for (const { length } of [...order.cuts, ...order.stock]) {
		if (!(length > 0)) throw new Error(`a length to cut or to buy must be above zero, not ${length}`);
	}
	if (!(order.kerf >= 0)) throw new Error(`a kerf must not be negative: ${order.kerf}`);
	const tooLong = order.cuts.filter(({ length }) => length > longest + SLACK / 2);
	if (tooLong.length > 0) return { ok: false, tooLong, longest };
	if (order.cuts.length === 0) return { ok: true, plan: { buy: [], cuts: [], waste: 0, exact: true } };

	const offer = offerOf(order);
	const search = searchPacking(offer.packing, firstPacking(offer.packing));
	let best: readonly Filled[] = [];
	let filled: readonly Filled[] = [];
	for (;;) {
		const { done, value } = search.next();
		if (value.best !== best) {
			best = value.best;
			filled = gatherOffcut(offer.packing, best);
		}
		const plan = planOf(order, offer, filled, value.exact);
		if (done) return { ok: true, plan };
		yield { bestSoFar: plan, bound: value.bound, nodes: value.nodes };
	}
}

/** The order as the search takes it, and the way back. */
interface Offer {
	readonly packing: Packing;
	/** Length on sale of each stock entry of the packing, mm. */
	readonly lengths: readonly number[];
	/** For each size the cuts of that size, by index, in the order given. */
	readonly pieces: readonly (readonly number[])[];
}

function offerOf({ cuts, stock, kerf }: StockOrder): Offer {
	const sizes: number[] = [];
	const pieces: number[][] = [];
	const longestFirst = cuts.map(({ length }, index) => ({ length, index })).sort((a, b) => b.length - a.length);
	for (const { length, index } of longestFirst) {
		if (sizes.at(-1) === length + kerf) pieces.at(-1)?.push(index);
		else {
			sizes.push(length + kerf);
			pieces.push([index]);
		}
	}

	const priced = stock.every(({ cost }) => cost !== null);
	const offered = stock.map(({ length, cost }) => ({ length, cost: priced ? (cost as number) : length }));
	offered.sort((a, b) => a.cost - b.cost || b.length - a.length);
	// A length that a longer one undersells is never bought.
	const worth: Stock[] = [];
	for (const one of offered) if (one.length > (worth.at(-1)?.length ?? 0)) worth.push(one);
	const more = COUNT_WEIGHT * (worth.at(-1)?.cost || 1);
	const packing: Packing = {
		sizes,
		counts: pieces.map(({ length }) => length),
		stock: worth.map(({ length, cost }) => ({ length: length + kerf + SLACK, cost: cost + more })),
		tie: more / 2,
	};
	return { packing, lengths: worth.map(({ length }) => length), pieces };
}

/** Pieces of one size are handed out in the order given; the lengths stand in the order of their first piece. */
function planOf({ cuts, kerf }: StockOrder, offer: Offer, filled: readonly Filled[], exact: boolean): StockPlan {
	const next = offer.pieces.map(() => 0);
	const bought = filled.map(({ stock, sizes }) => {
		const length = offer.lengths[stock] as number;
		const indices = sizes.map((size) => {
			const place = next[size] as number;
			next[size] = place + 1;
			return (offer.pieces[size] as readonly number[])[place] as number;
		});
		const pieces = indices.sort((a, b) => a - b).map((index) => cuts[index] as Cut);
		const used = pieces.reduce((sum, piece) => sum + piece.length + kerf, 0);
		return { first: indices[0] as number, stock: length, pieces, offcut: Math.max(0, length - used) };
	});
	bought.sort((a, b) => a.first - b.first);

	const counts = new Map<number, number>();
	for (const { stock } of bought) counts.set(stock, (counts.get(stock) ?? 0) + 1);
	const total = bought.reduce((sum, { stock }) => sum + stock, 0);
	return {
		buy: [...counts].map(([length, count]) => ({ length, count })).sort((a, b) => b.length - a.length),
		cuts: bought.map(({ stock, pieces, offcut }) => ({ stock, pieces, offcut })),
		waste: total - cuts.reduce((sum, { length }) => sum + length, 0),
		exact,
	};
}
