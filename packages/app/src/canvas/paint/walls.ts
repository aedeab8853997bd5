import { type ScreenPoint, toScreen } from "@baywright/editor";
import { hatchLines } from "../hatch.ts";
import type { Painter, Scene } from "../scene.ts";
import type { WallShape } from "../wall-shape.ts";
import { type Pen, trace, traceQuads } from "./pen.ts";

const HATCH_SPACING = 8;
const HATCH_ANGLE = -Math.PI / 4;
const FACE_LINE = 3;
const OUTER_LINE = 1.4;

/** Walls: face line heavy, hatched outside the room, mitred at corners. Openings are painted over them. */
export const paintWalls: Painter = (pen, scene) => {
	const { palette } = scene;
	const polygons = bodies(scene);
	pen.lineJoin = "round";

	// The outer line first: where bodies run into each other, what lies within one of them is painted over again.
	pen.strokeStyle = palette.wall;
	pen.lineCap = "round";
	pen.lineWidth = 2 * OUTER_LINE;
	pen.beginPath();
	traceOutside(pen, scene);
	pen.stroke();

	pen.fillStyle = palette.paper;
	for (const polygon of polygons) {
		pen.beginPath();
		trace(pen, polygon);
		pen.closePath();
		pen.fill();
	}

	pen.strokeStyle = palette.hatch;
	pen.lineWidth = 1;
	pen.beginPath();
	const style = { spacing: HATCH_SPACING, angle: HATCH_ANGLE, anchor: toScreen(scene.view, { x: 0, y: 0 }) };
	for (const polygon of polygons) traceQuads(pen, hatchLines(polygon, style, scene.size));
	pen.stroke();

	pen.strokeStyle = palette.wall;
	pen.lineWidth = FACE_LINE;
	pen.beginPath();
	for (const shape of scene.walls) if (shape !== null) traceFace(pen, scene, shape);
	pen.stroke();
};

export function traceFace(pen: Pen, { view }: Scene, shape: WallShape): void {
	trace(
		pen,
		shape.face.map((at) => toScreen(view, at)),
	);
}

/** A wall's body on screen, with the bevel that may follow it. */
function bodies({ walls, view, size }: Scene): ScreenPoint[][] {
	const polygons: ScreenPoint[][] = [];
	for (const shape of walls) {
		if (shape === null) continue;
		const body = [...shape.face, ...[...shape.outer].reverse()].map((at) => toScreen(view, at));
		if (onScreen(body, size)) polygons.push(body);
		if (shape.bevel !== null) polygons.push(shape.bevel.map((at) => toScreen(view, at)));
	}
	return polygons;
}

function onScreen(polygon: readonly ScreenPoint[], size: Scene["size"]): boolean {
	return (
		polygon.some(({ left }) => left >= 0) &&
		polygon.some(({ left }) => left <= size.width) &&
		polygon.some(({ top }) => top >= 0) &&
		polygon.some(({ top }) => top <= size.height)
	);
}

/** The outer line with both ends of the chain closed. */
function traceOutside(pen: Pen, { walls, view }: Scene): void {
	const last = walls.length - 1;
	walls.forEach((shape, i) => {
		if (shape === null) return;
		const outer = shape.outer.map((at) => toScreen(view, at));
		const faceStart = toScreen(view, shape.face[0] as WallShape["face"][number]);
		const faceEnd = toScreen(view, shape.face.at(-1) as WallShape["face"][number]);
		trace(pen, [...(i === 0 ? [faceStart] : []), ...outer, ...(i === last ? [faceEnd] : [])]);
		if (shape.bevel !== null)
			trace(
				pen,
				shape.bevel.slice(1).map((at) => toScreen(view, at)),
			);
	});
}
