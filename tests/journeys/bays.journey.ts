import { cut, expect, settled, test } from "./app.ts";
import { cutLength, isClearOfHalf, whole } from "./by-hand.ts";

// Light corded from end to end: projection 40, radius 310, 100 mm for each end pulley.
const track = { projection: 40, radius: 310, start: 0, takeUp: 200 };

test("from nothing to a cut length: a splayed bay pressed and its runs typed", async ({ page }) => {
	await page.goto("./");
	await page.getByRole("button", { name: /^A splayed bay/ }).click();
	await settled(page);
	const plain = cutLength({ runs: [900, 1800, 900], angles: [135, 135] }, { ...track, end: 900 });
	await expect(cut(page)).toHaveText(whole(plain));
	for (const [name, run] of [
		["Left wall", "850"],
		["Front wall", "2040"],
		["Right wall", "870"],
	] as const) {
		const field = page.getByRole("textbox", { name, exact: true });
		await field.fill(run);
		await field.press("Enter");
	}
	const byHand = cutLength({ runs: [850, 2040, 870], angles: [135, 135] }, { ...track, end: 870 });
	expect([plain, byHand].every(isClearOfHalf)).toBe(true);
	await expect(cut(page)).toHaveText(whole(byHand));
});

test("several bays: added, named, duplicated, removed and brought back", async ({ page }) => {
	await page.goto("./");
	await page.getByRole("button", { name: /^A plain square bay/ }).click();
	await settled(page);
	const square = (await cut(page).textContent()) as string;
	const bays = page.getByRole("dialog", { name: "Bays of this job" });
	const open = () => page.getByRole("button", { name: "Bays: add, name, remove" }).click();

	await open();
	await bays.getByRole("button", { name: "Add a bay" }).click();
	await page
		.getByRole("dialog", { name: "A new bay" })
		.getByRole("button", { name: /^A straight recess/ })
		.click();
	// A straight track of the whole wall, less both end pulleys.
	await expect(cut(page)).toHaveText(whole(2000 - 200));
	const choice = page.getByRole("combobox", { name: "Bay", exact: true });
	await expect(choice).toHaveValue("1");

	await open();
	const name = bays.getByRole("textbox", { name: "Name of bay 2" });
	await name.fill("Stair window");
	await name.press("Enter");
	await bays.getByRole("button", { name: "Duplicate Stair window" }).click();
	await expect(choice.locator("option")).toHaveText([
		"Bay (1 of 3)",
		"Stair window (2 of 3)",
		"Stair window 2 (3 of 3)",
	]);

	await open();
	await bays.getByRole("button", { name: "Remove Bay", exact: true }).click();
	await bays.getByRole("button", { name: "Close" }).click();
	await expect(choice.locator("option")).toHaveText(["Stair window (1 of 2)", "Stair window 2 (2 of 2)"]);
	await page.getByRole("button", { name: "Undo: remove Bay" }).click();
	await choice.selectOption("0");
	await expect(cut(page)).toHaveText(square);
});
