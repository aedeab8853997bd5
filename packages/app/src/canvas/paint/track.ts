import { pointAt } from "@baywright/geometry";
import type { Painter } from "../scene.ts";
import { acrossTrack, cutStations, halfTrack } from "../track-shape.ts";
import { lineBetween, traceTrack } from "./pen.ts";

/** The track: a double line at its profile's width, open between, so that what is under it still shows. */
export const paintTrack: Painter = (pen, { plan, view, palette }) => {
	if (plan.path === null) return;
	const half = halfTrack(plan, view);
	pen.strokeStyle = palette.track;
	pen.lineWidth = 1.75;
	pen.lineJoin = "round";
	pen.beginPath();
	traceTrack(pen, view, plan.path, half);
	traceTrack(pen, view, plan.path, -half);
	pen.stroke();
};

/** px that a cut's line reaches past the track; less where the whole track is hardly longer. */
const CUT_OVERHANG = 14;
const CUT_SHARE = 0.05;

/** Where the track is cut: a dashed line across it, with a bare margin so that it stands out of the folds. */
export const paintCuts: Painter = (pen, { plan, view, palette }) => {
	if (plan.path === null || pointAt(plan.path, 0) === null) return;
	const overhang = Math.min(CUT_OVERHANG, plan.path.length * view.scale * CUT_SHARE);
	pen.lineCap = "butt";
	pen.beginPath();
	for (const station of cutStations(plan)) {
		const { from, to } = acrossTrack(plan.path, station, halfTrack(plan, view) + overhang, view);
		lineBetween(pen, view, from, to);
	}
	pen.strokeStyle = palette.sheet;
	pen.lineWidth = 5.5;
	pen.stroke();
	pen.strokeStyle = palette.cut;
	pen.lineWidth = 2.25;
	pen.setLineDash([5, 3]);
	pen.stroke();
	pen.setLineDash([]);
};
