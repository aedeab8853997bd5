import { formatLength, shownStep } from "../job/length-text.ts";
import type { LengthUnit } from "../job/schema.ts";

/** Steps: lengths in whole units of what is shown (mm, sixteenths of an inch), so that a figure is rounded once only. */
export const stepsUp = (mm: number, unit: LengthUnit): number => Math.ceil(mm / shownStep(unit) - SLACK);
export const stepsDown = (mm: number, unit: LengthUnit): number => Math.floor(mm / shownStep(unit) + SLACK);
export const nearestSteps = (mm: number, unit: LengthUnit): number => Math.round(mm / shownStep(unit));

export const stepsText = (steps: number, unit: LengthUnit): string =>
	formatLength(steps * shownStep(unit), unit, { unit: true });

/** What is missing, rounded up. */
export const roundedUp = (mm: number, unit: LengthUnit): string => stepsText(stepsUp(mm, unit), unit);

/** What may be taken away, or can be given, rounded down: what is sawn off cannot be put back. */
export const roundedDown = (mm: number, unit: LengthUnit): string => stepsText(stepsDown(mm, unit), unit);

/** Part of a step that is only the last digit of a sum. */
const SLACK = 1e-6;
