import { describe, expect, test } from "vitest";
import { baywrightHere } from "./run.ts";

const jobOf = (bay: object) => JSON.stringify({ format: "baywright-job", version: 1, bays: [{ id: "b", ...bay }] });

const input = jobOf({
	corners: [
		[0, 0],
		[0, 640],
		[2300, 640],
		[2300, 0],
	],
	walls: [{}, { rise: 210 }, {}],
	track: { system: "fine-hand-drawn" },
});
const { out } = await baywrightHere(["plan", "-"], input);

describe("a bowed wall in the tables", () => {
	// Chord 2300 and rise 210: face of radius (1150² + 210²)/420, the track 60 within it.
	const radius = ((1150 ** 2 + 210 ** 2) / 420 - 60).toFixed(1);

	test("has a row with its radius, sweep and the stations of its ends", () => {
		const row = out.split("\n").find((line) => line.includes("away from the room")) ?? "";
		const [sweep, from, to] = row.trim().split(/\s+/).slice(-3).map(Number) as [number, number, number];
		expect(row).toContain(` ${radius} `);
		expect(Math.abs(to - from - sweep)).toBeLessThan(0.11);
	});

	test("is marked on the strip by its wall, and what is taped along it is taped along the curve", () => {
		expect(out).toMatch(new RegExp(`bow of front wall starts, R ${radius} +\\d`));
		expect(out).toMatch(new RegExp(`middle of bow, front wall, R ${radius} +\\d`));
		expect(out).toMatch(new RegExp(`bow of front wall ends, R ${radius} +\\d`));
		expect(out.replace(/\s+/g, " ")).toContain("On the front wall hold the tape along the curve of the face.");
	});

	test("is not spoken of where no wall bows", async () => {
		const straight = (await baywrightHere(["plan", "-"], input.replace('"rise":210', '"rise":0'))).out;
		expect(straight).not.toMatch(/curve|Bows/);
	});
});

test("one bend past several corners is named by the first and last of them", async () => {
	const lantern = await baywrightHere(["plan", "examples/lantern-room.baywright.json"]);
	expect(lantern.out).toContain("bend starts, corners 1–5");
	expect(lantern.out).not.toContain("bend starts, corner 1 ");
	expect(lantern.out).toContain("round corners 1–5.");
});
