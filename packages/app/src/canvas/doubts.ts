import { type ScreenPoint, toScreen } from "@baywright/editor";
import { type CheckedReading, formatAngle, formatLength } from "@baywright/setout";
import { readingLine } from "./reading-line.ts";
import type { Scene } from "./scene.ts";

/** A reading that does not agree with the others, on screen. */
export interface Doubt {
	/** Its index in the survey. */
	readonly reading: number;
	/** The likeliest culprit, or one that is pulled out of place, as it may well be by the culprit. */
	readonly degree: "suspect" | "apart";
	/** From end to end of the tape. */
	readonly line: readonly ScreenPoint[];
	readonly text: string;
}

/** A standardized residual above this: 0.1 % of good readings pass it (W. Baarda, A Testing Procedure for Use in Geodetic Networks, 1968). */
const APART = 3.29;

/** More would hide the one that matters. */
const MOST_APART = 3;

/** The reading that the survey suspects first, with by how much it disagrees, and those that stand out beside it, with how far they are out. */
export function doubtsOf(scene: Scene): readonly Doubt[] {
	const { plan, unit } = scene;
	if (plan.survey === null || !plan.survey.settled) return [];
	const { suspects, readings } = plan.survey;
	const [first] = suspects;
	const doubt = (index: number, degree: Doubt["degree"], out: number): Doubt[] => {
		const { reading } = readings[index] as CheckedReading;
		const line = readingLine(scene, reading);
		if (line === null) return [];
		const size = Math.abs(out);
		const figure = reading.kind === "angle" ? formatAngle(size) : formatLength(size, unit, { unit: true });
		const text = degree === "suspect" ? `off by ${figure}` : `out by ${figure}`;
		return [{ reading: index, degree, line: line.map((at) => toScreen(scene.view, at)), text }];
	};
	const apart = readings
		.map(({ standardized, residual }, index) => ({ index, residual, size: Math.abs(standardized ?? 0) }))
		.filter(({ index, size }) => size > APART && !first?.readings.includes(index))
		.sort((a, b) => b.size - a.size)
		.slice(0, MOST_APART);
	return [
		...(first?.readings ?? []).flatMap((index, i) => doubt(index, "suspect", first?.disagreesBy[i] ?? 0)),
		...apart.flatMap(({ index, residual }) => doubt(index, "apart", residual)),
	];
}

/** Halfway along a line, and its unit direction there. */
export function middleOf(line: readonly ScreenPoint[]): { readonly at: ScreenPoint; readonly along: ScreenPoint } {
	const middle = Math.floor((line.length - 1) / 2);
	const [from, to] = [line[middle] as ScreenPoint, line[middle + 1] as ScreenPoint];
	const whole = line.length % 2 === 0 ? 0.5 : 0;
	const [left, top] = [to.left - from.left, to.top - from.top];
	const length = Math.hypot(left, top) || 1;
	return {
		at: { left: from.left + left * whole, top: from.top + top * whole },
		along: { left: left / length, top: top / length },
	};
}
