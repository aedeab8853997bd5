import {
	applyChange,
	type BayPlan,
	type FindingCode,
	findingSamples,
	libraryOf,
	parseJob,
	planBay,
	planJob,
	planJson,
	sampleJob,
	severities,
} from "@baywright/setout";
import { describe, expect, test } from "vitest";

/** A track of 600 on two brackets, 100 from either end; its own mass 0.5 kg a metre; no turnings, so that a curtain weighs what its cloth does. */
const system = {
	id: "plain",
	name: "Plain",
	minRadius: { internal: 100, external: 100 },
	projection: { default: 40, min: 30, max: 100 },
	bracket: { maxSpacing: 400, endMax: 100, maxLoad: 4 },
	stock: [{ length: 6000 }],
	massPerMetre: 0.5,
};
/** 1 kg/m². */
const cloth = { id: "kilo", width: 1000, mass: 1000 };

interface More {
	readonly curtains?: readonly object[];
	readonly draw?: string;
	readonly maxLoad?: number | null;
	readonly cloth?: object;
	readonly bay?: object;
}

function planOf({ curtains = [], draw = "left", maxLoad = 4, cloth: more = {}, bay = {} }: More): BayPlan {
	const read = parseJob({
		format: "baywright-job",
		version: 1,
		systems: [{ ...system, bracket: { ...system.bracket, maxLoad } }],
		cloths: [{ ...cloth, ...more }],
		bays: [
			{
				id: "b",
				corners: [
					[0, 0],
					[600, 0],
				],
				track: {
					system: "plain",
					draw,
					brackets: [
						{ wall: 0, at: 100 },
						{ wall: 0, at: 500 },
					],
				},
				curtains,
				makeUp: { overlap: 0, sideTurning: 0, headingTurning: 0, hemTurning: 0 },
				...bay,
			},
		],
	});
	if (!read.ok) throw new Error(JSON.stringify(read.problems));
	const [plan] = planJob(read.job);
	if (plan === undefined) throw new Error("no plan");
	return plan;
}

/** 600 of track, fullness 2: two widths of 1 m, 2 m long, at 1 kg/m²: 4 kg. */
const FOUR_KILOS = { cloth: "kilo", fullness: 2, drop: 2000 };

const LOAD_CODES: readonly FindingCode[] = [
	"bracket-overloaded",
	"bracket-lifts",
	"load-not-checked",
	"mass-not-known",
];
const toldOf = ({ findings }: BayPlan) =>
	findings.filter(({ code }) => LOAD_CODES.includes(code)).map(({ code }) => code);

describe("two brackets, by the lever rule", () => {
	const plan = planOf({ curtains: [FOUR_KILOS] });
	const [curtain] = plan.curtains;
	const [left, right] = plan.loads;
	/** Middle of the stack, from the left end of the track. */
	const middle = ((curtain?.stack.from ?? 0) + (curtain?.stack.to ?? 0)) / 2;

	test("the two stand 100 from the ends of 600 and the curtain weighs 4 kg", () => {
		expect(plan.brackets.map(({ station }) => station)).toEqual([100, 500]);
		expect(curtain?.mass).toBeCloseTo(4, 9);
	});

	test("drawn, each carries half of the curtain and of 0.3 kg of track", () => {
		expect(left?.drawn).toBeCloseTo(2.15, 9);
		expect(right?.drawn).toBeCloseTo(2.15, 9);
	});

	test("drawn back to the left, the left one carries (500 − middle of the stack)/400 of the curtain, the right one the rest", () => {
		expect(middle).toBeLessThan(100);
		expect(left?.stacked).toBeCloseTo((4 * (500 - middle)) / 400 + 0.15, 9);
		expect(right?.stacked).toBeCloseTo((4 * (middle - 100)) / 400 + 0.15, 9);
	});

	test("the left one carries most drawn back, the right one least, and it is lifted", () => {
		expect(left?.greatest).toBeCloseTo(left?.stacked as number, 6);
		expect(right?.least).toBeCloseTo(right?.stacked as number, 6);
		expect(right?.least).toBeLessThan(0);
	});

	test("the left one is over its 4 kg by as much, and that is told; a lift of less than a kilogram is not", () => {
		expect(left?.share).toBeCloseTo((left?.greatest as number) / 4, 12);
		expect(right?.least).toBeGreaterThan(-1);
		expect(toldOf(plan)).toEqual(["bracket-overloaded"]);
		const over = plan.findings.find(({ code }) => code === "bracket-overloaded");
		expect(over?.where).toMatchObject({ wall: 0, bracket: 0, station: 100 });
		expect(over?.figures).toMatchObject({ limit: 4, others: 0, load: left?.greatest });
	});
});

test("a lift of a kilogram or more is told, with how much", () => {
	const heavy = planOf({ curtains: [FOUR_KILOS], cloth: { mass: 5000 } });
	const least = heavy.loads[1]?.least as number;
	// 20 kg whose middle is 52 outside the bracket, over a span of 400, less 0.15 kg of track.
	const stack = heavy.curtains[0]?.stack;
	const middle = ((stack?.from ?? 0) + (stack?.to ?? 0)) / 2;
	expect(least).toBeCloseTo((20 * (middle - 100)) / 400 + 0.15, 9);
	expect(least).toBeLessThan(-1);
	const told = heavy.findings.find(({ code }) => code === "bracket-lifts");
	expect(told?.figures.lift).toBeCloseTo(-least, 9);
});

test("a limit that the load just meets is kept", () => {
	const most = planOf({ curtains: [FOUR_KILOS] }).loads[0]?.greatest as number;
	expect(toldOf(planOf({ curtains: [FOUR_KILOS], maxLoad: most }))).not.toContain("bracket-overloaded");
	expect(toldOf(planOf({ curtains: [FOUR_KILOS], maxLoad: most - 0.001 }))).toContain("bracket-overloaded");
});

test("without a limit nothing passes: no share, and it is told that nothing was checked", () => {
	const plan = planOf({ curtains: [FOUR_KILOS], maxLoad: null });
	expect(plan.loads.map(({ share }) => share)).toEqual([null, null]);
	expect(toldOf(plan)).toContain("load-not-checked");
	expect(toldOf(plan)).not.toContain("bracket-overloaded");
});

describe("what is not known", () => {
	test.each([
		["no cloth", [{ drop: 2000 }], {}, { count: 1, of: 1, cloth: 1, drop: 0, mass: 0 }],
		["no drop", [{ cloth: "kilo" }], {}, { count: 1, of: 1, cloth: 0, drop: 1, mass: 0 }],
		["no mass of the cloth", [FOUR_KILOS], { mass: null }, { count: 1, of: 1, cloth: 0, drop: 0, mass: 1 }],
		["no mass of its lining", [FOUR_KILOS], { lining: {} }, { count: 1, of: 1, cloth: 0, drop: 0, mass: 1 }],
	])("%s: no loads, and it is told for want of what", (_, curtains, more, figures) => {
		const plan = planOf({ curtains, cloth: more });
		expect(plan.loads).toEqual([]);
		expect(toldOf(plan)).toEqual(["mass-not-known"]);
		expect(plan.findings.find(({ code }) => code === "mass-not-known")?.figures).toEqual(figures);
	});

	test("a pair is one curtain", () => {
		const plan = planOf({ curtains: [{ drop: 2000 }], draw: "pair" });
		expect(plan.curtains).toHaveLength(2);
		expect(plan.findings.find(({ code }) => code === "mass-not-known")?.figures).toMatchObject({ count: 1, of: 1 });
	});

	test("one of two: the other is worked out, and that one is missing is told", () => {
		const known = { ...FOUR_KILOS, to: 300 };
		const plan = planOf({ curtains: [known, { from: 300, drop: 2000 }] });
		const sum = plan.loads.reduce((all, { drawn }) => all + drawn, 0);
		expect(sum).toBeCloseTo((plan.curtains[0]?.mass as number) + 0.3, 9);
		expect(plan.findings.find(({ code }) => code === "mass-not-known")?.figures).toMatchObject({ count: 1, of: 2 });
	});

	test("no limit stated and no mass known: only the mass is told", () => {
		expect(toldOf(planOf({ curtains: [{ drop: 2000 }], maxLoad: null }))).toEqual(["mass-not-known"]);
	});
});

test("a bay that says nothing of curtains is told nothing of loads, whatever its system", () => {
	for (const draw of ["pair", "left", "right", "none"])
		for (const maxLoad of [4, null]) {
			const plan = planOf({ draw, maxLoad });
			expect(plan.loads).toEqual([]);
			expect(toldOf(plan)).toEqual([]);
		}
	expect(toldOf(planOf({ draw: "none", curtains: [FOUR_KILOS] }))).toEqual([]);
});

test("the plan's JSON has every load with its limit", () => {
	const plan = planOf({ curtains: [FOUR_KILOS] });
	const { loads } = planJson([plan], "mm").bays[0] as ReturnType<typeof planJson>["bays"][number];
	expect(loads).toEqual(plan.loads.map((load) => ({ ...load, limit: 4 })));
	expect(JSON.parse(JSON.stringify(loads))).toEqual(loads);
});

/** A remedy is tried on a copy: a bay in which nothing can be changed is planned as any other. */
test.each(Object.keys(severities) as FindingCode[])("trying remedies leaves the bay as it is: %s", (code) => {
	const { stockNodes } = findingSamples[code];
	const read = parseJob(sampleJob(findingSamples[code]));
	if (!read.ok) throw new Error(JSON.stringify(read.problems));
	const effort = stockNodes === undefined ? {} : { stockNodes };
	const [bay] = frozen(read.job).bays;
	expect(() => planBay(bay as (typeof read.job.bays)[number], libraryOf(read.job), effort)).not.toThrow();
});

function frozen<Value>(value: Value): Value {
	if (typeof value !== "object" || value === null) return value;
	for (const part of Object.values(value)) frozen(part);
	return Object.freeze(value);
}

test("a bracket hardly over its limit is offered one more beside it, though that takes off little", () => {
	// A long wall with brackets where the system puts them; drawn back, the end bracket and the next share the stack.
	const corners = [
		[0, 0],
		[3000, 0],
	];
	const long = { curtains: [FOUR_KILOS], bay: { corners, track: { system: "plain", draw: "left" } } };
	const most = Math.max(...planOf(long).loads.map(({ greatest }) => greatest));
	const over = planOf({ ...long, maxLoad: most * 0.999 }).findings.find(({ code }) => code === "bracket-overloaded");
	expect(Number(over?.figures.load) / Number(over?.figures.limit)).toBeLessThan(1.002);
	expect(over?.remedies.map(({ action }) => action)).toEqual(["pin-brackets"]);
});

test("brackets over the limit on both side walls are told once, and what is pinned cures them all", () => {
	// A square bay is as heavy on its left as on its right: a pair drawn back loads the second bracket from either end alike.
	const read = parseJob({
		format: "baywright-job",
		version: 1,
		bays: [
			{
				id: "b",
				corners: [
					[0, 0],
					[0, 900],
					[1800, 900],
					[1800, 0],
				],
				track: { system: "flexible", draw: "pair" },
				curtains: [{ cloth: "heavy-interlined", fullness: 2.2, drop: 2000 }],
			},
		],
	});
	if (!read.ok) throw new Error(JSON.stringify(read.problems));
	const plan = planJob(read.job)[0] as BayPlan;
	const over = plan.loads.filter(({ share }) => (share as number) > 1);
	expect(over.map(({ bracket }) => plan.brackets[bracket]?.wall)).toEqual([0, 2]);
	expect(over[0]?.greatest).toBeCloseTo(over[1]?.greatest as number, 6);

	const told = plan.findings.filter(({ code }) => code === "bracket-overloaded");
	expect(told).toHaveLength(1);
	expect(told[0]?.where).toMatchObject({ wall: 0, bracket: over[0]?.bracket });
	expect(told[0]?.figures).toMatchObject({ limit: 3, others: 1 });
	const [remedy] = told[0]?.remedies ?? [];
	expect(remedy?.action).toBe("pin-brackets");
	const after = applyChange(read.job, remedy?.change ?? []);
	if (!after.ok) throw new Error(JSON.stringify(after.problems));
	for (const { greatest } of planJob(after.job)[0]?.loads ?? []) expect(greatest).toBeLessThanOrEqual(3);
});
