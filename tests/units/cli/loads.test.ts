import { describe, expect, test } from "vitest";
import { baywrightHere } from "./run.ts";

const cloths = [{ id: "kilo", width: 1000, mass: 1000, packing: { pencil: 100 } }];
const inputOf = (curtains: readonly object[], maxLoad: number | null = 4) =>
	JSON.stringify({
		format: "baywright-job",
		version: 1,
		systems: [
			{
				id: "plain",
				name: "Plain",
				minRadius: { internal: 100, external: 100 },
				projection: { default: 40, min: 30, max: 100 },
				bracket: { maxSpacing: 400, endMax: 100, maxLoad },
				stock: [{ length: 6000 }],
				massPerMetre: 0.4,
			},
		],
		cloths,
		bays: [
			{
				id: "b",
				corners: [
					[0, 0],
					[600, 0],
				],
				track: {
					system: "plain",
					draw: "left",
					brackets: [
						{ wall: 0, at: 100 },
						{ wall: 0, at: 500 },
					],
				},
				curtains,
				makeUp: { overlap: 0, sideTurning: 0, headingTurning: 0, hemTurning: 0 },
			},
		],
	});
const kilo = { cloth: "kilo", fullness: 2, drop: 2000 };

const { out: plan } = await baywrightHere(["plan", "-"], inputOf([kilo]));
const text = plan.replace(/\s+/g, " ");

/** 4 kg on two brackets at 100 and 500 of 600, stacked on the left 120, 0.24 kg of track: by the lever rule 4·440/400 + 0.12 and 4·(−40)/400 + 0.12. */
describe("loads in the plan for people", () => {
	test("stand in a table with the limit and how far the figures go", () => {
		expect(text).toContain("Loads on brackets, kg; limit 4 kg");
		expect(text).toContain("1 wall 4.5 113 % 2.1 2.1 4.5 over the limit");
		expect(text).toContain("2 wall 2.1 53 % −0.3 2.1 −0.3");
		expect(text).toContain("torsion at bends is left out");
	});

	test("say so where the system states no limit", async () => {
		const none = (await baywrightHere(["plan", "-"], inputOf([kilo], null))).out.replace(/\s+/g, " ");
		expect(none).toContain("Loads on brackets, kg; the system states no limit");
		expect(none).toContain("1 wall 4.5 – 2.1 2.1 4.5 not checked");
		expect(none).toContain("WARNING Loads not checked");
	});

	test("say what is not known, in the table's place as well", async () => {
		const unknown = (await baywrightHere(["plan", "-"], inputOf([{ cloth: "kilo" }]))).out.replace(/\s+/g, " ");
		expect(unknown).toMatch(/Loads on brackets: not worked out What the curtain weighs is not known/);
	});

	test("are not spoken of where no curtain is given", async () => {
		expect((await baywrightHere(["plan", "-"], inputOf([]))).out).not.toMatch(/[Ll]oad|kg/);
	});
});

test("JSON has each bracket's loads", async () => {
	const { out } = await baywrightHere(["plan", "-", "--json"], inputOf([kilo]));
	const [left, right] = JSON.parse(out).bays[0].loads;
	expect(left).toMatchObject({ bracket: 0, limit: 4 });
	expect(left.stacked).toBeCloseTo(4.52, 9);
	expect(left.share).toBeCloseTo(1.13, 6);
	expect(right.stacked).toBeCloseTo(-0.28, 9);
	expect(right.drawn).toBeCloseTo(2.12, 9);
});
