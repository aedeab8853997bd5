import { onScreen, type Paint } from "../scene.ts";

/** mm to one fold: pushed back, and drawn over the window; on screen never less than so many px. */
const FOLD = { open: { pitch: 28, least: 5 }, closed: { pitch: 110, least: 12 } } as const;

/** How dense the cloth and its folds look: pushed back, and drawn. */
const CLOTH = { open: 0.16, closed: 0.09 } as const;
const LINES = { open: 0.8, closed: 0.42 } as const;

const between = (of: { readonly open: number; readonly closed: number }, opened: number): number =>
	of.closed + (of.open - of.closed) * opened;

/** px by which the hem waves. */
const HEM = 3;

/** Curtains as folds: close together in the stack, wide and see-through where they are drawn over the window. */
export const paintCurtains: Paint = (pen, scene) => {
	const { hanging, heights, palette, view } = scene;
	const top = onScreen(scene, 0, heights.track.mm).top;
	const foot = onScreen(scene, 0, heights.hem.mm).top;
	if (foot - top < 4) return;
	pen.save();
	pen.strokeStyle = palette.stack;
	pen.fillStyle = palette.stack;
	pen.lineJoin = "round";
	for (const { from, to, opened } of hanging) {
		const pitch = between({ open: FOLD.open.pitch, closed: FOLD.closed.pitch }, opened);
		const least = between({ open: FOLD.open.least, closed: FOLD.closed.least }, opened);
		const left = onScreen(scene, from, 0).left;
		const right = onScreen(scene, to, 0).left;
		const folds = Math.max(2, Math.round((right - left) / Math.max(least, pitch * view.scale)));
		const fold = (right - left) / folds;
		pen.globalAlpha = between(CLOTH, opened);
		pen.beginPath();
		traceHem(pen, left, right, folds, foot);
		pen.lineTo(right, top);
		pen.lineTo(left, top);
		pen.closePath();
		pen.fill();

		pen.globalAlpha = between(LINES, opened);
		pen.lineWidth = 1;
		pen.beginPath();
		for (let i = 1; i < folds; i++) {
			const at = left + i * fold;
			// Every other fold starts a little lower: cloth gathers at its heading.
			pen.moveTo(at, top + (i % 2 === 0 ? 0 : Math.min(24, (foot - top) * 0.16)));
			pen.lineTo(at, foot + (i % 2 === 0 ? -HEM : HEM) * 0.6);
		}
		pen.stroke();
		pen.globalAlpha = 1;
		pen.lineWidth = 1.75;
		pen.beginPath();
		pen.moveTo(left, top);
		pen.lineTo(left, foot);
		pen.moveTo(right, top);
		pen.lineTo(right, foot);
		pen.stroke();
		pen.setLineDash(heights.hem.known === "assumed" ? [6, 4] : []);
		pen.beginPath();
		traceHem(pen, left, right, folds, foot);
		pen.stroke();
		pen.setLineDash([]);
	}
	pen.restore();
};

function traceHem(pen: CanvasRenderingContext2D, left: number, right: number, folds: number, foot: number): void {
	const fold = (right - left) / folds;
	pen.moveTo(left, foot);
	for (let i = 0; i < folds; i++) {
		const to = left + (i + 1) * fold;
		pen.quadraticCurveTo(to - fold / 2, foot + (i % 2 === 0 ? HEM : -HEM), to, foot);
	}
}
