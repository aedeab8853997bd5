import { CholeskyDecomposition, EigenvalueDecomposition, Matrix } from "ml-matrix";
import { TAKES_PART } from "./tolerance.ts";

/** A normal matrix, scaled to a diagonal of 1 and taken apart. */
export interface Normal {
	readonly parts: CholeskyDecomposition;
	/** 1/√N of each unknown: its standard deviation, all others held. */
	readonly scale: Float64Array;
}

/** N = JᵀPJ of these rows (one an observation, over the unknowns); only what is on and under the diagonal. */
export function normalMatrix(rows: readonly Float64Array[], weights: Float64Array): Float64Array[] {
	const size = rows[0]?.length ?? 0;
	const sums = Array.from({ length: size }, () => new Float64Array(size));
	rows.forEach((row, k) => {
		const weight = weights[k] as number;
		for (let i = 0; i < size; i++) {
			const left = weight * (row[i] as number);
			if (left === 0) continue;
			const sum = sums[i] as Float64Array;
			for (let j = 0; j <= i; j++) sum[j] = (sum[j] as number) + left * (row[j] as number);
		}
	});
	return sums;
}

export const diagonal = (matrix: readonly Float64Array[]): Float64Array =>
	Float64Array.from(matrix, (row, i) => row[i] as number);

/**
 * Takes a matrix apart (what is under its diagonal counts), with `damping` added to the diagonal. Null where a pivot is under `leastPivot`: something is undetermined, or all but.
 */
export function takeApart(
	lower: readonly Float64Array[],
	leastPivot: number,
	damping: Float64Array | null = null,
): Normal | null {
	const { matrix, scale } = scaled(lower, damping);
	if (!scale.every(isProper)) return null;
	const parts = new CholeskyDecomposition(matrix);
	const { lowerTriangularMatrix } = parts;
	for (let i = 0; i < scale.length; i++) if (!(lowerTriangularMatrix.get(i, i) ** 2 > leastPivot)) return null;
	return { parts, scale };
}

/** N⁻¹·right. */
export function solve({ parts, scale }: Normal, right: Float64Array): Float64Array {
	const column = new Matrix(scale.length, 1);
	right.forEach((value, i) => {
		column.set(i, 0, value * (scale[i] as number));
	});
	const solved = parts.solve(column);
	return scale.map((factor, i) => factor * solved.get(i, 0));
}

/** N⁻¹, row by row. */
export function inverse({ parts, scale }: Normal): Float64Array[] {
	const solved = parts.solve(Matrix.eye(scale.length));
	return Array.from(scale, (factor, i) => scale.map((other, j) => factor * other * solved.get(i, j)));
}

/** The unknowns that take part in a movement which no row speaks against: eigenvectors of the scaled matrix that go with nought. */
export function undetermined(lower: readonly Float64Array[], leastPivot: number): number[] {
	const { matrix, scale } = scaled(lower);
	if (!scale.every(isProper)) return Array.from(scale, (_, unknown) => unknown);
	const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(matrix, { assumeSymmetric: true });
	const loose = realEigenvalues.flatMap((value, i) => (value > leastPivot ? [] : [i]));
	// The matrix was refused, so its least eigenvalue is next to nothing even where it is not under the bound.
	if (loose.length === 0) loose.push(realEigenvalues.indexOf(Math.min(...realEigenvalues)));
	return Array.from({ length: matrix.rows }, (_, unknown) => unknown).filter(
		(unknown) => loose.reduce((sum, i) => sum + eigenvectorMatrix.get(unknown, i) ** 2, 0) > TAKES_PART,
	);
}

/** Slopes beyond all bounds make no matrix. */
const isProper = (scale: number): boolean => scale > 0 && Number.isFinite(scale);

function scaled(
	lower: readonly Float64Array[],
	damping: Float64Array | null = null,
): { matrix: Matrix; scale: Float64Array } {
	const size = lower.length;
	const scale = new Float64Array(size);
	const matrix = new Matrix(size, size);
	for (let i = 0; i < size; i++) {
		const row = lower[i] as Float64Array;
		const own = (row[i] as number) + (damping?.[i] ?? 0);
		// An unknown that no row knows stays nought on the diagonal.
		scale[i] = 1 / Math.sqrt(own || 1);
		for (let j = 0; j <= i; j++) {
			const value = (j === i ? own : (row[j] as number)) * (scale[i] as number) * (scale[j] as number);
			matrix.set(i, j, value);
			matrix.set(j, i, value);
		}
	}
	return { matrix, scale };
}
