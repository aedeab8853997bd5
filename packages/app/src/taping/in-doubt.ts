import type { BayPlan } from "@baywright/setout";

/** The readings that the survey names as wrong, by their index: the likeliest first, then those that might as well be it. */
export function inDoubt(survey: BayPlan["survey"]): readonly number[] {
	const [suspect] = survey?.suspects ?? [];
	return suspect === undefined ? [] : [...suspect.readings, ...suspect.alike];
}
