import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, onTestFinished, test } from "vitest";
import { baywright, baywrightHere } from "./run.ts";

/** A wall round a pier's external corner, 90°, radius 225, clearance 15: 76.5 mm of projection lets the bend through (closed form). */
const PIER = {
	format: "baywright-job",
	version: 1,
	bays: [
		{
			id: "p",
			corners: [
				[0, 0],
				[1500, 0],
				[1500, 900],
			],
			track: { system: "light-corded" },
		},
	],
};

const pier = (args: readonly string[]) => baywrightHere(["remedy", "-", ...args], JSON.stringify(PIER));

function folder(): string {
	const path = mkdtempSync(join(tmpdir(), "remedy-"));
	onTestFinished(() => rmSync(path, { recursive: true }));
	return path;
}

describe("remedy", () => {
	test("applies the first remedy and writes a job that plans cleanly", async () => {
		const { status, out, err } = await pier(["no-room-round-corner"]);
		expect(err).toBe("");
		expect(status).toBe(0);
		expect(JSON.parse(out).bays[0].track.projection).toBe(77);
		expect((await baywrightHere(["check", "-"], out)).status).toBe(0);
	});

	test("another choice, by its number", async () => {
		const { findings } = JSON.parse((await baywrightHere(["check", "-", "--json"], JSON.stringify(PIER))).out).bays[0];
		const labels: string[] = findings[0].remedies.map(({ label }: { label: string }) => label);
		const choice = labels.findIndex((label) => label.startsWith("Use ")) + 1;
		expect(choice).toBeGreaterThan(1);
		const { status, out } = await pier(["no-room-round-corner", "--choice", String(choice)]);
		expect(status).toBe(0);
		expect(JSON.parse(out).bays[0].track.system).not.toBe("light-corded");
	});

	test("at a corner, and at none", async () => {
		expect((await pier(["no-room-round-corner", "--at", "1"])).status).toBe(0);
		const elsewhere = await pier(["no-room-round-corner", "--at", "2"]);
		expect(elsewhere.status).toBe(1);
		expect(elsewhere.lines).toHaveLength(1);
	});

	test("to a file, whole, with nothing left beside it", () => {
		const cwd = folder();
		writeFileSync(join(cwd, "pier.baywright.json"), JSON.stringify(PIER));
		const ran = baywright(["remedy", "pier.baywright.json", "no-room-round-corner", "--out", "cured.baywright.json"], {
			cwd,
		});
		expect(ran.out).toBe("Projection 77 mm: written to cured.baywright.json\n");
		expect(readdirSync(cwd).sort()).toEqual(["cured.baywright.json", "pier.baywright.json"]);
		expect(JSON.parse(readFileSync(join(cwd, "cured.baywright.json"), "utf8")).bays[0].track.projection).toBe(77);
	});

	test.each([
		[["nonsense"], 'finding: found no "nonsense" there, allowed no-room-round-corner'],
		[["no-room-round-corner", "--choice", "9"], "option --choice: found 9, allowed 1 to"],
		[["no-room-round-corner", "--choice", "0"], 'option --choice: found "0", allowed 1, 2, 3'],
		[["no-room-round-corner", "--at", "9"], "option --at: found 9, allowed 1"],
		[["no-room-round-corner", "--at", "x"], 'option --at: found "x", allowed 0, 1, 2'],
		[[], "found 1 names, allowed two"],
	])("%j is refused in one line", async (args, says) => {
		const { status, out, lines } = await pier(args);
		expect(status).toBe(1);
		expect(out).toBe("");
		expect(lines).toHaveLength(1);
		expect(lines[0]).toContain(says);
	});

	test("a file that cannot be written leaves nothing", () => {
		const cwd = folder();
		const ran = baywright(["remedy", "-", "no-room-round-corner", "--out", "no/such/folder.json"], {
			cwd,
			input: JSON.stringify(PIER),
		});
		expect(ran.status).toBe(1);
		expect(ran.lines).toHaveLength(1);
		expect(existsSync(join(cwd, "no"))).toBe(false);
	});
});
