import type { Point } from "@baywright/geometry";
import { chainsOn } from "./chains.ts";
import type { Drawing, DrawingLayer } from "./drawing.ts";

/** Units that a drawing may be in; `file`: what the file itself says. */
export const UNITS = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 } as const;
export type UnitName = keyof typeof UNITS | "file";

export interface ChosenUnit {
	readonly unit: UnitName;
	/** The drawing is 1 : scale; 1 = true size. */
	readonly scale: number;
	/** mm of the room for each unit of the drawing. */
	readonly mm: number;
	/** How it is known, for people. */
	readonly why: string;
	/** Nobody said so. */
	readonly guessed: boolean;
}

/** A wall chain that long is a likely one, mm: what a guess goes by. */
const LIKELY = { least: 1200, most: 30_000 } as const;
/** The units that drawings without one are made in, the commonest first. Common practice, no source. */
const GUESSES = ["mm", "m", "cm", "in", "ft"] as const;
/** Scales of drawings on paper, the largest first. Source: ISO 5455. */
const SCALES = [1, 5, 10, 20, 50, 100] as const;

/** What a unit of the drawing is: as chosen, else as the file says, else guessed by the length of the longest chain. */
export function unitFor(
	{ kind, unit }: Drawing,
	layer: DrawingLayer,
	wish: { readonly unit?: UnitName | undefined; readonly scale?: number | undefined },
): ChosenUnit {
	const said = layer.strokes.find((stroke) => stroke.scale !== undefined)?.scale;
	if (wish.unit !== undefined && wish.unit !== "file") {
		const scale = wish.scale ?? 1;
		return { unit: wish.unit, scale, mm: UNITS[wish.unit] * scale, why: "as chosen", guessed: false };
	}
	if (unit !== null) {
		const by = (scale: number, more: string, guessed: boolean): ChosenUnit => ({
			unit: "file",
			scale,
			mm: unit.mm * scale,
			why: `${unit.source}${more}`,
			guessed,
		});
		if (wish.scale !== undefined) return by(wish.scale, `, 1 : ${wish.scale} as chosen`, false);
		if (said !== undefined) return by(said, `, and the walls say 1 : ${said}`, false);
		// A DXF is of the room; the page of an SVG is as often of paper.
		if (kind === "dxf") return by(1, "", false);
		const long = longest(layer) * unit.mm;
		const scale = SCALES.find((each) => isLikely(long * each)) ?? 1;
		return scale === 1 && isLikely(long)
			? by(1, "", false)
			: by(scale, `, and 1 : ${scale} is a guess from the size of the drawing`, true);
	}
	const scale = wish.scale ?? 1;
	const long = longest(layer) * scale;
	const guess = GUESSES.find((each) => isLikely(long * UNITS[each])) ?? "mm";
	return {
		unit: guess,
		scale,
		mm: UNITS[guess] * scale,
		why: "the file names no unit: a guess from the size of the drawing",
		guessed: true,
	};
}

const isLikely = (mm: number): boolean => mm >= LIKELY.least && mm <= LIKELY.most;

/** The longest chain, in units; ends are joined by the size of the largest line, because the unit is not known yet. */
function longest(layer: DrawingLayer): number {
	// Not the whole drawing: one that lies far from the origin may have something left lying there.
	const size = layer.strokes.reduce((most, { points }) => Math.max(most, sizeOf(points)), 0);
	if (!(size > 0)) return 0;
	return chainsOn(layer, 1, size * JOINED).chains[0]?.length ?? 0;
}

/** Ends this near are joined, by share of that size. */
const JOINED = 2e-4;

function sizeOf(points: readonly Point[]): number {
	let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
	for (const { x, y } of points) {
		[left, right] = [Math.min(left, x), Math.max(right, x)];
		[low, high] = [Math.min(low, y), Math.max(high, y)];
	}
	return Math.hypot(right - left, high - low);
}
