import { main } from "@baywright/cli";
import { describe, expect, test } from "vitest";
import { baywrightHere, jobText, root, tooTight } from "./run.ts";

describe("simulate", () => {
	test("random bays as data, the same for the same seed", async () => {
		const once = await baywrightHere(["simulate", "--count", "6", "--seed", "9", "--json"]);
		expect(once).toMatchObject({ status: 0, err: "" });
		expect((await baywrightHere(["simulate", "--count", "6", "--seed", "9", "--json"])).out).toBe(once.out);
		const { count, seed, errors, within, bays } = JSON.parse(once.out);
		expect({ count, seed, errors, within }).toEqual({ count: 6, seed: 9, errors: { tape: 2, bevel: 0.75 }, within: 5 });
		expect(bays).toHaveLength(1);
		expect(bays[0].id).toBeNull();
		expect(bays[0].strategies.map(({ name }: { name: string }) => name)).toEqual([
			"asked",
			"once",
			"twice",
			"bevel",
			"right-angle",
		]);
	});

	test("for people: a table of the ways of measuring side by side, within the page", async () => {
		const { out } = await baywrightHere(["simulate", "--count", "6"]);
		for (const words of ["the readings asked for", "runs, diagonals, twice", "runs, right-angle rule", "First fit"])
			expect(out).toContain(words);
		expect(out.split("\n").every((line) => line.length <= 100)).toBe(true);
	});

	test("a job's own bays; the readings that it has are one more way", async () => {
		const readings = [0, 1, 2].map((wall) => ({ kind: "run", wall, value: 900 + 900 * (wall % 2) }));
		const { out, status } = await baywrightHere(["simulate", "-", "--count", "3"], jobText({}, { readings }));
		expect(status).toBe(0);
		expect(out).toContain("Bay b1");
		expect(out).toContain("the readings in the job");
	});

	test("a bay that takes no track counts as refused", async () => {
		const { out, status } = await baywrightHere(["simulate", "-", "--count", "2"], jobText({}, tooTight));
		expect(status).toBe(2);
		expect(out).toContain("no track fits it");
		const json = await baywrightHere(["simulate", "-", "--count", "2", "--json"], jobText({}, tooTight));
		expect(JSON.parse(json.out).bays).toEqual([{ id: "b1", strategies: null }]);
	});

	test.each([
		[["--count", "0"], 'option --count: found "0", allowed a whole number from 1 to 1000000'],
		[["--count", "1e3"], 'option --count: found "1e3", allowed a whole number from 1 to 1000000'],
		[["--seed", "-1"], 'option --seed: found "-1", allowed a whole number from 0 to 4294967295'],
		[["--seed", "5000000000"], 'option --seed: found "5000000000", allowed a whole number from 0 to 4294967295'],
	])("refused: %j", async (args, message) => {
		expect(await baywrightHere(["simulate", ...args])).toMatchObject({
			status: 1,
			out: "",
			lines: [`baywright: simulate: ${message}`],
		});
	});

	test.each([[[]], [["-"]]])(
		"progress is shown while it runs; broken off it ends with one line and nothing written (%j)",
		async (jobs) => {
			const said = { out: "", err: "" };
			const progress: string[] = [];
			let watching = 0;
			const status = await main(["simulate", ...jobs, "--count", "100000"], {
				folder: root,
				debug: false,
				out: (text) => {
					said.out += text;
				},
				err: (text) => {
					said.err += text;
				},
				input: async () => new TextEncoder().encode(jobText()),
				progress: (text) => progress.push(text),
				onBreak: (stop) => {
					watching++;
					setTimeout(stop, 50);
					return () => watching--;
				},
			});
			expect([status, said.out, watching]).toEqual([1, "", 0]);
			expect(said.err).toMatch(/^baywright: simulate: broken off after \d+ of 100000 bays; nothing was written\n$/);
			expect(progress[0]).toMatch(/^simulate: \d+ of 100000 bays$/);
			expect(progress.at(-1)).toBe("");
		},
	);

	test("its own help", async () => {
		expect((await baywrightHere(["simulate", "--help"])).out).toContain(
			"baywright simulate [JOB…] [--count 10000] [--seed 1] [--json]",
		);
	});
});
