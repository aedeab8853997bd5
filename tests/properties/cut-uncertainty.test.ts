import type { Point } from "@baywright/geometry";
import {
	AT_95,
	type Bay,
	type BaySurvey,
	builtInSystems,
	libraryOf,
	parseJob,
	planBay,
	SURE_ENOUGH,
	settle,
	sureCuts,
	sureFigures,
	type TrackSystem,
	wantedReadings,
} from "@baywright/setout";
import type { CandidateReading } from "@baywright/survey";
import { expect, test } from "vitest";
import { preferredTrack } from "../oracles/preferred-track.ts";
import { tape } from "../oracles/tape.ts";
import { diagonalsOf, dice, normal, risesOf, runsOf, bayOf as shapedBay, shapeOf } from "./surveyed.ts";

/** Printed by every property that fails. */
const SEED = 1407;

const empty = parseJob({ format: "baywright-job", version: 1, bays: [] });
if (!empty.ok) throw new Error(JSON.stringify(empty.problems));
const library = libraryOf(empty.job);
const light = builtInSystems.find(({ id }) => id === "light-corded") as TrackSystem;

interface Stands {
	readonly corners: readonly Point[];
	readonly rises: readonly number[];
}

function jobBay({ corners, rises }: Stands, more: object = {}): Bay {
	const walls = rises.map((rise) => ({ rise }));
	const bay = { id: "b1", corners: corners.map(({ x, y }) => [x, y]), walls, ...more };
	const parsed = parseJob({ format: "baywright-job", version: 1, bays: [bay] });
	if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
	return parsed.job.bays[0] as Bay;
}

const at = (bay: Bay, { corners, rises }: Stands): Bay => ({
	...bay,
	corners: corners.map(({ x, y }): [number, number] => [x, y]),
	walls: bay.walls.map((wall, i) => ({ ...wall, rise: rises[i] as number })),
	readings: [],
});

/** Cut lengths by the plan itself; null where it is refused. */
function planned(bay: Bay): readonly number[] | null {
	const { path, pieces } = planBay(bay, library, { stockNodes: 1, trials: 0 });
	return path === null ? null : pieces.map(({ cutLength }) => cutLength);
}

function settled(bay: Bay): BaySurvey {
	const outcome = settle(bay, light);
	if (!outcome.ok) throw new Error(`seed ${SEED}: ${JSON.stringify(outcome.faults)}`);
	return outcome.value;
}

const readingsOf = (bay: Stands, what: readonly CandidateReading[]) =>
	what.map((each) => ({ ...each, value: tape(bay, each) })) as Bay["readings"];

test("with every bend as wide as preferred the slopes are those of the closed form", () => {
	const roll = dice(SEED);
	let bays = 0;
	while (bays < 60) {
		const walls = 2 + Math.floor(roll() * 4);
		const shape = shapeOf(roll, walls, { external: 0.2 });
		const stands = shapedBay({
			...shape,
			turns: shape.turns.map((turn) => Math.sign(turn) * Math.min(80, Math.abs(turn))),
		});
		const bay = jobBay(stands);
		const plan = planBay(bay, library, { stockNodes: 1, trials: 0 });
		const isPlain =
			plan.corners.length === walls - 1 && plan.corners.every(({ kind, radius }) => kind === "bend" && radius === 310);
		if (!isPlain || plan.pieces.length !== 1) continue;
		bays++;
		const [cut] = sureCuts(bay, light, settled(bay)) ?? [];
		const form = preferredTrack(stands.corners, plan.projections, 310);
		expect(cut?.value, `seed ${SEED}, bay ${bays}`).toBeCloseTo(form.length - 2 * light.endTakeUp, 6);
		// What cannot move has no slope: corner 0, and no wall is bowed.
		form.slopes.slice(2).forEach((slope, i) => {
			expect(cut?.gradient[i + 2], `seed ${SEED}, bay ${bays}, column ${i + 2}`).toBeCloseTo(slope, 5);
		});
	}
});

test("anywhere, legs full and bows among them, they are what the plan itself changes by", () => {
	const roll = dice(SEED + 1);
	let [bays, full] = [0, 0];
	while (bays < 40) {
		const walls = 2 + Math.floor(roll() * 4);
		const shape = shapeOf(roll, walls, { bowed: 0.3, external: 0.2 });
		const stands = shapedBay({ ...shape, lengths: shape.lengths.map((length) => length * 0.7 + 100) });
		const bay = jobBay(stands);
		const plan = planBay(bay, library, { stockNodes: 1, trials: 0 });
		if (plan.path === null || plan.pieces.length !== 1) continue;
		const survey = settled(bay);
		const cuts = sureCuts(bay, light, survey);
		const [cut] = cuts ?? [];
		if (cut === undefined || cut.uneven) continue;
		bays++;
		if (plan.corners.some(({ radius, kind }) => kind === "bend" && radius < 309)) full++;
		expect(cut.value).toBeCloseTo(plan.pieces[0]?.cutLength as number, 6);
		const step = 0.02;
		for (let column = 2; column < 2 * (walls + 1); column++) {
			if (survey.covariance[column]?.[column] === 0) continue;
			const moved = (by: number) =>
				planned(
					at(bay, {
						...survey,
						corners: survey.corners.map(({ x, y }, i) => ({
							x: x + (column === 2 * i ? by : 0),
							y: y + (column === 2 * i + 1 ? by : 0),
						})),
					}),
				)?.[0];
			const [ahead, behind] = [moved(step), moved(-step)];
			if (ahead === undefined || behind === undefined) continue;
			expect(cut.gradient[column], `seed ${SEED + 1}, bay ${bays}, column ${column}`).toBeCloseTo(
				(ahead - behind) / (2 * step),
				3,
			);
		}
	}
	expect(full).toBeGreaterThan(5);
});

test.each([
	["three walls", [900, 1800, 850], [85, 60], [0, 0, 0], true],
	["five walls", [700, 900, 1200, 800, 700], [40, 35, 50, 30], [0, 0, 0, 0, 0], true],
	["legs so short that their bends share them", [700, 560, 900, 700], [62, 70, 45], [0, 0, 0, 0], false],
	["a bow", [700, 1800, 700], [80, 80], [0, 0.06, 0], true],
])(
	"the ± of a cut length, a set-back and every bracket is what whole surveys scatter by: settle, fit, cut, set out (%s)",
	// Among legs so short one bracket more or less is needed from survey to survey: a ± is for one row of them.
	(_, lengths, turns, bows, isOneRow) => {
		const roll = dice(SEED);
		const stands = shapedBay({ lengths, turns, bows });
		const walls = lengths.length;
		const what = [...runsOf(walls), ...diagonalsOf(walls), ...risesOf(stands)];
		const readings = readingsOf(stands, what);
		const bay = jobBay(stands, { readings });
		const survey = settled(bay);
		const [cut] = sureCuts(bay, light, survey) ?? [];
		expect(cut?.mayChange).toBeNull();
		const { brackets = [], setBacks = [] } = sureFigures(bay, light, survey) ?? {};
		const setBack = setBacks.find(({ corner, side }) => corner === 1 && side === "right");
		const taped = brackets.flatMap(({ fromLeftCorner, fromRightCorner }) => [fromLeftCorner, fromRightCorner]);
		const bracketSums = taped.map(() => ({ sum: 0, squares: 0 }));
		let others = 0;
		const surveys = 1200;
		const sums = { cut: 0, cutSquares: 0, back: 0, backSquares: 0 };
		for (let i = 0; i < surveys; i++) {
			const noisy = readings.map((reading) => ({
				...reading,
				value: reading.value + (reading.kind === "rise" ? 1 : 2) * normal(roll),
			}));
			const plan = planBay(at(bay, settled({ ...bay, readings: noisy })), library, { stockNodes: 1, trials: 0 });
			const off = (plan.pieces[0]?.cutLength as number) - (cut?.value as number);
			const back = (plan.corners[0]?.setBack[1] as number) - (setBack?.value as number);
			sums.cut += off;
			sums.cutSquares += off * off;
			sums.back += back;
			sums.backSquares += back * back;
			if (plan.brackets.length !== brackets.length) others++;
			plan.brackets
				.flatMap(({ fromLeftCorner, fromRightCorner }) => [fromLeftCorner, fromRightCorner])
				.forEach((reading, k) => {
					const each = bracketSums[k] as (typeof bracketSums)[number];
					each.sum += reading - (taped[k]?.value ?? Number.NaN);
					each.squares += (reading - (taped[k]?.value ?? Number.NaN)) ** 2;
				});
		}
		const scatter = (sum: number, squares: number) => Math.sqrt(squares / surveys - (sum / surveys) ** 2);
		// The deviation of a deviation from 1200 draws is 2 %; four of them.
		expect(Math.abs(scatter(sums.cut, sums.cutSquares) / (cut?.sd as number) - 1), `seed ${SEED}`).toBeLessThan(0.085);
		expect(Math.abs(scatter(sums.back, sums.backSquares) / (setBack?.sd as number) - 1), `seed ${SEED}`).toBeLessThan(
			0.085,
		);
		expect(brackets.length).toBeGreaterThan(5);
		expect(others === 0, `seed ${SEED}: ${others} other rows`).toBe(isOneRow);
		if (!isOneRow) return;
		bracketSums.forEach(({ sum, squares }, k) => {
			const sd = taped[k]?.sd as number;
			// A reading that hangs on nothing taped does not scatter.
			if (sd < 1e-3) expect(scatter(sum, squares), `seed ${SEED}, reading ${k}`).toBeLessThan(0.01);
			else expect(Math.abs(scatter(sum, squares) / sd - 1), `seed ${SEED}, reading ${k}`).toBeLessThan(0.085);
		});
	},
);

test("the readings asked for reach the goal, in fewer than every run and diagonal twice", () => {
	const roll = dice(SEED);
	let [bays, asked, twice] = [0, 0, 0];
	while (bays < 40) {
		const walls = 3 + Math.floor(roll() * 3);
		const stands = shapedBay(shapeOf(roll, walls, { bowed: 0.1 }));
		const bay = jobBay(stands);
		const begun = settled(bay);
		const wanted = wantedReadings(bay, light, begun);
		if (!wanted.fitted) continue;
		bays++;
		expect(wanted.enough, `seed ${SEED}, bay ${bays}`).toBe(true);
		asked += wanted.readings.length;
		twice += 2 * (runsOf(walls).length + diagonalsOf(walls).length);
		const readings = readingsOf(
			stands,
			wanted.readings.map(({ reading }) => reading),
		);
		const taped = { ...bay, readings };
		const survey = settled(taped);
		const cuts = sureCuts(taped, light, survey) ?? [];
		const worst = Math.max(...cuts.map(({ sd }) => sd));
		expect(worst / wanted.reaches, `seed ${SEED}, bay ${bays}`).toBeCloseTo(1, 3);
		expect(worst, `seed ${SEED}, bay ${bays}`).toBeLessThanOrEqual(SURE_ENOUGH * (1 + 1e-4));
		expect(wantedReadings(taped, light, survey).readings.length).toBeLessThanOrEqual(worst <= SURE_ENOUGH ? 0 : 1);
	}
	expect(asked).toBeLessThan(0.75 * twice);
	expect(AT_95 * SURE_ENOUGH).toBeCloseTo(3.5, 9);
});
