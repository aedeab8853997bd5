import { expect, openExample, test, toStage } from "./app.ts";
import { isFaultless } from "./faultless.ts";

test.describe("nothing is found wrong, on light paper and on dark, with", () => {
	test("the opening list", async ({ page }) => {
		await page.goto("./");
		await expect(page.getByRole("button", { name: /^Saltmarsh House/ })).toBeVisible();
		await isFaultless(page);
	});

	test("a bay, with a corner chosen, and the corner card", async ({ page }) => {
		await openExample(page, "Saltmarsh House");
		await toStage(page, "Track");
		await page.getByRole("button", { name: "Corner 1", exact: true }).click();
		await expect(page.getByRole("textbox", { name: "Radius of corner 1" })).toBeVisible();
		await isFaultless(page);
		await page.getByRole("button", { name: "Corner card" }).click();
		await expect(page.getByRole("dialog", { name: "Corner card" })).toBeVisible();
		await isFaultless(page);
	});

	test("the refused bay", async ({ page }) => {
		await openExample(page, "The Pepperpot");
		await isFaultless(page);
	});

	test("a chimney breast, with a wall chosen", async ({ page }) => {
		await openExample(page, "Malt Loft");
		await page.getByRole("textbox", { name: "Wall 2–3", exact: true }).focus();
		await expect(page.getByRole("textbox", { name: "Rise", exact: true })).toBeVisible();
		await isFaultless(page);
	});
});
