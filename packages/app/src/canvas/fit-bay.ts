import { type Size, toScreen, type Viewport } from "@baywright/editor";
import { midpoint, step } from "@baywright/geometry";
import { type FitMark, fitView, isInView } from "./fit.ts";
import { CORNER_HANDLE } from "./handles.ts";
import { runFigure } from "./labels/figures.ts";
import { FIRST_LINE } from "./labels/runs.ts";
import type { Scene, Subject } from "./scene.ts";
import type { Measure } from "./text.ts";
import { DRAWN_THICKNESS } from "./wall-shape.ts";

/** px between what is shown and the edge of the drawing. */
const MARGIN = 14;

/** px that notes inside a corner need, from the corner into the room, and their own half size. */
const NOTE_WAY = 74;
const NOTE_ROUND = 34;

/** How much smaller the bay may get to stay clear of what is at the lower right. */
const DWINDLES = 2;

/** px round a corner whose error ellipse is drawn: few are longer. */
const ELLIPSE_ROUND = 28;

/** px round a dimension's text. */
const TEXT_ROUND = 12;

/** px over the drawing: `head` from its top edge down, `corner` at its lower right. */
export interface Over {
	readonly head: number;
	readonly corner: Size;
}

/** The closest view in which the whole bay shows with its dimensions and notes, clear of what stands over the drawing. */
export function fitBay(subject: Subject, full: Size, { head, corner }: Over, measure: Measure): Viewport {
	const size = { width: full.width, height: Math.max(1, full.height - head) };
	const view = fitUnder(subject, size, corner, measure);
	return { ...view, top: view.top + head };
}

function fitUnder(subject: Subject, size: Size, corner: Size, measure: Measure): Viewport {
	if (subject.corners.length < 2) return emptyView(subject, size);
	const marks = fitMarks(subject, measure);
	const view = fitView(marks, size, MARGIN);
	const covered = marks.some(({ at, right, down, round }) => {
		const { left, top } = toScreen(view, at);
		return left + right + round > size.width - corner.width && top + down + round > size.height - corner.height;
	});
	if (!covered || size.height < 3 * corner.height) return view;
	const clear = fitView(marks, { width: size.width, height: size.height - corner.height }, MARGIN);
	// Where the dimensions alone fill what is left, the bay would shrink to a dot.
	return clear.scale < view.scale / DWINDLES ? view : clear;
}

/** mm across the sheet while there is no wall to fit: room for most bays. */
const EMPTY_ACROSS = 4200;

/** A sheet to draw a bay on: its first corner, or where that will be, towards the left. */
function emptyView({ corners }: Subject, size: Size): Viewport {
	const scale = Math.min(size.width / EMPTY_ACROSS, size.height / (EMPTY_ACROSS / 2));
	const { x, y } = corners[0] ?? { x: 0, y: 0 };
	return { scale, left: size.width * 0.25 - x * scale, top: size.height * 0.65 + y * scale };
}

/** The whole bay shows, with its dimensions and notes. */
export function bayInView(scene: Scene, measure: Measure): boolean {
	return scene.corners.length < 2 || isInView(fitMarks(scene, measure), scene.view, scene.size);
}

function fitMarks(subject: Subject, measure: Measure): FitMark[] {
	const { corners, walls } = subject;
	const round = subject.surveying && subject.plan.survey !== null ? ELLIPSE_ROUND : CORNER_HANDLE + 3;
	const marks: FitMark[] = corners.map((at) => ({ at, right: 0, down: 0, round }));
	walls.forEach((shape, wall) => {
		if (shape === null) return;
		const { ux, uy } = shape.chord;
		const out = FIRST_LINE + TEXT_ROUND;
		for (const [i, at] of shape.outer.entries()) {
			marks.push({ at: midpoint(at, shape.face[i] ?? at), right: 0, down: 0, round: 4 });
			marks.push({ at, right: 0, down: 0, round: 4 });
		}
		// The chord's dimension line stands outside the bow.
		const bulge = DRAWN_THICKNESS + Math.max(0, shape.arc?.rise ?? 0);
		const from = shape.face[0] as (typeof corners)[number];
		for (const end of [0, shape.chord.length])
			marks.push({ at: step(from, ux, uy, end, -bulge), right: -uy * out, down: -ux * out, round: 4 });

		const figure = runFigure(subject, wall, shape.chord.length);
		const half = measure(figure.text, figure.face) / 2;
		for (const side of [-half, half])
			marks.push({
				at: step(from, ux, uy, shape.chord.length / 2, -bulge),
				right: -uy * out + ux * side,
				down: -ux * out - uy * side,
				round: TEXT_ROUND,
			});

		const before = shape.along.at(-1);
		const after = walls[wall + 1]?.along[0];
		const at = corners[wall + 1];
		if (!before || !after || !at) return;
		const right = before.uy + after.uy;
		const down = before.ux + after.ux;
		const length = Math.hypot(right, down);
		if (length > 0.1)
			marks.push({ at, right: (right / length) * NOTE_WAY, down: (down / length) * NOTE_WAY, round: NOTE_ROUND });
	});
	return marks;
}
