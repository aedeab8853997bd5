import type { WallChain, WallFace } from "./chain.ts";
import { type Elbow, straightEnds } from "./elbow.ts";
import { footOnFace, pointOffFace } from "./face.ts";
import { lastThatHolds } from "./halving.ts";
import type { Point } from "./point.ts";
import { LENGTH_SLACK } from "./tolerance.ts";
import { radiusThrough, type Wedge, wedgeOf } from "./wedge.ts";

/** Radii between which a bend is possible, mm; greatest under least where none is. */
export interface RadiusLimits {
	readonly least: number;
	readonly greatest: number;
}

/** Radii beyond this (mm) are not told from straight: searches end here. */
const WIDEST = 100_000;

/** Halvings of a search for a radius: from a range of its own size to a part in 10⁹ of it. */
const HALVINGS = 30;

/** Turned from the middle of the bend by all but half its turn, a facet comes no nearer and goes no further as the bend widens: rounding. */
const ALONG_LEG = 1e-12;

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
	const widest = elbow.turn < 0 ? widestRoundCorners(chain, projections, elbow, clearance) : WIDEST;
	if (elbow.feet !== null) return { least: 0, greatest: Math.min(widest, widestThatIs(elbow)) };
	if (elbow.first === elbow.last) return { least: 0, greatest: widest };
	const wedge = wedgeOf(chain, projections, elbow);
	const { least, greatest } = pastFacets(chain, elbow, wedge, (facet) => projections[facet] as number);
	return { least, greatest: Math.min(widest, greatest) };
}

/** The largest radius with which the bend keeps `clearance` from every corner it goes round. */
export function widestRoundCorners(
	chain: WallChain,
	projections: readonly number[],
	elbow: Elbow,
	clearance: number,
): number {
	if (elbow.feet !== null) return widestBesideBow(chain, projections, elbow, clearance);
	const dl = projections[elbow.left] as number;
	if (elbow.first === elbow.last && dl === projections[elbow.right]) {
		// Equal projections: clearance = d/cos − R(1/cos − 1), and up to R = d it is d.
		const secant = 1 / Math.cos(elbow.turn / 2);
		return Math.max(dl, (dl * secant - clearance) / (secant - 1));
	}
	const wedge = wedgeOf(chain, projections, elbow);
	let widest = WIDEST;
	for (let corner = elbow.first; corner <= elbow.last; corner++)
		widest = Math.min(widest, radiusThrough(wedge, chain.corners[corner] as Point, clearance));
	return widest;
}

function widestBesideBow(chain: WallChain, projections: readonly number[], elbow: Elbow, clearance: number): number {
	const p = chain.corners[elbow.first] as Point;
	const clears = (radius: number): boolean => {
		const centre = elbow.feet?.(radius)?.centre ?? null;
		if (centre === null) return false;
		const away = Math.sqrt((p.x - centre.x) ** 2 + (p.y - centre.y) ** 2);
		// A corner that is not between the bend's ends is passed by the legs; one outside the circle is cut through.
		return radius - away >= clearance || !isBetween(chain, projections, elbow, radius, centre, p);
	};
	return widestWhere(clears, 1);
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
function centreOf(chain: WallChain, projections: readonly number[], elbow: Elbow, radius: number): Point | null {
	if (elbow.feet !== null) return elbow.feet(radius)?.centre ?? null;
	const side = elbow.turn < 0 ? -radius : radius;
	return pointOffFace(
		chain,
		elbow.left,
		elbow.footLeft - elbow.slope * radius,
		(projections[elbow.left] as number) + side,
	);
}

/** Radii with which a bend past facets does not cross the lines `off` mm off them. */
export function pastFacets(
	chain: WallChain,
	{ first, last }: Elbow,
	wedge: Wedge,
	off: (facet: number) => number,
): RadiusLimits {
	let least = 0;
	let greatest = WIDEST;
	for (let facet = first; facet < last; facet++) {
		const limits = pastFacet(chain, wedge, facet, off(facet));
		least = Math.max(least, limits.least);
		greatest = Math.min(greatest, limits.greatest);
	}
	return { least, greatest };
}

/**
 * Radii with which a bend does not cross the line `off` mm off one facet that it leaves out: off an internal facet no nearer, off an
 * external one no further. At the facet's own leg it is the circle tangent to all three lines, ℓ/(tan(δ₁/2) + tan(δ₂/2)). How far the bend
 * stands off a facet grows in step with its radius; only past a facet that turns the other way a little does it shrink.
 */
export function pastFacet(chain: WallChain, { apex, along, side }: Wedge, facet: number, off: number): RadiusLimits {
	const { ux, uy } = chain.walls[facet] as WallFace;
	const short = side * (off - footOnFace(chain, facet, apex).off);
	const perRadius = side * (along.x * uy - along.y * ux) - 1;
	if (perRadius > ALONG_LEG) return { least: short / perRadius, greatest: WIDEST };
	if (perRadius < -ALONG_LEG) return { least: 0, greatest: (short - LENGTH_SLACK) / perRadius };
	return { least: 0, greatest: short > LENGTH_SLACK ? 0 : WIDEST };
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
	return lastThatHolds(holds, yes, no, HALVINGS);
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
