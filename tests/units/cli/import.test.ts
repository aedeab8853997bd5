import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { dxfOf, line, polyline } from "../read/reading.ts";
import { baywright, baywrightHere, emptyFolder } from "./run.ts";

const SQUARE = dxfOf([
	line(1800, 900, 0, 900),
	line(1800, 0, 1800, 900),
	line(0, 0, 0, 900),
	[0, "SPLINE", 8, "WALLS"],
]);
const CORNERS = [
	[0, 0],
	[0, 900],
	[1800, 900],
	[1800, 0],
];

describe("import", () => {
	test("a job to standard output, what was left out beside it; the job plans", async () => {
		const { status, out, lines } = await baywrightHere(["import", "-", "--title", "Harbour Street"], SQUARE);
		expect(status).toBe(0);
		const job = JSON.parse(out);
		expect(job).toMatchObject({ format: "baywright-job", title: "Harbour Street", bays: [{ corners: CORNERS }] });
		expect(job.bays[0].track.system).toBe("light-corded");
		expect(lines).toEqual([expect.stringMatching(/^baywright: Left out: a spline.*SPLINE at line/)]);
		expect((await baywrightHere(["check", "-"], out)).status).toBe(0);
	});

	test("a bowed wall comes with a track that goes round it", async () => {
		const text = dxfOf([
			polyline([
				[0, 0, -0.25],
				[2400, 0],
			]),
		]);
		const job = JSON.parse((await baywrightHere(["import", "-"], text)).out);
		expect(job.bays[0]).toMatchObject({ walls: [{ rise: 300 }], track: { system: "flexible" } });
	});

	test("to a file with the walls told, never over one that is there without --force", () => {
		const cwd = emptyFolder();
		writeFileSync(join(cwd, "plan.dxf"), SQUARE);
		const first = baywright(["import", "plan.dxf", "--out", "bay.baywright.json"], { cwd });
		expect(first).toMatchObject({ status: 0, err: "" });
		expect(first.out).toContain("$INSUNITS is 4: millimetres");
		expect(first.out).toMatch(/2 +1800\.0 +90\.0°/);
		expect(JSON.parse(readFileSync(join(cwd, "bay.baywright.json"), "utf8"))).toMatchObject({ title: "plan" });
		const second = baywright(["import", "plan.dxf", "--out", "bay.baywright.json"], { cwd });
		expect(second.status).toBe(1);
		expect(second.lines).toEqual([
			'baywright: import: found "bay.baywright.json" there already, allowed another file, or --force to write over it; nothing was written',
		]);
		expect(baywright(["import", "plan.dxf", "--out", "bay.baywright.json", "--force"], { cwd }).status).toBe(0);
		expect(baywright(["import", "plan.dxf", "--out", "none/bay.json"], { cwd }).lines).toHaveLength(1);
		expect(readdirSync(cwd).sort()).toEqual(["bay.baywright.json", "plan.dxf"]);
	});

	test("a look writes nothing and numbers walls and chains", async () => {
		const text = dxfOf([
			polyline(
				[
					[0, 0],
					[4000, 0],
					[4000, 3000],
					[0, 3000],
				],
				true,
			),
			line(0, -900, 1200, -900),
		]);
		const { status, out } = await baywrightHere(["import", "-", "--look", "--walls", "4-1"], text);
		expect(status).toBe(0);
		expect(out).toMatch(/4 +4000\.0 +90\.0°\n/);
		expect(out).toMatch(/2 +4000\.0 +90\.0° +not taken/);
		expect(out).toMatch(/2 +1 wall +1200\.0/);
		expect(existsSync("bay.baywright.json")).toBe(false);
	});

	test.each([
		[["import"], "", "import: found 0 names, allowed one: a DXF, an SVG, or - for standard input"],
		[["import", "-", "--unit", "yd"], SQUARE, 'import: option --unit: found "yd", allowed mm, cm, m, in, ft'],
		[
			["import", "-", "--scale", "x"],
			SQUARE,
			'import: option --scale: found "x", allowed 0.01 to 10000, as 20 for 1 : 20',
		],
		[["import", "-", "--join", "2 m"], SQUARE, 'import: option --join: found "2 m", allowed 0.001 to 100 mm'],
		[
			["import", "-", "--walls", "a"],
			SQUARE,
			'import: option --walls: found "a", allowed the first and the last wall as in 2-4',
		],
		[
			["import", "-", "--walls", "2-9"],
			SQUARE,
			"standard input: walls: found 2 to 9, allowed walls in order out of 1 to 3",
		],
		[["import", "-", "--chain", "3"], SQUARE, "standard input: chain: found 3, allowed 1"],
		[
			["import", "-", "--layer", "ROOF"],
			SQUARE,
			'standard input: layer: found "ROOF", allowed one that has lines: layer "WALLS"',
		],
		[["import", "-", "--system", "best"], SQUARE, 'import: option --system: found "best", allowed '],
		[["import", "-"], "hello", 'standard input: the file: found "hello", allowed a DXF as text or an SVG'],
		[["import", "no.dxf"], "", "cannot read no.dxf: no such file"],
	])("one clear line: %j", async (args, input, message) => {
		const { status, out, lines } = await baywrightHere(args, input);
		expect(status).toBe(1);
		expect(out).toBe("");
		expect(lines).toHaveLength(1);
		expect(lines[0]).toContain(`baywright: ${message}`);
	});

	test("its own help", async () => {
		expect((await baywrightHere(["import", "--help"])).out).toContain("--layer NAME");
	});
});
