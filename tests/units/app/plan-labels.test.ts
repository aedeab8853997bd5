import { type Point, pointAt } from "@baywright/geometry";
import { libraryOf, parseJob, planBay } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitBay } from "../../../packages/app/src/canvas/fit-bay.ts";
import type { Box } from "../../../packages/app/src/canvas/labels/box.ts";
import { layOut } from "../../../packages/app/src/canvas/labels/layout.ts";
import type { Palette } from "../../../packages/app/src/canvas/palette.ts";
import { type Scene, subjectOf } from "../../../packages/app/src/canvas/scene.ts";
import { type ScreenPoint, toScreen, type Viewport, zoomAt } from "../../../packages/editor/src/viewport.ts";
import { boxesShare, cornersOf, insideBox } from "./overlap.ts";

const size = { width: 900, height: 560 };

/** About what the drawing's type comes to. */
const measure = (text: string): number => text.length * 8;

/** Zoom and scale buttons over the drawing. */
const over: Box = { left: 800, top: 530, halfWidth: 90, halfHeight: 22, turn: 0 };

const runs = fc.array(fc.integer({ min: 250, max: 2600 }), { minLength: 2, maxLength: 7 });
const turns = fc.array(fc.integer({ min: 5, max: 90 }), { minLength: 6, maxLength: 6 });
const zoom = fc.constantFrom(0.4, 0.7, 1, 1.6, 3);

function sceneOf(lengths: readonly number[], bends: readonly number[], factor: number): Scene {
	let heading = 80;
	let at: [number, number] = [0, 0];
	const corners = [at];
	lengths.forEach((length, i) => {
		const angle = (heading * Math.PI) / 180;
		at = [Math.round(at[0] + length * Math.cos(angle)), Math.round(at[1] + length * Math.sin(angle))];
		corners.push(at);
		heading -= bends[i] ?? 30;
	});
	const readings = [{ kind: "run", wall: 0, value: lengths[0] }];
	const openings = [{ wall: 1, from: 60, to: 200 }];
	const parsed = parseJob({
		format: "baywright-job",
		version: 1,
		bays: [
			{ id: "b", corners, readings, openings, obstacles: [{ kind: "socket", wall: 0, from: 100, to: 186, depth: 10 }] },
		],
	});
	if (!parsed.ok) throw new Error(parsed.problems.map(({ path }) => path).join());
	const [bay] = parsed.job.bays;
	if (bay === undefined) throw new Error("no bay");
	const subject = subjectOf(bay, planBay(bay, libraryOf(parsed.job)), "mm");
	const fitted: Viewport = fitBay(subject, size, { head: 0, corner: { width: 190, height: 52 } }, measure);
	return {
		...subject,
		view: zoomAt(fitted, { left: 450, top: 280 }, factor),
		size,
		palette: {} as Palette,
		measure,
	};
}

/** Places on the walls' faces, along the track and at the brackets, close enough together that no label slips between. */
function inkOf({ walls, plan, view }: Scene): ScreenPoint[] {
	const faces = walls.flatMap((wall) => {
		if (wall === null) return [];
		const [from, to] = [wall.face[0], wall.face.at(-1)] as [Point, Point];
		return Array.from({ length: 201 }, (_, i) => ({
			x: from.x + ((to.x - from.x) * i) / 200,
			y: from.y + ((to.y - from.y) * i) / 200,
		}));
	});
	const { path } = plan;
	const track = path === null ? [] : Array.from({ length: 801 }, (_, i) => pointAt(path, (path.length * i) / 800)?.at);
	const all = [...faces, ...track.filter((at) => at !== undefined), ...plan.brackets.map(({ at }) => at)];
	return all.map((at) => toScreen(view, at));
}

describe("labels of a plan", () => {
	it("never cover each other, the walls, the track or the brackets, and never run off", () => {
		fc.assert(
			fc.property(runs, turns, zoom, (lengths, bends, factor) => {
				const scene = sceneOf(lengths, bends, factor);
				const { labels } = layOut(scene, [over], new Map());
				const writing = labels.filter(({ kind }) => kind !== "badge");
				const ink = inkOf(scene);
				const wrong = writing.flatMap(({ box }, i) => [
					...writing.slice(i + 1).filter((other) => boxesShare(box, other.box, -0.05)),
					...(boxesShare(box, over, -0.05) ? ["over the buttons"] : []),
					...cornersOf(box).filter(({ left, top }) => left < 0 || left > size.width || top < 0 || top > size.height),
					...ink.filter((at) => insideBox(box, at)),
				]);
				expect(wrong).toEqual([]);
			}),
			{ numRuns: 120 },
		);
	});

	it("tell every run, bend and stack-back of an ordinary bay when the bay fits the screen", () => {
		const { labels } = layOut(sceneOf([900, 1800, 900], [45, 45, 45], 1), [over], new Map());
		const texts = labels.flatMap((label) =>
			label.kind === "run" ? [label.text] : label.kind === "note" ? label.lines.map(({ text }) => text) : [],
		);
		expect(texts.filter((text) => /^(899|900|901) ± 4$/.test(text))).toHaveLength(1);
		expect(texts.filter((text) => /^(899|900|901|1799|1800|1801)$/.test(text))).toHaveLength(2);
		expect(texts.filter((text) => /^R \d+$/.test(text))).toHaveLength(2);
		expect(texts.filter((text) => /^13[45]\.\d°$/.test(text))).toHaveLength(2);
		expect(texts.filter((text) => text.startsWith("stack-back"))).toHaveLength(2);
	});
});
