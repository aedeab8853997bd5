import { type Interval, nearestAllowed } from "./intervals.ts";

/** A stretch between two placed brackets where the least distance between brackets bites. All mm. */
export interface CloseSpan {
	readonly from: number;
	readonly to: number;
	readonly allowed: readonly Interval[];
	readonly least: number;
}

export type CloseSpread =
	| { readonly ok: true; readonly places: readonly number[] }
	/** Nothing can follow `last`, the furthest that a chain of brackets reaches; `next` is the next place, or the end. */
	| { readonly ok: false; readonly last: number; readonly next: number };

/** Halvings of the greatest gap: from metres to far below a micrometre. */
const HALVINGS = 50;

/** Lets rounding through when a gap (mm) that is known to be enough is used again on a part of the span. */
const ROUNDING = 1e-9;

/**
 * The fewest brackets with every gap from `least` to `spacing`, and among those the least greatest gap.
 *
 * Going as far as the gap reaches is no longer always best, since it may end too near the next bracket. So all places
 * that the first, second, … bracket can have are carried along as sets of intervals.
 */
export function spreadApart(span: CloseSpan, spacing: number): CloseSpread {
	const { from, to, least } = span;
	let reach: Interval[] = [[from, from]];
	let last = from;
	let count = 0;
	while (!meets(reach, to, least, spacing)) {
		reach = onward(reach, span, spacing);
		const furthest = reach.at(-1)?.[1];
		if (furthest === undefined) {
			const next = nearestAllowed(span.allowed, last + least, last + least, to - least);
			return { ok: false, last, next: next ?? to };
		}
		last = Math.max(last, furthest);
		count++;
	}

	let low = (to - from) / (count + 1);
	let high = spacing;
	for (let halving = 0; halving < HALVINGS && low < high; halving++) {
		const gap = (low + high) / 2;
		if (reaches(span, gap, count)) high = gap;
		else low = gap;
	}
	const places: number[] = [];
	settle(span, high + ROUNDING, count, places);
	return { ok: true, places };
}

/** Takes the middle bracket as near to an even spread as it can be, then does the same on either side of it. */
function settle(span: CloseSpan, gap: number, count: number, places: number[]): void {
	if (count === 0) return;
	const { from, to } = span;
	const middle = (count - 1) >> 1;
	const fromLeft = after(span, gap, middle + 1);
	const fromRight = after(mirrored(span), gap, count - middle)
		.map(([a, b]): Interval => [-b, -a])
		.reverse();
	const even = from + ((to - from) * (middle + 1)) / (count + 1);
	const at = nearestAllowed(intersection(fromLeft, fromRight), even, from, to);
	if (at === null) throw new Error(`no place for bracket ${middle} of ${count} between ${from} and ${to}`);
	settle({ ...span, to: at }, gap + ROUNDING, middle, places);
	places.push(at);
	settle({ ...span, from: at }, gap + ROUNDING, count - middle - 1, places);
}

function reaches(span: CloseSpan, gap: number, count: number): boolean {
	return meets(after(span, gap, count), span.to, span.least, gap);
}

/** All places that bracket number `count` can have, counted from the left end. */
function after(span: CloseSpan, gap: number, count: number): Interval[] {
	let reach: Interval[] = [[span.from, span.from]];
	for (let place = 0; place < count; place++) reach = onward(reach, span, gap);
	return reach;
}

function onward(reach: readonly Interval[], span: CloseSpan, gap: number): Interval[] {
	if (gap < span.least) return [];
	const grown: [number, number][] = [];
	for (const [a, b] of reach) {
		const start = Math.max(a + span.least, span.from + span.least);
		const end = Math.min(b + gap, span.to - span.least);
		if (start > end) continue;
		const before = grown.at(-1);
		if (before !== undefined && start <= before[1]) before[1] = Math.max(before[1], end);
		else grown.push([start, end]);
	}
	return intersection(grown, span.allowed);
}

function meets(reach: readonly Interval[], to: number, least: number, gap: number): boolean {
	return reach.some(([a, b]) => a <= to - least && b >= to - gap);
}

function intersection(some: readonly Interval[], others: readonly Interval[]): Interval[] {
	const both: Interval[] = [];
	let one = 0;
	let other = 0;
	while (one < some.length && other < others.length) {
		const [a, b] = some[one] as Interval;
		const [c, d] = others[other] as Interval;
		if (Math.max(a, c) <= Math.min(b, d)) both.push([Math.max(a, c), Math.min(b, d)]);
		if (b < d) one++;
		else other++;
	}
	return both;
}

function mirrored(span: CloseSpan): CloseSpan {
	const allowed = span.allowed.map(([a, b]): Interval => [-b, -a]).reverse();
	return { from: -span.to, to: -span.from, allowed, least: span.least };
}
