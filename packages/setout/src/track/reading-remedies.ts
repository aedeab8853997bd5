import type { Finding, Remedy } from "../finding/finding.ts";
import { asSettled } from "../survey/as-settled.ts";
import { readingName } from "../survey/describe-survey.ts";
import { surveyReadings } from "../survey/settle.ts";
import { leaveOutReadings } from "./remedies.ts";
import { curing, type Refused } from "./search-remedies.ts";

/** Most readings, or pairs of them, that are offered to be left out, and most that are tried. */
const MOST_OFFERED = 3;
const MOST_TRIED = 12;

/** The suspects left out, the likeliest first, each with those that might as well be it. */
export function withoutSuspects(finding: Finding, refused: Refused): Remedy[] {
	const { survey } = asSettled(refused.bay, refused.system);
	// Where the rest does not close without them the trial would only say so again, and settling such a bay takes longest of all.
	const likely = (survey?.suspects ?? []).filter(({ without }) => without.closes);
	const named = likely.flatMap(({ readings, alike }) => [readings, ...alike.map((one) => [one])]);
	return leftOut(finding, refused, named);
}

/** The reading that stands in the way, or any one without which the bay is settled. */
export function withoutFaulty(finding: Finding, refused: Refused): Remedy[] {
	const { reading } = finding.figures;
	const all = surveyReadings(refused.bay, refused.system).map((_, index) => [index]);
	return leftOut(finding, refused, reading === undefined ? all : [[Number(reading)]]);
}

function leftOut(finding: Finding, refused: Refused, choices: readonly (readonly number[])[]): Remedy[] {
	const { bay, system } = refused;
	const readings = surveyReadings(bay, system);
	const distinct = [...new Map(choices.map((indexes) => [indexes.join(), indexes])).values()];
	const remedies = distinct.slice(0, MOST_TRIED).map((indexes) => {
		const names = indexes.map((index) => readingName(readings[index] as (typeof readings)[number], bay.walls.length));
		return leaveOutReadings(bay, indexes, names);
	});
	const cures: Remedy[] = [];
	for (const remedy of remedies) if (cures.length < MOST_OFFERED) cures.push(...curing(refused, finding, [remedy]));
	return cures;
}
