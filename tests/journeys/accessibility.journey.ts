import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { expect, openExample, test, toStage } from "./app.ts";

for (const colorScheme of ["light", "dark"] as const) {
	test.describe(`on ${colorScheme} paper nothing is found wrong with`, () => {
		test.use({ colorScheme });

		test("the opening list", async ({ page }) => {
			await page.goto("./");
			await expect(page.getByRole("button", { name: /^Saltmarsh House/ })).toBeVisible();
			await isClean(page);
		});

		test("a bay, with a corner chosen", async ({ page }) => {
			await openExample(page, "Saltmarsh House");
			await toStage(page, "Track");
			await page.getByRole("button", { name: "Corner 1", exact: true }).click();
			await expect(page.getByRole("textbox", { name: "Radius of corner 1" })).toBeVisible();
			await isClean(page);
		});

		test("the refused bay", async ({ page }) => {
			await openExample(page, "The Pepperpot");
			await isClean(page);
		});

		test("a chimney breast, with a wall chosen", async ({ page }) => {
			await openExample(page, "Malt Loft");
			await page.getByRole("textbox", { name: "Wall 2–3", exact: true }).focus();
			await expect(page.getByRole("textbox", { name: "Rise", exact: true })).toBeVisible();
			await isClean(page);
		});

		test("the corner card", async ({ page }) => {
			await openExample(page, "Saltmarsh House");
			await toStage(page, "Track");
			await page.getByRole("button", { name: "Corner card" }).click();
			await expect(page.getByRole("dialog", { name: "Corner card" })).toBeVisible();
			await isClean(page);
		});
	});
}

async function isClean(page: Page): Promise<void> {
	const { violations, passes } = await new AxeBuilder({ page }).analyze();
	expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
	expect(passes.length).toBeGreaterThan(10);
}
