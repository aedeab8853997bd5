import type { Dimension, NoteLabel, RunLabel } from "../labels/label.ts";
import type { Layout } from "../labels/layout.ts";
import type { Palette } from "../palette.ts";
import type { Painter } from "../scene.ts";
import { fontOf, lineHeight } from "../text.ts";
import { type Pen, trace } from "./pen.ts";

/** px to either side of the dimension line that its slanted ticks reach. */
const TICK = 5.5;

/** px of sheet round the letters of a note that folds of a drawn curtain run across. */
const HALO = 3;

export interface Labelled {
	readonly layout: Pick<Layout, "labels">;
	readonly palette: Palette;
	/** Curtains are drawn over where notes stand. */
	readonly overFolds?: boolean;
}

/** Dimensions of runs and notes beside things; the marks of findings are painted with what is live. */
export const paintLabels: Painter<Labelled> = (pen, { layout, palette, overFolds = false }) => {
	for (const label of layout.labels) {
		if (label.kind === "run") paintRun(pen, label, palette);
		if (label.kind === "note") paintNote(pen, label, palette, overFolds);
	}
};

function paintRun(pen: Pen, label: RunLabel, palette: Palette): void {
	const colour = label.taped ? palette.ink : palette.soft;
	pen.strokeStyle = colour;
	pen.lineCap = "butt";
	pen.lineWidth = 0.75;
	pen.beginPath();
	for (const { from, to } of label.extensions) trace(pen, [from, to]);
	pen.stroke();
	pen.lineWidth = 1;
	pen.beginPath();
	for (const { from, to } of label.lines) trace(pen, [from, to]);
	pen.stroke();

	const { along } = label;
	const slant = { left: (along.left + along.top) * TICK, top: (along.top - along.left) * TICK };
	pen.lineWidth = 1.75;
	pen.beginPath();
	for (const { left, top } of label.ticks)
		trace(pen, [
			{ left: left - slant.left, top: top - slant.top },
			{ left: left + slant.left, top: top + slant.top },
		]);
	pen.stroke();

	const { box } = label;
	pen.save();
	pen.translate(box.left, box.top);
	pen.rotate(box.turn);
	pen.font = fontOf(label.face);
	pen.fillStyle = colour;
	pen.textAlign = "center";
	pen.textBaseline = "middle";
	pen.fillText(label.text, 0, 1);
	pen.restore();
}

function paintNote(
	pen: Pen,
	{ lines, leader, colour, box, dimension }: NoteLabel,
	palette: Palette,
	overFolds: boolean,
): void {
	if (dimension !== null) paintDimension(pen, dimension, palette[colour]);
	if (leader !== null) {
		pen.strokeStyle = palette[colour];
		pen.lineWidth = 0.75;
		pen.lineCap = "butt";
		pen.beginPath();
		trace(pen, [leader.from, leader.to]);
		pen.stroke();
	}
	pen.textAlign = "center";
	pen.textBaseline = "middle";
	let top = box.top - box.halfHeight;
	for (const line of lines) {
		const height = lineHeight(line.face);
		pen.font = fontOf(line.face);
		if (overFolds) {
			pen.strokeStyle = palette.sheet;
			pen.lineWidth = 2 * HALO;
			pen.lineJoin = "round";
			pen.strokeText(line.text, box.left, top + height / 2 + 1);
		}
		pen.fillStyle = palette[line.colour];
		pen.fillText(line.text, box.left, top + height / 2 + 1);
		top += height;
	}
}

/** px: the dashes of what a dimension is measured from, and half of its slanted ticks. */
const BROKEN = [10, 3, 2, 3];
const SMALL_TICK = 3.5;

/** Its line runs on a little past both ticks, so that it is seen where they stand close. */
const PAST_TICK = 4;

function paintDimension(pen: Pen, { line: { from, to }, from: datums }: Dimension, colour: string): void {
	pen.strokeStyle = colour;
	pen.lineCap = "butt";
	pen.lineWidth = 0.75;
	pen.setLineDash(BROKEN);
	pen.beginPath();
	for (const datum of datums) trace(pen, [datum.from, datum.to]);
	pen.stroke();
	pen.setLineDash([]);
	const length = Math.hypot(to.left - from.left, to.top - from.top);
	const along = { left: (to.left - from.left) / length, top: (to.top - from.top) / length };
	const past = { left: along.left * PAST_TICK, top: along.top * PAST_TICK };
	pen.lineWidth = 1;
	pen.beginPath();
	trace(pen, [
		{ left: from.left - past.left, top: from.top - past.top },
		{ left: to.left + past.left, top: to.top + past.top },
	]);
	pen.stroke();
	const slant = { left: (along.left + along.top) * SMALL_TICK, top: (along.top - along.left) * SMALL_TICK };
	pen.lineWidth = 1.75;
	pen.beginPath();
	for (const { left, top } of [from, to])
		trace(pen, [
			{ left: left - slant.left, top: top - slant.top },
			{ left: left + slant.left, top: top + slant.top },
		]);
	pen.stroke();
}
