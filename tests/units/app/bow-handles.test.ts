import { libraryOf, parseJob, planBay } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import { bowHandles, cornerHandles, wallHandles } from "../../../packages/app/src/canvas/handles.ts";
import type { Palette } from "../../../packages/app/src/canvas/palette.ts";
import { reach } from "../../../packages/app/src/canvas/reach.ts";
import { type Scene, subjectOf } from "../../../packages/app/src/canvas/scene.ts";

const NOTHING_WRITTEN = { labels: [], byKey: new Map(), marks: [], survey: null };

/** A finger is taken to be 44 px across: common practice, no source. */
const FINGER = 44;

function sceneOf(corners: readonly (readonly [number, number])[], scale: number, rises: readonly number[] = []): Scene {
	const walls = corners.slice(1).map((_, i) => ({ rise: rises[i] ?? 0 }));
	const parsed = parseJob({ format: "baywright-job", version: 1, bays: [{ id: "b", corners, walls }] });
	if (!parsed.ok) throw new Error("not a job");
	const [bay] = parsed.job.bays;
	if (bay === undefined) throw new Error("no bay");
	return {
		...subjectOf(bay, planBay(bay, libraryOf(parsed.job)), "mm"),
		view: { scale, left: 300, top: 400 },
		size: { width: 900, height: 600 },
		palette: {} as Palette,
		measure: (text) => text.length * 8,
	};
}

const one = (length: number) => [[0, 0] as const, [length, 0] as const];

describe("the handles of a wall", () => {
	it("are a bar and, on a wall long enough for both, an arch a finger apart", () => {
		for (let length = 64; length < 700; length += 3) {
			const scene = sceneOf(one(length), 1);
			const [bar] = wallHandles(scene);
			const [bow] = bowHandles(scene);
			if (bar === undefined) throw new Error("no bar");
			expect(bow === undefined).toBe(length < 102);
			if (bow !== undefined)
				expect(Math.hypot(bow.at.left - bar.at.left, bow.at.top - bar.at.top)).toBeGreaterThanOrEqual(FINGER);
			if (length >= 150) expect(bow?.at.left).toBeCloseTo(300 + length / 2, 6);
		}
	});

	it("move no further than the wall grows", () => {
		const bars = Array.from({ length: 600 }, (_, i) => wallHandles(sceneOf(one(64 + i), 1))[0]?.at.left ?? Number.NaN);
		for (const [i, left] of bars.slice(1).entries()) expect(Math.abs(left - (bars[i] as number))).toBeLessThan(1.2);
	});

	it("stand on the outer line, arched the way the wall bows", () => {
		const out = sceneOf(one(2000), 0.25, [300]);
		expect(bowHandles(out)[0]).toMatchObject({ side: 1, at: { left: 550, top: 400 - 0.25 * 410 } });
		const into = sceneOf(one(2000), 0.25, [-300]);
		expect(bowHandles(into)[0]).toMatchObject({ side: -1, at: { left: 550, top: 400 + 0.25 * 190 } });
		expect(bowHandles(out)[0]?.turn).toBeCloseTo(0, 9);
	});

	it("are each taken by a finger on them, and by whichever is nearer between them", () => {
		for (const scale of [0.17, 0.3, 0.6]) {
			const scene = sceneOf(
				[
					[0, 0],
					[0, 900],
					[1800, 900],
					[1800, 0],
				],
				scale,
			);
			const take = (at: { left: number; top: number }) => reach(scene, NOTHING_WRITTEN, null, at, "touch");
			for (const { wall, at } of wallHandles(scene)) expect(take(at)).toEqual({ kind: "wall", index: wall });
			for (const { wall, at } of bowHandles(scene)) expect(take(at)).toEqual({ kind: "bow", index: wall });
			for (const { corner, at } of cornerHandles(scene)) expect(take(at)).toEqual({ kind: "corner", index: corner });
			for (const bow of bowHandles(scene)) {
				const bar = wallHandles(scene).find(({ wall }) => wall === bow.wall);
				if (bar === undefined) throw new Error("a bow without a bar");
				const between = (share: number) => ({
					left: bow.at.left + (bar.at.left - bow.at.left) * share,
					top: bow.at.top + (bar.at.top - bow.at.top) * share,
				});
				expect(take(between(0.25))?.kind).toBe("bow");
				expect(take(between(0.7))?.kind).toBe("wall");
			}
		}
	});

	it("on both sides of a nib stand apart", () => {
		const scene = sceneOf(
			[
				[0, 0],
				[900, 0],
				[900, -700],
				[1000, -700],
				[1000, 0],
				[1900, 0],
			],
			0.5,
		);
		const all = [...wallHandles(scene), ...bowHandles(scene)].filter(({ wall }) => wall === 1 || wall === 3);
		expect(all).toHaveLength(4);
		all.forEach((a, i) => {
			for (const b of all.slice(i + 1))
				expect(Math.hypot(a.at.left - b.at.left, a.at.top - b.at.top)).toBeGreaterThanOrEqual(FINGER);
		});
	});
});
