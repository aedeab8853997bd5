import { distance, type Point, toDegrees, toRadians } from "@baywright/geometry";
import { propagate, type ReadingOf, readingGradient } from "@baywright/survey";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { settledSurvey } from "./as-settled.ts";
import type { BaySurvey } from "./settle.ts";

/** One standard deviation of what the readings settle; null for what is still only drawn. */
export interface DimensionSureness {
	/** One a wall, mm. */
	readonly runs: readonly (number | null)[];
	/** One a wall, mm. */
	readonly rises: readonly (number | null)[];
	/** One a corner, degrees; null at the two ends. */
	readonly angles: readonly (number | null)[];
}

/**
 * How sure a figure must be to count as taped: a quarter of what a drawing alone is good to (a tenth of a run, 10° a turn, a twentieth of the
 * chord for a rise). What was itself read counts however short it is.
 */
const SETTLED_RUN = 0.1 / 4;
const SETTLED_ANGLE = toRadians(10) / 4;
const SETTLED_RISE = 0.05 / 4;

/** How sure all readings together make the runs, rises and angles of a bay; null where nothing was taped or it settles nothing. */
export function dimensionSureness(bay: Bay, system: TrackSystem): DimensionSureness | null {
	const survey = settledSurvey(bay, system);
	if (survey === null) return null;
	const before = known.get(survey.covariance);
	if (before !== undefined) return before;
	const worked = surenessOf(survey);
	known.set(survey.covariance, worked);
	return worked;
}

const known = new WeakMap<BaySurvey["covariance"], DimensionSureness>();

function surenessOf({ corners, rises, covariance, readings, drawn }: BaySurvey): DimensionSureness {
	const settled = { corners, rises, readings: drawn.readings };
	const sdOf = (reading: ReadingOf): number => {
		const gradient = readingGradient(settled, reading);
		if (gradient === null) throw new Error("Broken invariant: a settled bay without one of its own walls or corners.");
		return propagate(covariance, gradient);
	};
	const isRead = (kind: "run" | "rise", wall: number) =>
		readings.some(({ reading }) => reading.kind === kind && reading.wall === wall);
	const isReadAt = (corner: number) =>
		readings.some(({ reading }) => (reading.kind === "angle" || reading.kind === "chord") && reading.corner === corner);
	const chord = (wall: number) => distance(corners[wall] as Point, corners[wall + 1] as Point);
	return {
		runs: rises.map((_, wall) => {
			const sd = sdOf({ kind: "run", wall });
			return isRead("run", wall) || sd <= SETTLED_RUN * chord(wall) ? sd : null;
		}),
		rises: rises.map((_, wall) => {
			const sd = sdOf({ kind: "rise", wall, at: null });
			// The rise of a straight wall is no figure of the survey.
			return sd > 0 && (isRead("rise", wall) || sd <= SETTLED_RISE * chord(wall)) ? sd : null;
		}),
		angles: corners.map((_, corner) => {
			if (corner === 0 || corner === rises.length) return null;
			const sd = sdOf({ kind: "angle", corner });
			return isReadAt(corner) || sd <= SETTLED_ANGLE ? toDegrees(sd) : null;
		}),
	};
}
