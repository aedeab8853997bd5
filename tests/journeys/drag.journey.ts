import {
	cornerRow,
	cut,
	exampleFile,
	expect,
	lastOnStrip,
	onPage,
	openExample,
	test,
	toStage,
	view,
	watchWriting,
} from "./app.ts";
import { bend, cutLength, isClearOfHalf, tape, whole } from "./by-hand.ts";

// Saltmarsh House: light corded track, projection 40, radius 310, from 60 on the first wall to 840 on the last; 100 mm for
// each end pulley (common practice, no source).
const track = { projection: 40, radius: 310, start: 60, end: 840, takeUp: 200 };
const corners: readonly [number, number][] = exampleFile("saltmarsh-house").bays[0].corners;
const asOpened = { cut: "3187", angle: "135.0°", setBack: "145", sweep: "243" };

test.beforeEach(async ({ page }) => {
	await watchWriting(page);
	await openExample(page, "Saltmarsh House");
	await toStage(page, "Track");
	await expect(cut(page)).toHaveText(asOpened.cut);
});

test("dragging a corner by mouse gives the cut length, the strip and the corner worked out by hand; undo brings all back", async ({
	page,
}) => {
	expect(whole(cutLength(tape(corners), track))).toBe(asOpened.cut);
	const [x, y] = corners[1] as [number, number];
	const { scale } = await view(page);
	const from = await onPage(page, [x, y]);
	const to = { x: from.x - 23, y: from.y - 14 };
	// With Shift nothing draws the corner: it comes to stand where it is put, on whole millimetres.
	await page.keyboard.down("Shift");
	await page.mouse.move(from.x, from.y);
	await page.mouse.down();
	await page.mouse.move(from.x - 9, from.y - 30, { steps: 4 });
	await page.mouse.move(to.x, to.y, { steps: 4 });

	// A corner comes to stand on whole millimetres.
	const moved: [number, number] = [x + (to.x - from.x) / scale, y - (to.y - from.y) / scale];
	expect(moved.every(isClearOfHalf)).toBe(true);
	const walls = tape([
		corners[0],
		[Math.round(moved[0]), Math.round(moved[1])],
		corners[2],
		corners[3],
	] as typeof corners);
	const angle = walls.angles[0] as number;
	const { setBack, sweep } = bend(angle, track.projection, track.radius);
	const byHand = cutLength(walls, track);
	expect(Math.abs(byHand - Number(asOpened.cut))).toBeGreaterThan(20);
	for (const figure of [byHand, setBack, sweep]) expect(isClearOfHalf(figure)).toBe(true);

	const showsMoved = async () => {
		await expect(cut(page)).toHaveText(whole(byHand));
		await expect(cornerRow(page, 1)).toContainText([`${angle.toFixed(1)}°`, "310", whole(setBack), whole(sweep)]);
		await expect.poll(() => lastOnStrip(page)).toBe(whole(byHand));
	};
	await showsMoved();
	const undo = page.getByRole("button", { name: /^Undo/ });
	await expect(undo).toBeDisabled();
	await page.mouse.up();
	await page.keyboard.up("Shift");
	await showsMoved();
	await expect(undo).toHaveAccessibleName("Undo: move corner 1");

	await undo.click();
	await showsOld();
	await expect(undo).toBeDisabled();
	await page.getByRole("button", { name: "Redo: move corner 1" }).click();
	await showsMoved();

	async function showsOld(): Promise<void> {
		await expect(cut(page)).toHaveText(asOpened.cut);
		await expect(cornerRow(page, 1)).toContainText([asOpened.angle, "310", asOpened.setBack, asOpened.sweep]);
		await expect.poll(() => lastOnStrip(page)).toBe(asOpened.cut);
	}
});

for (const key of ["Escape", "Control+z"])
	test(`${key} gives up a drag and leaves no step behind`, async ({ page }) => {
		const from = await onPage(page, corners[1] as [number, number]);
		await page.mouse.move(from.x, from.y);
		await page.mouse.down();
		await page.mouse.move(from.x - 40, from.y - 25, { steps: 4 });
		await expect(cut(page)).not.toHaveText(asOpened.cut);
		await page.keyboard.press(key);
		await expect(cut(page)).toHaveText(asOpened.cut);
		await page.mouse.move(from.x - 70, from.y - 45, { steps: 2 });
		await page.mouse.up();
		await expect(cut(page)).toHaveText(asOpened.cut);
		await expect(cornerRow(page, 1)).toContainText([asOpened.angle, "310", asOpened.setBack, asOpened.sweep]);
		await expect(page.getByRole("button", { name: "Undo", exact: true })).toBeDisabled();
	});

test("dragging the front wall by its bar moves it square to itself", async ({ page }) => {
	const [left, right] = [corners[1] as [number, number], corners[2] as [number, number]];
	const { scale } = await view(page);
	// On the wall's outer line, 110 mm as drawn: the bow's grip in the middle, the bar a finger to the left of it.
	const middle = await onPage(page, [(left[0] + right[0]) / 2, left[1] + 110]);
	const from = { x: middle.x - 48, y: middle.y };
	await page.mouse.move(from.x, from.y);
	await page.mouse.down();
	await page.mouse.move(from.x + 30, from.y - 20, { steps: 5 });
	await page.mouse.up();
	const out = 20 / scale;
	expect(isClearOfHalf(out)).toBe(true);
	const up = ([x, y]: readonly [number, number]): [number, number] => [x, y + Math.round(out)];
	const byHand = cutLength(tape([corners[0], up(left), up(right), corners[3]] as typeof corners), track);
	expect(isClearOfHalf(byHand)).toBe(true);
	await expect(cut(page)).toHaveText(whole(byHand));
	await expect(page.getByRole("button", { name: /^Undo/ })).toHaveAccessibleName("Undo: move the front wall");
});
