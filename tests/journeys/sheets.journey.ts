import { readFile } from "node:fs/promises";
import type { Download, Page } from "@playwright/test";
import { readZip } from "../oracles/zip.ts";
import { type ReadPage, readPdf } from "../units/sheets/read-pdf.ts";
import { exampleFile, expect, openExample, openOnPhone, test, toStage, withoutPickers } from "./app.ts";
import { cutLength } from "./by-hand.ts";
import { isFaultless } from "./faultless.ts";

/** Quay Cottage: a square bay of 900, 1800 and 900, its track from 50 on the left wall to 850 on the right; end pulleys take 100 each. */
const cutByHand = cutLength(
	{ runs: [900, 1800, 900], angles: [90, 90] },
	{ projection: 40, radius: 310, start: 50, end: 850, takeUp: 200 },
).toFixed(1);

const panel = (page: Page) => page.getByRole("tabpanel", { name: "Sheets", exact: true });
const board = (page: Page) => page.getByRole("region", { name: "Pages", exact: true });
const small = (page: Page) => page.getByRole("navigation", { name: "Pages of the pack" }).getByRole("button");

/** Opens the stage and waits until the sheets stand. */
async function openSheets(page: Page, example: string): Promise<void> {
	await withoutPickers(page);
	await openExample(page, example);
	await toStage(page, "Sheets");
	await standing(page);
}

/** The page at hand is drawn, of the job as it is now. */
async function standing(page: Page): Promise<void> {
	await expect(board(page).locator(".page-large .page-image[data-fresh] img")).toBeVisible({ timeout: 20_000 });
}

async function saved(page: Page, name: string): Promise<Download> {
	const loading = page.waitForEvent("download", { timeout: 30_000 });
	await page.getByRole("button", { name, exact: true }).click();
	return loading;
}

const bytesOf = async (file: Download) => new Uint8Array(await readFile(await file.path()));

const wordsOf = ({ texts }: ReadPage) => texts.map(({ text }) => text).join(" ");

/** What the bar across measures on the paper: of the lines just under its "100 mm" and about as long, mm. */
function barsAcross({ texts, strokes }: ReadPage): number[] {
	return texts
		.filter(({ text, turn }) => text === "100 mm" && Math.abs(turn) < 1e-6)
		.flatMap(({ x, y, width }) => {
			const lengths = strokes.flatMap(({ points, width: line }) => {
				const [[fromX, fromY], [toX, toY]] = [points[0], points.at(-1)] as [[number, number], [number, number]];
				const level = Math.abs(fromY - toY) < 1e-6 && fromY > y && fromY - y < 4;
				const centred = Math.abs((fromX + toX) / 2 - (x + width / 2)) < 0.5;
				const long = Math.abs(toX - fromX);
				return line !== null && level && centred && long > 80 && long < 130 ? [long] : [];
			});
			return lengths.length === 0 ? [] : [Math.max(...lengths)];
		});
}

test("the pack is saved as one PDF: the pages that are shown, true to size, with the plan's figures", async ({
	page,
}) => {
	await openSheets(page, "Quay Cottage");
	const shown = await small(page).allTextContents();
	await expect(panel(page)).toContainText(`${shown.length} pages in one pack`);
	const file = await saved(page, "Save PDF");
	expect(file.suggestedFilename()).toBe("quay-cottage-sheets.pdf");
	const { pages } = await readPdf(await bytesOf(file));
	expect(pages.map(({ label }) => label)).toEqual(shown);
	for (const { width, height } of pages) {
		// A4. Source: ISO 216.
		expect([width, height].map((mm) => Math.round(mm * 10) / 10)).toEqual([210, 297]);
	}
	expect(pages.some((each) => wordsOf(each).includes(cutByHand))).toBe(true);
	const bars = pages.flatMap(barsAcross);
	expect(bars.length).toBeGreaterThanOrEqual(2);
	for (const bar of bars) expect(bar).toBeCloseTo(100, 3);
});

test("a printer whose bars measure 98.5 mm is given so much longer ones; what no printer does is refused", async ({
	page,
}) => {
	await openSheets(page, "Quay Cottage");
	for (const sheet of ["Survey sheet", "Fitting sheet", "Strip sheet", "Order", "Hand-over sheet"])
		await panel(page).getByText(sheet, { exact: true }).click();
	await panel(page)
		.getByRole("button", { name: /^The printer/ })
		.click();
	const across = page.getByRole("textbox", { name: "100 mm bar across" });
	await across.fill("72");
	await across.press("Enter");
	await expect(page.getByRole("alert")).toHaveText("72 is out of reach: write a number from 80 to 120.");
	await across.fill("98.5");
	await across.press("Enter");
	await expect(panel(page)).toContainText("True-size pages are corrected for this printer");
	await standing(page);
	const file = await saved(page, "Save PDF");
	expect(file.suggestedFilename()).toBe("quay-cottage-bends.pdf");
	const bars = (await readPdf(await bytesOf(file))).pages.flatMap(barsAcross);
	expect(bars.length).toBeGreaterThanOrEqual(2);
	// The printer makes 98.5 of 100: of 100 / 0.985 it makes 100.
	for (const bar of bars) expect(bar * 0.985).toBeCloseTo(100, 3);

	// It is the printer's, not the job's: it is there again after a reload.
	await page.reload();
	await expect(page.getByRole("textbox", { name: "100 mm bar across" })).toHaveValue("98.5");
	// The bar of the corrected print reads 99.8: the printer makes 98.5 × 0.998 = 98.3 of 100, not 99.8.
	const again = page.getByRole("textbox", { name: "Corrected bar across" });
	await again.fill("99.8");
	await again.press("Enter");
	await expect(across).toHaveValue("98.3");
	await expect(again).toHaveValue("");
	await expect(panel(page)).toContainText("of 100 mm it makes 98.3 across and 100 down");
	await page.getByRole("button", { name: "No correction" }).click();
	await expect(page.getByRole("textbox", { name: "100 mm bar across" })).toHaveValue("100");
});

test("pages turn by key and by button, follow the job, and make way for the plan", async ({ page }) => {
	await openSheets(page, "Quay Cottage");
	const status = board(page).getByRole("status");
	await expect(status).toHaveText(/^Survey sheet page 1 of \d+$/);
	await board(page).getByRole("region", { name: "Page at hand" }).focus();
	await page.keyboard.press("ArrowRight");
	await expect(status).toHaveText(/page 2 of/);
	await page.keyboard.press("End");
	await expect(status).toHaveText(/^Hand-over sheet page (\d+) of \1$/);
	await expect(page.getByRole("button", { name: "Next page" })).toBeDisabled();
	await page.getByRole("button", { name: "Previous page" }).click();
	await expect(small(page).nth(-2)).toHaveAttribute("aria-current", "page");
	await page.keyboard.press("Home");
	await expect(status).toHaveText(/page 1 of/);
	await page.getByText("Width", { exact: true }).click();
	const image = board(page).locator(".page-large .page-image");
	const place = board(page).locator(".page-large");
	await expect
		.poll(
			async () =>
				(await place.evaluate((each) => each.clientWidth)) - (await image.evaluate((each) => each.clientWidth)),
		)
		.toBeLessThan(60);

	// The title of the job stands on every page.
	const before = await image.locator("img").getAttribute("src");
	const title = page.getByRole("textbox", { name: "Title of the job" });
	await title.fill("Quay House");
	await title.press("Enter");
	await expect(image.locator("img")).not.toHaveAttribute("src", before as string);
	await expect
		.poll(() =>
			image
				.locator("img")
				.evaluate(async (each: HTMLImageElement) => (await (await fetch(each.src)).text()).includes("Quay House")),
		)
		.toBe(true);

	await page.getByText("Plan", { exact: true }).click();
	await expect(page.getByRole("application", { name: "Plan of" })).toBeVisible();
	await expect(board(page)).toHaveCount(0);
});

test("drawings and tables come in a ZIP, a single one as it is; making them is called off at once", async ({
	page,
}) => {
	await openSheets(page, "Quay Cottage");
	const tables = await saved(page, "Save CSV");
	expect(tables.suggestedFilename()).toBe("quay-cottage-sheets-csv.zip");
	const files = readZip(await bytesOf(tables));
	expect(files.size).toBeGreaterThan(2);
	for (const name of files.keys()) expect(name).toMatch(/^quay-cottage-recess-[a-z0-9-]+\.csv$/);
	expect([...files.values()].some((text) => text.includes(cutByHand))).toBe(true);
	const drawings = readZip(await bytesOf(await saved(page, "Save DXF")));
	expect(drawings.size).toBeGreaterThan(1);
	expect([...drawings.values()].some((text) => text.includes("LWPOLYLINE"))).toBe(true);
	for (const text of drawings.values()) expect(text.trim()).toMatch(/EOF$/);

	let downloads = 0;
	page.on("download", () => downloads++);
	await page.getByRole("button", { name: "Save PDF" }).click();
	await page.getByRole("button", { name: "Cancel" }).click();
	await expect(page.getByRole("progressbar")).toHaveCount(0);
	await expect(page.getByRole("button", { name: "Save PDF" })).toBeEnabled();
	await expect.poll(() => page.workers().length).toBe(1);
	expect(downloads).toBe(0);
});

test("of a bay that no track fits there are the sheets to tape it with, and why no others", async ({ page }) => {
	await openSheets(page, "The Pepperpot");
	await expect(page.getByRole("checkbox", { name: "Survey sheet" })).toBeChecked();
	for (const none of ["Bend templates", "Strip sheet", "Hand-over sheet"]) {
		await expect(page.getByRole("checkbox", { name: none })).toHaveCount(0);
		await expect(page.getByRole("listitem").filter({ hasText: none })).toContainText("No track fits yet.");
	}
	const { pages } = await readPdf(await bytesOf(await saved(page, "Save PDF")));
	expect(pages).toHaveLength(await small(page).count());
});

test("nothing is found wrong with the pages and their controls", async ({ page }) => {
	await openSheets(page, "Quay Cottage");
	await isFaultless(page);
});

test.describe("on a phone", () => {
	test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

	test("the PDF opens", async ({ page, context }) => {
		await withoutPickers(page);
		await openOnPhone(page, "Quay Cottage", "Plan");
		// Nobody waits on a phone for sheets that are folded away.
		expect(page.workers()).toHaveLength(0);
		await page.getByRole("button", { name: /^Sheets/ }).click();
		const open = page.getByRole("button", { name: "Open the PDF" });
		await expect(open).toBeEnabled({ timeout: 20_000 });
		await isFaultless(page);
		const bytes = (await page.evaluate(() => navigator.pdfViewerEnabled)) ? await inTab() : await fetched();
		const { pages } = await readPdf(bytes);
		await expect(page.getByText(`${pages.length} pages in one pack`)).toBeVisible();
		expect(wordsOf(pages[0] as ReadPage)).toContain(exampleFile("quay-cottage").title);

		async function inTab() {
			const opening = context.waitForEvent("page");
			await open.click();
			const tab = await opening;
			await expect.poll(() => tab.url(), { timeout: 30_000 }).toMatch(/^blob:/);
			const read = async (url: string) => [...new Uint8Array(await (await fetch(url)).arrayBuffer())];
			return new Uint8Array(await page.evaluate(read, tab.url()));
		}

		/** A browser that shows no PDF by itself fetches it for one that does. */
		async function fetched() {
			const file = await saved(page, "Open the PDF");
			expect(file.suggestedFilename()).toBe("quay-cottage-sheets.pdf");
			return bytesOf(file);
		}
	});
});
