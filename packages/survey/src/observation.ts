import { angleFromChord, type Radians } from "@baywright/geometry";

/** One thing observed, with how sure it is. Points and parameters are named by their index in the network. */
export type Observation = Observed & {
	/** As taken: in the network's unit of length, or radians. */
	readonly value: number;
	/** One standard deviation, same unit. */
	readonly sd: number;
	/** A prior is what is believed before anything is read: it yields to every reading and counts towards no redundancy. */
	readonly role: "reading" | "prior";
	/** Set on a prior that yields to readings, but to no other prior. */
	readonly holdsOn?: boolean;
};

/** What can be observed. */
export type Observed = Distance | Angle | Offset | Stand | Span | Sum;

/** Straight from point to point. `zero` is a parameter added to it: what a tape's worn hook reads too little. */
export interface Distance {
	readonly kind: "distance";
	readonly from: number;
	readonly to: number;
	readonly zero?: number;
}

/** Clockwise at a point, from the direction to one point to the direction to another, in [0, 2π). Each tilt opens it further. */
export interface Angle {
	readonly kind: "angle";
	readonly at: number;
	readonly from: number;
	readonly to: number;
	readonly tilts?: readonly Tilt[];
}

/**
 * What a bowed wall adds to an angle taken at one of its ends, over that of its chord: the angle between chord and tangent, or, with an
 * arm, between the chord and a straight line to the face `arm` from that end.
 */
export interface Tilt extends Bowed {
	readonly arm: number | null;
}

/** A point off the line through two others, + on the right of the way from one to the other. */
export interface Offset {
	readonly kind: "offset";
	readonly point: number;
	readonly from: number;
	readonly to: number;
}

/** How far a bowed face stands off its chord, `at` along the face from its first point; + on the left. */
export interface Stand extends Bowed {
	readonly kind: "stand";
	readonly at: number;
}

/** Straight between two places beside walls. */
export interface Span {
	readonly kind: "span";
	readonly first: Place;
	readonly second: Place;
}

/** Beside a wall: `at` along its face from its first point, `off` to its right. */
export interface Place extends Bowed {
	readonly at: number;
	readonly off: number;
}

/** A sum of parameters, each times a factor; one parameter by itself is observed as such. */
export interface Sum {
	readonly kind: "sum";
	readonly terms: readonly { readonly parameter: number; readonly factor: number }[];
}

/** A wall between two points, an arc that stands off their chord by a parameter of the network at mid-chord, + on the left. */
export interface Bowed {
	readonly from: number;
	readonly to: number;
	readonly rise: number;
}

/** An angle at a wall's end, in radians as observed. */
export const isAngular = ({ kind }: Observed): boolean => kind === "angle";

/**
 * The angle and its standard deviation from a chord between marks on two arms of equal length, θ = 2 asin(c / 2a). Null for a chord that
 * the arms do not reach.
 */
export function angleByChord(arm: number, chord: number, sd: number): { value: Radians; sd: number } | null {
	if (!(chord > 0 && chord < 2 * arm)) return null;
	const value = angleFromChord(arm, chord);
	return { value, sd: chordDeviation(arm, value, sd) };
}

/** Deviation of an angle taken by a chord: dc = a cos(θ/2) dθ. Long arms matter, and at flat angles more. */
export const chordDeviation = (arm: number, angle: number, sd: number): number =>
	sd / (arm * Math.abs(Math.cos(angle / 2)));
