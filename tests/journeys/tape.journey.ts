import type { Page } from "@playwright/test";
import { exampleFile, expect, openExample, openOnPhone, test, withoutPickers } from "./app.ts";
import { cutLength, whole } from "./by-hand.ts";
import { isFaultless } from "./faultless.ts";

const track = { projection: 40, radius: 310, start: 50, end: 850, takeUp: 200 };

/** Two right triangles of 900, 1200 and 1500 side by side make a square bay: what a faultless tape reads of it. */
const exact: Readonly<Record<string, string>> = {
	"Run of the left wall": "900",
	"Run of the front wall": "1200",
	"Run of the right wall": "900",
	"Diagonal left end–2": "1500",
	"Diagonal 1–right end": "1500",
	"Diagonal left end–right end": "1200",
	// Arms of 850: 850 times the root of two.
	"Chord at corner 1": "1202.1",
	"Chord at corner 2": "1202.1",
};

const title = (page: Page) => page.getByRole("region", { name: "Tape", exact: true }).getByRole("heading").first();
const field = (page: Page) => page.getByRole("region", { name: "Tape", exact: true }).getByRole("textbox");
const standing = (page: Page) => page.locator(".taking-standing");
const press = (page: Page, name: string) => page.getByRole("button", { name, exact: true }).tap();

const KEYS: Readonly<Record<string, string>> = {
	".": "decimal point",
	"-": "minus",
	"/": "fraction bar",
	" ": "space",
};

/** Writes a figure with the keys on the screen and takes it. */
async function key(page: Page, text: string): Promise<void> {
	for (const each of text) await press(page, KEYS[each] ?? each);
	await press(page, "Take");
}

/** Opens a job of one's own on a phone. */
async function openFile(page: Page, job: object): Promise<void> {
	await withoutPickers(page);
	await page.goto("./");
	const chooser = page.waitForEvent("filechooser");
	await page.getByRole("button", { name: /^Open/ }).first().tap();
	const buffer = Buffer.from(JSON.stringify(job));
	await (await chooser).setFiles({ name: "own.json", mimeType: "application/json", buffer });
}

/** The same by a keyboard, which is quicker. */
async function write(page: Page, text: string): Promise<void> {
	await field(page).fill(text);
	await field(page).press("Enter");
}

/** Answers whatever is asked of the walls and corners as a faultless tape would; how often it was asked. */
async function tapeAll(page: Page, answer: (figure: string) => Promise<void>): Promise<number> {
	for (let count = 0; ; count++) {
		const asked = (await title(page).textContent()) ?? "";
		const figure = exact[asked.replace(", once more", "")];
		if (figure === undefined) return count;
		expect(count).toBeLessThan(20);
		await answer(figure);
	}
}

test.describe("on a phone", () => {
	test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

	test("a bay is taped by its keys until every cut length is sure, and is as long as by hand", async ({ page }) => {
		await openOnPhone(page, "Quay Cottage", "Tape");
		await expect(title(page)).toHaveText("Run of the left wall");
		await expect(page.getByText("Tape along the wall from the left end to corner 1")).toBeVisible();
		await expect(
			page.getByRole("img", { name: "The bay from above, with the run of the left wall marked" }),
		).toBeVisible();
		// Nothing says yet how far anything closes.
		await expect(standing(page)).not.toContainText("Closes");

		let reaches: number | null = null;
		const count = await tapeAll(page, async (figure) => {
			const words = (await standing(page).textContent()) ?? "";
			const now = Number(/Cut length ± ([\d.]+) mm/.exec(words)?.[1] ?? Number.NaN);
			// What a reading was said to reach is what it reached.
			if (reaches !== null) expect(Math.abs(now - reaches)).toBeLessThan(0.25);
			const next = /with this reading ± ([\d.]+) mm/.exec(words)?.[1];
			reaches = next === undefined ? null : Number(next);
			await key(page, figure);
		});
		expect(count).toBeGreaterThan(4);
		await expect(standing(page)).toContainText("Closes within 0 mm.");
		const sure = /Cut length ± ([\d.]+) mm, sure enough to cut/.exec((await standing(page).textContent()) ?? "");
		expect(Number(sure?.[1])).toBeLessThanOrEqual(3.5);

		await page.getByRole("tab", { name: "Strip", exact: true }).tap();
		const byHand = cutLength({ runs: [900, 1200, 900], angles: [90, 90] }, track);
		await expect(page.locator(".piece-cut")).toContainText(whole(byHand));
	});

	test("of two bays the one that is taped is there again after a reload", async ({ page }) => {
		const job = exampleFile("quay-cottage");
		const [bay] = job.bays;
		await openFile(page, { ...job, bays: [bay, { ...bay, id: "back", name: "Back bay" }] });
		await page.getByRole("tab", { name: "Tape", exact: true }).tap();
		await page.getByRole("combobox", { name: "Bay" }).selectOption({ label: "Back bay (2 of 2)" });
		await key(page, "900");
		await expect(title(page)).toHaveText("Run of the front wall");
		await expect(page.getByText("Saved", { exact: true })).toBeVisible();
		await page.reload();
		await expect(page.getByRole("combobox", { name: "Bay" })).toHaveValue("1");
		await expect(title(page)).toHaveText("Run of the front wall");
		await page.getByRole("combobox", { name: "Bay" }).selectOption({ index: 0 });
		await expect(title(page)).toHaveText("Run of the left wall");
	});

	for (const length of ["cm", "in"])
		test(`lying down, every key is in sight, in ${length}`, async ({ page }) => {
			await page.setViewportSize({ width: 844, height: 390 });
			await openFile(page, { ...exampleFile("quay-cottage"), display: { length } });
			await page.getByRole("tab", { name: "Tape", exact: true }).tap();
			for (const part of [/^Walls/, /^Heights/]) {
				await page.getByRole("navigation", { name: "Parts of the survey" }).getByRole("button", { name: part }).tap();
				for (const each of await page.getByRole("group", { name: "Keys" }).getByRole("button").all())
					await expect(each).toBeInViewport({ ratio: 1 });
			}
		});

	// A run read at 2 mm (one standard deviation, common practice) is good to 1.96 · 2 = 3.9 mm at 95 %; two of them to 1.96 · 2/√2 = 2.8,
	// and 2000 and 2004 settle at 2002, each 2 mm off.
	test("a recess: the ± and what it closes within are those of a mean of two", async ({ page }) => {
		await page.goto("./");
		await page.getByRole("button", { name: /^A straight recess/ }).tap();
		await page.getByRole("tab", { name: "Tape", exact: true }).tap();
		await key(page, "2000");
		await expect(standing(page)).toContainText("Cut length ± 3.9 mm, with this reading ± 2.8 mm");
		await expect(standing(page)).not.toContainText("Closes");
		await expect(title(page)).toHaveText("Run of the wall, once more");
		await key(page, "2004");
		await expect(standing(page)).toContainText("Closes within 2 mm.");
		await expect(standing(page)).toContainText("Cut length ± 2.8 mm, sure enough to cut");
	});

	test("a slip is named, and the reading taken again; each is one step back", async ({ page }) => {
		await openOnPhone(page, "Quay Cottage", "Tape");
		await tapeAll(page, (figure) => write(page, figure));
		await page.getByRole("button", { name: /^List/ }).tap();
		await expect(title(page)).toHaveText("Taped so far");
		await press(page, "Take the run of the left wall (2) again");
		await expect(field(page)).toHaveValue("900");
		await key(page, "940");
		await expect(standing(page)).toContainText(
			"The run of the left wall disagrees by 40 mm; without it everything closes within 0 mm.",
		);
		await press(page, "Take the run of the left wall (2) again");
		await expect(title(page)).toHaveText("Run of the left wall, once more");
		await key(page, "900");
		await expect(standing(page)).toContainText("Closes within 0 mm.");
		await page.getByRole("button", { name: "Undo: take the run of the left wall again" }).tap();
		await expect(standing(page)).toContainText("disagrees by 40 mm");
		await page.getByRole("button", { name: "Undo: take the run of the left wall again" }).tap();
		await expect(standing(page)).toContainText("Closes within 0 mm.");
	});

	test("a slip that might be any of several: what is asked next leads to it, in sight under the warning", async ({
		page,
	}) => {
		await openOnPhone(page, "Quay Cottage", "Tape");
		const slipped = "Diagonal left end–2";
		let doubted = false;
		for (let count = 0; ; count++) {
			expect(count).toBeLessThan(16);
			const asked = ((await title(page).textContent()) ?? "").replace(", once more", "");
			const arm = /Mark (\d+) mm/.exec((await page.locator(".taking-how").textContent()) ?? "")?.[1];
			// In a right angle: the arms times the root of two.
			const figure = arm === undefined ? exact[asked] : (Number(arm) * Math.SQRT2).toFixed(1);
			if (figure === undefined) break;
			if (((await standing(page).textContent()) ?? "").includes("It might as well be")) {
				doubted = true;
				await expect(page.getByText("This reading helps to tell which is wrong.")).toBeVisible();
				const [question, keys] = [await title(page).boundingBox(), await page.locator(".taking-answer").boundingBox()];
				expect((question?.y ?? 0) + (question?.height ?? 0)).toBeLessThan(keys?.y ?? 0);
			}
			await write(page, asked === slipped && !doubted ? "1540" : figure);
		}
		expect(doubted).toBe(true);
		await expect(standing(page)).toContainText(
			"The diagonal left end–2 disagrees by 40 mm; without it everything closes within 0 mm.",
		);
		await expect(standing(page)).not.toContainText("It might as well be");
		await press(page, "Take the diagonal left end–2 again");
		await expect(title(page)).toBeInViewport();
		await write(page, "1500");
		await expect(standing(page)).toContainText("Closes within 0 mm.");
	});

	test("skip, back, and undo a reading: it is asked again", async ({ page }) => {
		await openOnPhone(page, "Quay Cottage", "Tape");
		await expect(page.getByRole("button", { name: "Back", exact: true })).toBeDisabled();
		await press(page, "Skip");
		await expect(title(page)).toHaveText("Run of the front wall");
		await key(page, "1200");
		await expect(title(page)).toHaveText("Run of the right wall");
		await press(page, "Back");
		await expect(title(page)).toHaveText("Run of the front wall");
		await expect(field(page)).toHaveValue("1200");
		await press(page, "Back");
		await expect(title(page)).toHaveText("Run of the left wall");
		await key(page, "900");
		// On from where one went back to, past what is taken.
		await expect(title(page)).toHaveText("Run of the right wall");
		await page.getByRole("button", { name: "Undo: take the run of the left wall" }).tap();
		await page.getByRole("button", { name: "Undo: take the run of the front wall" }).tap();
		await page.getByRole("button", { name: /^Walls/ }).tap();
		await expect(title(page)).toHaveText("Run of the front wall");
		await expect(field(page)).toHaveValue("");
	});

	test("what cannot be is refused by name, and stays as typed", async ({ page }) => {
		await openOnPhone(page, "Quay Cottage", "Tape");
		await press(page, "Take");
		await expect(page.getByRole("alert")).toContainText("Write a length such as 2400");
		await press(page, "0");
		await press(page, "Take");
		await expect(page.getByRole("alert")).toHaveText("0 is too small: write 1 or more.");
		await expect(field(page)).toHaveValue("0");
		await press(page, "Backspace");
		await key(page, "900.5");
		await expect(title(page)).toHaveText("Run of the front wall");
		await press(page, "Back");
		await expect(field(page)).toHaveValue("900.5");
	});

	test("inches are keyed with a space and a fraction", async ({ page }) => {
		await openOnPhone(page, "Quay Cottage", "Tape");
		await page.getByRole("button", { name: "Job", exact: true }).tap();
		await page.getByRole("dialog").getByText("in", { exact: true }).tap();
		await press(page, "Close");
		await key(page, "35 1/2");
		await press(page, "Back");
		// The inch mark stands after the field, once.
		await expect(field(page)).toHaveValue("35 1/2");
		await expect(page.locator(".taking-unit")).toHaveText('"');
	});

	test("a bay with no walls yet: its shape is chosen, and every run of it is asked", async ({ page }) => {
		await page.goto("./");
		await page.getByRole("button", { name: /^Tape it/ }).tap();
		await page.getByRole("tab", { name: "Tape", exact: true }).tap();
		await expect(page.getByRole("heading", { name: "What is the bay like?" })).toBeVisible();
		await page.getByRole("button", { name: /^A splayed bay/ }).tap();
		await expect(title(page)).toHaveText("Run of the left wall");
		await page.getByRole("button", { name: "Undo: begin with a splayed bay" }).tap();
		await expect(page.getByRole("heading", { name: "What is the bay like?" })).toBeVisible();
		await page.getByRole("button", { name: /^Tape it/ }).tap();
		await expect(page.getByRole("tab", { name: "Plan", exact: true })).toHaveAttribute("aria-selected", "true");
	});

	test("heights, then a pipe on a wall, to the end; what was left is listed", async ({ page }) => {
		await openOnPhone(page, "Quay Cottage", "Tape");
		await page.getByRole("button", { name: /^Heights/ }).tap();
		await expect(title(page)).toHaveText("Head of opening 1, left wall");
		await write(page, "500");
		await expect(page.getByRole("alert")).toHaveText("500 is too small: write 621 or more.");
		await write(page, "2060");
		await press(page, "Keep 2050");
		await press(page, "Keep 2050");
		await expect(title(page)).toHaveText("Height of the ceiling");
		await write(page, "2430");
		await expect(page.getByText("Left as it is: 2160 mm.")).toBeVisible();
		await press(page, "Leave it");
		await expect(title(page)).toHaveText("Is anything on the walls?");
		await page.getByRole("combobox", { name: "Wall" }).selectOption({ label: "Right wall" });
		await press(page, "Tape it");
		for (const [asked, figure] of [
			["Place of the pipe, right wall", "310"],
			["Width of the pipe, right wall", "28"],
			["Lower edge of the pipe, right wall", "0"],
			["Upper edge of the pipe, right wall", "2100"],
			["Depth of the pipe, right wall", "60"],
		] as const) {
			await expect(title(page)).toHaveText(asked);
			await write(page, figure);
		}
		await press(page, "Nothing else");
		// Gone to out of turn, the walls are still to be taped.
		await expect(title(page)).toHaveText("Run of the left wall");
		await tapeAll(page, (figure) => write(page, figure));
		await expect(title(page)).toHaveText("All taped");
		const row = (name: string) => page.getByRole("listitem").filter({ hasText: name });
		await expect(row("Place of the pipe, right wall")).toContainText("310 mm");
		const left = page.getByRole("region", { name: "Left as it is" });
		await expect(left.getByRole("listitem")).toHaveText([
			/Head of opening 2/,
			/Head of opening 3/,
			/Height of the track/,
		]);
		await press(page, "Loosen the run of the right wall");
		// Counted a quarter, ± 1.96 · 4.
		await expect(row("Run of the right wall").first()).toContainText("± 7.8 mm");
		await press(page, "Remove the run of the right wall");
		await expect(left.getByRole("listitem").first()).toContainText("Run of the right wall");
	});

	test("by the keyboard alone", async ({ page }) => {
		await openOnPhone(page, "Quay Cottage", "Tape");
		await page.getByRole("tab", { name: "Tape", exact: true }).focus();
		for (let i = 0; i < 12 && !(await field(page).evaluate((each) => each === document.activeElement)); i++)
			await page.keyboard.press("Tab");
		await expect(field(page)).toBeFocused();
		const count = await tapeAll(page, async (figure) => {
			await page.keyboard.type(figure);
			await page.keyboard.press("Enter");
		});
		expect(count).toBeGreaterThan(4);
		await expect(field(page)).toBeFocused();
		await expect(standing(page)).toContainText("Closes within 0 mm.");
		await page.keyboard.press("Shift+Tab");
		await page.keyboard.press("Enter");
		await expect(title(page)).not.toHaveText(/^Head/);
		await page.keyboard.press("Control+z");
		await expect(page.getByRole("button", { name: /^Redo: take/ })).toBeVisible();
	});

	test("nothing is found wrong with it asking, in doubt, and at the end", async ({ page }) => {
		await openOnPhone(page, "Quay Cottage", "Tape");
		await isFaultless(page);
		await tapeAll(page, (figure) => write(page, figure));
		await isFaultless(page);
		await page.getByRole("button", { name: /^List/ }).tap();
		await press(page, "Take the run of the left wall again");
		await write(page, "1040");
		await expect(page.locator(".readings-doubt")).toBeVisible();
		await isFaultless(page);
		await page.getByRole("button", { name: /^List/ }).tap();
		await isFaultless(page);
	});
});

test.describe("on a tablet", () => {
	test.use({ viewport: { width: 1024, height: 768 } });

	test("the same is a sheet over the desk, with a way back of its own", async ({ page }) => {
		await openExample(page, "Quay Cottage");
		await page.getByRole("button", { name: "Tape step by step" }).click();
		await expect(page.getByRole("dialog", { name: "Tape step by step" })).toBeVisible();
		for (const each of "900") await page.getByRole("button", { name: each, exact: true }).click();
		await page.getByRole("button", { name: "Take", exact: true }).click();
		const count = 1 + (await tapeAll(page, (figure) => write(page, figure)));
		await expect(standing(page)).toContainText("Closes within 0 mm.");
		await isFaultless(page);
		await page
			.getByRole("dialog")
			.getByRole("button", { name: /^Undo: take/ })
			.click();
		await page.getByRole("button", { name: "Close", exact: true }).click();
		await expect(page.getByText(`${count - 1} taped`)).toBeAttached();
	});
});
