import type { ScreenPoint, Size } from "@baywright/editor";

/** A rectangle on screen that may stand at an angle, px. */
export interface Box {
	/** Its middle. */
	readonly left: number;
	readonly top: number;
	readonly halfWidth: number;
	readonly halfHeight: number;
	/** Radians, clockwise on screen. */
	readonly turn: number;
}

/** A line with a thickness: `half` px to either side and round its ends. */
export interface Stroke {
	readonly from: ScreenPoint;
	readonly to: ScreenPoint;
	readonly half: number;
	/** Leaders may not cross each other; other lines may. */
	readonly leader: boolean;
}

/** One way to put a label: what its text covers, and the lines that come with it (a dimension line, a leader). */
export interface Spot {
	readonly box: Box;
	readonly strokes: readonly Stroke[];
	/** Lines that come with it too and may run over what is there already; what comes later keeps off them. */
	readonly under?: readonly Stroke[];
}

/** Whether two boxes share any point; boxes that only touch do not. */
export function boxesOverlap(a: Box, b: Box): boolean {
	const reach = a.halfWidth + a.halfHeight + b.halfWidth + b.halfHeight;
	if (Math.abs(a.left - b.left) >= reach || Math.abs(a.top - b.top) >= reach) return false;
	return !apartAlong(a, b, a.turn) && !apartAlong(a, b, b.turn);
}

/** Whether a stroke comes into a box. Exact along the stroke; its round ends are taken as square. */
export function strokeEnters(box: Box, { from, to, half }: Stroke): boolean {
	const length = Math.hypot(to.left - from.left, to.top - from.top);
	return boxesOverlap(box, {
		left: (from.left + to.left) / 2,
		top: (from.top + to.top) / 2,
		halfWidth: length / 2 + half,
		halfHeight: half,
		turn: Math.atan2(to.top - from.top, to.left - from.left),
	});
}

/** Whether two lines cross, from end to end. */
export function linesCross(
	a: { readonly from: ScreenPoint; readonly to: ScreenPoint },
	b: { readonly from: ScreenPoint; readonly to: ScreenPoint },
): boolean {
	return sideOf(a, b.from) !== sideOf(a, b.to) && sideOf(b, a.from) !== sideOf(b, a.to);
}

const sideOf = (
	{ from, to }: { readonly from: ScreenPoint; readonly to: ScreenPoint },
	{ left, top }: ScreenPoint,
): boolean => (to.left - from.left) * (top - from.top) > (to.top - from.top) * (left - from.left);

/** Whether a box lies wholly on screen, at least `margin` px from its edges. */
export function boxInside(box: Box, size: Size, margin: number): boolean {
	const { width, height } = extentOf(box);
	return (
		box.left - width >= margin &&
		box.left + width <= size.width - margin &&
		box.top - height >= margin &&
		box.top + height <= size.height - margin
	);
}

/** Half the width and height of the upright rectangle round a box. */
export function extentOf({ halfWidth, halfHeight, turn }: Box): Size {
	const cos = Math.abs(Math.cos(turn));
	const sin = Math.abs(Math.sin(turn));
	return { width: halfWidth * cos + halfHeight * sin, height: halfWidth * sin + halfHeight * cos };
}

/** Whether the boxes lie apart along either axis of a frame turned by `turn`. */
function apartAlong(a: Box, b: Box, turn: number): boolean {
	const cos = Math.cos(turn);
	const sin = Math.sin(turn);
	const left = b.left - a.left;
	const top = b.top - a.top;
	return (
		Math.abs(left * cos + top * sin) >= reachAlong(a, turn) + reachAlong(b, turn) ||
		Math.abs(top * cos - left * sin) >= reachAlong(a, turn + Math.PI / 2) + reachAlong(b, turn + Math.PI / 2)
	);
}

/** Half the length of a box's shadow on a line in direction `turn`. */
function reachAlong({ halfWidth, halfHeight, turn }: Box, direction: number): number {
	return halfWidth * Math.abs(Math.cos(turn - direction)) + halfHeight * Math.abs(Math.sin(turn - direction));
}
