import type { Point } from "@baywright/geometry";
import type { BayFault, ReadingOf } from "@baywright/survey";
import type { Finding } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import { disagreementFigures, faultFigures, taskFigures } from "./describe-survey.ts";
import { AT_95, GRAVEST_FIRST, type MayChange } from "./may-change.ts";
import { SURE_ENOUGH, type WantedReadings } from "./next-readings.ts";
import type { BaySurvey } from "./settle.ts";
import type { SureCut } from "./uncertainty.ts";

/** Why the readings of a bay settle nothing; what stands in the way of any bay at all is told with its walls. */
export function unsettledFindings(bay: Bay, faults: readonly BayFault[]): Finding[] {
	return faults.map((fault) => ({
		code: "readings-cannot-settle",
		where: "reading" in fault ? { field: readingField(bay, fault.reading) } : {},
		figures: faultFigures(fault, bay.readings, bay.walls.length),
		remedies: [],
	}));
}

/** Readings that do not close: the likeliest explanation, at the reading it names. */
export function disagreement(bay: Bay, { suspects, closes, closesWithin, readings, corners }: BaySurvey): Finding[] {
	const [suspect] = suspects;
	if (suspect === undefined)
		return closes ? [] : [{ code: "readings-disagree", where: {}, figures: { ...closesWithin }, remedies: [] }];
	const [index] = suspect.readings as readonly [number];
	const at = placeOf((readings[index] as (typeof readings)[number]).reading, corners);
	return [
		{
			code: "readings-disagree",
			where: { field: readingField(bay, index), ...(at === null ? {} : { at }) },
			figures: disagreementFigures(suspect, readings, bay.walls.length),
			remedies: [],
		},
	];
}

/** Cut lengths too unsure to cut, and what else may come of the bay within its ±; the worst of each. */
export function surenessFindings(bay: Bay, cuts: readonly SureCut[], wanted: WantedReadings): Finding[] {
	const worst = cuts.reduce<SureCut | null>((most, cut) => (most === null || cut.sd > most.sd ? cut : most), null);
	if (worst === null) return [];
	const isUnsure = worst.sd > SURE_ENOUGH;
	// How far a length that is too unsure may be off besides is of no use to anyone.
	const worthTelling = isUnsure ? GRAVEST_FIRST.filter((change) => change !== "uneven-length") : GRAVEST_FIRST;
	const change = worthTelling.find((each) => cuts.some(({ mayChange }) => mayChange === each));
	return [
		...(isUnsure ? [unsure(bay, worst, wanted)] : []),
		...(change === undefined ? [] : [mayBeOther(cuts, change)]),
	];
}

/** The first reading to take, what it makes of the ±, and how many with it bring the ± where it should be. */
function unsure({ walls }: Bay, { piece, value, sd }: SureCut, { readings, enough, reaches }: WantedReadings): Finding {
	const [first] = readings;
	return {
		code: "cut-length-unsure",
		where: { piece },
		figures: {
			length: value,
			sure: AT_95 * sd,
			goal: AT_95 * SURE_ENOUGH,
			...(first === undefined
				? {}
				: {
						...taskFigures(first.reading, walls.length),
						first: AT_95 * first.reaches,
						count: readings.length,
						reaches: AT_95 * reaches,
						enough: enough ? 1 : 0,
					}),
		},
		remedies: [],
	};
}

const mayBeOther = (cuts: readonly SureCut[], change: MayChange): Finding => ({
	code: "track-may-change",
	where: { piece: cuts.find(({ mayChange }) => mayChange === change)?.piece as string },
	figures: { change },
	remedies: [],
});

const readingField = ({ readings }: Bay, index: number): string =>
	index < readings.length ? `readings[${index}]` : `fitted.spans[${index - readings.length}]`;

/** Where a reading is taken: its corner, or halfway between its ends. */
function placeOf(reading: ReadingOf, corners: readonly Point[]): Point | null {
	const halfway = (from: number, to: number): Point | null => {
		const [a, b] = [corners[from], corners[to]];
		return a && b ? { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 } : null;
	};
	switch (reading.kind) {
		case "run":
		case "rise":
			return halfway(reading.wall, reading.wall + 1);
		case "diagonal":
			return halfway(reading.from, reading.to);
		case "span":
			return halfway(reading.from.wall + 1, reading.to.wall);
		default:
			return corners[reading.corner] ?? null;
	}
}
