import type { WallChain } from "./chain.ts";
import { type Elbow, straightEnds } from "./elbow.ts";
import { footOnFace, pointOffFace } from "./face.ts";
import type { Point } from "./point.ts";

/** Radii between which a bend is possible, mm; greatest under least where none is. */
export interface RadiusLimits {
	readonly least: number;
	readonly greatest: number;
}

/** Radii beyond this (mm) are not told from straight: searches end here. */
const WIDEST = 100_000;

/** A search for a radius ends when it is known to this (mm). */
const PRECISION = 1e-9;

/**
 * What the walls at a bend allow. A bend round an external corner comes nearer to it as it widens; one that bridges facets of an
 * internal run must be wide enough to touch or stand off the legs it leaves out, of an external run narrow enough to clear
 * its corners; beside a bowed wall, only so wide that its centre exists.
 */
export function radiusLimits(
	chain: WallChain,
	projections: readonly number[],
	elbow: Elbow,
	clearance: number,
): RadiusLimits {
	const greatest = elbow.turn < 0 ? widestRoundCorners(chain, projections, elbow, clearance) : WIDEST;
	const exists = elbow.feet === null ? greatest : Math.min(greatest, widestThatIs(elbow));
	return {
		least: elbow.first < elbow.last ? overFacets(chain, projections, elbow) : 0,
		greatest: exists,
	};
}

/** The largest radius with which the bend keeps `clearance` from every corner it goes round. */
function widestRoundCorners(chain: WallChain, projections: readonly number[], elbow: Elbow, clearance: number): number {
	const dl = projections[elbow.left] as number;
	const dr = projections[elbow.right] as number;
	if (elbow.first === elbow.last && elbow.feet === null && dl === dr) {
		// Equal projections: clearance = d/cos − R(1/cos − 1), and up to R = d it is d.
		const secant = 1 / Math.cos(elbow.turn / 2);
		return Math.max(dl, (dl * secant - clearance) / (secant - 1));
	}
	const clears = (radius: number): boolean => {
		const centre = centreOf(chain, projections, elbow, radius);
		if (centre === null) return false;
		for (let corner = elbow.first; corner <= elbow.last; corner++) {
			const p = chain.corners[corner] as Point;
			const away = Math.sqrt((p.x - centre.x) ** 2 + (p.y - centre.y) ** 2);
			// A corner that is not between the bend's ends is passed by the legs; one outside the circle is cut through.
			if (radius - away < clearance && isBetween(chain, projections, elbow, radius, centre, p)) return false;
		}
		return true;
	};
	return widestWhere(clears, elbow.feet === null ? Math.min(dl, dr) : 1);
}

/** Does the radius through `p` lie between the bend's two ends? */
function isBetween(
	chain: WallChain,
	projections: readonly number[],
	elbow: Elbow,
	radius: number,
	centre: Point,
	p: Point,
): boolean {
	const feet = feetOf(elbow, radius);
	if (feet === null) return true;
	const from = pointOffFace(chain, elbow.left, feet.left, projections[elbow.left] as number);
	const to = pointOffFace(chain, elbow.right, feet.right, projections[elbow.right] as number);
	const cross = (a: Point, b: Point) => (a.x - centre.x) * (b.y - centre.y) - (a.y - centre.y) * (b.x - centre.x);
	const side = elbow.turn > 0 ? -1 : 1;
	// Beyond the centre a point may lie between the ends' lines all the same: then it is behind the bend, not before it.
	const middle = { x: from.x + to.x - 2 * centre.x, y: from.y + to.y - 2 * centre.y };
	if ((p.x - centre.x) * middle.x + (p.y - centre.y) * middle.y <= 0) return false;
	return side * cross(from, p) >= 0 && side * cross(p, to) >= 0;
}

/** Where a bend of this radius starts and ends along its walls. */
export function feetOf(elbow: Elbow, radius: number): { readonly left: number; readonly right: number } | null {
	if (elbow.feet !== null && radius > 0) return elbow.feet(radius);
	return straightEnds(elbow, radius);
}

/** Centre of a bend of this radius; null where there is none so wide. */
export function centreOf(chain: WallChain, projections: readonly number[], elbow: Elbow, radius: number): Point | null {
	if (elbow.feet !== null) return elbow.feet(radius)?.centre ?? null;
	const side = elbow.turn < 0 ? -radius : radius;
	return pointOffFace(
		chain,
		elbow.left,
		elbow.footLeft - elbow.slope * radius,
		(projections[elbow.left] as number) + side,
	);
}

/**
 * The radius from which a bend past facets no longer crosses the legs that it leaves out: for one facet the circle tangent to
 * all three lines, ℓ/(tan(δ₁/2) + tan(δ₂/2)). How far the centre stands off a facet grows in step with the radius.
 */
function overFacets(chain: WallChain, projections: readonly number[], elbow: Elbow): number {
	let least = 0;
	const side = elbow.turn < 0 ? -1 : 1;
	const none = centreOf(chain, projections, elbow, 0) as Point;
	const one = centreOf(chain, projections, elbow, 1) as Point;
	for (let wall = elbow.first; wall < elbow.last; wall++) {
		const away = footOnFace(chain, wall, none).off;
		const perRadius = side * (footOnFace(chain, wall, one).off - away) - 1;
		const short = side * ((projections[wall] as number) - away);
		least = Math.max(least, perRadius > 0 ? short / perRadius : short > 0 ? Number.POSITIVE_INFINITY : 0);
	}
	return least;
}

/** The largest radius for which the bend's centre exists, its feet keep their order and it turns the right way. */
function widestThatIs({ feet, turn }: Elbow): number {
	const side = Math.sign(turn);
	return widestWhere((radius) => {
		const there = feet?.(radius) ?? null;
		return there !== null && Math.sign(there.turn) === side;
	}, 0);
}

/** The largest radius for which something holds that holds at `low` and ceases to hold once. −1 where it does not hold there. */
function widestWhere(holds: (radius: number) => boolean, low: number): number {
	if (!holds(low)) return -1;
	if (holds(WIDEST)) return WIDEST;
	let yes = low;
	let no = Math.max(2 * low, 100);
	while (no < WIDEST && holds(no)) {
		yes = no;
		no = Math.min(2 * no, WIDEST);
	}
	while (no - yes > PRECISION * Math.max(1, yes)) {
		const middle = (yes + no) / 2;
		if (holds(middle)) yes = middle;
		else no = middle;
	}
	return yes;
}

/** How far a bridging bend stands off the leg along a facet it leaves out, mm; away from an internal wall, towards an external one. */
export function standOff(
	chain: WallChain,
	projections: readonly number[],
	elbow: Elbow,
	radius: number,
	facet: number,
): number {
	const centre = centreOf(chain, projections, elbow, radius) as Point;
	const side = elbow.turn < 0 ? -1 : 1;
	const off = footOnFace(chain, facet, centre).off;
	return off - side * radius - (projections[facet] as number);
}
