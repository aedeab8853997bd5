import { toScreen } from "@baywright/editor";
import type { Bend, Bow } from "@baywright/geometry";
import type { Painter, Scene } from "../scene.ts";
import { bentStretches, halfTrack } from "../track-shape.ts";
import { type Pen, traceSegment } from "./pen.ts";

/** px from the track's outer line to the middle of the band, and the band's breadth. */
const OFF_TRACK = 5;
const BAND = 4;

/** px that the ticks at a bend's ends reach past the band. */
const TICK_PAST = 4;

/** Bends and bows: a band on the outside of the arc, with a tick where the bend starts and ends. */
export const paintBends: Painter = (pen, scene) => {
	pen.strokeStyle = scene.palette.bend;
	pen.lineCap = "butt";
	for (const bend of bentStretches(scene.plan)) {
		pen.lineWidth = BAND;
		pen.beginPath();
		traceBand(pen, scene, bend);
		pen.stroke();
		pen.lineWidth = 1.75;
		pen.beginPath();
		traceTicks(pen, scene, bend);
		pen.stroke();
	}
};

/** The band's middle line. */
export function traceBand(pen: Pen, { plan, view }: Scene, bend: Bend | Bow): void {
	traceSegment(pen, view, bend, outerSide(bend) * (halfTrack(plan, view) + OFF_TRACK), true);
}

function traceTicks(pen: Pen, { plan, view }: Scene, bend: Bend | Bow): void {
	const inner = -halfTrack(plan, view);
	const outer = halfTrack(plan, view) + OFF_TRACK + BAND / 2 + TICK_PAST;
	const side = outerSide(bend);
	for (const [end, heading] of [
		[bend.from, bend.heading],
		[bend.to, bend.heading - bend.turn],
	] as const) {
		const { left, top } = toScreen(view, end);
		const sin = Math.sin(heading) * side;
		const cos = Math.cos(heading) * side;
		pen.moveTo(left + sin * inner, top + cos * inner);
		pen.lineTo(left + sin * outer, top + cos * outer);
	}
}

/** −1 where the outside of the arc is on the left of travel, 1 on the right. */
const outerSide = ({ turn }: Bend | Bow): number => (turn > 0 ? -1 : 1);
