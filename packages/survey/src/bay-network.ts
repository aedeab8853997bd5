import { distance, found, type Outcome, type Point, type Radians, refused, toRadians } from "@baywright/geometry";
import { foresee } from "./linear.ts";
import { misfit } from "./measure.ts";
import { type Network, type NetworkPoint, type Parameter, startOf } from "./network.ts";
import { angleByChord, type Observation, type Observed, type Tilt } from "./observation.ts";
import { type Reading, type ReadingFault, type ReadingOf, USUAL_SD } from "./reading.ts";
import { startRise } from "./start-rise.ts";

/** A bay as drawn, and what was read of it. */
export interface DrawnBay {
	/** Of the wall faces, left to right as seen from the room, which lies on the right of travel; mm, y up. */
	readonly corners: readonly Point[];
	/** One a wall, mm, + away from the room; 0 for a straight wall. */
	readonly rises: readonly number[];
	readonly readings: readonly Reading[];
	/** The wall that keeps its drawn direction; the first where left out. Corner 0 keeps its place. */
	readonly frameWall?: number;
}

/** How far off a drawing may be before anything is taped: a share of the run or the chord, and degrees. Common practice, no source. */
const DRAWN_RUN = 0.1;
const DRAWN_TURN = toRadians(10);
const DRAWN_RISE = 0.05;

/**
 * The bay as a network: corners are its points, rises its parameters, readings its first observations in their order, and after them the
 * drawn runs, turns and rises as priors. The frame wall's left corner stands still and its right one slides along the wall.
 */
export function bayNetwork(bay: DrawnBay): Outcome<Network, ReadingFault> {
	const { corners, readings, frameWall = 0 } = bay;
	const faults: ReadingFault[] = [];
	const observations: Observation[] = [];
	readings.forEach((reading, index) => {
		const observation = observationOf(bay, reading, index);
		if (observation.ok) observations.push(observation.value);
		else faults.push(...observation.faults);
	});
	if (faults.length > 0) return { ok: false, faults };
	const left = corners[frameWall];
	const right = corners[frameWall + 1];
	const along = left && right ? (Math.atan2(right.y - left.y, right.x - left.x) as Radians) : (0 as Radians);
	const points = corners.map(({ x, y }, i): NetworkPoint => {
		if (i === frameWall) return { x, y, goes: "nowhere" };
		return { x, y, goes: i === frameWall + 1 ? { along } : "free" };
	});
	const parameters = corners.slice(1).map((_, wall) => riseOf(bay, wall));
	return found({ points, parameters, observations: [...observations, ...priorsOf(bay, points, parameters)] });
}

/** A wall is straight unless it is drawn bowed or a rise was read. */
function riseOf({ corners, rises, readings }: DrawnBay, wall: number): Parameter {
	const drawn = rises[wall] ?? 0;
	const taped = readings.filter(
		(reading): reading is Extract<Reading, { kind: "rise" }> => reading.kind === "rise" && reading.wall === wall,
	);
	if (taped.length === 0) return { value: drawn, fixed: drawn === 0 };
	const run = readings.find((reading) => reading.kind === "run" && reading.wall === wall);
	const chord = run?.value ?? distance(corners[wall] as Point, corners[wall + 1] as Point);
	const readingsOfRise = taped.map(({ at, value, sd }) => ({ at, value, sd: sd ?? USUAL_SD.rise }));
	return { value: startRise(chord, drawn, readingsOfRise), fixed: false };
}

function observationOf(bay: DrawnBay, reading: Reading, index: number): Outcome<Observation, ReadingFault> {
	const observed = observedOf(bay, reading);
	if (observed === null) return refused({ kind: "reading-out-of-place", reading: index });
	const sd = reading.sd ?? USUAL_SD[reading.kind];
	const role = "reading";
	if (reading.kind === "angle") return found({ ...observed, value: toRadians(reading.value), sd: toRadians(sd), role });
	if (reading.kind === "chord") return chordObservation(bay, reading, sd, index);
	return found({ ...observed, value: reading.value, sd, role });
}

/**
 * A chord does not say which side of straight its corner is on, but read either way it makes angles so far apart (marks on both faces,
 * 2 asin(c / 2a); one of them on a straightedge, 180° more) that the drawing tells.
 */
function chordObservation(
	bay: DrawnBay,
	{ corner, arm, value }: Extract<Reading, { kind: "chord" }>,
	sd: number,
	reading: number,
): Outcome<Observation, ReadingFault> {
	const angle = angleByChord(arm, value, sd);
	if (angle === null) return refused({ kind: "chord-too-long", reading, greatest: 2 * arm });
	const taken = { sd: angle.sd, role: "reading" } as const;
	const within: Observation = { ...interiorAngle(bay, corner, arm), value: angle.value, ...taken };
	const past: Observation = { ...interiorAngle(bay, corner, null), value: Math.PI + angle.value, ...taken };
	const off = (observation: Observation) => Math.abs(misfit(observation, foresee(observation, drawnState(bay)).value));
	return found(off(past) < off(within) ? past : within);
}

/** A reading in the network's terms; null where the bay has no such place. */
export function observedOf(bay: DrawnBay, reading: ReadingOf): Observed | null {
	const { corners } = bay;
	const isCorner = (corner: number) => Number.isInteger(corner) && corner >= 0 && corner < corners.length;
	const isWall = (wall: number) => isCorner(wall) && isCorner(wall + 1);
	const isBetween = (corner: number) => isCorner(corner - 1) && isCorner(corner + 1);
	switch (reading.kind) {
		case "run":
			return isWall(reading.wall) ? { kind: "distance", from: reading.wall, to: reading.wall + 1 } : null;
		case "diagonal":
			if (!isCorner(reading.from) || !isCorner(reading.to) || reading.from === reading.to) return null;
			return { kind: "distance", from: reading.from, to: reading.to };
		case "angle":
			return isBetween(reading.corner) ? interiorAngle(bay, reading.corner, null) : null;
		case "chord":
			if (!isBetween(reading.corner)) return null;
			return interiorAngle(bay, reading.corner, isExternal(bay, reading.corner) ? null : reading.arm);
		case "rise": {
			const { wall, at } = reading;
			if (!isWall(wall)) return null;
			// Mid-chord is mid-face, where the face stands off by the rise itself.
			if (at === null) return { kind: "sum", terms: [{ parameter: wall, factor: 1 }] };
			return { kind: "stand", from: wall, to: wall + 1, rise: wall, at };
		}
		case "square": {
			const { corner, wall } = reading;
			if (!isWall(wall) || !isCorner(corner) || corner === wall || corner === wall + 1) return null;
			return { kind: "offset", point: corner, from: wall, to: wall + 1 };
		}
		case "span": {
			if (!isWall(reading.from.wall) || !isWall(reading.to.wall)) return null;
			const place = ({ wall, at, off }: typeof reading.from) => ({ from: wall, to: wall + 1, rise: wall, at, off });
			return { kind: "span", first: place(reading.from), second: place(reading.to) };
		}
	}
}

/** The room lies on the right of travel, so clockwise from the next corner back to the one before. Bows away from the room open the angle. */
function interiorAngle({ rises, readings }: DrawnBay, corner: number, arm: number | null): Observed {
	const isBowed = (wall: number) =>
		(rises[wall] ?? 0) !== 0 || readings.some((reading) => reading.kind === "rise" && reading.wall === wall);
	const tilts = [corner - 1, corner]
		.filter(isBowed)
		.map((wall): Tilt => ({ from: wall, to: wall + 1, rise: wall, arm }));
	return { kind: "angle", at: corner, from: corner + 1, to: corner - 1, tilts };
}

/** As drawn, between the tangents of its faces. */
export function isExternal(bay: DrawnBay, corner: number): boolean {
	const { value } = foresee(interiorAngle(bay, corner, null), drawnState(bay));
	return value > Math.PI;
}

/** Every corner and rise where the drawing has it. */
export const drawnState = ({ corners, rises }: DrawnBay) =>
	startOf({
		points: corners.map(({ x, y }) => ({ x, y, goes: "nowhere" })),
		parameters: corners.slice(1).map((_, wall) => ({ value: rises[wall] ?? 0, fixed: true })),
		observations: [],
	});

function priorsOf(bay: DrawnBay, points: readonly NetworkPoint[], parameters: readonly Parameter[]): Observation[] {
	const role = "prior";
	const { values } = drawnState(bay);
	const state = { values, firstParameter: 2 * points.length };
	const priors = parameters.flatMap(({ fixed }, wall): Observation[] => {
		const run: Observed = { kind: "distance", from: wall, to: wall + 1 };
		const { value: chord } = foresee(run, state);
		const priorOfRun: Observation = { ...run, value: chord, sd: DRAWN_RUN * chord, role };
		if (fixed) return [priorOfRun];
		const rise: Observed = { kind: "sum", terms: [{ parameter: wall, factor: 1 }] };
		const isTaped = bay.readings.some((reading) => reading.kind === "rise" && reading.wall === wall);
		const priorOfRise = {
			...rise,
			value: bay.rises[wall] ?? 0,
			sd: DRAWN_RISE * chord,
			role,
			holdsOn: !isTaped,
		} as const;
		return [priorOfRun, priorOfRise];
	});
	for (let corner = 1; corner < points.length - 1; corner++) {
		const turn: Observed = { kind: "angle", at: corner, from: corner + 1, to: corner - 1 };
		priors.push({ ...turn, value: foresee(turn, state).value, sd: DRAWN_TURN, role });
	}
	return priors;
}
