import { solve } from "yalps";

/** A span on a grid: every figure is a whole number of grid steps. */
export interface GridSpan {
	/** The far bracket; the near one stands at 0. */
	readonly end: number;
	readonly spacing: number;
	readonly least: number;
	/** Whether a bracket may stand at each grid point 0 … end. */
	readonly free: readonly boolean[];
}

/**
 * Fewest brackets by an integer programme: one 0/1 variable per grid point; every stretch a step longer than the
 * spacing holds at least one, every stretch shorter than the least distance at most one. Null where there is none.
 */
export function fewestByProgramme({ end, spacing, least, free }: GridSpan): number | null {
	const constraints: Record<string, { min?: number; max?: number }> = {};
	const variables: Record<string, Record<string, number>> = {};
	for (let at = 1; at < end; at++) if (free[at] && at >= least && end - at >= least) variables[`x${at}`] = { total: 1 };
	const row = (name: string, bound: { min?: number; max?: number }, from: number, to: number) => {
		constraints[name] = bound;
		for (let at = from; at <= to; at++) {
			const column = variables[`x${at}`];
			if (column !== undefined) column[name] = 1;
		}
	};
	for (let gap = 0; gap + spacing + 1 <= end; gap++) row(`span${gap}`, { min: 1 }, gap + 1, gap + spacing);
	if (least > 1) for (let at = 1; at < end; at++) row(`apart${at}`, { max: 1 }, at, at + least - 1);
	if (Object.keys(variables).length === 0)
		return Object.keys(constraints).some((name) => name.startsWith("span")) ? null : 0;
	const solution = solve({ direction: "minimize", objective: "total", constraints, variables, binaries: true });
	return solution.status === "optimal" ? Math.round(solution.result) : null;
}

/** Least possible greatest gap with exactly `count` brackets on the grid, by trying every place for each in turn. */
export function leastGapOnGrid({ end, least, free }: GridSpan, count: number): number {
	let best = new Array<number>(end + 1).fill(Number.POSITIVE_INFINITY);
	best[0] = 0;
	for (let bracket = 1; bracket <= count; bracket++) {
		const next = new Array<number>(end + 1).fill(Number.POSITIVE_INFINITY);
		for (let at = 1; at < end; at++) {
			if (!free[at]) continue;
			for (let before = 0; before <= at - Math.max(least, 1); before++) {
				const widest = Math.max(best[before] ?? 0, at - before);
				if (widest < (next[at] ?? 0)) next[at] = widest;
			}
		}
		best = next;
	}
	let narrowest = Number.POSITIVE_INFINITY;
	for (let before = 0; before <= end - least; before++) {
		narrowest = Math.min(narrowest, Math.max(best[before] ?? 0, end - before));
	}
	return narrowest;
}
