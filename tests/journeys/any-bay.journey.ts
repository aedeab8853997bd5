import { cornerRow, cut, exampleFile, expect, openExample, test, toStage } from "./app.ts";
import { bend, cutLength, isClearOfHalf, tape, whole } from "./by-hand.ts";

test("round a chimney breast: external corners by hand", async ({ page }) => {
	await openExample(page, "Malt Loft");
	await toStage(page, "Track");
	const walls = tape(exampleFile("malt-loft").bays[0].corners);
	expect(walls.angles).toEqual([90, 270, 270, 90]);
	// Flexible at projection 60: radius 150, nothing taken up at the ends.
	const track = { projection: 60, radius: 150, start: 60, end: 1340, takeUp: 0 };
	// Legs 1330, 420, 1420, 420 and 1280 between virtual corners, less 8 tangents of 150, plus 4 quarters round 150.
	const summed = 1330 + 420 + 1420 + 420 + 1280 - 8 * 150 + 4 * 150 * (Math.PI / 2);
	expect(cutLength(walls, track)).toBeCloseTo(summed, 6);
	expect(isClearOfHalf(summed)).toBe(true);
	await expect(cut(page)).toHaveText(whole(summed));
	const sweep = whole(150 * (Math.PI / 2));
	// Set-backs along the face: 60 + 150 inside, 150 − 60 outside.
	await expect(cornerRow(page, 1)).toContainText(["90.0°", "150", "210", sweep]);
	await expect(cornerRow(page, 2)).toContainText(["270.0°", "150", "90", sweep]);
	await expect(cornerRow(page, 3)).toContainText(["270.0°", "150", "90", sweep]);
	await expect(cornerRow(page, 4)).toContainText(["90.0°", "150", "210", sweep]);
});

test("a facet too short for two bends: one bend goes past both corners, touching where the facet's leg would be", async ({
	page,
}) => {
	await openExample(page, "The Old Smithy");
	await toStage(page, "Track");
	const walls = tape(exampleFile("smithy").bays[0].corners);
	// Light corded: projection 40, least radius 225, 40 mm straight beside each bend, 100 mm for each end pulley.
	const [projection, least, straight] = [40, 225, 40];
	const tangents = walls.angles.map((angle) => 1 / Math.tan((angle / 360) * Math.PI));
	const sum = tangents.reduce((a, b) => a + b);
	// The facet's leg between virtual corners, and the one circle that touches it and both legs beside it.
	const leg = (walls.runs[1] as number) - projection * sum;
	expect(leg).toBeLessThan(least * sum + 2 * straight);
	const radius = leg / sum;
	expect(radius).toBeGreaterThan(least);
	const byHand = cutLength(walls, { projection, radius, start: 60, end: 1290, takeUp: 200 });
	const turn = walls.angles.reduce((whole, angle) => whole + 180 - angle, 0);
	const sweep = radius * ((turn * Math.PI) / 180);
	const setBacks = walls.angles.map((angle) => bend(angle, projection, radius).setBack);
	for (const figure of [byHand, radius, sweep, ...setBacks]) expect(isClearOfHalf(figure), `${figure}`).toBe(true);

	await expect(cut(page)).toHaveText(whole(byHand));
	const corners = page.getByRole("table").filter({ has: page.getByRole("columnheader", { name: "set-back" }) });
	await expect(corners.getByRole("rowheader", { name: "one bend, corners 1–2", exact: true })).toBeVisible();
	await expect(cornerRow(page, 1).nth(0)).toHaveText(`${walls.angles[0]?.toFixed(1)}°`);
	await expect(cornerRow(page, 1).nth(1)).toHaveText(whole(radius));
	await expect(cornerRow(page, 1).nth(2)).toContainText(whole(setBacks[0] as number));
	await expect(cornerRow(page, 1).nth(3)).toHaveText(whole(sweep));
	// Radius and sweep are said once, for both.
	await expect(cornerRow(page, 2).nth(1)).toHaveText("");
	await expect(cornerRow(page, 2).nth(2)).toContainText(whole(setBacks[1] as number));
	await expect(cornerRow(page, 2).nth(3)).toHaveText("");
});
