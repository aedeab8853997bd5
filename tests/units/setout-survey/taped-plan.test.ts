import { readFileSync } from "node:fs";
import {
	AT_95,
	applyChange,
	asSettled,
	type Bay,
	type BayPlan,
	describe as inWords,
	type Job,
	libraryOf,
	parseJob,
	planBay,
	planJob,
	planJson,
	readJobText,
	settle,
	sureCuts,
} from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { bayOf, systemOf } from "./bay.ts";

const library = libraryOf(jobOf({}));

function jobOf(bay: object): Job {
	const parsed = parseJob({
		format: "baywright-job",
		version: 1,
		bays: [
			{
				id: "b1",
				corners: [
					[0, 0],
					[0, 900],
					[1800, 900],
					[1800, 0],
				],
				...bay,
			},
		],
	});
	if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
	return parsed.job;
}

function exampleOf(name: string): Job {
	const file = new URL(`../../../examples/${name}.baywright.json`, import.meta.url);
	const read = readJobText(readFileSync(file, "utf8"));
	if (!read.ok) throw new Error(name);
	return read.job;
}

const planOf = (more: object, effort = {}): BayPlan => planBay(bayOf(more), library, effort);
const codesOf = ({ findings }: BayPlan) => findings.map(({ code }) => code);

/** The side walls 950 and 940 instead of the 900 that they are drawn, square to a front of 1800. */
const LONGER = [
	{ kind: "run", wall: 0, value: 950 },
	{ kind: "run", wall: 1, value: 1800 },
	{ kind: "run", wall: 2, value: 940 },
	{ kind: "angle", corner: 1, value: 90 },
	{ kind: "angle", corner: 2, value: 90 },
];

describe("a bay with nothing taped", () => {
	test("has no survey and no ±, whatever is asked", () => {
		const plan = planOf({});
		expect(plan.survey).toBeNull();
		expect(plan.pieces.map(({ sd }) => sd)).toEqual([null]);
		expect(planOf({}, { sureness: false })).toEqual(plan);
		expect(asSettled(bayOf(), plan.system).survey).toBeNull();
	});
});

describe("a taped bay", () => {
	test("is planned by what was taped: 50 and 40 more of side wall is 90 more of track", () => {
		const [drawn, taped] = [planOf({}), planOf({ readings: LONGER })];
		expect(taped.path?.length).toBeCloseTo((drawn.path?.length ?? 0) + 90, 3);
		expect(taped.pieces[0]?.cutLength).toBeCloseTo((drawn.pieces[0]?.cutLength ?? 0) + 90, 3);
		expect(taped.chain?.corners[1]).toMatchObject({ x: expect.closeTo(0, 6), y: expect.closeTo(950, 3) });
		expect(taped.survey).toMatchObject({ settled: true, closes: true, sigma0: null });
		expect(taped.survey?.ellipses).toHaveLength(4);
	});

	test("an end drawn at the very end of its wall stays there, one taped from the corner stays where it was taped", () => {
		const endOf = (at: number) => planOf({ readings: LONGER, track: { end: { wall: 2, at } } }).path?.length ?? 0;
		const whole = planOf({ readings: LONGER }).path?.length ?? 0;
		expect(endOf(900)).toBeCloseTo(whole, 6);
		expect(endOf(899.6)).toBeCloseTo(whole, 6);
		expect(endOf(850)).toBeCloseTo(whole - 90, 3);
	});

	test("a rise taped bows the wall that is drawn straight", () => {
		const plan = planOf({ readings: [{ kind: "rise", wall: 1, value: 120 }] });
		expect(plan.chain?.walls[1]?.bow?.radius).toBeCloseTo((900 ** 2 + 120 ** 2) / 240, 2);
		expect(plan.bows).toHaveLength(1);
	});

	test("says how sure each cut length is, but not under the hand", () => {
		const bay = bayOf({ readings: LONGER });
		const system = systemOf(bay);
		const survey = settle(bay, system);
		if (!survey.ok) throw new Error(JSON.stringify(survey.faults));
		const sure = sureCuts(bay, system, survey.value);
		const plan = planBay(bay, library);
		expect(plan.pieces.map(({ sd }) => sd)).toEqual(sure?.map(({ sd }) => sd));
		expect(plan.survey?.next?.reaches).toBeLessThan(plan.pieces[0]?.sd as number);
		const held = planBay(bay, library, { sureness: false });
		expect(held.pieces.map(({ sd }) => sd)).toEqual([null]);
		expect(held.pieces[0]?.cutLength).toBe(plan.pieces[0]?.cutLength);
		expect(held.survey?.next).toBeNull();
		expect(codesOf(held)).not.toContain("cut-length-unsure");
	});

	test("is settled once, whatever is changed on its track, and anew with another reading", () => {
		const bay = bayOf({ readings: LONGER });
		const system = systemOf(bay);
		const { survey } = asSettled(bay, system);
		const wider = { ...bay, track: { ...bay.track, radius: 300 }, walls: bay.walls.map((wall) => ({ ...wall })) };
		expect(asSettled(wider, system).survey).toBe(survey);
		const [first, ...rest] = bay.readings;
		const other: Bay = { ...bay, readings: [{ ...first, value: 960 } as Bay["readings"][number], ...rest] };
		expect(asSettled(other, system).survey?.corners[1]?.y).toBeCloseTo(960, 3);
		expect(asSettled(bay, system).survey?.corners[1]?.y).toBeCloseTo(950, 3);
		const runs: Bay = { ...bay, readings: bay.readings.slice(0, 3) };
		expect(asSettled(runs, system).survey?.rises[1]).toBe(0);
		const bowed: Bay = { ...runs, walls: bay.walls.map((wall, i) => (i === 1 ? { ...wall, rise: 80 } : wall)) };
		expect(asSettled(bowed, system).survey?.rises[1]).toBeCloseTo(80, 3);
	});

	test("a span between brackets counts, and hangs on how far they stand off", () => {
		// Brackets 300 from a square corner, either side, at the usual projection: closed up to an acute one.
		const spans = [{ from: { wall: 0, at: 600 }, to: { wall: 1, at: 300 }, value: 340 }];
		const readings = LONGER.slice(0, 3);
		const angleAt = (projection: number | null) => {
			const { chain } = planOf({ readings, fitted: { spans }, track: { projection } });
			return 180 - ((chain?.turns[1] as number) * 180) / Math.PI;
		};
		expect(angleAt(null)).toBeLessThan(90);
		expect(Math.abs(angleAt(null) - angleAt(100))).toBeGreaterThan(1);
	});
});

describe("what a survey has to say", () => {
	test("a planted blunder is named, and left out everything closes", () => {
		const job = exampleOf("sluice-cottage");
		const [plan] = planJob(job) as [BayPlan];
		const finding = plan.findings.find(({ code }) => code === "readings-disagree");
		if (finding === undefined) throw new Error("the blunder is not found");
		const words = inWords(finding, { unit: "mm", walls: 5 });
		expect(words.message).toBe("The diagonal 1–4 disagrees by 39 mm; without it everything closes within 1 mm.");
		expect(words.remedies).toEqual(["Leave out the diagonal 1–4"]);
		expect(finding.where).toMatchObject({ bay: "watch", field: "readings[10]" });
		const cured = applyChange(job, finding.remedies[0]?.change ?? []);
		if (!cured.ok) throw new Error(JSON.stringify(cured.problems));
		expect(cured.job.bays[0]?.readings).toHaveLength(14);
		const [after] = planJob(cured.job) as [BayPlan];
		expect(after.survey?.closes).toBe(true);
		expect(codesOf(after)).not.toContain("readings-disagree");
	});

	test("a full set of readings closes and is sure enough to cut", () => {
		const [plan] = planJob(exampleOf("ferry-house")) as [BayPlan];
		expect(codesOf(plan)).toEqual(["holes-in-cable-zones"]);
		expect(plan.survey).toMatchObject({ settled: true, closes: true, next: null });
		expect(AT_95 * (plan.pieces[0]?.sd as number)).toBeLessThan(3.5);
	});

	test("readings that settle nothing: the bay stays as drawn and is not planned", () => {
		const plan = planOf({ readings: [...LONGER, { kind: "chord", corner: 1, arm: 300, value: 700 }] });
		expect(codesOf(plan)).toEqual(["readings-cannot-settle"]);
		expect(plan.path).toBeNull();
		expect(plan.chain?.corners[1]).toEqual({ x: 0, y: 900 });
		expect(plan.survey).toMatchObject({ settled: false, closes: false });
		expect(plan.findings[0]?.where.field).toBe("readings[5]");
	});

	test("a span that is wrong is left out of what was fitted", () => {
		const spans = [{ from: { wall: 0, at: 650 }, to: { wall: 1, at: 300 }, value: 600 }];
		const [plan] = planJob(jobOf({ readings: LONGER, fitted: { spans } })) as [BayPlan];
		const finding = plan.findings.find(({ code }) => code === "readings-disagree");
		const changes = finding?.remedies.flatMap(({ change }) => change.map(({ op, path }) => `${op} ${path}`));
		expect(changes).toContain("remove /bays/0/fitted/spans/0");
	});

	test("how sure a length must be is said in the job's unit, with what to tape", () => {
		const finding = planOf({ readings: LONGER }).findings.find(({ code }) => code === "cut-length-unsure");
		if (finding === undefined) throw new Error("nothing is said");
		const [mm, cm, inches] = (["mm", "cm", "in"] as const).map((unit) => inWords(finding, { unit, walls: 3 }).message);
		expect(mm).toMatch(/^Piece A would be cut at \d+ mm ± [\d.]+ mm \(95 %\); ± 3\.5 mm is sure enough\. Take the /);
		expect(cm).toMatch(/± 0\.35 cm is sure enough/);
		expect(inches).toMatch(/± 1\/8" is sure enough/);
	});

	test("a bay of many walls is told the first of all readings that bring it there", () => {
		const corners = Array.from({ length: 13 }, (_, i) => {
			const heading = Math.PI * (1 - i / 12);
			return [4000 * Math.cos(heading), 4000 * Math.sin(heading)];
		});
		const readings = [{ kind: "run", wall: 0, value: 1044 }];
		const plan = planBay(bayOf({ corners, readings, track: { system: "flexible" } }), library);
		const finding = plan.findings.find(({ code }) => code === "cut-length-unsure");
		if (finding === undefined) throw new Error("nothing is said");
		expect(finding.figures).toMatchObject({ enough: 1, reaches: expect.any(Number) });
		expect(finding.figures.reaches).toBeLessThanOrEqual(3.5 + 1e-6);
		// At least as many as there are runs to be known, and far fewer than every run and diagonal twice, 156.
		expect(finding.figures.count).toBeGreaterThan(11);
		expect(finding.figures.count).toBeLessThan(40);
		expect(plan.survey?.next?.reaches).toBeLessThan(plan.survey?.next?.from as number);
	});

	test("the plan's JSON has its survey and the deviation of every piece", () => {
		const json = planJson(planJob(exampleOf("sluice-cottage")), "mm").bays[0];
		expect(json?.survey).toMatchObject({ settled: true, redundancy: 6 });
		expect(json?.survey.suspects[0]).toBe(10);
		expect(json?.survey.sigma0).toBeGreaterThan(1);
		expect(json?.survey.next).toMatchObject({ reading: { kind: "run" }, reaches: expect.any(Number) });
		expect(json?.pieces[0]?.sd).toBeGreaterThan(1);
		expect(planJson([planOf({})], "mm").bays[0]?.survey).toEqual({
			settled: false,
			sigma0: null,
			redundancy: 0,
			suspects: [],
			next: null,
			telling: null,
		});
	});
});
