import { cut, exampleFile, expect, onPage, openExample, test, view } from "./app.ts";
import { cutLength, isClearOfHalf, tape, whole } from "./by-hand.ts";

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

const corners: readonly [number, number][] = exampleFile("saltmarsh-house").bays[0].corners;
const track = { projection: 40, radius: 310, start: 60, end: 840, takeUp: 200 };

test("on a phone a finger drags a corner, and on empty sheet scrolls the page", async ({ page }) => {
	await openExample(page, "Saltmarsh House");
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

	const moved: [number, number] = [x + (to.x - from.x) / scale, y - (to.y - from.y) / scale];
	expect(moved.every(isClearOfHalf)).toBe(true);
	const walls = tape([
		corners[0],
		[Math.round(moved[0]), Math.round(moved[1])],
		corners[2],
		corners[3],
	] as typeof corners);
	const byHand = cutLength(walls, track);
	expect(isClearOfHalf(byHand)).toBe(true);
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
