import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { baywright, baywrightHere, emptyFolder, examples, jobText, root, tooTight } from "./run.ts";

describe("files, folders, standard input", () => {
	test("a folder is every job in it, sorted, without installed packages and hidden folders", async () => {
		const folder = emptyFolder();
		for (const inner of ["b", "node_modules/x", ".old"]) mkdirSync(join(folder, inner), { recursive: true });
		const names = ["z", "a", "b/c", "node_modules/x/n", ".old/o"];
		for (const name of names) writeFileSync(join(folder, `${name}.baywright.json`), jobText());
		writeFileSync(join(folder, "other.json"), "{");
		const { out, status, err } = await baywrightHere(["plan", ".", "--json"], "", folder);
		expect([status, err]).toEqual([0, ""]);
		const jobs = out
			.trimEnd()
			.split("\n")
			.map((line) => JSON.parse(line).job);
		expect(jobs).toEqual(["a.baywright.json", join("b", "c.baywright.json"), "z.baywright.json"]);
	});

	test("a file named twice is planned once", async () => {
		const { out } = await baywrightHere([
			"plan",
			"--json",
			examples[0] as string,
			`./${examples[0]}`,
			"examples/../examples",
		]);
		expect(out.trimEnd().split("\n")).toHaveLength(examples.length);
	});

	test("paths start where the user stood when npm was called", () => {
		const env = { npm_lifecycle_event: "baywright", INIT_CWD: join(root, "examples") };
		const { status } = baywright(["check", (examples[0] as string).slice("examples/".length)], { env });
		expect(status).toBe(0);
	});

	test("a byte order mark is no matter", () => {
		const { status, err } = baywright(["check", "-"], { input: `\uFEFF${jobText()}` });
		expect([status, err]).toEqual([0, ""]);
	});

	test("a file that begins with a dash comes after --", () => {
		const folder = emptyFolder();
		writeFileSync(join(folder, "-x.json"), jobText());
		expect(baywright(["check", "--", "-x.json"], { cwd: folder })).toMatchObject({ status: 0, err: "" });
	});

	test("a reader that goes away early is no failure", () => {
		const folder = emptyFolder();
		const bays = Array.from({ length: 400 }, (_, i) => ({
			id: `b${i}`,
			corners: [
				[0, 0],
				[2000 + i, 0],
			],
		}));
		writeFileSync(join(folder, "many.json"), jobText({ bays }));
		const script = `"$0" "$1" plan "$2" | head -n 1; exit "\${PIPESTATUS[0]}"`;
		const command = join(root, "packages/cli/bin/baywright.mjs");
		const { status, stdout, stderr } = spawnSync(
			"bash",
			["-c", script, process.execPath, command, join(folder, "many.json")],
			{ encoding: "utf8" },
		);
		expect([status, stderr, stdout]).toEqual([0, "", "Untitled job\n"]);
	});
});

describe("bad input is one plain line for each problem", () => {
	test.each([
		[["plan", "nowhere.baywright.json"], "cannot read nowhere.baywright.json: no such file"],
		[["plan", "package.json/x"], "cannot read package.json/x: no such file"],
		[["plan"], "job: found nothing, allowed job files, folders, or - for standard input"],
		[["plan", "x", "--jason"], 'plan: option "--jason": no such option, allowed --bay, --json, --help'],
		[["check", "x", "-j"], 'check: option "-j": no such option, allowed --json, --help'],
		[
			["lace", "x"],
			'command: found "lace", allowed plan, corner, check, settle, simulate, remedy, sheets, import; see baywright --help',
		],
		[
			[],
			"command: found nothing, allowed plan, corner, check, settle, simulate, remedy, sheets, import; see baywright --help",
		],
	])("%j", async (args, line) => {
		expect(await baywrightHere(args)).toMatchObject({ status: 1, out: "", lines: [`baywright: ${line}`] });
	});

	test("a folder with no job in it", async () => {
		const folder = emptyFolder();
		expect(await baywrightHere(["plan", folder])).toMatchObject({
			status: 1,
			out: "",
			lines: [
				expect.stringMatching(
					/^baywright: found no job in the folder ".*, allowed a folder with \*\.baywright\.json in it$/,
				),
			],
		});
	});

	test("every problem of a file, each with its path; the other files are planned all the same", async () => {
		const folder = emptyFolder();
		writeFileSync(
			join(folder, "bad.json"),
			jobText(
				{ titel: "x" },
				{
					corners: [
						[0, "a"],
						[1, 2],
					],
				},
			),
		);
		writeFileSync(join(folder, "good.json"), jobText());
		const { status, out, lines } = await baywrightHere(["plan", "--json", "bad.json", "good.json"], "", folder);
		expect(status).toBe(1);
		expect(JSON.parse(out).job).toBe("good.json");
		expect(lines).toHaveLength(2);
		expect(lines).toContain('baywright: bad.json: bays[0].corners[0][1]: found "a", allowed a number of mm');
		expect(lines.some((line) => line.startsWith('baywright: bad.json: titel: found "x", allowed no such key'))).toBe(
			true,
		);
	});

	test("text that is not JSON, and bytes that are no text", async () => {
		expect((await baywrightHere(["plan", "-"])).lines).toEqual([
			"baywright: standard input: the file: found nothing, allowed JSON",
		]);
		expect(baywright(["plan", "-"], { input: new Uint8Array([0x22, 0xff, 0x22]) })).toMatchObject({
			status: 1,
			lines: ["baywright: cannot read standard input: found bytes that are not UTF-8 text, allowed UTF-8"],
		});
	});
});

describe("check", () => {
	test("says which files are valid and what was found", async () => {
		const { out, status } = await baywrightHere(["check", "-"], jobText({}, tooTight));
		expect(status).toBe(2);
		expect(out).toContain("standard input: valid, 1 bay\n  Bay b1: 1 refusal\n    REFUSAL  Wall too short");
		expect(out).not.toContain("Brackets");
	});

	test("as data, the invalid ones with their problems", async () => {
		const folder = emptyFolder();
		writeFileSync(join(folder, "bad.json"), jobText({ version: 99 }));
		writeFileSync(join(folder, "good.json"), jobText());
		const { out, status, lines } = await baywrightHere(["check", "bad.json", "good.json", "--json"], "", folder);
		expect([status, lines.length]).toEqual([1, 1]);
		expect(
			out
				.trimEnd()
				.split("\n")
				.map((line) => JSON.parse(line)),
		).toEqual([
			{ job: "bad.json", valid: false, problems: [{ path: "version", found: "99", allowed: expect.any(String) }] },
			{
				job: "good.json",
				valid: true,
				// Neither the ceiling's height nor the track's is given: its holes may lie where cables run.
				bays: [{ id: "b1", findings: [expect.objectContaining({ code: "holes-in-cable-zones", severity: "note" })] }],
			},
		]);
	});
});

describe("help and version", () => {
	test.each([[["--help"]], [["plan", "--help"]], [["corner", "-h"]], [["check", "x", "--help"]]])(
		"%j",
		async (args) => {
			const { status, out, err } = await baywrightHere(args);
			expect([status, err]).toEqual([0, ""]);
			expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
			const example = /Example:\n {2}baywright (.*)\n$/.exec(out)?.[1] ?? "none";
			// The folder of examples has an impossible bay in it.
			expect((await baywrightHere(example.split(" "))).status).toBe(args[0] === "check" ? 2 : 0);
		},
	);

	test("the version is the package's", () => {
		const { version } = JSON.parse(readFileSync(join(root, "packages/cli/package.json"), "utf8"));
		expect(baywright(["--version"])).toMatchObject({ status: 0, out: `${version}\n`, err: "" });
	});
});
