import { SLIGHT_TURN } from "@baywright/geometry";
import { type Bay, longestArm, type Reading, readingName, type WantedReading } from "@baywright/setout";

/** What is to be read, without what it reads. */
export type Untaken = WantedReading["reading"];

/** Shorter arms say too little of a corner, mm (common practice, no source): 1 mm of chord is then more than half a degree. */
const LEAST_ARM = 300;

/** A bow with less rise than this is planned straight, mm. */
const NO_RISE = 0.05;

const sd: null = null;

/** What a reading is kept by: its name, counted on where the same is read more than once. */
export const readingKey = (name: string, time: number): string => (time === 0 ? name : `${name} (${time + 1})`);

/** Every wall's run from left to right. */
export const runsOf = ({ walls }: Bay): Untaken[] => walls.map((_, wall) => ({ kind: "run", wall, sd }));

/** The rise of every bowed wall, in its middle. */
export const risesOf = ({ walls }: Bay): Untaken[] =>
	walls.flatMap(({ rise }, wall): Untaken[] =>
		Math.abs(rise) > NO_RISE ? [{ kind: "rise", wall, at: null, sd }] : [],
	);

/**
 * What is taped of the corners where nothing better is known: at each the chord on the longest arms that both walls have, past walls too
 * short for arms the diagonal; then the diagonal from end to end, which checks them all. A corner that is read already is left out.
 */
export function usualAtCorners(bay: Bay): Untaken[] {
	const last = bay.walls.length;
	const corners = pointsOf(bay);
	const atCorners = corners.slice(1, -1).flatMap((_, i): Untaken[] => {
		const corner = i + 1;
		if (bay.readings.some((reading) => isAt(reading, corner))) return [];
		const arm = longestArm(corners, corner);
		const isBent = Math.abs(turnAt(corners, corner)) > SLIGHT_TURN;
		if (arm >= LEAST_ARM && isBent) return [{ kind: "chord", corner, arm, sd }];
		return [{ kind: "diagonal", from: corner - 1, to: corner + 1, sd }];
	});
	return last < 2 ? [] : onlyOnce([...atCorners, { kind: "diagonal", from: 0, to: last, sd }], last);
}

/** What checks the readings where a slip in one would not show: from end to end, whatever else can be read, or a run once more. */
export const checksOf = (bay: Bay): Untaken[] =>
	bay.walls.length < 2
		? runsOf(bay)
		: [{ kind: "diagonal", from: 0, to: bay.walls.length, sd }, ...usualAtCorners(bay)];

/** Everything of a bay that may be asked for. */
export function possibleReadings(bay: Bay): Untaken[] {
	const corners = pointsOf(bay);
	const between = corners.slice(1, -1).map((_, i) => i + 1);
	const diagonals = corners.flatMap((_, from) =>
		corners.slice(from + 2).map((_, i): Untaken => ({ kind: "diagonal", from, to: from + 2 + i, sd })),
	);
	const atCorners = between.flatMap((corner): Untaken[] => {
		const arm = longestArm(corners, corner);
		const angle: Untaken = { kind: "angle", corner, sd };
		return arm > 0 ? [{ kind: "chord", corner, arm, sd }, angle] : [angle];
	});
	return [...runsOf(bay), ...risesOf(bay), ...diagonals, ...atCorners];
}

const pointsOf = ({ corners }: Bay) => corners.map(([x, y]) => ({ x, y }));

const isAt = (reading: Reading, corner: number): boolean =>
	(reading.kind === "chord" || reading.kind === "angle") && reading.corner === corner;

function turnAt(corners: ReturnType<typeof pointsOf>, corner: number): number {
	const [before, at, after] = [corners[corner - 1], corners[corner], corners[corner + 1]];
	if (!before || !at || !after) return 0;
	const [ax, ay, bx, by] = [at.x - before.x, at.y - before.y, after.x - at.x, after.y - at.y];
	return Math.atan2(ay * bx - ax * by, ax * bx + ay * by);
}

function onlyOnce(readings: readonly Untaken[], walls: number): Untaken[] {
	const names = readings.map((reading) => readingName(reading, walls));
	return readings.filter((_, i) => names.indexOf(names[i] as string) === i);
}
