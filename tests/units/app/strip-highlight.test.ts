import { readFileSync } from "node:fs";
import { type BayPlan, libraryOf, parseJob, planBay } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import type { Palette } from "../../../packages/app/src/canvas/palette.ts";
import { layStrip, type StripLayout } from "../../../packages/app/src/strip/layout.ts";
import { leftOf, reachStrip } from "../../../packages/app/src/strip/reach.ts";

function planOf(example: string): BayPlan {
	const file = new URL(`../../../examples/${example}.baywright.json`, import.meta.url);
	const parsed = parseJob(JSON.parse(readFileSync(file, "utf8")));
	const bay = parsed.ok ? parsed.job.bays[0] : undefined;
	if (!parsed.ok || bay === undefined) throw new Error("not a job");
	return planBay(bay, libraryOf(parsed.job));
}

const WIDTH = 1000;

/** The strip with `scale` px to the mm, its left end `left` px from the edge. */
function stripOf(plan: BayPlan, view: StripLayout["view"] | null): StripLayout {
	const measure = (text: string) => text.length * 7.5;
	const size = { width: WIDTH, height: 140 };
	return layStrip({ plan, alone: null, unit: "mm", size, palette: {} as Palette, from: "left", view, measure });
}

describe("what is chosen elsewhere on screen", () => {
	it("is found on the strip where its own reading says, whole and zoomed in", () => {
		const plan = planOf("saltmarsh-house");
		const [piece] = plan.pieces;
		for (const view of [null, { scale: 2, left: -700 }]) {
			const strip = stripOf(plan, view);
			for (const mark of piece?.marks ?? []) {
				if (mark.kind !== "bracket" && mark.kind !== "bend-middle") continue;
				const kind = mark.kind === "bracket" ? "bracket" : "bend";
				const left = leftOf(strip, { kind, index: mark.of });
				expect(left).toBeCloseTo(strip.view.left + mark.fromLeft * strip.view.scale, 6);
				if (left === null || kind !== "bracket") continue;
				expect(reachStrip(strip, { left, top: strip.middle }, "mouse")).toEqual({ kind, index: mark.of });
			}
		}
	});

	it("a corner that a bend passes with others means that bend", () => {
		const plan = planOf("smithy");
		const strip = stripOf(plan, null);
		const shared = plan.corners.filter(({ corners }) => corners.length > 1);
		expect(shared.length).toBeGreaterThan(1);
		const places = shared.map(({ corner }) => leftOf(strip, { kind: "corner", index: corner }));
		expect(places[0]).not.toBeNull();
		expect(new Set(places).size).toBe(1);
	});

	it("is nowhere on the strip where the strip does not have it", () => {
		const strip = stripOf(planOf("saltmarsh-house"), null);
		expect(leftOf(strip, { kind: "bracket", index: 99 })).toBeNull();
		expect(leftOf(strip, { kind: "wall", index: 1 })).toBeNull();
		expect(leftOf(strip, { kind: "bow", index: 1 })).toBeNull();
	});
});
