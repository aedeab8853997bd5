import { type Degrees, degrees, type Radians, radians } from "./angle.ts";
import { found, type Outcome, refused } from "./outcome.ts";
import type { Point } from "./point.ts";
import { FOLD, GREATEST_COORDINATE, NO_RISE, SHORTEST_WALL } from "./tolerance.ts";

/** One wall face between two corners, straight or bowed. */
export interface WallFace {
	/** Corner to corner, straight, mm; on a bowed wall the chord. */
	readonly length: number;
	/** Along the face, mm; the same on a straight wall. */
	readonly faceLength: number;
	/** Unit direction from its left to its right corner; the room lies on its right. */
	readonly ux: number;
	readonly uy: number;
	/** Heading of the chord. */
	readonly heading: Radians;
	/** The arc of a bowed wall; null for a straight one. */
	readonly bow: WallBow | null;
}

/** The arc of a bowed wall face. Source: ρ = (c²/4 + h²)/2h for a chord c and rise h. */
export interface WallBow {
	/** Off the chord at mid-chord, mm, + away from the room. */
	readonly rise: number;
	readonly centre: Point;
	/** mm. */
	readonly radius: number;
	/** Angle that the face turns through, right positive: a wall that bows away from the room turns right. */
	readonly turn: Radians;
}

/** The wall faces of a bay, left to right as seen from the room, which lies on the right of the direction of travel. */
export interface WallChain {
	readonly corners: readonly Point[];
	/** One per consecutive pair of corners. */
	readonly walls: readonly WallFace[];
	/** One per corner: turn between the faces there, right positive (an internal corner), 0 at both ends; room angle = π − turn. */
	readonly turns: readonly Radians[];
	/** tan(turn/2) at each corner, same sign. */
	readonly halfTangents: readonly number[];
	readonly anyBow: boolean;
}

export type ChainFault =
	| { readonly kind: "too-few-corners"; readonly count: number }
	| { readonly kind: "coordinate-out-of-range"; readonly corner: number; readonly coordinate: number }
	| { readonly kind: "wall-too-short"; readonly wall: number; readonly length: number }
	| { readonly kind: "bow-too-deep"; readonly wall: number; readonly rise: number; readonly greatest: number }
	| { readonly kind: "corner-folded"; readonly corner: number; readonly angle: Degrees };

/**
 * Reads corners and rises (mm, one a wall, 0 where left out) as a chain of wall faces.
 * Refuses fewer than two corners, coordinates that are not finite or beyond 100 m, walls under 1 mm, bows deeper than a
 * half circle and corners folded back on themselves (room angle under 20° or over 340°): every such fault is named.
 */
export function readChain(corners: readonly Point[], rises: readonly number[] = []): Outcome<WallChain, ChainFault> {
	if (corners.length < 2) return refused({ kind: "too-few-corners", count: corners.length });
	const faults: ChainFault[] = [];
	for (let i = 0; i < corners.length; i++) {
		const { x, y } = corners[i] as Point;
		if (!(Math.abs(x) <= GREATEST_COORDINATE))
			faults.push({ kind: "coordinate-out-of-range", corner: i, coordinate: x });
		else if (!(Math.abs(y) <= GREATEST_COORDINATE))
			faults.push({ kind: "coordinate-out-of-range", corner: i, coordinate: y });
	}
	if (faults.length > 0) return { ok: false, faults };

	const walls: WallFace[] = [];
	const turns: Radians[] = [radians(0)];
	const halfTangents: number[] = [0];
	let anyBow = false;
	let heading = 0;
	let left = corners[0] as Point;
	let ux = 0;
	let uy = 0;
	let bowBefore = 0;
	for (let i = 1; i < corners.length; i++) {
		const right = corners[i] as Point;
		const dx = right.x - left.x;
		const dy = right.y - left.y;
		const length = Math.sqrt(dx * dx + dy * dy);
		const vx = dx / length;
		const vy = dy / length;
		const rise = rises[i - 1] ?? 0;
		const bow = Math.abs(rise) > NO_RISE && length > 0 ? bowOf(left, vx, vy, length, rise) : null;
		if (length < SHORTEST_WALL) faults.push({ kind: "wall-too-short", wall: i - 1, length });
		else if (Math.abs(rise) > length / 2)
			faults.push({ kind: "bow-too-deep", wall: i - 1, rise, greatest: length / 2 });
		if (i === 1) heading = Math.atan2(vy, vx);
		else {
			const across = uy * vx - ux * vy;
			const along = ux * vx + uy * vy;
			const chordTurn = Math.atan2(across, along);
			heading -= chordTurn;
			const bent = bowBefore + (bow?.turn ?? 0);
			const turn = bent === 0 ? chordTurn : chordTurn - bent / 2;
			turns.push(radians(turn));
			halfTangents.push(bent === 0 ? across / (1 + along) : Math.tan(turn / 2));
			if (Math.abs(turn) > Math.PI - FOLD)
				faults.push({ kind: "corner-folded", corner: i - 1, angle: degrees(180 - (turn * 180) / Math.PI) });
		}
		const faceLength = bow === null ? length : bow.radius * Math.abs(bow.turn);
		walls.push({ length, faceLength, ux: vx, uy: vy, heading: radians(heading), bow });
		anyBow ||= bow !== null;
		bowBefore = bow?.turn ?? 0;
		left = right;
		ux = vx;
		uy = vy;
	}
	turns.push(radians(0));
	halfTangents.push(0);
	return faults.length > 0 ? { ok: false, faults } : found({ corners, walls, turns, halfTangents, anyBow });
}

function bowOf(left: Point, ux: number, uy: number, chord: number, rise: number): WallBow {
	const deep = Math.abs(rise);
	const radius = (chord * chord) / (8 * deep) + deep / 2;
	const side = Math.sign(rise);
	// From mid-chord to the centre: to the room for a wall that bows away from it.
	const off = side * (radius - deep);
	return {
		rise,
		centre: { x: left.x + (ux * chord) / 2 + uy * off, y: left.y + (uy * chord) / 2 - ux * off },
		radius,
		turn: radians(side * 4 * Math.atan((2 * deep) / chord)),
	};
}
