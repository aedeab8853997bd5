import { type Radians, radians } from "./angle.ts";

/** What a fitter marks out at one corner. Lengths mm. */
export interface CornerBend {
	/** From the virtual corner of the track to where the bend starts. */
	readonly tangent: number;
	/** From the corner along the left and the right wall face to where the bend starts; may be negative at an external corner. */
	readonly setBack: readonly [left: number, right: number];
	/** Length along the bend. */
	readonly sweep: number;
	/** Corner to the middle of the bend. */
	readonly cornerGap: number;
}

/**
 * Distance from a corner back along the left wall face to the foot of the track's virtual corner, for tracks `left` and
 * `right` mm off the two walls: (right − left·cos δ)/sin δ, written so that it holds its digits at slight turns.
 * Exchange `left` and `right` for the other wall.
 */
export function footOfVirtualCorner(
	turn: number,
	left: number,
	right: number,
	halfTangent = Math.tan(turn / 2),
): number {
	const even = left * halfTangent;
	return left === right ? even : even + (right - left) / Math.sin(turn);
}

/**
 * The bend of radius `radius` (mm, centre line) at a corner between straight walls that turns by `turn` (right positive),
 * with the centre line `left` and `right` mm off the walls.
 * Source: the circular curve of route surveying, T = R tan(Δ/2), L = RΔ, set out from the wall faces.
 */
export function cornerBend(turn: Radians, left: number, right: number, radius: number): CornerBend {
	const tangent = radius * Math.tan(Math.abs(turn) / 2);
	const footLeft = footOfVirtualCorner(turn, left, right);
	const footRight = footOfVirtualCorner(turn, right, left);
	return {
		tangent,
		setBack: [footLeft + tangent, footRight + tangent],
		sweep: radius * Math.abs(turn),
		cornerGap: gapToMiddle(turn, footLeft, left, radius, tangent),
	};
}

/** In the frame of the corner (origin) and the left wall (along x, room below): from virtual corner towards the centre, short of it by the radius. */
function gapToMiddle(turn: number, footLeft: number, left: number, radius: number, tangent: number): number {
	const fromVirtual = Math.hypot(tangent, radius);
	const share = fromVirtual > 0 ? 1 - radius / fromVirtual : 0;
	const x = -footLeft - tangent * share;
	const y = -left - Math.sign(turn) * radius * share;
	return Math.hypot(x, y);
}

/** The room angle (radians) from a chord between two marks `arm` mm from the corner along both walls: 2 asin(chord / 2 arm). */
export function angleFromChord(arm: number, chord: number): Radians {
	return radians(2 * Math.asin(chord / (2 * arm)));
}
