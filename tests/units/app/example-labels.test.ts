import { readFileSync } from "node:fs";
import { libraryOf, parseJob, planBay } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import { fitBay } from "../../../packages/app/src/canvas/fit-bay.ts";
import { layOut } from "../../../packages/app/src/canvas/labels/layout.ts";
import type { Palette } from "../../../packages/app/src/canvas/palette.ts";
import { subjectOf } from "../../../packages/app/src/canvas/scene.ts";

/** A desk of 1440 × 900 leaves about so much for the plan. */
const size = { width: 1080, height: 650 };

/** About what the drawing's type comes to. */
const measure = (text: string): number => text.length * 7.5;

function textsIn(example: string): string[] {
	const file = new URL(`../../../examples/${example}.baywright.json`, import.meta.url);
	const parsed = parseJob(JSON.parse(readFileSync(file, "utf8")));
	const bay = parsed.ok ? parsed.job.bays[0] : undefined;
	if (!parsed.ok || bay === undefined) throw new Error("not a job");
	const subject = subjectOf(bay, planBay(bay, libraryOf(parsed.job)), "mm");
	const view = fitBay(subject, size, { head: 0, corner: { width: 190, height: 52 } }, measure);
	const { labels } = layOut({ ...subject, view, size, palette: {} as Palette, measure }, [], new Map());
	return labels.flatMap((label) => (label.kind === "note" ? label.lines.map(({ text }) => text) : []));
}

describe("on the plans of the examples", () => {
	it("every corner round a chimney breast is labelled, the two in its nooks as well", () => {
		expect(textsIn("malt-loft").filter((text) => text === "R 150")).toHaveLength(4);
	});

	it("corners too close together for numbers in their handles are named beside them", () => {
		const texts = textsIn("weir-keeper");
		for (const corner of [1, 2, 3, 4]) expect(texts.filter((text) => text === `corner ${corner}`)).toHaveLength(1);
		expect(textsIn("malt-loft").some((text) => text.startsWith("corner"))).toBe(false);
	});

	it("the radius along a bowed wall is told once", () => {
		// Chord 2300 and rise 210: face of radius (1150² + 210²)/420, the track 60 within it.
		const radius = Math.round((1150 ** 2 + 210 ** 2) / 420 - 60);
		expect(textsIn("bandstand").filter((text) => text === `R ${radius}`)).toHaveLength(1);
	});

	it("how far a bridging bend stands off carries its sign", () => {
		const said = textsIn("lantern-room").filter((text) => text.startsWith("stand-off"));
		expect(said.length).toBeGreaterThan(2);
		for (const text of said) expect(text).toMatch(/^stand-off [+−]\d+$/);
	});
});
