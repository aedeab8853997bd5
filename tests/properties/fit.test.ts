import { prove, readChain, shareRadii, starvedLegs, type WallChain } from "@baywright/geometry";
import { applyChange, type BayPlan, type Finding, planJob } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fairRadii } from "../oracles/fair-radii.ts";
import { legsOf, spareOf } from "../oracles/legs.ts";
import { anyBays, type Bay, bayOf, check, jobOf, ordinaryBays, planDrawn, planOf, refusalsOf } from "./bays.ts";

/** mm; the oracles and the fit round differently. */
const TOLERANCE = 1e-5;

const endsOf = (bay: Bay, chain: WallChain) => ({
	start: bay.track.start ?? { wall: 0, at: 0 },
	end: bay.track.end ?? { wall: chain.walls.length - 1, at: chain.walls.at(-1)?.length ?? 0 },
});

function broken(bay: Bay, plan: BayPlan) {
	if (plan.path === null || plan.chain === null) throw new Error("no path");
	return prove(plan.path, plan.chain, {
		leastRadius: plan.system.minRadius,
		clearance: plan.system.clearance,
		projections: plan.projections,
		ends: endsOf(bay, plan.chain),
	});
}

describe("what the plan draws", () => {
	test.each([
		["ordinary", ordinaryBays],
		["any", anyBays],
	])("is proved on %s bays without a refusal, and every figure is a number", (_, bays) => {
		let proved = 0;
		check(
			bays,
			(drawn) => {
				const job = jobOf(drawn);
				const plan = planOf(job);
				expect(notNumbers(plan)).toEqual([]);
				if (plan.path === null || refusalsOf(plan).length > 0) {
					expect(refusalsOf(plan)).not.toEqual([]);
					return;
				}
				proved++;
				expect(broken(bayOf(job), plan)).toEqual([]);
			},
			2000,
		);
		expect(proved).toBeGreaterThan(320);
	});
});

/** Places in a plan that hold a number that is none. */
function notNumbers(value: unknown, path = ""): string[] {
	if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} ${value}`];
	if (typeof value !== "object" || value === null) return [];
	return Object.entries(value).flatMap(([key, inner]) => notNumbers(inner, `${path}/${key}`));
}

/** How a leg that is too short may be told: by its wall, by the track's end on it, by both ends. */
const SHORT_LEG: readonly Finding["code"][] = ["leg-too-short", "end-too-near-corner", "track-too-short"];

describe("refusals are true", () => {
	test("a wall too short for its bends is too short by the legs' own geometry, and by as much as is said", () => {
		let seen = 0;
		check(
			ordinaryBays,
			(drawn) => {
				const job = jobOf(drawn);
				const plan = planOf(job);
				const short = plan.findings.filter(({ code }) => SHORT_LEG.includes(code));
				const legs = independentLegs(bayOf(job), plan);
				if (legs === null) return;
				const spare = spareOf(legs, leastOf(plan, legs), plan.system.straightBesideBend, plan.system.endTakeUp);
				for (const { where, figures } of short) {
					seen++;
					const leg = (where.wall as number) - (bayOf(job).track.start?.wall ?? 0);
					const { length, fromCorner, needed } = figures;
					const lacking = Number(needed) - Number(length ?? fromCorner);
					expect(lacking).toBeGreaterThan(0);
					expect(Math.abs((spare[leg] as number) + lacking)).toBeLessThan(TOLERANCE);
				}
				// And the other way: a plan with a bend at every corner has no such leg, one that bridges has.
				if (plan.path === null) return;
				if (hasBendEach(plan)) for (const left of spare) expect(left).toBeGreaterThan(-TOLERANCE);
				else expect(Math.min(...spare)).toBeLessThan(TOLERANCE);
			},
			2000,
		);
		expect(seen).toBeGreaterThan(100);
	});

	test("a set radius is too large whatever the free radii are, and what is said to be the greatest would fit", () => {
		let seen = 0;
		check(
			ordinaryBays,
			(drawn) => {
				const job = jobOf(drawn);
				const plan = planOf(job);
				const legs = independentLegs(bayOf(job), plan);
				if (legs === null) return;
				// A wall too short in itself leaves no radius that fits beside it.
				if (plan.findings.some(({ code }) => SHORT_LEG.includes(code))) return;
				const first = bayOf(job).track.start?.wall ?? 0;
				for (const { where, figures } of plan.findings.filter(({ code }) => code === "radius-too-large")) {
					seen++;
					expect(Number(figures.radius)).toBeGreaterThan(Number(figures.greatest));
					const bend = (where.corner as number) - first - 1;
					const least = leastOf(plan, legs);
					const with_ = (radius: number, others: readonly number[]) =>
						spareOf(
							legs,
							others.map((other, i) => (i === bend ? radius : other)),
							plan.system.straightBesideBend,
							plan.system.endTakeUp,
						);
					// With all the others as small as they may be, set ones kept, its own legs are too short.
					const kept = least.map(
						(floor, i) => bayOf(job).track.bends.find(({ corner }) => corner === first + 1 + i)?.radius ?? floor,
					);
					const asSet = with_(Number(figures.radius), kept);
					expect(Math.min(asSet[bend] as number, asSet[bend + 1] as number)).toBeLessThan(0);
					// At the greatest they are long enough with the others kept, or at least with the others free.
					const atGreatest = [kept, least].map((others) => with_(Number(figures.greatest), others));
					expect(
						Math.max(...atGreatest.map((spare) => Math.min(spare[bend] as number, spare[bend + 1] as number))),
					).toBeGreaterThan(-TOLERANCE);
				}
			},
			2000,
		);
		expect(seen).toBeGreaterThan(20);
	});

	test("with free radii, some radii on a grid fit exactly where the fit gives every corner its bend", () => {
		const bays = fc.record({
			turns: fc.tuple(fc.integer({ min: 10, max: 120 }), fc.integer({ min: 10, max: 120 })),
			middle: fc.integer({ min: 100, max: 1500 }),
			sides: fc.tuple(fc.integer({ min: 100, max: 1200 }), fc.integer({ min: 100, max: 1200 })),
		});
		let fitted = 0;
		let refused = 0;
		let bridged = 0;
		check(
			bays,
			({ turns, middle, sides }) => {
				const corners: [number, number][] = [[0, 0]];
				let heading = Math.PI / 2;
				[sides[0], middle, sides[1]].forEach((length, wall) => {
					const [x, y] = corners.at(-1) as [number, number];
					corners.push([x + length * Math.cos(heading), y + length * Math.sin(heading)]);
					heading -= ((turns[wall] ?? 0) * Math.PI) / 180;
				});
				const job = jobOf({ id: "b", corners });
				const plan = planOf(job);
				const legs = legsOf(corners, [40, 40, 40], { wall: 0, at: 0 }, { wall: 2, at: sides[1] });
				let any = false;
				for (let left = 225; left <= 400; left += 12.5)
					for (let right = 225; right <= 400; right += 12.5)
						any ||= spareOf(legs, [left, right], 40, 100).every((spare) => spare >= -TOLERANCE);
				if (plan.findings.some(({ code }) => code === "walls-cross")) return;
				expect(plan.path !== null && hasBendEach(plan)).toBe(any);
				if (any) fitted++;
				else if (plan.path === null) refused++;
				else bridged++;
			},
			2000,
		);
		expect(Math.min(fitted, refused, bridged)).toBeGreaterThan(110);
	});

	test("a wall lengthened by what it lacks is long enough", () => {
		const corners = [
			[0, 0],
			[0, 1500],
			[600, 1500],
			[600, 0],
		];
		const [finding] = planDrawn({ id: "b", corners }).findings;
		expect(finding?.code).toBe("leg-too-short");
		const width = 600 + Number(finding?.figures.short);
		const wider = corners.map(([x, y]) => [x === 600 ? width + 1e-6 : x, y]);
		expect(refusalsOf(planDrawn({ id: "b", corners: wider }))).toEqual([]);
		const justShort = corners.map(([x, y]) => [x === 600 ? width - 1e-3 : x, y]);
		expect(refusalsOf(planDrawn({ id: "b", corners: justShort }))).not.toEqual([]);
	});
});

/** Legs by the oracle, where the track has such legs at all and no turn is too slight for an intersection of lines. */
function independentLegs(bay: Bay, plan: BayPlan) {
	if (plan.chain === null) return null;
	const early = ["walls-cross", "end-off-wall", "ends-reversed"];
	const more = ["projection-change-at-slight-turn"];
	if (plan.findings.some(({ code }) => [...early, ...more].includes(code))) return null;
	const { start, end } = endsOf(bay, plan.chain);
	const turns = plan.chain.turns.slice(start.wall + 1, end.wall + 1);
	if (turns.some((turn) => Math.abs(turn) < (3 * Math.PI) / 180)) return null;
	return legsOf(bay.corners, plan.projections, start, end);
}

/** A bend at every corner: none bridged, none reverse. */
const hasBendEach = ({ corners }: BayPlan): boolean => corners.every(({ kind }) => kind === "bend");

const leastOf = (plan: BayPlan, { turn }: { readonly turn: readonly number[] }): number[] =>
	turn.map(() => plan.system.minRadius.internal);

describe("every remedy cures what it is offered for", () => {
	test("in well over a thousand bays", () => {
		const tried: Record<string, number> = {};
		check(
			ordinaryBays,
			(drawn) => {
				const job = jobOf(drawn);
				const [plan] = planJob(job);
				for (const finding of plan?.findings ?? [])
					for (const { action, change } of finding.remedies) {
						tried[action] = (tried[action] ?? 0) + 1;
						const cured = applyChange(job, change);
						if (!cured.ok) throw new Error(`${action}: ${JSON.stringify(cured.problems)}`);
						const after = planOf(cured.job);
						expect(
							after.findings.filter((other) => isThere(other, finding, action)),
							action,
						).toEqual([]);
					}
			},
			1600,
		);
		const expected = [
			"draw-to-one-side",
			"end-at-corner",
			"follow-smoothest",
			"joints-auto",
			"move-bracket",
			"move-end",
			"move-joint",
			"release-all-radii",
			"release-bracket",
			"release-radius",
			"remove-joint",
			"same-projection",
			"set-projection",
			"set-radius",
			"set-wall-projection",
			"swap-ends",
			"track-to-end-of-bay",
			"use-system",
		];
		expect(Object.keys(tried)).toEqual(expect.arrayContaining(expected));
	});
});

/** Is it the same matter in the same place? A joint or pin that is taken out leaves its number to the next. */
function isThere(after: Finding, before: Finding, action: string): boolean {
	if (after.code !== before.code || action === "remove-joint" || action === "release-bracket") return false;
	// Pieces are lettered afresh once there are joints.
	if (action === "joints-auto") return true;
	const keys = ["wall", "corner", "joint", "obstacle", "end"] as const;
	return keys.every((key) => after.where[key] === before.where[key]) && pinOf(after) === pinOf(before);
}

/** Where a pin stands in the job, which only its own release says. */
const pinOf = ({ remedies }: Finding): string | undefined =>
	remedies.find(({ action }) => action === "release-bracket")?.change[0]?.path;

describe("sharing out the radii", () => {
	const rows = fc.integer({ min: 1, max: 9 }).chain((bends) =>
		fc.record({
			room: fc.array(fc.integer({ min: 20, max: 900 }), { minLength: bends + 1, maxLength: bends + 1 }),
			slope: fc.array(
				fc.integer({ min: 3, max: 300 }).map((part) => part / 100),
				{ minLength: bends, maxLength: bends },
			),
			least: fc.array(fc.integer({ min: 0, max: 250 }), { minLength: bends, maxLength: bends }),
			more: fc.array(fc.integer({ min: 0, max: 500 }), { minLength: bends, maxLength: bends }),
		}),
	);

	test("is what the definition of max–min fairness gives", () => {
		let shared = 0;
		check(
			rows,
			({ room, slope, least, more }) => {
				const row = { room, slope, least, goal: least.map((radius, i) => radius + (more[i] as number)) };
				const radii = shareRadii(row);
				const slow = fairRadii(row);
				expect(radii === null).toBe(slow === null);
				expect(starvedLegs(row).length > 0).toBe(radii === null);
				if (radii === null || slow === null) return;
				shared++;
				for (const [i, radius] of radii.entries()) expect(Math.abs(radius - (slow[i] as number))).toBeLessThan(2e-3);
			},
			2000,
		);
		expect(shared).toBeGreaterThan(330);
	});

	test("does not depend on the side it is read from", () => {
		check(
			rows,
			({ room, slope, least, more }) => {
				const goal = least.map((radius, i) => radius + (more[i] as number));
				const there = shareRadii({ room, slope, least, goal });
				const back = shareRadii({
					room: room.toReversed(),
					slope: slope.toReversed(),
					least: least.toReversed(),
					goal: goal.toReversed(),
				})?.toReversed();
				expect(back === undefined).toBe(there === null);
				for (const [i, radius] of (there ?? []).entries())
					expect(Math.abs(radius - (back?.[i] as number))).toBeLessThan(1e-9);
			},
			2000,
		);
	});

	test("grows no faster than a queue allows", () => {
		// Falling rooms make every leg fill up at its own time: as many rounds as legs.
		const row = (bends: number) => ({
			room: Array.from({ length: bends + 1 }, (_, i) => 500 + i * 0.1),
			slope: Array.from({ length: bends }, () => 1),
			least: Array.from({ length: bends }, () => 100),
			goal: Array.from({ length: bends }, () => 400),
		});
		const radii = shareRadii(row(20_000)) as number[];
		expect(radii).toHaveLength(20_000);
		expect(starvedLegs({ ...row(20_000), least: radii })).toEqual([]);
	});
});

test("a bay of walls a millimetre or more long is always read", () => {
	expect(
		readChain([
			{ x: 0, y: 0 },
			{ x: 1, y: 0 },
		]).ok,
	).toBe(true);
	expect(
		readChain([
			{ x: 0, y: 0 },
			{ x: 0.999, y: 0 },
		]).ok,
	).toBe(false);
});
