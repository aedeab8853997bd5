import type { Selection } from "@baywright/editor";
import { HANDLE, type Handle } from "../handles.ts";
import { type Held, isBox, sameHeld } from "../held.ts";
import { noDrillRows } from "../marks.ts";
import { cornerPlace, cornerRadius } from "../reach.ts";
import { type ElevationScene, halfTrackHeight, onScreen, type Paint, screenBox } from "../scene.ts";
import { stationAlong } from "../track-run.ts";
import { bendOnScreen, traceBar, traceDiamond } from "./track.ts";

type Pen = CanvasRenderingContext2D;

export interface Lit {
	readonly selection: Selection | null;
	readonly hover: Selection | null;
	readonly chosen: Held | null;
	readonly under: Held | null;
	readonly handles: readonly Handle[];
}

/** px that a highlight stands out round what it marks. */
const HALO = 4;

/** What is chosen or pointed at, here or anywhere else on screen. */
export const paintHighlights: Paint<ElevationScene & Lit> = (pen, scene) => {
	const { selection, hover, chosen, under, palette } = scene;
	pen.save();
	pen.fillStyle = palette.track;
	for (const [thing, held, alpha] of [
		[hover, under, 0.28],
		[selection, chosen, 0.42],
	] as const) {
		pen.globalAlpha = alpha;
		pen.beginPath();
		if (thing !== null) traceThing(pen, scene, thing);
		if (held !== null && !isBox(held)) traceLevel(pen, scene, held.kind);
		pen.fill("evenodd");
	}
	pen.restore();
};

function traceThing(pen: Pen, scene: ElevationScene, { kind, index, wall: ofWall }: Selection): void {
	const { unrolled, heights, run, plan } = scene;
	const track = onScreen(scene, 0, heights.track.mm).top;
	const reach = halfTrackHeight(scene) + HALO;
	if (kind === "bracket") traceBar(pen, scene, index, HALO);
	else if (kind === "joint") traceDiamond(pen, scene, index, HALO + 1);
	else if (kind === "corner") traceCorner(pen, scene, index);
	else if (kind === "wall" || (kind === "bow" && run === null)) {
		const wall = unrolled.walls[index];
		if (wall) traceUpright(pen, scene, wall.from, wall.to);
	} else if (kind === "bend" || kind === "bow") {
		const bend = run?.bends.find((it) => it.of === index && it.bow === (kind === "bow"));
		if (bend === undefined) return;
		const [from, to] = bendOnScreen(scene, bend);
		pen.roundRect(from - HALO, track - reach - 9, to - from + 2 * HALO, 2 * reach + 9, 4);
	} else if (kind === "piece") {
		const piece = plan.pieces[index];
		if (run === null || piece === undefined) return;
		const from = onScreen(scene, stationAlong(run, piece.from), 0).left;
		const to = onScreen(scene, stationAlong(run, piece.to), 0).left;
		pen.roundRect(from, track - reach - 2, to - from, 2 * reach + 4, 4);
	} else if (kind === "track-end") {
		if (run === null) return;
		const { left } = onScreen(scene, index === 0 ? run.from : run.to, 0);
		pen.roundRect(left - 2 * HALO, track - reach - HALO, 4 * HALO, 2 * (reach + HALO), HALO);
	} else if (kind === "no-drill") {
		for (const row of noDrillRows(scene))
			if (row.index === index && row.wall === ofWall)
				pen.roundRect(row.left - HALO, row.top - 2 * HALO, row.right - row.left + 2 * HALO, 4 * HALO, HALO);
	} else if (kind === "opening" || kind === "obstacle") {
		const box = kind === "opening" ? scene.openings[index] : scene.obstacles[index];
		if (!box) return;
		const { left, right, top, bottom } = screenBox(scene, box);
		pen.rect(left - HALO, top - HALO, right - left + 2 * HALO, bottom - top + 2 * HALO);
		pen.rect(left + 1, top + 1, right - left - 2, bottom - top - 2);
	}
}

function traceCorner(pen: Pen, scene: ElevationScene, index: number): void {
	const corner = scene.unrolled.corners[index];
	if (corner === undefined) return;
	const { left, top } = cornerPlace(scene, corner.at);
	const reach = cornerRadius(scene, index) + HALO;
	pen.arc(left, top, reach, 0, 2 * Math.PI);
	const line = onScreen(scene, corner.at, 0);
	pen.rect(line.left - HALO, top + reach, 2 * HALO, line.top - top - reach);
}

function traceUpright(pen: Pen, scene: ElevationScene, from: number, to: number): void {
	const low = onScreen(scene, from, 0);
	const high = onScreen(scene, to, scene.heights.ceiling.mm);
	pen.rect(low.left, high.top, high.left - low.left, low.top - high.top);
	pen.rect(low.left + HALO, high.top + HALO, high.left - low.left - 2 * HALO, low.top - high.top - 2 * HALO);
}

function traceLevel(pen: Pen, scene: ElevationScene, kind: "track" | "ceiling"): void {
	const { run, heights, unrolled } = scene;
	const reach = kind === "track" ? halfTrackHeight(scene) + 2 : 3;
	const { top } = onScreen(scene, 0, heights[kind].mm);
	const from = onScreen(scene, kind === "track" ? (run?.from ?? 0) : 0, 0).left;
	const to = onScreen(scene, kind === "track" ? (run?.to ?? unrolled.length) : unrolled.length, 0).left;
	pen.rect(from, top - reach, to - from, 2 * reach);
}

/** Bars to take hold of. */
export const paintHandles: Paint<ElevationScene & Lit> = (pen, { handles, chosen, under, palette }) => {
	for (const { held, at, lies, half } of handles) {
		const is = sameHeld(held, chosen) ? "chosen" : sameHeld(held, under) ? "hovered" : "quiet";
		const more = is === "quiet" ? 0 : 1;
		const [across, up] = lies === "level" ? [half, HANDLE.halfBreadth] : [HANDLE.halfBreadth, half];
		pen.beginPath();
		pen.roundRect(
			at.left - across - more,
			at.top - up - more,
			2 * (across + more),
			2 * (up + more),
			HANDLE.halfBreadth + more,
		);
		pen.fillStyle = is === "chosen" ? palette.track : palette.sheet;
		pen.fill();
		pen.strokeStyle = is === "quiet" ? palette.soft : palette.track;
		pen.lineWidth = 1.5;
		pen.stroke();
	}
};
