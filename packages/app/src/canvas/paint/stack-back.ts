import { toScreen } from "@baywright/editor";
import type { CurtainPosition } from "@baywright/setout";
import { foldWave } from "../fold-wave.ts";
import type { Painter, Scene } from "../scene.ts";
import { alongTrack, foldDepth } from "../track-shape.ts";
import { trace } from "./pen.ts";

/** mm along the track to one fold of a packed curtain; on screen never less than LEAST_PITCH px, or folds would run together. */
const FOLD_PITCH = 28;
const LEAST_PITCH = 5;

/** A drawn curtain's folds are shallow, but still folds: this share of the packed ones' depth. */
const SHALLOWEST = 0.6;

/** The curtains' folds along the track, as far as each is opened: as many packed as drawn, and deeper the closer they are pushed. */
export const paintStackBack: Painter<Scene & { readonly hanging: readonly CurtainPosition[] }> = (
	pen,
	{ plan, view, palette, hanging },
) => {
	const { path } = plan;
	if (path === null) return;
	const along = alongTrack(path);
	const deepest = foldDepth(plan);
	pen.strokeStyle = palette.stack;
	pen.lineWidth = 1.5;
	pen.lineJoin = "round";
	pen.beginPath();
	plan.curtains.forEach((curtain, i) => {
		const now = hanging[i];
		if (now === undefined) return;
		const { stack } = curtain;
		const folds = Math.max(1, Math.round((stack.to - stack.from) / Math.max(FOLD_PITCH, LEAST_PITCH / view.scale)));
		const spread = (now.to - now.from) / Math.max(1, stack.to - stack.from);
		const depth = deepest * Math.max(SHALLOWEST, 1 / Math.sqrt(Math.max(1, spread)));
		const style = { pitch: (now.to - now.from) / folds, depth };
		trace(
			pen,
			foldWave(along, now.from, now.to, style).map((at) => toScreen(view, at)),
		);
	});
	pen.stroke();
};
