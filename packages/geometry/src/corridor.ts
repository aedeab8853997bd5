import type { WallChain, WallFace } from "./chain.ts";
import type { Elbow } from "./elbow.ts";
import { footOnFace, pointOffFace } from "./face.ts";
import type { Point } from "./point.ts";
import { pastFacet, pastFacets, type RadiusLimits, widestRoundCorners } from "./radius-limits.ts";
import { NO_TURN } from "./tolerance.ts";
import { radiusThrough, type Wedge, wedgeOf } from "./wedge.ts";

/** How near to and how far off the walls a track may run, mm: what its brackets reach. */
export interface Corridor {
	readonly least: number;
	readonly greatest: number;
	/** Walls whose legs stay at the projection given, because somebody asked for it there; none where left out. */
	readonly kept?: ReadonlySet<number>;
	/** How long a bend that carries nothing may be; null or left out: as long as it likes. */
	readonly bare?: BareBend | null;
}

/** A bend of a radius under `under` carries nothing along its length, and so may be no longer than `longest`. mm. */
export interface BareBend {
	readonly under: number;
	readonly longest: number;
}

/** Radii beyond this (mm) are not told from straight. */
const WIDEST = 50_000;

/**
 * Radii with which a bend between straight legs stays inside the corridor. The bends of one pair of legs lie one inside the other, so
 * every place that a bend must leave on one side of it limits the radius once, from above or from below. Round internal corners it
 * comes off the walls as it widens: at each corner, where it is furthest from the nearest wall, no more than the greatest projection
 * off either; no nearer to a facet that it leaves out than the least. Round external corners it comes nearer: as clear of the corners
 * as any track, and along the facets that it leaves out between the least and the greatest.
 */
export function corridorLimits(
	chain: WallChain,
	projections: readonly number[],
	elbow: Elbow,
	corridor: Corridor,
	clearance: number,
	leastRadius: number,
): RadiusLimits {
	const limits = elbow.turn > 0 ? besideInternal : besideExternal;
	const { least, greatest } = limits(chain, projections, elbow, corridor, clearance);
	return { least: Math.max(leastRadius, least), greatest: Math.min(WIDEST, greatest) };
}

function besideInternal(
	chain: WallChain,
	projections: readonly number[],
	elbow: Elbow,
	{ least, greatest }: Corridor,
): RadiusLimits {
	const wedge = wedgeOf(chain, projections, elbow);
	const limits = pastFacets(chain, elbow, wedge, () => least);
	let widest = limits.greatest;
	for (const place of cornersOfOffset(chain, elbow.left, elbow.right, greatest))
		widest = Math.min(widest, radiusThrough(wedge, place));
	return { least: limits.least, greatest: widest };
}

function besideExternal(
	chain: WallChain,
	projections: readonly number[],
	elbow: Elbow,
	{ least, greatest }: Corridor,
	clearance: number,
): RadiusLimits {
	const wedge = wedgeOf(chain, projections, elbow);
	let widest = widestRoundCorners(chain, projections, elbow, clearance);
	let tightest = 0;
	for (let facet = elbow.first; facet < elbow.last && widest >= tightest; facet++) {
		const { length } = chain.walls[facet] as WallFace;
		for (const at of [0, length])
			widest = Math.min(widest, radiusThrough(wedge, pointOffFace(chain, facet, at, least)));
		const limits = withinReach(chain, wedge, facet, greatest);
		tightest = Math.max(tightest, limits.least);
		widest = Math.min(widest, limits.greatest);
	}
	return { least: tightest, greatest: widest };
}

/**
 * Radii with which a bend is nowhere further off an external facet than `reach` as long as it is square off it. Where it would be
 * furthest off the facet's line beyond one of its ends, that end decides; or the radius with which it is furthest just there.
 */
function withinReach(chain: WallChain, wedge: Wedge, facet: number, reach: number): RadiusLimits {
	const { ux, uy, length } = chain.walls[facet] as WallFace;
	const limits = pastFacet(chain, wedge, facet, reach);
	const apexAt = footOnFace(chain, facet, wedge.apex).at;
	const perRadius = wedge.along.x * ux + wedge.along.y * uy;
	const furthestAt = (radius: number) => apexAt + radius * perRadius;
	const at = furthestAt(limits.least);
	if (at >= 0 && at <= length) return limits;
	const end = at < 0 ? 0 : length;
	const through = radiusThrough(wedge, pointOffFace(chain, facet, end, reach));
	const stillBeyond = end === 0 ? furthestAt(through) <= 0 : furthestAt(through) >= length;
	return { least: stillBeyond ? through : (end - apexAt) / perRadius, greatest: limits.greatest };
}

/** Corners of the line `off` mm off the straight walls from `left` to `right`; walls too short to have any of it are passed over. */
function cornersOfOffset(chain: WallChain, left: number, right: number, off: number): Point[] {
	const walls = [left];
	const corners: Point[] = [];
	for (let wall = left + 1; wall <= right; wall++) {
		let meets = offBothWalls(chain, walls.at(-1) as number, wall, off);
		while (
			meets !== null &&
			walls.length > 1 &&
			isBefore(chain, walls.at(-1) as number, meets, corners.at(-1) as Point)
		) {
			walls.pop();
			corners.pop();
			meets = offBothWalls(chain, walls.at(-1) as number, wall, off);
		}
		if (meets === null) continue;
		walls.push(wall);
		corners.push(meets);
	}
	return corners;
}

function isBefore({ walls }: WallChain, wall: number, a: Point, b: Point): boolean {
	const { ux, uy } = walls[wall] as WallFace;
	return (a.x - b.x) * ux + (a.y - b.y) * uy < 0;
}

/** The point `off` mm off both of two straight walls; null where they are in line. */
function offBothWalls(chain: WallChain, one: number, other: number, off: number): Point | null {
	if (other === one + 1) {
		const back = off * (chain.halfTangents[other] as number);
		return Math.abs(chain.turns[other] as number) < NO_TURN ? null : pointOffFace(chain, other, back, off);
	}
	const a = chain.walls[one] as WallFace;
	const b = chain.walls[other] as WallFace;
	const across = a.uy * b.ux - a.ux * b.uy;
	if (Math.abs(across) < NO_TURN) return null;
	const from = pointOffFace(chain, one, 0, off);
	const to = pointOffFace(chain, other, 0, off);
	return pointOffFace(chain, one, ((to.y - from.y) * b.ux - (to.x - from.x) * b.uy) / across, off);
}
