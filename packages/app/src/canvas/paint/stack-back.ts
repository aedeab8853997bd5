import { toScreen } from "@baywright/editor";
import { foldWave } from "../fold-wave.ts";
import type { Painter } from "../scene.ts";
import { alongTrack, foldDepth } from "../track-shape.ts";
import { trace } from "./pen.ts";

/** mm along the track to one fold; on screen never less than LEAST_PITCH px, or folds would run together. */
const FOLD_PITCH = 28;
const LEAST_PITCH = 7;

/** Stack-back: the open curtain's folds along the track. */
export const paintStackBack: Painter = (pen, { plan, view, palette }) => {
	if (plan.path === null || plan.stackBack.length === 0) return;
	const along = alongTrack(plan.path);
	const style = { pitch: Math.max(FOLD_PITCH, LEAST_PITCH / view.scale), depth: foldDepth(plan) };
	pen.strokeStyle = palette.stack;
	pen.lineWidth = 1.5;
	pen.lineJoin = "round";
	pen.beginPath();
	for (const { from, to } of plan.stackBack)
		trace(
			pen,
			foldWave(along, from, to, style).map((at) => toScreen(view, at)),
		);
	pen.stroke();
};
