import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { Page } from "@playwright/test";
import { expect, openExample, test } from "./app.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));

async function openSheet(page: Page) {
	await openExample(page, "Quay Cottage");
	await page.getByRole("button", { name: "How often would it fit?" }).click();
	return page.getByRole("dialog", { name: "How often would it fit?" });
}

/** What the command says of the same bays: rate and mean of readings of each way, as they are written on screen. */
function byCommand(job: readonly string[]) {
	const args = ["packages/cli/bin/baywright.mjs", "simulate", ...job, "--count", "60", "--seed", "7", "--json"];
	const { stdout } = spawnSync(process.execPath, args, { cwd: root, encoding: "utf8" });
	const [bay] = JSON.parse(stdout).bays as {
		strategies: { firstFit: number; readings: { mean: number }; histogram: number[] }[];
	}[];
	return (bay?.strategies ?? []).map(({ firstFit, readings, histogram }) => ({
		figures: [readings.mean.toFixed(1), `${(100 * firstFit).toFixed(1)} %`],
		bars: histogram.filter((bays) => bays > 0).map(String),
	}));
}

test("the same seed and count give the command's figures, for the bay on the table and for random ones", async ({
	page,
}) => {
	const sheet = await openSheet(page);
	await sheet.getByRole("textbox", { name: "Times" }).fill("60");
	await sheet.getByRole("textbox", { name: "Seed" }).fill("7");
	for (const [bays, job] of [
		["This bay", ["examples/quay-cottage.baywright.json"]],
		["Random bays", []],
	] as const) {
		await sheet.getByText(bays, { exact: true }).click();
		await sheet.getByRole("button", { name: "Measure" }).click();
		await expect(sheet.getByRole("status")).toContainText(`${bays}, seed 7`);
		const rows = sheet.getByRole("table", { name: "First fit by way of measuring" }).locator("tbody tr");
		const wanted = byCommand(job);
		expect(wanted.length).toBeGreaterThanOrEqual(5);
		await expect(rows).toHaveCount(wanted.length);
		for (const [i, { figures, bars }] of wanted.entries()) {
			const cells = await rows.nth(i).locator("td").allTextContents();
			expect(cells.slice(0, 2)).toEqual(figures);
			await rows.nth(i).getByRole("radio").check();
			await expect(sheet.getByRole("table", { name: /^How far out/ }).locator("td")).toHaveText(bars);
		}
	}
});

test("long work shows figures as it runs, and stops when it is cancelled or the sheet is closed", async ({ page }) => {
	const sheet = await openSheet(page);
	await sheet.getByRole("textbox", { name: "Times" }).fill("100000");
	await sheet.getByRole("button", { name: "Measure" }).click();
	const bar = sheet.getByRole("progressbar");
	await expect(bar).toContainText(/[1-9]\d* of 100000 measured/);
	await expect(sheet.getByRole("radio", { name: "The readings asked for" })).toBeVisible();
	expect(page.workers()).toHaveLength(1);
	await sheet.getByRole("button", { name: "Cancel" }).click();
	await expect(sheet.getByRole("status")).toContainText(/^Cancelled after \d+ of 100000/);
	await expect(bar).toHaveCount(0);
	await expect.poll(() => page.workers().length).toBe(0);

	await sheet.getByRole("button", { name: "Measure" }).click();
	await expect.poll(() => page.workers().length).toBe(1);
	await sheet.getByRole("button", { name: "Close" }).click();
	await expect.poll(() => page.workers().length).toBe(0);
});

test("what will not do is said with what is allowed, and nothing runs", async ({ page }) => {
	const sheet = await openSheet(page);
	await sheet.getByRole("textbox", { name: "Times" }).fill("0");
	await sheet.getByRole("button", { name: "Measure" }).click();
	await expect(sheet.getByRole("alert")).toHaveText("“0” will not do: write a whole number from 1 to 100000.");
	expect(page.workers()).toHaveLength(0);
});
