import type { Page } from "@playwright/test";
import { expect, openExample, test, withoutPickers } from "./app.ts";

/** A DXF in metres: a room's outline with a splayed bay in its upper side, and a spline. Source of its groups: DXF reference, "ENTITIES section". */
const ROOM = [
	[0, 0],
	[4, 0],
	[4, 3],
	[3.2, 3],
	[2.7, 3.5],
	[1.3, 3.5],
	[0.8, 3],
	[0, 3],
] as const;
const DXF = [
	...[0, "SECTION", 2, "HEADER", 9, "$INSUNITS", 70, 6, 0, "ENDSEC", 0, "SECTION", 2, "ENTITIES"],
	...[0, "LWPOLYLINE", 8, "INSIDE", 90, ROOM.length, 70, 1, ...ROOM.flatMap(([x, y]) => [10, x, 20, y])],
	...[0, "SPLINE", 8, "INSIDE", 0, "ENDSEC", 0, "EOF", ""],
].join("\n");
/** By Pythagoras: 500 across and 500 up. */
const SPLAY = (500 * Math.SQRT2).toFixed(1);

test("walls taken from a drawing stand on the screen with their runs", async ({ page }) => {
	await withoutPickers(page);
	await page.goto("./");
	const choosing = page.waitForEvent("filechooser");
	await page.getByRole("button", { name: /^From a drawing/ }).click();
	await (await choosing).setFiles(fileOf("room.dxf", DXF));
	const sheet = page.getByRole("dialog", { name: "Walls from a drawing" });
	const runs = sheet.getByRole("row").locator("td:nth-child(2)");
	await expect(runs).toHaveText(["3000.0", "800.0", SPLAY, "1400.0", SPLAY, "800.0", "3000.0", "4000.0"]);
	await expect(sheet.getByRole("region", { name: "What to know" })).toContainText("a spline");
	// Only the bay itself: from one splay to the other.
	await sheet.getByLabel("From", { exact: true }).selectOption("Wall 3");
	await sheet.getByLabel("To", { exact: true }).selectOption("Wall 5");
	await expect(sheet.getByRole("img", { name: "The chain of 8 walls, 3 of them taken" })).toBeVisible();
	await sheet.getByRole("button", { name: "Start a job with these walls" }).click();
	await expect(page.getByRole("textbox", { name: "Title of the job" })).toHaveValue("room");
	for (const [wall, run] of [
		["Left wall", SPLAY],
		["Front wall", "1400"],
		["Right wall", SPLAY],
	] as const)
		await expect(page.getByRole("textbox", { name: wall })).toHaveValue(run);
});

test("walls of a drawing that is dropped become one more bay, which undo takes back", async ({ page }) => {
	await openExample(page, "Saltmarsh House");
	await drop(page, "room.dxf", DXF);
	const sheet = page.getByRole("dialog", { name: "Walls from a drawing" });
	// In a unit that makes no bay it is refused, and can be put right there.
	await sheet.getByLabel("One unit is").selectOption("a millimetre");
	await expect(sheet.getByRole("alert")).toContainText("10.4 mm");
	const add = sheet.getByRole("button", { name: "Add to Saltmarsh House" });
	await expect(add).toBeDisabled();
	await sheet.getByLabel("One unit is").selectOption("a metre");
	await add.click();
	const bay = page.getByRole("combobox", { name: "Bay", exact: true });
	await expect(bay.getByRole("option", { selected: true })).toHaveText("room (2 of 2)");
	await page.getByRole("button", { name: /^Undo: add a bay from room\.dxf/ }).click();
	await expect(bay).toHaveCount(0);
	await expect(page.getByRole("textbox", { name: "Front wall" })).toHaveValue("1800");
});

test("a file that is no drawing is refused by what it is", async ({ page }) => {
	await openExample(page, "Saltmarsh House");
	await drop(page, "plan.dxf", "AutoCAD Binary DXF\r\n\u001a\u0000");
	await expect(page.getByRole("alert")).toContainText("found a binary DXF, allowed a DXF saved as text");
});

test("while a drawing is read its page can be closed; a reader that cannot be fetched is told", async ({
	page,
	complaints,
}) => {
	await openExample(page, "Saltmarsh House");
	// Every line of a large drawing is read: here of some 4 MB of text beside the walls.
	const note = [0, "TEXT", 8, "NOTES", 10, 0, 20, 0, 1, "as found"].join("\n");
	const large = DXF.replace("0\nENDSEC\n0\nEOF", `${Array(100_000).fill(note).join("\n")}\n0\nENDSEC\n0\nEOF`);
	await drop(page, "house.dxf", large);
	const sheet = page.getByRole("dialog", { name: "Walls from a drawing" });
	await expect(sheet.getByRole("status")).toHaveText("Reading house.dxf…");
	await page.keyboard.press("Escape");
	await expect(sheet).toHaveCount(0);
	await expect.poll(() => page.workers().length).toBe(0);

	await page.route(/worker/, (route) => route.abort());
	await drop(page, "room.dxf", DXF);
	await expect(sheet.getByRole("alert")).toContainText("could not be fetched");
	// The one that was wanted.
	expect(complaints.splice(0)).toEqual([expect.stringContaining("worker")]);
	await page.keyboard.press("Escape");
	await expect(page.getByRole("textbox", { name: "Front wall" })).toHaveValue("1800");
});

test("of a wall drawn with both its faces the one to the room is shown, and the other is told", async ({ page }) => {
	await openExample(page, "Saltmarsh House");
	// 300 mm from face to face; the inner is 2000 wide and 800 deep.
	const wall = (out: number) =>
		[
			[0 - out, 0],
			[0 - out, 800 + out],
			[2000 + out, 800 + out],
			[2000 + out, 0],
		].flatMap(([x, y]) => [10, x, 20, y]);
	const faces = [300, 0].flatMap((out) => [0, "LWPOLYLINE", 8, "WALLS", 90, 4, 70, 0, ...wall(out)]);
	const text = [0, "SECTION", 2, "ENTITIES", ...faces, 0, "ENDSEC", 0, "EOF", ""].join("\n");
	await drop(page, "walls.dxf", text);
	const sheet = page.getByRole("dialog", { name: "Walls from a drawing" });
	await expect(sheet.getByRole("row").locator("td:nth-child(2)")).toHaveText(["800.0", "2000.0", "800.0"]);
	await expect(sheet.getByRole("region", { name: "What to know" })).toContainText("300 mm further from the room");
});

const fileOf = (name: string, text: string) => ({ name, mimeType: "application/dxf", buffer: Buffer.from(text) });

async function drop(page: Page, name: string, text: string): Promise<void> {
	await page.evaluate(
		([file, content]) => {
			const dataTransfer = new DataTransfer();
			dataTransfer.items.add(new File([content], file));
			document.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
		},
		[name, text] as const,
	);
}
