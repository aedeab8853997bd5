import type { WallChain, WallFace } from "./chain.ts";
import type { Elbow } from "./elbow.ts";
import { footOnFace } from "./face.ts";
import { lastThatHolds } from "./halving.ts";
import type { Point } from "./point.ts";
import { centreOf, type RadiusLimits, radiusLimits } from "./radius-limits.ts";

/** How near to and how far off the walls a track may run, mm: what its brackets reach. */
export interface Corridor {
	readonly least: number;
	readonly greatest: number;
}

/** Radii tried from one end of the range to the other; between a radius that does and one that does not the limit is halved out. */
const TRIES = 48;
const HALVINGS = 40;
const WIDEST = 50_000;

/**
 * Radii with which a bend round corners of one sense stays inside the corridor: along every facet that it leaves out no nearer and no
 * further off than brackets reach, and at a single corner no further from it than a track at the greatest projection would be.
 */
export function corridorLimits(
	chain: WallChain,
	projections: readonly number[],
	elbow: Elbow,
	corridor: Corridor,
	clearance: number,
	leastRadius: number,
): RadiusLimits {
	const walls = radiusLimits(
		chain,
		projections,
		{ ...elbow, last: elbow.turn > 0 ? elbow.first : elbow.last },
		clearance,
	);
	const low = Math.max(leastRadius, walls.least);
	const high = Math.min(walls.greatest, WIDEST);
	if (elbow.first === elbow.last) {
		const secant = 1 / Math.cos(elbow.turn / 2);
		const d = Math.max(projections[elbow.left] as number, projections[elbow.right] as number);
		const cap = elbow.turn > 0 ? ((corridor.greatest - d) * secant) / (secant - 1) : high;
		return { least: low, greatest: Math.max(low, Math.min(high, cap)) };
	}
	const stays = (radius: number) => staysInside(chain, projections, elbow, corridor, radius);
	const at = (i: number) => low * (high / low) ** (i / TRIES);
	if (!(high >= low)) return { least: 1, greatest: 0 };
	let last = TRIES;
	while (last >= 0 && !stays(at(last))) last--;
	if (last < 0) return { least: 1, greatest: 0 };
	let first = last;
	while (first > 0 && stays(at(first - 1))) first--;
	return {
		least: first === 0 ? low : lastThatHolds(stays, at(first), at(first - 1), HALVINGS),
		greatest: last === TRIES ? high : lastThatHolds(stays, at(last), at(last + 1), HALVINGS),
	};
}

/** How far the bend is off each facet, at its foot and at the facet's ends. */
function staysInside(
	chain: WallChain,
	projections: readonly number[],
	elbow: Elbow,
	{ least, greatest }: Corridor,
	radius: number,
): boolean {
	const centre = centreOf(chain, projections, elbow, radius) as Point;
	const side = elbow.turn < 0 ? -1 : 1;
	for (let facet = elbow.first; facet < elbow.last; facet++) {
		const { length } = chain.walls[facet] as WallFace;
		const foot = footOnFace(chain, facet, centre);
		const off = (at: number) => foot.off - side * Math.sqrt(Math.max(0, radius * radius - (at - foot.at) ** 2));
		const reaches = Math.abs(0 - foot.at) < radius && Math.abs(length - foot.at) < radius;
		if (!reaches) return false;
		const nearest = off(Math.min(Math.max(foot.at, 0), length));
		const offs = [off(0), off(length), nearest];
		if (Math.min(...offs) < least || Math.max(...offs) > greatest) return false;
	}
	return true;
}
