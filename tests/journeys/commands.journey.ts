import { cut, expect, openExample, test } from "./app.ts";
import { isFaultless } from "./faultless.ts";

test("a command is found by its words and done by key; what cannot be done says why", async ({ page }) => {
	await openExample(page, "Saltmarsh House");
	await page.keyboard.press("Control+k");
	const find = page.getByRole("combobox", { name: "Find a command" });
	await expect(find).toBeFocused();
	await isFaultless(page);

	await find.fill("level");
	await expect(page.getByRole("option", { name: /^Level this wall/ })).toContainText("Choose a wall first.");
	await page.keyboard.press("Enter");
	await expect(find).toBeVisible();

	await find.fill("left to right");
	await page.keyboard.press("Enter");
	await expect(find).toHaveCount(0);
	await expect(page.getByRole("button", { name: "Undo: mirror left to right" })).toBeEnabled();

	await page.keyboard.press("Control+k");
	await find.fill("inches");
	await page.getByRole("option", { name: "Lengths in inches" }).click();
	await expect(cut(page)).toContainText('"');
	await page.keyboard.press("Control+k");
	await find.fill("go to order");
	await page.keyboard.press("Enter");
	await expect(page.getByRole("tab", { name: "Order" })).toHaveAttribute("aria-selected", "true");
});

test("the question mark opens the sheet of keys, but not in a field", async ({ page }) => {
	await openExample(page, "Saltmarsh House");
	await page.getByRole("tab", { name: "Survey" }).focus();
	await page.keyboard.press("?");
	const keys = page.getByRole("dialog", { name: "Keys" });
	await expect(keys).toContainText("List of commands");
	await page.keyboard.press("Escape");
	await expect(keys).toHaveCount(0);
	const front = page.getByRole("textbox", { name: "Front wall" });
	await front.focus();
	await page.keyboard.press("?");
	await expect(front).toHaveValue("?");
	await expect(keys).toHaveCount(0);
});

test("an opening is copied and pasted by key from its row, and foreign text is refused in words", async ({
	page,
	context,
}) => {
	await context.grantPermissions(["clipboard-read", "clipboard-write"]);
	await openExample(page, "Saltmarsh House");
	await page.getByRole("button", { name: /^Obstacles/ }).click();
	await page.getByRole("button", { name: "Add a socket to the front wall" }).click();
	const row = page.getByRole("button", { name: /^Obstacle 1/ });
	await expect(row).toHaveAttribute("aria-expanded", "true");
	await row.focus();
	const obstacles = page.getByRole("button", { name: /^Obstacle \d/ });
	const before = await obstacles.count();
	await page.keyboard.press("Control+c");
	await expect(page.getByRole("status").filter({ hasText: "Copied the obstacle" })).toBeVisible();
	await page.keyboard.press("Control+v");
	await expect(obstacles).toHaveCount(before + 1);
	await page.getByRole("button", { name: "Undo: paste an obstacle" }).click();
	await expect(obstacles).toHaveCount(before);

	await page.evaluate(() => navigator.clipboard.writeText("Kitchen, 2400 wide"));
	await row.focus();
	await page.keyboard.press("Control+v");
	await expect(page.getByRole("status").filter({ hasText: "nothing was pasted" })).toBeVisible();
	await expect(obstacles).toHaveCount(before);
});
