import { type ScreenPoint, toScreen } from "@baywright/editor";
import type { Severity } from "@baywright/setout";
import { hatchLines } from "../hatch.ts";
import type { BadgeLabel } from "../labels/label.ts";
import { BADGE, type Layout, TROUBLE } from "../labels/layout.ts";
import type { Palette } from "../palette.ts";
import type { Painter, Scene } from "../scene.ts";
import { onFace, type WallShape } from "../wall-shape.ts";
import { paintFailings } from "./failings.ts";
import { type Pen, trace, traceQuads } from "./pen.ts";
import { traceFace } from "./walls.ts";

/** px: ticks along a wall that is refused. */
const TICK_PITCH = 9;
const TICK = 9;
const MOST_TICKS = 400;

export type Found = Scene & { readonly layout: Layout; readonly chosen: number | null };

/** Marks of findings: an eight-sided plate for a refusal, a triangle for a warning, a round one for a note. */
export const paintFindings: Painter<Found> = (pen, scene) => {
	for (const label of scene.layout.labels) if (label.kind === "badge") paintMark(pen, scene, label);
};

/** What is refused, under the handles: a clearance that fails as its dimension, else a hatched ring at its place, or ticks all along the wall. Never told by colour alone. */
export const paintTrouble: Painter<Found> = (pen, scene) => {
	paintFailings(pen, scene);
	for (const mark of scene.layout.marks) {
		if (mark.severity !== "refusal") continue;
		const shape = mark.wall === null ? null : scene.walls[mark.wall];
		if (shape) paintTroubledWall(pen, shape, scene);
		else if (!mark.clearance) paintRing(pen, toScreen(scene.view, mark.at), scene);
	}
};

function paintTroubledWall(pen: Pen, shape: WallShape, scene: Found): void {
	pen.strokeStyle = scene.palette.cut;
	pen.lineCap = "butt";
	pen.lineWidth = 3;
	pen.beginPath();
	traceFace(pen, scene, shape);
	pen.stroke();
	pen.lineWidth = 1.5;
	pen.beginPath();
	const count = Math.min(MOST_TICKS, Math.max(2, Math.floor((shape.length * scene.view.scale) / TICK_PITCH)));
	for (let i = 0; i < count; i++) {
		const { at, ux, uy } = onFace(shape, (shape.length * (i + 0.5)) / count);
		const { left, top } = toScreen(scene.view, at);
		pen.moveTo(left, top);
		pen.lineTo(left + (uy - ux * 0.6) * TICK, top + (ux + uy * 0.6) * TICK);
	}
	pen.stroke();
}

function paintMark(pen: Pen, scene: Found, label: BadgeLabel): void {
	const mark = scene.layout.marks[label.mark];
	if (mark === undefined) return;
	const { palette } = scene;
	const colour = colourOf(mark.severity, palette);
	const at = toScreen(scene.view, mark.at);
	if (mark.severity !== "refusal") paintDot(pen, at, colour);

	pen.strokeStyle = colour;
	pen.lineWidth = 1;
	if (label.leader !== null) {
		pen.beginPath();
		trace(pen, [label.leader.from, label.leader.to]);
		pen.stroke();
	}
	const chosen = scene.chosen !== null && mark.findings.includes(scene.chosen);
	pen.lineWidth = chosen ? 5 : 3;
	pen.strokeStyle = chosen ? palette.track : palette.sheet;
	pen.lineJoin = "round";
	pen.fillStyle = colour;
	pen.beginPath();
	tracePlate(pen, label.box, mark.severity);
	pen.stroke();
	pen.fill();
	paintSign(pen, label.box, mark.severity, palette.sheet);
}

function paintRing(pen: Pen, at: ScreenPoint, { palette, size }: Found): void {
	const ring = Array.from({ length: 32 }, (_, i) => {
		const angle = (2 * Math.PI * i) / 32;
		return { left: at.left + TROUBLE * Math.cos(angle), top: at.top + TROUBLE * Math.sin(angle) };
	});
	pen.strokeStyle = palette.cut;
	pen.lineWidth = 1.25;
	pen.beginPath();
	traceQuads(pen, hatchLines(ring, { spacing: 5, angle: Math.PI / 4, anchor: at }, size));
	pen.stroke();
	pen.lineWidth = 2;
	pen.beginPath();
	trace(pen, ring);
	pen.closePath();
	pen.stroke();
}

function paintDot(pen: Pen, { left, top }: ScreenPoint, colour: string): void {
	pen.fillStyle = colour;
	pen.beginPath();
	pen.arc(left, top, 3, 0, 2 * Math.PI);
	pen.fill();
}

function tracePlate(pen: Pen, { left, top }: ScreenPoint, severity: Severity): void {
	if (severity === "note") {
		pen.arc(left, top, BADGE - 1.5, 0, 2 * Math.PI);
		return;
	}
	const corners =
		severity === "refusal" ? regular(8, BADGE, Math.PI / 8) : regular(3, BADGE + 1.5, -Math.PI / 2, BADGE * 0.18);
	trace(
		pen,
		corners.map((corner) => ({ left: left + corner.left, top: top + corner.top })),
	);
	pen.closePath();
}

function paintSign(pen: Pen, { left, top }: ScreenPoint, severity: Severity, colour: string): void {
	pen.strokeStyle = colour;
	pen.fillStyle = colour;
	pen.lineWidth = 2.25;
	pen.lineCap = "round";
	pen.beginPath();
	if (severity === "refusal") {
		pen.moveTo(left - 4, top - 4);
		pen.lineTo(left + 4, top + 4);
		pen.moveTo(left + 4, top - 4);
		pen.lineTo(left - 4, top + 4);
		pen.stroke();
		return;
	}
	const stem = severity === "warning" ? ([-3, 2.5] as const) : ([-0.5, 5] as const);
	const dot = severity === "warning" ? 6 : -4.5;
	pen.moveTo(left, top + stem[0]);
	pen.lineTo(left, top + stem[1]);
	pen.stroke();
	pen.beginPath();
	pen.arc(left, top + dot, 1.4, 0, 2 * Math.PI);
	pen.fill();
}

const colourOf = (severity: Severity, palette: Palette): string =>
	severity === "refusal" ? palette.cut : severity === "warning" ? palette.warn : palette.track;

function regular(sides: number, radius: number, first: number, down = 0): ScreenPoint[] {
	return Array.from({ length: sides }, (_, i) => {
		const angle = first + (2 * Math.PI * i) / sides;
		return { left: radius * Math.cos(angle), top: radius * Math.sin(angle) + down };
	});
}
