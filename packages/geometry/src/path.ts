import type { Radians } from "./angle.ts";
import type { Point } from "./point.ts";

interface SegmentBase {
	readonly from: Point;
	readonly to: Point;
	/** Station (mm) of `from`: distance along the centre line from the path's left end. */
	readonly start: number;
	/** mm along the centre line. */
	readonly length: number;
	/** Heading at `from`. */
	readonly heading: Radians;
}

/** A straight stretch of track along one wall. */
export interface Straight extends SegmentBase {
	readonly kind: "straight";
	/** Index of the wall that it follows. */
	readonly wall: number;
	/** True between the two halves of a reverse bend: it passes `wall` without following it. */
	readonly crosses: boolean;
}

interface ArcSegment extends SegmentBase {
	readonly centre: Point;
	/** mm, on the centre line. */
	readonly radius: number;
	/** Angle turned through, to the right positive. */
	readonly turn: Radians;
}

/** An arc between two legs. Several corners when one bend bridges short facets. */
export interface Bend extends ArcSegment {
	readonly kind: "bend";
	readonly corners: readonly number[];
	/** True where the track springs round a slight turn: nothing is bent and nothing is marked. */
	readonly sprung: boolean;
	/** Half of a reverse bend: one of its ends lies on no wall's leg. */
	readonly reverse: boolean;
}

/** An arc that runs along one bowed wall. */
export interface Bow extends ArcSegment {
	readonly kind: "bow";
	readonly wall: number;
}

export type Segment = Straight | Bend | Bow;

/** The centre line of the track, left to right as seen from the room. */
export interface TrackPath {
	readonly segments: readonly Segment[];
	/** mm. */
	readonly length: number;
}
