import { describe, expect, test } from "vitest";
import { baywrightHere, examples, jobText } from "./run.ts";

const run = (wall: number, value: number) => ({ kind: "run", wall, value });
const diagonal = (from: number, to: number, value: number) => ({ kind: "diagonal", from, to, value });
const good = [run(0, 901), run(1, 1799), run(2, 900), diagonal(0, 2, 2012), diagonal(1, 3, 2013), diagonal(0, 3, 1801)];
const twice = [...good, ...good];

describe("settle", () => {
	test("as data, in the keys of the format", async () => {
		const { status, out, err } = await baywrightHere(["settle", "-", "--json"], jobText({}, { readings: twice }));
		expect([status, err]).toEqual([0, ""]);
		const { bays } = JSON.parse(out);
		expect(Object.keys(bays[0])).toEqual([
			"id",
			"corners",
			"sd",
			"residuals",
			"sigma0",
			"redundancy",
			"closes",
			"suspects",
			"pieces",
			"next",
			"telling",
		]);
		const [{ corners, sd, residuals, sigma0, redundancy, closes, suspects, next }] = bays;
		const near = [
			[0, 0],
			[0, 901],
			[1799, 901],
			[1801, 1],
		].flat();
		(corners as number[][]).flat().forEach((figure, i) => {
			expect(Math.abs(figure - (near[i] as number))).toBeLessThan(1);
		});
		expect(sd).toHaveLength(4);
		expect(sd[0]).toEqual([0, 0]);
		expect(residuals.map(({ reading }: { reading: number }) => reading)).toEqual(twice.map((_, i) => i));
		expect([redundancy, closes, suspects]).toEqual([7, true, []]);
		expect(sigma0).toBeGreaterThan(0);
		expect(next === null || next.reaches > 0).toBe(true);
	});

	test("with nothing to spare sigma0 and standardized are null; the next reading says what it reaches", async () => {
		const { out } = await baywrightHere(["settle", "-", "--json"], jobText({}, { readings: good.slice(0, 4) }));
		const [{ sigma0, residuals, next }] = JSON.parse(out).bays;
		expect(sigma0).toBeNull();
		expect(residuals.every(({ standardized }: { standardized: null }) => standardized === null)).toBe(true);
		expect(Object.keys(next)).toEqual(["reading", "reaches"]);
		expect(next.reading.kind).toMatch(/^(run|diagonal|angle|chord)$/);
	});

	test("a blunder is named, in words and as an index", async () => {
		const readings = twice.with(4, diagonal(1, 3, 2013 + 38));
		const text = jobText({}, { readings });
		const { out, status } = await baywrightHere(["settle", "-"], text);
		expect(status).toBe(0);
		expect(out).toMatch(/DOES NOT CLOSE/);
		expect(out).toMatch(/The diagonal 1–right end disagrees by 3\d mm; without it everything closes within \d mm\./);
		const { bays } = JSON.parse((await baywrightHere(["settle", "-", "--json"], text)).out);
		expect(bays[0].suspects[0]).toBe(4);
		expect(bays[0].closes).toBe(false);
	});

	test("where any reading might be the wrong one, what tells which comes first, in words and as data", async () => {
		const text = jobText({}, { readings: good.with(4, diagonal(1, 3, 2013 + 38)) });
		const { out } = await baywrightHere(["settle", "-"], text);
		expect(out).toMatch(
			/Before anything else take the chord at corner \d, both arms 900 mm: it helps to tell which is\s+wrong\./,
		);
		const { bays } = JSON.parse((await baywrightHere(["settle", "-", "--json"], text)).out);
		expect(bays[0].telling).toMatchObject({ kind: "chord", arm: 900 });
	});

	test("enough is taped only where the readings close and something checks them", async () => {
		// A recess, taped twice: 1.96 · 2/√2 = 2.8 mm, 40 mm apart or not.
		const recess = (second: number) =>
			jobText(
				{},
				{
					corners: [
						[0, 0],
						[2000, 0],
					],
					readings: [run(0, 2000), run(0, second)],
				},
			);
		expect((await baywrightHere(["settle", "-"], recess(2001))).out).toContain(
			"Enough is taped: every cut length is within",
		);
		const { out } = await baywrightHere(["settle", "-"], recess(2040));
		expect(out).not.toContain("Enough is taped");
		expect(out).not.toMatch(/ -0\.0\b/);
	});

	test("for people: readings, corners, cut lengths and what to take", async () => {
		const { out } = await baywrightHere(["settle", "-"], jobText({ display: { length: "cm" } }, { readings: good }));
		for (const words of ["6 readings, 1 more than needed: the bay closes within", "run of the left wall", "90.10 cm"])
			expect(out).toContain(words);
		expect(out).toMatch(/Piece A: \d+\.\d\d cm ± \d\.\d\d cm \(95 %\)/);
		expect(out).toMatch(/Readings to take until every cut length is within ± 0\.35 cm/);
		expect(out.split("\n").every((line) => line.length <= 100)).toBe(true);
	});

	test("a bay that its readings do not settle is refused in one sentence, and as data with its drawn corners", async () => {
		const readings = [{ kind: "chord", corner: 1, arm: 300, value: 620 }];
		const text = jobText({}, { readings });
		const { out, status } = await baywrightHere(["settle", "-"], text);
		expect(status).toBe(2);
		expect(out).toContain(
			"NOT SETTLED: The chord at corner 1 (reading 1) is longer than both its arms together, 600 mm.",
		);
		const json = JSON.parse((await baywrightHere(["settle", "-", "--json"], text)).out);
		expect(json.bays[0]).toMatchObject({ closes: false, next: null, faults: [{ kind: "chord-too-long", reading: 0 }] });
	});

	test("every example settles; several jobs give a line each", async () => {
		const { out, status } = await baywrightHere(["settle", "examples", "--json"]);
		expect(status).toBe(0);
		const lines = out.trimEnd().split("\n");
		expect(lines.map((line) => JSON.parse(line).job)).toEqual(examples);
		expect((await baywrightHere(["settle", "examples"])).out).toContain("Nothing has been taped");
	});

	test("its own help and its options", async () => {
		expect((await baywrightHere(["settle", "--help"])).out).toContain(
			"baywright settle JOB… [--readings FILE.csv] [--bay ID] [--json]",
		);
		expect(await baywrightHere(["settle", "--corner", "x"])).toMatchObject({ status: 1, out: "" });
		expect((await baywrightHere(["settle"])).lines).toEqual([
			"baywright: job: found nothing, allowed job files, folders, or - for standard input",
		]);
	});
});
