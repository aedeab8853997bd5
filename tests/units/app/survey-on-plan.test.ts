import { readFileSync } from "node:fs";
import { type Bay, findSystem, libraryOf, parseJob, planBay, settle, type TrackSystem } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { doubtsOf } from "../../../packages/app/src/canvas/doubts.ts";
import { ELLIPSE_AT_95, ellipsesOf, onEllipse, roundScale } from "../../../packages/app/src/canvas/ellipses.ts";
import { fitBay } from "../../../packages/app/src/canvas/fit-bay.ts";
import type { Box } from "../../../packages/app/src/canvas/labels/box.ts";
import { layOut } from "../../../packages/app/src/canvas/labels/layout.ts";
import type { Palette } from "../../../packages/app/src/canvas/palette.ts";
import { readingLine } from "../../../packages/app/src/canvas/reading-line.ts";
import { type Scene, subjectOf } from "../../../packages/app/src/canvas/scene.ts";
import { type ScreenPoint, toScreen } from "../../../packages/editor/src/viewport.ts";
import { boxesShare, insideBox } from "./overlap.ts";

const jobOf = (...bays: object[]) => {
	const parsed = parseJob({ format: "baywright-job", version: 1, bays });
	if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
	return parsed.job;
};
const library = libraryOf(jobOf());
const desk = { width: 1080, height: 620 };
const phone = { width: 390, height: 422 };

/** About what the drawing's type comes to. */
const measure = (text: string): number => text.length * 7.5;

const bayOf = (more: object): Bay => jobOf({ id: "b", ...more }).bays[0] as Bay;

const exampleOf = (name: string) => {
	const file = new URL(`../../../examples/${name}.baywright.json`, import.meta.url);
	return bayOf(JSON.parse(readFileSync(file, "utf8")).bays[0]);
};

function sceneOf(bay: Bay, { size = desk, surveying = true, scale = 0 } = {}): Scene {
	const subject = subjectOf(bay, planBay(bay, library, { trials: 0 }), "mm", surveying);
	const fitted = fitBay(subject, size, { head: 50, corner: { width: 190, height: 52 } }, measure);
	const view = scale === 0 ? fitted : { ...fitted, scale };
	return { ...subject, view, size, palette: {} as Palette, measure };
}

/** Zoom and scale buttons at the lower right. */
const buttons = ({ width, height }: { width: number; height: number }): Box => ({
	left: width - 95,
	top: height - 28,
	halfWidth: 95,
	halfHeight: 26,
	turn: 0,
});

describe("error ellipses", () => {
	it("are drawn at the largest of 1, 2, 5, 10 … that is asked for", () => {
		const series = Array.from({ length: 14 }, (_, power) =>
			[1, 2, 5].map((step) => Number(`${step}e${power - 6}`)),
		).flat();
		fc.assert(
			fc.property(fc.double({ min: 1e-5, max: 1e6, noNaN: true }), (most) => {
				expect(roundScale(most)).toBe(series.findLast((each) => each <= most));
			}),
		);
		for (const each of series.slice(3, -3)) expect(roundScale(each)).toBe(each);
	});

	it("never have a half axis over 40 px, and would have one at the next scale up", () => {
		const next = (times: number) => (String(times).replace(/[0.]/g, "") === "2" ? 2.5 : 2);
		for (const name of ["ferry-house", "sluice-cottage"]) {
			for (const scale of [0.05, 0.11, 0.31, 0.8, 2.2, 6]) {
				const { times, each } = ellipsesOf(sceneOf(exampleOf(name), { scale })) ?? { times: 0, each: [] };
				const longest = Math.max(...each.map(({ major }) => major));
				expect(longest).toBeLessThanOrEqual(40);
				expect(longest * next(times)).toBeGreaterThan(40);
			}
		}
	});

	// Published: tables of the χ² distribution, two degrees of freedom, 5.991 at 95 %.
	it("grow to 95 % by the root of χ²", () => {
		expect(ELLIPSE_AT_95 ** 2).toBeCloseTo(5.991, 2);
	});

	it("hold their corners in 95 of 100 surveys, each made up and settled by itself", () => {
		const seed = 5;
		const roll = normals(seed);
		const bay = exampleOf("ferry-house");
		const system = findSystem({ systems: [] }, bay.track.system) as TrackSystem;
		const scene = sceneOf(bay);
		const { times, each } = ellipsesOf(scene) as NonNullable<ReturnType<typeof ellipsesOf>>;
		// What the tape would read of the settled bay, without any error.
		const first = settle(bay, system);
		if (!first.ok) throw new Error("not settled");
		const really = first.value.readings.map(({ reading, residual }) => reading.value + residual);
		const surveys = 1000;
		const within = new Map(each.map(({ corner }) => [corner, 0]));
		for (let i = 0; i < surveys; i++) {
			const readings = bay.readings.map((reading, k) => ({
				...reading,
				value: (really[k] as number) + (reading.kind === "chord" ? 1 : 2) * roll(),
			}));
			const settled = settle({ ...bay, readings }, system);
			if (!settled.ok) throw new Error("not settled");
			for (const ellipse of each) {
				const [from, to] = [scene.corners[ellipse.corner], settled.value.corners[ellipse.corner]];
				if (!from || !to) throw new Error("no corner");
				const at = { x: from.x + (to.x - from.x) * times, y: from.y + (to.y - from.y) * times };
				const outline = Array.from({ length: 120 }, (_, share) => onEllipse(ellipse, share / 120));
				if (isInside(outline, toScreen(scene.view, at)))
					within.set(ellipse.corner, (within.get(ellipse.corner) as number) + 1);
			}
		}
		// Four deviations of a share of 0.95 from 1000 draws. Corner 1 only moves along its wall, which fixes the frame: its ellipse is a line.
		for (const corner of [2, 3])
			expect(Math.abs((within.get(corner) as number) / surveys - 0.95), `seed ${seed}`).toBeLessThan(0.0276);
		expect(each.map(({ corner }) => corner)).toEqual([1, 2, 3]);
	});
});

describe("readings that disagree", () => {
	it("the suspect says by how much the bay without it is longer or shorter", () => {
		const bay = exampleOf("sluice-cottage");
		const wrong = bay.readings.findIndex((each) => each.kind === "diagonal" && each.from === 1 && each.to === 4);
		const { corners } = sceneOf({ ...bay, readings: bay.readings.toSpliced(wrong, 1) });
		const [a, b] = [corners[1], corners[4]];
		const really = Math.hypot((b?.x ?? 0) - (a?.x ?? 0), (b?.y ?? 0) - (a?.y ?? 0));
		const off = Math.round(Math.abs((bay.readings[wrong]?.value ?? 0) - really));
		const [suspect, ...others] = doubtsOf(sceneOf(bay));
		expect(suspect).toMatchObject({ reading: wrong, degree: "suspect", text: `off by ${off} mm` });
		expect(others.length).toBeGreaterThan(0);
		expect(others.every(({ degree }) => degree === "apart")).toBe(true);
		const scene = sceneOf(bay);
		expect(suspect?.line).toEqual(
			[1, 4].map((corner) => toScreen(scene.view, scene.corners[corner] as { x: number; y: number })),
		);
	});

	it("are shown at every stage; ellipses of readings that agree in the survey alone", () => {
		const shown = (bay: Bay, surveying: boolean) => layOut(sceneOf(bay, { surveying }), [], new Map()).survey;
		expect(shown(exampleOf("ferry-house"), false)).toBeNull();
		expect(shown(exampleOf("ferry-house"), true)?.doubts).toEqual([]);
		expect(shown(exampleOf("sluice-cottage"), false)?.doubts.length).toBeGreaterThan(0);
		expect(shown(exampleOf("quay-cottage"), true)).toBeNull();
	});

	it("no writing stands on the suspect's line, on the key or on an ellipse's outline", () => {
		for (const name of ["ferry-house", "sluice-cottage"])
			for (const size of [desk, phone]) {
				const scene = sceneOf(exampleOf(name), { size });
				const over = [buttons(size)];
				const { labels, survey } = layOut(scene, over, new Map());
				const writing = labels.filter(({ kind }) => kind !== "badge");
				const key = survey?.key?.box as Box;
				expect(survey?.key?.text).toMatch(/^ellipses × \d+, 95 %$/);
				expect(boxesShare(key, over[0] as Box, -0.05)).toBe(false);
				const lines = (survey?.doubts ?? []).filter(({ degree }) => degree === "suspect").map(({ line }) => line);
				const outlines = (survey?.ellipses?.each ?? []).map((ellipse) =>
					Array.from({ length: 61 }, (_, i) => onEllipse(ellipse, i / 60)),
				);
				const ink = [...lines, ...outlines].flatMap((points) => alongOf(points));
				const wrong = writing.filter(({ box }) => boxesShare(box, key, -0.05) || ink.some((at) => insideBox(box, at)));
				expect(wrong, name).toEqual([]);
			}
	});
});

describe("where a reading was taken", () => {
	// A pier of 300 into the room, square: corners 2 and 3 are external.
	const corners = [
		[0, 0],
		[900, 0],
		[900, -300],
		[1500, -300],
		[1500, 0],
		[2400, 0],
	];
	const scene = sceneOf(bayOf({ corners, readings: [{ kind: "run", wall: 0, value: 900 }] }), { scale: 0.3 });

	it("an angle is an arc on the room's side, from face to face", () => {
		const middleOf = (corner: number) => {
			const line = readingLine(scene, { kind: "angle", corner, value: 90, sd: null }) ?? [];
			const at = line[(line.length - 1) / 2];
			const [x = 0, y = 0] = corners[corner] ?? [];
			return { right: Math.sign(Math.round((at?.x ?? x) - x)), up: Math.sign(Math.round((at?.y ?? y) - y)) };
		};
		// The room lies below the walls: in the nook at corner 1 it is to the lower left, round the pier's edge at corner 2 as well.
		expect(middleOf(1)).toEqual({ right: -1, up: -1 });
		expect(middleOf(2)).toEqual({ right: -1, up: -1 });
		expect(middleOf(3)).toEqual({ right: 1, up: -1 });
	});

	it("a square runs from its corner to its foot on the wall's line, a rise hardly there is still seen", () => {
		const square = readingLine(scene, { kind: "square", corner: 3, wall: 0, value: 300, sd: null });
		expect(square?.map(({ x, y }) => [Math.round(x), Math.round(y)])).toEqual([
			[1500, 0],
			[1500, -300],
		]);
		const [from, to] = readingLine(scene, { kind: "rise", wall: 4, at: null, value: 0, sd: null }) ?? [];
		expect(Math.hypot((to?.x ?? 0) - (from?.x ?? 0), (to?.y ?? 0) - (from?.y ?? 0)) * 0.3).toBeGreaterThan(12);
		expect(readingLine(scene, { kind: "diagonal", from: 0, to: 9, value: 1, sd: null })).toBeNull();
	});
});

/** Even-odd: how often a ray to the right meets the outline. */
function isInside(outline: readonly ScreenPoint[], { left, top }: ScreenPoint): boolean {
	return outline.reduce((inside, a, i) => {
		const b = outline[(i + 1) % outline.length] as ScreenPoint;
		const meets = a.top > top !== b.top > top && left < a.left + ((b.left - a.left) * (top - a.top)) / (b.top - a.top);
		return meets ? !inside : inside;
	}, false);
}

/** Points a px apart along a line. */
function alongOf(points: readonly ScreenPoint[]): ScreenPoint[] {
	return points.slice(1).flatMap((to, i) => {
		const from = points[i] as ScreenPoint;
		const steps = Math.ceil(Math.hypot(to.left - from.left, to.top - from.top));
		return Array.from({ length: steps }, (_, k) => ({
			left: from.left + ((to.left - from.left) * k) / steps,
			top: from.top + ((to.top - from.top) * k) / steps,
		}));
	});
}

/** Standard normal numbers (Box and Muller) from a small linear congruential generator (Numerical Recipes' constants). */
function normals(seed: number): () => number {
	let state = seed >>> 0;
	const uniform = () => {
		state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
		return (state + 0.5) / 2 ** 32;
	};
	return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
