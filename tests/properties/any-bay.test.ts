import { prove } from "@baywright/geometry";
import { applyChange, type BayPlan, planJob } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Partition, partitions } from "../oracles/bridging.ts";
import { dubins } from "../oracles/dubins.ts";
import {
	allForms,
	anyCorners,
	anything,
	baysOf,
	bowed,
	breast,
	drawnAt,
	faceted,
	mirrorOf,
	nib,
	part,
	pier,
	slightAmong,
} from "./any-bay.ts";
import { check, jobOf, placings, planDrawn, planOf, refusalsOf } from "./bays.ts";

/** mm; rounding grows with the coordinates and the number of walls. */
const TOLERANCE = 1e-4;

const origin = { x: 0, y: 0, heading: 0 };
const codesOf = (plan: BayPlan) => plan.findings.map(({ code }) => code);

/** Places in a plan that hold a number that is none. */
function notNumbers(value: unknown, path = ""): string[] {
	if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} ${value}`];
	if (typeof value !== "object" || value === null) return [];
	return Object.entries(value).flatMap(([key, inner]) => notNumbers(inner, `${path}/${key}`));
}

/** Laws that the plan's own path breaks and no refusal tells of. */
function untold(plan: BayPlan) {
	if (plan.path === null || plan.chain === null) return [];
	const last = plan.chain.walls.length - 1;
	const codes = new Set(codesOf(plan));
	const told = { "clear-of-walls": "track-too-near-wall", "does-not-cross-itself": "track-crosses-itself" } as const;
	return prove(plan.path, plan.chain, {
		leastRadius: plan.system.minRadius,
		clearance: plan.system.clearance,
		projections: plan.projections,
		ends: { start: { wall: 0, at: 0 }, end: { wall: last, at: plan.chain.walls[last]?.faceLength as number } },
	}).filter(({ law }) => !(law in told && codes.has(told[law as keyof typeof told])));
}

describe("whatever the corners and bows", () => {
	// 20,000 in all.
	test.each([
		["one external corner", pier, 3000, 1200],
		["a breast or a pier", breast, 1500, 450],
		["a nib or a step", nib, 1500, 550],
		["a run of facets", faceted, 1500, 750],
		["bowed walls", bowed, 1500, 750],
		["anything", anything, 1500, 200],
	])("%s: proved or refused, all figures numbers", (_, forms, runs, least) => {
		let proved = 0;
		check(
			fc.tuple(baysOf(forms, { setRadii: true }), placings),
			([bay, placing]) => {
				const plan = planDrawn(drawnAt(bay, anyCorners(bay, placing)));
				expect(notNumbers(plan)).toEqual([]);
				if (plan.path === null) expect(refusalsOf(plan)).not.toEqual([]);
				else expect(untold(plan)).toEqual([]);
				if (refusalsOf(plan).length === 0) proved++;
			},
			runs,
		);
		expect(proved).toBeGreaterThan(least);
	});

	test("a single external corner, however its projections differ, is bent round clear of the walls or refused for want of room", () => {
		check(
			baysOf(pier),
			(bay) => {
				expect(codesOf(planDrawn(drawnAt(bay, anyCorners(bay, origin))))).not.toContain("track-too-near-wall");
			},
			1000,
		);
	});

	test("no track is shorter than the shortest path of its least radius between its ends", () => {
		let looked = 0;
		check(
			baysOf(allForms, { setRadii: true }),
			(bay) => {
				const { path, system } = planDrawn(drawnAt(bay, anyCorners(bay, origin)));
				const first = path?.segments[0];
				const last = path?.segments.at(-1);
				if (path === null || first === undefined || last === undefined) return;
				looked++;
				const ending = last.heading - (last.kind === "straight" ? 0 : last.turn);
				const least = Math.min(system.minRadius.internal, system.minRadius.external);
				const from = { ...first.from, heading: first.heading };
				expect(path.length).toBeGreaterThan(dubins(from, { ...last.to, heading: ending }, least) - TOLERANCE);
			},
			2000,
		);
		expect(looked).toBeGreaterThan(1000);
	});
});

describe("bridging and refusing", () => {
	const straightForms = fc.oneof(pier, breast, nib, faceted, faceted, slightAmong, anything);

	test("fits exactly where some bridging fits, with as many legs as any, of these with the widest tightest bend", () => {
		const seen = { refused: 0, bridged: 0, plain: 0, reverse: 0 };
		check(
			baysOf(straightForms),
			(bay) => {
				if (bay.rises.some((rise) => rise !== 0)) return;
				const corners = anyCorners(bay, origin);
				const plan = planDrawn(drawnAt(bay, corners));
				const fit = codesOf(plan).filter((code) => code === "leg-too-short" || code === "no-room-round-corner");
				if (plan.path === null && fit.length === 0) return;
				const turns = plan.chain?.turns.slice(1, -1) ?? [];
				if (turns.some((turn) => Math.abs(turn) < 1e-3 || Math.abs(Math.abs(turn) - 0.0523599) < 1e-4)) return;
				const all = partitions({
					corners,
					projections: plan.projections,
					least: plan.system.minRadius,
					clearance: plan.system.clearance,
					besideBend: plan.system.straightBesideBend,
					endStraight: plan.system.endTakeUp,
				});
				// What hangs on a hair is left to rounding.
				if (all.some(({ spare }) => Math.abs(spare) < 1e-4)) return;
				const possible = all.filter(({ spare }) => spare > 0);
				if (plan.path === null) {
					seen.refused++;
					expect(possible).toEqual([]);
					return;
				}
				const most = Math.max(0, ...possible.map(({ sizes }) => sizes.length));
				if (plan.corners.some(({ kind }) => kind === "reverse")) {
					seen.reverse++;
					// A reverse bend takes two corners and keeps one leg fewer: only where no other way keeps as many.
					const bends = plan.corners.filter(({ corners, corner }) => corners[0] === corner).length;
					const pairs = plan.corners.filter(({ kind }) => kind === "reverse").length / 2;
					expect(most).toBeLessThanOrEqual(bends - pairs);
					return;
				}
				const sizes = plan.corners.filter((each) => each.corners[0] === each.corner).map((each) => each.corners.length);
				// Slight turns passed as one have no corners to be set out.
				if (sizes.reduce((sum, size) => sum + size, 0) < turns.length) return;
				if (sizes.some((size) => size > 1)) seen.bridged++;
				else seen.plain++;
				expect(sizes.length).toBe(most);
				const chosen = possible.find((each) => each.sizes.join() === sizes.join());
				const best = Math.max(...possible.filter((each) => each.sizes.length === most).map((each) => each.tightest));
				expect((chosen as Partition).tightest).toBeGreaterThanOrEqual(best - TOLERANCE);
			},
			2000,
		);
		expect(Math.min(seen.refused, seen.bridged, seen.plain, seen.reverse)).toBeGreaterThan(150);
	});

	test("every remedy that is offered cures what it is offered for", () => {
		const tried: Record<string, number> = {};
		check(
			baysOf(allForms, { setRadii: true }),
			(bay) => {
				const job = jobOf(drawnAt(bay, anyCorners(bay, origin)));
				for (const { code, where, remedies } of planJob(job)[0]?.findings ?? [])
					for (const { action, change } of remedies) {
						tried[action] = (tried[action] ?? 0) + 1;
						const cured = applyChange(job, change);
						if (!cured.ok) throw new Error(`${action}: ${JSON.stringify(cured.problems)}`);
						const after = planOf(cured.job).findings.filter((other) => other.code === code);
						expect(
							after.filter((other) => other.where.wall === where.wall && other.where.corner === where.corner),
							`${code} ${action}`,
						).toEqual([]);
					}
			},
			600,
		);
		const expected = [
			"end-at-corner",
			"follow-smoothest",
			"set-projection",
			"set-radius",
			"release-radius",
			"use-system",
		];
		expect(Object.keys(tried)).toEqual(expect.arrayContaining(expected));
	});
});

describe("the side it is seen from and where it stands", () => {
	const near = (a: number, b: number, tolerance = TOLERANCE) => expect(Math.abs(a - b)).toBeLessThan(tolerance);

	test("a bay in a mirror has the mirrored path and bends", () => {
		let fitted = 0;
		check(
			baysOf(allForms, { setRadii: true }),
			(bay) => {
				const plan = planDrawn(drawnAt(bay, anyCorners(bay, origin)));
				const mirror = planDrawn(drawnAt(mirrorOf(bay), anyCorners(mirrorOf(bay), origin)));
				// Turns of a millionth of a degree that are yet not none: which of two reasons a tight bow is refused for is a matter of rounding.
				if (bay.shape.turns.some((turn) => turn !== 0 && Math.abs(turn) < 1e-5)) return;
				const kinds = (each: BayPlan) => refusalsOf(each).map(({ code }) => code);
				expect(kinds(mirror).sort()).toEqual(kinds(plan).sort());
				if (plan.path === null || mirror.path === null) return;
				fitted++;
				near(mirror.path.length, plan.path.length);
				expect(mirror.corners).toHaveLength(plan.corners.length);
				plan.corners.forEach((corner, i) => {
					const other = mirror.corners.at(-1 - i);
					expect(other?.kind).toBe(corner.kind);
					near(other?.radius as number, corner.radius, 1e-3);
					near(other?.sweep as number, corner.sweep, 1e-3);
				});
			},
			2000,
		);
		expect(fitted).toBeGreaterThan(1000);
	});

	test("a bay moved and turned has the same lengths, bends and refusals", () => {
		let fitted = 0;
		check(
			fc.tuple(baysOf(allForms, { setRadii: true }), placings, placings),
			([bay, here, there]) => {
				const plan = planDrawn(drawnAt(bay, anyCorners(bay, here)));
				const moved = planDrawn(drawnAt(bay, anyCorners(bay, there)));
				expect(refusalsOf(moved).map(({ code }) => code)).toEqual(refusalsOf(plan).map(({ code }) => code));
				if (plan.path === null || moved.path === null) return;
				fitted++;
				near(moved.path.length, plan.path.length);
				plan.corners.forEach(({ kind, radius, sweep }, i) => {
					expect(moved.corners[i]?.kind).toBe(kind);
					near(moved.corners[i]?.radius as number, radius, 1e-3);
					near(moved.corners[i]?.sweep as number, sweep, 1e-3);
				});
			},
			2000,
		);
		expect(fitted).toBeGreaterThan(600);
	});

	test("a corner dragged by a tenth of a millimetre moves the track by little, unless bends are joined or parted", () => {
		let looked = 0;
		check(
			fc.tuple(baysOf(allForms), part, part),
			([bay, which, way]) => {
				const corners = anyCorners(bay, origin);
				const dragged = Math.floor(which * (corners.length - 1e-9));
				const moved = corners.map(([x, y], corner): [number, number] =>
					corner === dragged ? [x + 0.1 * Math.cos(7 * way), y + 0.1 * Math.sin(7 * way)] : [x, y],
				);
				const plan = planDrawn(drawnAt(bay, corners));
				const after = planDrawn(drawnAt(bay, moved));
				// Sharp corners and short walls gear a small drag up; deep bows too.
				if (bay.shape.lengths.some((length) => length < 150)) return;
				if (bay.rises.some((rise, wall) => Math.abs(rise) > 0.2 * (bay.shape.lengths[wall] as number))) return;
				if (bay.shape.turns.some((turn) => Math.abs(turn) > 110 || Math.abs(turn) < 3.2)) return;
				if (plan.path === null || after.path === null) return;
				const kinds = (each: BayPlan) =>
					each.corners.map(({ kind, corners: shared }) => `${kind}${shared.join()}`).join();
				if (kinds(plan) !== kinds(after)) return;
				looked++;
				expect(Math.abs(after.path.length - plan.path.length)).toBeLessThan(5);
			},
			2000,
		);
		expect(looked).toBeGreaterThan(460);
	});
});
