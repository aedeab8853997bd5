import { formatLength } from "@baywright/setout";
import { lineHeight } from "../canvas/text.ts";
import { spreadRow } from "../strip/spread.ts";
import type { Level } from "./heights.ts";
import { levelText } from "./held.ts";
import type { Elevation, ElevationScene } from "./scene.ts";

/** Heights above the floor, read off one line at the left: running dimensions, all from the floor. */
export interface Ladder {
	/** px: the line that they are read off. */
	readonly spine: number;
	/** px: what is left of this is the ladder's. */
	readonly edge: number;
	readonly rungs: readonly PlacedRung[];
}

export interface Rung {
	readonly name: string;
	readonly figure: string;
	readonly level: Level;
	/** Who goes first where there is no room for all. */
	readonly importance: number;
	/** Can be taken hold of on the spine. */
	readonly grip: "track" | "ceiling" | null;
}

export interface PlacedRung extends Rung {
	/** px: its height, and where its figure stands. */
	readonly at: number;
	readonly text: number;
}

/** px. */
const GAP = 2;
const OFF_FIGURE = 22;
const BETWEEN = 6;
const OUTER = 10;
const OFF_WALL = 26;
const EDGE = 3;

/** The ladder of one frame: beside the left end of the walls, or at the edge where that is out of sight. */
export function ladderOf(scene: ElevationScene): Ladder {
	const { view, size } = scene;
	const rungs = rungsOf(scene);
	const spine = Math.max(ladderWidth(scene, rungs), Math.min(view.left - OFF_WALL, size.width - 40));
	const half = lineHeight("name") / 2;
	let kept = rungs.filter(({ level }) => {
		const top = view.top - level.mm * view.scale;
		return top > -half && top < size.height + half;
	});
	for (;;) {
		const wanted = kept.map(({ level }) => ({ want: view.top - level.mm * view.scale, half: half - 1 }));
		const places = spreadRow(wanted, EDGE, size.height - EDGE, GAP);
		if (places !== null) {
			const placed = kept.map((rung, i) => ({
				...rung,
				at: (wanted[i] as { want: number }).want,
				text: places[i] as number,
			}));
			return { spine, edge: spine + 9, rungs: placed };
		}
		const least = Math.min(...kept.map(({ importance }) => importance));
		const out = kept.findLastIndex(({ importance }) => importance === least);
		kept = kept.filter((_, i) => i !== out);
	}
}

/** px from the left edge of the drawing to the spine at least. */
export function ladderWidth(scene: Pick<ElevationScene, "measure">, rungs: readonly Rung[]): number {
	const widest = rungs.map(
		({ name, figure }) => scene.measure(name, "small") + BETWEEN + scene.measure(figure, "name"),
	);
	return Math.ceil(Math.max(40, ...widest) + OFF_FIGURE + OUTER);
}

/** Ceiling, track, heads and sills from the top down, each figure once. */
export function rungsOf({ heights, bay, unit }: Elevation): Rung[] {
	const all: Rung[] = [
		rung("ceiling", heights.ceiling, 4, "ceiling"),
		rung("track", heights.track, 5, "track"),
		...bay.openings.flatMap((_, i) => {
			const span = heights.openings[i];
			return span === undefined ? [] : [rung("head", span.top, 3, null), rung("sill", span.bottom, 2, null)];
		}),
		{ name: "floor", figure: formatLength(0, unit), level: { mm: 0, known: "given" }, importance: 6, grip: null },
	];
	const seen = new Set<string>();
	return all
		.filter(({ name, figure, level: { mm } }) => {
			const key = `${name} ${figure} ${figure === "not given" ? Math.round(mm) : ""}`;
			if (seen.has(key)) return false;
			seen.add(key);
			return true;
		})
		.sort((a, b) => b.level.mm - a.level.mm);

	function rung(name: string, level: Level, importance: number, grip: Rung["grip"]): Rung {
		return { name, figure: levelText(level, unit), level, importance, grip };
	}
}
