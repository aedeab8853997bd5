import type { Point } from "@baywright/geometry";
import { type Piece, piecesOf, type Stroke, turnedRound } from "./stroke.ts";

/** Strokes joined end to end. */
export interface Run {
	/** In order; each begins where the one before it ends. */
	readonly pieces: readonly Piece[];
	readonly closed: boolean;
	/** Where its strokes stand in the file. */
	readonly places: readonly string[];
	/** The widest gap closed. */
	readonly gap: number;
}

export interface Joined {
	readonly runs: readonly Run[];
	/** Places where three ends or more meet: runs end there. */
	readonly branches: readonly { readonly at: Point; readonly ends: number }[];
	/** Strokes that were there twice. */
	readonly twice: number;
}

/** An end of a stroke. */
interface End {
	readonly stroke: number;
	readonly last: boolean;
	readonly at: Point;
}

/** Joins strokes whose ends lie within `reach` of one another, whatever their order and directions. Only ends join, never corners. */
export function joinStrokes(drawn: readonly Stroke[], reach: number): Joined {
	const strokes = withoutTwins(drawn, reach);
	const sides = strokes.map((stroke) => piecesOf(stroke));
	const ends: End[] = strokes.flatMap(({ closed, points }, stroke) =>
		closed
			? []
			: [
					{ stroke, last: false, at: points[0] as Point },
					{ stroke, last: true, at: points.at(-1) as Point },
				],
	);
	const spotOf = spots(ends, reach);
	const atSpot = new Map<number, number[]>();
	ends.forEach((_, end) => {
		const spot = spotOf[end] as number;
		addTo(atSpot, spot, end);
	});
	const branches = [...atSpot.values()]
		.filter((meeting) => meeting.length > 2)
		.map((meeting) => ({ at: middle(meeting.map((end) => (ends[end] as End).at)), ends: meeting.length }));

	const endAt = new Map(ends.map((end, i) => [`${end.stroke} ${end.last}`, i]));
	const used = new Set<number>();
	/** The stroke that goes on from an end, entered at its own end that lies there; undefined where none or several do. */
	const onward = (end: number): End | undefined => {
		const meeting = atSpot.get(spotOf[end] as number) ?? [];
		if (meeting.length !== 2) return undefined;
		return ends[meeting[0] === end ? (meeting[1] as number) : (meeting[0] as number)];
	};
	const walk = (first: End): Run => {
		const pieces: Piece[] = [];
		const places: string[] = [];
		let gap = 0;
		let entered: End | undefined = first;
		while (entered !== undefined && !used.has(entered.stroke)) {
			used.add(entered.stroke);
			places.push((strokes[entered.stroke] as Stroke).place);
			const own = sides[entered.stroke] as Piece[];
			const run = entered.last ? own.toReversed().map(turnedRound) : own;
			const before = pieces.at(-1);
			const [start, ...rest] = run as [Piece, ...Piece[]];
			if (before === undefined) pieces.push(start);
			else {
				gap = Math.max(gap, Math.hypot(start.from.x - before.to.x, start.from.y - before.to.y));
				const meet = middle([before.to, start.from]);
				pieces.splice(-1, 1, { ...before, to: meet });
				pieces.push({ ...start, from: meet });
			}
			pieces.push(...rest);
			entered = onward(endAt.get(`${entered.stroke} ${!entered.last}`) as number);
		}
		// Came back to where it began?
		const closed = entered !== undefined && entered.stroke === first.stroke && entered.last === first.last;
		if (!closed) return { pieces, closed, places, gap };
		const [start, end] = [pieces[0] as Piece, pieces.at(-1) as Piece];
		gap = Math.max(gap, Math.hypot(start.from.x - end.to.x, start.from.y - end.to.y));
		const meet = middle([end.to, start.from]);
		pieces[pieces.length - 1] = { ...end, to: meet };
		pieces[0] = { ...(pieces[0] as Piece), from: meet };
		return { pieces, closed, places, gap };
	};

	const runs: Run[] = strokes.flatMap(({ closed, place }, i) =>
		closed ? [{ pieces: sides[i] as Piece[], closed, places: [place], gap: 0 }] : [],
	);
	// Those with a free end first; what is left over then goes round in rings.
	for (const [i, end] of ends.entries()) if (!used.has(end.stroke) && onward(i) === undefined) runs.push(walk(end));
	for (const end of ends) if (!used.has(end.stroke)) runs.push(walk(end));
	return { runs, branches, twice: drawn.length - strokes.length };
}

const middle = (points: readonly Point[]): Point => ({
	x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
	y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
});

function addTo<Key>(lists: Map<Key, number[]>, key: Key, item: number): void {
	const list = lists.get(key);
	if (list === undefined) lists.set(key, [item]);
	else list.push(item);
}

/** A number for each end: the same for ends that lie within reach of one another, by a grid of cells as wide as that. */
function spots(ends: readonly End[], reach: number): number[] {
	const parent = ends.map((_, i) => i);
	const rootOf = (i: number): number => {
		let root = i;
		while (parent[root] !== root) root = parent[root] as number;
		parent[i] = root;
		return root;
	};
	const cells = new Map<string, number[]>();
	ends.forEach(({ at }, i) => {
		const [column, row] = [Math.floor(at.x / reach), Math.floor(at.y / reach)];
		for (let dx = -1; dx <= 1; dx++)
			for (let dy = -1; dy <= 1; dy++)
				for (const other of cells.get(`${column + dx} ${row + dy}`) ?? []) {
					const there = (ends[other] as End).at;
					if (Math.hypot(there.x - at.x, there.y - at.y) <= reach) parent[rootOf(i)] = rootOf(other);
				}
		addTo(cells, `${column} ${row}`, i);
	});
	return ends.map((_, i) => rootOf(i));
}

/** Each stroke once, also where it was drawn there and back. */
function withoutTwins(strokes: readonly Stroke[], reach: number): Stroke[] {
	const seen = new Set<string>();
	const keyOf = (pieces: readonly Piece[]) =>
		pieces
			.map(({ from, to, bulge }) =>
				[from.x / reach, from.y / reach, to.x / reach, to.y / reach, bulge / SAME_BULGE].map(Math.round).join(" "),
			)
			.join();
	return strokes.filter((stroke) => {
		const pieces = piecesOf(stroke);
		const keys = [pieces, pieces.toReversed().map(turnedRound)].map(keyOf);
		if (keys.some((key) => seen.has(key))) return false;
		seen.add(keys[0] as string);
		return true;
	});
}

const SAME_BULGE = 1e-5;
