import { firstEndingAt, type Interval, nearestAllowed } from "./intervals.ts";
import { spreadApart } from "./spread-apart.ts";

export { contains, type Interval, nearestAllowed, subtract } from "./intervals.ts";

/** A span between two brackets that are already placed, to be filled with more. All mm. */
export interface Span {
	/** Stations of the two brackets at its ends. */
	readonly from: number;
	readonly to: number;
	/** Greatest gap between neighbours. */
	readonly spacing: number;
	/** Where a bracket's centre may be: sorted, disjoint, closed; may reach beyond the span. */
	readonly allowed: readonly Interval[];
	/** Least distance between the centres of two brackets, those at the ends included. */
	readonly least: number;
}

export interface Filling {
	/** Stations of the brackets strictly between the ends, in order. */
	readonly places: readonly number[];
	/** Greatest gap, both ends included. */
	readonly widest: number;
	/** No gap exceeds the spacing. */
	readonly ok: boolean;
	/**
	 * Where `ok` is false, the longest forbidden stretch inside a gap that could not be kept, within the span;
	 * null where nothing is forbidden there and it is the least distance that stands in the way.
	 */
	readonly blocked: Interval | null;
}

/** Slack (mm) when a gap is compared with a limit: far below any tape, far above rounding. */
const SLACK = 1e-6;

/** A bisection on the greatest gap ends when it is known to this part of itself. */
const GAP_PRECISION = 1e-12;

/** Lets rounding through when a gap (mm) that is known to be enough is used again on a part of the span. */
const ROUNDING = 1e-8;

/**
 * The fewest brackets that leave no gap over the spacing, among those the least possible greatest gap, and within
 * that gap spread evenly: every stretch between two places that are forced is treated the same way again.
 *
 * Where that is impossible, a bracket goes to each side of the stretch that cannot be spanned and the rest of the
 * span is filled as if nothing were wrong; the answer says which stretch.
 */
export function fillSpan(asked: Span): Filling {
	if (!(asked.spacing > 0 && asked.to - asked.from < Number.POSITIVE_INFINITY)) {
		throw new Error(`no span to fill: ${asked.from} to ${asked.to} at ${asked.spacing}`);
	}
	const span = { ...asked, least: Math.max(0, asked.least - SLACK) };
	const places: number[] = [];
	const broken: Broken = { ok: true, length: 0, blocked: null };
	fill(span, span.from, span.to, places, broken);
	let widest = 0;
	let before = span.from;
	for (const place of places) {
		widest = Math.max(widest, place - before);
		before = place;
	}
	return { places, widest: Math.max(widest, span.to - before), ok: broken.ok, blocked: broken.blocked };
}

/** Whether the spacing was given up anywhere, and the longest forbidden stretch behind that. */
interface Broken {
	ok: boolean;
	length: number;
	blocked: Interval | null;
}

function fill(span: Span, from: number, to: number, places: number[], broken: Broken): void {
	const limit = span.spacing + SLACK;

	// Do the two ends need anything between them?
	if (to - from <= limit) return;

	// Would the fewest that any span of this length needs stand evenly?
	const fewest = Math.ceil((to - from) / limit) - 1;
	if (placeEvenly(span, from, to, fewest, places)) return;

	// Can the spacing be kept when brackets may stand as close as they like, and then also when they may not?
	const count = countGreedily(span, from, to, limit);
	if (count.ok) {
		const start = places.length;
		placeFreely(span, from, to, count.places, limit, places);
		if (standApart(places, start, from, to, span.least)) return;
		places.length = start;
		const close = spreadApart({ from, to, allowed: span.allowed, least: span.least }, limit);
		if (close.ok) {
			for (const place of close.places) places.push(place);
			return;
		}
		split(span, from, to, close.last, close.next, places, broken);
		return;
	}

	split(span, from, to, count.last, count.next, places, broken);
}

/** Gives up the gap from `last` to `next` and fills what lies on either side of it. */
function split(
	span: Span,
	from: number,
	to: number,
	last: number,
	next: number,
	places: number[],
	broken: Broken,
): void {
	broken.ok = false;
	const stretch = longestForbidden(span.allowed, last, next);
	if (stretch !== null && stretch[1] - stretch[0] > broken.length + SLACK) {
		broken.length = stretch[1] - stretch[0];
		broken.blocked = stretch;
	}
	if (last > from) {
		fill(span, from, last, places, broken);
		places.push(last);
	}
	if (next < to) {
		places.push(next);
		fill(span, next, to, places, broken);
	}
}

function longestForbidden(allowed: readonly Interval[], from: number, to: number): Interval | null {
	let longest: Interval | null = null;
	let length = SLACK;
	let reached = from;
	for (let index = firstEndingAt(allowed, from); reached < to; index++) {
		const [start, end] = allowed[index] ?? [to, to];
		const stop = Math.min(start, to);
		if (stop - reached > length) {
			length = stop - reached;
			longest = [reached, stop];
		}
		reached = Math.max(reached, end);
	}
	return longest;
}

/** Puts `count` places at equal gaps, if all of them are allowed there. */
function placeEvenly(span: Span, from: number, to: number, count: number, places: number[]): boolean {
	const { allowed } = span;
	const gap = (to - from) / (count + 1);
	if (gap < span.least - SLACK) return false;
	const start = places.length;
	let index = firstEndingAt(allowed, from);
	for (let place = 1; place <= count; place++) {
		const at = from + ((to - from) * place) / (count + 1);
		while (index < allowed.length && (allowed[index] as Interval)[1] < at) index++;
		if (index === allowed.length || (allowed[index] as Interval)[0] > at) {
			places.length = start;
			return false;
		}
		places.push(at);
	}
	return true;
}

type Count =
	| { readonly ok: true; readonly places: number }
	/** No bracket can follow `last` in reach; `next` is where the next may stand, or the far end. */
	| { readonly ok: false; readonly last: number; readonly next: number };

/** From the left, always as far as the gap reaches: no other choice needs fewer. */
function countGreedily(span: Span, from: number, to: number, gap: number): Count {
	const { allowed, least } = span;
	const low = from + least;
	const high = to - least;
	let index = firstEndingAt(allowed, low);
	let at = from;
	let places = 0;
	while (at + gap < to) {
		const reach = Math.min(at + gap, high);
		let furthest = at;
		while (index < allowed.length) {
			const [start, end] = allowed[index] as Interval;
			if (start > reach) break;
			furthest = Math.max(furthest, Math.min(end, reach));
			if (end >= reach) break;
			index++;
		}
		if (furthest <= at || furthest < low) {
			const next = nearestAllowed(allowed, reach, Math.max(reach, low), high);
			return { ok: false, last: at, next: next === null || next <= at ? to : next };
		}
		at = furthest;
		places++;
	}
	return { ok: true, places };
}

/** Places `count` brackets with the least greatest gap, at most `limit`, whatever their distance apart. */
function placeFreely(span: Span, from: number, to: number, count: number, limit: number, places: number[]): void {
	if (count === 0 || placeEvenly(span, from, to, count, places)) return;
	const gap = leastGap(span, from, to, count, limit);
	const earliest = new Float64Array(count);
	const latest = new Float64Array(count);
	reachRight(span, from, to, gap, latest);
	reachLeft(span, from, to, gap, earliest);

	// Any allowed place from its earliest to its latest can be had. Where the two meet it is forced; the stretches
	// between forced places are then free to be more even than the greatest gap demands.
	let left = from;
	let done = 0;
	for (let index = 0; index < count; index++) {
		const forced = (latest[index] as number) - (earliest[index] as number) <= SLACK;
		if (!forced) continue;
		const at = atEnd(span, earliest[index] as number);
		placeFreely(span, left, at, index - done, gap + ROUNDING, places);
		places.push(at);
		left = at;
		done = index + 1;
	}
	if (done > 0) {
		placeFreely(span, left, to, count - done, gap + ROUNDING, places);
		return;
	}

	// Nothing is forced only where two choices are equally good: the one nearer to an even spread, or the left one.
	const middle = (count - 1) >> 1;
	const even = from + ((to - from) * (middle + 1)) / (count + 1);
	const at = nearestAllowed(span.allowed, even, earliest[middle] as number, latest[middle] as number);
	if (at === null) throw new Error(`no allowed place for bracket ${middle} between ${from} and ${to}`);
	placeFreely(span, from, at, middle, gap + ROUNDING, places);
	places.push(at);
	placeFreely(span, at, to, count - middle - 1, gap + ROUNDING, places);
}

/** What is forced stands at the end of an allowed stretch, but comes out of the bisection a little beside it. */
function atEnd(span: Span, forced: number): number {
	const interval = span.allowed[firstEndingAt(span.allowed, forced)];
	return interval?.find((end) => Math.abs(end - forced) <= ROUNDING) ?? forced;
}

/** The least gap with which `count` brackets are enough, never below the true one. */
function leastGap(span: Span, from: number, to: number, count: number, limit: number): number {
	let low = (to - from) / (count + 1);
	let high = limit;
	while (high - low > GAP_PRECISION * high) {
		const gap = (low + high) / 2;
		if (gap <= low || gap >= high) break;
		if (enough(span, from, to, gap, count)) high = gap;
		else low = gap;
	}
	return high;
}

function enough(span: Span, from: number, to: number, gap: number, count: number): boolean {
	const { allowed, least } = span;
	const high = to - least;
	let index = firstEndingAt(allowed, from + least);
	let at = from;
	for (let place = 0; place < count && at + gap < to; place++) {
		const reach = Math.min(at + gap, high);
		let furthest = at;
		while (index < allowed.length) {
			const interval = allowed[index] as Interval;
			if (interval[0] > reach) break;
			furthest = Math.min(interval[1], reach);
			if (interval[1] >= reach) break;
			index++;
		}
		if (furthest <= at || furthest < from + least) return false;
		at = furthest;
	}
	return at + gap >= to;
}

/** The latest station of each bracket, counted from the left. */
function reachRight(span: Span, from: number, to: number, gap: number, latest: Float64Array): void {
	const { allowed, least } = span;
	let at = from;
	for (let place = 0; place < latest.length; place++) {
		const reach = Math.min(at + gap, to - least);
		at = nearestAllowed(allowed, reach, from + least, reach) ?? at;
		latest[place] = at;
	}
}

/** The earliest station of each bracket, counted from the right. */
function reachLeft(span: Span, from: number, to: number, gap: number, earliest: Float64Array): void {
	const { allowed, least } = span;
	let at = to;
	for (let place = earliest.length - 1; place >= 0; place--) {
		const reach = Math.max(at - gap, from + least);
		at = nearestAllowed(allowed, reach, reach, to - least) ?? at;
		earliest[place] = at;
	}
}

function standApart(places: readonly number[], start: number, from: number, to: number, least: number): boolean {
	let before = from;
	for (let index = start; index < places.length; index++) {
		const at = places[index] as number;
		if (at - before < least - SLACK) return false;
		before = at;
	}
	return to - before >= least - SLACK;
}
