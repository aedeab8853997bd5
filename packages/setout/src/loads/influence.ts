/**
 * How a continuous beam (constant stiffness, supports that give neither way, overhangs at both ends) shares loads among its supports.
 *
 * A support's influence line, its reaction to one unit of load as that load moves along, is the shape that the beam takes with this support alone
 * raised by one (Müller-Breslau): the natural cubic spline through one there and nought at the others, straight on the overhangs. Its second
 * derivatives at the supports come from the three-moment equations. Integrated, the lines give the reactions to any evenly spread load exactly.
 */
export interface InfluenceLines {
	/** Stations of the supports, ascending, mm. */
	readonly supports: readonly number[];
	/** Second derivative of line i at support j, in [j · count + i]. */
	readonly curvature: Float64Array;
	/** Integral of line i from the first support to support j, in [j · count + i]. */
	readonly area: Float64Array;
}

/** Supports ascend, no two alike; O(count²) time and space, exact but for rounding. */
export function influenceLines(supports: readonly number[]): InfluenceLines {
	const count = supports.length;
	const curvature = curvatures(supports);
	const area = new Float64Array(count * count);
	for (let j = 1; j < count; j++) {
		const h = at(supports, j) - at(supports, j - 1);
		const sag = (h * h * h) / 24;
		for (let i = 0; i < count; i++) {
			const bent = (curvature[(j - 1) * count + i] as number) + (curvature[j * count + i] as number);
			const straight = i === j || i === j - 1 ? h / 2 : 0;
			area[j * count + i] = (area[(j - 1) * count + i] as number) + straight - sag * bent;
		}
	}
	return { supports, curvature, area };
}

/** Under this (mm) a stretch is taken as so long, so that a load at one point has a length to be spread over. */
export const LEAST_STRETCH = 0.01;

/** Adds the part of a load, spread evenly from one station to another, that each support takes (all of it where there is but one) to `reactions`. */
export function addShares(
	lines: InfluenceLines,
	{ from, to }: { readonly from: number; readonly to: number },
	load: number,
	reactions: Float64Array,
): void {
	const widened = Math.max(0, LEAST_STRETCH - (to - from)) / 2;
	const start = from - widened;
	const end = to + widened;
	addArea(lines, end, load / (end - start), reactions);
	addArea(lines, start, -load / (end - start), reactions);
}

/** Adds the integral of the lines, from the first support to `x`, times `factor`, to `sum`; of those from `low` to before `high` at the least. */
export function addArea(
	{ supports, curvature, area }: InfluenceLines,
	x: number,
	factor: number,
	sum: Float64Array,
	low = 0,
	high = supports.length,
): void {
	const count = supports.length;
	if (count === 0) return;
	if (count === 1) {
		sum[0] = (sum[0] as number) + factor * (x - at(supports, 0));
		return;
	}
	const outside = x < at(supports, 0) ? -1 : x > at(supports, count - 1) ? 1 : 0;
	const span = outside < 0 ? 0 : outside > 0 ? count - 2 : spanAt(supports, x);
	const h = at(supports, span + 1) - at(supports, span);
	// How far the integral from the support `base` to x counts the line's values and curvatures at both ends of the span.
	const base = outside > 0 ? span + 1 : span;
	const u = x - at(supports, base);
	const far = u / h;
	const near = 1 - far;
	let left: number;
	let right: number;
	let bentLeft: number;
	let bentRight: number;
	if (outside === 0) {
		const cube = h * h * h;
		const near2 = near * near;
		const far2 = far * far;
		left = h * (far - far2 / 2);
		right = (h * far2) / 2;
		bentLeft = (cube * ((1 - near2 * near2) / 4 - (1 - near2) / 2)) / 6;
		bentRight = (cube * ((far2 * far2) / 4 - far2 / 2)) / 6;
	} else {
		const swung = (u * u) / 2;
		left = (outside < 0 ? u : 0) - swung / h;
		right = (outside < 0 ? 0 : u) + swung / h;
		bentLeft = (swung * h * (outside < 0 ? -2 : 1)) / 6;
		bentRight = (swung * h * (outside < 0 ? -1 : 2)) / 6;
	}
	const areas = base * count;
	const lefts = span * count;
	const rights = lefts + count;
	for (let i = low; i < high; i++)
		sum[i] =
			(sum[i] as number) +
			factor *
				((area[areas + i] as number) +
					bentLeft * (curvature[lefts + i] as number) +
					bentRight * (curvature[rights + i] as number));
	sum[span] = (sum[span] as number) + factor * left;
	sum[span + 1] = (sum[span + 1] as number) + factor * right;
}

/** The three-moment equations for all lines at once: one tridiagonal matrix, a right-hand side for each support. */
function curvatures(supports: readonly number[]): Float64Array {
	const count = supports.length;
	const m = new Float64Array(count * count);
	const upper = new Float64Array(count);
	const h = (j: number) => at(supports, j + 1) - at(supports, j);
	const raise = (row: number, line: number, by: number) => {
		m[row * count + line] = (m[row * count + line] as number) + by;
	};
	for (let j = 1; j < count - 1; j++) {
		const before = h(j - 1);
		const after = h(j);
		raise(j, j - 1, 6 / before);
		raise(j, j, -6 / before - 6 / after);
		raise(j, j + 1, 6 / after);
		const pivot = 2 * (before + after) - before * (upper[j - 1] as number);
		upper[j] = after / pivot;
		for (let i = 0; i < count; i++)
			m[j * count + i] =
				((m[j * count + i] as number) - (j > 1 ? before * (m[(j - 1) * count + i] as number) : 0)) / pivot;
	}
	for (let j = count - 3; j > 0; j--)
		for (let i = 0; i < count; i++) raise(j, i, -(upper[j] as number) * (m[(j + 1) * count + i] as number));
	return m;
}

/** The span in which a station between the first and the last support lies. */
export function spanAt(supports: readonly number[], x: number): number {
	let low = 0;
	let high = supports.length - 2;
	while (low < high) {
		const middle = (low + high + 1) >> 1;
		if (at(supports, middle) <= x) low = middle;
		else high = middle - 1;
	}
	return low;
}

const at = (supports: readonly number[], i: number): number => supports[i] as number;
