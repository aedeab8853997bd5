import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { parse } from "csv-parse/sync";
import { expect, openExample, openOnPhone, test, toStage, withoutPickers } from "./app.ts";
import { cutLength } from "./by-hand.ts";

/** Quay Cottage: a square bay of 900, 1800 and 900, its track from 50 on the left wall to 850 on the right. */
const finished = cutLength(
	{ runs: [900, 1800, 900], angles: [90, 90] },
	{ projection: 40, radius: 310, start: 50, end: 850, takeUp: 0 },
);
/** Heads at 2050 put the track at 2150; a loop down to 1500 and up again; 300 for the knots (common practice, no source). */
const cord = (lowest: number) => 2 * finished + 2 * (2150 - lowest) + 300;
/** Ordered to the tenth of a metre, and 5 % spare to the tenth on top. */
const tenths = (mm: number) => Math.ceil(mm / 100);
const ordered = (mm: number) => ((tenths(mm) + Math.ceil(tenths(mm) * 0.05)) / 10).toFixed(1);

const row = (page: Page, part: RegExp) =>
	page.getByRole("row").filter({ has: page.getByRole("button", { name: part }) });

test("what is ordered is what is drawn; prices typed make a total, which one step takes back; all goes to a file", async ({
	page,
}) => {
	await withoutPickers(page);
	await openExample(page, "Quay Cottage");
	await toStage(page, "Order");
	// Eight brackets by the figures of common practice: one near each end, one either side of both bends, two between.
	await expect(
		row(page, /^Wall bracket/)
			.getByRole("cell")
			.first(),
	).toHaveText("8");
	await expect(
		row(page, /^Cord$/)
			.getByRole("cell")
			.first(),
	).toHaveText(`${ordered(cord(1500))} m`);
	await page.getByRole("button", { name: /^Wall bracket/ }).click();
	await expect(page.getByText("One each at brackets 1–8.")).toBeVisible();

	await price(page, "Wall bracket, projection 40 mm", "2,40");
	await price(page, "Cord tensioner", "3.25");
	// 8 × 2.40 + 3.25.
	const total = page.getByRole("row", { name: /^Total/ });
	await expect(total.getByRole("cell").last()).toHaveText("22.45");
	await price(page, "Glider", "many");
	await expect(page.getByRole("alert")).toHaveText("“many” is not a price: write a number, 0 or more.");
	await page.keyboard.press("Escape");

	const loading = page.waitForEvent("download");
	await page.getByRole("button", { name: "Save the order to a file" }).click();
	const file = await loading;
	expect(file.suggestedFilename()).toBe("quay-cottage-order.csv");
	const rows: Record<string, string>[] = parse(await readFile(await file.path(), "utf8"), { columns: true });
	expect(rows.find(({ item }) => item === "bracket")).toMatchObject({ "to order": "8", each: "2.40", cost: "19.20" });
	expect(rows.at(-1)).toMatchObject({ what: "total", cost: "22.45" });

	await page.getByRole("button", { name: "Undo: price of cord tensioner" }).click();
	await expect(total.getByRole("cell").last()).toHaveText("19.20");
});

test("a cord hung lower is longer, is told against the region's rules, and goes back in one click", async ({
	page,
}) => {
	await openExample(page, "Quay Cottage");
	await toStage(page, "Track");
	const inAll = page.getByText("Cord in all, knots included").locator("xpath=..").locator("dd");
	await expect(inAll).toHaveText(String(Math.round(cord(1500))));
	const lowest = page.getByRole("textbox", { name: "Lowest point of its loop" });
	await lowest.fill("900");
	await lowest.press("Enter");
	await expect(inAll).toHaveText(String(Math.round(cord(900))));
	const findings = page.getByRole("region", { name: "Findings" });
	await expect(findings).toContainText("Cord in reach of children");
	await expect(findings).toContainText("last checked");
	await page.getByRole("button", { name: "Hang the cord as high as advised" }).click();
	await expect(inAll).toHaveText(String(Math.round(cord(1500))));

	await page.getByRole("button", { name: /^Cautions/ }).click();
	await page.getByRole("combobox", { name: "Cautions as in" }).selectOption({ label: "Ireland" });
	// Ireland's advice is read to be 1.6 m.
	await expect(inAll).toHaveText(String(Math.round(cord(1600))));
	await expect(page.getByText("National Standards Authority of Ireland").first()).toBeVisible();
	await page.getByRole("radiogroup", { name: "Hangs at" }).getByText("left", { exact: true }).click();
	await expect(
		page.getByText(/Tensioner on the left wall, 50 mm from its left corner, 1600 mm above the floor/),
	).toBeVisible();
});

test("the elevation's bands of cables are switched off and on", async ({ page }) => {
	await openExample(page, "Quay Cottage");
	await page.getByText("Elevation", { exact: true }).click();
	const board = page.locator("[data-elevation] canvas").first();
	await expect(board).toBeVisible();
	const picture = () => board.evaluate((canvas: HTMLCanvasElement) => canvas.toDataURL());
	const shown = await picture();
	const toggle = page.getByRole("checkbox", { name: "Show where cables may run" });
	await expect(toggle).toBeChecked();
	await toggle.click();
	await expect.poll(picture).not.toBe(shown);
	await toggle.click();
	await expect.poll(picture).toBe(shown);
});

test("on a phone every hole near a corner says that cables may run there", async ({ page }) => {
	await page.setViewportSize({ width: 390, height: 844 });
	await openOnPhone(page, "Quay Cottage", "Marks");
	await expect(page.getByText("every hole may lie where cables run along the top of the wall")).toBeVisible();
	await page.getByRole("button", { name: /^Cautions/ }).click();
	await expect(page.getByText("Cords in Great Britain")).toBeAttached();
});

async function price(page: Page, part: string, text: string): Promise<void> {
	const field = page.getByRole("textbox", { name: `Price of one: ${part}` });
	await field.fill(text);
	await field.press("Enter");
}
