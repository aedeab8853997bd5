import { distance, type Point } from "@baywright/geometry";
import {
	type CandidateReading,
	candidateReadings,
	type Reading,
	readOff,
	type SettledBay,
	settleBay,
} from "@baywright/survey";
import { RIGHT_ANGLE_RULE } from "../corner-card.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { WallPlace } from "../job/track-schema.ts";
import { type Dice, normal } from "./dice.ts";
import { wantedReadings } from "./next-readings.ts";
import type { TrialBay } from "./random-bays.ts";
import { surveyOf } from "./settle.ts";
import { type SettledTrack, trackFitter } from "./settled-track.ts";

/** One standard deviation of each way of measuring; errors are normal and independent. */
export interface MeasuringErrors {
	/** Everything taped or ruled, mm. */
	readonly tape: number;
	/** Degrees. */
	readonly bevel: number;
}

/** Ways of measuring a bay, side by side. */
export const STRATEGIES = ["asked", "once", "twice", "bevel", "right-angle", "as-taped"] as const;
export type StrategyName = (typeof STRATEGIES)[number];

/** How one bay measured in one way came out. */
export interface TrialOutcome {
	readonly readings: number;
	/** How far the worst piece was cut from what the true bay needs, mm; infinite where the measured bay takes no track. */
	readonly worst: number;
}

/** Measures the bay in one way, plans it and compares every cut length with what the true bay needs. */
export function tryOut(name: StrategyName, trial: TrialBay, errors: MeasuringErrors, roll: Dice): TrialOutcome {
	const tape = tapeOf(trial, errors, roll);
	if (name === "right-angle") return byRightAngleRule(trial, tape);
	const readings = name === "asked" ? asAsked(trial, errors, tape) : listFor(name, trial).map(tape);
	return planned(trial, readings);
}

/** Measures with an error; the reading knows how sure it is. */
type Tape = (what: CandidateReading) => Reading;

function tapeOf({ truth }: TrialBay, errors: MeasuringErrors, roll: Dice): Tape {
	return (what) => {
		const sd = what.sd ?? sdOf(what, errors);
		const value = readOff(truth, what);
		if (value === null)
			throw new Error(`Broken invariant: a ${what.kind} was asked for that the bay has no place for.`);
		return { ...what, sd, value: value + sd * normal(roll) };
	};
}

const sdOf = ({ kind }: CandidateReading, { tape, bevel }: MeasuringErrors) => (kind === "angle" ? bevel : tape);

/** Rounds of asking, taking and settling anew; of a list this share is taken before it is made anew from what is known then. */
const MOST_ROUNDS = 30;
const AT_ONCE = 0.6;

/** What the next-reading rule asks for, taken and asked again until it is content. */
function asAsked({ drawn, system }: TrialBay, errors: MeasuringErrors, tape: Tape): Reading[] {
	const fitter = trackFitter(drawn, system);
	const candidates = (settled: SettledBay) =>
		candidateReadings(settled).map((each) => ({ ...each, sd: sdOf(each, errors) }));
	const taken: Reading[] = [];
	for (let round = 0; round < MOST_ROUNDS; round++) {
		const settled = settledBy(drawn, taken);
		if (settled === null) break;
		const wanted = wantedReadings(drawn, system, surveyOf(settled), { candidates, fitter });
		if (wanted.readings.length === 0) break;
		const now = wanted.readings.slice(0, Math.ceil(wanted.readings.length * AT_ONCE));
		taken.push(...now.map(({ reading }) => tape(reading)));
	}
	return taken;
}

function listFor(name: Exclude<StrategyName, "asked" | "right-angle">, { truth, drawn }: TrialBay): CandidateReading[] {
	if (name === "as-taped") return drawn.readings.map(({ value: _, ...what }) => what);
	const sd: null = null;
	const { corners, rises } = truth;
	const runs = rises.map((_, wall): CandidateReading => ({ kind: "run", wall, sd }));
	const bowed = rises.flatMap((rise, wall): CandidateReading[] =>
		rise === 0 ? [] : [{ kind: "rise", wall, at: null, sd }],
	);
	if (name === "bevel") {
		const angles = corners.slice(1, -1).map((_, i): CandidateReading => ({ kind: "angle", corner: i + 1, sd }));
		return [...runs, ...bowed, ...angles];
	}
	const diagonals = corners.flatMap((_, from) =>
		corners.slice(from + 2).map((_, i): CandidateReading => ({ kind: "diagonal", from, to: from + 2 + i, sd })),
	);
	const once = [...runs, ...bowed, ...diagonals];
	return name === "once" ? once : [...once, ...once];
}

function settledBy({ corners, walls }: Bay, readings: readonly Reading[]): SettledBay | null {
	const places = corners.map(([x, y]): Point => ({ x, y }));
	const settled = settleBay({ corners: places, rises: walls.map(({ rise }) => rise), readings });
	return settled.ok ? settled.value : null;
}

function planned(trial: TrialBay, readings: readonly Reading[]): TrialOutcome {
	const fitter = trackFitter(trial.drawn, trial.system);
	const settled = settledBy(trial.drawn, readings);
	const measured = settled && fitter(settled);
	if (measured === null) return { readings: readings.length, worst: Number.POSITIVE_INFINITY };
	return { readings: readings.length, worst: worstOf(measured, fitter(trial.truth, measured.joints)) };
}

/** Cut by the figures of a measured bay for the bay as it is. */
function worstOf({ pieces }: SettledTrack, needed: SettledTrack | null): number {
	if (needed === null) return Number.POSITIVE_INFINITY;
	return pieces.reduce((most, { cutLength }, i) => {
		const wanted = needed.pieces[i]?.cutLength ?? Number.POSITIVE_INFINITY;
		return Math.max(most, Math.abs(cutLength - wanted));
	}, 0);
}

/** Every run taped once, and at every corner the rule of the square: 700 of wall takes 490 of track, whatever the angle. */
function byRightAngleRule({ truth, drawn, system }: TrialBay, tape: Tape): TrialOutcome {
	const runs = truth.rises.map((_, wall) => tape({ kind: "run", wall, sd: null }).value);
	const needed = trackFitter(drawn, system)(truth);
	if (needed === null) return { readings: runs.length, worst: Number.POSITIVE_INFINITY };
	const { start, end } = endsOfTrack(drawn, truth, runs);
	const places = [start, ...needed.joints, end];
	const last = needed.pieces.length - 1;
	const errors = needed.pieces.map(({ cutLength }, i) => {
		const takeUp = (i === 0 ? system.endTakeUp : 0) + (i === last ? system.endTakeUp : 0);
		return Math.abs(alongRule(places[i] as WallPlace, places[i + 1] as WallPlace, runs) - takeUp - cutLength);
	});
	return { readings: runs.length, worst: Math.max(...errors) };
}

/** Where the track is drawn to end; at the right end of the last wall as taped, where nothing says otherwise. */
function endsOfTrack({ track }: Bay, { corners }: TrialBay["truth"], runs: readonly number[]) {
	const last = runs.length - 1;
	const run = (wall: number) => distance(corners[wall] as Point, corners[wall + 1] as Point);
	const asTaped = ({ wall, at }: WallPlace) => ({
		wall,
		at: Math.abs(at - run(wall)) < 0.5 ? (runs[wall] as number) : at,
	});
	return {
		start: asTaped(track.start ?? { wall: 0, at: 0 }),
		end: asTaped(track.end ?? { wall: last, at: run(last) }),
	};
}

function alongRule(from: WallPlace, to: WallPlace, runs: readonly number[]): number {
	const { brackets, between } = RIGHT_ANGLE_RULE;
	const walls = runs.slice(from.wall, to.wall).reduce((sum, run) => sum + run, 0);
	return walls - from.at + to.at - (to.wall - from.wall) * (2 * brackets - between);
}
