import { formatLength, shownStep } from "../job/length-text.ts";
import type { LengthUnit } from "../job/schema.ts";
import { AT_95 } from "./may-change.ts";

/**
 * How far a figure may be off at 95 %, as shown in tables: to the tenth of a mm, in inches rounded up to the sixteenth, because ± 0" would say that nothing is
 * unsure.
 *
 * @param sd one standard deviation, mm
 */
export function formatSpread(sd: number, unit: LengthUnit): string {
	const step = shownStep(unit);
	const spread = unit === "in" ? Math.ceil((AT_95 * sd) / step - SLACK) * step : AT_95 * sd;
	return formatLength(spread, unit, { precision: 1 });
}

/** Part of a sixteenth that is only the last digit of a sum. */
const SLACK = 1e-6;
