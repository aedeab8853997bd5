import { type ScreenPoint, toScreen, type Viewport } from "@baywright/editor";
import type { Bend, Bow, Point, Segment, TrackPath } from "@baywright/geometry";

export type Pen = CanvasRenderingContext2D;

/** Adds a line through screen points to the current path. */
export function trace(pen: Pen, points: readonly ScreenPoint[]): void {
	points.forEach(({ left, top }, i) => {
		if (i === 0) pen.moveTo(left, top);
		else pen.lineTo(left, top);
	});
}

/** Adds a closed outline through plan points to the current path. */
export function outline(pen: Pen, view: Viewport, points: readonly Point[]): void {
	trace(
		pen,
		points.map((at) => toScreen(view, at)),
	);
	pen.closePath();
}

/** Adds a line between two plan points to the current path. */
export function lineBetween(pen: Pen, view: Viewport, from: Point, to: Point): void {
	trace(pen, [toScreen(view, from), toScreen(view, to)]);
}

/** Adds hatch lines (quadruples) to the current path. */
export function traceQuads(pen: Pen, quads: readonly number[]): void {
	for (let i = 0; i + 3 < quads.length; i += 4) {
		pen.moveTo(quads[i] as number, quads[i + 1] as number);
		pen.lineTo(quads[i + 2] as number, quads[i + 3] as number);
	}
}

/** Adds the track's line `right` px to the right of its centre line (negative: to the left) to the current path; arcs stay arcs. */
export function traceTrack(pen: Pen, view: Viewport, path: TrackPath, right: number): void {
	path.segments.forEach((segment, i) => {
		traceSegment(pen, view, segment, right, i === 0);
	});
}

/** As `traceTrack`, one segment. */
export function traceSegment(pen: Pen, view: Viewport, segment: Segment, right: number, starts: boolean): void {
	if (segment.kind !== "straight") {
		traceArc(pen, view, segment, right, starts);
		return;
	}
	const sin = Math.sin(segment.heading);
	const cos = Math.cos(segment.heading);
	const from = toScreen(view, segment.from);
	const to = toScreen(view, segment.to);
	if (starts) pen.moveTo(from.left + sin * right, from.top + cos * right);
	else pen.lineTo(from.left + sin * right, from.top + cos * right);
	pen.lineTo(to.left + sin * right, to.top + cos * right);
}

function traceArc(pen: Pen, view: Viewport, arc: Bend | Bow, right: number, starts: boolean): void {
	const centre = toScreen(view, arc.centre);
	const from = toScreen(view, arc.from);
	const rightTurn = arc.turn > 0;
	const radius = Math.max(0, arc.radius * view.scale + (rightTurn ? -right : right));
	const start = Math.atan2(from.top - centre.top, from.left - centre.left);
	if (starts) pen.moveTo(centre.left + radius * Math.cos(start), centre.top + radius * Math.sin(start));
	pen.arc(centre.left, centre.top, radius, start, start + arc.turn, !rightTurn);
}
