import type { Page } from "@playwright/test";
import { exampleFile, expect, openOnPhone, test } from "./app.ts";
import { bend, cutLength, isClearOfHalf, tape, whole } from "./by-hand.ts";
import { isFaultless } from "./faultless.ts";

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

const bay = exampleFile("saltmarsh-house").bays[0];
const track = { projection: 40, radius: 310, start: 60, end: 840, takeUp: 200 };
const walls = tape(bay.corners);
const atCorner = bend(walls.angles[0] as number, track.projection, track.radius);

const row = (page: Page, title: string) =>
	page.getByRole("listitem").filter({ has: page.getByText(title, { exact: true }) });
const box = (page: Page, name: string) => page.getByRole("checkbox", { name: `tick ${name}`, exact: true });
/** The browser's own box is out of sight; a finger taps the drawn one. */
const drawnBox = (page: Page, name: string) => page.locator("label").filter({ has: box(page, name) });
const tickOff = (page: Page, name: string) => drawnBox(page, name).tap();

test("marks are ticked off one by one, and stay ticked after a reload", async ({ page }) => {
	await openOnPhone(page, "Saltmarsh House", "Marks");
	const pin = bay.track.brackets[0];
	// Pinned on the left wall, nearer to its right corner: taped from there.
	const run = walls.runs[0] as number;
	expect(pin.wall).toBe(0);
	const second = row(page, "Bracket 2");
	await expect(second.locator(".mark-figure")).toHaveText(whole(run - pin.at));
	await expect(second).toContainText("from corner 1");
	await expect(second).toContainText(`${whole(pin.at)} from the left end`);
	expect(isClearOfHalf(atCorner.sweep) && isClearOfHalf(atCorner.setBack)).toBe(true);
	const first = row(page, "Bend 1");
	await expect(first.locator(".mark-figure")).toHaveText(whole(atCorner.sweep));
	await expect(first).toContainText(`radius 310, starts ${whole(atCorner.setBack)} before corner 1`);

	const count = page.getByRole("region", { name: "Marks" }).getByRole("status");
	const all = await page.getByRole("checkbox").count();
	await expect(count).toHaveText(`0 of ${all}`);
	await page.getByRole("button", { name: "Next: bracket 1" }).tap();
	await tickOff(page, "bracket 1");
	await tickOff(page, "bracket 2");
	await expect(count).toHaveText(`2 of ${all}`);
	await expect(page.getByRole("button", { name: "Next: bracket 3" })).toBeVisible();
	await page.getByRole("button", { name: "Undo: tick bracket 2" }).tap();
	await expect(box(page, "bracket 2")).not.toBeChecked();
	await tickOff(page, "bend 1");
	await expect(count).toHaveText(`2 of ${all}`);

	await expect(page.locator(".saved")).toHaveText("Saved");
	await page.reload();
	await expect(box(page, "bracket 1")).toBeChecked();
	await expect(box(page, "bracket 2")).not.toBeChecked();
	await expect(box(page, "bend 1")).toBeChecked();
	await expect(count).toHaveText(`2 of ${all}`);
});

test("Next goes to the first mark that is not ticked and shows it", async ({ page }) => {
	await openOnPhone(page, "Saltmarsh House", "Strip");
	await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
	await page.getByRole("button", { name: "Next: bracket 1" }).tap();
	await expect(row(page, "Bracket 1")).toBeInViewport();
	await expect(row(page, "Bracket 1")).toHaveAttribute("data-next", "true");
	for (let number = 1; number <= 8; number++) {
		const next = page.getByRole("button", { name: /^Next: / });
		const name = (await next.textContent())?.slice("Next: ".length) ?? "";
		await next.tap();
		await expect(drawnBox(page, name)).toBeInViewport();
		await tickOff(page, name);
	}
	// Eight marks on, the ninth is far down the list; scrolled away from and asked for again, it is in sight.
	await page.getByRole("button", { name: /^Next: / }).tap();
	await page.evaluate(() => scrollTo(0, 0));
	await page.getByRole("button", { name: /^Next: / }).tap();
	const shown = page.locator("[data-next]");
	await expect(shown).toHaveCount(1);
	await expect
		.poll(async () => {
			const place = await shown.boundingBox();
			const bar = await page.getByRole("navigation", { name: "Shortcuts" }).boundingBox();
			return place !== null && bar !== null && place.y > 48 && place.y + place.height < bar.y;
		})
		.toBe(true);
});

test("a bracket moved after it was ticked says so, and the plan can be kept to the hole", async ({ page }) => {
	await openOnPhone(page, "Saltmarsh House", "Marks");
	await tickOff(page, "bracket 2");
	await page.getByRole("tab", { name: "Plan", exact: true }).tap();
	await page.getByRole("button", { name: "Brackets" }).tap();
	await page.getByRole("button", { name: "Bracket 2", exact: true }).tap();
	const from = page.getByRole("textbox", { name: "From left corner" });
	const before = bay.track.brackets[0].at as number;
	await from.fill(String(before - 25));
	await from.press("Enter");
	await page.getByRole("tab", { name: "Marks", exact: true }).tap();
	const run = walls.runs[0] as number;
	await expect(box(page, "bracket 2")).not.toBeChecked();
	await expect(row(page, "Bracket 2")).toContainText(
		`moved since it was ticked: was ${whole(run - before)}, now ${whole(run - before + 25)}`,
	);
	await page.getByRole("button", { name: "Keep bracket 2 where it is" }).tap();
	await expect(box(page, "bracket 2")).toBeChecked();
	await expect(row(page, "Bracket 2").locator(".mark-figure")).toHaveText(whole(run - before));
});

test("the strip is read from either cut end, the cut length largest", async ({ page }) => {
	await openOnPhone(page, "Saltmarsh House", "Strip");
	const piece = page.getByRole("region", { name: "Piece A" });
	const byHand = cutLength(walls, track);
	expect(isClearOfHalf(byHand)).toBe(true);
	await expect(piece.locator(".piece-cut")).toContainText(whole(byHand));
	const takeUp = track.takeUp / 2;
	const starts = (walls.runs[0] as number) - track.start - takeUp - atCorner.setBack;
	const line = (words: string) => piece.getByRole("listitem").filter({ hasText: words });
	await expect(line("bend starts, corner 1").locator(".tape-figure")).toHaveText(whole(starts));
	await page.getByText("right cut end", { exact: true }).tap();
	// From the right the first bend is the last one met, and starts where it ended.
	const fromRight = byHand - starts - atCorner.sweep;
	expect(isClearOfHalf(fromRight)).toBe(true);
	await expect(line("bend starts, corner 1").locator(".tape-figure")).toHaveText(whole(fromRight));
	const sizes = await page
		.locator("main :not(:has(*))")
		.evaluateAll((all) => all.map((each) => Number.parseFloat(getComputedStyle(each).fontSize)));
	const cut = await piece
		.locator(".piece-cut .figure")
		.evaluate((figure) => Number.parseFloat(getComputedStyle(figure).fontSize));
	expect(Math.max(...sizes)).toBe(cut);
});

test("a refused plan shows what stands in the way first, and its remedy brings the marks", async ({ page }) => {
	await openOnPhone(page, "The Pepperpot", "Marks");
	await expect(page.getByRole("main").getByText("Do not cut or drill")).toBeVisible();
	await expect(page.getByRole("checkbox")).toHaveCount(0);
	const findings = page.getByRole("region", { name: "Findings" });
	await expect(findings).toBeInViewport();
	await findings.locator(".remedies").getByRole("button").first().tap();
	await expect(page.getByRole("checkbox", { name: "tick bracket 1", exact: true })).toBeVisible();
	await expect(page.getByRole("button", { name: "Next: bracket 1" })).toBeVisible();
});

test("cautions are one tap away, the system's own instructions before all", async ({ page }) => {
	await openOnPhone(page, "Saltmarsh House", "Marks");
	await page.getByRole("button", { name: /^Cautions \(\d+\)$/ }).tap();
	const sheet = page.getByRole("dialog", { name: "Cautions" });
	await expect(sheet.locator(".cautions dd").first()).toContainText("local codes and licensed trades come first");
	for (const about of ["Cables and pipes", "Ladders", "Eyes", "Cut ends", "Cords and children"])
		await expect(sheet.getByText(about, { exact: true })).toBeVisible();
});

for (const size of [
	{ width: 390, height: 844 },
	{ width: 360, height: 640 },
	{ width: 640, height: 360 },
]) {
	test(`at ${size.width} × ${size.height} nothing runs off and a finger finds every button`, async ({ page }) => {
		await page.setViewportSize(size);
		await openOnPhone(page, "Orchard Lodge", "Marks");
		for (const view of ["Tape", "Marks", "Strip", "Plan", "Corner"]) {
			await page.getByRole("tab", { name: view, exact: true }).tap();
			await expect(page.getByText("One moment…")).toHaveCount(0);
			expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(size.width);
			const targets = page.locator(".tab, .mark-tick, .phone-bar button, .strip-view .choice-option, .taking button");
			for (const box of await targets.evaluateAll((all) => all.map((each) => each.getBoundingClientRect())))
				expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44);
		}
	});
}

test("nothing is found wrong with any view", async ({ page }) => {
	await openOnPhone(page, "Saltmarsh House", "Marks");
	await tickOff(page, "bracket 1");
	for (const view of ["Tape", "Marks", "Strip", "Plan", "Corner"]) {
		await page.getByRole("tab", { name: view, exact: true }).tap();
		await expect(page.getByText("One moment…")).toHaveCount(0);
		await isFaultless(page);
	}
	await page.getByRole("button", { name: /^Cautions/ }).tap();
	await expect(page.getByRole("dialog", { name: "Cautions" })).toBeVisible();
	await isFaultless(page);
});

test("nor with a refused bay", async ({ page }) => {
	await openOnPhone(page, "The Pepperpot", "Marks");
	await isFaultless(page);
});
