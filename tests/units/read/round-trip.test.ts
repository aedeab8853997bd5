import { readdirSync } from "node:fs";
import { composeSheets, writeDxf, writeSvg } from "@baywright/sheets";
import { describe, expect, test } from "vitest";
import { example } from "../sheets/jobs.ts";
import { anglesOf, runsOf, wallsOf } from "./reading.ts";

const names = readdirSync(new URL("../../../examples/", import.meta.url))
	.filter((name) => name.endsWith(".baywright.json"))
	.map((name) => name.replace(".baywright.json", ""))
	.sort();

/** Every figure of two lists within `within`. */
function expectNear(found: readonly number[], wanted: readonly number[], within: number): void {
	expect(found).toHaveLength(wanted.length);
	found.forEach((each, i) => {
		expect(Math.abs(each - (wanted[i] ?? Number.NaN)), `${found} is not ${wanted}`).toBeLessThanOrEqual(within);
	});
}

describe.each(names)("%s", (name) => {
	const { job, plans } = example(name);
	const [sheet] = composeSheets(job, plans, {}, ["fitting"]);
	const chain = plans[0]?.chain;
	const bay = {
		corners: chain?.corners.map(({ x, y }) => [x, y] as const) ?? [],
		rises: chain?.walls.map(({ bow }) => bow?.rise ?? 0) ?? [],
	};

	test.runIf(sheet !== undefined && bay.corners.length > 1)("the plan as DXF and as SVG gives the walls back", () => {
		const figure = sheet?.figures.find((each) => each.name === "plan");
		const page = sheet?.pages[0];
		if (figure === undefined || page === undefined) throw new Error("no plan");
		for (const text of [writeDxf(figure), writeSvg(page, "Fitting sheet")]) {
			let walls = wallsOf(text);
			// A wall round an external corner alone is as likely the wall of a room round an internal one.
			if (
				Math.abs((runsOf(walls)[0] ?? 0) - (runsOf(bay)[0] ?? 0)) > 0.01 ||
				walls.rises.some((rise, i) => rise * (bay.rises[i] ?? 0) < 0)
			)
				walls = wallsOf(text, { otherSide: true });
			expect(walls.layer).toBe("WALLS");
			expect(walls.problems).toEqual([]);
			expect(walls.unit.guessed).toBe(false);
			expectNear(runsOf(walls), runsOf(bay), 0.01);
			expectNear(walls.rises, bay.rises, 0.01);
			expectNear(anglesOf(walls), anglesOf(bay), 0.01);
		}
	});
});
