import { type ScreenPoint, toScreen } from "@baywright/editor";
import { hatchLines } from "../hatch.ts";
import type { Painter, Scene } from "../scene.ts";
import { wallBand } from "../wall-shape.ts";
import { trace, traceQuads } from "./pen.ts";

/** px that a flush obstacle still stands off the wall, so that it is seen. */
const LEAST_DEPTH = 5;

const HATCH_SPACING = 5;

/** Obstacles: boxes on the wall, hatched the other way than walls. */
export const paintObstacles: Painter = (pen, scene) => {
	const boxes = obstacleBoxes(scene);
	if (boxes.length === 0) return;
	const style = { spacing: HATCH_SPACING, angle: Math.PI / 4, anchor: toScreen(scene.view, { x: 0, y: 0 }) };
	pen.lineWidth = 1;
	pen.strokeStyle = scene.palette.hatch;
	pen.fillStyle = scene.palette.sheet;
	for (const box of boxes) {
		pen.beginPath();
		trace(pen, box);
		pen.closePath();
		pen.fill();
		pen.beginPath();
		traceQuads(pen, hatchLines(box, style, scene.size));
		pen.stroke();
	}
	pen.lineWidth = 1.5;
	pen.strokeStyle = scene.palette.wall;
	pen.beginPath();
	for (const box of boxes) {
		trace(pen, box);
		pen.closePath();
	}
	pen.stroke();
};

function obstacleBoxes({ bay, walls, view }: Scene): ScreenPoint[][] {
	return bay.obstacles.flatMap(({ wall, from, to, depth }) => {
		const shape = walls[wall];
		if (!shape) return [];
		const drawn = Math.max(depth, LEAST_DEPTH / view.scale);
		return [wallBand(shape, Math.min(from, to), Math.max(from, to), 0, -drawn).map((at) => toScreen(view, at))];
	});
}
