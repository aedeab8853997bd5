import { errorEllipse } from "@baywright/survey";
import type { BayPlan, SurveyOfPlan } from "../bay-plan.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { AsSettled } from "./as-settled.ts";
import { nextReading, SURE_ENOUGH, type WantedReading, type WantedReadings, wantedReadings } from "./next-readings.ts";
import { trackFitter } from "./settled-track.ts";
import { surenessFindings } from "./survey-findings.ts";
import { type SureCut, sureCuts } from "./uncertainty.ts";

/** What a plan tells of its readings before it is asked how sure it is; null where nothing was taped. */
export function surveyOfPlan({ survey, faults }: AsSettled): SurveyOfPlan | null {
	if (survey === null) return faults.length > 0 ? UNSETTLED : null;
	const { readings, sigma0, redundancy, closes, closesWithin, suspects, corners, covariance } = survey;
	const ellipses = corners.map((_, corner) => errorEllipse(covariance, corner));
	return { settled: true, readings, sigma0, redundancy, closes, closesWithin, suspects, ellipses, next: null };
}

/** Walls up to which the fewest readings are searched for: what can be read grows with their square, and the search faster. */
const MOST_SEARCHED = 8;

/** As if the best next reading were all that is wanted, unless it is sure enough without. */
function onlyNext(next: WantedReading | null, cuts: readonly SureCut[] | null): WantedReadings {
	const now = Math.max(0, ...(cuts ?? []).map(({ sd }) => sd));
	const isSure = cuts !== null && now <= SURE_ENOUGH;
	const reaches = isSure || next === null ? now : next.reaches;
	const enough = cuts !== null && reaches <= SURE_ENOUGH;
	return { readings: isSure || next === null ? [] : [next], enough, reaches, fitted: cuts !== null };
}

const UNSETTLED: SurveyOfPlan = {
	settled: false,
	readings: [],
	sigma0: null,
	redundancy: 0,
	closes: false,
	closesWithin: { length: 0, angle: 0 },
	suspects: [],
	ellipses: [],
	next: null,
};

/**
 * The plan with the ± of every cut length, what to tape next and what is too unsure to cut. Takes a few hundred fits. `bay` is as drawn.
 */
export function withSureness(plan: BayPlan, bay: Bay, { survey }: AsSettled): BayPlan {
	if (survey === null || plan.survey === null || plan.chain === null) return plan;
	const fitter = trackFitter(bay, plan.system);
	const cuts = plan.path === null ? null : sureCuts(bay, plan.system, survey, fitter);
	const wanted =
		bay.walls.length <= MOST_SEARCHED
			? wantedReadings(bay, plan.system, survey, { cuts, fitter })
			: onlyNext(nextReading(bay, plan.system, survey, { cuts }), cuts);
	return {
		...plan,
		survey: { ...plan.survey, next: wanted.readings[0] ?? null },
		pieces: cuts === null ? plan.pieces : plan.pieces.map((piece, i) => ({ ...piece, sd: cuts[i]?.sd ?? null })),
		findings: cuts === null ? plan.findings : [...plan.findings, ...surenessFindings(bay, cuts, wanted)],
	};
}
