import { cornerRow, cut, exampleFile, expect, openExample, test, toStage } from "./app.ts";
import { bend, cutLength, isClearOfHalf, tape, whole } from "./by-hand.ts";

test("the impossible bay says by how much, and its cure gives a cut length", async ({ page }) => {
	await openExample(page, "The Pepperpot");
	await toStage(page, "Track");
	const walls = tape(exampleFile("pepperpot").bays[0].corners);
	// Light corded: projection 40, least radius 225, 40 mm straight beside each bend.
	const tightest = walls.angles.map((angle) => bend(angle, 40, 225).setBack);
	const needed = tightest.reduce((sum, setBack) => sum + setBack, 2 * 40);
	const front = walls.runs[1] as number;
	const findings = page.getByRole("region", { name: "Findings" });
	await expect(findings).toContainText("1 refusal");
	await expect(findings).toContainText(`${whole(front)} mm long`);
	await expect(findings).toContainText(`${whole(needed)} mm, ${whole(needed - front)} mm more`);
	await expect(cut(page)).toHaveText("Do not cut");
	await expect(cornerRow(page, 1)).toContainText([`${walls.angles[0]?.toFixed(1)}°`, "–", "–", "–", "–"]);

	await findings.getByRole("button", { name: "Use Flexible" }).click();
	// Flexible: projection 40, preferred radius 150, least 60, 20 mm straight beside each bend, nothing taken up at the
	// ends. The front wall holds no two bends of 150: both go as far from 60 towards it, so both have the radius that
	// leaves its leg just the straights.
	const cots = walls.angles.reduce((sum, angle) => sum + 1 / Math.tan((angle / 360) * Math.PI), 0);
	const radius = (front - 40 * cots - 2 * 20) / cots;
	expect(radius).toBeGreaterThan(60);
	expect(radius).toBeLessThan(150);
	const byHand = cutLength(walls, { projection: 40, radius, start: 40, end: 660, takeUp: 0 });
	expect([byHand, radius].every(isClearOfHalf)).toBe(true);
	await expect(cut(page)).toHaveText(whole(byHand));
	for (const corner of [1, 2]) await expect(cornerRow(page, corner).nth(1)).toHaveText(whole(radius));
	await expect(findings).not.toContainText("refusal");

	await page.getByRole("button", { name: "Undo: Use Flexible" }).click();
	await expect(cut(page)).toHaveText("Do not cut");
});
