import { addShares, type InfluenceLines } from "./influence.ts";

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
	const tried = shares.map((share) => reactionsAt(curtain, mass, share, lines));
	const most = new Float64Array(count);
	const least = new Float64Array(count);
	for (let i = 0; i < count; i++) {
		most[i] = highest(shares, tried, i, 1);
		least[i] = -highest(shares, tried, i, -1);
	}
	return { most, least };
}

/** The highest of a curve (`sign` −1: its lowest, with its sign changed): the top of the parabola through the best place tried and its neighbours. */
function highest(shares: readonly number[], tried: readonly Float64Array[], i: number, sign: 1 | -1): number {
	let best = 0;
	for (let k = 1; k < tried.length; k++) if (sign * loadAt(tried, k, i) > sign * loadAt(tried, best, i)) best = k;
	const top = sign * loadAt(tried, best, i);
	if (best === 0 || best === tried.length - 1) return top;
	const before = (shares[best] as number) - (shares[best - 1] as number);
	const after = (shares[best + 1] as number) - (shares[best] as number);
	const left = (top - sign * loadAt(tried, best - 1, i)) / before;
	const right = (sign * loadAt(tried, best + 1, i) - top) / after;
	const bend = (right - left) / (before + after);
	if (bend === 0) return top;
	const slope = (left * after + right * before) / (before + after);
	return top - slope ** 2 / (4 * bend);
}

const loadAt = (tried: readonly Float64Array[], k: number, i: number): number =>
	(tried[k] as Float64Array)[i] as number;

/** The reactions with the curtain left a share of the way from drawn to drawn back. */
function reactionsAt(
	{ from, to, stack }: HungCurtain,
	mass: number,
	share: number,
	lines: InfluenceLines,
): Float64Array {
	const reactions = new Float64Array(lines.supports.length);
	const present = { from: from + share * (stack.from - from), to: to + share * (stack.to - to) };
	addShares(lines, present, mass, reactions);
	return reactions;
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
