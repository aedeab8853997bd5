import type { BayPlan } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	check,
	cornersOf,
	type DrawnBay,
	ordinaryShapes,
	type Placing,
	placings,
	planDrawn,
	type Shape,
} from "./bays.ts";

/** mm; rounding grows with the coordinates and the number of walls, and a bracket's place comes out of a bisection. */
const TOLERANCE = 1e-4;

interface Sided {
	readonly shape: Shape;
	readonly projections: readonly (number | null)[];
	readonly noDrill: readonly (readonly [number, number] | null)[];
	readonly ends: readonly [number, number];
	readonly radii: readonly (number | null)[];
	readonly system: string;
}

const part = fc.integer({ min: 0, max: 1_000_000 }).map((n) => n / 1_000_000);

/** Bays with nothing that favours a side, and with figures uneven enough that no choice is a tie. */
const sided: fc.Arbitrary<Sided> = ordinaryShapes.chain((shape) => {
	const walls = shape.lengths.length;
	const perWall = <Value>(value: fc.Arbitrary<Value>) => fc.array(value, { minLength: walls, maxLength: walls });
	return fc.record({
		shape: fc.constant(shape),
		projections: perWall(
			fc.oneof({ weight: 4, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: part.map((p) => 50 + 50 * p) }),
		),
		noDrill: perWall(
			fc.oneof(
				{ weight: 5, arbitrary: fc.constant(null) },
				{ weight: 1, arbitrary: fc.tuple(part, part).map(([from, long]) => [from, long] as const) },
			),
		),
		ends: fc.tuple(part, part).map(([a, b]) => [a * 0.4, 1 - b * 0.4] as const),
		radii: perWall(
			fc.oneof({ weight: 6, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: part.map((p) => 150 + 500 * p) }),
		),
		system: fc.constantFrom("light-corded", "heavy-hand-drawn", "flexible", "ceiling-channel", "fine-hand-drawn"),
	});
});

function drawn({ shape, projections, noDrill, ends, radii, system }: Sided, corners: [number, number][]): DrawnBay {
	const { lengths } = shape;
	const last = lengths.length - 1;
	return {
		id: "b",
		corners,
		walls: lengths.map((length, wall) => ({
			projection: projections[wall] ?? null,
			noDrill: [noDrill[wall]].flatMap((stretch) =>
				stretch == null ? [] : [[stretch[0] * length, stretch[0] * length + 1 + stretch[1] * 0.4 * length]],
			),
		})),
		openings: [],
		obstacles: [],
		track: {
			system,
			start: { wall: 0, at: ends[0] * (lengths[0] as number) },
			end: { wall: last, at: ends[1] * (lengths[last] as number) },
			bends: radii.flatMap((radius, corner) => (corner === 0 || radius === null ? [] : [{ corner, radius }])),
		},
	};
}

/** The same bay seen in a mirror: right is left. */
function mirrored(bay: DrawnBay, { shape }: Sided): DrawnBay {
	const { lengths } = shape;
	const last = lengths.length - 1;
	const { start, end, bends } = bay.track as {
		start: { wall: number; at: number };
		end: { wall: number; at: number };
		bends: { corner: number; radius: number }[];
	};
	const flip = ({ wall, at }: { wall: number; at: number }) => ({ wall: last - wall, at: wallLength(bay, wall) - at });
	return {
		...bay,
		corners: bay.corners.map(([x, y]) => [-x, y] as const).toReversed(),
		walls: bay.walls
			.map((wall, i) => ({
				...wall,
				noDrill: (wall.noDrill as [number, number][]).map(([from, to]) => [
					wallLength(bay, i) - to,
					wallLength(bay, i) - from,
				]),
			}))
			.toReversed(),
		track: {
			...bay.track,
			start: flip(end),
			end: flip(start),
			bends: bends.map(({ corner, radius }) => ({ corner: last + 1 - corner, radius })),
		},
	};
}

function wallLength({ corners }: DrawnBay, wall: number): number {
	const [a, b] = [corners[wall], corners[wall + 1]] as [readonly [number, number], readonly [number, number]];
	return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

const near = (a: number, b: number, tolerance = TOLERANCE) => expect(Math.abs(a - b)).toBeLessThan(tolerance);
const codesOf = ({ findings }: BayPlan) => findings.map(({ code }) => code).sort();

describe("a bay in a mirror", () => {
	test("has the mirrored path, bends and, where nothing is squeezed, brackets and pieces", () => {
		let fitted = 0;
		let compared = 0;
		check(
			fc.tuple(sided, placings),
			([bay, placing]) => {
				const there = drawn(bay, cornersOf(bay.shape, placing));
				const plan = planDrawn(there);
				const mirror = planDrawn(mirrored(there, bay));
				expect(mirror.path === null).toBe(plan.path === null);
				if (plan.path === null || mirror.path === null) {
					expect(codesOf(mirror)).toEqual(codesOf(plan));
					return;
				}
				fitted++;
				const { length } = plan.path;
				near(mirror.path.length, length);
				plan.corners.forEach((corner, i) => {
					const other = mirror.corners.at(-1 - i);
					near(other?.radius as number, corner.radius);
					near(other?.sweep as number, corner.sweep);
					near(other?.cornerGap as number, corner.cornerGap);
					near(other?.setBack[0] as number, corner.setBack[1] as number);
					near(other?.setBack[1] as number, corner.setBack[0] as number);
				});
				// Brackets and joints are placed one after another from the left where they compete: compare where nothing does.
				const { endTakeUp, bracket } = plan.system;
				if (length < 2 * (endTakeUp + bracket.endMax)) return;
				const roomy = plan.path.segments.every(({ kind, length: long }) => kind === "bend" || long > 300);
				if (!roomy) return;
				const troubles = [...codesOf(plan), ...codesOf(mirror)].filter((code) => code !== "holes-in-cable-zones");
				if (troubles.length > 0 || plan.joints.length > 0) return;
				const stations = plan.brackets.map(({ station }) => station);
				const others = mirror.brackets.map(({ station }) => length - station).toReversed();
				expect(others).toHaveLength(stations.length);
				if (bay.noDrill.some((stretch) => stretch !== null)) return;
				compared++;
				stations.forEach((station, i) => {
					near(others[i] as number, station, 1e-3);
				});
			},
			1000,
		);
		expect(fitted).toBeGreaterThan(300);
		expect(compared).toBeGreaterThan(60);
	});
});

describe("a bay moved and turned", () => {
	const moves: fc.Arbitrary<Placing> = placings;

	test("has the same lengths, brackets, joints, pieces and findings", () => {
		let fitted = 0;
		check(
			fc.tuple(sided, placings, moves),
			([bay, here, there]) => {
				const plan = planDrawn(drawn(bay, cornersOf(bay.shape, here)));
				const moved = planDrawn(drawn(bay, cornersOf(bay.shape, there)));
				expect(codesOf(moved)).toEqual(codesOf(plan));
				if (plan.path === null || moved.path === null) return;
				fitted++;
				near(moved.path.length, plan.path.length);
				expect(moved.brackets.map(({ role }) => role)).toEqual(plan.brackets.map(({ role }) => role));
				plan.brackets.forEach(({ station, wall, fromLeftCorner }, i) => {
					const other = moved.brackets[i];
					near(other?.station as number, station, 1e-3);
					// Just where the track passes from wall to wall either may be the one.
					if (other?.wall === wall) near(other.fromLeftCorner, fromLeftCorner, 1e-3);
					else expect(Math.abs((other?.wall as number) - wall)).toBe(1);
				});
				plan.joints.forEach(({ station }, i) => {
					near(moved.joints[i]?.station as number, station);
				});
				plan.pieces.forEach(({ cutLength }, i) => {
					near(moved.pieces[i]?.cutLength as number, cutLength);
				});
			},
			1000,
		);
		expect(fitted).toBeGreaterThan(300);
	});
});

test("twice the bay with twice the figures is twice the track", () => {
	const figures = (times: number) => ({
		id: "own",
		name: "Own",
		minRadius: { internal: 100 * times, external: 100 * times },
		preferredRadius: 400 * times,
		projection: { default: 50 * times, min: 10, max: 500 },
		clearance: 10 * times,
		straightBesideBend: 30 * times,
		bracket: { maxSpacing: 400 * times },
		stock: [{ length: 20_000 * times }],
		endTakeUp: 20 * times,
	});
	let fitted = 0;
	check(
		fc.tuple(ordinaryShapes, placings),
		([shape, placing]) => {
			const at = (times: number) => {
				const lengths = shape.lengths.map((length) => length * times);
				const corners = cornersOf({ ...shape, lengths }, placing);
				return planDrawn({ id: "b", corners, track: { system: "own" } }, [figures(times)]);
			};
			const [one, two] = [at(1), at(2)];
			// A wall under a millimetre and a sprung bend at its 5 m limit do not scale.
			if (one.path === null || two.path === null || one.corners.some(({ sprung }) => sprung)) return;
			fitted++;
			near(two.path.length, 2 * one.path.length);
			one.corners.forEach(({ radius, setBack, cornerGap }, i) => {
				near(two.corners[i]?.radius as number, 2 * radius);
				near(two.corners[i]?.setBack[0] as number, 2 * (setBack[0] as number));
				near(two.corners[i]?.cornerGap as number, 2 * cornerGap);
			});
		},
		1000,
	);
	expect(fitted).toBeGreaterThan(300);
});
