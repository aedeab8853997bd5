import { libraryOf, planBay, planJson } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { anyBays, type Bay, bayOf, check, jobOf } from "./bays.ts";

/** Anything that the schema lets through as an amount of mm. */
const wildMm = fc.oneof(
	fc.double({ noNaN: true, noDefaultInfinity: true }),
	fc.integer({ min: -3000, max: 6000 }),
	fc.constantFrom(0, -0, 1e-300, 1e300, -1e300, Number.MAX_VALUE, Number.MIN_VALUE, 1e5, 99_999.999),
);
/** mm; as far as figures are promised to stay figures. */
const KILOMETRE = 1e6;

const upTo = (most: number) => wildMm.map((value) => Math.max(Math.min(value, most), -most));
const overZeroUpTo = (most: number) => upTo(most).map((value) => (value === 0 ? 1 : Math.abs(value)));

/** Coordinates as no file can hold them, but a program might. */
const broken = fc.oneof(
	{ weight: 6, arbitrary: wildMm },
	{ weight: 1, arbitrary: fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY) },
);

const spanUpTo = (most: number) =>
	fc
		.tuple(upTo(most), upTo(most))
		.filter(([a, b]) => a !== b)
		.map(([a, b]): [number, number] => (a < b ? [a, b] : [b, a]));

/** A track system with figures of any size, down to a spacing that fills a bay with brackets but not a computer's memory. */
const systemsUpTo = (most: number) => {
	const any = upTo(most);
	const overZero = overZeroUpTo(most);
	return fc.record({
		id: fc.constant("own"),
		name: fc.constant("Own"),
		minRadius: fc.record({ internal: overZero, external: overZero }),
		preferredRadius: overZero,
		projection: fc
			.tuple(overZero, overZero, overZero)
			.map((all) => all.toSorted((a, b) => a - b))
			.map(([min, usual, max]) => ({ min, default: usual, max })),
		clearance: overZero,
		straightBesideBend: any.map(Math.abs),
		bracket: fc.record({
			maxSpacing: overZero.map((value) => Math.max(value, 25)),
			endMax: overZero,
			besideBendMax: overZero,
			acrossBendMax: fc.option(overZero, { nil: null }),
			jointCompanion: overZero,
			width: overZero.map((value) => Math.max(value, 1)),
			carryRadius: fc.option(overZero, { nil: null }),
		}),
		joint: fc.option(fc.record({ clearOfBend: any.map(Math.abs) }), { nil: null }),
		stock: fc.array(fc.record({ length: overZero.map((value) => Math.max(value, 200)) }), {
			minLength: 1,
			maxLength: 3,
		}),
		kerf: fc.integer({ min: 0, max: 50 }),
		endTakeUp: fc.oneof(fc.integer({ min: 0, max: 200 }), any.map(Math.abs)),
	});
};

/** Ordinary figures, each now and then a wild one. */
const sometimes = <Value>(usual: fc.Arbitrary<Value>, wild: fc.Arbitrary<Value>): fc.Arbitrary<Value> =>
	fc.oneof({ weight: 4, arbitrary: usual }, { weight: 1, arbitrary: wild });

const oddSystems = fc
	.tuple(
		systemsUpTo(KILOMETRE),
		fc.record({
			minRadius: sometimes<{ internal: number; external: number }>(
				fc.constant({ internal: 150, external: 150 }),
				fc.constant({ internal: 1e-9, external: 1e-9 }),
			),
			projection: fc.constant({ default: 40, min: 1, max: 1000 }),
			clearance: sometimes(fc.constant(10), overZeroUpTo(KILOMETRE)),
		}),
		fc.boolean(),
	)
	.map(([wild, tame, taming]) => (taming ? { ...wild, ...tame } : wild));

describe("nothing throws and nothing hangs", () => {
	test("on wild but valid jobs: any system, any stretch, any place, up to a kilometre", () => {
		const most = KILOMETRE;
		const wrong = /undefined|NaN|Infinity/;
		let planned = 0;
		check(
			fc.tuple(
				anyBays,
				oddSystems,
				fc.array(spanUpTo(most), { maxLength: 3 }),
				fc.array(upTo(most), { minLength: 6, maxLength: 6 }),
			),
			([drawn, system, spans, [a, b, c, d, e, f]]) => {
				const walls = drawn.walls.map((wall, i) => (i === 0 ? { ...wall, noDrill: spans } : wall));
				const track = {
					...drawn.track,
					system: "own",
					radius: Math.abs(a as number) || null,
					joints:
						drawn.track.joints === "none"
							? [
									{ wall: 0, at: b },
									{ wall: 0, at: c },
								]
							: drawn.track.joints,
					brackets: [{ wall: 0, at: d }],
				};
				const openings = spans.map(([from, to]) => ({
					wall: 0,
					from,
					to,
					sill: 100,
					head: Math.min(100 + Math.abs(e as number), KILOMETRE),
				}));
				const obstacles = spans.map(([from, to]) => ({ wall: 0, from, to, depth: Math.abs(f as number) }));
				const bay = { ...drawn, walls, track, openings: openings.filter(({ sill, head }) => head > sill), obstacles };
				const job = jobOf(bay, [system]);
				const plan = planBay(bayOf(job), libraryOf(job), { stockNodes: 500, trials: 30 });
				if (plan.path !== null) planned++;
				for (const unit of ["mm", "cm", "in"] as const)
					for (const { findings } of planJson([plan], unit).bays)
						for (const { message } of findings) expect(message).not.toMatch(wrong);
			},
			1000,
		);
		expect(planned).toBeGreaterThan(60);
	});

	test("on corners that are no numbers, far away, on one another, folded or crossing", () => {
		const corners = fc.oneof(
			fc.array(fc.tuple(broken, broken), { maxLength: 8 }),
			fc
				.array(fc.tuple(fc.integer({ min: -3, max: 3 }), fc.integer({ min: -3, max: 3 })), { maxLength: 9 })
				.map((all) => all.map(([x, y]) => [x * 700, y * 700] as [number, number])),
		);
		check(
			corners,
			(all) => {
				const job = jobOf({ id: "b", corners: all.map(() => [0, 0]) });
				const bay: Bay = { ...bayOf(job), corners: all };
				const plan = planBay(bay, libraryOf(job), { trials: 30 });
				if (all.length < 2) expect(plan.findings[0]?.code).toBe("too-few-corners");
				if (all.flat().some((value) => !(Math.abs(value) <= 1e5))) {
					expect(plan.path).toBeNull();
					if (all.length > 1) expect(plan.findings[0]?.code).toBe("coordinate-out-of-range");
				}
				if (plan.path === null) expect(plan.findings.length).toBeGreaterThan(0);
			},
			2500,
		);
	});
});
