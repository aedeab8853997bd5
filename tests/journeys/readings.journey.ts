import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { cut, expect, openExample, test, withoutPickers } from "./app.ts";
import { cutLength, whole } from "./by-hand.ts";

const track = { projection: 40, radius: 310, start: 50, end: 850, takeUp: 200 };

/** Two right triangles of 900, 1200 and 1500 side by side make a square bay: exact readings, with no error in any of them. */
const exact = [
	"kind,wall,corner,from,to,value",
	"run,left,,,,900",
	"run,front,,,,1200",
	"run,right,,,,900",
	"diagonal,,,left end,2,1500",
	"diagonal,,,1,right end,1500",
	"diagonal,,,left end,right end,1200",
	"angle,,1,,,90",
].join("\n");
const taped = whole(cutLength({ runs: [900, 1200, 900], angles: [90, 90] }, track));

test("readings come from a file, close, and make the bay; one taken wrongly is named and taken again", async ({
	page,
}) => {
	await withoutPickers(page);
	await openExample(page, "Quay Cottage");
	await readings(page, "taped.csv", exact);
	const panel = page.getByRole("tabpanel", { name: "Survey", exact: true });
	await expect(panel.getByText("7 taped")).toBeAttached();
	await expect(panel.getByRole("status")).toHaveText(/^Closes within 0 mm\.$/);
	await expect(cut(page)).toHaveText(taped);

	const diagonal = page.getByRole("textbox", { name: "Diagonal 1–right end" });
	await diagonal.fill("1540");
	await diagonal.press("Enter");
	await expect(panel.getByRole("status")).toContainText("diagonal 1–right end disagrees by 40 mm");
	await page.getByRole("button", { name: "Remove the diagonal 1–right end" }).click();
	await expect(panel.getByRole("status")).toHaveText(/^Closes within 0 mm\.$/);
	await expect(cut(page)).toHaveText(taped);
});

test("a reading is added by its kind and place, and all are saved as they were read", async ({ page }) => {
	await withoutPickers(page);
	await openExample(page, "Quay Cottage");
	await page.getByText("Add another reading").click();
	await page.getByRole("combobox", { name: "Kind" }).selectOption({ label: "Chord at a corner" });
	await page.getByRole("combobox", { name: "Corner" }).selectOption({ label: "Corner 2" });
	const chord = page.getByRole("textbox", { name: "Chord at corner 2" });
	// A chord between arms of 600 cannot be as long as both.
	await chord.fill("1300");
	await chord.press("Enter");
	await expect(page.getByText(/1199/)).toBeVisible();
	await chord.fill("848.5");
	await chord.press("Enter");
	await expect(page.getByText("1 taped")).toBeAttached();
	const loading = page.waitForEvent("download");
	await page.getByRole("button", { name: "Save readings to a file" }).click();
	const file = await loading;
	expect(file.suggestedFilename()).toBe("quay-cottage-readings.csv");
	expect(await readFile(await file.path(), "utf8")).toBe(
		"kind,wall,corner,from,to,arm,at,value,sd\r\nchord,,2,,,600,,848.5,\r\n",
	);
});

test("a file with a bad line adds nothing and says which", async ({ page }) => {
	await withoutPickers(page);
	await openExample(page, "Quay Cottage");
	await readings(page, "smudged.csv", exact.replace("left end,2,1500", "left end,2,smudge"));
	const sheet = page.getByRole("dialog", { name: "smudged.csv could not be read" });
	await expect(sheet.getByRole("listitem")).toHaveCount(1);
	await expect(sheet.getByRole("listitem")).toContainText("line 5, value");
	await expect(page.getByText("nothing taped")).toBeAttached();
});

async function readings(page: Page, name: string, text: string): Promise<void> {
	const choosing = page.waitForEvent("filechooser");
	await page.getByRole("button", { name: "Add readings from a file" }).click();
	await (await choosing).setFiles({ name, mimeType: "text/csv", buffer: Buffer.from(text) });
}
