import { onScreen, type Paint } from "../scene.ts";

/** px between the dots, and across one. */
const PITCH = 9;
const DOT = 1.5;
const EDGE = [2, 3];

/** Where cables may run: a dashed line round each band, and in it dots, on one grid that moves with the walls, so that bands that cross are no darker. */
export const paintCables: Paint = (pen, scene) => {
	const { cables, palette, size, view } = scene;
	pen.fillStyle = palette.warn;
	pen.beginPath();
	for (const { from, to, bottom, top } of cables) {
		const high = onScreen(scene, from, top);
		const low = onScreen(scene, to, bottom);
		const first = rowFrom(Math.max(0, high.top), view.top);
		const last = Math.min(size.height, low.top);
		for (let y = first; y < last; y += PITCH) {
			// Every other row stands half a step aside.
			const aside = Math.round((y - view.top) / PITCH) % 2 === 0 ? 0 : PITCH / 2;
			const end = Math.min(size.width, low.left);
			for (let x = rowFrom(Math.max(0, high.left), view.left + aside); x < end; x += PITCH)
				pen.rect(x - DOT / 2, y - DOT / 2, DOT, DOT);
		}
	}
	pen.fill();
	pen.strokeStyle = palette.warn;
	pen.lineWidth = 0.75;
	pen.setLineDash(EDGE);
	pen.beginPath();
	for (const { from, to, bottom, top } of cables) {
		const high = onScreen(scene, from, top);
		const low = onScreen(scene, to, bottom);
		pen.rect(high.left, high.top, low.left - high.left, low.top - high.top);
	}
	pen.stroke();
	pen.setLineDash([]);
};

/** The first place of the grid from `least` on. */
const rowFrom = (least: number, origin: number): number => origin + Math.ceil((least - origin) / PITCH) * PITCH;
