import type { Point } from "@baywright/geometry";

/** A place on a stroke, and how the stroke goes on from it. */
export interface StrokePoint extends Point {
	/** tan(angle / 4) of the arc to the next point, + counter-clockwise; 0 = straight. Source: DXF reference, LWPOLYLINE, group 42. */
	readonly bulge: number;
}

/** One line as it was drawn, of straights and arcs of circles; in units of the drawing, y up. */
export interface Stroke {
	/** At least two; a closed one goes on from its last point to its first. */
	readonly points: readonly StrokePoint[];
	readonly closed: boolean;
	/** Where in the file it stands, for people: `LINE at line 812`. */
	readonly place: string;
	/** mm of the room for each unit, where the line itself says so. */
	readonly scale?: number;
}

/** A straight or an arc of a stroke. */
export interface Piece {
	readonly from: Point;
	readonly to: Point;
	readonly bulge: number;
}

export function piecesOf({ points, closed }: Stroke): Piece[] {
	const ends = closed ? [...points.slice(1), ...points.slice(0, 1)] : points.slice(1);
	return ends.map((to, i) => {
		const { x, y, bulge } = points[i] as StrokePoint;
		return { from: { x, y }, to: { x: to.x, y: to.y }, bulge };
	});
}

export const turnedRound = ({ from, to, bulge }: Piece): Piece => ({ from: to, to: from, bulge: -bulge + 0 });

export const chordOf = ({ from, to }: Piece): number => Math.hypot(to.x - from.x, to.y - from.y);

/** Half-way along it, on the piece itself, also where it is bowed. */
export const middleOf = ({ from, to, bulge }: Piece): Point => ({
	x: (from.x + to.x + (to.y - from.y) * bulge) / 2,
	y: (from.y + to.y - (to.x - from.x) * bulge) / 2,
});

/** How far its middle stands to the left of its chord. Source: the sagitta of a bulge b on a chord c is b c / 2. */
export const sagittaOf = (piece: Piece): number => (-piece.bulge * chordOf(piece)) / 2;

/** Of an arc, + counter-clockwise; the bulge must not be 0. Source: from the sagitta s, r = (c² + 4s²) / 8s. */
export const radiusOf = (arc: Piece): number => (chordOf(arc) * (1 + arc.bulge * arc.bulge)) / (4 * arc.bulge);

/** Along the piece. Source: an arc of the angle a on a chord c is c · (a/2) / sin(a/2) long. */
export function lengthOf(piece: Piece): number {
	const half = 2 * Math.atan(piece.bulge);
	return half === 0 ? chordOf(piece) : (chordOf(piece) * half) / Math.sin(half);
}

/** Directions at both ends, radians, counter-clockwise from the x axis. */
export function headingsOf({ from, to, bulge }: Piece): { readonly start: number; readonly end: number } {
	const chord = Math.atan2(to.y - from.y, to.x - from.x);
	const half = 2 * Math.atan(bulge);
	return { start: chord - half, end: chord + half };
}

/** How far pieces turn from end to end, at corners and along arcs, radians, counter-clockwise positive. */
export function turnOf(walls: readonly Piece[]): number {
	let turn = 0;
	walls.forEach((wall, i) => {
		turn += 4 * Math.atan(wall.bulge);
		const next = walls[i + 1];
		if (next === undefined) return;
		const corner = headingsOf(next).start - headingsOf(wall).end;
		turn += Math.atan2(Math.sin(corner), Math.cos(corner));
	});
	return turn;
}

/** The centre of an arc; the bulge must not be 0. Source: from mid-chord it is c (1 − b²) / 4b along the normal on the left. */
export function centreOf({ from, to, bulge }: Piece): Point {
	const off = (1 - bulge * bulge) / (4 * bulge);
	return {
		x: (from.x + to.x) / 2 - (to.y - from.y) * off,
		y: (from.y + to.y) / 2 + (to.x - from.x) * off,
	};
}

/** The angle in the room where one wall goes over into the next, between their tangents, degrees, 0 to 360; the room lies on their right. */
export function roomAngle(wall: Piece, next: Piece): number {
	const turn = headingsOf(next).start - headingsOf(wall).end;
	return 180 + (Math.atan2(Math.sin(turn), Math.cos(turn)) * 180) / Math.PI;
}
