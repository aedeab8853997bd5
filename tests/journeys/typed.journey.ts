import { cut, expect, openExample, test } from "./app.ts";
import { cutLength, isClearOfHalf, whole } from "./by-hand.ts";

const track = { projection: 40, radius: 310, start: 60, end: 840, takeUp: 200 };

test("a run and an angle typed give the cut length worked out by hand", async ({ page }) => {
	await openExample(page, "Saltmarsh House");
	const front = page.getByRole("textbox", { name: "Front wall" });
	await front.fill("2.1 m");
	await front.press("Enter");
	await expect(front).toHaveValue("2100");
	// The left run as it is: 636.4 by 636.4.
	const left = Math.hypot(636.4, 636.4);
	const wider = cutLength({ runs: [left, 2100, 900], angles: [135, 135] }, track);
	await expect(cut(page)).toHaveText(whole(wider));

	const angle = page.getByRole("textbox", { name: "Corner 1", exact: true });
	await angle.fill("128.5");
	await angle.press("Enter");
	await expect(angle).toHaveValue("128.5°");
	const turned = cutLength({ runs: [left, 2100, 900], angles: [128.5, 135] }, track);
	expect([wider, turned].every(isClearOfHalf)).toBe(true);
	await expect(cut(page)).toHaveText(whole(turned));
	await expect(page.getByRole("textbox", { name: "Corner 2", exact: true })).toHaveValue("135.0°");
});

test("what cannot be read is refused by name and costs nothing", async ({ page }) => {
	await openExample(page, "Saltmarsh House");
	const front = page.getByRole("textbox", { name: "Front wall" });
	await front.fill("12 34");
	await front.press("Enter");
	const refusal = page.getByRole("alert");
	await expect(refusal).toContainText("12 34");
	await expect(refusal).toContainText("one number");
	await expect(front).toHaveValue("12 34");
	await expect(front).toHaveAttribute("aria-invalid", "true");
	await expect(cut(page)).toHaveText("3187");
	await expect(page.getByRole("button", { name: "Undo", exact: true })).toBeDisabled();

	await front.press("Escape");
	await expect(front).toHaveValue("1800");
	await expect(refusal).toHaveCount(0);
});

test("inches typed are shown and cut as inches", async ({ page }) => {
	await openExample(page, "Saltmarsh House");
	await page.getByRole("radio", { name: "in", exact: true }).check({ force: true });
	const front = page.getByRole("textbox", { name: "Front wall" });
	await front.fill("6' 2 1/2\"");
	await front.press("Enter");
	await expect(front).toHaveValue('74 1/2"');
	const mm = cutLength({ runs: [Math.hypot(636.4, 636.4), 74.5 * 25.4, 900], angles: [135, 135] }, track);
	const sixteenths = Math.round((mm / 25.4) * 16);
	expect(isClearOfHalf((mm / 25.4) * 16)).toBe(true);
	const [inches, rest] = [Math.floor(sixteenths / 16), sixteenths % 16];
	const common = [8, 4, 2, 1].find((part) => rest % part === 0) as number;
	await expect(cut(page)).toHaveText(rest === 0 ? `${inches}"` : `${inches} ${rest / common}/${16 / common}"`);
});
