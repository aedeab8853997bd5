import {
	candidateReadings,
	fewestBayReadings,
	type SettledBay,
	type TapedReading,
	tellApartBayReading,
} from "@baywright/survey";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import type { BaySurvey } from "./settle.ts";
import { type TrackFitter, trackFitter } from "./settled-track.ts";
import { cutFigures, roughFigure, type SureFigure } from "./uncertainty.ts";

/**
 * How sure every cut length must be before a track is cut, one standard deviation, mm: ± 3.5 mm at 95 %, so that it is within 5 mm in 99.5
 * of 100.
 */
export const SURE_ENOUGH = 3.5 / 1.96;

/** A reading to take, and one standard deviation of the least sure cut length, mm, before and after. */
export interface WantedReading {
	readonly reading: TapedReading;
	readonly from: number;
	readonly reaches: number;
}

export interface WantedReadings {
	/** In the order in which each helps most; a reading may be asked for again, or twice. */
	readonly readings: readonly WantedReading[];
	/** Whether they bring every cut length to the goal; with none wanted, whether it is there already. */
	readonly enough: boolean;
	/** Deviation of the least sure cut length with all of them taken, mm. */
	readonly reaches: number;
	/** False while no track fits: then they make the length of the whole track surer. */
	readonly fitted: boolean;
}

/**
 * The readings to take until every cut length is as sure as `goal` (one standard deviation, mm): the fewest that are
 * found, not the best one each time. In bays of more than eight walls they are few rather than the fewest.
 */
export function wantedReadings(bay: Bay, system: TrackSystem, survey: BaySurvey, wants: Wants = {}): WantedReadings {
	const { goal = SURE_ENOUGH, candidates = candidateReadings, fitter = trackFitter(bay, system) } = wants;
	const { cuts = cutFigures(survey, fitter) } = wants;
	const figures = cuts ?? roughFigure(bay, system, survey);
	const choice = candidates(survey);
	const asked = fewestBayReadings(survey, choice, gradients(figures), goal);
	const reaches = asked.at(-1)?.reaches ?? Math.max(0, ...figures.map(({ sd }) => sd));
	return {
		readings: asked.map(({ candidate, from, reaches: to }) => ({
			reading: choice[candidate] as TapedReading,
			from,
			reaches: to,
		})),
		enough: cuts !== null && reaches <= goal,
		reaches,
		fitted: cuts !== null,
	};
}

/** Where several readings might as well be the wrong one, what to tape that best tells which it is; null where nothing needs it, or nothing tells. */
export function tellingReading(survey: BaySurvey): TapedReading | null {
	const [suspect] = survey.suspects;
	if (suspect === undefined) return null;
	const choice = candidateReadings(survey);
	const best = tellApartBayReading(survey, suspect, choice);
	return best === null ? null : (choice[best] as TapedReading);
}

interface Wants {
	/** One standard deviation, mm. */
	readonly goal?: number;
	/** What to choose from, and how sure each would be; left out, everything that tape, bevel and rule can read. */
	readonly candidates?: (settled: SettledBay) => readonly TapedReading[];
	/** What `sureCuts` found, where that is known; null where no track fits. */
	readonly cuts?: readonly SureFigure[] | null;
	/** Left out, it is made anew. */
	readonly fitter?: TrackFitter;
}

const gradients = (figures: readonly SureFigure[]) => figures.map(({ gradient }) => gradient);
