import { CAPITAL, REACH_DOWN, REACH_UP, shape } from "../lettering/shape.ts";
import { sampled } from "./arcs.ts";
import type { Item, Mark, TextItem } from "./drawing.ts";
import { PENS } from "./pens.ts";
import { at, type Box, boxRound, boxRoundAll, grown, type PaperPoint } from "./place.ts";

/** How near (mm) the box of an arc is taken. */
const NEAR = 0.01;

/** The four corners of a line of lettering: lower left, lower right, upper right, upper left as one reads it. */
export function textCorners({ at: place, text, height, bold, align, turn }: TextItem): readonly PaperPoint[] {
	const em = height / CAPITAL;
	const width = shape(text, bold).width * em;
	const left = align === "left" ? 0 : align === "centre" ? -width / 2 : -width;
	const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
	return (
		[
			[left, -REACH_DOWN * em],
			[left + width, -REACH_DOWN * em],
			[left + width, REACH_UP * em],
			[left, REACH_UP * em],
		] as const
	).map(([along, up]) => at(place.x + along * cos - up * sin, place.y - along * sin - up * cos));
}

const textBox = (item: TextItem): Box => boxRound(textCorners(item)) as Box;

/** The box of what is drawn, pen and all; of a window its hole. */
export function boxOf(item: Item): Box {
	if (item.kind === "window") return item.hole;
	if (item.kind === "text") return textBox(item);
	const half = penOf(item) / 2;
	if (item.kind === "circle") {
		const { x, y } = item.centre;
		return grown({ left: x, right: x, top: y, bottom: y }, item.radius + half);
	}
	const points = item.kind === "hatch" ? sampled(item.outline, true, NEAR) : sampled(item.vertices, item.closed, NEAR);
	return grown(boxRound(points) ?? { left: 0, top: 0, right: 0, bottom: 0 }, half);
}

export const boxOfAll = (items: readonly Item[]): Box | null => boxRoundAll(items.map(boxOf));

const penOf = ({ stroke }: Exclude<Mark, TextItem>): number => (stroke === undefined ? 0 : PENS[stroke.pen]);
