import type { ScreenPoint } from "@baywright/editor";

export interface HatchStyle {
	/** px between lines. */
	readonly spacing: number;
	/** Direction of the lines, radians, clockwise from rightwards on screen. */
	readonly angle: number;
	/** A point that a line goes through, so that the hatch moves with what it fills. */
	readonly anchor: ScreenPoint;
}

/** Only lines that may cross this are made. */
export interface HatchWindow {
	readonly width: number;
	readonly height: number;
}

/** Hatch of a closed polygon, even–odd: flat quadruples left, top, left, top of each line's ends, px. */
export function hatchLines(polygon: readonly ScreenPoint[], style: HatchStyle, window: HatchWindow): number[] {
	const cos = Math.cos(style.angle);
	const sin = Math.sin(style.angle);
	const across = (p: ScreenPoint) => p.top * cos - p.left * sin;
	const down = (p: ScreenPoint) => p.left * cos + p.top * sin;
	const origin = across(style.anchor);
	const { low, high } = rangeToHatch(polygon, window, across);

	const levels = polygon.map(across);
	const along = polygon.map(down);
	const lines: number[] = [];
	const cuts: number[] = [];
	const first = Math.ceil((low - origin) / style.spacing);
	const last = Math.floor((high - origin) / style.spacing);
	for (let k = first; k <= last; k++) {
		const level = origin + k * style.spacing;
		cuts.length = 0;
		for (let i = 0; i < polygon.length; i++) {
			const next = i + 1 === polygon.length ? 0 : i + 1;
			const atA = levels[i] as number;
			const atB = levels[next] as number;
			// Half open, so that a line through a corner is cut once.
			if (atA <= level === atB <= level) continue;
			const share = (level - atA) / (atB - atA);
			cuts.push((along[i] as number) + ((along[next] as number) - (along[i] as number)) * share);
		}
		if (cuts.length > 2 || (cuts[0] as number) > (cuts[1] as number)) cuts.sort((p, q) => p - q);
		for (let i = 0; i + 1 < cuts.length; i += 2) {
			const from = cuts[i] as number;
			const to = cuts[i + 1] as number;
			lines.push(from * cos - level * sin, from * sin + level * cos, to * cos - level * sin, to * sin + level * cos);
		}
	}
	return lines;
}

function rangeToHatch(
	polygon: readonly ScreenPoint[],
	{ width, height }: HatchWindow,
	across: (p: ScreenPoint) => number,
): { readonly low: number; readonly high: number } {
	const ofPolygon = polygon.map(across);
	const ofWindow = [
		{ left: 0, top: 0 },
		{ left: width, top: 0 },
		{ left: 0, top: height },
		{ left: width, top: height },
	].map(across);
	return {
		low: Math.max(Math.min(...ofPolygon), Math.min(...ofWindow)),
		high: Math.min(Math.max(...ofPolygon), Math.max(...ofWindow)),
	};
}
