import {
	type Simulation,
	type SimulationRun,
	type StrategyName,
	simulateBay,
	simulateRandomBays,
} from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { bayOf, systemOf } from "./bay.ts";

function finished(run: SimulationRun): Simulation {
	for (let step = run.next(); ; step = run.next()) if (step.done) return step.value;
}

const rateOf = ({ strategies }: Simulation, name: StrategyName) => {
	const found = strategies.find((strategy) => strategy.name === name);
	if (found === undefined) throw new Error(name);
	return found;
};

describe("how often a track fits the first time", () => {
	test("the same seed gives the same, another another", () => {
		const [a, b, c] = [5, 5, 6].map((seed) => finished(simulateRandomBays({ count: 20, seed })));
		expect(b).toEqual(a);
		expect(c).not.toEqual(a);
	});

	test("each bay by itself: a longer run begins with the shorter one's bays", () => {
		const errorsOf = (count: number) =>
			rateOf(finished(simulateRandomBays({ count, seed: 5, ways: ["bevel"] })), "bevel").histogram;
		const [few, many] = [errorsOf(10), errorsOf(20)];
		expect(few.every((bays, i) => bays <= (many[i] as number))).toBe(true);
	});

	test("with the readings asked for 99 % fit, with fewer readings than every run and diagonal twice; the other ways come as they are known to", () => {
		const simulation = finished(simulateRandomBays({ count: 400, seed: 3 }));
		const of = (name: StrategyName) => rateOf(simulation, name);
		expect(of("asked").firstFit).toBeGreaterThanOrEqual(0.99);
		expect(of("asked").readings.mean).toBeLessThan(0.75 * of("twice").readings.mean);
		// The design's own simulation: about 97 and 99.8 %, and 72, 63, 57 % for 3, 4, 5 walls; four deviations of a share of 400 apart.
		expect(Math.abs(of("once").firstFit - 0.97)).toBeLessThan(0.035);
		expect(of("twice").firstFit).toBeGreaterThanOrEqual(0.985);
		expect(Math.abs(of("bevel").firstFit - 0.64)).toBeLessThan(0.1);
		expect(of("right-angle").firstFit).toBeLessThan(0.03);
		for (const { histogram } of simulation.strategies) expect(histogram.reduce((a, b) => a + b)).toBe(400);
	});

	test("better tools fit more often", () => {
		const rate = (tape: number, bevel: number) =>
			rateOf(finished(simulateRandomBays({ count: 60, seed: 1, errors: { tape, bevel }, ways: ["once"] })), "once");
		expect(rate(0.001, 0.001).firstFit).toBe(1);
		expect(rate(8, 3).firstFit).toBeLessThan(0.7);
	});

	test("one bay from the job, and the readings that it has", () => {
		const readings = [0, 1, 2].map((wall) => ({ kind: "run", wall, value: [900, 1800, 900][wall] }));
		const bay = bayOf({ readings });
		const simulation = finished(simulateBay(bay, systemOf(bay), { count: 40, seed: 1 }) as SimulationRun);
		expect(simulation.strategies.map(({ name }) => name)).toEqual([
			"asked",
			"once",
			"twice",
			"bevel",
			"right-angle",
			"as-taped",
		]);
		expect(rateOf(simulation, "as-taped").readings).toEqual({ mean: 3, least: 3, most: 3 });
		// Three runs do not say how the walls stand; six distances taken twice do.
		expect(rateOf(simulation, "as-taped").firstFit).toBeLessThan(0.3);
		expect(rateOf(simulation, "twice").firstFit).toBeGreaterThan(0.9);
		expect(rateOf(simulation, "asked").firstFit).toBeGreaterThan(0.9);
	});

	test("by the rule of the square a square bay is cut to what its runs are out by", () => {
		const bay = bayOf();
		const errors = { tape: 0.001, bevel: 0.001 };
		const simulation = finished(simulateBay(bay, systemOf(bay), { count: 3, seed: 1, errors }) as SimulationRun);
		// 490 for the sweep between brackets 350 either side, against 486.9 by R = 310 and 40 off the wall: 6.1 over two corners.
		expect(rateOf(simulation, "right-angle").median).toBeCloseTo(2 * (490 - 155 * Math.PI), 1);
	});

	test("a bay that takes no track is not simulated", () => {
		const corners = [
			[104.2, 0],
			[0, 590.9],
			[400, 590.9],
			[295.8, 0],
		];
		const bay = bayOf({ corners });
		expect(simulateBay(bay, systemOf(bay), { count: 1, seed: 1 })).toBeNull();
	});

	test("it tells how far it has come and can be called off", () => {
		const run = simulateRandomBays({ count: 1000, seed: 1 });
		const seen = [run.next(), run.next(), run.next()].map(({ value }) => value);
		expect(seen).toMatchObject([0, 1, 2].map((done) => ({ done, count: 1000 })));
		expect(run.return(undefined as never).done).toBe(true);
		expect(run.next().done).toBe(true);
	});
});
