/** One thing taped or measured on site. Lengths mm, angles degrees; `sd` null = the kind's usual deviation. Walls and corners count from the left. */
export type Reading = { readonly value: number; readonly sd: number | null } & ReadingOf;

/** What is read. */
export type ReadingOf =
	/** Straight, corner to next corner. */
	| { readonly kind: "run"; readonly wall: number }
	/** Straight, corner to corner. */
	| { readonly kind: "diagonal"; readonly from: number; readonly to: number }
	/** Interior angle between the faces at a corner, where they are bowed between their tangents. */
	| { readonly kind: "angle"; readonly corner: number }
	/**
	 * Between two marks `arm` from the corner, straight, on either face; at an external corner one mark is on a straightedge that carries
	 * one face past the corner.
	 */
	| { readonly kind: "chord"; readonly corner: number; readonly arm: number }
	/** How far a face stands off its chord, + away from the room, `at` along the face from its left corner; null = mid-chord. */
	| { readonly kind: "rise"; readonly wall: number; readonly at: number | null }
	/** A corner off the line of a wall (a bowed one's chord), + on the room's side. */
	| { readonly kind: "square"; readonly corner: number; readonly wall: number }
	/** Straight between two places, each `at` along a face from its left corner and `off` it into the room: brackets as fitted. */
	| { readonly kind: "span"; readonly from: WallPlace; readonly to: WallPlace };

export interface WallPlace {
	readonly wall: number;
	readonly at: number;
	readonly off: number;
}

/** One standard deviation of each kind, mm or degrees. Common practice, no source; a span adds the places of two brackets to the tape's own. */
export const USUAL_SD: Readonly<Record<Reading["kind"], number>> = {
	run: 2,
	diagonal: 2,
	angle: 0.75,
	chord: 1,
	rise: 1,
	square: 2,
	span: 3,
};

export const isInDegrees = ({ kind }: ReadingOf): boolean => kind === "angle";

export type ReadingFault =
	/** It names a corner or a wall that the bay has not, or that says nothing there. */
	| { readonly kind: "reading-out-of-place"; readonly reading: number }
	/** The marks of a chord cannot be so far apart: `greatest` is both arms. */
	| { readonly kind: "chord-too-long"; readonly reading: number; readonly greatest: number };
