import { cut, exampleFile, expect, onPage, openOnPhone, test, view } from "./app.ts";
import { cutLength, tape, whole } from "./by-hand.ts";

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

const corners: readonly [number, number][] = exampleFile("saltmarsh-house").bays[0].corners;
const track = { projection: 40, radius: 310, start: 60, end: 840, takeUp: 200 };

test("on a phone a finger drags a corner, and on empty sheet scrolls the page", async ({ page }) => {
	await openOnPhone(page, "Saltmarsh House", "Plan");
	expect(await page.evaluate(() => scrollY)).toBe(0);
	await expect(cut(page)).toHaveText("3187");
	const [x, y] = corners[1] as [number, number];
	const { scale } = await view(page);
	const from = await onPage(page, [x, y]);
	const to = { x: from.x - 13, y: from.y - 9 };
	const devtools = await page.context().newCDPSession(page);
	const finger = (type: "touchStart" | "touchMove" | "touchEnd", ...touchPoints: { x: number; y: number }[]) =>
		devtools.send("Input.dispatchTouchEvent", { type, touchPoints });
	await finger("touchStart", from);
	for (const share of [0.4, 0.8, 1.6, 1])
		await finger("touchMove", { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share });
	await finger("touchEnd");

	// The corner is drawn to what is near the finger: its runs, shown to the tenth, are two circles that meet in it.
	const run = async (name: string) => Number(await page.getByRole("textbox", { name, exact: true }).inputValue());
	const [left, front] = [await run("Left wall"), await run("Front wall")];
	const moved = meeting(corners[0] as Place, left, corners[2] as Place, front);
	const off = Math.hypot(x + (to.x - from.x) / scale - moved[0], y - (to.y - from.y) / scale - moved[1]);
	expect(off).toBeLessThan(DRAWN / scale);
	const walls = tape([corners[0], moved, corners[2], corners[3]] as typeof corners);
	const byHand = cutLength(walls, track);
	// Two runs to the tenth give the cut length to a quarter of a millimetre.
	expect(Math.abs((byHand % 1) - 0.5)).toBeGreaterThan(0.25);
	await expect(cut(page)).toHaveText(whole(byHand));
	expect(await page.evaluate(() => scrollY)).toBe(0);
	await expect(page.getByRole("button", { name: /^Undo/ })).toHaveAccessibleName("Undo: move corner 1");

	const middle = await onPage(page, [(corners[1]?.[0] ?? 0) + 900, 150]);
	await finger("touchStart", middle);
	for (let step = 1; step <= 5; step++) await finger("touchMove", { x: middle.x, y: middle.y - 20 * step });
	await finger("touchEnd");
	await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(40);
	await expect(cut(page)).toHaveText(whole(byHand));
});

type Place = readonly [number, number];

/** px within which something draws a corner to it, and half a pixel of the finger's. */
const DRAWN = 9 + 0.5;

/** Where two circles meet, on the left of the line from the first centre to the second. */
function meeting([x, y]: Place, radius: number, [toX, toY]: Place, other: number): [number, number] {
	const apart = Math.hypot(toX - x, toY - y);
	const along = (apart ** 2 + radius ** 2 - other ** 2) / (2 * apart);
	const off = Math.sqrt(radius ** 2 - along ** 2);
	const [ux, uy] = [(toX - x) / apart, (toY - y) / apart];
	return [x + along * ux - off * uy, y + along * uy + off * ux];
}
