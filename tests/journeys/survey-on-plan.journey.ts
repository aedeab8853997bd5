import type { Page } from "@playwright/test";
import { expect, openExample, openOnPhone, test, toStage, watchWriting } from "./app.ts";

const KEY = /^ellipses × (\d+|0\.\d+), 95 %$/;

test("the plan shows which reading disagrees and by how much, until it is left out; ellipses go with the stage", async ({
	page,
}) => {
	await watchWriting(page);
	await openExample(page, "Sluice Cottage");
	// 38.7: what the diagonal 1–4 is longer than its bay, worked out beside in tests/units/app/survey-on-plan.test.ts.
	await expect.poll(() => written(page)).toContain("off by 39 mm");
	await expect.poll(async () => (await written(page)).filter((text) => KEY.test(text))).toHaveLength(1);

	// Readings that do not agree are shown whatever is at hand.
	await toStage(page, "Track");
	await expect.poll(() => written(page)).toContain("off by 39 mm");

	await page.getByRole("button", { name: "Leave out the diagonal 1–4" }).click();
	await expect.poll(() => written(page)).not.toContain("off by 39 mm");
	await expect
		.poll(async () => (await written(page)).filter((text) => KEY.test(text) || /^out by/.test(text)))
		.toEqual([]);

	await toStage(page, "Survey");
	await expect.poll(async () => (await written(page)).filter((text) => KEY.test(text))).toHaveLength(1);
});

test("ellipses are drawn smaller by a round number as the plan is zoomed in", async ({ page }) => {
	await watchWriting(page);
	await openExample(page, "Ferry House");
	const times = async () => Number(KEY.exec((await written(page)).find((text) => KEY.test(text)) ?? "")?.[1]);
	await expect.poll(times).toBeGreaterThan(1);
	const first = await times();
	for (let i = 0; i < 3; i++) await page.getByRole("button", { name: "Zoom in", exact: true }).click();
	// 1.4 three times over is 2.74: one step of 1, 2, 5 at least, two at most.
	await expect.poll(async () => first / (await times())).toBeGreaterThanOrEqual(2);
	expect(first / (await times())).toBeLessThanOrEqual(5);
});

test("set-backs and brackets of a taped bay come with their ±", async ({ page }) => {
	await openExample(page, "Ferry House");
	await toStage(page, "Track");
	await expect(row(page, "Bracket 3").getByText(SURE)).toHaveCount(2);
	await expect(row(page, "Corner 1").getByText(SURE)).toHaveCount(1);
});

test("those of a bay that is only drawn come without", async ({ page }) => {
	await openExample(page, "Saltmarsh House");
	await toStage(page, "Track");
	await expect(row(page, "Bracket 3")).toBeVisible();
	await expect(row(page, "Bracket 3").getByText("±")).toHaveCount(0);
	await expect(row(page, "Corner 1").getByText("±")).toHaveCount(0);
});

test("on a phone the plan shows it too, over the readings under it", async ({ page }) => {
	await page.setViewportSize({ width: 390, height: 844 });
	await watchWriting(page);
	await openOnPhone(page, "Sluice Cottage", "Plan");
	await expect.poll(() => written(page)).toContain("off by 39 mm");
	await expect.poll(async () => (await written(page)).filter((text) => KEY.test(text))).toHaveLength(1);
});

const SURE = /^± \d\.\d$/;

/** A bracket's or a corner's row in its table. */
const row = (page: Page, name: string) =>
	page.getByRole("row").filter({ has: page.getByRole("button", { name, exact: true }) });

/** All that is written on the plan's drawing. */
async function written(page: Page): Promise<string[]> {
	return page.locator("[data-plan] canvas").evaluateAll((canvases) => {
		const { written: all } = window as unknown as { written: WeakMap<Element, { text: string }[]> };
		return canvases.flatMap((canvas) => (all.get(canvas) ?? []).map(({ text }) => text));
	});
}
