import { toScreen } from "@baywright/editor";
import { step } from "@baywright/geometry";
import type { Painter } from "../scene.ts";
import { onFace } from "../wall-shape.ts";

/** px: crosses along the stretch, and how far inside the wall they stand. */
const PITCH = 11;
const INSIDE = 7;
const ARM = 3;

/** Stretches that take no hole: a row of small crosses just inside the wall. */
export const paintNoDrill: Painter = (pen, { bay, walls, view, palette }) => {
	pen.strokeStyle = palette.warn;
	pen.lineWidth = 1.5;
	pen.beginPath();
	bay.walls.forEach(({ noDrill }, wall) => {
		const shape = walls[wall];
		if (!shape) return;
		for (const [a, b] of noDrill) {
			const from = Math.max(0, Math.min(a, b));
			const to = Math.min(shape.length, Math.max(a, b));
			const count = Math.max(1, Math.floor(((to - from) * view.scale) / PITCH));
			for (let i = 0; i < count && to > from; i++) {
				const { at, ux, uy } = onFace(shape, from + ((to - from) * (i + 0.5)) / count);
				const { left, top } = toScreen(view, step(at, ux, uy, 0, -INSIDE / view.scale));
				pen.moveTo(left - ARM, top - ARM);
				pen.lineTo(left + ARM, top + ARM);
				pen.moveTo(left - ARM, top + ARM);
				pen.lineTo(left + ARM, top - ARM);
			}
		}
	});
	pen.stroke();
};
