import { Matrix, solve } from "ml-matrix";

/** An even load from one place to another along a beam, in all. */
export interface SpreadLoad {
	readonly from: number;
	readonly to: number;
	readonly load: number;
}

/**
 * Reactions of a beam on rigid points by finite elements: two-node Euler–Bernoulli elements (deflection and slope at each node) with a node at every
 * support and every end of a load, consistent nodal loads, the supports' deflections struck out, the dense system solved, and the reactions read
 * off as what is lacking there. Exact at the nodes for even loads. Two supports at least.
 */
export function stiffnessReactions(
	length: number,
	supports: readonly number[],
	loads: readonly SpreadLoad[],
): readonly number[] {
	const places = [0, length, ...supports, ...loads.flatMap(({ from, to }) => [from, to])].toSorted((a, b) => a - b);
	const nodes = places.filter((place, i) => i === 0 || place - (places[i - 1] as number) > 1e-9);
	const nodeOf = (place: number) => nodes.findIndex((node) => Math.abs(node - place) <= 1e-9);
	const size = 2 * nodes.length;
	const stiffness = Matrix.zeros(size, size);
	const forces = Matrix.zeros(size, 1);
	for (let e = 0; e + 1 < nodes.length; e++) {
		const start = nodes[e] as number;
		const end = nodes[e + 1] as number;
		const l = end - start;
		const element = [
			[12, 6 * l, -12, 6 * l],
			[6 * l, 4 * l * l, -6 * l, 2 * l * l],
			[-12, -6 * l, 12, -6 * l],
			[6 * l, 2 * l * l, -6 * l, 4 * l * l],
		];
		const middle = (start + end) / 2;
		const w = loads
			.filter(({ from, to }) => from < middle && middle < to)
			.reduce((sum, { from, to, load }) => sum + load / (to - from), 0);
		const nodal = [(w * l) / 2, (w * l * l) / 12, (w * l) / 2, (-w * l * l) / 12];
		for (let r = 0; r < 4; r++) {
			forces.set(2 * e + r, 0, forces.get(2 * e + r, 0) + (nodal[r] as number));
			for (let c = 0; c < 4; c++) {
				const more = (element[r]?.[c] as number) / l ** 3;
				stiffness.set(2 * e + r, 2 * e + c, stiffness.get(2 * e + r, 2 * e + c) + more);
			}
		}
	}
	const held = supports.map((support) => 2 * nodeOf(support));
	const free = Array.from({ length: size }, (_, i) => i).filter((i) => !held.includes(i));
	const bent = solve(stiffness.selection(free, free), forces.selection(free, [0]));
	return held.map(
		(row) => forces.get(row, 0) - free.reduce((sum, column, k) => sum + stiffness.get(row, column) * bent.get(k, 0), 0),
	);
}
