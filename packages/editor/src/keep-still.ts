import type { Corner } from "./edits/on-bay.ts";

/** mm: a corner that is no further off than this has not moved. */
const STILL = 0.1;

/**
 * A bay as its readings settle it, put on the sheet so that as many as can be of the corners that nobody moved lie where they lay `before`. Its
 * shape is all that readings tell; by itself it hangs on its left end, and would turn about it when that end is dragged. `drawn`: what was
 * done to it by hand. Where another number of corners lay before, or all were moved, it stays where it is.
 */
export function keepStill(
	settled: readonly Corner[],
	drawn: readonly Corner[],
	before: readonly Corner[],
): readonly Corner[] {
	if (before.length !== drawn.length) return settled;
	const left = drawn.flatMap(([x, y], i) => (x === before[i]?.[0] && y === before[i]?.[1] ? [i] : []));
	const stillWith = (corners: readonly Corner[]) =>
		left.filter((i) => apart(corners[i] as Corner, before[i] as Corner) <= STILL).length;
	let best = settled;
	let most = stillWith(settled);
	for (const [on, towards] of [...left.map((i) => [i, null] as const), ...pairsOf(left, settled, before)]) {
		if (most === left.length) break;
		const moved = putOn(settled, before, on, towards);
		const still = stillWith(moved);
		if (still > most) [best, most] = [moved, still];
	}
	return best;
}

/** Any two of the corners that can both lie where they lay, those furthest apart first: they tell best which way the bay lies. */
function pairsOf(
	corners: readonly number[],
	settled: readonly Corner[],
	before: readonly Corner[],
): readonly (readonly [number, number])[] {
	const length = (at: readonly Corner[], [a, b]: readonly [number, number]) => apart(at[a] as Corner, at[b] as Corner);
	return corners
		.flatMap((a, i) => corners.slice(i + 1).map((b) => [a, b] as const))
		.filter((pair) => Math.abs(length(settled, pair) - length(before, pair)) <= 2 * STILL)
		.sort((one, other) => length(before, other) - length(before, one));
}

/** Moved so that one corner lies where it lay, and turned so that another is in the direction in which it was. */
function putOn(
	corners: readonly Corner[],
	before: readonly Corner[],
	on: number,
	towards: number | null,
): readonly Corner[] {
	const [from, to] = [corners[on] as Corner, before[on] as Corner];
	const turn =
		towards === null ? 0 : heading(to, before[towards] as Corner) - heading(from, corners[towards] as Corner);
	const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
	return corners.map(([x, y]): Corner => {
		const [dx, dy] = [x - from[0], y - from[1]];
		return [to[0] + dx * cos - dy * sin, to[1] + dx * sin + dy * cos];
	});
}

const heading = (from: Corner, to: Corner): number => Math.atan2(to[1] - from[1], to[0] - from[0]);

const apart = (a: Corner, b: Corner): number => Math.hypot(b[0] - a[0], b[1] - a[1]);
