import { toScreen } from "@baywright/editor";
import type { Painter } from "../scene.ts";
import { DRAWN_THICKNESS, wallBand } from "../wall-shape.ts";
import { outline, trace } from "./pen.ts";

/** Where in the wall's thickness the two panes of glass are drawn, mm outside the face, and at least how many px apart. */
const PANES_MIDDLE = DRAWN_THICKNESS * 0.5;
const PANES_APART = 18;
const LEAST_APART = 3.5;

/** Openings: gaps in the wall with a thin double line of glass, and the board on their sill. */
export const paintOpenings: Painter = (pen, { bay, walls, view, palette }) => {
	const apart = Math.max(PANES_APART, LEAST_APART / view.scale) / 2;
	for (const { wall, from, to, sillDepth } of bay.openings) {
		const shape = walls[wall];
		if (!shape) continue;
		const left = Math.max(0, Math.min(from, to, shape.length));
		const right = Math.min(shape.length, Math.max(from, to));
		if (!(right > left)) continue;

		pen.fillStyle = palette.sheet;
		pen.beginPath();
		outline(pen, view, wallBand(shape, left, right, 0, DRAWN_THICKNESS));
		pen.fill();

		pen.strokeStyle = palette.wall;
		pen.lineWidth = 1.25;
		pen.stroke();

		pen.strokeStyle = palette.glass;
		pen.lineWidth = 1.5;
		pen.beginPath();
		for (const out of [PANES_MIDDLE - apart, PANES_MIDDLE + apart]) {
			const band = wallBand(shape, left, right, out, out);
			trace(
				pen,
				band.slice(0, band.length / 2).map((at) => toScreen(view, at)),
			);
		}
		pen.stroke();

		// The sill board, as far as it stands into the room.
		if (sillDepth > 0) {
			pen.fillStyle = palette.sheet;
			pen.strokeStyle = palette.wall;
			pen.lineWidth = 1;
			pen.beginPath();
			outline(pen, view, wallBand(shape, left, right, 0, -sillDepth));
			pen.fill();
			pen.stroke();
		}

		// The face runs on under a window, as the line that everything is taped along.
		pen.strokeStyle = palette.wall;
		pen.lineWidth = 2.25;
		pen.beginPath();
		const face = wallBand(shape, left, right, 0, 0);
		trace(
			pen,
			face.slice(0, face.length / 2).map((at) => toScreen(view, at)),
		);
		pen.stroke();
	}
};
