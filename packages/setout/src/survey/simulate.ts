import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { dice, seedOf } from "./dice.ts";
import { randomBay, sketchOf, type TrialBay } from "./random-bays.ts";
import { settle } from "./settle.ts";
import { trackFitter } from "./settled-track.ts";
import { type MeasuringErrors, STRATEGIES, type StrategyName, tryOut } from "./strategies.ts";

/** A tape good to 2 mm and a bevel good to 0.75°, one standard deviation each. */
export const USUAL_ERRORS: MeasuringErrors = { tape: 2, bevel: 0.75 };

/** A piece fits if it is cut no further than this from what the bay needs, mm. */
export const FITS_WITHIN = 5;

/** Errors of the worst piece are counted by the millimetre up to here; the last count is of all beyond. */
export const HISTOGRAM_END = 20;

export interface Simulation {
	/** Bays measured. */
	readonly count: number;
	readonly seed: number;
	readonly errors: MeasuringErrors;
	readonly strategies: readonly StrategyResult[];
}

/** How many bays were cut right the first time when they were measured in one way. */
export interface StrategyResult {
	readonly name: StrategyName;
	/** Share of bays whose worst piece was within 5 mm. */
	readonly firstFit: number;
	readonly readings: { readonly mean: number; readonly least: number; readonly most: number };
	/** Of the worst piece, mm: half, and 95 of 100, of all bays were within; null where that was no track at all. */
	readonly median: number | null;
	readonly within95: number | null;
	/** Bays by the error of their worst piece, mm by mm: 0 to 1, 1 to 2, … and all from 20. */
	readonly histogram: readonly number[];
	/** The same by the number of walls. */
	readonly byWalls: readonly {
		readonly walls: number;
		readonly bays: number;
		readonly firstFit: number;
		readonly readings: number;
	}[];
}

export interface SimulationProgress {
	readonly done: number;
	readonly count: number;
	/** How the bays measured until now came out; reckoned when it is asked for. */
	readonly soFar: () => readonly StrategyResult[];
}

export interface SimulationOrder {
	readonly count: number;
	readonly seed: number;
	readonly errors?: MeasuringErrors;
	/** Ways of measuring to compare; left out, all. Each comes out the same whichever others are. */
	readonly ways?: readonly StrategyName[];
}

/** Generators end early when nobody asks them for more: that is how long work is called off. */
export type SimulationRun = Generator<SimulationProgress, Simulation>;

/** First-fit rate over random bays of three to five walls, measured in every way side by side. */
export const simulateRandomBays = (order: SimulationOrder): SimulationRun =>
	simulated(order, (roll) => randomBay(roll));

/**
 * First-fit rate of one bay, taken to stand as it is drawn and taped now, measured over and over from a poor sketch. Null where its readings
 * settle nothing or no track fits: then there is nothing to be right about.
 */
export function simulateBay(bay: Bay, system: TrackSystem, order: SimulationOrder): SimulationRun | null {
	const survey = settle(bay, system);
	if (!survey.ok || trackFitter(bay, system)(survey.value) === null) return null;
	const truth = { corners: survey.value.corners, rises: survey.value.rises };
	return simulated(order, (roll) => ({ truth, drawn: sketchOf(bay, truth, roll), system }));
}

function* simulated(
	{ count, seed, errors = USUAL_ERRORS, ways = STRATEGIES }: SimulationOrder,
	next: (roll: () => number) => TrialBay,
): SimulationRun {
	const tallies = new Map<StrategyName, Tally>();
	const soFar = () => [...tallies].map(([name, tally]) => resultOf(name, tally));
	for (let done = 0; done < count; done++) {
		yield { done, count, soFar };
		const own = seedOf(seed, done);
		const trial = next(dice(own));
		STRATEGIES.forEach((name, i) => {
			if (!ways.includes(name) || (name === "as-taped" && trial.drawn.readings.length === 0)) return;
			const { readings, worst } = tryOut(name, trial, errors, dice(seedOf(own, i + 1)));
			const tally = tallies.get(name) ?? [];
			tally.push({ walls: trial.truth.rises.length, readings, worst });
			tallies.set(name, tally);
		});
	}
	yield { done: count, count, soFar };
	return { count, seed, errors, strategies: soFar() };
}

type Tally = { readonly walls: number; readonly readings: number; readonly worst: number }[];

function resultOf(name: StrategyName, tally: Tally): StrategyResult {
	const worst = tally.map((each) => each.worst).sort((a, b) => a - b);
	const readings = tally.map((each) => each.readings);
	const histogram = new Array<number>(HISTOGRAM_END + 1).fill(0);
	for (const error of worst) {
		const bin = Math.min(HISTOGRAM_END, Math.floor(error));
		histogram[bin] = (histogram[bin] as number) + 1;
	}
	const share = (part: number) => {
		const error = worst[Math.min(worst.length - 1, Math.ceil(part * worst.length) - 1)] as number;
		return Number.isFinite(error) ? error : null;
	};
	const walls = [...new Set(tally.map((each) => each.walls))].sort((a, b) => a - b);
	return {
		name,
		firstFit: firstFitOf(tally),
		readings: {
			mean: meanOf(readings),
			least: readings.reduce((a, b) => Math.min(a, b)),
			most: readings.reduce((a, b) => Math.max(a, b)),
		},
		median: share(0.5),
		within95: share(0.95),
		histogram,
		byWalls: walls.map((number) => {
			const own = tally.filter((each) => each.walls === number);
			const taken = meanOf(own.map((each) => each.readings));
			return { walls: number, bays: own.length, firstFit: firstFitOf(own), readings: taken };
		}),
	};
}

const firstFitOf = (tally: Tally): number => tally.filter(({ worst }) => worst <= FITS_WITHIN).length / tally.length;

const meanOf = (figures: readonly number[]): number => figures.reduce((sum, each) => sum + each, 0) / figures.length;
