import { type Locus, type ScreenPoint, type Sketch, type SketchLine, toScreen } from "@baywright/editor";
import { formatLength } from "@baywright/setout";
import type { Painter, Scene } from "../scene.ts";
import { fontOf } from "../text.ts";
import { DRAWN_THICKNESS } from "../wall-shape.ts";
import { type Pen, trace } from "./pen.ts";
import type { Tip } from "./tip.ts";

/** px of a guide to either side of the point that it draws. */
const GUIDE = 2000;

/** Radians of a round guide to either side. */
const ROUND_GUIDE = 0.5;

/** Half the arms of the cross on a place, px. */
const CROSS = 5;

/** What the tool in hand is about to do, over everything else: guides broken and thin, a wall to come broken, a tape with its ends. */
export const paintSketch: Painter<Scene & { readonly sketch: Sketch | null; readonly tip: Tip | null }> = (
	pen,
	scene,
) => {
	const { sketch, tip } = scene;
	if (sketch === null) return;
	const last = sketch.points.at(-1);
	const focus = last === undefined ? (tip?.at ?? null) : toScreen(scene.view, last);
	pen.save();
	if (focus !== null) for (const [place, guide] of sketch.guides.entries()) paintGuide(pen, scene, guide, focus, place);
	for (const line of sketch.lines) paintLine(pen, scene, line);
	pen.strokeStyle = scene.palette.track;
	pen.lineWidth = 2;
	pen.beginPath();
	for (const point of sketch.points) {
		const { left, top } = toScreen(scene.view, point);
		pen.moveTo(left - CROSS, top);
		pen.lineTo(left + CROSS, top);
		pen.moveTo(left, top - CROSS);
		pen.lineTo(left, top + CROSS);
	}
	pen.stroke();
	pen.restore();
};

function paintGuide(pen: Pen, { view, palette, size }: Scene, guide: Locus, at: ScreenPoint, place: number): void {
	pen.strokeStyle = palette.track;
	pen.globalAlpha = 0.75;
	pen.lineWidth = 1.25;
	pen.setLineDash([2, 5]);
	pen.beginPath();
	if (guide.kind === "line") {
		// A guide that holds on one side only starts where that side does.
		const back = guide.side === undefined ? GUIDE : 0;
		const from = guide.side === undefined ? at : toScreen(view, guide.side.of);
		trace(pen, [
			{ left: from.left - guide.ux * back, top: from.top + guide.uy * back },
			{ left: at.left + guide.ux * GUIDE, top: at.top - guide.uy * GUIDE },
		]);
	} else {
		const centre = toScreen(view, guide.centre);
		const angle = Math.atan2(at.top - centre.top, at.left - centre.left);
		pen.arc(centre.left, centre.top, guide.radius * view.scale, angle - ROUND_GUIDE, angle + ROUND_GUIDE);
	}
	pen.stroke();
	pen.setLineDash([]);
	pen.globalAlpha = 1;
	if (guide.why === "") return;
	boxed(pen, palette, guide.why, { left: at.left + 14, top: at.top + 22 + place * 22 }, "left", size);
}

/** px past the ends of a tape that its ticks reach. */
const TICK = 6;

function paintLine(pen: Pen, { view, palette, unit, size }: Scene, { from, to, kind, length }: SketchLine): void {
	const a = toScreen(view, from);
	const b = toScreen(view, to);
	const run = Math.hypot(b.left - a.left, b.top - a.top);
	if (run === 0) return;
	const along = { left: (b.left - a.left) / run, top: (b.top - a.top) / run };
	// Away from the room: the left of the way from one end to the other.
	const out = { left: along.top, top: -along.left };
	pen.strokeStyle = kind === "wall" ? palette.wall : palette.track;
	pen.lineWidth = kind === "stretch" ? 5 : kind === "wall" ? 2.25 : 1.75;
	pen.setLineDash(kind === "wall" ? [9, 5] : []);
	pen.beginPath();
	trace(pen, [a, b]);
	if (kind === "wall") {
		const off = DRAWN_THICKNESS * view.scale;
		trace(pen, [
			{ left: a.left + out.left * off, top: a.top + out.top * off },
			{ left: b.left + out.left * off, top: b.top + out.top * off },
		]);
	}
	pen.stroke();
	pen.setLineDash([]);
	if (kind === "tape") {
		pen.beginPath();
		for (const end of [a, b])
			trace(pen, [
				{ left: end.left - out.left * TICK, top: end.top - out.top * TICK },
				{ left: end.left + out.left * TICK, top: end.top + out.top * TICK },
			]);
		pen.stroke();
		if (length !== null)
			boxed(
				pen,
				palette,
				formatLength(length, unit),
				{ left: (a.left + b.left) / 2, top: (a.top + b.top) / 2 },
				"center",
				size,
			);
	}
}

const PAD = 5;
const HEIGHT = 20;

/** Words on a patch of sheet, so that they can be read over whatever lies there; never beyond the edge of the drawing. */
function boxed(
	pen: Pen,
	palette: Scene["palette"],
	text: string,
	at: ScreenPoint,
	align: "left" | "center",
	size: Scene["size"],
): void {
	pen.font = fontOf("name");
	const width = pen.measureText(text).width + 2 * PAD;
	const wanted = align === "left" ? at.left : at.left - width / 2;
	const left = Math.max(0, Math.min(size.width - width, wanted));
	const middle = Math.max(HEIGHT / 2, Math.min(size.height - HEIGHT / 2, at.top));
	pen.fillStyle = palette.sheet;
	pen.globalAlpha = 0.92;
	pen.beginPath();
	pen.roundRect(left, middle - HEIGHT / 2, width, HEIGHT, 4);
	pen.fill();
	pen.globalAlpha = 1;
	pen.fillStyle = palette.track;
	pen.textAlign = "left";
	pen.textBaseline = "middle";
	pen.fillText(text, left + PAD, middle + 0.5);
}
