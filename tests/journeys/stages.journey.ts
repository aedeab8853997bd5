import type { Page } from "@playwright/test";
import { cut, expect, openExample, settled, test, toStage } from "./app.ts";
import { cutLength, isClearOfHalf, whole } from "./by-hand.ts";
import { isFaultless } from "./faultless.ts";

const STAGES = ["Survey", "Track", "Curtains", "Order", "Sheets"];

test("arrows go from stage to stage; the cut and the findings stay in sight; a reload comes back to the stage", async ({
	page,
}) => {
	await openExample(page, "Harbour Office");
	await page.getByRole("tab", { name: "Survey" }).focus();
	for (const name of [...STAGES.slice(1), "Survey", "Track"]) {
		await page.keyboard.press("ArrowRight");
		await expect(page.getByRole("tab", { name })).toBeFocused();
		await expect(page.getByRole("tab", { name })).toHaveAttribute("aria-selected", "true");
		await expect(page.getByRole("tabpanel", { name }).getByRole("heading").first()).toBeVisible();
		await expect(cut(page).first()).toBeVisible();
		await expect(page.getByRole("region", { name: "Findings" })).toBeVisible();
		if (name === "Sheets") await sheetsStand(page);
	}
	await page.keyboard.press("End");
	await expect(page.getByRole("tab", { name: "Sheets" })).toBeFocused();
	await sheetsStand(page);
	await expect(page.getByRole("status").filter({ hasText: /^Saved$/ })).toBeVisible();
	await page.reload();
	await expect(page.getByRole("tab", { name: "Sheets" })).toHaveAttribute("aria-selected", "true");
	await sheetsStand(page);
});

/** What makes them is here: leaving before would break off its loading, which counts as a complaint. */
async function sheetsStand(page: Page): Promise<void> {
	await expect(page.getByRole("tabpanel", { name: "Sheets" })).toContainText(/\d+ pages in one pack/, {
		timeout: 20_000,
	});
}

test("nothing is found wrong with the controls of any stage", async ({ page }) => {
	await openExample(page, "Harbour Office");
	for (const name of STAGES) {
		await toStage(page, name);
		if (name === "Sheets") await sheetsStand(page);
		await isFaultless(page, [".header", ".side"]);
	}
});

test("what is chosen on the plan is chosen in its row, and a row typed on changes the plan", async ({ page }) => {
	await openExample(page, "Saltmarsh House");
	await page.getByRole("application", { name: "Plan of" }).focus();
	// Corner, wall and bow of each of the three walls and the last corner come before the openings.
	for (let i = 0; i < 11; i++) await page.keyboard.press("Tab");
	const row = page.getByRole("button", { name: /^Opening 1/ });
	await expect(row).toHaveAttribute("aria-expanded", "true");
	await expect(row).toBeInViewport();

	const width = page.getByRole("textbox", { name: "Width", exact: true });
	const before = Number(await width.inputValue());
	await width.fill(String(before - 100));
	await width.press("Enter");
	await expect(page.getByRole("button", { name: "Undo: width of opening 1" })).toBeEnabled();
	await toStage(page, "Track");
	await page.getByRole("button", { name: "The chosen opening is in Survey" }).click();
	await expect(width).toHaveValue(String(before - 100));
	await page.getByRole("button", { name: "Remove opening 1" }).click();
	await page.getByRole("button", { name: "Undo: remove opening 1" }).click();
	await expect(row).toBeVisible();
});

test("a bay goes in by the table alone, run, angle, run", async ({ page }) => {
	await page.goto("./");
	await page.getByRole("button", { name: /^Tape it/ }).click();
	await settled(page);
	await expect(cut(page)).toHaveText("Nothing to cut yet");
	const form = page.getByRole("form", { name: "Add a wall" });
	await form.getByRole("textbox", { name: "First run" }).fill("900");
	await page.keyboard.press("Enter");
	for (const [run, angle] of [
		["1.8 m", "135"],
		["900", "135"],
	] as const) {
		await form.getByRole("textbox", { name: "Next run" }).fill(run);
		await form.getByRole("textbox", { name: "Its angle" }).fill(angle);
		await page.keyboard.press("Enter");
	}
	// Light corded from end to end: projection 40, radius 310, 100 mm for each end pulley.
	const byHand = cutLength(
		{ runs: [900, 1800, 900], angles: [135, 135] },
		{ projection: 40, radius: 310, start: 0, end: 900, takeUp: 200 },
	);
	expect(isClearOfHalf(byHand)).toBe(true);
	await expect(cut(page)).toHaveText(whole(byHand));

	// A corner more, and one less.
	await page.getByRole("textbox", { name: "Front wall" }).focus();
	await page.getByRole("button", { name: "Put a corner in its middle" }).click();
	await expect(page.getByRole("textbox", { name: "Corner 3", exact: true })).toHaveValue("135.0°");
	await page.getByRole("button", { name: "Remove corner 2" }).click();
	await expect(page.getByRole("textbox", { name: "Front wall" })).toHaveValue("1800");
	await expect(cut(page)).toHaveText(whole(byHand));
});

test("a bracket is pinned where it is typed, and released", async ({ page }) => {
	await openExample(page, "Saltmarsh House");
	await toStage(page, "Track");
	const bracket = page.getByRole("button", { name: "Bracket 2", exact: true });
	await bracket.click();
	const left = page.getByRole("tabpanel").getByRole("textbox", { name: "From left corner" });
	await left.fill("400");
	await left.press("Enter");
	await expect(page.getByRole("row").filter({ has: bracket })).toContainText("pinned");
	await expect(page.getByRole("row").filter({ has: bracket })).toContainText("400");
	await page.getByRole("button", { name: "Release the pin" }).click();
	await expect(page.getByRole("row").filter({ has: bracket })).not.toContainText("pinned");
});
