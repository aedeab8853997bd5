import type { Page } from "@playwright/test";
import { cornerRow, cut, expect, openExample, settled, test, toStage } from "./app.ts";
import { bend, cutLength, isClearOfHalf, tape, whole } from "./by-hand.ts";

// The plain bay: light corded track from end to end.
const plain: readonly [number, number][] = [
	[0, 0],
	[0, 700],
	[1800, 700],
	[1800, 0],
];

test("without a mouse, from first use to a corner moved and moved back", async ({ page }) => {
	await page.goto("./");
	await expect(page.getByRole("button", { name: /^A plain square bay/ })).toBeVisible();
	await tabTo(page, "A plain square bay");
	await page.keyboard.press("Enter");
	await expect(page.getByRole("textbox", { name: "Title of the job" })).toHaveValue("New job");
	await settled(page);
	const before = trackCut(plain, 700);
	await expect(cut(page)).toHaveText(whole(before));

	await tabTo(page, "Survey");
	await page.keyboard.press("ArrowRight");
	await expect(page.getByRole("tab", { name: "Track" })).toBeFocused();
	await tabTo(page, "Plan of Bay");
	// Whatever the way there chose is let go; then walk to corner 0, the left wall, its bow, corner 1.
	await page.keyboard.press("Escape");
	for (let i = 0; i < 4; i++) await page.keyboard.press("Tab");
	for (let i = 0; i < 3; i++) await page.keyboard.press("Shift+ArrowLeft");
	for (let i = 0; i < 4; i++) await page.keyboard.press("ArrowUp");

	const corners = plain.map((at, i): [number, number] => (i === 1 ? [-30, 704] : [at[0], at[1]]));
	const after = trackCut(corners, 700);
	const angle = tape(corners).angles[0] as number;
	const { setBack, sweep } = bend(angle, 40, 310);
	for (const figure of [before, after, setBack, sweep]) expect(isClearOfHalf(figure)).toBe(true);
	await expect(cut(page)).toHaveText(whole(after));
	await expect(cornerRow(page, 1)).toContainText([`${angle.toFixed(1)}°`, "310", whole(setBack), whole(sweep)]);

	// However many presses, one step.
	await page.keyboard.press("Control+z");
	await expect(cut(page)).toHaveText(whole(before));
	await expect(page.getByRole("button", { name: "Undo", exact: true })).toBeDisabled();
	await page.keyboard.press("Control+Shift+z");
	await expect(cut(page)).toHaveText(whole(after));
});

const sheet = (page: Page) => page.getByRole("dialog", { name: "Tape step by step" });

test("without a mouse, readings are taped step by step: one types at once, and comes back to a button in sight", async ({
	page,
}) => {
	await openExample(page, "Quay Cottage");
	await tabTo(page, "Tape step by step");
	await page.keyboard.press("Enter");
	await expect(sheet(page).getByRole("textbox")).toBeFocused();
	for (const run of ["900", "1800", "900"]) {
		await page.keyboard.type(run);
		await page.keyboard.press("Enter");
	}
	await expect(sheet(page).getByRole("button", { name: /^Walls 3 of 3/ })).toBeVisible();
	await expect(sheet(page).getByRole("textbox")).toBeFocused();
	await page.keyboard.press("Escape");
	await expect(sheet(page)).toBeHidden();
	const button = page.getByRole("button", { name: "Tape step by step" });
	await expect(button).toBeFocused();
	// Above it stand three readings more than before.
	await expect(button).toBeInViewport({ ratio: 1 });
	await expect(page.getByRole("textbox", { name: "Run of the right wall" })).toHaveValue("900");
});

test("without a mouse, the focus is never lost: making up undone and done again, a cure, a tick below", async ({
	page,
}) => {
	await openExample(page, "Ferry House");
	await toStage(page, "Curtains");
	const begin = page.getByRole("button", { name: "Make up the curtains", exact: true });
	await begin.focus();
	await page.keyboard.press("Enter");
	await expect(page.getByRole("combobox", { name: "Cloth" })).toBeFocused();
	await page.keyboard.press("Control+z");
	await expect(begin).toBeFocused();
	await page.keyboard.press("Control+Shift+z");
	await expect(page.getByRole("combobox", { name: "Cloth" })).toBeFocused();

	// Meeting on a bend is told, and the cure goes with what it cures.
	await page.getByRole("button", { name: "Add a curtain" }).focus();
	await page.keyboard.press("Enter");
	const from = page.getByRole("group", { name: "Curtain 2" }).getByRole("textbox", { name: "From, along the track" });
	await from.fill("800");
	await from.press("Enter");
	const to = page.getByRole("group", { name: "Curtain 1" }).getByRole("textbox", { name: "To" });
	await to.fill("800");
	await to.press("Enter");
	const cure = page.getByRole("button", { name: /^Let them meet at/ });
	await cure.focus();
	await page.keyboard.press("Enter");
	await expect(cure).toBeHidden();
	await expect(page.getByRole("region", { name: "Findings" })).toBeFocused();

	await toStage(page, "Sheets");
	for (const tick of await page.getByRole("checkbox").all()) {
		await tick.focus();
		expect(await tick.evaluate(isSeen)).toBe(true);
	}
});

/** Does the column show the tick of a hidden input? */
function isSeen(input: Element): boolean {
	const label = input.closest("label");
	const tick = label?.getBoundingClientRect();
	if (label === null || tick === undefined) return false;
	const there = document.elementFromPoint(tick.left + 8, (tick.top + tick.bottom) / 2);
	return label.contains(there);
}

function trackCut(corners: readonly [number, number][], end: number): number {
	return cutLength(tape(corners), { projection: 40, radius: 310, start: 0, end, takeUp: 200 });
}

/** Presses Tab until what is named so has the focus. */
async function tabTo(page: Page, name: string): Promise<void> {
	for (let presses = 0; presses < 60; presses++) {
		await page.keyboard.press("Tab");
		const focused = await page.evaluate(() => {
			const { activeElement } = document;
			return activeElement?.getAttribute("aria-label") ?? activeElement?.textContent ?? "";
		});
		if (focused.startsWith(name)) return;
	}
	throw new Error(`Tab never reached ${name}`);
}
