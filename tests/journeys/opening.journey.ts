import { readdirSync } from "node:fs";
import { cut, exampleFile, expect, openExample, test } from "./app.ts";

const names = readdirSync(new URL("../../examples/", import.meta.url)).flatMap((file) => {
	const name = /^(.+)\.baywright\.json$/.exec(file)?.[1];
	return name === undefined ? [] : [name];
});

const plain = [
	"A straight recess",
	"A plain square bay",
	"A splayed bay",
	"A five-sided bay",
	"A bow",
	"An L-shaped bay",
];

test("the app opens with bays to begin from and every example to choose from", async ({ page }) => {
	expect(names.length).toBeGreaterThan(12);
	await page.goto("./");
	await expect(page).toHaveTitle(/Baywright/);
	await expect(page.getByRole("heading", { level: 1 })).toHaveText("Baywright");
	const bays = page.getByRole("listitem").getByRole("button");
	await expect(bays).toHaveCount(2 + plain.length + names.length);
	await expect(bays.first()).toHaveAccessibleName(/^Tape it/);
	await expect(bays.nth(1)).toHaveAccessibleName(/^From a drawing/);
	for (const name of plain) await expect(page.getByRole("button", { name: new RegExp(`^${name}`) })).toHaveCount(1);
	for (const name of names)
		await expect(page.getByRole("button", { name: new RegExp(`^${exampleFile(name).title}`) })).toHaveCount(1);
	await page.waitForLoadState("networkidle");
});

// Bows, external corners, bridged facets, a reverse bend, a taped bay. Every journey fails on a word of complaint in the console.
for (const name of ["bandstand", "ferry-house", "lantern-room", "malt-loft", "weir-keeper"])
	test(`${name} opens with a track that can be cut`, async ({ page }) => {
		await openExample(page, exampleFile(name).title);
		await expect(cut(page)).toHaveText(/^\d{4}$/);
		await expect(page.getByRole("region", { name: "Findings" })).not.toContainText("refusal");
		await page.waitForLoadState("networkidle");
	});
