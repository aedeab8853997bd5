import { exampleFile, expect, openOnPhone, test } from "./app.ts";
import { cutLength, tape } from "./by-hand.ts";

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

/** Saltmarsh House's one piece, worked out by hand. */
const needed = cutLength(tape(exampleFile("saltmarsh-house").bays[0].corners), {
	projection: 40,
	radius: 310,
	start: 60,
	end: 840,
	takeUp: 200,
});

test("a piece that is cut already is held against the plan: too long, too short, to the length", async ({ page }) => {
	await openOnPhone(page, "Saltmarsh House", "Marks");
	const fitted = page.getByRole("region", { name: "As fitted" });
	const cut = fitted.getByRole("textbox", { name: "Piece A was cut to" });
	const answer = fitted.getByRole("status");
	const type = async (length: number) => {
		await cut.fill(length.toFixed(1));
		await cut.press("Enter");
	};
	// A tenth beside whole millimetres, so that the way of rounding shows: off a track, down; missing from one, up.
	await type(needed + 14.3);
	await expect(answer).toHaveText(/^14 mm too long: saw 14 mm off a straight end\.$/);
	await type(needed - 13.7);
	await expect(answer).toHaveText(/^14 mm too short: /);
	await type(needed - 600.4);
	await expect(answer).toHaveText(/^601 mm too short: cut it anew/);
	await type(needed);
	await expect(answer).toHaveText("Still fits, to the length.");
	await cut.fill("");
	await cut.press("Enter");
	await expect(answer).toHaveText("");
});

test("a span taped across a corner is a reading of the bay, and goes again when its field is emptied", async ({
	page,
}) => {
	await openOnPhone(page, "Saltmarsh House", "Marks");
	const fitted = page.getByRole("region", { name: "As fitted" });
	const span = fitted.getByRole("textbox", { name: "Bracket 3 to bracket 4, straight across corner 1" });
	const sweep = page.getByRole("listitem").filter({ has: page.getByText("Bend 1", { exact: true }) });
	const before = await sweep.locator(".mark-figure").textContent();
	// Straight between places 165 either side of the corner, 40 off their walls at 135°: 2(165 sin 67.5° − 40 cos 67.5°) = 274.2.
	await span.fill("264");
	await span.press("Enter");
	// Closer together than the drawing has them: the corner is sharper, and the bend round it longer.
	await expect(sweep.locator(".mark-figure")).not.toHaveText(before ?? "");
	expect(Number(await sweep.locator(".mark-figure").textContent())).toBeGreaterThan(Number(before));
	await span.fill("");
	await span.press("Enter");
	await expect(span).toHaveValue("");
});
