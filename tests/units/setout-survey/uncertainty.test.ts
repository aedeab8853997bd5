import { type Bay, settle, sureCuts, sureFigures, wantedReadings } from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { bayOf, systemOf } from "./bay.ts";

const surveyOf = (bay: Bay) => {
	const outcome = settle(bay, systemOf(bay));
	if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
	return outcome.value;
};
const cutsOf = (bay: Bay) => sureCuts(bay, systemOf(bay), surveyOf(bay));

/** Every distance between the corners of a bay, as it is drawn. */
const distances = (corners: readonly (readonly number[])[]) =>
	corners.flatMap(([x = 0, y = 0], from) =>
		corners.slice(from + 1).map(([u = 0, v = 0], i) => {
			const value = Math.hypot(u - x, v - y);
			return i === 0 ? { kind: "run", wall: from, value } : { kind: "diagonal", from, to: from + 1 + i, value };
		}),
	);

const square = [
	[0, 0],
	[0, 900],
	[1800, 900],
	[1800, 0],
];
const taped = (corners: readonly (readonly number[])[], more: object = {}) =>
	bayOf({ corners, readings: distances(corners), ...more });

describe("how sure a cut length is", () => {
	test("two pieces that meet on the first wall: the first is cut from two taped places and does not hang on the survey", () => {
		const corners = [
			[0, 0],
			[0, 3000],
			[1800, 3000],
			[1800, 0],
		];
		const bay = taped(corners, { track: { joints: [{ wall: 0, at: 1500 }] } });
		const cuts = cutsOf(bay);
		expect(cuts?.map(({ piece }) => piece)).toEqual(["A", "B"]);
		// From the left end to 1500 along the wall, less 100 for the end pulley.
		expect(cuts?.[0]).toMatchObject({ value: 1400, uneven: false, mayChange: null });
		expect(cuts?.[0]?.sd).toBeLessThan(1e-6);
		expect(cuts?.[1]?.sd).toBeGreaterThan(1);
	});

	test("an end of the track taped from a corner does not move with the wall's own end; one drawn at the very end does", () => {
		const endAt = (at: number | null) => {
			const end = at === null ? null : { wall: 2, at };
			// How the cut length changes as the right end moves along the last wall, which runs down.
			return -(cutsOf(taped(square, { track: { end } }))?.[0]?.gradient[7] as number);
		};
		expect(endAt(850)).toBeCloseTo(0, 6);
		expect(endAt(900)).toBeCloseTo(1, 6);
		expect(endAt(null)).toBeCloseTo(1, 6);
	});

	test("a wall with only just room for its bends: within the ± no track may fit", () => {
		// 40 off either side wall, two bends of at least 225 and 40 of straight beside each: 610.
		const narrow = (width: number) =>
			taped([
				[0, 0],
				[0, 900],
				[width, 900],
				[width, 0],
			]);
		expect(cutsOf(narrow(611))?.[0]?.mayChange).toBe("no-fit");
		expect(cutsOf(narrow(760))?.[0]?.mayChange).toBeNull();
	});

	test("a facet that may be bridged or not", () => {
		// Corners of 110°: bends of 225 take 157.5 each of the facet's track, 40 of straight beside each, 28 lost either side.
		const facet = (run: number) => {
			const [x, y] = [900 * Math.sin((70 * Math.PI) / 180), 900 * Math.cos((70 * Math.PI) / 180)];
			return taped([
				[-y, -x],
				[0, 0],
				[run, 0],
				[run + y, -x],
			]);
		};
		const widest = Array.from({ length: 60 }, (_, i) => 420 + i).find(
			(run) => cutsOf(facet(run))?.[0]?.mayChange === "other-bends",
		);
		expect(widest).toBeDefined();
		expect(cutsOf(facet((widest as number) + 40))?.[0]?.mayChange).not.toBe("other-bends");
	});

	test("set-backs: the same on both sides of a right-angled corner, from the square of the angle's own doubt", () => {
		const bay = taped(square);
		const backs = sureFigures(bay, systemOf(bay), surveyOf(bay))?.setBacks;
		expect(backs?.map(({ corner, side, value }) => [corner, side, Math.round(value * 10) / 10])).toEqual([
			[1, "left", 350],
			[1, "right", 350],
			[2, "left", 350],
			[2, "right", 350],
		]);
		const [left, right] = backs ?? [];
		// (d + R)·cot(θ/2) falls by (d + R)/2·(1 + 1) for each radian that the corner opens: 350.
		expect(left?.sd).toBeCloseTo(right?.sd as number, 6);
		expect(left?.sd).toBeGreaterThan(0.1);
	});
});

describe("how sure a bracket's tape readings are", () => {
	const sureOf = (bay: Bay) => sureFigures(bay, systemOf(bay), surveyOf(bay));
	const gradientOf = (figure: { readonly gradient: Float64Array } | null | undefined) => [...(figure?.gradient ?? [])];

	test("beside a bend they move with the set-back: (d + R)·cot(θ/2) and 20 of straight", () => {
		const brackets = sureOf(taped(square))?.brackets ?? [];
		const beside = brackets.find(({ fromRightCorner }) => Math.abs((fromRightCorner?.value ?? 0) - 370) < 1e-6);
		expect(beside).toBeDefined();
		// The walls at corner 1 go 900 up and 1800 across; d(cot(θ/2))/dθ is −1 at 90°. The room angle opens by 1/900 rad for each mm that corner 1 goes
		// to the right, and by 1/1800 for each mm that corner 2 rises; it closes by 1/1800 for each that corner 1 rises.
		const [dx1, dy1, , dy2] = gradientOf(beside?.fromRightCorner).slice(2);
		expect(dy2).toBeCloseTo(-350 / 1800, 3);
		expect(dx1).toBeCloseTo(-350 / 900, 3);
		expect(dy1).toBeCloseTo(350 / 1800, 3);
	});

	test("a pin taped from its left corner stays there; from its right corner it moves with the run", () => {
		const bay = taped(square, { track: { brackets: [{ wall: 1, at: 900 }] } });
		const pin = sureOf(bay)?.brackets.find(({ fromLeftCorner }) => Math.abs((fromLeftCorner?.value ?? 0) - 900) < 1e-6);
		expect(pin?.fromLeftCorner?.sd).toBeLessThan(1e-6);
		// The run of wall 1, which lies along x: from corner 1 to corner 2.
		const run = new Array(8 + 3).fill(0);
		run[2] = -1;
		run[4] = 1;
		const gradient = gradientOf(pin?.fromRightCorner);
		run.forEach((slope, column) => {
			if (column !== 3 && column !== 5) expect(gradient[column], `column ${column}`).toBeCloseTo(slope, 6);
		});
	});

	test("where a hair more front takes one more bracket, the leap is no slope", () => {
		const fronts = Array.from({ length: 700 }, (_, i) => 1500 + i);
		const countFor = (width: number) => sureOf(fronted(width))?.brackets.length ?? 0;
		const fronted = (width: number) =>
			taped([
				[0, 0],
				[0, 900],
				[width, 900],
				[width, 0],
			]);
		const at = fronts.find((width) => countFor(width) !== countFor(width + 1)) as number;
		let [low, high] = [at, at + 1];
		while (high - low > 1e-3) {
			const middle = (low + high) / 2;
			if (countFor(middle) === countFor(low)) low = middle;
			else high = middle;
		}
		// Differences are taken 0.05 either way: from either of these one of them leaps.
		const near = [low - 0.02, high + 0.02];
		const figures = near.flatMap((width) => sureOf(fronted(width))?.brackets ?? []);
		expect(countFor(low - 0.02)).not.toBe(countFor(high + 0.02));
		// A row spread anew shifts by a hundred and more.
		const sds = figures.flatMap(({ fromLeftCorner }) => (fromLeftCorner === null ? [] : [fromLeftCorner.sd]));
		expect(sds.length).toBeGreaterThan(figures.length / 2);
		expect(Math.max(...sds)).toBeLessThan(4);
	});
});

describe("which reading to take next", () => {
	test("the first of the list, and what it reaches is what settling again gives", () => {
		const bay = bayOf({ corners: square, readings: distances(square).slice(0, 4) });
		const [next] = wantedReadings(bay, systemOf(bay), surveyOf(bay)).readings;
		if (next === undefined) throw new Error("nothing is wanted");
		const value = { run: 900, diagonal: 0, angle: 90, chord: 0, rise: 0, square: 0 }[next.reading.kind] || Number.NaN;
		const index = distances(square).find(
			(each) => JSON.stringify({ ...each, value: 0 }) === JSON.stringify({ ...next.reading, sd: undefined, value: 0 }),
		);
		const reading = {
			...next.reading,
			value: index?.value ?? (next.reading.kind === "chord" ? next.reading.arm * Math.SQRT2 : value),
		};
		const after = { ...bay, readings: [...bay.readings, reading] } as Bay;
		expect(cutsOf(bay)?.[0]?.sd).toBeCloseTo(next.from, 6);
		expect(cutsOf(after)?.[0]?.sd).toBeCloseTo(next.reaches, 2);
	});

	test("nothing more once every cut length is within its goal", () => {
		const readings = [...distances(square), ...distances(square), ...distances(square)];
		const bay = bayOf({ corners: square, readings });
		const wanted = wantedReadings(bay, systemOf(bay), surveyOf(bay));
		expect(wanted).toMatchObject({ readings: [], enough: true, fitted: true });
		expect(wantedReadings(bay, systemOf(bay), surveyOf(bay), { goal: 0.5 }).readings.length).toBeGreaterThan(0);
	});

	test("while no track fits the sketch, readings are asked for all the same", () => {
		const corners = [
			[104.2, 0],
			[0, 590.9],
			[400, 590.9],
			[295.8, 0],
		];
		const bay = bayOf({ corners });
		expect(cutsOf(bay)).toBeNull();
		const wanted = wantedReadings(bay, systemOf(bay), surveyOf(bay));
		expect(wanted).toMatchObject({ enough: false, fitted: false });
		expect(wanted.readings.length).toBeGreaterThan(3);
	});
});
