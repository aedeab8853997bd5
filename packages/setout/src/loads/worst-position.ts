import { addArea, addShares, type InfluenceLines, LEAST_STRETCH, spanAt } from "./influence.ts";

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
	const loadsAt = loadsTried(curtain, mass, lines);
	const most = highestOf(count);
	const least = highestOf(count);
	// Row by row, and only those beside the highest are kept: on hundreds of brackets all of them would be millions of figures.
	let before = new Float64Array(count);
	let now = new Float64Array(count);
	for (let k = 0; k < shares.length; k++) {
		[before, now] = [now, before];
		now.fill(Number.NaN);
		const isEnd = k === 0 || k === shares.length - 1;
		const [low, high] = isEnd ? [0, count] : supportsNear(curtain, shares[k] as number, lines);
		loadsAt(shares[k] as number, now, low, high);
		noteRow(most, k, before, now, low, high, 1);
		noteRow(least, k, before, now, low, high, -1);
	}
	return { most: topsOf(most, shares), least: topsOf(least, shares) };
}

/**
 * The supports, from one to before another, that may be loaded most or least while the leading edge stands there. Bending dies away along the
 * supports, to a quarter or so with each, and past these only how thin the curtain is spread counts: there a load grows or shrinks steadily as far as
 * the curtain's end positions, which are tried on all.
 */
function supportsNear(curtain: HungCurtain, share: number, { supports }: InfluenceLines): readonly [number, number] {
	if (supports.length <= 2 * NEAR || !rests(curtain)) return [0, supports.length];
	const [start, end] = wayOf(curtain);
	const span = spanAt(supports, start + share * (end - start));
	return [Math.max(0, span - NEAR), Math.min(supports.length, span + 2 + NEAR)];
}

/** Supports away at which a billionth is left of what bends the track. */
const NEAR = 16;

/** For each support the highest load so far: at which share it was tried, and the loads tried just before and just after; NaN = not tried. */
interface Highest {
	readonly at: Int32Array;
	readonly top: Float64Array;
	readonly before: Float64Array;
	readonly after: Float64Array;
}

const highestOf = (count: number): Highest => ({
	at: new Int32Array(count),
	top: new Float64Array(count),
	before: new Float64Array(count),
	after: new Float64Array(count),
});

/** `sign` −1 looks for the lowest. */
function noteRow(
	{ at, top, before, after }: Highest,
	k: number,
	last: Float64Array,
	row: Float64Array,
	low: number,
	high: number,
	sign: 1 | -1,
): void {
	for (let i = low; i < high; i++) {
		const load = row[i] as number;
		if (k === 0 || sign * load > sign * (top[i] as number)) {
			at[i] = k;
			top[i] = load;
			before[i] = k === 0 ? Number.NaN : (last[i] as number);
			after[i] = Number.NaN;
		} else if (at[i] === k - 1) after[i] = load;
	}
}

/** The top (or the bottom) of the parabola through the highest (lowest) load tried on each support and those beside it. */
const topsOf = ({ at, top, before, after }: Highest, shares: readonly number[]): Float64Array =>
	top.map((load, i) => {
		const best = at[i] as number;
		if (Number.isNaN(before[i] as number) || Number.isNaN(after[i] as number)) return load;
		const fromLast = (shares[best] as number) - (shares[best - 1] as number);
		const toNext = (shares[best + 1] as number) - (shares[best] as number);
		const left = (load - (before[i] as number)) / fromLast;
		const right = ((after[i] as number) - load) / toNext;
		const bend = (right - left) / (fromLast + toNext);
		if (bend === 0) return load;
		const slope = (left * toNext + right * fromLast) / (fromLast + toNext);
		return load - slope ** 2 / (4 * bend);
	});

/** Does one end stay where it is, as that of a curtain drawn back to its side does? */
const rests = ({ from, to, stack }: HungCurtain): boolean => stack.from === from || stack.to === to;

/** Writes the loads on supports, from one to before another, with the curtain left at a share of its way. */
function loadsTried(
	curtain: HungCurtain,
	mass: number,
	lines: InfluenceLines,
): (share: number, row: Float64Array, low: number, high: number) => void {
	const { from, to, stack } = curtain;
	const restsLeft = stack.from === from;
	const oneRests = rests(curtain);
	// The end that stays where it is is reckoned once.
	const beside = new Float64Array(lines.supports.length);
	if (oneRests) addArea(lines, restsLeft ? from : to, restsLeft ? -1 : 1, beside);
	return (share, row, low, high) => {
		const start = from + share * (stack.from - from);
		const end = to + share * (stack.to - to);
		if (!oneRests || end - start < LEAST_STRETCH) {
			row.fill(0);
			addShares(lines, { from: start, to: end }, mass, row);
			return;
		}
		const load = mass / (end - start);
		for (let i = low; i < high; i++) row[i] = load * (beside[i] as number);
		addArea(lines, restsLeft ? end : start, restsLeft ? load : -load, row, low, high);
	};
}

/** Where the leading edge passes a support, and evenly between. */
function sharesTried(curtain: HungCurtain, supports: readonly number[]): number[] {
	const [start, end] = wayOf(curtain);
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

/** Stations of the leading edge, drawn and drawn back. */
const wayOf = ({ from, to, stack }: HungCurtain): readonly [drawn: number, back: number] =>
	Math.abs(stack.to - to) > Math.abs(stack.from - from) ? [to, stack.to] : [from, stack.from];
