import type { Point } from "@baywright/geometry";
import { middleOf, type Piece } from "@baywright/sheets/read";

interface Size {
	readonly width: number;
	readonly height: number;
}

/** How the plan (mm, y up) lies in a small drawing (y down). */
export interface Frame {
	readonly at: (p: Point) => readonly [x: number, y: number];
	/** Drawing units for each mm. */
	readonly scale: number;
	readonly size: Size;
}

/** Room for numbers and runs round the walls. */
const MARGIN = 44;

/** The walls as large as they go, in the middle. */
export function frameFor(walls: readonly Piece[], { width, height }: Size): Frame {
	const points = walls.flatMap(pointsOf);
	const [left, right] = [Math.min(...points.map(({ x }) => x)), Math.max(...points.map(({ x }) => x))];
	const [low, high] = [Math.min(...points.map(({ y }) => y)), Math.max(...points.map(({ y }) => y))];
	const scale = Math.min(
		(width - 2 * MARGIN) / Math.max(right - left, 1),
		(height - 2 * MARGIN) / Math.max(high - low, 1),
	);
	return {
		scale,
		size: { width, height },
		at: ({ x, y }) => [width / 2 + (x - (left + right) / 2) * scale, height / 2 - (y - (low + high) / 2) * scale],
	};
}

/** The ends of a wall and the place where it stands out furthest. */
const pointsOf = (wall: Piece): Point[] => [wall.from, middleOf(wall), wall.to];
