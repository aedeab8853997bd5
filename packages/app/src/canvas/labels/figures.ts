import { toDegrees } from "@baywright/geometry";
import { type Bay, formatAngle, formatLength, type LengthUnit } from "@baywright/setout";
import type { Face } from "../text.ts";

/** A dimension in words: what is taped stands bold with how sure it is, what is only drawn light and slanted. */
export interface Figure {
	readonly text: string;
	readonly face: Face;
	readonly taped: boolean;
}

/** Half-width of a 95 % interval in standard deviations. */
const SURE = 1.96;

/** Standard deviation where a reading gives none: run and rise mm, angle degrees. Design section 6. */
const DEFAULT_SD = { run: 2, rise: 1, angle: 0.75 } as const;

/** A wall's run. A reading that the drawing has moved away from no longer says how long the wall is. */
export function runFigure(bay: Bay, wall: number, length: number, unit: LengthUnit): Figure {
	const readings = bay.readings.flatMap((reading) =>
		reading.kind === "run" && reading.wall === wall ? [{ value: reading.value, sd: reading.sd ?? DEFAULT_SD.run }] : [],
	);
	const sure = howSure(readings, length);
	const text = formatLength(length, unit);
	if (sure === null) return { text, face: "drawn", taped: false };
	return { text: `${text} ± ${formatLength(sure, unit)}`, face: "taped", taped: true };
}

/** A bowed wall's rise, + away from the room; told by its size, for the drawing shows which way it goes. */
export function riseFigure(bay: Bay, wall: number, rise: number, unit: LengthUnit): Figure {
	const readings = bay.readings.flatMap((reading) =>
		reading.kind === "rise" && reading.wall === wall && reading.at === null
			? [{ value: reading.value, sd: reading.sd ?? DEFAULT_SD.rise }]
			: [],
	);
	const sure = howSure(readings, rise);
	const text = formatLength(Math.abs(rise), unit);
	if (sure === null) return { text, face: "drawn", taped: false };
	return { text: `${text} ± ${formatLength(sure, unit)}`, face: "taped", taped: true };
}

/** A corner's room angle (degrees). */
export function angleFigure(bay: Bay, corner: number, angle: number): Figure {
	const readings = bay.readings.flatMap((reading) =>
		reading.kind === "angle" && reading.corner === corner
			? [{ value: reading.value, sd: reading.sd ?? DEFAULT_SD.angle }]
			: [],
	);
	const sure = howSure(readings, angle);
	const text = formatAngle(angle);
	if (sure === null) return { text, face: "drawn", taped: false };
	return { text: `${text} ± ${formatAngle(sure)}`, face: "taped", taped: true };
}

/** Room angle in degrees between two directions of travel. */
export function roomAngle(
	before: { readonly ux: number; readonly uy: number },
	after: { readonly ux: number; readonly uy: number },
): number {
	const turn = Math.atan2(before.uy * after.ux - before.ux * after.uy, before.ux * after.ux + before.uy * after.uy);
	return 180 - toDegrees(turn);
}

/** Half the 95 % interval of the weighted mean; null with no reading, or where `shown` lies outside that interval. */
function howSure(readings: readonly { readonly value: number; readonly sd: number }[], shown: number): number | null {
	let weight = 0;
	let sum = 0;
	for (const { value, sd } of readings) {
		weight += 1 / sd ** 2;
		sum += value / sd ** 2;
	}
	if (weight === 0) return null;
	const half = SURE / Math.sqrt(weight);
	return Math.abs(sum / weight - shown) <= half ? half : null;
}
