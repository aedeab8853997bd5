declare const frame: unique symbol;

/** A place on the paper: mm, x to the right and y down from its upper left corner. */
export interface PaperPoint {
	readonly x: number;
	readonly y: number;
	readonly [frame]: "paper";
}

export const at = (x: number, y: number): PaperPoint => ({ x, y }) as PaperPoint;

export const moved = (p: PaperPoint, right: number, down: number): PaperPoint => at(p.x + right, p.y + down);

/** An upright rectangle on the paper, mm. */
export interface Box {
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
}

export const boxAt = (left: number, top: number, width: number, height: number): Box => ({
	left,
	top,
	right: left + width,
	bottom: top + height,
});

export const widthOf = ({ left, right }: Box): number => right - left;
export const heightOf = ({ top, bottom }: Box): number => bottom - top;
export const middleOf = ({ left, top, right, bottom }: Box): PaperPoint => at((left + right) / 2, (top + bottom) / 2);

/** The same box with every side moved outwards; inwards where `by` is negative. */
export const grown = ({ left, top, right, bottom }: Box, by: number): Box => ({
	left: left - by,
	top: top - by,
	right: right + by,
	bottom: bottom + by,
});

/** Whether two boxes share more than an edge. */
export const overlap = (a: Box, b: Box): boolean =>
	a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

export const isWithin = (inner: Box, outer: Box, slack = 0): boolean =>
	inner.left >= outer.left - slack &&
	inner.right <= outer.right + slack &&
	inner.top >= outer.top - slack &&
	inner.bottom <= outer.bottom + slack;

/** The least box round some places; null round none. */
export function boxRound(points: readonly PaperPoint[]): Box | null {
	if (points.length === 0) return null;
	let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
	for (const { x, y } of points) {
		left = Math.min(left, x);
		right = Math.max(right, x);
		top = Math.min(top, y);
		bottom = Math.max(bottom, y);
	}
	return { left, top, right, bottom };
}

export function boxRoundAll(boxes: readonly Box[]): Box | null {
	return boxRound(boxes.flatMap(({ left, top, right, bottom }) => [at(left, top), at(right, bottom)]));
}
