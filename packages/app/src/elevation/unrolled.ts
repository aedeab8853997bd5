import { toDegrees, type WallChain } from "@baywright/geometry";

/** The wall faces laid out flat beside each other, left to right, seen from the room. Lengths mm, along the faces. */
export interface Unrolled {
	readonly walls: readonly UnrolledWall[];
	/** One more than walls. */
	readonly corners: readonly UnrolledCorner[];
	readonly length: number;
}

export interface UnrolledWall {
	readonly from: number;
	readonly to: number;
	/** Off the chord, + away from the room; 0 where the wall is straight. */
	readonly rise: number;
}

export interface UnrolledCorner {
	/** Along the unrolled faces. */
	readonly at: number;
	readonly kind: "end" | "internal" | "external";
	/** Room angle between the faces, degrees; 180 at both ends. */
	readonly angle: number;
}

/** Each wall by the length of its face, a bowed one too; corners where faces meet. */
export function unroll({ walls, turns }: WallChain): Unrolled {
	const flat: UnrolledWall[] = [];
	let from = 0;
	for (const { faceLength, bow } of walls) {
		flat.push({ from, to: from + faceLength, rise: bow?.rise ?? 0 });
		from += faceLength;
	}
	const corners = turns.map((turn, corner): UnrolledCorner => {
		const at = flat[corner]?.from ?? from;
		if (corner === 0 || corner === walls.length) return { at, kind: "end", angle: 180 };
		return { at, kind: turn < 0 ? "external" : "internal", angle: 180 - toDegrees(turn) };
	});
	return { walls: flat, corners, length: from };
}

/** Where a place on a wall's face lies along the unrolled faces, mm; held on its wall. */
export function alongOf({ walls }: Unrolled, wall: number, at: number): number {
	const { from, to } = walls[wall] ?? { from: 0, to: 0 };
	return from + Math.min(Math.max(at, 0), to - from);
}

/** The wall at a place along the unrolled faces; of two that meet there the left. Null beyond the ends. */
export function wallUnder({ walls }: Unrolled, along: number): number | null {
	const wall = walls.findIndex(({ from, to }) => along >= from && along <= to);
	return wall < 0 ? null : wall;
}
