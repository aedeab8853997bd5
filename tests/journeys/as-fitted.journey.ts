import { cut as cutFigure, exampleFile, expect, openExample, openOnPhone, test, toStage } from "./app.ts";
import { cutLength, tape, whole } from "./by-hand.ts";

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
	await expect(answer).toHaveText(/^14 mm too long: saw 14 mm off either end, before it is bent\./);
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

// The front's projection 5 more: 5·cot(135°/2) less at each of its two corners; along either side wall 5/sin 45° less, so
// along the front from bend to bend 2·5 more.
const further = needed - 2 * 5 * Math.tan(Math.PI / 8);

test("a bracket 12 off and 5 further from the wall: the rest goes round it, the cut is shorter, and the cut piece says so", async ({
	page,
}) => {
	await openOnPhone(page, "Saltmarsh House", "Marks");
	const row = page.getByRole("listitem").filter({ has: page.getByText("Bracket 5", { exact: true }) });
	const next = page.getByRole("listitem").filter({ has: page.getByText("Bracket 6", { exact: true }) });
	const tick = page.getByRole("checkbox", { name: "tick bracket 5" });
	const spacing = await next.locator(".mark-figure").textContent();
	const answer = page.getByRole("region", { name: "As fitted" }).getByRole("status");
	const cut = page.getByRole("textbox", { name: "Piece A was cut to" });
	await cut.fill(needed.toFixed(1));
	await cut.press("Enter");
	await expect(answer).toHaveText("Still fits, to the length.");

	await expect(row.locator(".mark-figure")).toHaveText("350");
	await row.getByRole("button").click();
	const at = row.getByRole("textbox", { name: "Really at, from corner 1" });
	await expect(at).toHaveAttribute("placeholder", /^350/);
	await at.fill("362");
	await at.press("Enter");
	await expect(row.locator(".mark-figure")).toHaveText("362");
	await expect(row).toContainText("12 further than planned");
	await expect(tick).toBeChecked();
	await expect(next.locator(".mark-figure")).not.toHaveText(spacing ?? "");
	await expect(answer).toHaveText("Still fits, to the length.");

	const projection = row.getByRole("textbox", { name: "Projection there" });
	await expect(projection).toHaveAttribute("placeholder", /^40/);
	await projection.fill("45");
	await projection.press("Enter");
	await expect(row).toContainText("projection 45 taped");
	// 4.1 mm: rounded down, because what is sawn off cannot be put back.
	await expect(answer).toHaveText(/^4 mm too long: saw 4 mm off either end, before it is bent\./);
	await page.getByRole("tab", { name: "Strip", exact: true }).click();
	await expect(page.locator(".piece-cut .figure")).toHaveText(whole(further));

	for (let i = 0; i < 2; i++) await page.getByRole("button", { name: "Undo" }).click();
	await expect(page.locator(".piece-cut .figure")).toHaveText(whole(needed));
	await page.getByRole("tab", { name: "Marks", exact: true }).click();
	await expect(row.locator(".mark-figure")).toHaveText("350");
	await expect(tick).not.toBeChecked();
});

test("a figure of a bracket is taken back by emptying its field", async ({ page }) => {
	await openOnPhone(page, "Saltmarsh House", "Marks");
	const row = page.getByRole("listitem").filter({ has: page.getByText("Bracket 5", { exact: true }) });
	await row.getByRole("button").click();
	const type = async (name: RegExp, text: string) => {
		const field = row.getByRole("textbox", { name });
		await field.fill(text);
		await field.press("Enter");
	};
	await type(/^Really at/, "362");
	await type(/^Projection/, "45");
	await type(/^Really at/, "");
	await expect(row.locator(".mark-figure")).toHaveText("350");
	await expect(page.getByRole("checkbox", { name: "tick bracket 5" })).toBeChecked();
	await type(/^Projection/, "");
	await expect(page.getByRole("checkbox", { name: "tick bracket 5" })).not.toBeChecked();
});

test("a piece that is bent by the marks does not come right by sawing once a bracket stands further off", async ({
	page,
}) => {
	await openOnPhone(page, "Saltmarsh House", "Marks");
	const answer = page.getByRole("region", { name: "As fitted" }).getByRole("status");
	const cut = page.getByRole("textbox", { name: "Piece A was cut to" });
	await cut.fill((needed + 8.4).toFixed(1));
	await cut.press("Enter");
	for (const bend of ["bend 1", "bend 2"])
		await page.getByRole("checkbox", { name: `tick ${bend}` }).check({ force: true });
	// Its marks are read from the left end: what it has too much is at the right.
	await expect(answer).toHaveText(/^Bent already: saw 8 mm off its right end only\./);
	await cut.fill(needed.toFixed(1));
	await cut.press("Enter");
	await expect(answer).toHaveText("Still fits, to the length.");
	const row = page.getByRole("listitem").filter({ has: page.getByText("Bracket 5", { exact: true }) });
	await row.getByRole("button").click();
	await row.getByRole("textbox", { name: "Projection there" }).fill("45");
	await row.getByRole("textbox", { name: "Projection there" }).press("Enter");
	await expect(answer).toHaveText(/^Bent already: bend 1 and bend 2 are 10 mm nearer together than is needed now/);
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

test.describe("on the desk", () => {
	test.use({ viewport: { width: 1440, height: 900 }, hasTouch: false, isMobile: false });

	test("a bracket's row takes where it really is, and undo takes it back", async ({ page }) => {
		await openExample(page, "Saltmarsh House");
		await toStage(page, "Track");
		const section = page.getByRole("button", { name: /^Brackets/ });
		if ((await section.getAttribute("aria-expanded")) !== "true") await section.click();
		const bracket = page.getByRole("button", { name: "Bracket 5", exact: true });
		await bracket.click();
		const at = page.getByRole("textbox", { name: "Really at, from corner 1" });
		await at.fill("362");
		await at.press("Enter");
		const row = page.getByRole("row").filter({ has: bracket });
		await expect(row.getByRole("cell").nth(1)).toHaveText("362");
		await page.getByRole("textbox", { name: "Projection there" }).fill("45");
		await page.getByRole("textbox", { name: "Projection there" }).press("Enter");
		await expect(cutFigure(page)).toHaveText(whole(further));
		for (let i = 0; i < 2; i++) await page.getByRole("button", { name: "Undo" }).click();
		await expect(row.getByRole("cell").nth(1)).toHaveText("350");
		await expect(cutFigure(page)).toHaveText(whole(needed));
	});
});
