/** Places tried from one end of a range to the other. */
const TRIES = 12;

/**
 * The whole number of a range nearest to `wanted` for which something holds, as far as trying tells: a few spread over the range, nearest first;
 * then, between the first that does and `wanted`, halved to the last that does. Null where none of them does.
 */
export function nearestWhole(
	holds: (value: number) => boolean,
	wanted: number,
	[low, high]: readonly [number, number],
	tries = TRIES,
): number | null {
	const [from, to] = [Math.ceil(low), Math.floor(high)];
	if (!(from <= to)) return null;
	const aim = Math.round(Math.min(Math.max(wanted, from), to));
	const spread = Array.from({ length: tries + 1 }, (_, i) => Math.round(from + (i * (to - from)) / tries));
	const nearestFirst = [...new Set([aim, ...spread])].sort((a, b) => Math.abs(a - aim) - Math.abs(b - aim));
	const first = nearestFirst.findIndex(holds);
	if (first < 0) return null;
	let yes = nearestFirst[first] as number;
	const side = Math.sign(yes - aim);
	let no = nearestFirst.slice(0, first).findLast((tried) => Math.sign(tried - aim) === side) ?? aim;
	while (Math.abs(yes - no) > 1) {
		const middle = Math.round((yes + no) / 2);
		if (holds(middle)) yes = middle;
		else no = middle;
	}
	return yes;
}
