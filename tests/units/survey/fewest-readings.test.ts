import type { Point } from "@baywright/geometry";
import {
	type CandidateReading,
	candidateReadings,
	type DrawnBay,
	fewestBayReadings,
	propagate,
	readOff,
	type SettledBay,
	settleBay,
} from "@baywright/survey";
import { describe, expect, test } from "vitest";

/** Two walls and one corner of 120°. */
const corners: Point[] = [
	{ x: 0, y: 0 },
	{ x: 0, y: 900 },
	{ x: 1000, y: 1477 },
];

function settled(readings: DrawnBay["readings"]): SettledBay {
	const outcome = settleBay({ corners, rises: [0, 0], readings });
	if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
	return outcome.value;
}

/** Read without error off the bay as drawn, so that it stays where it is. */
const taken = (bay: SettledBay, what: readonly CandidateReading[]) =>
	what.map((each) => ({ ...each, value: readOff(bay, each) as number }));

/** Both runs and the corner: about the length of a track. */
const length = [0, 0.4, 0.6, 0.3, 0.9, 0.7, 0, 0];
const across = [0, 0, 0, 0, 1, 0.2, 0, 0];
const figures = [length, across];

const worst = (bay: SettledBay) => Math.max(...figures.map((figure) => propagate(bay.covariance, figure)));

describe("the fewest readings to a goal", () => {
	const bay = settled([]);
	const candidates = candidateReadings(bay);

	test.each([20, 6, 3, 2.2])(
		"no list of fewer reaches it: every one tried, each reading up to twice (goal %d mm)",
		(goal) => {
			const list = fewestBayReadings(bay, candidates, figures, goal).map(({ candidate }) => candidate);
			const reached = worst(
				settled(
					taken(
						bay,
						list.map((index) => candidates[index] as CandidateReading),
					),
				),
			);
			expect(reached).toBeLessThanOrEqual(goal * (1 + 1e-6));
			const lists = candidates.reduce<CandidateReading[][]>(
				(before, each) => before.flatMap((some) => [some, [...some, each], [...some, each, each]]),
				[[]],
			);
			const shorter = lists.filter((some) => some.length < list.length);
			expect(shorter.length).toBeGreaterThan(0);
			expect(shorter.filter((some) => worst(settled(taken(bay, some))) <= goal)).toEqual([]);
		},
	);

	test("in the order in which each helps most, with what each reaches", () => {
		const list = fewestBayReadings(bay, candidates, figures, 3);
		const readings = taken(
			bay,
			list.map(({ candidate }) => candidates[candidate] as CandidateReading),
		);
		list.forEach(({ from, reaches }, i) => {
			// The weight of what is only drawn goes to nothing as more is read, so the very first figures are only about right.
			expect(from / worst(settled(readings.slice(0, i)))).toBeCloseTo(1, 2);
			expect(reaches / worst(settled(readings.slice(0, i + 1)))).toBeCloseTo(1, 2);
			expect(reaches).toBeLessThan(from);
		});
	});

	test("in a bay of twelve walls the goal is reached, and no one of the list could be left out", () => {
		const many = Array.from({ length: 13 }, (_, i): Point => {
			const heading = Math.PI * (1 - i / 12);
			return { x: 4000 * Math.cos(heading), y: 4000 * Math.sin(heading) };
		});
		const drawn = { corners: many, rises: many.slice(1).map(() => 0) };
		const settle = (readings: DrawnBay["readings"]) => {
			const outcome = settleBay({ ...drawn, readings });
			if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
			return outcome.value;
		};
		const open = settle([]);
		const choice = candidateReadings(open);
		expect(choice.length).toBeGreaterThan(60);
		// All runs together, and how far it is across.
		const runs = new Array<number>(26 + 12).fill(0);
		many.slice(1).forEach((to, wall) => {
			const from = many[wall] as Point;
			const run = Math.hypot(to.x - from.x, to.y - from.y);
			for (const [i, share] of [(to.x - from.x) / run, (to.y - from.y) / run].entries()) {
				runs[2 * wall + i] = (runs[2 * wall + i] as number) - share;
				runs[2 * wall + 2 + i] = (runs[2 * wall + 2 + i] as number) + share;
			}
		});
		const wanted = [runs, new Array<number>(26 + 12).fill(0).fill(1, 24, 25)];
		const goal = 4;
		const list = fewestBayReadings(open, choice, wanted, goal).map(
			({ candidate }) => choice[candidate] as CandidateReading,
		);
		const sure = (what: readonly CandidateReading[]) => {
			const bay = settle(taken(open, what));
			return Math.max(...wanted.map((figure) => propagate(bay.covariance, figure)));
		};
		expect(sure(list)).toBeLessThanOrEqual(goal * (1 + 1e-6));
		for (const [out] of list.entries()) expect(sure(list.toSpliced(out, 1)), `without ${out}`).toBeGreaterThan(goal);
		expect(fewestBayReadings(settle(taken(open, [...choice, ...choice])), choice, wanted, goal)).toEqual([]);
		expect(fewestBayReadings(open, choice, wanted, 0.01).at(-1)?.reaches).toBeGreaterThan(0.01);
	});

	test("in a bay of sixty walls too: thousands left out one by one cost no digits that matter", () => {
		const many = Array.from({ length: 61 }, (_, i): Point => {
			const heading = Math.PI * (1 - i / 60);
			return { x: 20000 * Math.cos(heading), y: 20000 * Math.sin(heading) };
		});
		const drawn = { corners: many, rises: many.slice(1).map(() => 0) };
		const run = Math.hypot((many[1] as Point).x - (many[0] as Point).x, (many[1] as Point).y - (many[0] as Point).y);
		const open = settleBay({
			...drawn,
			readings: drawn.rises.map((_, wall) => ({ kind: "run", wall, value: run, sd: null })),
		});
		if (!open.ok) throw new Error(JSON.stringify(open.faults));
		// How far it is across, and how high its middle stands.
		const wanted = [120, 61].map((column) => Float64Array.from({ length: 122 + 60 }, (_, i) => (i === column ? 1 : 0)));
		const list = fewestBayReadings(open.value, candidateReadings(open.value), wanted, 10);
		expect(list.at(-1)?.reaches).toBeLessThanOrEqual(10 * (1 + 1e-6));
	});

	test("nothing where the goal is reached already", () => {
		expect(fewestBayReadings(settled(taken(bay, [...candidates, ...candidates])), candidates, figures, 5)).toEqual([]);
	});

	test("all that help where the goal is out of reach", () => {
		const list = fewestBayReadings(bay, candidates, figures, 0.01);
		expect(list.length).toBeGreaterThan(3);
		expect(list.at(-1)?.reaches).toBeGreaterThan(0.01);
		expect(fewestBayReadings(bay, [], figures, 1)).toEqual([]);
		expect(fewestBayReadings(bay, candidates, [], 1)).toEqual([]);
	});
});
