import type { Adjusted } from "./adjust.ts";
import { applied, dot, type Gradient } from "./covariance.ts";

/** A gradient over its reading's deviation, without its noughts: a reading hangs on a handful of coordinates. */
export interface Sparse {
	readonly columns: readonly number[];
	readonly slopes: readonly number[];
}

export function sparse(gradient: Float64Array, sd: number): Sparse {
	const columns: number[] = [];
	for (let column = 0; column < gradient.length; column++) if (gradient[column] !== 0) columns.push(column);
	return { columns, slopes: columns.map((column) => (gradient[column] as number) / sd) };
}

/** How sure some figures are with many readings taken, while one after the other is put back. A candidate is told by its index. */
export interface Taken {
	/** Worst variance of the figures. */
	worst(): number;
	/** The same with one candidate less. */
	worstWithout(candidate: number): number;
	putBack(candidate: number): void;
}

/**
 * Each candidate taken so many times. A reading with slopes a over its own deviation makes C into C − Ca·aᵀC / (±1 + aᵀCa), + taken, − put back
 * (Sherman–Morrison). Kept up besides C is what it says of each candidate alone and of each with each figure; never of every candidate with every
 * other, because they are so many.
 */
export function taken(
	{ covariance: before }: Adjusted,
	rows: readonly Sparse[],
	figures: readonly Gradient[],
	times: readonly number[],
): Taken {
	const covariance = before.map((line) => line.slice());
	rows.forEach((row, i) => {
		if (times[i] === 0) return;
		const toAll = product(covariance, row);
		change(covariance, toAll, 1 / (times[i] as number) + along(row, toAll));
	});
	const toFigures = figures.map((figure) => applied(covariance, figure));
	const variances = Float64Array.from(figures, (figure, i) => dot(toFigures[i] as Float64Array, figure));
	const own = Float64Array.from(rows, (row) => along(row, product(covariance, row)));
	const across = rows.map((row) => Float64Array.from(toFigures, (toFigure) => along(row, toFigure)));

	return {
		worst: () => variances.reduce((worst, variance) => Math.max(worst, variance), 0),
		worstWithout(candidate) {
			const share = (own[candidate] as number) - 1;
			const toThem = across[candidate] as Float64Array;
			let worst = 0;
			for (let figure = 0; figure < variances.length; figure++)
				worst = Math.max(worst, (variances[figure] as number) - (toThem[figure] as number) ** 2 / share);
			return worst;
		},
		putBack(candidate) {
			const share = (own[candidate] as number) - 1;
			const toAll = product(covariance, rows[candidate] as Sparse);
			const toThem = (across[candidate] as Float64Array).slice();
			for (let figure = 0; figure < variances.length; figure++)
				variances[figure] = (variances[figure] as number) - (toThem[figure] as number) ** 2 / share;
			for (let i = 0; i < rows.length; i++) {
				const toIt = along(rows[i] as Sparse, toAll);
				own[i] = (own[i] as number) - toIt ** 2 / share;
				subtract(across[i] as Float64Array, toThem, toIt / share);
			}
			change(covariance, toAll, share);
		},
	};
}

function along({ columns, slopes }: Sparse, vector: Float64Array): number {
	let sum = 0;
	for (let i = 0; i < columns.length; i++) sum += (slopes[i] as number) * (vector[columns[i] as number] as number);
	return sum;
}

/** Ca. */
function product(covariance: readonly Float64Array[], row: Sparse): Float64Array {
	const toAll = new Float64Array(covariance.length);
	for (let i = 0; i < toAll.length; i++) toAll[i] = along(row, covariance[i] as Float64Array);
	return toAll;
}

/** C − u·uᵀ / share. */
function change(covariance: readonly Float64Array[], toAll: Float64Array, share: number): void {
	for (let i = 0; i < toAll.length; i++) subtract(covariance[i] as Float64Array, toAll, (toAll[i] as number) / share);
}

function subtract(from: Float64Array, what: Float64Array, factor: number): void {
	if (factor === 0) return;
	for (let i = 0; i < from.length; i++) from[i] = (from[i] as number) - factor * (what[i] as number);
}
