import type { Page } from "@playwright/test";
import { cut, expect, onPage, settled, test, view } from "./app.ts";
import { cutLength, isClearOfHalf, tape, type Walls, whole } from "./by-hand.ts";

type Corner = readonly [x: number, y: number];

// A new bay gets the light corded track: projection 40, radius 310, from end to end; 100 mm for each end pulley (common
// practice, no source).
const cutByHand = (walls: Walls): number =>
	cutLength(walls, { projection: 40, radius: 310, start: 0, end: walls.runs.at(-1) ?? 0, takeUp: 200 });

/** px within which something draws what is drawn to it, and half a pixel of the hand's. */
const DRAWN = 9 + 0.5;

test("a square bay drawn by mouse from corner to corner", async ({ page }) => {
	await start(page, "Tape it");
	const wished: Corner[] = [
		[0, -300],
		[0, 400],
		[1700, 400],
		[1700, -300],
	];
	// The first wall is drawn, the others are clicked from corner to corner.
	const [first, second, ...rest] = await Promise.all(wished.map((corner) => onPage(page, corner)));
	if (!first || !second) throw new Error("two corners are needed");
	await drag(page, first, second);
	for (const { x, y } of rest) {
		await page.mouse.move(x - 20, y - 4);
		await page.mouse.move(x, y);
		await page.mouse.click(x, y);
	}
	await page.getByRole("button", { name: "Done" }).click();
	await isSquare(page, wished);
});

test.describe("on a tablet", () => {
	test.use({ viewport: { width: 1024, height: 768 }, hasTouch: true, isMobile: true });

	test("a square bay drawn with a finger", async ({ page }) => {
		await start(page, "Tape it");
		const wished: Corner[] = [
			[0, -200],
			[0, 700],
			[2000, 700],
			[2000, -200],
		];
		const devtools = await page.context().newCDPSession(page);
		const finger = (type: "touchStart" | "touchMove" | "touchEnd", ...touchPoints: Place[]) =>
			devtools.send("Input.dispatchTouchEvent", { type, touchPoints });
		const [first, second, ...rest] = await Promise.all(wished.map((corner) => onPage(page, corner)));
		if (!first || !second) throw new Error("two corners are needed");
		await finger("touchStart", first);
		for (const share of [0.2, 0.6, 1.1, 1]) {
			const [x, y] = [first.x + (second.x - first.x) * share, first.y + (second.y - first.y) * share];
			await finger("touchMove", { x, y });
		}
		await finger("touchEnd");
		for (const at of rest) {
			await finger("touchStart", at);
			await finger("touchEnd");
		}
		await page.getByRole("button", { name: "Done" }).tap();
		await isSquare(page, wished);
	});
});

test("a splayed bay typed as it is read out, run, angle, run, by keyboard alone", async ({ page }) => {
	await page.goto("./");
	await expect(page.getByRole("button", { name: /^Tape it/ })).toBeVisible();
	await tabTo(page, /^Tape it/);
	await page.keyboard.press("Enter");
	await settled(page);
	await expect(page.getByRole("application", { name: /^Plan of/ })).toBeFocused();
	await page.keyboard.type("900");
	await page.keyboard.press("Enter");
	for (const [angle, run] of [
		["135", "1.8 m"],
		["135", "90cm"],
	] as const) {
		await page.keyboard.press("Tab");
		await page.keyboard.type(angle);
		await page.keyboard.press("Tab");
		await page.keyboard.type(run);
		await page.keyboard.press("Enter");
	}
	await page.keyboard.press("Enter");

	const walls: Walls = { runs: [900, 1800, 900], angles: [135, 135] };
	const byHand = cutByHand(walls);
	expect(isClearOfHalf(byHand)).toBe(true);
	await expect(cut(page)).toHaveText(whole(byHand));
	expect(await shown(page)).toEqual(walls);
	await expect(page.getByRole("radio", { name: "Select", exact: true })).toBeChecked();
	// Each wall was one step; levelling the front was the last.
	const undo = page.getByRole("button", { name: /^Undo/ });
	await expect(undo).toHaveAccessibleName("Undo: turn the front level");
	for (let steps = 0; steps < 4; steps++) await page.keyboard.press("Control+z");
	await expect(undo).toBeDisabled();
	await expect(page.getByText("Nothing to cut yet")).toBeVisible();
});

test("what stands typed when drawing is done is a wall too, and the front lies level then", async ({ page }) => {
	await start(page, "Tape it");
	await page.keyboard.type("800");
	await page.keyboard.press("Enter");
	await page.keyboard.type("1500");
	await page.keyboard.press("Tab");
	await page.keyboard.type("120");
	await page.keyboard.press("Enter");
	await page.getByRole("textbox", { name: "Run", exact: true }).fill("700");
	await page.getByRole("textbox", { name: "Angle", exact: true }).fill("140");
	await page.getByRole("button", { name: "Done" }).click();
	const walls: Walls = { runs: [800, 1500, 700], angles: [120, 140] };
	const byHand = cutByHand(walls);
	expect(isClearOfHalf(byHand)).toBe(true);
	await expect(cut(page)).toHaveText(whole(byHand));
	expect(await shown(page)).toEqual(walls);
	await expect(page.getByRole("button", { name: /^Undo/ })).toHaveAccessibleName("Undo: turn the front level");
});

test("an irregular five-sided bay dragged out of a plain square one", async ({ page }) => {
	await start(page, "A plain square bay");
	for (let steps = 0; steps < 2; steps++) await page.getByRole("button", { name: "Zoom out", exact: true }).click();
	// With Shift nothing draws what is dragged: it stays where it is put, on whole millimetres.
	await page.keyboard.down("Shift");
	const tool = (name: string) => page.getByRole("radiogroup", { name: "Tools" }).getByText(name, { exact: true });
	await tool("Corner").click();
	const leftCorner = await pull(page, [0, 350], [-500, 420]);
	const rightCorner = await pull(page, [1800, 350], [2330, 300]);
	await tool("Select").click();
	const left = await pull(page, [0, 0], [-610, -260]);
	const right = await pull(page, [1800, 0], [2480, -330]);
	const { scale } = await view(page);
	// The front wall by its bar: on the wall's outer line, 110 mm as drawn, a finger to the left of the bow's grip.
	const middle = await onPage(page, [900, 810]);
	await drag(page, { x: middle.x - 48, y: middle.y }, { x: middle.x - 40, y: middle.y - 15 });
	await page.keyboard.up("Shift");
	const out = Math.round(15 / scale);

	const walls = tape([left, leftCorner, [0, 700 + out], [1800, 700 + out], rightCorner, right]);
	expect(walls.runs).toHaveLength(5);
	const byHand = cutByHand(walls);
	// Where a place falls between two whole millimetres may go either way.
	expect(Math.abs(Number(await cut(page).textContent()) - byHand)).toBeLessThan(2);
	const seen = await shown(page);
	for (const [wall, run] of walls.runs.entries()) expect(Math.abs((seen.runs[wall] ?? 0) - run)).toBeLessThan(1.5);
	for (const [corner, angle] of walls.angles.entries())
		expect(Math.abs((seen.angles[corner] ?? 0) - angle)).toBeLessThan(0.2);
	// And to the figure, from what the table now says.
	expect(Math.abs(Number(await cut(page).textContent()) - cutByHand(seen))).toBeLessThan(1);

	const undo = page.getByRole("button", { name: /^Undo/ });
	for (let steps = 0; steps < 5; steps++) await undo.click();
	await expect(undo).toBeDisabled();
	await expect(cut(page)).toHaveText(whole(cutByHand({ runs: [700, 1800, 700], angles: [90, 90] })));
});

async function start(page: Page, card: string): Promise<void> {
	await page.goto("./");
	await page.getByRole("button", { name: new RegExp(`^${card}`) }).click();
	await settled(page);
}

/** By Tab alone, as far as it takes. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
	for (let presses = 0; presses < 20; presses++) {
		await page.keyboard.press("Tab");
		const label = await page.evaluate(() => document.activeElement?.textContent ?? "");
		if (name.test(label)) return;
	}
	throw new Error(`Tab does not come to ${name}`);
}

interface Place {
	readonly x: number;
	readonly y: number;
}

async function drag(page: Page, from: Place, to: Place): Promise<void> {
	await page.mouse.move(from.x, from.y);
	await page.mouse.down();
	await page.mouse.move(from.x + (to.x - from.x) / 3, from.y + (to.y - from.y) / 2, { steps: 3 });
	await page.mouse.move(to.x, to.y, { steps: 3 });
	await page.mouse.up();
}

/** Drags what lies at one place of the plan (mm) to another; where it came to lie, which is whole pixels from there. */
async function pull(page: Page, from: Corner, to: Corner): Promise<Corner> {
	const { scale } = await view(page);
	const [a, b] = [await onPage(page, from), await onPage(page, to)];
	await drag(page, a, b);
	return [from[0] + (b.x - a.x) / scale, from[1] - (b.y - a.y) / scale];
}

/** Runs and angles as the table shows them. */
async function shown(page: Page): Promise<Walls> {
	const fields = await page.locator(".side input").evaluateAll((inputs) =>
		inputs.map((input) => ({
			name: (input as HTMLInputElement).labels?.[0]?.textContent ?? "",
			value: Number.parseFloat((input as HTMLInputElement).value),
		})),
	);
	const named = (name: RegExp) => fields.filter((field) => name.test(field.name)).map(({ value }) => value);
	return { runs: named(/^(Left wall|Front wall|Right wall|Wall .*)$/), angles: named(/^Corner \d+$/) };
}

/** Three walls at right angles, as long as they were drawn to what draws them there, on whole 5 mm. */
async function isSquare(page: Page, wished: readonly Corner[]): Promise<void> {
	await expect(page.getByRole("radio", { name: "Select", exact: true })).toBeChecked();
	const { scale } = await view(page);
	const walls = await shown(page);
	expect(walls.angles).toEqual([90, 90]);
	for (const [wall, run] of tape(wished).runs.entries()) {
		const drawn = walls.runs[wall] ?? 0;
		expect(drawn % 5).toBe(0);
		// An end of each wall may have been drawn to something, in the view of the drawing or a closer one.
		expect(Math.abs(drawn - run)).toBeLessThan((4 * DRAWN) / scale);
	}
	expect(walls.runs).toHaveLength(3);
	const byHand = cutByHand(walls);
	expect(isClearOfHalf(byHand)).toBe(true);
	await expect(cut(page)).toHaveText(whole(byHand));
}
