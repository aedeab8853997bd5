import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { main } from "@baywright/cli";
import { expect, test } from "vitest";
import { baywrightHere, emptyFolder, jobText, tooTight } from "./run.ts";

/** The two sheets that these tests are of, on a day that does not change. */
const BOTH = ["--only", "fitting,bends", "--date", "2026-11-27"];

test("writes the sheets of a job into a folder that it makes, and says which", async () => {
	const folder = join(emptyFolder(), "new");
	const { status, out, err } = await baywrightHere(["sheets", "-", "--out", folder, ...BOTH], jobText());
	expect({ status, err }).toEqual({ status: 0, err: "" });
	expect(readdirSync(folder).sort()).toEqual(["b1-bends.pdf", "b1-fitting.pdf"]);
	expect(out).toContain("2 files written");
	expect(readFileSync(join(folder, "b1-bends.pdf")).subarray(0, 8).toString()).toBe("%PDF-1.7");
});

test("the same job gives the same bytes", async () => {
	const folders = [emptyFolder(), emptyFolder()];
	for (const folder of folders)
		await baywrightHere(["sheets", "-", "--out", folder, "--format", "pdf,svg,dxf,csv", ...BOTH], jobText());
	const [first, second] = folders.map((folder) =>
		readdirSync(folder)
			.sort()
			.map((name) => [name, readFileSync(join(folder, name), "base64")]),
	);
	expect(first?.length).toBeGreaterThan(10);
	expect(second).toEqual(first);
});

test("never writes over a file, unless it is told to", async () => {
	const folder = emptyFolder();
	writeFileSync(join(folder, "b1-bends.pdf"), "mine");
	const refused = await baywrightHere(["sheets", "-", "--out", folder, ...BOTH], jobText());
	expect(refused.status).toBe(1);
	expect(refused.lines).toHaveLength(1);
	expect(refused.err).toMatch(/b1-bends\.pdf" there already, allowed .*--force/);
	expect(readdirSync(folder)).toEqual(["b1-bends.pdf"]);
	expect(readFileSync(join(folder, "b1-bends.pdf"), "utf8")).toBe("mine");
	expect((await baywrightHere(["sheets", "-", "--out", folder, "--force", ...BOTH], jobText())).status).toBe(0);
	expect(readFileSync(join(folder, "b1-bends.pdf"), "latin1")).toMatch(/^%PDF/);
});

test("only the sheets and formats asked for", async () => {
	const folder = emptyFolder();
	await baywrightHere(
		["sheets", "-", "--out", folder, "--only", "fitting", "--format", "csv,dxf", "--date", "2026-11-27"],
		jobText(),
	);
	const names = readdirSync(folder);
	expect(names.every((name) => name.startsWith("b1-fitting-"))).toBe(true);
	expect(names.filter((name) => name.endsWith(".dxf"))).toEqual(["b1-fitting-plan.dxf"]);
	expect(names).toContain("b1-fitting-brackets.csv");
});

test("a bay that is refused has its fitting sheet all the same, and the status says so", async () => {
	const folder = emptyFolder();
	const { status } = await baywrightHere(["sheets", "-", "--out", folder, ...BOTH], jobText({}, tooTight));
	expect(status).toBe(2);
	expect(readdirSync(folder)).toEqual(["b1-fitting.pdf"]);
});

test("a print that was corrected and is out again is corrected by both", async () => {
	// 98.5 × 0.998 = 98.303: bars of 100 / 0.98303 = 101.73 mm.
	const templates = async (measured: string) => {
		const folder = emptyFolder();
		await baywrightHere(
			[
				"sheets",
				"-",
				"--out",
				folder,
				"--only",
				"bends",
				"--format",
				"svg",
				"--measured",
				measured,
				"--date",
				"2026-11-27",
			],
			jobText(),
		);
		return readFileSync(join(folder, "b1-bends-2.svg"), "utf8");
	};
	expect(await templates("98.5,99.8")).toBe(await templates("98.303"));
	expect(await templates("98.5x99,99.8x100")).toBe(await templates("98.303x99"));
	expect(await templates("98.5,99.8")).toContain("98.3 mm across and 98.3 mm");
});

test.each([
	[[], /option --out: found nothing, allowed a folder/],
	[["--out", "x", "--paper", "B5"], /option --paper: found "B5", allowed A4, A3/],
	[["--out", "x", "--only", "fitting,lace"], /option --only: found "lace", allowed .*fitting, bends/],
	[["--out", "x", "--format", "doc"], /option --format: found "doc", allowed pdf, svg, dxf, csv/],
	[["--out", "x", "--measured", "9.85"], /option --measured: found "9.85", allowed mm from 80 to 120/],
	[["--out", "x", "--measured", "98.5,"], /option --measured: found "98.5,", allowed mm from 80 to 120/],
	[["--out", "x", "--measured", "80,130"], /option --measured: found "80,130", allowed mm from 80 to 120/],
	[
		["--out", "x", "--measured", "85,90"],
		/option --measured: found "85,90", allowed mm from 80 to 120.* after a comma/,
	],
	[["--out", "x", "--strips", "scroll"], /option --strips: found "scroll", allowed sheets, long, roll/],
	[["--out", "x", "--date", "2026-02-30"], /option --date: found "2026-02-30", allowed a day/],
])("%j is refused in one line", async (args, message) => {
	const { status, lines, err } = await baywrightHere(["sheets", "-", ...args], jobText());
	expect(status).toBe(1);
	expect(lines).toHaveLength(1);
	expect(err).toMatch(message);
	expect(existsSync("x")).toBe(false);
});

test("letters that the sheets do not have are told", async () => {
	const { status, out } = await baywrightHere(
		["sheets", "-", "--out", emptyFolder(), ...BOTH],
		jobText({ title: "窓 house" }),
	);
	expect(status).toBe(0);
	expect(out).toContain("no such letters: 窓");
});

test("a broken run leaves whole files only, and says how many", async () => {
	const folder = emptyFolder();
	let stop = () => {};
	const said = { err: "" };
	const status = await main(["sheets", "-", "--out", folder, ...BOTH], {
		folder,
		debug: false,
		out: () => {},
		err: (text) => {
			said.err += text;
		},
		input: async () => new TextEncoder().encode(jobText()),
		progress: (text) => {
			if (text.includes("2 of 2")) stop();
		},
		onBreak: (called) => {
			stop = called;
			return () => {};
		},
	});
	expect(status).toBe(1);
	expect(said.err).toContain("broken off: 1 of 2 files written");
	expect(readdirSync(folder)).toEqual(["b1-fitting.pdf"]);
});
