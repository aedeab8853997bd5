import { CAPITAL, shape } from "../../lettering/shape.ts";
import { onArc, stepsOf } from "../../paper/arcs.ts";
import type { CircleItem, HatchItem, Item, PathItem, Stroke, TextItem, WindowItem } from "../../paper/drawing.ts";
import { hatchLines } from "../../paper/hatching.ts";
import { DASHES, INKS, type Ink, PENS } from "../../paper/pens.ts";
import { type Box, boxAt, boxRound, heightOf, overlap, type PaperPoint, widthOf } from "../../paper/place.ts";
import { type Easel, POINTS, takeFont } from "./easel.ts";

/** Of a hatch only the lines that may be seen within `seen` are drawn. */
export function drawItem(easel: Easel, item: Item, seen: Box | null = null): void {
	if (item.kind === "path") drawPath(easel, item);
	else if (item.kind === "circle") drawCircle(easel, item);
	else if (item.kind === "hatch") drawHatch(easel, item, seen);
	else if (item.kind === "text") drawText(easel, item);
	else drawWindow(easel, item);
}

function drawPath({ document }: Easel, { vertices, closed, stroke, fill }: PathItem): void {
	const first = vertices[0];
	if (first === undefined) return;
	document.moveTo(first.at.x * POINTS, first.at.y * POINTS);
	for (const step of stepsOf(vertices, closed)) {
		if (step.kind === "line") document.lineTo(step.to.x * POINTS, step.to.y * POINTS);
		else for (const curve of curvesOf(step.arc)) document.bezierCurveTo(...curve);
	}
	if (closed) document.closePath();
	inked(document, stroke, fill);
}

/** An arc in cubic curves of at most this angle is off by under a millionth of its radius. */
const CURVE_ANGLE = Math.PI / 12;

type CurvePoints = [number, number, number, number, number, number];

/** Source: the usual cubic for an arc of angle a, handles 4/3 tan(a/4) of the radius long. */
function curvesOf(arc: Parameters<typeof onArc>[0]): CurvePoints[] {
	const parts = Math.max(1, Math.ceil(Math.abs(arc.sweep) / CURVE_ANGLE));
	const angle = arc.sweep / parts;
	const handle = (4 / 3) * Math.tan(angle / 4) * arc.radius;
	return Array.from({ length: parts }, (_, i) => {
		const [a, b] = [angle * i, angle * (i + 1)];
		const [from, to] = [onArc(arc, a), onArc(arc, b)];
		const off = (p: PaperPoint, swung: number, way: number) =>
			[p.x - way * handle * Math.sin(arc.from + swung), p.y - way * handle * Math.cos(arc.from + swung)] as const;
		return [...off(from, a, 1), ...off(to, b, -1), to.x, to.y].map((mm) => mm * POINTS) as CurvePoints;
	});
}

function drawCircle({ document }: Easel, { centre, radius, stroke, fill }: CircleItem): void {
	document.circle(centre.x * POINTS, centre.y * POINTS, radius * POINTS);
	inked(document, stroke, fill);
}

function drawHatch({ document }: Easel, item: HatchItem, seen: Box | null): void {
	const lines = hatchLines(item).filter((ends) => seen === null || overlap(boxRound(ends) as Box, seen));
	if (lines.length === 0) return;
	for (const [from, to] of lines)
		document.moveTo(from.x * POINTS, from.y * POINTS).lineTo(to.x * POINTS, to.y * POINTS);
	inked(document, item.stroke, undefined);
}

/** Lines are cut off square at their ends and pointed at corners, so that what is measured is what is drawn. */
function inked(document: PDFKit.PDFDocument, stroke: Stroke | undefined, fill: Ink | undefined): void {
	if (stroke === undefined) {
		if (fill !== undefined) document.fill(INKS[fill]);
		return;
	}
	const dashes = DASHES[stroke.dash ?? "continuous"].map((mm) => mm * POINTS);
	document.lineWidth(PENS[stroke.pen] * POINTS);
	if (dashes.length > 0) document.dash(dashes as never, {});
	else document.undash();
	const ink = INKS[stroke.ink ?? "black"];
	if (fill === undefined) document.stroke(ink);
	else document.fillAndStroke(INKS[fill], ink);
}

function drawText(easel: Easel, { at: place, text, height, bold, align, turn, ink }: TextItem): void {
	const { document } = easel;
	const { width, runs, strokes } = shape(text, bold);
	if (text === "") return;
	const em = (height / CAPITAL) * POINTS;
	const left = align === "left" ? 0 : align === "centre" ? -width / 2 : -width;
	document.save();
	const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
	document.transform(cos, -sin, sin, cos, place.x * POINTS, place.y * POINTS);
	document.fillColor(INKS[ink]);
	const composed = strokes.length > 0 || runs.some(({ size }) => size !== 1);
	// Who copies or searches gets what was meant.
	if (composed) document.markContent("Span", { actual: text });
	for (const run of runs) {
		takeFont(easel, bold, run.subset, em * run.size);
		document.text(run.text, (left + run.x) * em, -run.y * em, { lineBreak: false, baseline: "alphabetic" });
	}
	for (const { width: wide, points } of strokes) {
		points.forEach(([right, up], i) => {
			const [x, y] = [(left + right) * em, -up * em];
			if (i === 0) document.moveTo(x, y);
			else document.lineTo(x, y);
		});
		document
			.undash()
			.lineWidth(wide * em)
			.stroke(INKS[ink]);
	}
	if (composed) document.endMarkedContent();
	document.restore();
}

function drawWindow(easel: Easel, { hole, from, across, down, items }: WindowItem): void {
	const { document } = easel;
	document.save();
	document.rect(hole.left * POINTS, hole.top * POINTS, widthOf(hole) * POINTS, heightOf(hole) * POINTS).clip();
	document.transform(across, 0, 0, down, (hole.left - from.x * across) * POINTS, (hole.top - from.y * down) * POINTS);
	const seen = boxAt(from.x, from.y, widthOf(hole) / across, heightOf(hole) / down);
	for (const item of items) drawItem(easel, item, seen);
	document.restore();
}
