import { chordOf, lengthOf, middleOf, type Piece, turnedRound, turnOf } from "./stroke.ts";

/** From a wall's one face to its other, mm: from a board partition to old masonry. Common practice, no source. */
const THICK = { least: 40, most: 600 } as const;
/** A closed outline no thicker than this all round is a wall, and no room, mm. Common practice, no source. */
const THICK_RING = { least: 40, most: 450 } as const;
/** What must have a face across from it, by share of the length. */
const MOST_OF_IT = 0.8;
/** An end of a wall is no longer than its thickness, but for a little slant. */
const ACROSS = 1.3;
/** Walls of a chain beyond which it is no bay, and not worth the time. */
const MOST_WALLS = 200;
/** In all, from end to end (10°). */
const TURNS_ALIKE = Math.PI / 18;
/** Directions this alike are parallel, by sine (2°). */
const PARALLEL = 0.035;

interface Line {
	readonly walls: readonly Piece[];
	readonly closed: boolean;
}

export interface Alongside {
	/** From face to face where most of it runs, mm. */
	readonly thick: number;
	/** On the right of the walls that it runs along, where their room is. */
	readonly nearer: boolean;
}

/** How other walls run along these as the second face of the same; null where they do not. */
export function alongside(own: Line, other: Line): Alongside | null {
	const [{ walls }, { walls: others }] = [own, other];
	if (walls.length > MOST_WALLS || others.length > MOST_WALLS) return null;
	// Two faces turn alike: a line across the mouth of a bay, or a shelf, is no second face.
	const open = !own.closed && !other.closed;
	if (open && Math.abs(Math.abs(turnOf(walls)) - Math.abs(turnOf(others))) > TURNS_ALIKE) return null;
	for (const nearer of [true, false]) {
		const pairs = walls.flatMap((wall) =>
			others.flatMap((other) => {
				const away = distanceTo(other, wall, nearer, THICK);
				return away === null ? [] : [{ wall, other, away }];
			}),
		);
		const longest = pairs.reduce(
			(best, pair) => (best === null || lengthOf(pair.wall) > lengthOf(best.wall) ? pair : best),
			null as (typeof pairs)[number] | null,
		);
		// Each must face the other.
		const faced = [
			lengthsOf(distinct(pairs.map(({ wall }) => wall))),
			lengthsOf(distinct(pairs.map(({ other }) => other))),
		];
		const wholes = [lengthsOf(walls), lengthsOf(others)];
		if (longest !== null && faced.every((length, i) => length >= MOST_OF_IT * (wholes[i] as number)))
			return { thick: longest.away, nearer };
	}
	return null;
}

const distinct = <Item>(items: readonly Item[]): Item[] => [...new Set(items)];

export interface WallOutline {
	readonly thick: number;
	/** Both faces, with the room on the right of each. */
	readonly faces: readonly [readonly Piece[], readonly Piece[]];
	/** All of the outline in the same direction, each face followed by the end of the wall. */
	readonly startingWith: (face: 0 | 1) => readonly Piece[];
}

/** The two faces of a wall of which a closed outline, given clockwise, shows both and the ends; null where it is no such outline. */
export function wallOutline(clockwise: readonly Piece[]): WallOutline | null {
	if (clockwise.length > MOST_WALLS) return null;
	const walls = clockwise.toReversed().map(turnedRound);
	const away = walls.map((wall) => {
		const across = walls.flatMap((other) =>
			alike(wall, other) ? [] : (distanceTo(other, wall, false, THICK_RING) ?? []),
		);
		return across.length === 0 ? null : Math.min(...across);
	});
	const faced = walls.flatMap((wall, i) => {
		const thick = away[i] ?? null;
		return thick === null ? [] : [{ thick, long: lengthOf(wall) }];
	});
	if (faced.reduce((sum, { long }) => sum + long, 0) < MOST_OF_IT * lengthsOf(walls)) return null;
	// A face begins behind an end of the wall, which has nothing across from it.
	const starts = away.flatMap((own, i) => (own !== null && away.at(i - 1) === null ? [i] : []));
	const [one, two, ...more] = starts;
	if (one === undefined || two === undefined || more.length > 0) return null;
	const from = (start: number) => [...walls.slice(start), ...walls.slice(0, start)];
	const thick = faced.reduce((best, each) => (each.long > best.long ? each : best)).thick;
	const ends = walls.filter((_, i) => away[i] === null);
	// Ends go straight across; splays of a shallow bay that is closed by a line do not.
	if (lengthsOf(ends) > 2 * thick * ACROSS) return null;
	const face = (start: number) => from(start).slice(0, [...away.slice(start), ...away.slice(0, start)].indexOf(null));
	return {
		thick,
		faces: [face(one), face(two)],
		startingWith: (which) => from(which === 0 ? one : two),
	};
}

const lengthsOf = (walls: readonly Piece[]): number => walls.reduce((sum, wall) => sum + lengthOf(wall), 0);

/** In the same direction, as the two faces of a wall never run round its outline. */
const alike = (a: Piece, b: Piece): boolean =>
	(a.to.x - a.from.x) * (b.to.x - b.from.x) + (a.to.y - a.from.y) * (b.to.y - b.from.y) > 0;

/** From a wall to the middle of another that runs along it on its right (or left), mm; null where none does so that near. */
function distanceTo(
	other: Piece,
	wall: Piece,
	right: boolean,
	{ least, most }: { readonly least: number; readonly most: number },
): number | null {
	const [chord, far] = [chordOf(wall), chordOf(other)];
	const [ux, uy] = [(wall.to.x - wall.from.x) / chord, (wall.to.y - wall.from.y) / chord];
	const across = (ux * (other.to.y - other.from.y) - uy * (other.to.x - other.from.x)) / far;
	if (!(Math.abs(across) < PARALLEL) || !bowedAlike(wall, other)) return null;
	const [a, b] = [middleOf(wall), middleOf(other)];
	const [dx, dy] = [b.x - a.x, b.y - a.y];
	const away = (uy * dx - ux * dy) * (right ? 1 : -1);
	// A short wall may face a long one, and a long one a short one.
	const beside = Math.abs(ux * dx + uy * dy) <= Math.max(chord, far) / 2;
	return beside && away >= least && away <= most ? away : null;
}

/** A straight runs along a straight, and a bow along one that goes the same way. */
function bowedAlike(a: Piece, b: Piece): boolean {
	const other = alike(a, b) ? b.bulge : -b.bulge;
	return Math.sign(Math.abs(a.bulge) < HARDLY ? 0 : a.bulge) === Math.sign(Math.abs(other) < HARDLY ? 0 : other);
}

/** Arcs this flat are as good as straight: 2 mm on 2 m. */
const HARDLY = 2e-3;
