import { type Point, pointAt } from "@baywright/geometry";
import { libraryOf, parseJob, planBay } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitBay } from "../../../packages/app/src/canvas/fit-bay.ts";
import type { NoteLabel } from "../../../packages/app/src/canvas/labels/label.ts";
import { layOut } from "../../../packages/app/src/canvas/labels/layout.ts";
import type { Palette } from "../../../packages/app/src/canvas/palette.ts";
import { type Scene, subjectOf } from "../../../packages/app/src/canvas/scene.ts";
import { type ScreenPoint, toScreen, zoomAt } from "../../../packages/editor/src/viewport.ts";
import { boxesShare, insideBox } from "./overlap.ts";

const size = { width: 900, height: 560 };

/** About what the drawing's type comes to. */
const measure = (text: string): number => text.length * 8;

type Corner = readonly [number, number];

function sceneOf(corners: readonly Corner[], rises: readonly number[], more: object = {}, factor = 1): Scene {
	const walls = corners.slice(1).map((_, i) => ({ rise: rises[i] ?? 0 }));
	const parsed = parseJob({ format: "baywright-job", version: 1, bays: [{ id: "b", corners, walls, ...more }] });
	if (!parsed.ok) throw new Error(parsed.problems.map(({ path }) => path).join());
	const [bay] = parsed.job.bays;
	if (bay === undefined) throw new Error("no bay");
	const subject = subjectOf(bay, planBay(bay, libraryOf(parsed.job)), "mm");
	const fitted = fitBay(subject, size, { head: 0, corner: { width: 0, height: 0 } }, measure);
	const view = zoomAt(fitted, { left: 450, top: 280 }, factor);
	return { ...subject, view, size, palette: {} as Palette, measure };
}

function chain(lengths: readonly number[], turns: readonly number[]): Corner[] {
	let heading = 80;
	let at: Corner = [0, 0];
	return [
		at,
		...lengths.map((length, i) => {
			const angle = (heading * Math.PI) / 180;
			heading -= turns[i] ?? 0;
			at = [Math.round(at[0] + length * Math.cos(angle)), Math.round(at[1] + length * Math.sin(angle))];
			return at;
		}),
	];
}

/** Places on the walls' faces and along the track, close enough together that no label slips between. */
function inkOf({ walls, plan: { path }, view }: Scene): ScreenPoint[] {
	const faces = walls.flatMap((wall) =>
		wall === null ? [] : wall.face.flatMap((at, i) => between(at, wall.face[i + 1])),
	);
	const track = path === null ? [] : Array.from({ length: 801 }, (_, i) => pointAt(path, (path.length * i) / 800)?.at);
	return [...faces, ...track.filter((at) => at !== undefined)].map((at) => toScreen(view, at));
}

const between = (from: Point, to: Point | undefined): Point[] =>
	to === undefined
		? []
		: Array.from({ length: 41 }, (_, i) => ({
				x: from.x + ((to.x - from.x) * i) / 40,
				y: from.y + ((to.y - from.y) * i) / 40,
			}));

const crosses = (p: ScreenPoint, q: ScreenPoint, r: ScreenPoint, s: ScreenPoint): boolean =>
	side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0;

const side = (a: ScreenPoint, b: ScreenPoint, at: ScreenPoint): number =>
	Math.sign((b.left - a.left) * (at.top - a.top) - (b.top - a.top) * (at.left - a.left));

const anyBay = fc.record({
	lengths: fc.array(fc.integer({ min: 300, max: 2200 }), { minLength: 1, maxLength: 6 }),
	turns: fc.array(fc.integer({ min: -80, max: 90 }), { minLength: 6, maxLength: 6 }),
	rises: fc.array(fc.oneof(fc.constant(0), fc.integer({ min: -150, max: 150 })), { minLength: 6, maxLength: 6 }),
	factor: fc.constantFrom(0.6, 1, 1.8),
});

const notesOf = (scene: Scene): NoteLabel[] =>
	layOut(scene, [], new Map()).labels.filter((label) => label.kind === "note");

const textsOf = (scene: Scene): string[] => notesOf(scene).flatMap(({ lines }) => lines.map(({ text }) => text));

describe("labels of any bay", () => {
	it("never cover each other, a wall's face or the track, with piers and bows either way", () => {
		fc.assert(
			fc.property(anyBay, ({ lengths, turns, rises, factor }) => {
				const scene = sceneOf(chain(lengths, turns), rises, {}, factor);
				const writing = layOut(scene, [], new Map()).labels.filter(({ kind }) => kind !== "badge");
				const ink = inkOf(scene);
				const wrong = writing.flatMap(({ box }, i) => [
					...writing.slice(i + 1).filter((other) => boxesShare(box, other.box, -0.05)),
					...ink.filter((at) => insideBox(box, at)),
				]);
				expect(wrong).toEqual([]);
			}),
			{ numRuns: 100 },
		);
	});

	it("have no dimension line of a run through a wall", () => {
		fc.assert(
			fc.property(anyBay, ({ lengths, turns, rises, factor }) => {
				const scene = sceneOf(chain(lengths, turns), rises, {}, factor);
				for (const label of layOut(scene, [], new Map()).labels) {
					if (label.kind !== "run") continue;
					for (const { from, to } of label.lines) {
						const at = (share: number) => ({
							left: from.left + (to.left - from.left) * share,
							top: from.top + (to.top - from.top) * share,
						});
						// The ends stand square off the wall's own corners, where the walls beside it begin.
						const [p, q] = [at(0.25), at(0.75)];
						for (const wall of scene.walls) {
							const face = wall?.face.map((point) => toScreen(scene.view, point)) ?? [];
							const through = face.slice(1).some((end, i) => crosses(p, q, face[i] as ScreenPoint, end));
							expect(through, `the line of wall ${label.wall} through wall ${wall?.wall}`).toBe(false);
						}
					}
				}
			}),
			{ numRuns: 100 },
		);
	});

	it("tell a bow's rise, bold and with its ± once it is taped, from its chord to its face", () => {
		const bow: Corner[] = [
			[0, 0],
			[2000, 0],
		];
		const drawn = notesOf(sceneOf(bow, [240])).find(({ lines }) => lines[0]?.text === "rise 240");
		expect(drawn?.lines[0]?.face).toBe("drawn");
		const scene = sceneOf(bow, [-240], { readings: [{ kind: "rise", wall: 0, value: -240 }] });
		const taped = notesOf(scene).find(({ lines }) => lines[0]?.text === "rise 240 ± 2");
		expect(taped?.lines[0]?.face).toBe("taped");
		const { line } = taped?.dimension ?? {};
		expect(line?.from).toEqual(toScreen(scene.view, { x: 1000, y: 0 }));
		expect(line?.to.left).toBeCloseTo(toScreen(scene.view, { x: 1000, y: 0 }).left, 6);
		expect(line?.to.top).toBeCloseTo(toScreen(scene.view, { x: 1000, y: -240 }).top, 6);
	});

	it("tell one radius for a bend that bridges a facet, and its stand-off with a line as long", () => {
		const scene = sceneOf(
			[
				[0, 0],
				[0, 800],
				[120, 920],
				[1500, 920],
				[1500, 0],
			],
			[],
			{ track: { system: "heavy-hand-drawn" } },
		);
		expect(textsOf(scene).filter((text) => text.startsWith("R 300"))).toEqual(["R 300, corners 1–2"]);
		// Design section 5: 2·sin²(δ/2)/cos δ·(R − R0), R0 = ℓ/(2 tan(δ/2)), both turns 45°; the leg along the facet is
		// shorter than the wall by 2d·tan(δ/2), with d the system's 70.
		const half = Math.PI / 8;
		const leg = 120 * Math.SQRT2 - 2 * 70 * Math.tan(half);
		const standOff = ((2 * Math.sin(half) ** 2) / Math.cos(2 * half)) * (300 - leg / (2 * Math.tan(half)));
		const note = notesOf(scene).find(({ lines }) => lines[0]?.text === `stand-off +${standOff.toFixed(0)}`);
		const { from, to } = note?.dimension?.line ?? { from: { left: 0, top: 0 }, to: { left: 0, top: 0 } };
		expect(Math.hypot(to.left - from.left, to.top - from.top) / scene.view.scale).toBeCloseTo(standOff, 6);
	});

	it("say by how much a clearance fails", () => {
		const square: Corner[] = [
			[0, 0],
			[0, 700],
			[1800, 700],
			[1800, 0],
		];
		// The track's centre line is 40 off the walls.
		const told = (depth: number) =>
			textsOf(sceneOf(square, [], { obstacles: [{ kind: "pipe", wall: 1, from: 900, to: 960, depth }] }));
		expect(told(30)).toEqual(expect.arrayContaining(["10 clear", "keeps 15"]));
		expect(told(60)).toEqual(expect.arrayContaining(["runs into it", "keeps 15"]));
		expect(told(20)).not.toContain("keeps 15");
	});
});
