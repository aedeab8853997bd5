import { type ScreenPoint, toScreen, type Viewport } from "@baywright/editor";
import { type Failing, failings, type TriedBend } from "../failing.ts";
import type { Painter, Scene } from "../scene.ts";
import type { Pen } from "./pen.ts";

/** px: an arrow's head, the tail it has where it points in from outside, and from which length on the heads stand inside. */
const HEAD = 7;
const TAIL = 12;
const HEADS_INSIDE = 30;

/** px: a smaller circle of clearance is not told from a dot. */
const LEAST_CIRCLE = 3;

/** px of sheet round a line, so that it stands out of what it crosses. */
const CASING = 5;

/**
 * Clearances that fail: a line with two heads between the track and what it comes too near to, and round that the clearance to
 * keep as a dashed circle. Where a bend finds no room, the tightest one, dashed.
 */
export const paintFailings: Painter = (pen, scene) => {
	for (const failing of failings(scene)) paintFailing(pen, scene, failing);
};

function paintFailing(pen: Pen, { view, palette }: Scene, failing: Failing): void {
	const { track, thing, distance, clearance, tried } = failing;
	pen.lineCap = "butt";
	pen.lineJoin = "miter";
	pen.strokeStyle = palette.cut;
	if (tried !== null) {
		pen.lineWidth = 1.75;
		pen.setLineDash([9, 5]);
		pen.beginPath();
		traceTried(pen, view, tried);
		pen.stroke();
	}
	const at = toScreen(view, thing);
	if (clearance * view.scale >= LEAST_CIRCLE) {
		pen.lineWidth = 1.25;
		pen.setLineDash([3, 3]);
		pen.beginPath();
		pen.arc(at.left, at.top, clearance * view.scale, 0, 2 * Math.PI);
		pen.stroke();
	}
	pen.setLineDash([]);
	if (distance === null) return;
	const to = toScreen(view, track);
	const length = Math.hypot(to.left - at.left, to.top - at.top);
	const along: ScreenPoint =
		length < 0.5 ? { left: 0, top: 1 } : { left: (to.left - at.left) / length, top: (to.top - at.top) / length };
	for (const [colour, more] of [
		[palette.sheet, CASING],
		[palette.cut, 0],
	] as const) {
		pen.strokeStyle = colour;
		pen.fillStyle = colour;
		pen.lineWidth = 2 + more;
		if (length >= HEADS_INSIDE) {
			arrow(pen, to, at, along, 1, more);
			arrow(pen, at, to, along, -1, more);
		} else {
			arrow(pen, beyond(at, along, -TAIL - HEAD), at, along, -1, more);
			arrow(pen, beyond(to, along, TAIL + HEAD), to, along, 1, more);
		}
	}
}

/** A line from `from` with its head at `tip`; `way` is 1 where it points against `along`. */
function arrow(pen: Pen, from: ScreenPoint, tip: ScreenPoint, along: ScreenPoint, way: 1 | -1, more: number): void {
	const neck = beyond(tip, along, way * HEAD);
	pen.beginPath();
	pen.moveTo(from.left, from.top);
	pen.lineTo(neck.left, neck.top);
	pen.stroke();
	const half = HEAD / 2 + more / 3;
	pen.beginPath();
	pen.moveTo(tip.left, tip.top);
	pen.lineTo(neck.left - along.top * half, neck.top + along.left * half);
	pen.lineTo(neck.left + along.top * half, neck.top - along.left * half);
	pen.closePath();
	pen.fill();
}

const beyond = ({ left, top }: ScreenPoint, along: ScreenPoint, by: number): ScreenPoint => ({
	left: left + along.left * by,
	top: top + along.top * by,
});

/** Round an external corner the bend turns to the left: against the clock on paper, and on screen. */
function traceTried(pen: Pen, view: Viewport, { centre, radius, from, to }: TriedBend): void {
	const at = toScreen(view, centre);
	const angle = (p: TriedBend["from"]) => Math.atan2(-(p.y - centre.y), p.x - centre.x);
	pen.arc(at.left, at.top, radius * view.scale, angle(from), angle(to), true);
}
