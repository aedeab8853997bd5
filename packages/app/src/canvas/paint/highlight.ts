import { type Selection, sameThing, stretchOf, toScreen } from "@baywright/editor";
import { partOf } from "@baywright/geometry";
import { readingLine } from "../reading-line.ts";
import type { Painter } from "../scene.ts";
import { barWidth, halfTrack, madeBends } from "../track-shape.ts";
import { DRAWN_THICKNESS, wallBand } from "../wall-shape.ts";
import { traceBand } from "./bends.ts";
import { traceBracket } from "./brackets.ts";
import type { Handled } from "./handles.ts";
import { traceJoint } from "./joints.ts";
import { outline, type Pen, trace, traceSegment } from "./pen.ts";
import { traceFace } from "./walls.ts";

/** px that a highlight stands out round what it marks. */
const HALO = 6;

/** What is chosen stands out in the track's colour, what the pointer is on as a wide pale band. */
export const paintHighlight: Painter<Handled> = (pen, scene) => {
	const { selection, hover } = scene;
	if (hover !== null && !sameThing(hover, selection)) paintOne(pen, scene, hover, "hovered");
	if (selection !== null) paintOne(pen, scene, selection, "chosen");
};

function paintOne(pen: Pen, scene: Handled, thing: Selection, state: "hovered" | "chosen"): void {
	const { kind, index } = thing;
	const { plan, view, palette, walls } = scene;
	pen.save();
	pen.strokeStyle = palette.track;
	pen.globalAlpha = state === "hovered" ? 0.28 : 0.45;
	pen.lineCap = "round";
	pen.lineJoin = "round";
	pen.beginPath();
	if (kind === "wall" || kind === "bow") {
		const shape = walls[index];
		pen.lineWidth = HALO + 3;
		if (shape) traceFace(pen, scene, shape);
	} else if (kind === "opening" || kind === "obstacle" || kind === "no-drill") {
		pen.lineWidth = HALO + 1;
		traceOnWall(pen, scene, thing);
	} else if (kind === "bracket") {
		pen.lineWidth = barWidth(plan, view) + 2 * HALO;
		traceBracket(pen, scene, index);
	} else if (kind === "bend") {
		pen.lineWidth = 4 + 2 * HALO;
		const made = madeBends(plan).find(({ corner }) => corner === index);
		if (made) traceBand(pen, scene, made.bend);
	} else if (kind === "joint") {
		pen.lineWidth = HALO;
		traceJoint(pen, scene, index, HALO / 2);
	} else if (kind === "piece") {
		pen.lineWidth = 2 * halfTrack(plan, view) + HALO;
		tracePiece(pen, scene, index);
	} else if (kind === "reading") {
		pen.lineWidth = HALO;
		traceReading(pen, scene, index);
	}
	pen.stroke();
	pen.restore();
}

/** The outline of what stands in, on or at a wall. */
function traceOnWall(pen: Pen, { bay, walls, view }: Handled, thing: Selection): void {
	const it = stretchOf(bay, thing);
	const shape = it && walls[it.wall];
	if (!it || !shape) return;
	const left = Math.max(0, it.from);
	const right = Math.min(shape.length, it.to);
	if (right > left) outline(pen, view, wallBand(shape, left, right, 0, depthOf(bay, thing, view.scale)));
}

/** mm outside the face to which it is outlined; an obstacle stands into the room. */
function depthOf(bay: Handled["bay"], { kind, index }: Selection, scale: number): number {
	if (kind === "obstacle") return -Math.max(bay.obstacles[index]?.depth ?? 0, 5 / scale);
	return kind === "no-drill" ? 14 / scale : DRAWN_THICKNESS;
}

/** A piece's stretch of the centre line. */
function tracePiece(pen: Pen, { plan, view }: Handled, index: number): void {
	const piece = plan.pieces[index];
	if (!piece || plan.path === null) return;
	for (const segment of plan.path.segments) {
		const part = partOf(segment, piece.from, piece.to);
		if (part !== null) traceSegment(pen, view, part, 0, true);
	}
}

/** Where a reading was taken, from end to end of the tape. */
function traceReading(pen: Pen, scene: Handled, index: number): void {
	const reading = scene.plan.survey?.readings[index]?.reading;
	const line = reading === undefined ? null : readingLine(scene, reading);
	if (line !== null)
		trace(
			pen,
			line.map((at) => toScreen(scene.view, at)),
		);
}
