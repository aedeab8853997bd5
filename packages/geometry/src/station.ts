import { type Radians, radians, wrapHeading } from "./angle.ts";
import type { Bend, Bow, Segment, TrackPath } from "./path.ts";
import type { Point } from "./point.ts";

/** A place on the path. */
export interface PathPlace {
	readonly at: Point;
	/** Heading of the path there. */
	readonly heading: Radians;
	/** Index of the segment. */
	readonly segment: number;
}

/** The place at `station` mm from the left end; stations beyond an end are read as that end. Null on an empty path. */
export function pointAt(path: TrackPath, station: number): PathPlace | null {
	const index = segmentAt(path, station);
	const segment = path.segments[index];
	if (segment === undefined) return null;
	const along = Math.min(Math.max(station - segment.start, 0), segment.length);
	return { at: pointOn(segment, along), heading: headingOn(segment, along), segment: index };
}

/** Index of the segment that holds `station`; the first or last one for stations beyond an end; −1 on an empty path. */
export function segmentAt({ segments }: TrackPath, station: number): number {
	let low = 0;
	let high = segments.length - 1;
	while (low < high) {
		const middle = (low + high + 1) >> 1;
		if ((segments[middle] as Segment).start <= station) low = middle;
		else high = middle - 1;
	}
	return segments.length === 0 ? -1 : low;
}

/** The point `along` mm into a segment. */
export function pointOn(segment: Segment, along: number): Point {
	if (segment.kind === "straight") {
		const share = along / segment.length;
		return {
			x: segment.from.x + (segment.to.x - segment.from.x) * share,
			y: segment.from.y + (segment.to.y - segment.from.y) * share,
		};
	}
	const { centre, from } = segment;
	const swung = -Math.sign(segment.turn) * (along / segment.radius);
	const cos = Math.cos(swung);
	const sin = Math.sin(swung);
	const x = from.x - centre.x;
	const y = from.y - centre.y;
	return { x: centre.x + x * cos - y * sin, y: centre.y + x * sin + y * cos };
}

/** Heading `along` mm into a segment. */
function headingOn(segment: Segment, along: number): Radians {
	if (segment.kind === "straight") return segment.heading;
	return radians(segment.heading - Math.sign(segment.turn) * (along / segment.radius));
}

/** The point of the path nearest to a point, the leftmost of equals. Null on an empty path. */
export function nearestStation(
	path: TrackPath,
	to: Point,
): { readonly station: number; readonly distance: number; readonly at: Point } | null {
	let best: { station: number; distance: number; at: Point } | null = null;
	for (const segment of path.segments) {
		const along = segment.kind === "straight" ? alongStraight(segment, to) : alongArc(segment, to);
		const at = pointOn(segment, along);
		const distance = Math.hypot(at.x - to.x, at.y - to.y);
		if (best === null || distance < best.distance) best = { station: segment.start + along, distance, at };
	}
	return best;
}

function alongStraight({ from, to, length }: Segment, p: Point): number {
	const along = ((p.x - from.x) * (to.x - from.x) + (p.y - from.y) * (to.y - from.y)) / length;
	return Math.min(Math.max(along, 0), length);
}

/** Arc length to the foot of `p`; beyond the arc, whichever end is nearer. */
function alongArc({ centre, from, turn, radius, length }: Bend | Bow, p: Point): number {
	const start = Math.atan2(from.y - centre.y, from.x - centre.x);
	const here = Math.atan2(p.y - centre.y, p.x - centre.x);
	const swung = -Math.sign(turn) * wrapHeading(here - start);
	const forward = swung < 0 ? swung + 2 * Math.PI : swung;
	const sweep = Math.abs(turn);
	if (forward <= sweep) return forward * radius;
	return forward - sweep < 2 * Math.PI - forward ? length : 0;
}
