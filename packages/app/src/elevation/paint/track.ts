import { cutStations } from "../../canvas/track-shape.ts";
import { bracketPlaces, jointPlaces } from "../marks.ts";
import { type ElevationScene, halfTrackHeight, onScreen, type Paint } from "../scene.ts";
import { stationAlong } from "../track-run.ts";

type Pen = CanvasRenderingContext2D;

/** px: a bend's band over the track, and how far the ticks at its ends reach past it. */
const OFF_TRACK = 4.5;
const BAND = 3.5;
const TICK_PAST = 3.5;

/** px: a bracket's bar past the track's lines, and its breadth at least. */
const BAR_PAST = 5;
const LEAST_BAR = 4;
const CUT_PAST = 8;
const DIAMOND = 7;

/** px: a track fixed to the ceiling hangs from it where the two are no further apart. */
const HANGS = 60;

/** The track: a double line at its height; dashed where nobody has said the height. */
export const paintTrack: Paint = (pen, scene) => {
	const { run, heights, palette } = scene;
	if (run === null) return;
	const half = halfTrackHeight(scene);
	const { top } = onScreen(scene, 0, heights.track.mm);
	const from = onScreen(scene, run.from, 0).left;
	const to = onScreen(scene, run.to, 0).left;
	pen.fillStyle = palette.sheet;
	pen.fillRect(from, top - half, to - from, 2 * half);
	pen.strokeStyle = palette.track;
	pen.lineWidth = 1.75;
	pen.setLineDash(heights.track.known === "assumed" ? [7, 4] : []);
	pen.beginPath();
	for (const line of [top - half, top + half]) {
		pen.moveTo(from, line);
		pen.lineTo(to, line);
	}
	pen.stroke();
	pen.setLineDash([]);
};

/** Bends across corners and bows along walls: a band over the track, ticked at both ends. */
export const paintTrackBends: Paint = (pen, scene) => {
	const { run, heights, palette } = scene;
	if (run === null) return;
	const half = halfTrackHeight(scene);
	const { top } = onScreen(scene, 0, heights.track.mm);
	pen.strokeStyle = palette.bend;
	pen.lineCap = "butt";
	for (const bend of run.bends) {
		const [from, to] = bendOnScreen(scene, bend);
		const band = top - half - OFF_TRACK;
		pen.lineWidth = BAND;
		pen.beginPath();
		pen.moveTo(from, band);
		pen.lineTo(to, band);
		pen.stroke();
		pen.lineWidth = 1.75;
		pen.beginPath();
		for (const left of [from, to]) {
			pen.moveTo(left, band - BAND / 2 - TICK_PAST);
			pen.lineTo(left, top + half);
		}
		pen.stroke();
	}
};

/** px from left to right; a bend that lies round an external corner still shows. */
export function bendOnScreen(
	scene: ElevationScene,
	{ from, to }: { readonly from: number; readonly to: number },
): readonly [number, number] {
	const left = onScreen(scene, from, 0).left;
	const right = onScreen(scene, to, 0).left;
	const more = Math.max(0, 4 - (right - left)) / 2;
	return [left - more, right + more];
}

/** Brackets: solid bars across the track, from the ceiling where the track hangs from it. */
export const paintTrackBrackets: Paint = (pen, scene) => {
	pen.fillStyle = scene.palette.ink;
	pen.beginPath();
	scene.plan.brackets.forEach((_, index) => {
		traceBar(pen, scene, index, 0);
	});
	pen.fill();
};

export function traceBar(pen: Pen, scene: ElevationScene, index: number, larger: number): void {
	const { heights, view, plan, bay } = scene;
	const place = bracketPlaces(scene)[index];
	if (place === undefined) return;
	const half = halfTrackHeight(scene);
	const { left, top } = onScreen(scene, place.along, heights.track.mm);
	const ceiling = onScreen(scene, 0, heights.ceiling.mm).top;
	const hangs = bay.track.mounting === "ceiling" && heights.ceiling.known === "given" && top - ceiling < HANGS;
	const width = Math.max(LEAST_BAR, plan.system.bracket.width * view.scale) + 2 * larger;
	const high = Math.min(top - half - BAR_PAST, hangs ? ceiling : top) - larger;
	pen.rect(left - width / 2, high, width, top + half + BAR_PAST + larger - high);
}

/** Cut ends dashed across, joints as diamonds. */
export const paintTrackEnds: Paint = (pen, scene) => {
	const { run, plan, heights, palette } = scene;
	if (run === null) return;
	const half = halfTrackHeight(scene);
	const { top } = onScreen(scene, 0, heights.track.mm);
	pen.strokeStyle = palette.cut;
	pen.lineWidth = 2;
	pen.setLineDash([4, 3]);
	pen.beginPath();
	for (const station of cutStations(plan)) {
		const { left } = onScreen(scene, stationAlong(run, station), 0);
		pen.moveTo(left, top - half - CUT_PAST);
		pen.lineTo(left, top + half + CUT_PAST);
	}
	pen.stroke();
	pen.setLineDash([]);
	pen.fillStyle = palette.sheet;
	pen.beginPath();
	plan.joints.forEach((_, index) => {
		traceDiamond(pen, scene, index, 0);
	});
	pen.fill();
	pen.stroke();
};

export function traceDiamond(pen: Pen, scene: ElevationScene, index: number, larger: number): void {
	const place = jointPlaces(scene)[index];
	if (place === undefined) return;
	const { left, top } = onScreen(scene, place.along, scene.heights.track.mm);
	const across = Math.max(DIAMOND, halfTrackHeight(scene) + 3) + larger;
	pen.moveTo(left + across, top);
	pen.lineTo(left, top + across);
	pen.lineTo(left - across, top);
	pen.lineTo(left, top - across);
	pen.closePath();
}
