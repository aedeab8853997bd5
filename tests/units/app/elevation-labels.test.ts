import { readdirSync, readFileSync } from "node:fs";
import { zoomAt } from "@baywright/editor";
import { parseJob } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import type { Palette } from "../../../packages/app/src/canvas/palette.ts";
import { fitElevation } from "../../../packages/app/src/elevation/fit-elevation.ts";
import { labelsOf } from "../../../packages/app/src/elevation/labels.ts";
import { ladderOf } from "../../../packages/app/src/elevation/ladder.ts";
import { type Elevation, type ElevationScene, onScreen } from "../../../packages/app/src/elevation/scene.ts";
import { elevated, jobOf, SQUARE } from "./elevation-job.ts";
import { boxesShare, cornersOf } from "./overlap.ts";

/** About what the drawing's type comes to. */
const measure = (text: string): number => text.length * 7.5;

const folder = new URL("../../../examples/", import.meta.url);
const examples = readdirSync(folder).filter((name) => name.endsWith(".baywright.json"));

function example(name: string): Elevation {
	const parsed = parseJob(JSON.parse(readFileSync(new URL(name, folder), "utf8")));
	if (!parsed.ok) throw new Error("not a job");
	return elevated(parsed.job);
}

function sceneOf(elevation: Elevation, size: ElevationScene["size"], zoom = 1): ElevationScene {
	const fitted = fitElevation(elevation, size, measure);
	const view = zoomAt(fitted, { left: size.width * 0.6, top: size.height * 0.4 }, zoom);
	return { ...elevation, view, size, palette: {} as Palette, measure };
}

const sizes = [
	{ width: 1080, height: 280 },
	{ width: 680, height: 240 },
	{ width: 680, height: 110 },
];

const crowded = elevated(
	jobOf({
		corners: SQUARE,
		ceiling: 2400,
		openings: [0, 1, 2].map((wall) => ({ wall, from: 100, to: 800, sill: 600 + 20 * wall, head: 2050 + 30 * wall })),
		obstacles: Array.from({ length: 8 }, (_, i) => ({
			kind: "socket",
			wall: i % 3,
			from: 100 + 60 * i,
			to: 186 + 60 * i,
			bottom: 200 + 30 * i,
			top: 286 + 30 * i,
		})),
	}),
);

describe("figures on the elevation", () => {
	const all = [...examples.map((name) => [name, () => example(name)] as const), ["crowded", () => crowded] as const];
	it.each(all)("%s: none covers another or runs off, at any size and zoom", (_, elevation) => {
		const bay = elevation();
		for (const size of sizes) {
			for (const zoom of [1, 1.7, 6, 0.4]) {
				const scene = sceneOf(bay, size, zoom);
				const ladder = ladderOf(scene);
				const labels = labelsOf(scene, ladder, { kind: "opening", index: 0, part: "whole" }, new Map());
				labels.forEach((label, i) => {
					for (const { left, top } of cornersOf(label.box)) {
						expect(left).toBeGreaterThanOrEqual(ladder.edge - 1);
						expect(left).toBeLessThanOrEqual(size.width);
						expect(top).toBeGreaterThanOrEqual(0);
						expect(top).toBeLessThanOrEqual(size.height);
					}
					for (const other of labels.slice(0, i)) expect(boxesShare(label.box, other.box, -0.01)).toBe(false);
				});
				const figures = ladder.rungs.map(({ text }) => text).sort((a, b) => a - b);
				figures.forEach((text, i) => {
					expect(text).toBeGreaterThan(0);
					expect(text).toBeLessThan(size.height);
					if (i > 0) expect(text - (figures[i - 1] as number)).toBeGreaterThan(15);
				});
			}
		}
	});

	it("every run stands under its wall where the whole bay shows", () => {
		const scene = sceneOf(elevated(jobOf({ corners: SQUARE })), { width: 1080, height: 300 });
		const runs = labelsOf(scene, ladderOf(scene), null, new Map()).flatMap((it) => (it.kind === "run" ? [it] : []));
		expect(runs.map(({ text }) => text).sort()).toEqual(["1800", "900", "900"]);
		for (const { wall, box } of runs) {
			const face = scene.unrolled.walls[wall];
			expect(box.left).toBeGreaterThan(onScreen(scene, face?.from ?? 0, 0).left);
			expect(box.left).toBeLessThan(onScreen(scene, face?.to ?? 0, 0).left);
			expect(box.top).toBeGreaterThan(scene.view.top);
		}
	});

	it("fits whole, with the ladder at the left", () => {
		for (const name of examples) {
			const scene = sceneOf(example(name), { width: 1080, height: 280 });
			const ladder = ladderOf(scene);
			expect(onScreen(scene, 0, 0).left).toBeGreaterThan(ladder.edge);
			expect(onScreen(scene, scene.unrolled.length, 0).left).toBeLessThan(1080);
			expect(onScreen(scene, 0, scene.heights.ceiling.mm).top).toBeGreaterThan(20);
			expect(scene.view.top).toBeLessThan(280 - 30);
			expect(ladder.rungs.map(({ name: rung }) => rung)).toContain("track");
		}
	});
});
