import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { baywrightHere, emptyFolder, jobText } from "./run.ts";

function csvFile(text: string | Uint8Array): string {
	const path = join(emptyFolder(), "taped.csv");
	writeFileSync(path, text);
	return path;
}

const drawn = JSON.parse(jobText()).bays[0];
const twoBays = jobText({ bays: [drawn, { ...drawn, id: "b2" }] });

describe("settle --readings", () => {
	const taped =
		"kind,wall,from,to,value\nrun,1,,,90.1\nrun,front wall,,,179.9\nrun,3,,,900 mm\ndiagonal,,left end,2,201.2\n";

	test("the CSV's readings take the place of the job's, bare lengths in the job's unit", async () => {
		const own = [{ kind: "run", wall: 0, value: 700 }];
		const args = ["settle", "-", "--json", "--readings", csvFile(taped)];
		const { status, out, err } = await baywrightHere(args, jobText({ display: { length: "cm" } }, { readings: own }));
		expect([status, err]).toEqual([0, ""]);
		const [{ corners, residuals }] = JSON.parse(out).bays;
		expect(residuals).toHaveLength(4);
		// Left as it is settled by readings with none to spare: the very run that was taped.
		expect(Math.hypot(corners[1][0] - corners[0][0], corners[1][1] - corners[0][1])).toBeCloseTo(901, 2);
		expect(Math.hypot(corners[2][0], corners[2][1])).toBeCloseTo(2012, 2);
	});

	test("for people it is the same page as for readings in the job", async () => {
		const readings = [{ kind: "run", wall: 0, value: 903 }];
		const inJob = await baywrightHere(["settle", "-"], jobText({}, { readings }));
		const args = ["settle", "-", "--readings", csvFile("kind,wall,value\nrun,1,903\n")];
		expect((await baywrightHere(args, jobText())).out).toBe(inJob.out);
	});

	test("of several bays the one named takes them, the others stay as they are", async () => {
		const args = ["settle", "-", "--json", "--bay", "b2", "--readings", csvFile("kind,wall,value\nrun,1,903\n")];
		const { out } = await baywrightHere(args, twoBays);
		const taken = JSON.parse(out).bays.map(({ residuals }: { residuals: unknown[] }) => residuals.length);
		expect(taken).toEqual([0, 1]);
	});

	test("every bad field is told by line, nothing is written", async () => {
		const file = csvFile("kind,wall,value\nrun,1,900\nrun,9,\n");
		expect(await baywrightHere(["settle", "-", "--readings", file], jobText())).toMatchObject({
			status: 1,
			out: "",
			lines: [
				`baywright: settle: ${file}: line 3, wall: found "9", allowed 1 to 3 from the left, or left wall, front wall, right wall`,
				`baywright: settle: ${file}: line 3, value: found nothing, allowed a length such as 2400, 240 cm, 2.4 m or 94 1/2 in`,
			],
		});
	});

	test("what cannot be read or is no text is told", async () => {
		const missing = join(emptyFolder(), "none.csv");
		expect((await baywrightHere(["settle", "-", "--readings", missing], jobText())).lines).toEqual([
			`baywright: settle: cannot read ${missing}: no such file`,
		]);
		const odd = csvFile(new Uint8Array([0xff, 0xfe, 0x6b]));
		expect((await baywrightHere(["settle", "-", "--readings", odd], jobText())).lines).toEqual([
			`baywright: settle: cannot read ${odd}: found bytes that are not UTF-8 text, allowed UTF-8`,
		]);
	});

	test.each([
		[["-", "--readings", "x.csv"], twoBays, 'option --readings: found 2 bays, allowed one, named by --bay: "b1", "b2"'],
		[["-", "--readings", "x.csv", "--bay", "b9"], twoBays, 'option --bay: found "b9", allowed "b1", "b2"'],
		[["-", "--bay", "b1"], twoBays, "option --bay: found without --readings, allowed only with it"],
		[["examples", "--readings", "x.csv"], "", "option --readings: found several jobs, allowed one"],
		[
			["-", "--readings", "x.csv"],
			jobText({ bays: [] }),
			"option --readings: found no bay in the job, allowed a job that has one",
		],
	])("refused: %j", async (args, job, message) => {
		expect(await baywrightHere(["settle", ...args], job)).toMatchObject({
			status: 1,
			out: "",
			lines: [`baywright: settle: ${message}`],
		});
	});
});
