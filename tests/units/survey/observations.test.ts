import { type Point, toRadians } from "@baywright/geometry";
import { describe, expect, test } from "vitest";
import { foresee } from "../../../packages/survey/src/linear.ts";
import type { State } from "../../../packages/survey/src/measure.ts";
import type { Observed } from "../../../packages/survey/src/observation.ts";
import { tape } from "../../oracles/tape.ts";
import { dice } from "../../properties/surveyed.ts";

const SEED = 1407;

/** Five points some way apart and three parameters: two rises and a tape's zero. */
function anyState(roll: () => number, deep = 300): State {
	const points = Array.from({ length: 5 }, (_, i) => [i * 900 + 400 * roll(), 1500 * roll()]).flat();
	return {
		values: Float64Array.from([...points, (roll() - 0.5) * 2 * deep, (roll() - 0.5) * 2 * deep, 3 * roll()]),
		firstParameter: points.length,
	};
}

const kinds: readonly (readonly [string, Observed])[] = [
	["a distance", { kind: "distance", from: 3, to: 1 }],
	["a distance by a worn tape", { kind: "distance", from: 0, to: 4, zero: 2 }],
	["an angle", { kind: "angle", at: 2, from: 3, to: 1 }],
	[
		"an angle between tangents",
		{
			kind: "angle",
			at: 1,
			from: 2,
			to: 0,
			tilts: [
				{ from: 0, to: 1, rise: 0, arm: null },
				{ from: 1, to: 2, rise: 1, arm: null },
			],
		},
	],
	[
		"an angle between arms to bowed faces",
		{
			kind: "angle",
			at: 3,
			from: 4,
			to: 2,
			tilts: [
				{ from: 2, to: 3, rise: 0, arm: 250 },
				{ from: 3, to: 4, rise: 1, arm: 400 },
			],
		},
	],
	["an offset", { kind: "offset", point: 4, from: 0, to: 1 }],
	["a stand off the chord", { kind: "stand", from: 1, to: 2, rise: 0, at: 310 }],
	[
		"a span between places",
		{
			kind: "span",
			first: { from: 0, to: 1, rise: 0, at: 500, off: 40 },
			second: { from: 3, to: 4, rise: 1, at: 200, off: 65 },
		},
	],
	[
		"a sum",
		{
			kind: "sum",
			terms: [
				{ parameter: 0, factor: 2 },
				{ parameter: 2, factor: -0.5 },
			],
		},
	],
];

describe("slopes of observations are those of finite differences", () => {
	test.each(kinds)("%s", (_, observed) => {
		const roll = dice(SEED);
		for (const deep of [300, 300, 300, 1e-4, 0]) {
			const state = anyState(roll, deep);
			const { gradient } = foresee(observed, state);
			gradient.forEach((slope, column) => {
				const at = (shift: number) => {
					const values = state.values.slice();
					values[column] = (values[column] as number) + shift;
					return foresee(observed, { ...state, values }).value;
				};
				// Four places, so that the error is of the fourth order: 1e-4 mm steps would lose the digits of the angles.
				const step = 0.05;
				const difference = (8 * (at(step) - at(-step)) - (at(2 * step) - at(-2 * step))) / (12 * step);
				expect(Math.abs(slope - difference), `column ${column}, rises to ${deep}`).toBeLessThan(1e-9);
			});
		}
	});
});

describe("what is observed is what a tape would read", () => {
	const bayIn = ({ values }: State) => ({
		corners: Array.from(
			{ length: 5 },
			(_, i): Point => ({ x: values[2 * i] as number, y: values[2 * i + 1] as number }),
		),
		rises: [values[10] as number, values[11] as number, 0, 0],
	});
	const wall = (index: number) => ({ from: index, to: index + 1, rise: index });
	const both = (arm: number | null) => [
		{ ...wall(0), arm },
		{ ...wall(1), arm },
	];
	test("by the circles that the faces lie on", () => {
		const roll = dice(SEED);
		for (let i = 0; i < 300; i++) {
			const state = anyState(roll);
			const bay = bayIn(state);
			const sees = (observed: Observed) => foresee(observed, state).value;
			const at = 600 * roll();
			const interior = tape(bay, { kind: "angle", corner: 1 });
			expect(sees({ kind: "angle", at: 1, from: 2, to: 0, tilts: both(null) })).toBeCloseTo(toRadians(interior), 10);
			if (interior < 180) {
				const angle = sees({ kind: "angle", at: 1, from: 2, to: 0, tilts: both(300) });
				expect(600 * Math.sin(angle / 2)).toBeCloseTo(tape(bay, { kind: "chord", corner: 1, arm: 300 }), 8);
			}
			expect(sees({ kind: "stand", ...wall(1), at })).toBeCloseTo(tape(bay, { kind: "rise", wall: 1, at }), 8);
			expect(sees({ kind: "offset", point: 3, from: 0, to: 1 })).toBeCloseTo(
				tape(bay, { kind: "square", corner: 3, wall: 0 }),
				8,
			);
			const span = { from: { wall: 0, at, off: 40 }, to: { wall: 1, at: 700, off: 60 } };
			expect(
				sees({
					kind: "span",
					first: { ...wall(0), at, off: 40 },
					second: { ...wall(1), at: 700, off: 60 },
				}),
			).toBeCloseTo(tape(bay, { kind: "span", ...span }), 8);
		}
	});
});
