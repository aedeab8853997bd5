import type { Stock } from "./stock-cover.ts";
import type { Filled, Packing } from "./stock-search.ts";

interface Bin {
	readonly stock: number;
	readonly sizes: number[];
	room: number;
}

/**
 * The same stock lengths with the pieces exchanged so that one offcut becomes as long as moving a piece out of its
 * length, or swapping it for a shorter one, can make it. What is gathered in one offcut may be of use; spread over many
 * it is not.
 */
export function gatherOffcut(packing: Packing, filled: readonly Filled[]): readonly Filled[] {
	const bins = filled.map((one): Bin => {
		const used = one.sizes.reduce((sum, size) => sum + (packing.sizes[size] as number), 0);
		return { stock: one.stock, sizes: [...one.sizes], room: (packing.stock[one.stock] as Stock).length - used };
	});
	let best: readonly Bin[] = bins;
	let longest = Math.max(...bins.map((bin) => bin.room));
	// Lengths filled alike gather alike.
	const tried = new Set<string>();
	for (let index = 0; index < bins.length; index++) {
		const start = bins[index] as Bin;
		const key = `${start.stock}:${start.sizes.join()}`;
		if (tried.has(key) || tried.size === MOST_STARTS) continue;
		tried.add(key);
		const copies = bins.map((bin): Bin => ({ ...bin, sizes: [...bin.sizes] }));
		const target = copies[index] as Bin;
		while (emptyInto(packing, target, copies)) {}
		if (target.room > longest) {
			longest = target.room;
			best = copies;
		}
	}
	return best.map((bin) => ({ stock: bin.stock, sizes: bin.sizes.sort((a, b) => a - b) }));
}

/** Lengths to try gathering in; enough for any house, and a bound on the time for a warehouse. */
const MOST_STARTS = 24;

/** Makes the one move or swap that lengthens the target's offcut most; false where none does. */
function emptyInto({ sizes }: Packing, target: Bin, bins: readonly Bin[]): boolean {
	let gain = 0;
	let move: { bin: Bin; piece: number; other: number } | null = null;
	for (let piece = 0; piece < target.sizes.length; piece++) {
		const length = sizes[target.sizes[piece] as number] as number;
		for (const bin of bins) {
			if (bin === target) continue;
			// A length is bought to be cut from: its last piece is never moved away.
			if (length <= bin.room && length > gain && target.sizes.length > 1) {
				gain = length;
				move = { bin, piece, other: -1 };
			}
			for (let other = 0; other < bin.sizes.length; other++) {
				const less = length - (sizes[bin.sizes[other] as number] as number);
				if (less > gain && less <= bin.room) {
					gain = less;
					move = { bin, piece, other };
				}
			}
		}
	}
	if (move === null) return false;
	const out = target.sizes.splice(move.piece, 1);
	const back = move.other < 0 ? [] : move.bin.sizes.splice(move.other, 1);
	target.sizes.push(...back);
	move.bin.sizes.push(...out);
	target.room += gain;
	move.bin.room -= gain;
	return true;
}
