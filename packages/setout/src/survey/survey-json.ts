import type { BayFault } from "@baywright/survey";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { tellingReading, type WantedReading, wantedReadings } from "./next-readings.ts";
import { type BaySurvey, settle } from "./settle.ts";
import { type SureCut, sureCuts } from "./uncertainty.ts";

/** A bay settled, with all that is asked of a survey: what `settle` shows. */
export type SettledAnswer =
	| {
			readonly ok: true;
			readonly survey: BaySurvey;
			/** Null where no track fits. */
			readonly cuts: readonly SureCut[] | null;
			/** What to take until every cut length is sure enough. */
			readonly wanted: readonly WantedReading[];
			/** What tells which of the doubted readings is wrong; null where nothing needs it. */
			readonly telling: WantedReading["reading"] | null;
	  }
	| { readonly ok: false; readonly faults: readonly BayFault[] };

export function settleAnswer(bay: Bay, system: TrackSystem): SettledAnswer {
	const settled = settle(bay, system);
	if (!settled.ok) return settled;
	const survey = settled.value;
	const cuts = sureCuts(bay, system, survey);
	const wanted = wantedReadings(bay, system, survey, { cuts }).readings;
	return { ok: true, survey, cuts, wanted, telling: tellingReading(survey) };
}

/**
 * The same as the command writes it: lengths mm, angles degrees. Readings by their index in the job's `readings`, spans between brackets
 * counted on after them. A bay that is not settled keeps its drawn corners and says why in `faults`.
 */
export function settleJson(bay: Bay, answer: SettledAnswer) {
	if (!answer.ok)
		return {
			id: bay.id,
			corners: bay.corners,
			sd: null,
			residuals: [],
			sigma0: null,
			redundancy: 0,
			closes: false,
			suspects: [],
			pieces: [],
			next: null,
			telling: null,
			faults: answer.faults,
		};
	const { survey, cuts, wanted, telling } = answer;
	const { corners, covariance, readings, sigma0, redundancy, closes, suspects } = survey;
	const sd = (column: number) => Math.sqrt(covariance[column]?.[column] ?? 0);
	const [next] = wanted;
	return {
		id: bay.id,
		corners: corners.map(({ x, y }) => [x, y]),
		sd: corners.map((_, i) => [sd(2 * i), sd(2 * i + 1)]),
		residuals: readings.map(({ residual, standardized }, reading) => ({ reading, residual, standardized })),
		sigma0,
		redundancy: Math.round(redundancy),
		closes,
		suspects: [...new Set(suspects.flatMap((suspect) => suspect.readings))],
		pieces: (cuts ?? []).map((cut) => ({ name: cut.piece, cutLength: cut.value, sd: cut.sd })),
		next: next === undefined ? null : { reading: next.reading, reaches: next.reaches },
		telling,
	};
}
