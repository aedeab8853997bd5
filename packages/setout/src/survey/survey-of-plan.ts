import { errorEllipse } from "@baywright/survey";
import type { BayPlan, SurveyOfPlan } from "../bay-plan.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { AsSettled } from "./as-settled.ts";
import { tellingReading, wantedReadings } from "./next-readings.ts";
import { trackFitter } from "./settled-track.ts";
import { surenessFindings } from "./survey-findings.ts";
import { type SureFigures, sureFigures } from "./uncertainty.ts";

/** What a plan tells of its readings before it is asked how sure it is; null where nothing was taped. */
export function surveyOfPlan({ survey, faults }: AsSettled): SurveyOfPlan | null {
	if (survey === null) return faults.length > 0 ? UNSETTLED : null;
	const { readings, sigma0, redundancy, closes, closesWithin, suspects, corners, covariance } = survey;
	const ellipses = corners.map((_, corner) => errorEllipse(covariance, corner));
	const agreement = { readings, sigma0, redundancy, closes, closesWithin, suspects };
	return { settled: true, ...agreement, ellipses, next: null, telling: null };
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
	telling: null,
};

/**
 * The plan with the ± of every cut length, set-back and bracket, what to tape next and what is too unsure to cut. Takes a few hundred fits. `bay` is as drawn.
 */
export function withSureness(plan: BayPlan, bay: Bay, { survey }: AsSettled): BayPlan {
	if (survey === null || plan.survey === null || plan.chain === null) return plan;
	const fitter = trackFitter(bay, plan.system);
	const sure = plan.path === null ? null : sureFigures(bay, plan.system, survey, fitter);
	const cuts = sure?.cuts ?? null;
	const wanted = wantedReadings(bay, plan.system, survey, { cuts, fitter });
	return {
		...plan,
		...(sure === null ? {} : withSds(plan, sure)),
		survey: { ...plan.survey, next: wanted.readings[0] ?? null, telling: tellingReading(survey) },
		findings: cuts === null ? plan.findings : [...plan.findings, ...surenessFindings(bay, cuts, wanted)],
	};
}

function withSds({ corners, brackets, pieces }: BayPlan, { cuts, setBacks, brackets: sure }: SureFigures) {
	const ofSetBack = (corner: number, side: "left" | "right") =>
		setBacks.find((each) => each.corner === corner && each.side === side)?.sd ?? null;
	// Another number of them is another row.
	const ofBracket = (i: number) => (sure.length === brackets.length ? sure[i] : undefined);
	return {
		corners: corners.map((set) => ({
			...set,
			sd: [ofSetBack(set.corner, "left"), ofSetBack(set.corner, "right")] as const,
		})),
		brackets: brackets.map((bracket, i) => {
			const { fromLeftCorner, fromRightCorner } = ofBracket(i) ?? {};
			return { ...bracket, sd: [fromLeftCorner?.sd ?? null, fromRightCorner?.sd ?? null] as const };
		}),
		pieces: pieces.map((piece, i) => ({ ...piece, sd: cuts[i]?.sd ?? null })),
	};
}
