import {
	adjust,
	angleByChord,
	covary,
	errorEllipse,
	type Network,
	type NetworkPoint,
	type Observation,
	propagate,
	suspects,
} from "@baywright/survey";
import { describe, expect, test } from "vitest";

const point = (x: number, y: number, goes: NetworkPoint["goes"] = "free"): NetworkPoint => ({ x, y, goes });
const distance = (from: number, to: number, value: number, sd = 2): Observation => ({
	kind: "distance",
	from,
	to,
	value,
	sd,
	role: "reading",
});

function settled(network: Network) {
	const outcome = adjust(network);
	if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
	return outcome.value;
}

function faultsOf(network: Network) {
	const outcome = adjust(network);
	return outcome.ok ? [] : outcome.faults;
}

describe("what cannot be settled is told by name", () => {
	const base = point(0, 0, "nowhere");
	const net = (points: NetworkPoint[], observations: Observation[], parameters: Network["parameters"] = []) =>
		faultsOf({ points, parameters, observations });

	test("figures that are none", () => {
		expect(net([base, point(Number.NaN, 0)], [])).toEqual([{ kind: "not-a-number", of: "point", index: 1 }]);
		expect(net([base, point(9, 0)], [distance(0, 1, Number.POSITIVE_INFINITY)])).toEqual([
			{ kind: "not-a-number", of: "value", index: 0 },
		]);
		expect(net([base, point(9, 0)], [distance(0, 1, 9, Number.NaN)])).toEqual([
			{ kind: "not-a-number", of: "sd", index: 0 },
		]);
		expect(net([base], [], [{ value: Number.NaN, fixed: true }])).toEqual([
			{ kind: "not-a-number", of: "parameter", index: 0 },
		]);
	});

	test("a deviation of nought", () => {
		expect(net([base, point(9, 0)], [distance(0, 1, 9, 0)])).toEqual([
			{ kind: "sd-not-positive", observation: 0, sd: 0 },
		]);
	});

	test("points that coincide where something leads from one to the other", () => {
		const points = [base, point(800, 0), point(800, 0)];
		expect(net(points, [distance(0, 1, 9), distance(1, 2, 9)])).toEqual([
			{ kind: "coincident", observation: 1, points: [1, 2] },
		]);
	});

	test("what nothing determines: a point on one distance, a parameter on none, nothing else", () => {
		const points = [base, point(900, 0, "nowhere"), point(400, 300), point(500, -700)];
		const braced = [distance(0, 2, 500), distance(1, 2, 583), distance(0, 3, 860)];
		expect(net(points, braced, [{ value: 0, fixed: false }])).toEqual([
			{ kind: "undetermined", points: [3], parameters: [0] },
		]);
	});

	test("a whole network that may turn about its fixed point", () => {
		const points = [base, point(900, 0), point(400, 300)];
		expect(net(points, [distance(0, 1, 900), distance(0, 2, 500), distance(1, 2, 583)])).toEqual([
			{ kind: "undetermined", points: [1, 2], parameters: [] },
		]);
	});

	test("what cannot be read at all: an arm that its bow does not reach", () => {
		const tilts = [{ from: 0, to: 1, rise: 0, arm: 4000 }];
		const angle: Observation = { kind: "angle", at: 1, from: 2, to: 0, tilts, value: 2, sd: 0.01, role: "reading" };
		const points = [base, point(1000, 0), point(1500, -500)];
		expect(net(points, [angle], [{ value: 300, fixed: true }])).toEqual([{ kind: "unobservable", observation: 0 }]);
	});
});

describe("a network settled", () => {
	const fixed = [point(0, 0, "nowhere"), point(3000, 0, "nowhere")];

	test("everything fixed: only what the readings miss by", () => {
		const { observations, covariance, redundancy, closes } = settled({
			points: fixed,
			parameters: [],
			observations: [distance(0, 1, 3003)],
		});
		expect(observations[0]).toEqual({ residual: -3, redundancy: 1, standardized: -1.5 });
		expect(covariance.flatMap((row) => [...row])).toEqual(Array(16).fill(0));
		expect([redundancy, closes]).toEqual([1, true]);
	});

	test("without a reading to spare there is nothing to test", () => {
		const { sigma0, redundancy, greatestSum, closes, observations } = settled({
			points: [...fixed, point(1000, 900)],
			parameters: [],
			observations: [distance(0, 2, 1400), distance(1, 2, 2200)],
		});
		expect([sigma0, redundancy, greatestSum, closes]).toEqual([null, 0, null, true]);
		expect(observations.map(({ standardized }) => standardized)).toEqual([null, null]);
	});

	test("a point that slides keeps to its line", () => {
		const along = (Math.PI / 6) as never;
		const { points, covariance } = settled({
			points: [point(0, 0, "nowhere"), point(Math.cos(Math.PI / 6) * 900, 450, { along })],
			parameters: [],
			observations: [distance(0, 1, 1000)],
		});
		expect(points[1]?.x).toBeCloseTo(1000 * Math.cos(Math.PI / 6), 9);
		expect(points[1]?.y).toBeCloseTo(500, 9);
		const { major, minor, heading } = errorEllipse(covariance, 1);
		expect(major).toBeCloseTo(2, 9);
		expect(minor).toBeCloseTo(0, 6);
		expect(heading).toBeCloseTo(Math.PI / 6, 9);
	});

	test("redundancy numbers sum up to readings less unknowns, priors apart", () => {
		const prior: Observation = { ...distance(0, 2, 1500, 300), role: "prior" };
		const { redundancy, observations } = settled({
			points: [...fixed, point(1000, 900)],
			parameters: [],
			observations: [distance(0, 2, 1400), distance(1, 2, 2200), distance(0, 2, 1403), prior],
		});
		expect(redundancy).toBeCloseTo(1, 5);
		expect(observations[3]).toMatchObject({ redundancy: 0, standardized: null });
		// Two distances to the same point halve between them what they disagree by.
		expect(observations[0]?.residual).toBeCloseTo(1.5, 4);
		expect(observations[0]?.redundancy).toBeCloseTo(0.5, 5);
		expect(observations[1]?.redundancy).toBe(0);
	});

	test("a prior yields to any reading, and holds what no reading tells", () => {
		const believed = (from: number, value: number): Observation => ({
			...distance(from, 2, value, 100),
			role: "prior",
		});
		const { points } = settled({
			points: [...fixed, point(1000, 900)],
			parameters: [],
			observations: [distance(0, 2, 1400, 30), believed(0, 1300), believed(1, 2150)],
		});
		const [x, y] = [points[2]?.x as number, points[2]?.y as number];
		expect(Math.hypot(x, y)).toBeCloseTo(1400, 4);
		expect(Math.hypot(x - 3000, y)).toBeCloseTo(2150, 2);
	});

	test("a bad start is descended from in damped steps", () => {
		const { points, rounds } = settled({
			points: [...fixed, point(-40_000, 3)],
			parameters: [],
			observations: [distance(0, 2, 1400), distance(1, 2, 2200)],
		});
		expect(Math.hypot(points[2]?.x as number, points[2]?.y as number)).toBeCloseTo(1400, 6);
		expect(rounds).toBeGreaterThan(3);
	});

	test("distances that do not reach are brought as near as they come", () => {
		const { points, closes } = settled({
			points: [...fixed, point(1000, 900)],
			parameters: [],
			observations: [distance(0, 2, 1400), distance(1, 2, 1500), distance(0, 2, 1400), distance(1, 2, 1500)],
		});
		expect(points[2]?.x).toBeCloseTo(1450, 2);
		expect(Math.abs(points[2]?.y as number)).toBeLessThan(1);
		expect(closes).toBe(false);
	});
});

test("figures: deviation and covariance by gradient", () => {
	const covariance = [Float64Array.of(4, 1), Float64Array.of(1, 9)];
	expect(propagate(covariance, [1, 0])).toBe(2);
	expect(propagate(covariance, [1, -1])).toBeCloseTo(Math.sqrt(11), 12);
	expect(covary(covariance, [1, 0], [0, 1])).toBe(1);
});

test("an angle by its chord: long arms matter", () => {
	const { value, sd } = angleByChord(300, 300 * Math.SQRT2, 1) as { value: number; sd: number };
	expect(value).toBeCloseTo(Math.PI / 2, 12);
	expect(sd).toBeCloseTo(1 / (300 * Math.SQRT1_2), 12);
	// At 165° a chord good to 1 mm on arms of 300 is good to 1.46° (common practice, no source).
	const flat = angleByChord(300, 600 * Math.sin((82.5 * Math.PI) / 180), 1);
	expect(((flat?.sd as number) * 180) / Math.PI).toBeCloseTo(1.46, 2);
	expect(angleByChord(300, 601, 1)).toBeNull();
});

describe("what does not close", () => {
	/** A point taped from four corners of a room, some readings out by so much. */
	const room = (errors: readonly number[]): Network => {
		const corners = [
			point(0, 0, "nowhere"),
			point(4000, 0, "nowhere"),
			point(4000, 3000, "nowhere"),
			point(0, 3000, "nowhere"),
		];
		const from = [0, 1, 2, 3, 0, 2];
		return {
			points: [...corners, point(980, 2020)],
			parameters: [],
			observations: from.map((corner, k) => {
				const { x, y } = corners[corner] as NetworkPoint;
				return distance(corner, 4, Math.hypot(1000 - x, 2000 - y) + (errors[k] ?? 0));
			}),
		};
	};
	const doubted = (network: Network) => suspects(network, settled(network));

	test("nothing is suspected where everything agrees", () => {
		expect(doubted(room([]))).toEqual([]);
		expect(doubted(room([1, -2, 2, -1, -1, 1]))).toEqual([]);
	});

	test("one blunder is named, with how far it is out and how the rest closes", () => {
		const [first] = doubted(room([1, -40, 0, 1, 0, -1]));
		expect(first?.readings).toEqual([1]);
		expect(first?.grossErrors[0]).toBeCloseTo(-40, -0.5);
		expect(first?.closes).toBe(true);
		expect(first?.closesWithin.length).toBeLessThan(2);
		expect(first?.closesWithin.angle).toBe(0);
		expect(first?.redundancy).toBeCloseTo(3, 6);
	});

	test("two at once, which no single one explains", () => {
		const [first] = doubted(room([0, 60, 1, -50, 0, -1]));
		expect([...(first?.readings ?? [])].sort()).toEqual([1, 3]);
		const errors = new Map(first?.readings.map((reading, i) => [reading, first.grossErrors[i] as number]));
		expect(Math.abs((errors.get(1) as number) - 60)).toBeLessThan(3);
		expect(Math.abs((errors.get(3) as number) + 50)).toBeLessThan(3);
		expect(first?.closes).toBe(true);
	});

	test("readings that cannot be told apart are said to be alike", () => {
		// Three distances to one point: one to spare, and each of them might be the culprit.
		const { points, observations, parameters } = room([40]);
		const [first] = doubted({ points, parameters, observations: observations.slice(0, 3) });
		expect([...(first?.readings ?? []), ...(first?.alike ?? [])].sort()).toEqual([0, 1, 2]);
		expect(first?.redundancy).toBeCloseTo(0, 6);
	});
});
