import type { Point } from "@baywright/geometry";
import type { DrawingLayer } from "./drawing.ts";
import { alongside } from "./faces.ts";
import { joinStrokes } from "./join.ts";
import { oriented } from "./orient.ts";
import { centreOf, chordOf, lengthOf, type Piece, piecesOf, type Stroke } from "./stroke.ts";

/** Walls that meet end to end, as drawn: mm of the room, y up. */
export interface Chain {
	readonly walls: readonly Piece[];
	readonly closed: boolean;
	/** Along its walls, mm. */
	readonly length: number;
	/** Where its lines stand in the file. */
	readonly places: readonly string[];
	/** The widest gap between its lines that was closed, mm. */
	readonly gap: number;
	/** Pieces of it that were too short to be walls, such as a corner set twice. */
	readonly dropped: number;
}

export interface LayerChains {
	/** The likeliest first: the longest, but one that runs along a closed outline before that outline, and the face of a wall that is to the room before its other. */
	readonly chains: readonly Chain[];
	/** Where lines branch, and how many meet there. */
	readonly branches: readonly { readonly at: Point; readonly ends: number }[];
	/** Lines that were drawn twice. */
	readonly twice: number;
	/** Lines too short to be walls, which are left out. */
	readonly specks: number;
}

/** Two straights this near to one line, or two arcs to one circle, are one wall drawn in two goes, mm. */
const ONE_WALL = 0.01;

/** What is shorter than this beside the longest wall of its chain may be a slip of the hand, by share. */
const SPECK = 0.01;

/** The chains on a layer, of which one unit is `mm` long; ends up to `reach` mm apart are joined. */
export function chainsOn({ strokes }: DrawingLayer, mm: number, reach: number): LayerChains {
	const inRoom = strokes.map((stroke) => inMm(stroke, mm));
	const long = inRoom.filter((stroke) => piecesOf(stroke).some((piece) => lengthOf(piece) > reach));
	const { runs, branches, twice } = joinStrokes(long, reach);
	const chains = runs.flatMap(({ pieces, closed, places, gap }): Chain[] => {
		const longest = pieces.reduce((most, piece) => Math.max(most, lengthOf(piece)), 0);
		const long = withoutSpecks(pieces, Math.min(reach, longest * SPECK));
		const walls = wholeWalls(long, closed);
		const length = walls.reduce((sum, wall) => sum + lengthOf(wall), 0);
		return walls.length === 0
			? []
			: [{ walls, closed: closed && walls.length > 1, length, places, gap, dropped: seen(pieces) - seen(long) }];
	});
	return { chains: faceFirst(ranked(chains, reach)), branches, twice, specks: strokes.length - long.length };
}

/** A corner written twice is no piece that anyone drew. */
const seen = (pieces: readonly Piece[]): number => pieces.filter((piece) => lengthOf(piece) > ONE_WALL).length;

const inMm = (stroke: Stroke, mm: number): Stroke => ({
	...stroke,
	points: stroke.points.map(({ x, y, bulge }) => ({ x: x * mm, y: y * mm, bulge })),
});

/** Where a corner was set twice, its neighbours meet in the first. */
function withoutSpecks(pieces: readonly Piece[], reach: number): Piece[] {
	const kept: Piece[] = [];
	let start: Point | null = null;
	for (const piece of pieces) {
		const from: Point = start ?? piece.from;
		if (lengthOf({ ...piece, from }) <= reach) start = from;
		else {
			kept.push({ ...piece, from });
			start = null;
		}
	}
	// What was left over at the end goes to the last.
	const last = kept.at(-1);
	if (start !== null && last !== undefined) kept[kept.length - 1] = { ...last, to: (pieces.at(-1) as Piece).to };
	return kept;
}

/** Walls drawn in several goes as one. */
function wholeWalls(pieces: readonly Piece[], closed: boolean): Piece[] {
	const walls: Piece[] = [];
	for (const piece of pieces) {
		const one = together(walls.at(-1), piece);
		if (one === null) walls.push(piece);
		else walls[walls.length - 1] = one;
	}
	const one = closed && walls.length > 2 ? together(walls.at(-1), walls[0] as Piece) : null;
	return one === null ? walls : [one, ...walls.slice(1, -1)];
}

function together(a: Piece | undefined, b: Piece): Piece | null {
	if (a === undefined) return null;
	const bulge = Math.tan((4 * Math.atan(a.bulge) + 4 * Math.atan(b.bulge)) / 4);
	const whole = { from: a.from, to: b.to, bulge };
	if (a.bulge === 0 && b.bulge === 0) {
		const long = chordOf(whole);
		const [ux, uy] = [(b.to.x - a.from.x) / long, (b.to.y - a.from.y) / long];
		const [dx, dy] = [a.to.x - a.from.x, a.to.y - a.from.y];
		const along = dx * ux + dy * uy;
		return Math.abs(dx * uy - dy * ux) <= ONE_WALL && along > 0 && along < long ? whole : null;
	}
	if (a.bulge * b.bulge <= 0 || Math.abs(bulge) > 1 || bulge * a.bulge < 0) return null;
	const [c, d] = [centreOf(a), centreOf(b)];
	return Math.hypot(c.x - d.x, c.y - d.y) <= ONE_WALL ? whole : null;
}

/** Where the longest is the outer face of a wall, the inner comes first: the bay is there. */
function faceFirst(chains: readonly Chain[]): readonly Chain[] {
	const [longest, ...others] = chains;
	if (longest === undefined) return chains;
	const { walls, sideGuessed, outline } = oriented(longest, false);
	if (sideGuessed || outline !== null) return chains;
	const inner = others
		.slice(0, MOST_COMPARED)
		.find((other) => alongside({ walls, closed: longest.closed }, other)?.nearer === true);
	return inner === undefined ? chains : [inner, ...chains.filter((chain) => chain !== inner)];
}

/** Chains that are looked through for the other face of a wall, the longest first. */
export const MOST_COMPARED = 20;

function ranked(chains: readonly Chain[], reach: number): Chain[] {
	// Open chains by one of their walls, so that a closed one asks only those that may run along it.
	const open = new Map<string, { readonly keys: readonly string[]; readonly length: number }[]>();
	for (const { closed, walls, length } of chains) {
		if (closed) continue;
		const keys = walls.map((wall) => keyOf(wall, reach));
		const [first] = keys as [string];
		open.set(first, [...(open.get(first) ?? []), { keys, length }]);
	}
	const rank = (chain: Chain): number => {
		if (!chain.closed) return chain.length;
		const outline = new Set(chain.walls.map((wall) => keyOf(wall, reach)));
		const along = [...outline]
			.flatMap((key) => open.get(key) ?? [])
			.filter(({ keys }) => keys.length < outline.size && keys.every((key) => outline.has(key)));
		return Math.min(chain.length, ...along.map(({ length }) => length * BARELY_LESS));
	};
	return chains
		.map((chain) => ({ chain, rank: rank(chain) }))
		.sort((a, b) => b.rank - a.rank)
		.map(({ chain }) => chain);
}

const BARELY_LESS = 0.999999;

/** The same for a wall whichever way it was drawn. */
function keyOf({ from, to }: Piece, reach: number): string {
	const [a, b] = [from, to].map(({ x, y }) => `${Math.round(x / reach)} ${Math.round(y / reach)}`) as [string, string];
	return a < b ? `${a} ${b}` : `${b} ${a}`;
}
