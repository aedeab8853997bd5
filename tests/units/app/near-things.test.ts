import { libraryOf, parseJob, planBay } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import { fitBay } from "../../../packages/app/src/canvas/fit-bay.ts";
import { type Layout, layOut } from "../../../packages/app/src/canvas/labels/layout.ts";
import type { Palette } from "../../../packages/app/src/canvas/palette.ts";
import { reach } from "../../../packages/app/src/canvas/reach.ts";
import { type Scene, subjectOf } from "../../../packages/app/src/canvas/scene.ts";

const size = { width: 1090, height: 650 };
const measure = (text: string) => text.length * 8;

function sceneOf(bay: object, over = { head: 0, corner: { width: 190, height: 52 } }, on = size): Scene {
	const parsed = parseJob({ format: "baywright-job", version: 1, bays: [{ id: "b", walls: [], ...bay }] });
	if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
	const [first] = parsed.job.bays;
	if (first === undefined) throw new Error("no bay");
	const subject = subjectOf(first, planBay(first, libraryOf(parsed.job)), "mm");
	return { ...subject, view: fitBay(subject, on, over, measure), size: on, palette: {} as Palette, measure };
}

const runs = ({ labels }: Layout) => labels.flatMap((label) => (label.kind === "run" ? [label.text] : [])).sort();

describe("at a corner that is all but straight", () => {
	it("the mark of a finding costs neither wall its dimension", () => {
		const scene = sceneOf({
			corners: [
				[-19_696, -3473],
				[0, 0],
				[20_000, 0],
			],
			walls: [{}, {}],
			track: { draw: "pair" },
		});
		const layout = layOut(scene, [], new Map());
		expect(layout.marks.length).toBeGreaterThan(0);
		expect(runs(layout)).toEqual(["20000", "20000"]);
	});
});

describe("beside a bend", () => {
	const scene = sceneOf({
		corners: [
			[0, 0],
			[0, 700],
			[1800, 700],
			[1800, 0],
		],
		walls: [{}, {}, {}],
		obstacles: [{ kind: "socket", wall: 1, from: 1427, to: 1573, bottom: 450, top: 536, depth: 10 }],
	});
	const at = (x: number, y: number) => {
		const { scale, left, top } = scene.view;
		const place = { left: left + x * scale, top: top - y * scale };
		return reach(scene, { labels: [], byKey: new Map(), marks: [], survey: null }, null, place, "mouse");
	};

	it("a socket flat on the wall is taken by a pointer on it, the bend by one on the track", () => {
		expect(at(1480, 691)).toEqual({ kind: "obstacle", index: 0 });
		expect(at(1605, 627)).toEqual({ kind: "bend", index: 2 });
	});
});

describe("on a sheet lower than its dimensions", () => {
	it("the bay is still large enough to be seen", () => {
		const low = sceneOf(
			{
				corners: [
					[-636, -636],
					[0, 0],
					[1800, 0],
					[2436, -636],
				],
				walls: [{}, {}, {}],
			},
			{ head: 68, corner: { width: 190, height: 52 } },
			{ width: 660, height: 268 },
		);
		expect(1800 * low.view.scale).toBeGreaterThan(60);
	});
});
