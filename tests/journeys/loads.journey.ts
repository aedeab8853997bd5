import type { Page } from "@playwright/test";
import { expect, openExample, settled, test, toStage, watchWriting, withoutPickers } from "./app.ts";
import { isFaultless } from "./faultless.ts";

const system = {
	id: "plain",
	name: "Plain",
	minRadius: { internal: 100, external: 100 },
	projection: { default: 40, min: 30, max: 100 },
	bracket: { maxSpacing: 400, endMax: 100, maxLoad: 4 },
	stock: [{ length: 6000 }],
	massPerMetre: 0.4,
};

/**
 * 600 of track on two brackets, 100 from either end. The curtain: two widths of 1 m, 2 m long, at 1 kg/m²: 4 kg; 1200 of flat cloth at
 * 100 mm a metre stack on the left 120. By the lever rule, with 0.12 kg of track on each: drawn 2 + 0.12 on both; drawn back
 * 4 · (500 − 60)/400 + 0.12 = 4.52 on the left, which is 113 % of 4 kg, and 4 · (60 − 100)/400 + 0.12 = −0.28 on the right.
 */
const lever = {
	format: "baywright-job",
	version: 1,
	title: "Lever",
	systems: [system],
	cloths: [{ id: "kilo", name: "Kilo", width: 1000, mass: 1000, packing: { pencil: 100 } }],
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
			curtains: [{ cloth: "kilo", fullness: 2, drop: 2000 }],
			makeUp: { overlap: 0, sideTurning: 0, headingTurning: 0, hemTurning: 0 },
		},
	],
};

/** A heavy curtain drawn to one side of a straight track, which three more brackets carry. */
const heavy = {
	...lever,
	title: "Heavy",
	systems: [{ ...system, bracket: { maxSpacing: 400, maxLoad: 6 } }],
	cloths: [],
	bays: [
		{
			id: "b",
			corners: [
				[0, 0],
				[2900, 0],
			],
			track: { system: "plain", draw: "left" },
			curtains: [{ cloth: "heavy-interlined", fullness: 2.5, drop: 2000 }],
		},
	],
};

async function openJob(page: Page, job: { readonly title: string }): Promise<void> {
	await withoutPickers(page);
	await watchWriting(page);
	await openExample(page, "Saltmarsh House");
	const choosing = page.waitForEvent("filechooser");
	await page.getByRole("button", { name: "Open", exact: true }).click();
	const buffer = Buffer.from(JSON.stringify(job));
	await (await choosing).setFiles({ name: "loads.baywright.json", mimeType: "application/json", buffer });
	await expect(page.getByRole("textbox", { name: "Title of the job" })).toHaveValue(job.title);
	await settled(page);
}

/** All that is written on the strip, left to right. */
const onStrip = (page: Page): Promise<string[]> =>
	page.locator("[data-strip] canvas").evaluate((canvas: HTMLCanvasElement) => {
		const { written } = window as unknown as { written: WeakMap<HTMLCanvasElement, { text: string; left: number }[]> };
		return [...(written.get(canvas) ?? [])].sort((a, b) => a.left - b.left).map(({ text }) => text);
	});

const loadRow = (page: Page, bracket: number) =>
	page
		.locator("table.loads")
		.getByRole("row")
		.filter({ has: page.getByRole("button", { name: `Bracket ${bracket}`, exact: true }) })
		.getByRole("cell");

test("what each bracket carries stands in the table and hangs under the strip, as the lever rule has it", async ({
	page,
}) => {
	await openJob(page, lever);
	await expect(page.getByText("Load on each bracket, kg")).toBeHidden();
	await toStage(page, "Curtains");
	await expect(loadRow(page, 1)).toHaveText(["Wallover the limit", "4.5", "113 %", "2.1"]);
	await expect(loadRow(page, 2)).toHaveText(["Wall", "2.1", "53 %", "−0.3"]);
	const findings = page.getByRole("region", { name: "Findings" });
	await expect(findings).toContainText("Bracket 1 on the wall carries up to 4.5 kg");
	// A lift of 0.3 kg stands in the table and is not worth a note.
	await expect(findings).not.toContainText("hold the track down");

	const strip = page.getByRole("region", { name: /^Strip/ });
	await expect(strip).toContainText("torsion at bends left out");
	await expect.poll(() => onStrip(page)).toEqual(expect.arrayContaining(["4.5", "2.1"]));
	for (const [words, left, right] of [
		["drawn back", "4.5", "−0.3"],
		["drawn", "2.1", "2.1"],
		["least", "2.1", "−0.3"],
	] as const) {
		await strip.getByText(words, { exact: true }).click();
		await expect.poll(async () => (await onStrip(page)).filter((text) => text.includes("."))).toEqual([left, right]);
	}
	await toStage(page, "Track");
	await expect(strip).toContainText("torsion at bends left out");
	await toStage(page, "Survey");
	await expect(strip).not.toContainText("torsion at bends left out");
	await expect.poll(async () => (await onStrip(page)).filter((text) => text.includes("."))).toEqual([]);
});

test("one press pins the brackets that carry it, and one undo takes them away", async ({ page }) => {
	await openJob(page, heavy);
	await toStage(page, "Curtains");
	const over = page.locator("table.loads").getByText("over the limit");
	await expect(over).toHaveCount(2);
	const rows = page.locator("table.loads tbody tr");
	await expect(rows).toHaveCount(8);
	await page.getByRole("button", { name: /^Pin 3 brackets/ }).click();
	await expect(over).toHaveCount(0);
	await expect(rows).toHaveCount(11);
	await page.getByRole("button", { name: /^Undo/ }).click();
	await expect(over).toHaveCount(2);
});

test("without a drop no load is told, and the panel says what for", async ({ page }) => {
	const [bay] = lever.bays;
	await openJob(page, { ...lever, bays: [{ ...bay, curtains: [{ cloth: "kilo" }] }] } as typeof lever);
	await toStage(page, "Curtains");
	await expect(page.getByRole("tabpanel", { name: "Curtains" })).toContainText(
		"What the curtain weighs is not known (no finished drop is given), so loads on brackets are not worked out.",
	);
	await expect(page.locator("table.loads")).toHaveCount(0);
	await expect(page.getByText("Load on each bracket, kg")).toBeHidden();
});

test("nothing is found wrong with the loads", async ({ page }) => {
	await openJob(page, lever);
	await toStage(page, "Curtains");
	await isFaultless(page, [".side", ".lower"]);
});
