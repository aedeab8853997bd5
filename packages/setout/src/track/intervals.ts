/** A closed stretch of stations, mm; `from` ≤ `to`. A set of them is sorted and disjoint. */
export type Interval = readonly [from: number, to: number];

/**
 * What is left of a set of intervals outside the forbidden stretches, which may overlap and come in any order.
 * The ends of a forbidden stretch stay allowed, but not as lone points that nothing else of the set adjoins.
 */
export function subtract(intervals: readonly Interval[], forbidden: readonly Interval[]): Interval[] {
	const stretches = [...forbidden].sort((a, b) => a[0] - b[0]);
	const left: Interval[] = [];
	let first = 0;
	for (const [from, to] of intervals) {
		while (first < stretches.length && (stretches[first] as Interval)[1] < from) first++;
		// Is it a single place?
		if (from === to) {
			if (!isInside(stretches, first, from)) left.push([from, to]);
			continue;
		}
		let start = from;
		for (let i = first; i < stretches.length; i++) {
			const [bar, end] = stretches[i] as Interval;
			if (bar >= to) break;
			if (end <= start) continue;
			if (bar > start) left.push([start, bar]);
			start = end;
		}
		if (start < to) left.push([start, to]);
	}
	return left;
}

/** Whether `x` lies inside one of the stretches from `first` on, which are sorted by their start. */
function isInside(stretches: readonly Interval[], first: number, x: number): boolean {
	for (let i = first; i < stretches.length && (stretches[i] as Interval)[0] < x; i++)
		if (x < (stretches[i] as Interval)[1]) return true;
	return false;
}

/** Whether `x` lies in the set, its ends included. */
export function contains(allowed: readonly Interval[], x: number): boolean {
	const interval = allowed[firstEndingAt(allowed, x)];
	return interval !== undefined && interval[0] <= x;
}

/** The place of the set nearest to `x` within [low, high], the left one of two; null where there is none. */
export function nearestAllowed(allowed: readonly Interval[], x: number, low: number, high: number): number | null {
	if (low > high) return null;
	const wanted = Math.min(Math.max(x, low), high);
	const index = firstEndingAt(allowed, wanted);
	const right = allowed[index];
	if (right !== undefined && right[0] <= wanted) return wanted;
	const left = allowed[index - 1];
	const below = left !== undefined && left[1] >= low ? left[1] : null;
	const above = right !== undefined && right[0] <= high ? right[0] : null;
	if (below === null || above === null) return below ?? above;
	return x - below <= above - x ? below : above;
}

/** Index of the first interval that ends at or after `x`; the set's length where none does. */
export function firstEndingAt(allowed: readonly Interval[], x: number): number {
	let low = 0;
	let high = allowed.length;
	while (low < high) {
		const middle = (low + high) >> 1;
		if ((allowed[middle] as Interval)[1] < x) low = middle + 1;
		else high = middle;
	}
	return low;
}
