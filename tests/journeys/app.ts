import { readFileSync } from "node:fs";
import { test as base, expect, type Page } from "@playwright/test";

/** Every journey fails on a word of complaint in the console and on a failed request. */
export const test = base.extend<{ complaints: string[] }>({
	complaints: [
		async ({ page }, use) => {
			const complaints: string[] = [];
			page.on("console", (message) => {
				if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
			});
			page.on("pageerror", (error) => complaints.push(error.message));
			page.on("requestfailed", (request) => {
				const why = request.failure()?.errorText ?? "";
				// A page turned away from before its picture was drawn.
				if (request.url().startsWith("blob:") && why === "net::ERR_ABORTED") return;
				complaints.push(`${request.url()} could not be loaded: ${why}`);
			});
			await use(complaints);
			expect(complaints).toEqual([]);
		},
		{ auto: true },
	],
});

export { expect };

/** A job file of the examples folder, as it lies there. */
export function exampleFile(name: string) {
	return JSON.parse(readFileSync(new URL(`../../examples/${name}.baywright.json`, import.meta.url), "utf8"));
}

export async function openExample(page: Page, title: string): Promise<void> {
	await page.goto("./");
	await page.getByRole("button", { name: new RegExp(`^${title}`) }).click();
	await expect(page.getByRole("textbox", { name: "Title of the job" })).toHaveValue(title);
	await settled(page);
}

/** Opens an example on a phone and goes to one of its views. */
export async function openOnPhone(
	page: Page,
	title: string,
	view: "Tape" | "Marks" | "Strip" | "Plan" | "Corner",
): Promise<void> {
	await page.goto("./");
	await page.getByRole("button", { name: new RegExp(`^${title}`) }).click();
	await expect(page.getByRole("textbox", { name: "Title of the job" })).toHaveValue(title);
	await page.getByRole("tab", { name: view, exact: true }).click();
	if (view === "Plan") await settled(page);
}

/** The plan has taken its place: no view has changed for a moment. */
export async function settled(page: Page): Promise<void> {
	await page.evaluate(() => document.fonts.ready);
	let before = "";
	await expect(async () => {
		const { scale, left, top } = await view(page);
		const now = `${scale} ${left} ${top}`;
		const still = now === before;
		before = now;
		expect(still).toBe(true);
	}).toPass({ intervals: [100] });
}

/** px per mm, and where the plan's origin lies on the page, px. */
export async function view(page: Page) {
	return page.locator("[data-plan]").evaluate((plan: HTMLElement) => {
		const { left, top } = plan.getBoundingClientRect();
		const { scale, x, y } = plan.dataset;
		return { scale: Number(scale), left: left + Number(x), top: top + Number(y) };
	});
}

/** Where a point of the plan (mm) lies on the page, in whole px. */
export async function onPage(page: Page, [x, y]: readonly [number, number]) {
	const { scale, left, top } = await view(page);
	return { x: Math.round(left + x * scale), y: Math.round(top - y * scale) };
}

/** Goes to a stage of the job: its controls stand in the side column. */
export async function toStage(page: Page, name: string): Promise<void> {
	await page.getByRole("tab", { name, exact: true }).click();
	await expect(page.getByRole("tabpanel", { name, exact: true }).getByRole("heading").first()).toBeVisible();
}

/** The cut length on screen. */
export const cut = (page: Page) => page.getByRole("region", { name: "Cut", exact: true }).locator(".cut-figure");

/** The figures of a corner in the table: angle, radius, set-back, sweep, gap. */
export const cornerRow = (page: Page, corner: number) =>
	page
		.getByRole("row")
		.filter({ has: page.getByRole("button", { name: `Corner ${corner}`, exact: true }) })
		.getByRole("cell");

/** Notes what is written on every canvas, from before the app starts; `stripFigures` reads it. */
export async function watchWriting(page: Page): Promise<void> {
	await page.addInitScript(() => {
		const written = new WeakMap<HTMLCanvasElement, { text: string; left: number }[]>();
		const pen = CanvasRenderingContext2D.prototype;
		const { fillText, clearRect } = pen;
		pen.fillText = function (text, left, ...rest) {
			written.get(this.canvas)?.push({ text, left });
			fillText.call(this, text, left, ...rest);
		};
		pen.clearRect = function (...box) {
			written.set(this.canvas, []);
			clearRect.apply(this, box);
		};
		Object.assign(window, { written });
	});
}

/** The last figure that the strip shows, at its right end. */
export async function lastOnStrip(page: Page): Promise<string | undefined> {
	return page.locator("[data-strip] canvas").evaluate((canvas: HTMLCanvasElement) => {
		const { written } = window as unknown as { written: WeakMap<HTMLCanvasElement, { text: string; left: number }[]> };
		const all = [...(written.get(canvas) ?? [])];
		return all.sort((a, b) => b.left - a.left)[0]?.text;
	});
}

/** Files are picked and saved in the plain way: the browser's own pickers stand outside the page. */
export async function withoutPickers(page: Page): Promise<void> {
	await page.addInitScript(() => {
		Reflect.deleteProperty(window, "showSaveFilePicker");
		Reflect.deleteProperty(window, "showOpenFilePicker");
	});
}
