import {
	type Corridor,
	type FitRule,
	type FittedTrack,
	fitTrack,
	goesStraightPast,
	prove,
	readChain,
	type WallFace,
} from "@baywright/geometry";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { awayFromWalls, fewestBends, isInside, isPast } from "../oracles/corridor.ts";
import { breast, faceted, nib, part, pier } from "./any-bay.ts";
import { check, cornersOf, type Shape } from "./bays.ts";

const RULE = {
	leastRadius: { internal: 150, external: 180 },
	preferredRadius: 250,
	straightBesideBend: 30,
	endStraight: 10,
	clearance: 12,
	setRadii: new Map(),
} satisfies FitRule;
const CORRIDOR: Corridor = { least: 30, greatest: 150 };
const LIMITS = { ...CORRIDOR, clearance: RULE.clearance };

type Corners = readonly (readonly [number, number])[];

function fitted(corners: Corners, projections: readonly number[], corridor: Corridor | null, rule: FitRule = RULE) {
	const chain = readChain(corners.map(([x, y]) => ({ x, y })));
	if (!chain.ok) return null;
	const last = chain.value.walls.length - 1;
	const ends = {
		start: { wall: 0, at: 0 },
		end: { wall: last, at: (chain.value.walls[last] as WallFace).faceLength },
	};
	const track = fitTrack(chain.value, projections, ends, { ...rule, corridor });
	return track.ok ? { track: track.value, ends } : null;
}

const placed = (shape: Shape) => cornersOf(shape, { x: 0, y: 0, heading: 0 });
const madeBends = ({ path }: FittedTrack) => path.segments.filter((s) => s.kind === "bend" && !s.sprung).length;

/** Paths are walked along in steps of this, mm. */
const STEP = 25;

/** What a sprung turn may cut off: R(1/cos 1.5° − 1) at 5 m, mm. */
const SPRUNG = 1.8;

/** Bends of a track, and stretches straight past walls, that leave the corridor along the walls that they pass; by walking along them. */
function outside({ path, bends, legOf, bendOf, bendEndOf }: FittedTrack, corners: Corners) {
	return bends.elbows.flatMap((elbow, i) => {
		const passed = corners.slice(elbow.left, elbow.right + 2);
		const at = (index: number | undefined) => path.segments[index as number] ?? [];
		const bend = at(bendOf[i]);
		if (goesStraightPast(elbow)) {
			const stretches = [at(legOf[i]), bend, at(legOf[i + 1])].flat();
			const slack = stretches.some(({ kind }) => kind === "bend") ? SPRUNG : 1e-6;
			return stretches.filter((stretch) => !isPast(stretch, passed, corners, LIMITS, STEP, slack));
		}
		// A reverse bend is held to the greatest projection by pieces of a millimetre, and carries no bracket.
		const stretches = [bend, at(bendEndOf[i])].flat();
		if (elbow.reverse !== null)
			return stretches.filter((half) => {
				const { face, edge } = awayFromWalls(half, passed, STEP);
				return Math.min(face[0], edge[0]) < LIMITS.clearance - 1e-6 || face[1] > LIMITS.greatest + 1;
			});
		return stretches.filter((one) => Math.abs(elbow.turn) > 0.0524 && !isInside(one, passed, LIMITS, STEP, 1e-6));
	});
}

/** Pieces of wall in line with one another, set forward or back by little, with slight turns as a tape leaves them. */
const stepped: fc.Arbitrary<Shape> = fc
	.array(fc.tuple(part, part, part, part), { minLength: 1, maxLength: 3 })
	.map((steps) => {
		const lengths = [900];
		const turns: number[] = [];
		for (const [out, front, skew, tilt] of steps) {
			const way = out < 0.5 ? 1 : -1;
			lengths.push(5 + 150 * Math.abs(out - 0.5), 200 + 900 * front);
			turns.push(way * (60 + 40 * skew), -way * (60 + 40 * skew) + (tilt - 0.5) * 3);
		}
		return { lengths, turns };
	});
const slightly: fc.Arbitrary<Shape> = fc.array(fc.tuple(part, part), { minLength: 1, maxLength: 6 }).map((walls) => ({
	lengths: [800, ...walls.map(([length]) => 60 + 500 * length)],
	turns: walls.map(([length, turn]) => (length < 0.4 ? (turn - 0.5) * 5.8 : turn * 40)),
}));

describe("whatever the walls, the smoothest track", () => {
	// 10,500 in all.
	test.each([
		["one external corner", pier, 1000, 400],
		["a breast or a pier", breast, 1500, 450],
		["a nib or a step", nib, 2000, 600],
		["a run of facets", faceted, 2500, 1250],
		["steps all but in line", stepped, 2000, 1250],
		["slight turns in a run", slightly, 1500, 750],
	])(
		"past %s holds its proof, stays inside the corridor, and has no more bends than the walls'",
		(_, forms, runs, least) => {
			let inside = 0;
			check(
				fc.tuple(forms, fc.option(part, { nil: null })),
				([shape, share]) => {
					const corners = placed(shape);
					const usual = share === null ? 40 : 30 + 120 * share;
					const projections = shape.lengths.map(() => usual);
					const smooth = fitted(corners, projections, CORRIDOR);
					const walls = fitted(corners, projections, null);
					if (smooth === null) {
						expect(walls).toBeNull();
						return;
					}
					const { path, chain, projections: chosen, bends } = smooth.track;
					const laws = prove(path, chain, { ...RULE, projections: chosen, ends: smooth.ends });
					const isSmooth = bends.elbows.some(({ limits }) => limits !== null);
					if (!isSmooth && bends.elbows.some(({ turn }) => Math.abs(turn) > 0.06)) return;
					inside++;
					// Other walls may be near; the walls that a bend goes round are never.
					expect(laws.filter(({ law }) => law !== "clear-of-walls" && law !== "does-not-cross-itself")).toEqual([]);
					if (shape.turns.every((turn) => Math.abs(turn) < 95)) expect(outside(smooth.track, corners)).toEqual([]);
					for (const off of chosen) expect(off >= 30 - 1e-7 && off <= 150 + 1e-7).toBe(true);
					if (walls !== null && outside(walls.track, corners).length === 0)
						expect(madeBends(smooth.track)).toBeLessThanOrEqual(madeBends(walls.track));
				},
				runs,
			);
			expect(inside).toBeGreaterThan(least);
		},
	);

	test("has no more bends than any found by trying every partition of the corners with every projection and radius of a grid", () => {
		const grid = [30, 60, 90, 120, 150];
		const thirties = fc.integer({ min: 1, max: 5 }).map((n) => 30 * n);
		const square: fc.Arbitrary<Shape> = fc
			.array(fc.tuple(thirties, part), { minLength: 1, maxLength: 2 })
			.chain((steps) =>
				fc.boolean().map((internal) => ({
					lengths: [900, ...steps.flatMap(([out, front]) => [out, 200 + 900 * front])],
					turns: steps.flatMap((_, i) => ((i % 2 === 0) === internal ? [90, -90] : [-90, 90])),
				})),
			);
		const seen = { none: 0, fewer: 0, same: 0, straight: 0 };
		check(
			fc.oneof(square, square, faceted, nib, pier),
			(shape) => {
				if (shape.lengths.length > 5) return;
				const corners = placed(shape);
				const best = fewestBends({
					corners,
					projections: grid,
					radii: [180, 200, 225, 250, 300, 360, 450, 600, 800, 1200, 1800],
					limits: LIMITS,
					besideBend: RULE.straightBesideBend,
					endStraight: RULE.endStraight,
				});
				if (!Number.isFinite(best)) {
					seen.none++;
					return;
				}
				const smooth = fitted(
					corners,
					shape.lengths.map(() => 60),
					CORRIDOR,
				);
				expect(smooth).not.toBeNull();
				const bends = madeBends((smooth as { track: FittedTrack }).track);
				expect(bends).toBeLessThanOrEqual(best);
				if (bends === 0) seen.straight++;
				seen[bends < best ? "fewer" : "same"]++;
			},
			200,
		);
		expect(seen.same).toBeGreaterThan(120);
		expect(seen.straight).toBeGreaterThan(25);
	});
});
