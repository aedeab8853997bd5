import { clampScale, GREATEST_SCALE, LEAST_SCALE, type Size, type Viewport } from "@baywright/editor";
import type { Point } from "@baywright/geometry";

/** Something that must be in view: a place in the plan, and how far from it the ink goes on screen whatever the scale. */
export interface FitMark {
	readonly at: Point;
	/** px to the right and downwards from `at`. */
	readonly right: number;
	readonly down: number;
	/** px all round. */
	readonly round: number;
}

/** Halvings of the scale: from 1:24000 down to far below a pixel. */
const HALVINGS = 40;

/** The closest view that shows all `marks`, at least `margin` px from every edge, with the middle of what is shown in the middle. */
export function fitView(marks: readonly FitMark[], size: Size, margin: number): Viewport {
	const width = Math.max(1, size.width - 2 * margin);
	const height = Math.max(1, size.height - 2 * margin);
	let low = LEAST_SCALE;
	let high = GREATEST_SCALE;
	for (let i = 0; i < HALVINGS; i++) {
		const scale = Math.sqrt(low * high);
		const spread = extent(marks, scale);
		const fits = spread.right - spread.left <= width && spread.bottom - spread.top <= height;
		if (fits) low = scale;
		else high = scale;
	}
	const scale = clampScale(low);
	const { left, right, top, bottom } = extent(marks, scale);
	return { scale, left: size.width / 2 - (left + right) / 2, top: size.height / 2 - (top + bottom) / 2 };
}

/** Nothing that must be in view lies beyond an edge. */
export function isInView(marks: readonly FitMark[], view: Viewport, size: Size): boolean {
	const { left, right, top, bottom } = extent(marks, view.scale);
	return (
		view.left + left >= 0 && view.left + right <= size.width && view.top + top >= 0 && view.top + bottom <= size.height
	);
}

/** px about the plan's origin. */
function extent(marks: readonly FitMark[], scale: number) {
	if (marks.length === 0) return { left: 0, right: 0, top: 0, bottom: 0 };
	let left = Number.POSITIVE_INFINITY;
	let right = Number.NEGATIVE_INFINITY;
	let top = Number.POSITIVE_INFINITY;
	let bottom = Number.NEGATIVE_INFINITY;
	for (const mark of marks) {
		const x = mark.at.x * scale + mark.right;
		const y = -mark.at.y * scale + mark.down;
		left = Math.min(left, x - mark.round);
		right = Math.max(right, x + mark.round);
		top = Math.min(top, y - mark.round);
		bottom = Math.max(bottom, y + mark.round);
	}
	return { left, right, top, bottom };
}
