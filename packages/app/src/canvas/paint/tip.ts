import type { ScreenPoint } from "@baywright/editor";
import type { Reading } from "../held-readings.ts";
import type { Painter, Scene } from "../scene.ts";
import { fontOf, lineHeight } from "../text.ts";

export interface Tip {
	readonly at: ScreenPoint;
	readonly readings: readonly Reading[];
	/** Away from the room on screen: the tip stands there, where it hides least. */
	readonly out: ScreenPoint;
	/** A finger hides what is under it: the tip stands well above. */
	readonly touch: boolean;
}

const PAD = 10;
const COLUMN_GAP = 14;
const OFF_POINTER = 22;
/** px above a finger: its loupe is in between. */
const OFF_FINGER = 160;

/** px that the tip stays in from the edge of the drawing. */
const EDGE = 8;

/** `head`: px from the top that other things stand over. */
type Tipped = Pick<Scene, "measure" | "palette" | "size"> & { readonly tip: Tip | null; readonly head: number };

/** The figures that change during a drag, beside the pointer. */
export const paintTip: Painter<Tipped> = (pen, { tip, measure, palette, size, head }) => {
	if (tip === null || tip.readings.length === 0) return;
	const names = Math.max(...tip.readings.map(({ name }) => measure(name, "small")));
	const figures = Math.max(...tip.readings.map(({ figure }) => measure(figure, "name")));
	const row = lineHeight("name") + 2;
	const width = Math.ceil(names + COLUMN_GAP + figures + 2 * PAD);
	const height = Math.ceil(row * tip.readings.length + 2 * PAD - 4);
	const { left, top } = placeTip(tip, width, height, size, head);

	pen.beginPath();
	pen.roundRect(left, top, width, height, 6);
	pen.fillStyle = palette.sheet;
	pen.fill();
	pen.strokeStyle = palette.track;
	pen.lineWidth = 1.5;
	pen.stroke();

	pen.textBaseline = "middle";
	tip.readings.forEach(({ name, figure }, i) => {
		const middle = top + PAD - 2 + row * (i + 0.5) + 1;
		pen.textAlign = "left";
		pen.font = fontOf("small");
		pen.fillStyle = palette.soft;
		pen.fillText(name, left + PAD, middle);
		pen.textAlign = "right";
		pen.font = fontOf("name");
		pen.fillStyle = palette.ink;
		pen.fillText(figure, left + width - PAD, middle);
	});
};

/** Beside a pointer away from the room, on the other side where there is no room for it; above a finger, or else in the lower left corner. */
function placeTip(
	{ at, touch, out }: Tip,
	width: number,
	height: number,
	size: Scene["size"],
	head: number,
): ScreenPoint {
	const beside = (place: number, way: number, extent: number, room: number) => {
		const after = place + OFF_POINTER;
		const before = place - OFF_POINTER - extent;
		if (way < 0) return before >= EDGE ? before : after;
		return after + extent <= room - EDGE ? after : before;
	};
	const within = (left: number, top: number): ScreenPoint => ({
		left: Math.round(Math.max(EDGE, Math.min(size.width - width - EDGE, left))),
		top: Math.round(Math.max(head + EDGE, Math.min(size.height - height - EDGE, top))),
	});
	if (!touch)
		return within(
			beside(at.left, out.left < -0.2 ? -1 : 1, width, size.width),
			beside(at.top, out.top < 0.2 ? -1 : 1, height, size.height),
		);
	const above = at.top - OFF_FINGER - height;
	return above >= head + EDGE ? within(at.left - width / 2, above) : within(EDGE, size.height);
}
