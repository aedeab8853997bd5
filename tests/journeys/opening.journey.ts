import { expect, test } from "./app.ts";

test("the app opens with a plain bay and every example to choose from", async ({ page }) => {
	await page.goto("./");
	await expect(page).toHaveTitle(/Baywright/);
	await expect(page.getByRole("heading", { level: 1 })).toHaveText("Baywright");
	const bays = page.getByRole("listitem").getByRole("button");
	await expect(bays).toHaveCount(9);
	await expect(bays.first()).toHaveAccessibleName(/^A plain square bay/);
	await page.waitForLoadState("networkidle");
});
