import {
	type Corridor,
	type FitRule,
	type FittedTrack,
	pointAt,
	stationSquareOff,
	tapedFrom,
} from "@baywright/geometry";
import { describe, expect, test } from "vitest";
import { faultsOf, fitted, type Walls } from "./fit-walls.ts";

const CORRIDOR: Corridor = { least: 30, greatest: 150 };
const smooth = (walls: Walls, corridor: Partial<Corridor> = {}, rule: Partial<FitRule> = {}) =>
	fitted(walls, { ...rule, corridor: { ...CORRIDOR, ...corridor } });

/** A pier between two windows, its sides square to the wall; the second window's wall turned by `tilt` degrees. */
const pier = (depth: number, tilt = 0): Walls => ({
	lengths: [1500, depth, 500, depth, 1500],
	turns: [90, -90, -90, 90 + tilt],
	projection: 40,
});

const made = ({ path }: FittedTrack) => path.segments.filter((one) => one.kind === "bend" && !one.sprung);

describe("past a pier", () => {
	test("60 deep the legs either side stand off as little as clears it, in one line with nothing to bend", () => {
		const track = smooth(pier(60));
		expect(track.path.segments.map(({ kind }) => kind)).toEqual(["straight", "straight"]);
		expect(track.path.length).toBeCloseTo(3500, 9);
		// 60 and the least projection of 30 in front of it.
		expect([track.projections[0], track.projections[4]]).toEqual([90, 90]);
	});

	test("that stands out from two walls a few tenths of a degree out of line it springs", () => {
		for (const tilt of [-2.9, -0.3, -0.02, 1e-4, 0.2, 0.7, 2.5]) {
			const track = smooth(pier(60, tilt));
			expect(made(track), `${tilt}`).toEqual([]);
			for (const off of [track.projections[0], track.projections[4]]) {
				expect(off).toBeGreaterThanOrEqual(30);
				expect(off).toBeLessThanOrEqual(150);
			}
		}
	});

	test("drawn out from the wall mm by mm it is passed straight as far as brackets reach, then with bends, never refused", () => {
		const bends = [...Array(150).keys()].map((i) => made(smooth(pier(i + 1))).length);
		// 150 off the wall, 30 off the pier.
		expect(bends.slice(0, 120).every((count) => count === 0)).toBe(true);
		expect(bends.slice(120).every((count) => count > 0)).toBe(true);
	});

	test("a place is taped from whatever wall is nearest, and found again", () => {
		for (const tilt of [0, 0.4, -1.5]) {
			const track = smooth(pier(60, tilt));
			const walked = new Set<number>();
			for (let station = 0; station <= track.path.length; station += 7) {
				const { wall, at, projection } = tapedFrom(track, station);
				walked.add(wall);
				expect(projection).toBeGreaterThan(28);
				expect(projection).toBeLessThan(151);
				const corner = track.chain.corners[wall] as { x: number; y: number };
				const { ux, uy } = track.chain.walls[wall] as { ux: number; uy: number };
				const place = pointAt(track.path, station)?.at as { x: number; y: number };
				expect(corner.x + ux * at + uy * projection).toBeCloseTo(place.x, 7);
				expect(corner.y + uy * at - ux * projection).toBeCloseTo(place.y, 7);
				expect(Math.abs((stationSquareOff(track, wall, at) as number) - station)).toBeLessThan(2e-3);
			}
			expect([...walked]).toEqual([0, 2, 4]);
		}
	});

	test("beside whose side it is square off no one place: that is the place in front of the side", () => {
		const track = smooth(pier(60));
		expect(stationSquareOff(track, 1, 20)).toBeCloseTo(1500, 9);
		expect(stationSquareOff(track, 3, 20)).toBeCloseTo(2000, 9);
	});
});

describe("what is passed straight", () => {
	test("a nib of 20, either way, with the least change of projection", () => {
		const out: Walls = { lengths: [1500, 20, 1500], turns: [90, -90], projection: 40 };
		const back: Walls = { ...out, turns: [-90, 90] };
		expect(made(smooth(out))).toEqual([]);
		expect(made(smooth(back))).toEqual([]);
		for (const walls of [out, back]) {
			const { projections } = smooth(walls);
			const moved = Math.abs((projections[0] as number) - 40) + Math.abs((projections[2] as number) - 40);
			expect(moved).toBeCloseTo(20, 9);
		}
	});

	test("an alcove as wide as brackets reach from both its edges, and none wider", () => {
		const alcove = (wide: number): Walls => ({
			lengths: [1000, 700, wide, 700, 1000],
			turns: [-90, 90, 90, -90],
			projection: 40,
		});
		// At 40 off the wall the middle is √(40² + (w/2)²) from either edge: 150 at w = 289.1; nearer to the wall, at 30, w = 293.9.
		expect(made(smooth(alcove(289)))).toEqual([]);
		expect(smooth(alcove(289)).projections[0]).toBe(40);
		expect(smooth(alcove(293)).projections[0]).toBe(30);
		expect(made(smooth(alcove(295))).length).toBeGreaterThan(0);
	});

	test("never at another projection along a wall that keeps its own", () => {
		expect(made(smooth(pier(60), { kept: new Set([0]) })).length).toBeGreaterThan(0);
		const kept = smooth({ ...pier(60), projection: [100, 40, 40, 40, 40] }, { kept: new Set([0]) });
		expect(made(kept)).toEqual([]);
		expect([kept.projections[0], kept.projections[4]]).toEqual([100, 100]);
	});

	test("never a corner at which the user set a radius", () => {
		const track = smooth(pier(60), {}, { setRadii: new Map([[2, 120]]), leastRadius: { internal: 20, external: 20 } });
		expect(track.radii.some((radius) => Math.abs(radius - 120) < 1e-9)).toBe(true);
	});
});

describe("legs at other projections", () => {
	test("a bend round an external corner that the usual projection has no room for", () => {
		const walls: Walls = { lengths: [1500, 1500], turns: [-90], projection: 40 };
		const rule = { leastRadius: { internal: 225, external: 225 }, clearance: 15 };
		// (40·√2 − 15)/(√2 − 1) = 100.4.
		expect(faultsOf(walls, rule).map(({ kind }) => kind)).toEqual(["no-room-round-corner"]);
		const track = smooth(walls, {}, rule);
		expect(made(track)).toHaveLength(1);
		expect(Math.min(...(track.projections as number[]))).toBeGreaterThan(40);
	});

	test("stay as they are where the radius preferred is had without", () => {
		const walls: Walls = { lengths: [1500, 1500], turns: [90], projection: 40 };
		const { projections, radii } = smooth(walls);
		expect(projections).toEqual([40, 40]);
		// As wide as the corridor lets it be: (150 − 40)·sec 45°/(sec 45° − 1).
		expect(radii[0]).toBeCloseTo((110 * Math.SQRT2) / (Math.SQRT2 - 1), 6);
	});

	test("at two walls all but in line meet between them", () => {
		const walls: Walls = { lengths: [1500, 1500], turns: [2], projection: [40, 60] };
		expect(faultsOf(walls).map(({ kind }) => kind)).toEqual(["projection-change-at-slight-turn"]);
		const track = smooth(walls, { kept: new Set([0, 1]) });
		expect(track.projections).toEqual([40, 60]);
		expect(made(track)).toEqual([]);
	});
});

describe("a bend that carries nothing", () => {
	const bow: Walls = { lengths: [900, 400, 400, 400, 900], turns: [22, 22, 22, 22], projection: 40 };
	const sweeps = (track: FittedTrack) =>
		made(track).flatMap((one) => (one.kind === "straight" ? [] : [{ radius: one.radius, length: one.length }]));

	test("is no longer than it may be, unless it is wide enough to carry something", () => {
		expect(sweeps(smooth(bow))).toHaveLength(1);
		const held = sweeps(smooth(bow, { bare: { under: 3000, longest: 760 } }));
		expect(held.length).toBeGreaterThan(1);
		for (const { radius, length } of held) expect(radius >= 3000 || length <= 760 + 1e-6).toBe(true);
		expect(sweeps(smooth(bow, { bare: { under: 500, longest: 760 } }))).toHaveLength(1);
	});

	test("is longer all the same where there is no other way", () => {
		const tight: Walls = { lengths: [700, 60, 60, 60, 700], turns: [30, 30, 30, 30], projection: 40 };
		const rule = { leastRadius: { internal: 225, external: 225 } };
		const [only, ...more] = sweeps(smooth(tight, { bare: { under: 3000, longest: 100 } }, rule));
		expect(more).toEqual([]);
		expect(only?.length).toBeGreaterThan(100);
	});
});

describe("a slight turn of the other sense", () => {
	const run = (slight: number): Walls => ({
		lengths: [1500, 60, 60, 60, 1500],
		turns: [30, slight, 30, 30],
		projection: 40,
	});
	const rule = { leastRadius: { internal: 300, external: 300 } };

	test.each([-2.9, -0.5, -1e-7, 0, 0.5])(
		"of %s° in a run is bridged with it, along the walls and smoothest",
		(slight) => {
			for (const track of [fitted(run(slight), rule), smooth(run(slight), {}, rule)]) {
				const bends = made(track);
				expect(bends).toHaveLength(1);
				expect(bends[0]).toMatchObject({ corners: [1, 2, 3, 4] });
			}
		},
	);

	test("of more than that ends the run", () => {
		expect(faultsOf(run(-4), rule).length).toBeGreaterThan(0);
	});
});
