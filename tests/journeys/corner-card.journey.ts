import { expect, test } from "./app.ts";

test("the corner card works out 135°, projection 40, radius 310", async ({ page }) => {
	await page.goto("./");
	await page.getByRole("button", { name: /^Corner card/ }).click();
	const card = page.getByRole("dialog", { name: "Corner card" });
	for (const [field, text] of [
		["Room angle", "135"],
		["Projection", "40"],
		["Radius", "310"],
		["Brackets from the corner", "350"],
	] as const) {
		const box = card.getByRole("textbox", { name: field, exact: true });
		await box.fill(text);
		await box.press("Enter");
	}
	// The figures of issue 2, from common practice's one model (tests/published/common-practice): no other source.
	const figure = (term: string) =>
		card
			.locator("div")
			.filter({ has: page.getByText(term, { exact: true }) })
			.last()
			.locator("dd");
	await expect(figure("Set-back, each side")).toHaveText("145.0");
	await expect(figure("Sweep")).toHaveText("243.5");
	await expect(figure("Between brackets 350 each side")).toHaveText("653.5");
	// The right-angle rule's 490 would be 653.5 − 490 short.
	await expect(card).toContainText("163.5 too short");
});
