type Pair = readonly [number, number];

interface Walked {
	readonly from: { readonly x: number; readonly y: number };
	readonly to: { readonly x: number; readonly y: number };
	readonly length: number;
	readonly centre?: { readonly x: number; readonly y: number };
	readonly turn?: number;
}

/** How far a stretch of track is from a run of walls, mm. */
export interface Away {
	/** Where it is nearest to the face of one: the least and the most. */
	readonly face: readonly [number, number];
	/** Where it is nearest to an edge, an external corner or the end of the run. */
	readonly edge: readonly [number, number];
	/** The most from whatever wall's line is nearest. */
	readonly offLines: number;
}

/** By walking along the stretch; the walls from corner to corner, the room on their right. */
export function awayFromWalls(segment: Walked, corners: readonly Pair[], step: number): Away {
	const face: [number, number] = [Number.POSITIVE_INFINITY, 0];
	const edge: [number, number] = [Number.POSITIVE_INFINITY, 0];
	let offLines = 0;
	const steps = Math.max(2, Math.ceil(segment.length / step));
	for (let i = 0; i <= steps; i++) {
		const place = placeOn(segment, i / steps);
		const { away, atEdge } = nearest(place, corners);
		const range = atEdge ? edge : face;
		range[0] = Math.min(range[0], away);
		range[1] = Math.max(range[1], away);
		offLines = Math.max(offLines, offNearestLine(place, corners));
	}
	return { face, edge, offLines };
}

/** May a bend from the leg along the first of these walls to that along the last be where it is? */
export function isInside(bend: Walked, corners: readonly Pair[], limits: Limits, step: number, slack = 0): boolean {
	const { face, edge, offLines } = awayFromWalls(bend, corners, step);
	const { least, greatest, clearance } = limits;
	const one = corners.length === 3;
	if ((bend.turn ?? 0) > 0) return (one || face[0] >= least - slack) && offLines <= greatest + slack;
	// Round one external corner its clearance is enough; past several the facets between are to be reached.
	if (one) return Math.min(face[0], edge[0]) >= clearance - slack;
	const facets = awayFromWalls(bend, corners.slice(1, -1), step).face;
	// Beside all of them, not somewhere out in the room or behind them.
	if (edge[1] > 2 * greatest || facets[1] === 0) return false;
	return facets[0] >= least - slack && facets[1] <= greatest + slack && edge[0] >= clearance - slack;
}

/** May a straight track pass these walls? It may be as far as it likes from them where others are near. */
export function isPast(
	straight: Walked,
	passed: readonly Pair[],
	all: readonly Pair[],
	limits: Limits,
	step: number,
	slack = 0,
): boolean {
	const near = awayFromWalls(straight, passed, step);
	const far = awayFromWalls(straight, all, step);
	return (
		Math.min(near.face[0], near.edge[0]) >= limits.least - slack &&
		Math.max(far.face[1], far.edge[1]) <= limits.greatest + slack
	);
}

export interface Limits {
	readonly least: number;
	readonly greatest: number;
	readonly clearance: number;
}

function offNearestLine([x, y]: Pair, corners: readonly Pair[]): number {
	let off = Number.POSITIVE_INFINITY;
	for (let wall = 0; wall + 1 < corners.length; wall++) {
		const [ax, ay] = corners[wall] as Pair;
		const [bx, by] = corners[wall + 1] as Pair;
		off = Math.min(off, ((x - ax) * (by - ay) - (y - ay) * (bx - ax)) / Math.hypot(bx - ax, by - ay));
	}
	return off;
}

function placeOn({ from, to, centre, turn }: Walked, share: number): Pair {
	if (centre === undefined || turn === undefined)
		return [from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share];
	const [x, y] = [from.x - centre.x, from.y - centre.y];
	const swung = -turn * share;
	return [centre.x + x * Math.cos(swung) - y * Math.sin(swung), centre.y + x * Math.sin(swung) + y * Math.cos(swung)];
}

function nearest([x, y]: Pair, corners: readonly Pair[]): { readonly away: number; readonly atEdge: boolean } {
	let away = Number.POSITIVE_INFINITY;
	let atEdge = false;
	for (let wall = 0; wall + 1 < corners.length; wall++) {
		const [ax, ay] = corners[wall] as Pair;
		const [bx, by] = corners[wall + 1] as Pair;
		const [dx, dy] = [bx - ax, by - ay];
		const share = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy);
		const held = Math.min(Math.max(share, 0), 1);
		const here = Math.hypot(x - ax - dx * held, y - ay - dy * held);
		if (here > away) continue;
		away = here;
		atEdge = (share <= 0 && isExternal(corners, wall)) || (share >= 1 && isExternal(corners, wall + 1));
	}
	return { away, atEdge };
}

function isExternal(corners: readonly Pair[], corner: number): boolean {
	const before = corners[corner - 1];
	const after = corners[corner + 1];
	if (before === undefined || after === undefined) return true;
	const [x, y] = corners[corner] as Pair;
	return (x - before[0]) * (after[1] - y) - (y - before[1]) * (after[0] - x) > 0;
}

/** A bay of straight walls to be passed with as few bends as possible, and the projections and radii that may be tried. */
export interface FewestBends {
	readonly corners: readonly Pair[];
	readonly projections: readonly number[];
	readonly radii: readonly number[];
	readonly limits: Limits;
	readonly besideBend: number;
	readonly endStraight: number;
}

/**
 * The fewest bends of any track with legs parallel to their walls at one of the projections, bends of one of the radii past any number
 * of corners, and straight past any walls between two legs in one line; everything inside the corridor by walking along it. No radius
 * is made to fit, no projection sought: what this finds, any search must at least equal. Infinite where it finds nothing.
 */
export function fewestBends(bay: FewestBends): number {
	const walls = bay.corners.length - 1;
	const lines = Array.from({ length: walls }, (_, wall) => lineOf(bay.corners, wall));
	// By wall, projection and number of bends: the least place along the wall from which the leg is free.
	const free = new Map<string, number>();
	const key = (wall: number, off: number, bends: number) => `${wall} ${off} ${bends}`;
	const reach = (wall: number, off: number, bends: number, at: number) => {
		const known = free.get(key(wall, off, bends)) ?? Number.POSITIVE_INFINITY;
		if (at < known) free.set(key(wall, off, bends), at);
	};
	for (const off of bay.projections) reach(0, off, 0, bay.endStraight);
	const most = walls - 1;
	for (let left = 0; left < walls; left++)
		for (let right = left + 1; right < walls; right++)
			for (const a of bay.projections)
				for (const b of bay.projections)
					for (const link of linksOf(bay, lines, left, right, a, b))
						for (let bends = 0; bends + link.bends <= most; bends++) {
							const from = free.get(key(left, a, bends));
							if (from !== undefined && from + link.straight <= link.leaves)
								reach(right, b, bends + link.bends, link.enters + link.straight);
						}
	for (let bends = 0; bends <= most; bends++)
		for (const off of bay.projections) {
			const from = free.get(key(walls - 1, off, bends));
			if (from !== undefined && from + bay.endStraight <= (lines[walls - 1] as Line).long) return bends;
		}
	return Number.POSITIVE_INFINITY;
}

interface Line {
	readonly at: Pair;
	readonly along: Pair;
	readonly long: number;
}

interface Link {
	readonly bends: 0 | 1;
	readonly straight: number;
	readonly leaves: number;
	readonly enters: number;
}

function lineOf(corners: readonly Pair[], wall: number): Line {
	const [ax, ay] = corners[wall] as Pair;
	const [bx, by] = corners[wall + 1] as Pair;
	const long = Math.hypot(bx - ax, by - ay);
	return { at: [ax, ay], along: [(bx - ax) / long, (by - ay) / long], long };
}

const offLine = ({ at: [x, y], along: [ux, uy] }: Line, s: number, off: number): Pair => [
	x + ux * s + uy * off,
	y + uy * s - ux * off,
];

function linksOf(bay: FewestBends, lines: readonly Line[], left: number, right: number, a: number, b: number): Link[] {
	const one = lines[left] as Line;
	const other = lines[right] as Line;
	const cross = one.along[1] * other.along[0] - one.along[0] * other.along[1];
	const dot = one.along[0] * other.along[0] + one.along[1] * other.along[1];
	const turn = Math.atan2(cross, dot);
	const [px, py] = offLine(one, 0, a);
	const [qx, qy] = offLine(other, 0, b);
	const [dx, dy] = [qx - px, qy - py];
	if (Math.abs(turn) < 1e-6) {
		const aside = Math.abs(dx * one.along[1] - dy * one.along[0]);
		if (aside > 1e-6) return [];
		const along = dx * one.along[0] + dy * one.along[1];
		const leaves = one.long;
		const straight = { from: point(px, py), to: point(...offLine(other, other.long, b)), length: along + other.long };
		const passed = bay.corners.slice(left, right + 2);
		const inside = isPast(straight, passed, passed, bay.limits, 5);
		return inside ? [{ bends: 0, straight: 0, leaves, enters: leaves - along }] : [];
	}
	// Corners of one sense all the way.
	for (let wall = left; wall < right; wall++) {
		const [u, v] = [(lines[wall] as Line).along, (lines[wall + 1] as Line).along];
		if ((u[1] * v[0] - u[0] * v[1]) * turn <= 0) return [];
	}
	if (Math.abs(turn) < 0.0524 || Math.abs(turn) > 3.05) return [];
	const meets =
		(dx * -other.along[1] + dy * other.along[0]) / (one.along[0] * -other.along[1] + one.along[1] * other.along[0]);
	const [vx, vy] = offLine(one, meets, a);
	const enters = (vx - qx) * other.along[0] + (vy - qy) * other.along[1];
	for (const radius of bay.radii) {
		const tangent = radius * Math.tan(Math.abs(turn) / 2);
		const [sx, sy] = offLine(one, meets - tangent, a);
		const [ex, ey] = offLine(other, enters + tangent, b);
		const side = Math.sign(turn) * radius;
		const centre = point(sx + one.along[1] * side, sy - one.along[0] * side);
		const bend = { from: point(sx, sy), to: point(ex, ey), centre, turn, length: radius * Math.abs(turn) };
		// Walking misses the very nearest place by less than this.
		if (!isInside(bend, bay.corners.slice(left, right + 2), bay.limits, 5, -MISSED)) continue;
		return [{ bends: 1, straight: bay.besideBend, leaves: meets - tangent, enters: enters + tangent }];
	}
	return [];
}

/** mm; steps are of 5 mm. */
const MISSED = 1;

const point = (x: number, y: number) => ({ x, y });
