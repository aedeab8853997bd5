import { distance, type Point, toDegrees, toRadians } from "@baywright/geometry";
import { propagate } from "@baywright/survey";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { asSettled } from "./as-settled.ts";
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
	const { survey } = asSettled(bay, system);
	if (survey === null) return null;
	const before = known.get(survey.covariance);
	if (before !== undefined) return before;
	const worked = surenessOf(survey);
	known.set(survey.covariance, worked);
	return worked;
}

const known = new WeakMap<BaySurvey["covariance"], DimensionSureness>();

function surenessOf({ corners, rises, covariance, readings }: BaySurvey): DimensionSureness {
	const walls = rises.map((rise, wall) => slopesOfWall(corners, rise, wall));
	const size = 2 * corners.length + rises.length;
	const sdOf = (...slopes: readonly Slope[]): number => {
		const gradient = new Float64Array(size);
		for (const slope of slopes) for (const [column, by] of slope) gradient[column] = (gradient[column] as number) + by;
		return propagate(covariance, gradient);
	};
	const isRead = (kind: "run" | "rise", wall: number) =>
		readings.some(({ reading }) => reading.kind === kind && reading.wall === wall);
	const isReadAt = (corner: number) =>
		readings.some(({ reading }) => (reading.kind === "angle" || reading.kind === "chord") && reading.corner === corner);
	return {
		runs: walls.map(({ run, chord }, wall) => {
			const sd = sdOf(chord);
			return isRead("run", wall) || sd <= SETTLED_RUN * run ? sd : null;
		}),
		rises: walls.map(({ run, rise }, wall) => {
			const sd = sdOf(rise);
			// The rise of a straight wall is no figure of the survey.
			return sd > 0 && (isRead("rise", wall) || sd <= SETTLED_RISE * run) ? sd : null;
		}),
		angles: corners.map((_, corner) => {
			const [left, right] = [walls[corner - 1], walls[corner]];
			if (left === undefined || right === undefined) return null;
			const sd = sdOf(right.headingAtLeft, negated(left.headingAtRight));
			return isReadAt(corner) || sd <= SETTLED_ANGLE ? toDegrees(sd) : null;
		}),
	};
}

/** How a figure changes with a few of the columns of the survey's covariance. */
type Slope = readonly (readonly [column: number, by: number])[];

const negated = (slope: Slope): Slope => slope.map(([column, by]) => [column, -by]);

/** A bowed face leaves its chord by 2 atan(2h / c) at either end, away from the room at the left one. */
function slopesOfWall(corners: readonly Point[], rise: number, wall: number) {
	const [left, right] = [corners[wall] as Point, corners[wall + 1] as Point];
	const run = distance(left, right);
	const [ux, uy] = [(right.x - left.x) / run, (right.y - left.y) / run];
	const at = 2 * wall;
	const riseColumn = 2 * corners.length + wall;
	const chord: Slope = [
		[at, -ux],
		[at + 1, -uy],
		[at + 2, ux],
		[at + 3, uy],
	];
	const heading: Slope = [
		[at, uy / run],
		[at + 1, -ux / run],
		[at + 2, -uy / run],
		[at + 3, ux / run],
	];
	const steep = 4 / (run * (1 + ((2 * rise) / run) ** 2));
	const bow: Slope = [
		[riseColumn, steep],
		...chord.map(([column, by]): Slope[number] => [column, (-steep * rise * by) / run]),
	];
	return {
		run,
		chord,
		rise: [[riseColumn, 1]] as Slope,
		headingAtLeft: [...heading, ...bow],
		headingAtRight: [...heading, ...negated(bow)],
	};
}
