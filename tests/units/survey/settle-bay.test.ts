import type { Point } from "@baywright/geometry";
import {
	candidateReadings,
	type DrawnBay,
	propagate,
	type Reading,
	settleBay,
	suspectReadings,
} from "@baywright/survey";
import { describe, expect, test } from "vitest";
import { tape } from "../../oracles/tape.ts";

/** A square bay, 900, 1800 and 900, the room on the right of travel. */
const corners: Point[] = [
	{ x: 0, y: 0 },
	{ x: 0, y: 900 },
	{ x: 1800, y: 900 },
	{ x: 1800, y: 0 },
];
const square = (readings: readonly Reading[], more: Partial<DrawnBay> = {}): DrawnBay => ({
	corners,
	rises: [0, 0, 0],
	readings,
	...more,
});
const run = (wall: number, value: number): Reading => ({ kind: "run", wall, value, sd: null });
const diagonal = (from: number, to: number, value: number): Reading => ({
	kind: "diagonal",
	from,
	to,
	value,
	sd: null,
});

function settled(drawn: DrawnBay) {
	const outcome = settleBay(drawn);
	if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
	return outcome.value;
}

function faultsOf(drawn: DrawnBay) {
	const outcome = settleBay(drawn);
	return outcome.ok ? [] : outcome.faults;
}

const expectPlaces = (places: readonly Point[], wanted: readonly Point[]) =>
	wanted.forEach(({ x, y }, i) => {
		expect(Math.hypot((places[i] as Point).x - x, (places[i] as Point).y - y), `corner ${i}`).toBeLessThan(1e-3);
	});

describe("a bay as drawn and as taped", () => {
	test("nothing taped: as drawn, and unsure of it", () => {
		const bay = settled(square([]));
		expectPlaces(bay.corners, corners);
		expect([bay.sigma0, bay.redundancy, bay.closes, bay.readings]).toEqual([null, 0, true, []]);
		expect(propagate(bay.covariance, [0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0])).toBeCloseTo(90, 3);
	});

	test("one run taped: that wall takes its length, every turn and every other run stays as drawn", () => {
		const bay = settled(square([run(1, 1850)]));
		expectPlaces(bay.corners, [
			{ x: 0, y: 0 },
			{ x: 0, y: 900 },
			{ x: 1850, y: 900 },
			{ x: 1850, y: 0 },
		]);
		expect(bay.readings[0]).toMatchObject({ redundancy: 0, standardized: null });
	});

	test("a corner dragged moves only what is not taped", () => {
		const dragged = corners.with(2, { x: 1900, y: 1000 });
		const { corners: places } = settled({ ...square([run(0, 900), run(1, 1800)]), corners: dragged });
		expect(tape({ corners: places, rises: [] }, { kind: "run", wall: 1 })).toBeCloseTo(1800, 4);
		const drawnAngle = tape({ corners: dragged, rises: [] }, { kind: "angle", corner: 1 });
		expect(tape({ corners: places, rises: [] }, { kind: "angle", corner: 1 })).toBeCloseTo(drawnAngle, 3);
	});

	test("the frame wall keeps its direction and corner 0 its place, whichever wall it is", () => {
		const readings = [
			run(0, 910),
			run(1, 1795),
			run(2, 905),
			diagonal(0, 2, 2030),
			diagonal(1, 3, 1990),
			diagonal(0, 3, 1810),
		];
		const first = settled(square(readings, { frameWall: 0 }));
		const second = settled(square(readings, { frameWall: 1 }));
		const corner = (bay: typeof first, index: number) => bay.corners[index] as Point;
		expect(first.corners[0]).toEqual({ x: 0, y: 0 });
		expect(corner(second, 0).x).toBeCloseTo(0, 9);
		expect(corner(first, 1).x).toBeCloseTo(0, 9);
		const [left, right] = [corner(second, 1), corner(second, 2)];
		expect(left.y).toBeCloseTo(right.y, 9);
		expect(first.sumOfSquares).toBeCloseTo(second.sumOfSquares, 6);
		// How sure a distance is does not hang on where it is seen from.
		const apart = (bay: typeof first, to: number) => {
			const { x, y } = corner(bay, to);
			const length = Math.hypot(x, y);
			const gradient = new Float64Array(11);
			gradient.set([x / length, y / length], 2 * to);
			return propagate(bay.covariance, gradient);
		};
		expect(apart(first, 3)).toBeCloseTo(apart(second, 3), 6);
		expect(second.covariance[0]?.every((value) => Math.abs(value) < 1e-9)).toBe(true);
	});

	test("a bay drawn too open does not settle with its last corner folded over", () => {
		const of = (places: readonly (readonly [number, number])[]) => places.map(([x, y]): Point => ({ x, y }));
		const bay = {
			corners: of([
				[120, -80],
				[1415, 1937],
				[2016, 1573],
				[1228, -11],
			]),
			rises: [0, 0, 0],
		};
		const drawn = of([
			[120, -80],
			[1589, 2209],
			[2080, 1716],
			[441, 653],
		]);
		const all = candidateReadings(settled(square([]))).filter(({ kind }) => kind === "run" || kind === "diagonal");
		const readings = all.map((each): Reading => ({ ...each, value: tape(bay, each) }));
		expect(settled({ corners: drawn, rises: [0, 0, 0], readings }).sumOfSquares).toBeLessThan(1e-6);
	});

	test("a chord past an external corner is read from a straightedge", () => {
		const pier: DrawnBay = {
			corners: [
				{ x: 0, y: 0 },
				{ x: 600, y: 0 },
				{ x: 600, y: 400 },
			],
			rises: [0, 0],
			readings: [{ kind: "chord", corner: 1, arm: 300, value: 300, sd: null }],
		};
		const { corners: places, readings } = settled(pier);
		expect(tape({ corners: places, rises: [] }, { kind: "angle", corner: 1 })).toBeCloseTo(240, 4);
		expect(readings[0]?.residual).toBeCloseTo(0, 4);
	});

	test("residuals are in the readings' own units: mm of a run or a chord, degrees of an angle", () => {
		const twice: Reading[] = [
			run(0, 900),
			run(0, 904),
			{ kind: "angle", corner: 1, value: 90, sd: null },
			{ kind: "angle", corner: 1, value: 91, sd: null },
			{ kind: "chord", corner: 2, arm: 300, value: 424, sd: null },
			{ kind: "chord", corner: 2, arm: 300, value: 426, sd: null },
		];
		const residuals = settled(square(twice)).readings.map(({ residual }) => residual);
		[2, -2, 0.5, -0.5, 1, -1].forEach((value, i) => {
			expect(Math.abs((residuals[i] as number) - value)).toBeLessThan(0.02);
		});
	});

	test("a rise taped makes a wall bowed, and its angle is between tangents", () => {
		const bay = settled(square([{ kind: "rise", wall: 1, at: null, value: 150, sd: null }]));
		expect(bay.rises).toEqual([0, expect.closeTo(150, 4), 0]);
		expect(settled(square([], { rises: [0, 80, 0] })).rises).toEqual([0, expect.closeTo(80, 6), 0]);
	});

	describe("a bow that is drawn 120 over a front of 1800", () => {
		const rises = [0, 120, 0];
		const angle = (corner: number, value: number): Reading => ({ kind: "angle", corner, value, sd: null });
		const angleOf = (bay: DrawnBay, corner: number) => tape(bay, { kind: "angle", corner });
		const drawn = square([], { rises });
		const wider = [angle(1, angleOf(drawn, 1) + 5), angle(2, angleOf(drawn, 2) + 5)];

		test("stays as drawn where angles are read beside it: the walls turn", () => {
			const bay = settled({ ...drawn, readings: wider });
			expect(Math.abs((bay.rises[1] as number) - 120)).toBeLessThan(3);
			for (const { corner, value } of wider as { corner: number; value: number }[])
				expect(angleOf({ ...bay, readings: [] }, corner)).toBeCloseTo(value, 4);
			const runs = [run(0, 905), run(1, 1790), run(2, 890)];
			expect(Math.abs((settled({ ...drawn, readings: [...runs, ...wider] }).rises[1] as number) - 120)).toBeLessThan(3);
		});

		test("gives way to a rise that is taped, in the middle or beside it", () => {
			const taped: Reading = { kind: "rise", wall: 1, at: null, value: 150, sd: null };
			expect(settled({ ...drawn, readings: [...wider, taped] }).rises[1]).toBeCloseTo(150, 3);
			const there = { corners, rises: [0, 150, 0] };
			const beside = { kind: "rise", wall: 1, at: 400 } as const;
			const readings = [...wider, run(1, 1800), { ...beside, value: tape(there, beside), sd: null }];
			expect(settled({ ...drawn, readings }).rises[1]).toBeCloseTo(150, 2);
		});

		test("and to what angles and lengths together say of it: exact readings give the exact bay", () => {
			const there = { corners: corners.with(2, { x: 1830, y: 930 }).with(3, { x: 1860, y: 20 }), rises: [0, 220, 0] };
			const lengths = candidateReadings(settled(square([]))).filter(
				({ kind }) => kind === "run" || kind === "diagonal",
			);
			const angles = [1, 2].map((corner) => ({ kind: "angle", corner }) as const);
			const readings = [...lengths, ...angles].map(
				(each): Reading => ({ ...each, value: tape(there, each), sd: null }),
			);
			const bay = settled({ ...drawn, readings });
			expect(Math.abs((bay.rises[1] as number) - 220)).toBeLessThan(1e-3);
			for (const [i, { x, y }] of there.corners.entries()) {
				const [a, b] = [Math.hypot(x, y), Math.hypot(bay.corners[i]?.x as number, bay.corners[i]?.y as number)];
				expect(b).toBeCloseTo(a, 3);
			}
		});
	});

	test("a wrong diagonal is named, in mm", () => {
		const right = Math.hypot(900, 1800);
		const readings = [
			run(0, 900),
			run(1, 1800),
			run(2, 900),
			diagonal(0, 2, right),
			diagonal(1, 3, right),
			diagonal(0, 3, 1800),
		];
		const bay = settled(square([...readings, diagonal(1, 3, right - 1), diagonal(0, 2, right + 38)]));
		const [first] = suspectReadings(bay);
		expect(bay.closes).toBe(false);
		expect(first?.readings).toEqual([7]);
		expect(Math.abs((first?.grossErrors[0] as number) - 38)).toBeLessThan(1);
		expect(first?.closesWithin.length).toBeLessThan(1);
	});
});

describe("what no bay comes of", () => {
	const chord = (value: number): Reading => ({ kind: "chord", corner: 1, arm: 300, value, sd: null });

	test("is refused by the reading", () => {
		expect(faultsOf(square([chord(600)]))).toEqual([{ kind: "chord-too-long", reading: 0, greatest: 600 }]);
		expect(faultsOf(square([run(0, 900), run(3, 900), diagonal(1, 1, 5)]))).toEqual([
			{ kind: "reading-out-of-place", reading: 1 },
			{ kind: "reading-out-of-place", reading: 2 },
		]);
		const ownWall: Reading = { kind: "square", corner: 1, wall: 0, value: 0, sd: null };
		expect(faultsOf(square([ownWall]))).toEqual([{ kind: "reading-out-of-place", reading: 0 }]);
		expect(faultsOf(square([run(0, 900), { ...run(1, 1800), sd: 0 }]))).toEqual([
			{ kind: "reading-impossible", reading: 1 },
		]);
		expect(faultsOf(square([run(0, Number.NaN)]))).toEqual([{ kind: "reading-impossible", reading: 0 }]);
	});

	test("or by the corner, the wall or the frame", () => {
		expect(faultsOf({ corners: corners.slice(0, 1), rises: [], readings: [] })).toEqual([
			{ kind: "too-few-corners", count: 1 },
		]);
		expect(faultsOf(square([], { frameWall: 3 }))).toEqual([{ kind: "no-such-wall", wall: 3 }]);
		expect(faultsOf({ ...square([]), corners: corners.with(2, corners[1] as Point) })).toEqual([
			{ kind: "corners-coincide", corners: [1, 2] },
		]);
		expect(faultsOf({ ...square([]), corners: corners.with(2, { x: Number.NaN, y: 0 }) })).toContainEqual({
			kind: "corner-not-a-number",
			corner: 2,
		});
		expect(faultsOf(square([], { rises: [0, Number.NaN, 0] }))).toContainEqual({ kind: "rise-not-a-number", wall: 1 });
	});
});

test("candidates are all that tape, rule and bevel can read, with arms that the walls have", () => {
	const kinds = candidateReadings(settled(square([], { rises: [0, 120, 0] })));
	expect(kinds.map(({ kind }) => kind)).toEqual([
		"run",
		"run",
		"run",
		"diagonal",
		"diagonal",
		"diagonal",
		"chord",
		"angle",
		"chord",
		"angle",
		"rise",
	]);
	expect(kinds.flatMap((each) => (each.kind === "chord" ? [each.arm] : []))).toEqual([900, 900]);
	expect(kinds.flatMap((each) => (each.kind === "diagonal" ? [[each.from, each.to]] : []))).toEqual([
		[0, 2],
		[0, 3],
		[1, 3],
	]);
});
