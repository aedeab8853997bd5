import type { Outcome, Point } from "@baywright/geometry";
import {
	type BayFault,
	type Reading,
	type SettledBay,
	type Suspicion,
	settleBay,
	suspectReadings,
} from "@baywright/survey";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { projectionsOf } from "../track/track-rule.ts";

/** A bay as its readings say it is: corners, rises, covariance, how each reading agrees, redundancy and the global test. */
export interface BaySurvey extends Omit<SettledBay, "readings"> {
	/** The job's readings in their order, then the spans taped between brackets. */
	readonly readings: readonly CheckedReading[];
	/** The largest residuals, mm and degrees: the bay closes within these. Nought with no readings. */
	readonly closesWithin: Within;
	/** Which readings to doubt, the most suspect first; none where everything agrees. */
	readonly suspects: readonly Suspect[];
}

export interface CheckedReading {
	readonly reading: Reading;
	/** Adjusted less taken, mm or degrees as the reading. */
	readonly residual: number;
	/** Share of an error that would show, 0 to 1. */
	readonly redundancy: number;
	/** Null where nothing checks the reading. */
	readonly standardized: number | null;
}

export interface Within {
	readonly length: number;
	readonly angle: number;
}

/**
 * `one-disagrees` and `two-disagree` name the culprits; with `one-of-several` the readings in `alike` might as well be it.
 * Readings by their index in the survey.
 */
export interface Suspect {
	readonly code: "one-disagrees" | "two-disagree" | "one-of-several";
	readonly readings: readonly number[];
	/** By how much each is out: taken less what all others say, mm or degrees as the reading. */
	readonly disagreesBy: readonly number[];
	readonly standardized: readonly number[];
	readonly alike: readonly number[];
	/** How the rest closes without them; `checked` false where nothing is left that could disagree. */
	readonly without: Within & { readonly closes: boolean; readonly checked: boolean };
}

/**
 * Settles a bay by everything that was taped of it. With nothing taped it stays as drawn, and is as unsure. Corner 0 and the direction of
 * `frameWall` stay where they were drawn. What stands in the way is named; a faulty reading by its index in `surveyReadings`.
 */
export function settle(bay: Bay, system: TrackSystem, frameWall = 0): Outcome<BaySurvey, BayFault> {
	const readings = surveyReadings(bay, system);
	const corners = bay.corners.map(([x, y]): Point => ({ x, y }));
	const settled = settleBay({ corners, rises: bay.walls.map(({ rise }) => rise), readings, frameWall });
	return settled.ok ? { ok: true, value: surveyOf(settled.value) } : settled;
}

/** What was taped, in the order of the job: its readings, then the spans between brackets. */
export function surveyReadings(bay: Bay, system: TrackSystem): Reading[] {
	return [...bay.readings, ...spansOf(bay, projectionsOf(bay, system))];
}

/** A span reaches from bracket to bracket, each as far off its wall as it was fitted or planned. */
function spansOf({ fitted }: Bay, projections: readonly number[]): Reading[] {
	const place = ({ wall, at }: { readonly wall: number; readonly at: number }) => {
		const bracket = fitted.brackets.find((each) => each.wall === wall && each.at === at);
		return { wall, at, off: bracket?.projection ?? projections[wall] ?? 0 };
	};
	return fitted.spans.map(({ from, to, value }) => ({
		kind: "span",
		from: place(from),
		to: place(to),
		value,
		sd: null,
	}));
}

export function surveyOf(settled: SettledBay): BaySurvey {
	const readings = settled.readings.map((check, i) => ({ reading: settled.drawn.readings[i] as Reading, ...check }));
	const largest = (inDegrees: boolean) =>
		readings.reduce(
			(most, { reading, residual }) =>
				(reading.kind === "angle") === inDegrees ? Math.max(most, Math.abs(residual)) : most,
			0,
		);
	return {
		...settled,
		readings,
		closesWithin: { length: largest(false), angle: largest(true) },
		suspects: suspectReadings(settled).map(suspectOf),
	};
}

function suspectOf({
	readings,
	grossErrors,
	standardized,
	closes,
	closesWithin,
	redundancy,
	alike,
}: Suspicion): Suspect {
	return {
		code: readings.length > 1 ? "two-disagree" : alike.length > 0 ? "one-of-several" : "one-disagrees",
		readings,
		disagreesBy: grossErrors,
		standardized,
		alike,
		without: { ...closesWithin, closes, checked: Math.round(redundancy) > 0 },
	};
}
