import { addArea, addShares, type InfluenceLines, LEAST_STRETCH } from "./influence.ts";

/** A curtain as it loads the track. Stations, mm; mass kg, null = not known. */
export interface HungCurtain {
	/** The stretch that it covers drawn. */
	readonly from: number;
	readonly to: number;
	/** The stretch that it takes up drawn back. */
	readonly stack: { readonly from: number; readonly to: number };
	readonly mass: number | null;
}

/** The most and the least that a curtain brings on each support, wherever between drawn and drawn back it is left. */
export interface Extremes {
	readonly most: Float64Array;
	readonly least: Float64Array;
}

/** Places tried between two supports that the leading edge passes; a parabola through the best of them tells the top to half a hundredth of the curtain's mass. */
const TRIED_PER_SPAN = 6;

/**
 * Where a curtain loads each support most and least. `share` of the way from drawn (0) to drawn back (1) both its ends have moved; its mass
 * is spread evenly over what it covers.
 */
export function extremesOf(curtain: HungCurtain, mass: number, lines: InfluenceLines): Extremes {
	const count = lines.supports.length;
	const shares = sharesTried(curtain, lines.supports);
	const loads = loadsTried(curtain, mass, shares, lines);
	const most = new Float64Array(count);
	const least = new Float64Array(count);
	for (let i = 0; i < count; i++) {
		let highest = 0;
		let lowest = 0;
		for (let k = 1; k < shares.length; k++) {
			const load = loads[k * count + i] as number;
			if (load > (loads[highest * count + i] as number)) highest = k;
			if (load < (loads[lowest * count + i] as number)) lowest = k;
		}
		most[i] = topNear(shares, loads, count, i, highest);
		least[i] = topNear(shares, loads, count, i, lowest);
	}
	return { most, least };
}

/** The top (or the bottom) of the parabola through the highest (lowest) load tried on a support and those beside it. */
function topNear(shares: readonly number[], loads: Float64Array, count: number, i: number, best: number): number {
	const top = loads[best * count + i] as number;
	if (best === 0 || best === shares.length - 1) return top;
	const before = (shares[best] as number) - (shares[best - 1] as number);
	const after = (shares[best + 1] as number) - (shares[best] as number);
	const left = (top - (loads[(best - 1) * count + i] as number)) / before;
	const right = ((loads[(best + 1) * count + i] as number) - top) / after;
	const bend = (right - left) / (before + after);
	if (bend === 0) return top;
	const slope = (left * after + right * before) / (before + after);
	return top - slope ** 2 / (4 * bend);
}

/** The load on support i with the curtain left at the share k of its way, in [k · count + i]. */
function loadsTried(
	{ from, to, stack }: HungCurtain,
	mass: number,
	shares: readonly number[],
	lines: InfluenceLines,
): Float64Array {
	const count = lines.supports.length;
	const loads = new Float64Array(count * shares.length);
	const restsLeft = stack.from === from;
	const rests = restsLeft || stack.to === to;
	// The end that stays where it is, as one of a curtain drawn back to its side does, is reckoned once.
	const beside = new Float64Array(count);
	if (rests) addArea(lines, restsLeft ? from : to, restsLeft ? -1 : 1, beside);
	for (let k = 0; k < shares.length; k++) {
		const share = shares[k] as number;
		const start = from + share * (stack.from - from);
		const end = to + share * (stack.to - to);
		const row = k * count;
		if (!rests || end - start < LEAST_STRETCH) {
			addShares(lines, { from: start, to: end }, mass, loads, row);
			continue;
		}
		const load = mass / (end - start);
		for (let i = 0; i < count; i++) loads[row + i] = load * (beside[i] as number);
		addArea(lines, restsLeft ? end : start, restsLeft ? load : -load, loads, row);
	}
	return loads;
}

/** Where the leading edge passes a support, and evenly between. */
function sharesTried({ from, to, stack }: HungCurtain, supports: readonly number[]): number[] {
	const [start, end] = Math.abs(stack.to - to) > Math.abs(stack.from - from) ? [to, stack.to] : [from, stack.from];
	if (start === end) return [0];
	const passed = supports
		.map((station) => (station - start) / (end - start))
		.filter((share) => share > 0 && share < 1)
		.toSorted((a, b) => a - b);
	const shares = [0];
	for (const next of [...passed, 1]) {
		const last = shares.at(-1) as number;
		for (let k = 1; k <= TRIED_PER_SPAN; k++) shares.push(last + ((next - last) * k) / TRIED_PER_SPAN);
	}
	return shares;
}
