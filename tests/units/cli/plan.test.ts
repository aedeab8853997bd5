import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { baywrightHere, examples, jobText, tooTight } from "./run.ts";

describe("the plan for people", () => {
	test("there are examples", async () => {
		expect(examples.length).toBeGreaterThanOrEqual(6);
	});

	test("every example keeps within 100 columns, with no space at a line's end, and says its cut lengths", async () => {
		const { out, err } = await baywrightHere(["plan", ...examples]);
		expect(err).toBe("");
		const lines = out.split("\n");
		expect(lines.filter((line) => [...line].length > 100)).toEqual([]);
		expect(lines.filter((line) => /\s$/.test(line))).toEqual([]);
		for (const name of examples) expect(lines).toContain(name);
		expect(out).not.toMatch(/undefined|NaN|null|Infinity/);
		expect(out.match(/^Cautions$/gm)).toHaveLength(1);
	});

	test("a taped bay: the ± of each piece, and the reading that is wrong with its cure", async () => {
		const sure = (await baywrightHere(["plan", "examples/ferry-house.baywright.json"])).out;
		const cut = JSON.parse((await baywrightHere(["plan", "--json", "examples/ferry-house.baywright.json"])).out).bays[0]
			.pieces[0];
		expect(sure).toContain(`Piece A: CUT ${cut.cutLength.toFixed(1)} mm   ± ${(1.96 * cut.sd).toFixed(1)} mm (95 %)`);
		const wrong = await baywrightHere(["plan", "examples/sluice-cottage.baywright.json"]);
		expect(wrong.status).toBe(0);
		const words = wrong.out.replace(/\s+/g, " ");
		expect(words).toContain("The diagonal 1–4 disagrees by 39 mm; without it everything closes within 1 mm.");
		expect(words).toContain("Leave out the diagonal 1–4");
		expect(wrong.out).not.toContain("readings, ");
	});

	test("cut length, marks, tape readings, stock", async () => {
		// A right-angled bay, projection 40, radius 310: each bend starts (40 + 310) from its corner and is 310·π/2 long. The
		// track runs 2 × (900 − 350) + (1800 − 700) + 2 × 486.946862 = 3173.893725 mm.
		const length = 2 * (900 - 350) + (1800 - 700) + 310 * Math.PI;
		const { out, status } = await baywrightHere(["plan", "-"], jobText({ title: "Mill House", site: "Back room" }));
		expect(status).toBe(0);
		expect(out).toContain("Mill House, Back room\n");
		expect(out).toContain(`Finished length of the whole track ${length.toFixed(1)} mm`);
		// The light corded system: 100 off each end.
		expect(out).toContain(`Piece A: CUT ${(length - 200).toFixed(1)} mm   ± not known until the bay is taped`);
		expect(out).toMatch(/bend starts, corner 1 +450\.0 +2523\.9/);
		expect(out).toMatch(/corner 1 +90\.0° +310\.0 +350\.0 +350\.0 +486\.9 +185\.0/);
		expect(out).toContain("Stock: buy 1 × 3000 mm");
		expect(out).toMatch(/3000 mm {2}A 2973\.9 +23\.1/);
		const readings = [...out.matchAll(/^ +\d+ {2}(left|front|right) wall +([\d.]+) +([\d.]+) +40\.0 /gm)];
		expect(readings.length).toBeGreaterThanOrEqual(8);
		for (const [, wall, left, right] of readings)
			expect(Number(left) + Number(right)).toBeCloseTo(wall === "front" ? 1800 : 900, 0);
	});

	test("in inches and centimetres where the job says so", async () => {
		const inches = (await baywrightHere(["plan", "-"], jobText({ display: { length: "in" } }))).out;
		// 2973.894 mm is 117.0825 in, nearest sixteenth 1/16.
		expect(inches).toContain('Piece A: CUT 117 1/16"');
		const cm = (await baywrightHere(["plan", "-"], jobText({ display: { length: "cm" } }))).out;
		expect(cm).toContain("Piece A: CUT 297.39 cm");
	});

	test("a refusal is said first, with its remedies, and nothing to cut by", async () => {
		const { out, status, err } = await baywrightHere(["plan", "-"], jobText({}, tooTight));
		expect([status, err]).toEqual([2, ""]);
		expect(out).toContain("Not planned: 1 refusal.");
		expect(out).toContain("REFUSAL  Wall too short for its bends");
		expect(out).toContain("Remedy: Use Flexible");
		expect(out).not.toContain("CUT");
	});

	test("what stands in the way is planned, with a warning not to cut by it", async () => {
		const obstacles = [{ kind: "pipe", wall: 1, from: 800, to: 860, depth: 120 }];
		const { out, status } = await baywrightHere(["plan", "-"], jobText({}, { obstacles }));
		expect(status).toBe(2);
		expect(out).toContain("do not cut or drill by this plan");
		expect(out).toContain("Piece A: CUT");
	});

	test("nothing in a title can steer the terminal or break the line", async () => {
		const { out } = await baywrightHere(["plan", "-"], jobText({ title: "A\u001b[31mred\nnext\u202e" }));
		expect(out).toContain("A\\u{1b}[31mred next\\u{202e}\n");
	});

	test("only the bay asked for", async () => {
		const corners = [
			[0, 0],
			[2000, 0],
		];
		const input = jobText({
			bays: [
				{ id: "one", corners },
				{ id: "two", corners },
			],
		});
		const { out } = await baywrightHere(["plan", "-", "--bay", "two"], input);
		expect(out).toContain("Bay two");
		expect(out).not.toContain("Bay one");
		expect(JSON.parse((await baywrightHere(["plan", "-", "--bay", "two", "--json"], input)).out).bays).toHaveLength(1);
		expect(await baywrightHere(["plan", "-", "--bay", "three"], input)).toMatchObject({
			status: 1,
			out: "",
			lines: ['baywright: standard input: option --bay: found "three", allowed one, two'],
		});
	});
});

/** The keys of shared formats, section Plan: each must be there, whatever else is. */
const KEYS = {
	plan: ["format", "version", "bays"],
	bay: [
		...["id", "path", "corners", "brackets", "joints", "pieces", "stock", "stackBack", "glass", "curtains"],
		...["loads", "parts", "survey", "findings"],
	],
	corner: ["corner", "interiorAngle", "radius", "setBack", "sweep", "cornerGap"],
	bracket: ["station", "at", "wall", "fromLeftCorner", "fromRightCorner", "projection", "role"],
	piece: ["name", "from", "to", "finishedLength", "cutLength", "sd", "marks"],
	mark: ["kind", "fromLeft", "fromRight"],
	stock: ["buy", "cuts", "waste"],
	survey: ["settled", "sigma0", "redundancy", "suspects", "next"],
	finding: ["code", "severity", "message", "where", "figures", "remedies"],
	straight: ["kind", "from", "to", "length", "wall"],
	bend: ["kind", "from", "to", "centre", "radius", "turn", "length", "corners"],
} as const;

const expectKeys = (value: object, keys: readonly string[]) =>
	expect(Object.keys(value)).toEqual(expect.arrayContaining([...keys]));

describe("the plan as data", () => {
	test("one line of the agreed shape", async () => {
		const { out, status } = await baywrightHere(["plan", "-", "--json"], jobText());
		expect(status).toBe(0);
		expect(out.indexOf("\n")).toBe(out.length - 1);
		const plan = JSON.parse(out);
		expect(Object.keys(plan)).toEqual(KEYS.plan);
		expect([plan.format, plan.version]).toEqual(["baywright-plan", 1]);
		const [bay] = plan.bays;
		expectKeys(bay, KEYS.bay);
		expectKeys(bay.corners[0], KEYS.corner);
		expectKeys(bay.brackets[0], KEYS.bracket);
		expectKeys(bay.pieces[0], KEYS.piece);
		expectKeys(bay.pieces[0].marks[0], KEYS.mark);
		expectKeys(bay.stock, KEYS.stock);
		expectKeys(bay.survey, KEYS.survey);
		expectKeys(bay.path.segments[0], KEYS.straight);
		expectKeys(bay.path.segments[1], KEYS.bend);
		expect(bay.corners[0].interiorAngle).toBeCloseTo(90, 9);
		expect(bay.path.length).toBeCloseTo(2 * 550 + 1100 + 310 * Math.PI, 6);
		expect(bay.pieces[0].cutLength).toBeCloseTo(bay.path.length - 200, 6);
	});

	test("a refusal with its remedy as edits from the root of the job", async () => {
		const bays = [
			{
				id: "good",
				corners: [
					[0, 0],
					[2000, 0],
				],
			},
			{ id: "bad", ...tooTight },
		];
		const { out, status } = await baywrightHere(["plan", "-", "--json"], jobText({ bays }));
		expect(status).toBe(2);
		const [finding] = JSON.parse(out).bays[1].findings;
		expectKeys(finding, KEYS.finding);
		expect(finding).toMatchObject({ code: "leg-too-short", severity: "refusal", where: { bay: "bad" } });
		expect(finding.remedies[0].change[0].path).toMatch(/^\/bays\/1\//);
	});

	test("a line for each of several jobs, with the job's name, and the gravest status", async () => {
		const { out, status } = await baywrightHere(["plan", "examples", "--json"]);
		const plans = out
			.trimEnd()
			.split("\n")
			.map((line) => JSON.parse(line));
		expect(plans.map(({ job }) => job)).toEqual(examples.map((name) => join(name)));
		const refused = plans.some(({ bays }) =>
			bays.some(({ findings }: { findings: { severity: string }[] }) =>
				findings.some(({ severity }) => severity === "refusal"),
			),
		);
		expect(refused).toBe(true);
		expect(status).toBe(2);
	});
});
