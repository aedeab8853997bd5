import type { Radians } from "@baywright/geometry";
import type { Unknown } from "./network.ts";

/** Row by row over x and y of every point in turn, then the parameters. */
export type Covariance = readonly Float64Array[];

/** How a figure changes with every x and y in turn, then the parameters: over the covariance's columns. */
export type Gradient = ArrayLike<number>;

/** Standard deviation of a figure with this gradient: √(gᵀCg). */
export const propagate = (covariance: Covariance, gradient: Gradient): number =>
	Math.sqrt(Math.max(0, covary(covariance, gradient, gradient)));

/** Covariance of two figures: gᵀCh. */
export function covary(covariance: Covariance, gradient: Gradient, other: Gradient): number {
	let sum = 0;
	covariance.forEach((row, i) => {
		const left = gradient[i] as number;
		if (left === 0) return;
		for (let j = 0; j < row.length; j++) sum += left * (row[j] as number) * (other[j] as number);
	});
	return sum;
}

/** Cg. */
export const applied = (covariance: Covariance, gradient: Gradient): Float64Array =>
	Float64Array.from(covariance, (row) => dot(row, gradient));

export function dot(a: Float64Array, b: Gradient): number {
	let sum = 0;
	for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
	return sum;
}

/** Where a point is to be expected: the ellipse of one standard deviation about it. */
export interface ErrorEllipse {
	/** Half axes, same unit as the points. */
	readonly major: number;
	readonly minor: number;
	/** Of the major axis. */
	readonly heading: Radians;
}

/** Source: eigenvalues of the point's 2 × 2 covariance in closed form. */
export function errorEllipse(covariance: Covariance, point: number): ErrorEllipse {
	const xx = covariance[2 * point]?.[2 * point] as number;
	const xy = covariance[2 * point]?.[2 * point + 1] as number;
	const yy = covariance[2 * point + 1]?.[2 * point + 1] as number;
	const half = Math.hypot((xx - yy) / 2, xy);
	const mean = (xx + yy) / 2;
	return {
		major: Math.sqrt(Math.max(0, mean + half)),
		minor: Math.sqrt(Math.max(0, mean - half)),
		heading: (Math.atan2(2 * xy, xx - yy) / 2) as Radians,
	};
}

/** The covariance of the unknowns, spread over all columns: nought for what is fixed. */
export function spread(covariance: Covariance, unknowns: readonly Unknown[], columns: number): Covariance {
	const all = Array.from({ length: columns }, () => new Float64Array(columns));
	unknowns.forEach((unknown, i) => {
		for (const { column, factor } of unknown) {
			const row = all[column] as Float64Array;
			unknowns.forEach((other, j) => {
				const value = covariance[i]?.[j] as number;
				for (const { column: across, factor: by } of other) row[across] = factor * by * value;
			});
		}
	});
	return all;
}

/** The same places seen from another point, which then stands still: every other one has its coordinates from there. */
export function seenFrom(covariance: Covariance, point: number, firstParameter: number): Covariance {
	const shifted = (values: Float64Array) =>
		values.map((value, j) => (j < firstParameter ? value - (values[2 * point + (j % 2)] as number) : value));
	const across = covariance.map(shifted);
	return across.map((row, i) => {
		if (i >= firstParameter) return row;
		const still = across[2 * point + (i % 2)] as Float64Array;
		return row.map((value, j) => value - (still[j] as number));
	});
}
