import type { Page } from "@playwright/test";
import { cut, exampleFile, expect, lastOnStrip, openExample, test, watchWriting } from "./app.ts";
import { whole } from "./by-hand.ts";
import { isFaultless } from "./faultless.ts";

// Saltmarsh House: three walls of 900, 1800 and 900 mm; every opening from 620 to 2050 above the floor, the front one from
// 150 to 1650 along its wall. Its track's height is not given: 100 above the highest head (common practice, no source).
const bay = exampleFile("saltmarsh-house").bays[0];
const front = bay.openings[1];
const runs = [0, 1, 2].map((i) =>
	Math.hypot(bay.corners[i + 1][0] - bay.corners[i][0], bay.corners[i + 1][1] - bay.corners[i][1]),
);
const left = runs[0] as number;

test.beforeEach(async ({ page }) => {
	await watchWriting(page);
	await openExample(page, "Saltmarsh House");
	await page.getByRole("radio", { name: "Elevation", exact: true }).check();
	await expect(page.locator("[data-elevation]")).toHaveAttribute("data-scale", /./);
});

const board = (page: Page) => page.locator("[data-elevation]");
const said = (page: Page) => board(page).getByRole("status");
const undo = (page: Page) => page.getByRole("button", { name: /^Undo/ });

/** Where a place on the unrolled walls (mm along, mm above the floor) lies on the page. */
async function onWall(page: Page, along: number, height: number) {
	return board(page).evaluate(
		(element: HTMLElement, [x, y]) => {
			const rect = element.getBoundingClientRect();
			const { scale, x: from, y: floor } = element.dataset;
			return {
				x: rect.left + Number(from) + (x as number) * Number(scale),
				y: rect.top + Number(floor) - (y as number) * Number(scale),
				scale: Number(scale),
			};
		},
		[along, height],
	);
}

async function drag(page: Page, from: { x: number; y: number }, by: { x: number; y: number }) {
	await page.mouse.move(from.x, from.y);
	await page.mouse.down();
	await page.mouse.move(from.x + by.x / 2, from.y + by.y / 2, { steps: 3 });
	await page.mouse.move(from.x + by.x, from.y + by.y, { steps: 3 });
}

test("a sill dragged up comes to whole 5 mm, in one step, and undo takes it back", async ({ page }) => {
	const before = await cut(page).textContent();
	// A quarter along the opening: clear of the handle in its middle, on the sill itself.
	const from = await onWall(page, left + front.from + (front.to - front.from) / 4, front.sill);
	const up = 34;
	await drag(page, from, { x: 0, y: -up });
	await page.mouse.up();
	const raised = Math.round((front.sill + up / from.scale) / 5) * 5;
	expect(raised).toBeGreaterThan(front.sill + 100);
	await expect(undo(page)).toHaveAccessibleName("Undo: sill of the opening in the front wall");
	await expect(said(page)).toHaveText(
		`Sill of the opening in the front wall: sill ${raised}, head ${front.head}, height ${front.head - raised}`,
	);
	// A sill has no say in the cut.
	await expect(cut(page)).toHaveText(before as string);
	await undo(page).click();
	await expect(undo(page)).toBeDisabled();
});

test("the track goes with the highest head until its own height is dragged, by Shift to a millimetre", async ({
	page,
}) => {
	const from = await onWall(page, left + front.from + (front.to - front.from) / 4, front.head);
	const up = 21;
	await drag(page, from, { x: 0, y: -up });
	await page.mouse.up();
	const head = Math.round((front.head + up / from.scale) / 5) * 5;
	await board(page).focus();
	for (const key of ["Escape", "Tab", "Tab"]) await page.keyboard.press(key);
	await expect(said(page)).toHaveText(`Height of the track: track ${head + 100}, under the ceiling not given`);

	await page.keyboard.down("Shift");
	const track = await onWall(page, left + 900, head + 100);
	await drag(page, { x: track.x, y: track.y }, { x: 0, y: -13 });
	await page.mouse.up();
	await page.keyboard.up("Shift");
	const height = Math.round(head + 100 + 13 / track.scale);
	await expect(said(page)).toHaveText(`Height of the track: track ${height}, under the ceiling not given`);
	await expect(undo(page)).toHaveAccessibleName("Undo: height of the track");
});

test("Escape gives up a drag and leaves no step behind", async ({ page }) => {
	const from = await onWall(page, left + front.from, (front.sill + front.head) / 2 + 300);
	await drag(page, from, { x: 30, y: 0 });
	await page.keyboard.press("Escape");
	await page.mouse.move(from.x + 60, from.y);
	await page.mouse.up();
	await expect(undo(page)).toBeDisabled();
	await expect(said(page)).toHaveText(
		`Left edge of the opening in the front wall: from the left ${front.from}, width ${front.to - front.from}, from the right ${Math.round((runs[1] as number) - front.to)}`,
	);
});

test("by keyboard alone: Tab to an opening, arrows move it, a burst of them is one step", async ({ page }) => {
	await board(page).focus();
	// Ceiling, track, then five stops for the left opening; the sixth is the front one as a whole.
	for (let i = 0; i < 8; i++) await page.keyboard.press("Tab");
	await expect(said(page)).toContainText("The opening in the front wall:");
	for (let i = 0; i < 3; i++) await page.keyboard.press("Shift+ArrowRight");
	await page.keyboard.press("ArrowLeft");
	await expect(said(page)).toContainText(`from the left ${front.from + 29}, width ${front.to - front.from}`);
	await undo(page).click();
	await expect(undo(page)).toBeDisabled();
});

test("the edge of the lower part is moved by keyboard and by mouse, and the plan keeps its room", async ({ page }) => {
	const edge = page.getByRole("separator", { name: "Height of the elevation" });
	const height = async () => Math.round((await page.locator(".lower").boundingBox())?.height ?? 0);
	const before = await height();
	await edge.focus();
	await page.keyboard.press("ArrowUp");
	await expect.poll(height).toBe(before + 10);
	await expect(edge).toHaveAttribute("aria-valuenow", String(before + 10));
	const box = await edge.boundingBox();
	if (box === null) throw new Error("no edge");
	const at = { x: box.x + box.width / 3, y: box.y + box.height / 2 };
	await drag(page, at, { x: 0, y: 50 });
	await page.mouse.up();
	await expect.poll(height).toBe(before - 40);
	await edge.focus();
	await page.keyboard.press("End");
	expect((await page.locator("[data-plan]").boundingBox())?.height).toBeGreaterThan(300);
});

test("what is chosen on the strip is chosen in the table; chosen in the table it comes into sight on the strip, where readings stay", async ({
	page,
}) => {
	await page.getByRole("radio", { name: "Strip", exact: true }).check();
	await page.getByRole("tab", { name: "Track" }).click();
	const section = page.getByRole("button", { name: /^Brackets/ });
	if ((await section.getAttribute("aria-expanded")) === "false") await section.click();
	const bracket = (n: number) => page.getByRole("button", { name: `Bracket ${n}`, exact: true });
	const strip = page.locator("[data-strip]");
	await strip.focus();
	await page.keyboard.press("ArrowRight");
	await page.keyboard.press("ArrowRight");
	await expect(bracket(2)).toHaveAttribute("aria-pressed", "true");

	const length = (await cut(page).textContent()) as string;
	await expect.poll(() => lastOnStrip(page)).toBe(length);
	const zoomIn = page.getByRole("button", { name: "Zoom the strip in" });
	for (let i = 0; i < 4; i++) await zoomIn.click();
	await expect.poll(() => lastOnStrip(page)).not.toBe(length);
	const last = page.getByRole("button", { name: /^Bracket \d+$/ }).last();
	const fromRight = Number(await page.getByRole("row").filter({ has: last }).getByRole("cell").last().textContent());
	await last.click();
	// The track ends 840 along the last wall, and its hardware takes up 100 there (common practice, no source).
	const fromCut = fromRight - ((runs[2] as number) - bay.track.end.at) - 100;
	await expect.poll(() => lastOnStrip(page)).toBe(whole(Number(length) - fromCut));
	await page
		.getByRole("region", { name: /^Strip/ })
		.getByRole("button", { name: "Fit" })
		.click();
	await expect.poll(() => lastOnStrip(page)).toBe(length);
	await expect(page.getByRole("button", { name: "Zoom the strip out" })).toBeDisabled();
});

test("nothing is found wrong with the elevation, with a head chosen", async ({ page }) => {
	await board(page).focus();
	for (let i = 0; i < 5; i++) await page.keyboard.press("Tab");
	await expect(said(page)).toContainText("Head of the opening in the left wall:");
	await isFaultless(page, [".lower"]);
});

test.describe("on a tablet", () => {
	test.use({ viewport: { width: 1024, height: 768 }, hasTouch: true });

	test("a finger on a window moves the sheet, on its bar the sill, and once it is tapped the window", async ({
		page,
	}) => {
		const devtools = await page.context().newCDPSession(page);
		const finger = (type: "touchStart" | "touchMove" | "touchEnd", ...touchPoints: { x: number; y: number }[]) =>
			devtools.send("Input.dispatchTouchEvent", { type, touchPoints });
		const stroke = async (from: { x: number; y: number }, by: { x: number; y: number }) => {
			await finger("touchStart", { x: from.x, y: from.y });
			for (const share of [0.4, 0.8, 1])
				await finger("touchMove", { x: from.x + by.x * share, y: from.y + by.y * share });
			await finger("touchEnd");
		};
		// Off the bars on head, sill and edges by more than a finger.
		const glass = () => onWall(page, left + front.from + 500, (front.sill + front.head) / 2);
		const before = await glass();
		await stroke(before, { x: 0, y: 24 });
		await expect(undo(page)).toBeDisabled();
		expect((await glass()).y).toBeCloseTo(before.y + 24, 0);

		const bar = await onWall(page, left + (front.from + front.to) / 2, front.sill);
		await stroke(bar, { x: 0, y: -30 });
		const raised = Math.round((front.sill + 30 / bar.scale) / 5) * 5;
		await expect(said(page)).toContainText(`sill ${raised}, head ${front.head}`);

		const window = await glass();
		await page.touchscreen.tap(window.x, window.y);
		await expect(said(page)).toContainText("The opening in the front wall:");
		await stroke(window, { x: 60, y: 0 });
		// Further than the wall has room for: it comes to stand at the corner.
		const room = Math.round((runs[1] as number) - (front.to - front.from));
		await expect(said(page)).toContainText(`from the left ${room}, width ${front.to - front.from}, from the right 0`);
	});
});
