import type { ScreenPoint, Size } from "@baywright/editor";
import type { Doubt } from "../doubts.ts";
import type { CornerEllipse } from "../ellipses.ts";
import type { Layout } from "../labels/layout.ts";
import type { Palette } from "../palette.ts";
import type { Painter } from "../scene.ts";
import { type EllipseKey, KEY_SIGN } from "../survey-layer.ts";
import { fontOf } from "../text.ts";
import { type Pen, trace } from "./pen.ts";

export type Surveyed = {
	readonly layout: Pick<Layout, "survey" | "labels">;
	readonly palette: Palette;
	readonly size: Size;
};

/** px: long dashes for the reading that is suspected, dots for those that stand out beside it. */
const DASHES = [11, 6];
const DOTS = [1.5, 6];

/** Of the dots. */
const FAINT = 0.75;

/** px: half the length of the stroke that ends a tape. */
const END = 6;

/** px: half axes of the ellipse in the key. */
const SIGN = { major: 9, minor: 5 } as const;

/** Where each corner is to be expected, and the readings that do not agree. */
export const paintSurvey: Painter<Surveyed> = (pen, { layout: { survey, labels }, palette, size }) => {
	if (survey === null) return;
	for (const ellipse of survey.ellipses?.each ?? []) paintEllipse(pen, ellipse, palette);
	const faint = survey.doubts.filter(({ degree }) => degree === "apart");
	if (faint.length > 0) {
		pen.save();
		leaveOut(pen, labels, size);
		for (const doubt of faint) paintDoubt(pen, doubt, palette);
		pen.restore();
	}
	for (const doubt of survey.doubts) if (doubt.degree === "suspect") paintDoubt(pen, doubt, palette);
	if (survey.key !== null) paintKey(pen, survey.key, palette);
};

/** What is painted from now on leaves out the writing of notes. */
function leaveOut(pen: Pen, labels: Layout["labels"], { width, height }: Size): void {
	pen.beginPath();
	pen.rect(0, 0, width, height);
	for (const { kind, box } of labels)
		if (kind === "note")
			pen.rect(box.left - box.halfWidth, box.top - box.halfHeight, 2 * box.halfWidth, 2 * box.halfHeight);
	pen.clip("evenodd");
}

function paintEllipse(pen: Pen, { at, major, minor, turn }: CornerEllipse, palette: Palette): void {
	pen.beginPath();
	pen.ellipse(at.left, at.top, major, minor, turn, 0, 2 * Math.PI);
	// A rim of paper, so that it stands out from the wall's hatching.
	pen.strokeStyle = palette.sheet;
	pen.lineWidth = 4.5;
	pen.stroke();
	pen.fillStyle = palette.sheet;
	pen.fill();
	pen.fillStyle = palette.track;
	pen.globalAlpha = 0.2;
	pen.fill();
	pen.globalAlpha = 1;
	pen.strokeStyle = palette.track;
	pen.lineWidth = 1.75;
	pen.stroke();
}

function paintDoubt(pen: Pen, { degree, line }: Doubt, palette: Palette): void {
	const isSuspect = degree === "suspect";
	pen.save();
	pen.lineJoin = "round";
	if (isSuspect) {
		// A rim of paper lets it be followed where it runs along a wall or the track.
		pen.strokeStyle = palette.sheet;
		pen.lineWidth = 5;
		pen.beginPath();
		trace(pen, line);
		pen.stroke();
	}
	pen.strokeStyle = palette.warn;
	pen.globalAlpha = isSuspect ? 1 : FAINT;
	pen.lineWidth = isSuspect ? 2.5 : 1.75;
	pen.lineCap = isSuspect ? "butt" : "round";
	pen.setLineDash(isSuspect ? DASHES : DOTS);
	pen.beginPath();
	trace(pen, line);
	pen.stroke();
	if (isSuspect) paintEnds(pen, line);
	pen.restore();
}

/** A stroke across each end, as where a tape is held. */
function paintEnds(pen: Pen, line: readonly ScreenPoint[]): void {
	pen.setLineDash([]);
	pen.beginPath();
	for (const [end, next] of [
		[line[0], line[1]],
		[line.at(-1), line.at(-2)],
	] as const) {
		if (!end || !next) continue;
		const length = Math.hypot(next.left - end.left, next.top - end.top) || 1;
		const [left, top] = [((next.left - end.left) / length) * END, ((next.top - end.top) / length) * END];
		trace(pen, [
			{ left: end.left - top, top: end.top + left },
			{ left: end.left + top, top: end.top - left },
		]);
	}
	pen.stroke();
}

function paintKey(pen: Pen, { text, box }: EllipseKey, palette: Palette): void {
	const { left, top, halfWidth, halfHeight } = box;
	pen.fillStyle = palette.sheet;
	pen.strokeStyle = palette.line;
	pen.lineWidth = 1;
	pen.beginPath();
	pen.roundRect(left - halfWidth, top - halfHeight, 2 * halfWidth, 2 * halfHeight, 4);
	pen.fill();
	pen.stroke();
	const start = left - halfWidth;
	paintEllipse(pen, { corner: 0, at: { left: start + KEY_SIGN / 2 + 3, top }, ...SIGN, turn: 0 }, palette);
	pen.font = fontOf("small");
	pen.fillStyle = palette.soft;
	pen.textAlign = "left";
	pen.textBaseline = "middle";
	pen.fillText(text, start + KEY_SIGN + 4, top + 1);
}
