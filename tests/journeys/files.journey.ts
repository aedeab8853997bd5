import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { cut, exampleFile, expect, openExample, test, withoutPickers } from "./app.ts";
import { cutLength, whole } from "./by-hand.ts";

const track = { projection: 40, radius: 310, start: 60, end: 840, takeUp: 200 };
/** Saltmarsh House with a front wall of 2000 mm. */
const changed = whole(cutLength({ runs: [Math.hypot(636.4, 636.4), 2000, 900], angles: [135, 135] }, track));

test("a reload brings the changed job back", async ({ page }) => {
	await openExample(page, "Saltmarsh House");
	await widen(page);
	await page.reload();
	await expect(page.getByRole("textbox", { name: "Title of the job" })).toHaveValue("Saltmarsh House");
	await expect(cut(page)).toHaveText(changed);
	await expect(page.getByRole("textbox", { name: "Front wall" })).toHaveValue("2000");
});

test("a bad job file is refused by the path of its fault, and the job on the desk stays", async ({ page }) => {
	await withoutPickers(page);
	await openExample(page, "Saltmarsh House");
	await widen(page);
	const bad = exampleFile("saltmarsh-house");
	bad.bays[0].openings[1].from = "wide";
	await open(page, "worn.baywright.json", JSON.stringify(bad));
	const sheet = page.getByRole("dialog", { name: "worn.baywright.json could not be read" });
	const problem = sheet.getByRole("listitem");
	await expect(problem).toHaveCount(1);
	await expect(problem).toContainText("bays[0].openings[1].from");
	await expect(problem).toContainText("wide");
	await sheet.getByRole("button", { name: "Close" }).click();
	await expect(page.getByRole("textbox", { name: "Title of the job" })).toHaveValue("Saltmarsh House");
	await expect(cut(page)).toHaveText(changed);
	await expect(page.getByRole("button", { name: /^Undo/ })).toHaveAccessibleName("Undo: run of the front wall");
});

test("a job saved to a file is the job, and opens again as it was", async ({ page }) => {
	await withoutPickers(page);
	await openExample(page, "Saltmarsh House");
	const first = await save(page);
	expect(first.name).toBe("saltmarsh-house.baywright.json");
	// Every key of the example with its value; what the example leaves out comes with its default.
	expect(JSON.parse(first.text)).toMatchObject(exampleFile("saltmarsh-house"));

	await widen(page);
	const second = await save(page);
	const [before, after] = [first, second].map(({ text }) => JSON.parse(text).bays[0].corners);
	expect(after.slice(0, 2)).toEqual(before.slice(0, 2));
	expect(after[2]).toEqual([636.4 + 2000, 636.4]);

	await open(page, "saltmarsh-house.baywright.json", first.text);
	await expect(cut(page)).toHaveText("3187");
	expect((await save(page)).text).toBe(first.text);
	await page.getByRole("button", { name: /^Undo: open saltmarsh-house/ }).click();
	await expect(cut(page)).toHaveText(changed);
	expect((await save(page)).text).toBe(second.text);
});

async function widen(page: Page): Promise<void> {
	const front = page.getByRole("textbox", { name: "Front wall" });
	await front.fill("2000");
	await front.press("Enter");
	await expect(cut(page)).toHaveText(changed);
	await expect(page.getByRole("status").filter({ hasText: /^Saved$/ })).toBeVisible();
}

async function open(page: Page, name: string, text: string): Promise<void> {
	const choosing = page.waitForEvent("filechooser");
	await page.getByRole("button", { name: "Open", exact: true }).click();
	await (await choosing).setFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
}

async function save(page: Page): Promise<{ readonly name: string; readonly text: string }> {
	const loading = page.waitForEvent("download");
	await page.getByRole("button", { name: "Save", exact: true }).click();
	const file = await loading;
	return { name: file.suggestedFilename(), text: await readFile(await file.path(), "utf8") };
}
