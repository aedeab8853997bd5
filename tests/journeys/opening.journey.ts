import { expect, test } from "@playwright/test";

test("the app opens without a complaint in the console", async ({ page }) => {
	const complaints: string[] = [];
	page.on("console", (message) => {
		if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
	});
	page.on("pageerror", (error) => complaints.push(error.message));
	page.on("requestfailed", (request) => complaints.push(`${request.url()} could not be loaded`));
	await page.goto("./");
	await expect(page).toHaveTitle(/Baywright/);
	await expect(page.locator("body")).not.toBeEmpty();
	await page.waitForLoadState("networkidle");
	expect(complaints).toEqual([]);
});
