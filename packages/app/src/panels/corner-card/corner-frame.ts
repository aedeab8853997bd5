import type { CornerCard } from "@baywright/setout";
import type { CardInput } from "./card-input.ts";

/** mm in the frame of the corner: the corner at the origin, the room below it, y up. On the drawing: its own units, y down. */
export type Spot = readonly [x: number, y: number];

export type CornerFrame = ReturnType<typeof frameOf>;

/** Screen units kept round the walls for their figures. */
const MARGIN = { top: 74, side: 56, bottom: 26 } as const;
const GREATEST_HEIGHT = 400;
const LEAST_HEIGHT = 190;

/** How far beyond the brackets the walls are drawn. */
const REACH = 1.12;

/** Places for everything that the corner card draws, and the way from mm to a drawing `width` units wide. */
export function frameOf(input: CardInput, card: CornerCard, width: number) {
	const half = (input.angle * Math.PI) / 360;
	const away: readonly [Spot, Spot] = [
		[-Math.sin(half), -Math.cos(half)],
		[Math.sin(half), -Math.cos(half)],
	];
	const intoRoom: readonly [Spot, Spot] = [
		[Math.cos(half), -Math.sin(half)],
		[-Math.cos(half), -Math.sin(half)],
	];
	const offs = [input.left, input.right] as const;
	/** `distance` mm from the corner along a wall, `off` mm off its face into the room. */
	const along = (side: 0 | 1, distance: number, off: number): Spot => [
		away[side][0] * distance + intoRoom[side][0] * off,
		away[side][1] * distance + intoRoom[side][1] * off,
	];
	const reach = Math.max(input.bracket, ...card.setBack) * REACH;
	const corner: Spot = [0, 0];
	const tips = [along(0, reach, 0), along(1, reach, 0)] as const;
	const ends = [along(0, reach, offs[0]), along(1, reach, offs[1])] as const;
	const bend = { from: along(0, card.setBack[0], offs[0]), to: along(1, card.setBack[1], offs[1]) };

	const seen = [corner, ...tips, ...ends];
	const [left, right] = [Math.min(...seen.map(([x]) => x)), Math.max(...seen.map(([x]) => x))];
	const low = Math.min(...seen.map(([, y]) => y));
	const scale = Math.min(
		(width - 2 * MARGIN.side) / (right - left),
		(GREATEST_HEIGHT - MARGIN.top - MARGIN.bottom) / -low,
	);
	const height = Math.max(LEAST_HEIGHT, Math.round(MARGIN.top + MARGIN.bottom - low * scale));
	return {
		at: ([x, y]: Spot): Spot => [width / 2 + (x - (left + right) / 2) * scale, MARGIN.top - y * scale],
		scale,
		height,
		along,
		corner,
		tips,
		ends,
		bend,
		middle: middleOf(bend, input.radius, Math.PI - 2 * half),
		outCorner: (thick: number): Spot => [0, thick / Math.max(Math.sin(half), LEAST_MITRE)],
		out: (side: 0 | 1, thick: number): Spot => along(side, reach, -thick),
		brackets: ([0, 1] as const).map((side) => [along(side, input.bracket, 0), along(side, input.bracket, offs[side])]),
	};
}

/** Keeps the outer edge of a very sharp corner on the drawing. */
const LEAST_MITRE = 0.35;

/** The middle of an arc that turns right from one end to the other: off the chord's middle by the mid-ordinate, to the left. */
function middleOf({ from, to }: { readonly from: Spot; readonly to: Spot }, radius: number, turn: number): Spot {
	const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
	const chord = Math.hypot(dx, dy);
	if (chord === 0) return from;
	const rise = radius * (1 - Math.cos(turn / 2));
	return [(from[0] + to[0]) / 2 - (dy / chord) * rise, (from[1] + to[1]) / 2 + (dx / chord) * rise];
}
