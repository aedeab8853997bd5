import type { Adjusted } from "./adjust.ts";
import { applied, dot, type Gradient, propagate } from "./covariance.ts";
import { foresee } from "./linear.ts";
import type { Network } from "./network.ts";
import type { Candidate, NextReading } from "./next-reading.ts";
import { stateOf } from "./state-of.ts";
import { thinnedOut } from "./thinned-out.ts";

/**
 * The same reading is asked for twice at most in one list, because what is wrong with a tape's place is wrong each time; more often only
 * where the goal is out of reach otherwise.
 */
const MOST_OF_ONE = [2, 4, 8];

/**
 * With more than this to choose from the list is only thinned out, not exchanged: what can be read grows with the square of the walls, and
 * the work of exchanges with the square of that. It is begun with each reading once, which is half the work and gives no longer lists. Every bay of
 * eight walls is searched, bowed ones too.
 */
const MOST_SEARCHED = 60;

/** An exchange counts if it makes the worst variance smaller by this share. */
const WORTH_IT = 1e-6;

/** Rounds of exchanges before a smaller list is given up. */
const MOST_ROUNDS = 12;

/**
 * The fewest readings after which the worst figure's deviation is at most `goal`, as far as exchanges find them, in the order in which each
 * helps most; a reading may be asked for again. None where the goal is reached; where it is out of reach, all that help.
 *
 * Taking the best reading each time is short-sighted: readings that only help together are never begun with. So the list is begun from
 * both sides (the best one each time; everything, less the least missed each time), and the shorter one made shorter still: one
 * out, then one for another as long as that helps (V. V. Fedorov's exchange for optimum designs, 1972; from memory).
 */
export function fewestReadings(
	network: Network,
	adjusted: Adjusted,
	candidates: readonly Candidate[],
	figures: readonly Gradient[],
	goal: number,
): NextReading[] {
	if (figures.every((figure) => propagate(adjusted.covariance, figure) <= goal)) return [];
	const isSearched = candidates.length <= MOST_SEARCHED;
	const designFor = (some: readonly Candidate[]) => designOf(network, adjusted, some, figures);
	const thinned = (most: number, variance: number | null) =>
		thinnedOut(network, adjusted, candidates, figures, { most, goal: variance });
	for (const most of isSearched ? MOST_OF_ONE : [1, ...MOST_OF_ONE]) {
		const few = thinned(most, goal * goal);
		if (few === null) continue;
		if (!isSearched) return ordered(designFor, candidates, few);
		return ordered(designFor, candidates, fewestOf(designFor(candidates), few, most, goal * goal));
	}
	return ordered(designFor, candidates, thinned(MOST_OF_ONE[0] as number, null) ?? []);
}

/** Each reading up to `most` times, begun from `few` that reach the goal, a variance. */
function fewestOf(design: Design, few: readonly number[], most: number, goal: number): readonly number[] {
	const enough = (at: Design) => worstOf(at) <= goal;
	const added = addedUntil(design, most, enough);
	let best = added.length < few.length && enough(withAll(design, added)) ? added : few;
	for (;;) {
		const shorter = exchanged(design, lessOne(design, best), most, enough);
		if (shorter === null) return best;
		best = shorter;
	}
}

/**
 * Covariances of all that may be read, each over its own deviation, and of the figures after them: enough to say what any reading would do
 * to them all, BCBᵀ.
 */
interface Design {
	readonly candidates: number;
	/** Candidates and figures. */
	readonly size: number;
	/** Row by row. */
	readonly kernel: Float64Array;
}

function designOf(
	network: Network,
	adjusted: Adjusted,
	candidates: readonly Candidate[],
	figures: readonly Gradient[],
): Design {
	const state = stateOf(network, adjusted);
	const rows = candidates.map((candidate) => {
		const { gradient } = foresee(candidate, state);
		return gradient.map((slope) => slope / candidate.sd);
	});
	const all: Gradient[] = [...rows, ...figures];
	const toAll = all.map((row) => applied(adjusted.covariance, row));
	const kernel = Float64Array.from(toAll.flatMap((row) => all.map((other) => dot(row, other))));
	return { candidates: candidates.length, size: all.length, kernel };
}

/** Once a reading is taken (1) or put back (−1): K − k·kᵀ / (±1 + kᵢᵢ), Sherman–Morrison. */
function changed(design: Design, reading: number, by: 1 | -1): Design {
	const { size, kernel } = design;
	const next = kernel.slice();
	const line = reading * size;
	const share = by + (kernel[line + reading] as number);
	for (let i = 0; i < size; i++) {
		const factor = (kernel[line + i] as number) / share;
		for (let j = 0; j < size; j++)
			next[i * size + j] = (next[i * size + j] as number) - factor * (kernel[line + j] as number);
	}
	return { ...design, kernel: next };
}

const withAll = (design: Design, readings: readonly number[]): Design =>
	readings.reduce((at, reading) => changed(at, reading, 1), design);

/** Worst variance of the figures as they stand. */
function worstOf({ candidates, size, kernel }: Design): number {
	let worst = 0;
	for (let figure = candidates; figure < size; figure++)
		worst = Math.max(worst, kernel[figure * size + figure] as number);
	return worst;
}

/** The same with one reading more (1) or less (−1). */
function worstWith({ candidates, size, kernel }: Design, reading: number, by: 1 | -1): number {
	const line = reading * size;
	const share = by + (kernel[line + reading] as number);
	let worst = 0;
	for (let figure = candidates; figure < size; figure++) {
		const across = kernel[line + figure] as number;
		worst = Math.max(worst, (kernel[figure * size + figure] as number) - (across * across) / share);
	}
	return worst;
}

/** The same with one reading exchanged for another. */
function worstExchanged({ candidates, size, kernel }: Design, out: number, into: number): number {
	const from = out * size;
	const to = into * size;
	const less = (kernel[from + out] as number) - 1;
	const shared = kernel[from + into] as number;
	const more = 1 + (kernel[to + into] as number) - (shared * shared) / less;
	let worst = 0;
	for (let figure = candidates; figure < size; figure++) {
		const lost = kernel[from + figure] as number;
		const won = (kernel[to + figure] as number) - (lost * shared) / less;
		worst = Math.max(worst, (kernel[figure * size + figure] as number) - (lost * lost) / less - (won * won) / more);
	}
	return worst;
}

/** The reading that leaves the worst figure surest, of those that may be taken once more; null where none makes it surer. */
function bestToAdd(design: Design, taken: readonly number[], most: number): number | null {
	let best: number | null = null;
	let least = worstOf(design) * (1 - WORTH_IT);
	for (let reading = 0; reading < design.candidates; reading++) {
		const variance = worstWith(design, reading, 1);
		if (!(variance < least) || often(taken, reading) >= most) continue;
		best = reading;
		least = variance;
	}
	return best;
}

const often = (readings: readonly number[], reading: number): number =>
	readings.reduce((count, each) => (each === reading ? count + 1 : count), 0);

/** The best one each time. */
function addedUntil(design: Design, most: number, enough: (at: Design) => boolean): number[] {
	const taken: number[] = [];
	let at = design;
	while (!enough(at)) {
		const next = bestToAdd(at, taken, most);
		if (next === null) break;
		taken.push(next);
		at = changed(at, next, 1);
	}
	return taken;
}

function leastMissed(at: Design, taken: readonly number[]): number | null {
	let best: number | null = null;
	let least = Number.POSITIVE_INFINITY;
	for (const reading of new Set(taken)) {
		const variance = worstWith(at, reading, -1);
		if (!(variance < least)) continue;
		best = reading;
		least = variance;
	}
	return best;
}

const without = (readings: readonly number[], one: number): number[] => readings.toSpliced(readings.indexOf(one), 1);

function lessOne(design: Design, readings: readonly number[]): number[] {
	const out = leastMissed(withAll(design, readings), readings);
	return out === null ? [] : without(readings, out);
}

/** One out, the best other one in, as long as the worst figure gets surer by it; null where that is never enough. */
function exchanged(
	design: Design,
	begun: readonly number[],
	most: number,
	enough: (at: Design) => boolean,
): number[] | null {
	let taken = [...begun];
	let at = withAll(design, taken);
	for (let round = 0; round < MOST_ROUNDS; round++) {
		const before = worstOf(at);
		for (const out of new Set(taken)) {
			if (enough(at)) return taken;
			const into = bestFor(at, taken, out, most);
			if (into === null) continue;
			taken = [...without(taken, out), into];
			at = changed(changed(at, out, -1), into, 1);
		}
		if (enough(at)) return taken;
		if (!(worstOf(at) < before * (1 - WORTH_IT))) return null;
	}
	return null;
}

/** What to take instead of a reading; null where nothing makes the worst figure surer. */
function bestFor(at: Design, taken: readonly number[], out: number, most: number): number | null {
	let best: number | null = null;
	let least = worstOf(at) * (1 - WORTH_IT);
	for (let into = 0; into < at.candidates; into++) {
		if (into === out) continue;
		const variance = worstExchanged(at, out, into);
		if (!(variance < least) || often(taken, into) >= most) continue;
		best = into;
		least = variance;
	}
	return best;
}

/** The one that helps most first. Only what is asked for is looked at. */
function ordered(
	designFor: (some: readonly Candidate[]) => Design,
	candidates: readonly Candidate[],
	readings: readonly number[],
): NextReading[] {
	const asked = [...new Set(readings)];
	let rest = readings.map((reading) => asked.indexOf(reading));
	let at = designFor(asked.map((reading) => candidates[reading] as Candidate));
	const list: NextReading[] = [];
	while (rest.length > 0) {
		const now = at;
		const next = rest.reduce((a, b) => (worstWith(now, b, 1) < worstWith(now, a, 1) ? b : a));
		at = changed(now, next, 1);
		rest = without(rest, next);
		list.push({
			candidate: asked[next] as number,
			from: Math.sqrt(worstOf(now)),
			reaches: Math.sqrt(worstOf(at)),
		});
	}
	return list;
}
