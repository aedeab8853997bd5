import { toScreen } from "@baywright/editor";
import type { CurtainPosition } from "@baywright/setout";
import { foldWave } from "../fold-wave.ts";
import type { Painter, Scene } from "../scene.ts";
import { alongTrack, foldReach } from "../track-shape.ts";
import { trace } from "./pen.ts";

/** mm along the track to one fold of a packed curtain; on screen never less than LEAST_PITCH px, or folds would run together. */
const FOLD_PITCH = 28;
const LEAST_PITCH = 5;

/** The curtains' folds along the track, as far as each is opened, to scale: as many packed as drawn, and deeper the closer they are pushed. */
export const paintStackBack: Painter<Scene & { readonly hanging: readonly CurtainPosition[] }> = (
	pen,
	{ plan, view, palette, hanging },
) => {
	const { path } = plan;
	if (path === null) return;
	const along = alongTrack(path);
	pen.strokeStyle = palette.stack;
	pen.lineWidth = 1.5;
	pen.lineJoin = "round";
	pen.beginPath();
	plan.curtains.forEach((curtain, i) => {
		const now = hanging[i];
		if (now === undefined) return;
		const { stack } = curtain;
		const packed = stack.to - stack.from;
		// A fold goes out and back from one hook to the next but one.
		const made = curtain.curtain === null ? packed / FOLD_PITCH : (curtain.gliders - 1) / 2;
		const folds = Math.max(1, Math.round(Math.min(made, (packed * view.scale) / LEAST_PITCH)));
		const spread = (now.to - now.from) / Math.max(1, stack.to - stack.from);
		const style = { pitch: (now.to - now.from) / folds, ...foldReach(plan, curtain, now, spread) };
		trace(
			pen,
			foldWave(along, now.from, now.to, style).map((at) => toScreen(view, at)),
		);
	});
	pen.stroke();
};
