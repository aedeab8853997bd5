import type { Point } from "@baywright/geometry";
import {
	adjust,
	type CandidateReading,
	type Covariance,
	candidateReadings,
	type DrawnBay,
	nextBayReading,
	propagate,
	type Reading,
	type SettledBay,
	settleBay,
	suspectReadings,
	USUAL_SD,
} from "@baywright/survey";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type TrueBay, tape } from "../oracles/tape.ts";
import { anglesOf, bayOf, diagonalsOf, dice, misdrawn, normal, risesOf, runsOf, shapeOf, taken } from "./surveyed.ts";

/** Printed by every property that fails. */
const SEED = 1407;
const eachBay = (law: (roll: () => number) => void, numRuns: number) =>
	fc.assert(
		fc.property(fc.integer({ min: 0, max: 2 ** 31 }), (seed) => law(dice(seed))),
		{ seed: SEED, numRuns },
	);

function settled(drawn: DrawnBay): SettledBay {
	const outcome = settleBay(drawn);
	if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
	return outcome.value;
}

const apart = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);

/** By how much two bays differ, wherever they lie: every distance between corners, the side each corner lies on, every rise. */
function difference(a: TrueBay, b: TrueBay): number {
	let most = 0;
	a.corners.forEach((_, i) => {
		for (let j = 0; j < i; j++) {
			const of = ({ corners }: TrueBay) => apart(corners[i] as Point, corners[j] as Point);
			most = Math.max(most, Math.abs(of(a) - of(b)));
		}
		if (i < 2) return;
		const of = (bay: TrueBay) => tape(bay, { kind: "square", corner: i, wall: 0 });
		most = Math.max(most, Math.abs(of(a) - of(b)));
	});
	a.rises.forEach((rise, wall) => {
		most = Math.max(most, Math.abs(rise - (b.rises[wall] as number)));
	});
	return most;
}

const wallsOf = (roll: () => number, least: number, most: number) => least + Math.floor(roll() * (most - least + 1));

describe("exact readings return the exact bay, from any drawing within 20 %", () => {
	/** mm; what the drawing still pulls. */
	const EXACT = 1e-3;

	test("runs and angles, bows and external corners among them", () => {
		eachBay((roll) => {
			const walls = wallsOf(roll, 1, 7);
			const shape = shapeOf(roll, walls, { bowed: 0.3, external: 0.2 });
			const bay = bayOf(shape);
			const what = [...runsOf(walls), ...anglesOf(walls), ...risesOf(bay)];
			const { corners, rises, sumOfSquares } = settled({
				...bayOf(misdrawn(shape, 0.2, roll)),
				readings: what.map((each) => taken(bay, each)),
			});
			expect(difference({ corners, rises }, bay)).toBeLessThan(EXACT);
			expect(sumOfSquares).toBeLessThan(1e-9);
		}, 1000);
	});

	test("runs and chords, on bowed faces and past external corners", () => {
		eachBay((roll) => {
			const walls = wallsOf(roll, 2, 6);
			const shape = shapeOf(roll, walls, { bowed: 0.3, external: 0.3 });
			const bay = bayOf(shape);
			const corners = anglesOf(walls).map((angle): CandidateReading => {
				// Near straight and on a bow, marks on both faces may themselves lie past straight: read off by the bevel.
				const steep = Math.abs(tape(bay, angle) - 180) > 50;
				return steep && angle.kind === "angle" ? { kind: "chord", corner: angle.corner, arm: 200, sd: null } : angle;
			});
			const readings = [...runsOf(walls), ...corners, ...risesOf(bay)].map((each) => taken(bay, each));
			const result = settled({ ...bayOf(misdrawn(shape, 0.2, roll)), readings });
			expect(difference(result, bay)).toBeLessThan(EXACT);
		}, 1000);
	});

	test("runs and diagonals alone", () => {
		eachBay((roll) => {
			const walls = wallsOf(roll, 2, 6);
			const shape = shapeOf(roll, walls, { external: roll() < 0.5 ? 0.3 : 0 });
			const bay = bayOf(shape);
			const readings = [...runsOf(walls), ...diagonalsOf(walls)].map((each) => taken(bay, each));
			const result = settled({ ...bayOf(misdrawn(shape, 0.2, roll)), readings });
			expect(difference(result, bay)).toBeLessThan(EXACT);
		}, 1500);
	});

	test("bows taped at stations, corners by squares and by spans between brackets", () => {
		eachBay((roll) => {
			const walls = 3;
			const shape = shapeOf(roll, walls, { bowed: 0.5 });
			const bay = bayOf(shape);
			// A square or a span reads the same on both sides of where it is longest.
			fc.pre(anglesOf(walls).every((angle) => tape(bay, angle) > 100 && tape(bay, angle) < 150));
			const stations = bay.rises.flatMap((rise, wall): CandidateReading[] => {
				if (rise === 0) return [];
				const at = (share: number) => share * (shape.lengths[wall] as number);
				return [
					{ kind: "rise", wall, at: at(0.3), sd: null },
					{ kind: "rise", wall, at: at(0.65), sd: null },
				];
			});
			const span: CandidateReading = {
				kind: "span",
				from: { wall: 1, at: (shape.lengths[1] as number) * 0.7, off: 40 },
				to: { wall: 2, at: 150, off: 45 },
				sd: null,
			};
			const square: CandidateReading = { kind: "square", corner: 2, wall: 0, sd: null };
			const what = [...runsOf(walls), ...anglesOf(walls).slice(0, 1), square, span, ...stations];
			const readings = what.map((each) => taken(bay, each));
			const result = settled({ ...bayOf(misdrawn(shape, 0.1, roll)), readings });
			expect(result.sumOfSquares).toBeLessThan(1e-6);
			expect(difference(result, bay)).toBeLessThan(EXACT);
		}, 300);
	});
});

/** What was read, with the error that such a reading has. */
function noisy(bay: TrueBay, what: readonly CandidateReading[], roll: () => number): Reading[] {
	return what.map((each) => {
		const reading = taken(bay, each);
		return { ...reading, value: reading.value + USUAL_SD[reading.kind] * normal(roll) };
	});
}

test("a blunder of 40 mm on the tape is named first in at least 95 % of bays with two or more redundant readings", () => {
	const roll = dice(SEED);
	let [bays, named, alike] = [0, 0, 0];
	while (bays < 1000) {
		const walls = wallsOf(roll, 3, 5);
		const shape = shapeOf(roll, walls);
		const bay = bayOf(shape);
		const taped = [...runsOf(walls), ...diagonalsOf(walls)];
		const again = taped.filter(() => roll() < 0.5);
		const chords = anglesOf(walls).flatMap((angle): CandidateReading[] =>
			angle.kind === "angle" && roll() < 0.5 ? [{ kind: "chord", corner: angle.corner, arm: 400, sd: null }] : [],
		);
		const readings = noisy(bay, [...taped, ...again, ...chords], roll);
		const culprit = Math.floor(roll() * (taped.length + again.length));
		const reading = readings[culprit] as Reading;
		readings[culprit] = { ...reading, value: reading.value + (roll() < 0.5 ? 40 : -40) };
		const result = settled({ ...bayOf(misdrawn(shape, 0.2, roll)), readings });
		if (result.redundancy < 1.5) continue;
		bays++;
		const [first] = suspectReadings(result);
		if (first?.readings[0] === culprit) named++;
		else if (first?.alike.includes(culprit)) alike++;
	}
	console.log(
		`seed ${SEED}: of ${bays} bays the blunder is named first in ${((named / bays) * 100).toFixed(1)} %, and in another ${((alike / bays) * 100).toFixed(1)} % told as one of several that cannot be told apart`,
	);
	expect(named / bays).toBeGreaterThanOrEqual(0.95);
});

test("good readings pass the global test in 95 % of bays, and the tests of single readings in 99.9 %", () => {
	const roll = dice(SEED);
	let [closing, outstanding, readings] = [0, 0, 0];
	const bays = 1500;
	for (let i = 0; i < bays; i++) {
		const walls = wallsOf(roll, 3, 5);
		const shape = shapeOf(roll, walls);
		const bay = bayOf(shape);
		const what = [...runsOf(walls), ...diagonalsOf(walls), ...diagonalsOf(walls)];
		const result = settled({ ...bayOf(misdrawn(shape, 0.1, roll)), readings: noisy(bay, what, roll) });
		if (result.closes) closing++;
		readings += what.length;
		outstanding += result.readings.filter(({ standardized }) => Math.abs(standardized as number) > 3.29).length;
	}
	// Four deviations of the share itself: 0.6 % a piece, and 0.02 %.
	expect(Math.abs(closing / bays - 0.95)).toBeLessThan(4 * Math.sqrt((0.95 * 0.05) / bays));
	expect(Math.abs(outstanding / readings - 0.001)).toBeLessThan(8e-4);
});

test("the covariance is what thousands of surveys of the same bay scatter by", () => {
	const roll = dice(SEED);
	const shape = shapeOf(roll, 4, { bowed: 0.5 });
	const bay = bayOf(shape);
	const what = [...runsOf(4), ...diagonalsOf(4).slice(0, 4), ...anglesOf(4), ...risesOf(bay)];
	const drawn = bayOf(misdrawn(shape, 0.1, roll));
	const columns = 2 * bay.corners.length + bay.rises.length;
	const figures = Array.from({ length: 6 }, () => Array.from({ length: columns }, () => roll() - 0.5));
	const surveys = 4000;
	const sums = figures.map(() => ({ sum: 0, squares: 0 }));
	for (let i = 0; i < surveys; i++) {
		const { corners, rises } = settled({ ...drawn, readings: noisy(bay, what, roll) });
		const columnsNow = [...corners.flatMap(({ x, y }) => [x, y]), ...rises];
		figures.forEach((figure, k) => {
			const value = figure.reduce((total, factor, j) => total + factor * (columnsNow[j] as number), 0);
			const tally = sums[k] as { sum: number; squares: number };
			tally.sum += value;
			tally.squares += value * value;
		});
	}
	const { covariance } = settled({ ...drawn, readings: what.map((each) => taken(bay, each)) });
	figures.forEach((figure, k) => {
		const { sum, squares } = sums[k] as { sum: number; squares: number };
		const scatter = Math.sqrt(squares / surveys - (sum / surveys) ** 2);
		// The deviation of a deviation from 4000 draws is 1.1 %; four of them.
		expect(Math.abs(scatter / propagate(covariance, figure) - 1)).toBeLessThan(0.045);
	});
});

/** The same from corner 0, where a bay's own figures are seen from: coordinates less its own. */
function seenFrom0(covariance: Covariance, corners: number): Covariance {
	const own = (i: number, axis: number) => (i < 2 * corners && i % 2 === axis ? 1 : 0);
	const at = (i: number, j: number) => covariance[i]?.[j] as number;
	return covariance.map((row, i) =>
		row.map((value, j) => {
			let sum = value;
			for (const axis of [0, 1]) {
				sum -= own(i, axis) * at(axis, j) + own(j, axis) * at(i, axis);
				for (const other of [0, 1]) sum += own(i, axis) * own(j, other) * at(axis, other);
			}
			return sum;
		}),
	);
}

test("the next reading is the one that brute force finds: every candidate taken and the bay settled again", () => {
	eachBay((roll) => {
		const walls = wallsOf(roll, 2, 5);
		const shape = shapeOf(roll, walls, { bowed: 0.2 });
		const bay = bayOf(shape);
		const all = [...runsOf(walls), ...diagonalsOf(walls), ...anglesOf(walls), ...risesOf(bay)];
		const readings = noisy(
			bay,
			all.filter(() => roll() < 0.6),
			roll,
		);
		const drawn: DrawnBay = { ...bayOf(misdrawn(shape, 0.1, roll)), readings, frameWall: Math.floor(roll() * walls) };
		const now = settled(drawn);
		const columns = 2 * now.corners.length + walls;
		const figures = Array.from({ length: 3 }, () => Array.from({ length: columns }, () => roll() - 0.5));
		const worst = (covariance: Covariance) => Math.max(...figures.map((figure) => propagate(covariance, figure)));
		const candidates = candidateReadings(now);
		const next = nextBayReading(now, candidates, figures);
		const reached = candidates.map((candidate) => {
			// Read just as the bay now stands and settled from there, so that it stays where it is.
			const reading = { ...candidate, value: tape(now, candidate) };
			const { network } = settled({ ...drawn, readings: [...readings, reading] });
			const points = network.points.map(({ goes }, i) => ({ ...(now.corners[i] as Point), goes }));
			const parameters = network.parameters.map(({ fixed }, i) => ({ value: now.rises[i] as number, fixed }));
			const again = adjust({ ...network, points, parameters });
			if (!again.ok) throw new Error(JSON.stringify(again.faults));
			return worst(seenFrom0(again.value.covariance, now.corners.length));
		});
		expect(next?.from).toBeCloseTo(worst(now.covariance), 6);
		const best = Math.min(...reached);
		expect(Math.abs((next?.reaches as number) / best - 1)).toBeLessThan(1e-4);
		expect(Math.abs((reached[next?.candidate as number] as number) / best - 1)).toBeLessThan(1e-4);
	}, 150);
});

test("whatever is drawn and read, a bay is settled or refused by name: nothing is thrown and no figure is none", () => {
	const odd = fc.oneof(
		{ weight: 6, arbitrary: fc.double({ min: -3000, max: 3000, noNaN: true }) },
		{ weight: 1, arbitrary: fc.constantFrom(0, Number.NaN, Number.POSITIVE_INFINITY, 1e-300, 1e200, -1) },
	);
	const index = fc.integer({ min: -1, max: 5 });
	const sd = fc.option(odd, { nil: null });
	const place = fc.record({ wall: index, at: odd, off: odd });
	const reading: fc.Arbitrary<Reading> = fc.oneof(
		fc.record({ kind: fc.constant("run" as const), wall: index, value: odd, sd }),
		fc.record({ kind: fc.constant("diagonal" as const), from: index, to: index, value: odd, sd }),
		fc.record({ kind: fc.constant("angle" as const), corner: index, value: odd, sd }),
		fc.record({ kind: fc.constant("chord" as const), corner: index, arm: odd, value: odd, sd }),
		fc.record({ kind: fc.constant("rise" as const), wall: index, at: fc.option(odd, { nil: null }), value: odd, sd }),
		fc.record({ kind: fc.constant("square" as const), corner: index, wall: index, value: odd, sd }),
		fc.record({ kind: fc.constant("span" as const), from: place, to: place, value: odd, sd }),
	);
	const corner = fc.oneof(fc.record({ x: odd, y: odd }), fc.constantFrom({ x: 0, y: 0 }, { x: 900, y: 0 }));
	const bay = fc.record({
		corners: fc.array(corner, { maxLength: 5 }),
		rises: fc.array(odd, { maxLength: 4 }),
		readings: fc.array(reading, { maxLength: 6 }),
		frameWall: index,
	});
	fc.assert(
		fc.property(bay, (drawn) => {
			const outcome = settleBay(drawn);
			if (!outcome.ok) {
				expect(outcome.faults.length).toBeGreaterThan(0);
				return;
			}
			const { corners, rises, covariance, readings, sumOfSquares } = outcome.value;
			const figures = [corners.map(({ x, y }) => [x, y]), rises, covariance.map((row) => [...row]), sumOfSquares];
			const residuals = readings.flatMap(({ residual, redundancy, standardized }) => [
				residual,
				redundancy,
				standardized ?? 0,
			]);
			expect([...figures, residuals].flat(3).every(Number.isFinite)).toBe(true);
			suspectReadings(outcome.value);
			nextBayReading(outcome.value, candidateReadings(outcome.value), [Array(40).fill(1)]);
		}),
		{ seed: SEED, numRuns: 2000 },
	);
});
