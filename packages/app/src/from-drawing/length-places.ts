import { chordOf, type Piece, sagittaOf } from "@baywright/sheets/read";
import type { Frame } from "./preview-frame.ts";

interface Placed {
	readonly x: number;
	readonly y: number;
	readonly text: string;
}

/** Half the height of the letters, and of one letter's width, in the drawing's units. */
const HALF_HIGH = 8;
const HALF_LETTER = 3.7;
/** Half the size of a number's disc. */
export const NUMBER = 10;
/** How far off the wall a run stands, besides its own half size. */
const OFF = 7;

/** The runs that find room outside their walls without lying on one another or on a number, of walls taken before those left, the longest first; the table has them all. */
export function lengthsThatFit(
	taken: readonly Piece[],
	left: readonly Piece[],
	numbers: readonly (readonly [x: number, y: number])[],
	{ at, scale, size }: Frame,
	show: (mm: number) => string,
): Placed[] {
	const placed: (Placed & { readonly wide: number })[] = [];
	for (const { wall, run } of [...longestFirst(taken), ...longestFirst(left)]) {
		const text = show(run);
		const wide = text.length * HALF_LETTER;
		const [ax, ay] = at(wall.from);
		const [bx, by] = at(wall.to);
		const long = Math.hypot(bx - ax, by - ay);
		// To the left of the way, where the wall bows to if it bows away from the room.
		const [nx, ny] = [(by - ay) / long, -(bx - ax) / long];
		const rise = Math.max(0, sagittaOf(wall) * scale);
		const off = rise + OFF + Math.abs(nx) * wide + Math.abs(ny) * HALF_HIGH;
		const [x, y] = [(ax + bx) / 2 + nx * off, (ay + by) / 2 + ny * off];
		const free = placed.every(
			(other) => Math.abs(other.x - x) > other.wide + wide + 4 || Math.abs(other.y - y) > 2 * HALF_HIGH,
		);
		const clear = numbers.every(
			([cx, cy]) => Math.abs(cx - x) > NUMBER + wide || Math.abs(cy - y) > NUMBER + HALF_HIGH,
		);
		const inside = x - wide > 2 && x + wide < size.width - 2;
		if (free && clear && inside && long > wide) placed.push({ x, y, text, wide });
	}
	return placed;
}

const longestFirst = (walls: readonly Piece[]) =>
	walls.map((wall) => ({ wall, run: chordOf(wall) })).sort((a, b) => b.run - a.run);
