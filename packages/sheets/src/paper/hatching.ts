import { sampled } from "./arcs.ts";
import type { HatchItem } from "./drawing.ts";
import { at, type PaperPoint } from "./place.ts";

/** How near (mm) the lines of a hatch end to a curved outline. */
const NEAR = 0.02;

/** The lines of a hatch, even–odd; they lie on one grid of the whole paper, so that neighbours match. */
export function hatchLines({ outline, spacing, angle }: HatchItem): (readonly [PaperPoint, PaperPoint])[] {
	const points = sampled(outline, true, NEAR);
	const [cos, sin] = [Math.cos(angle), -Math.sin(angle)];
	const across = points.map(({ x, y }) => y * cos - x * sin);
	const along = points.map(({ x, y }) => x * cos + y * sin);
	const lines: (readonly [PaperPoint, PaperPoint])[] = [];
	const last = Math.floor(Math.max(...across) / spacing);
	for (let row = Math.ceil(Math.min(...across) / spacing); row <= last; row++) {
		const level = row * spacing;
		const cuts: number[] = [];
		for (let i = 0; i + 1 < points.length; i++) {
			const [a, b] = [across[i] as number, across[i + 1] as number];
			// Half open, so that a line through a corner is cut once.
			if (a <= level === b <= level) continue;
			const share = (level - a) / (b - a);
			cuts.push((along[i] as number) + ((along[i + 1] as number) - (along[i] as number)) * share);
		}
		cuts.sort((a, b) => a - b);
		for (let i = 0; i + 1 < cuts.length; i += 2) {
			const end = (way: number) => at(way * cos - level * sin, way * sin + level * cos);
			lines.push([end(cuts[i] as number), end(cuts[i + 1] as number)]);
		}
	}
	return lines;
}
