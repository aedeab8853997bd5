import { hatchLines } from "../../canvas/hatch.ts";
import { traceQuads } from "../../canvas/paint/pen.ts";
import { noDrillRows } from "../marks.ts";
import { type ElevationScene, type Paint, type ScreenBox, screenBox } from "../scene.ts";

const NOT_GIVEN = [6, 4];
const OBSTACLE_HATCH = 5;

/** px from the edge of an opening to the inner line of its frame. */
const FRAME = 4;

/** Openings: the frame's double line, and glass told by a pair of slanted strokes; a sill or head that nobody has given is dashed. */
export const paintOpenings: Paint = (pen, scene) => {
	const { palette } = scene;
	for (const box of scene.openings) {
		if (box === null) continue;
		const screen = screenBox(scene, box);
		const { left, right, top, bottom } = screen;
		pen.fillStyle = palette.sheet;
		pen.fillRect(left, top, right - left, bottom - top);
		pen.strokeStyle = palette.glass;
		pen.lineWidth = 1.25;
		pen.beginPath();
		if (right - left > 4 * FRAME && bottom - top > 4 * FRAME)
			pen.rect(left + FRAME, top + FRAME, right - left - 2 * FRAME, bottom - top - 2 * FRAME);
		traceGlass(pen, screen);
		pen.stroke();
		pen.strokeStyle = palette.wall;
		pen.lineWidth = 2;
		edge(pen, [left, top], [left, bottom], true);
		edge(pen, [right, top], [right, bottom], true);
		edge(pen, [left, top], [right, top], box.top.known !== "assumed");
		edge(pen, [left, bottom], [right, bottom], box.bottom.known !== "assumed");
		pen.setLineDash([]);
	}
};

/** px. */
const MOST_GLASS = 22;

/** Two slanted strokes in the upper right and the lower left of the glass. */
function traceGlass(pen: CanvasRenderingContext2D, { left, right, top, bottom }: ScreenBox): void {
	const size = Math.min(MOST_GLASS, Math.min(right - left, bottom - top) * 0.14);
	if (size < 5) return;
	const inside = 2 * FRAME + 1;
	for (const [x, y] of [
		[right - inside - 1.4 * size, top + inside + size],
		[left + inside, bottom - inside],
	] as const) {
		for (const off of [0, size * 0.4]) {
			pen.moveTo(x + off, y);
			pen.lineTo(x + size + off, y - size);
		}
	}
}

type Place = readonly [left: number, top: number];

function edge(pen: CanvasRenderingContext2D, from: Place, to: Place, given: boolean): void {
	pen.setLineDash(given ? [] : NOT_GIVEN);
	pen.beginPath();
	pen.moveTo(...from);
	pen.lineTo(...to);
	pen.stroke();
}

/** Obstacles: boxes hatched the other way than what is cut through. */
export const paintObstacles: Paint = (pen, scene) => {
	const { palette, size } = scene;
	for (const box of scene.obstacles) {
		if (box === null) continue;
		const { left, right, top, bottom } = screenBox(scene, box);
		const corners = [
			{ left, top },
			{ left: right, top },
			{ left: right, top: bottom },
			{ left, top: bottom },
		];
		pen.fillStyle = palette.sheet;
		pen.fillRect(left, top, right - left, bottom - top);
		pen.strokeStyle = palette.hatch;
		pen.lineWidth = 1;
		pen.beginPath();
		traceQuads(pen, hatchLines(corners, { spacing: OBSTACLE_HATCH, angle: Math.PI / 4, anchor: { left, top } }, size));
		pen.stroke();
		pen.strokeStyle = palette.wall;
		pen.lineWidth = 1.5;
		pen.strokeRect(left, top, right - left, bottom - top);
	}
};

/** px: crosses along a stretch without holes, and how long their arms are. */
const PITCH = 11;
const ARM = 3;

/** Stretches that take no hole: a row of small crosses under the track. */
export const paintNoDrill: Paint = (pen, scene: ElevationScene) => {
	pen.strokeStyle = scene.palette.warn;
	pen.lineWidth = 1.5;
	pen.beginPath();
	for (const { left, right, top } of noDrillRows(scene)) {
		const count = Math.max(1, Math.floor((right - left) / PITCH));
		for (let i = 0; i < count && right > left; i++) {
			const at = left + ((right - left) * (i + 0.5)) / count;
			pen.moveTo(at - ARM, top - ARM);
			pen.lineTo(at + ARM, top + ARM);
			pen.moveTo(at - ARM, top + ARM);
			pen.lineTo(at + ARM, top - ARM);
		}
	}
	pen.stroke();
};
