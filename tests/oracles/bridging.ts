/** Straight walls to be followed by a track, corner to corner, and what the track can do. mm; the room on the right. */
export interface Run {
	readonly corners: readonly (readonly [number, number])[];
	readonly projections: readonly number[];
	readonly least: { readonly internal: number; readonly external: number };
	readonly clearance: number;
	readonly besideBend: number;
	readonly endStraight: number;
}

/** One way for bends to share the corners: how many corners each takes, and the least radius of each. */
export interface Partition {
	readonly sizes: readonly number[];
	readonly radii: readonly number[];
	/** The least spare length of any of its legs. */
	readonly spare: number;
	/** The least radius among the bends of two corners or more; infinite where there is none. */
	readonly tightest: number;
}

type Pair = readonly [number, number];

/** Bends past facets are made up to this turn in all, degrees: the design, section 5, wants it under 180. */
const MOST_TURN = 175;
/** The track springs round turns under this (3°) and asks for no straight beside them: the design, section 5. */
const SLIGHT = (3 * Math.PI) / 180;
/** Radii beyond the least are tried on this grid, up to this. */
const GRID = { step: 40, steps: 10 };

/**
 * Every partition of the corners into bends of one sense, with the least radius of each bend, found by trying: with no heed to
 * whether the legs are long enough, which `spare` says. Null in place of those with a bend that no radius makes possible.
 */
export function partitions(run: Run): Partition[] {
	const corners = run.corners.length - 2;
	const all: Partition[] = [];
	const walls = wallsOf(run);
	const known = new Map<string, Bend | null>();
	const bendOver = (first: number, last: number) => {
		const key = `${first} ${last}`;
		if (!known.has(key)) known.set(key, bendOf(run, walls, first, last));
		return known.get(key) as Bend | null;
	};
	const go = (next: number, bends: Bend[]) => {
		if (next > corners) {
			all.push(partitionOf(run, walls, bends));
			return;
		}
		for (let last = next; last <= corners; last++) {
			const bend = bendOver(next, last);
			if (bend !== null) go(last + 1, [...bends, bend]);
		}
	};
	go(1, []);
	return all;
}

interface Line {
	readonly through: Pair;
	readonly along: Pair;
	readonly long: number;
	readonly angle: number;
}

interface Bend {
	readonly first: number;
	readonly last: number;
	readonly slight: boolean;
	readonly radius: number;
	/** From the foot of the left corner of the wall on its left or right to the bend's end on that leg. */
	readonly startsAt: number;
	readonly endsAt: number;
}

function wallsOf({ corners, projections }: Run): Line[] {
	return corners.slice(1).map(([bx, by], wall) => {
		const [ax, ay] = corners[wall] as Pair;
		const long = Math.hypot(bx - ax, by - ay);
		const along: Pair = [(bx - ax) / long, (by - ay) / long];
		const off = projections[wall] as number;
		return {
			through: [ax + along[1] * off, ay - along[0] * off],
			along,
			long,
			angle: Math.atan2(along[1], along[0]),
		};
	});
}

/** To the right positive. */
function turnAt(walls: readonly Line[], corner: number): number {
	const [ux, uy] = (walls[corner - 1] as Line).along;
	const [vx, vy] = (walls[corner] as Line).along;
	return Math.atan2(uy * vx - ux * vy, ux * vx + uy * vy);
}

function bendOf(run: Run, walls: readonly Line[], first: number, last: number): Bend | null {
	const turns = Array.from({ length: last - first + 1 }, (_, i) => turnAt(walls, first + i));
	const whole = turns.reduce((sum, turn) => sum + turn, 0);
	// A turn under 3° goes with either sense.
	if (turns.some((turn) => Math.abs(turn) >= SLIGHT && Math.sign(turn) !== Math.sign(whole))) return null;
	if (last > first && Math.abs(whole) > (MOST_TURN * Math.PI) / 180) return null;
	const left = walls[first - 1] as Line;
	const right = walls[last] as Line;
	const [px, py] = left.through;
	const [qx, qy] = right.through;
	const cross = left.along[0] * right.along[1] - left.along[1] * right.along[0];
	const reach = ((qx - px) * right.along[1] - (qy - py) * right.along[0]) / cross;
	const meeting: Pair = [px + left.along[0] * reach, py + left.along[1] * reach];
	const beyond = (meeting[0] - qx) * right.along[0] + (meeting[1] - qy) * right.along[1];
	const tangent = Math.tan(Math.abs(whole) / 2);
	const least = whole > 0 ? run.least.internal : run.least.external;
	const side = Math.sign(whole);
	const at = (radius: number) => {
		const start: Pair = [meeting[0] - left.along[0] * tangent * radius, meeting[1] - left.along[1] * tangent * radius];
		const centre: Pair = [start[0] + side * radius * left.along[1], start[1] - side * radius * left.along[0]];
		return { start, centre };
	};
	const standing = leastWhere((radius) => standsOff(run, walls, first, last, at(radius).centre, side * radius), least);
	if (standing === null) return null;
	let radius: number | null = whole > 0 ? standing : null;
	for (let i = 0; i <= GRID.steps && radius === null; i++) {
		const tried = standing + i * GRID.step;
		const { start, centre } = at(tried);
		if (!standsOff(run, walls, first, last, centre, side * tried)) continue;
		if (keepsClear(run, first, last, start, centre, whole, tried)) radius = tried;
	}
	if (radius === null) return null;
	return {
		first,
		last,
		slight: Math.abs(whole) < SLIGHT,
		radius,
		startsAt: reach - tangent * radius,
		endsAt: beyond + tangent * radius,
	};
}

/**
 * Is the bend wide enough to reach past every leg that it leaves out: off an internal wall no nearer than that leg, off an external
 * one no further? `reach` is its radius, negative round an external run.
 */
function standsOff(
	{ corners, projections }: Run,
	walls: readonly Line[],
	first: number,
	last: number,
	[cx, cy]: Pair,
	reach: number,
): boolean {
	for (let facet = first; facet < last; facet++) {
		const [ax, ay] = corners[facet] as Pair;
		const [ux, uy] = (walls[facet] as Line).along;
		const past = (cx - ax) * uy - (cy - ay) * ux - reach - (projections[facet] as number);
		if (past * Math.sign(reach) < -1e-9) return false;
	}
	return true;
}

/** Tried one after another, each a little wider than the last; past a facet that turns the other way some are too wide as well. */
function leastWhere(fits: (radius: number) => boolean, least: number): number | null {
	if (fits(least)) return least;
	let low = least;
	let high = least * 1.01;
	while (!fits(high)) {
		low = high;
		high *= 1.01;
		if (high > 1e5) return null;
	}
	for (let i = 0; i < 60; i++) {
		const middle = (low + high) / 2;
		if (fits(middle)) high = middle;
		else low = middle;
	}
	return high;
}

/** Does the arc keep clear of the walls from the one before its first corner to the one after its last? By walking along it. */
function keepsClear(
	{ corners, clearance }: Run,
	first: number,
	last: number,
	[sx, sy]: Pair,
	[cx, cy]: Pair,
	whole: number,
	radius: number,
) {
	const steps = Math.ceil((radius * Math.abs(whole)) / 10) + 8;
	const at = (i: number): Pair => {
		const swung = (-whole * i) / steps;
		const [x, y] = [sx - cx, sy - cy];
		return [cx + x * Math.cos(swung) - y * Math.sin(swung), cy + x * Math.sin(swung) + y * Math.cos(swung)];
	};
	const away = (i: number) => {
		let nearest = Number.POSITIVE_INFINITY;
		for (let wall = first - 1; wall <= last; wall++)
			nearest = Math.min(nearest, toSegment(at(i), corners[wall] as Pair, corners[wall + 1] as Pair));
		return nearest;
	};
	let worst = 0;
	for (let i = 1; i <= steps; i++) if (away(i) < away(worst)) worst = i;
	let low = Math.max(0, worst - 1);
	let high = Math.min(steps, worst + 1);
	for (let i = 0; i < 60; i++) {
		const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
		if (away(a) < away(b)) high = b;
		else low = a;
	}
	return away((low + high) / 2) >= clearance - 1e-7;
}

function toSegment([x, y]: Pair, [ax, ay]: Pair, [bx, by]: Pair): number {
	const [dx, dy] = [bx - ax, by - ay];
	const share = Math.min(Math.max(((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy), 0), 1);
	return Math.hypot(x - ax - dx * share, y - ay - dy * share);
}

function partitionOf({ besideBend, endStraight }: Run, walls: readonly Line[], bends: readonly Bend[]): Partition {
	let spare = Number.POSITIVE_INFINITY;
	let from = 0;
	let straight = endStraight;
	for (const bend of bends) {
		const beside = bend.slight ? 0 : besideBend;
		spare = Math.min(spare, bend.startsAt - from - straight - beside);
		from = bend.endsAt;
		straight = beside;
	}
	spare = Math.min(spare, (walls.at(-1) as Line).long - from - straight - endStraight);
	const bridging = bends.filter(({ first, last }) => last > first);
	return {
		sizes: bends.map(({ first, last }) => last - first + 1),
		radii: bends.map(({ radius }) => radius),
		spare,
		tightest: Math.min(...bridging.map(({ radius }) => radius), Number.POSITIVE_INFINITY),
	};
}
