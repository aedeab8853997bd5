import { type Degrees, degrees, type Radians, radians } from "./angle.ts";
import { found, type Outcome, refused } from "./outcome.ts";
import type { Point } from "./point.ts";
import { FOLD, GREATEST_COORDINATE, SHORTEST_WALL } from "./tolerance.ts";

/** One wall face between two corners. */
export interface WallFace {
	/** Corner to corner, straight, mm; on a bowed wall the chord. */
	readonly length: number;
	/** Unit direction from its left to its right corner; the room lies on its right. */
	readonly ux: number;
	readonly uy: number;
	readonly heading: Radians;
	/** How far a bowed wall stands off its chord at mid-chord, mm, + away from the room; 0 for a straight wall. */
	readonly rise: number;
}

/** The wall faces of a bay, left to right as seen from the room, which lies on the right of the direction of travel. */
export interface WallChain {
	readonly corners: readonly Point[];
	/** One per consecutive pair of corners. */
	readonly walls: readonly WallFace[];
	/** One per corner: turn to the right positive (an internal corner), 0 at both ends; room angle = π − turn. */
	readonly turns: readonly Radians[];
	/** tan(turn/2) at each corner, same sign. */
	readonly halfTangents: readonly number[];
}

export type ChainFault =
	| { readonly kind: "too-few-corners"; readonly count: number }
	| { readonly kind: "coordinate-out-of-range"; readonly corner: number; readonly coordinate: number }
	| { readonly kind: "wall-too-short"; readonly wall: number; readonly length: number }
	| { readonly kind: "corner-folded"; readonly corner: number; readonly angle: Degrees };

/**
 * Reads corners (mm) as a chain of wall faces.
 * Refuses fewer than two corners, coordinates that are not finite or beyond 100 m, walls under 1 mm and corners folded
 * back on themselves (room angle under 20° or over 340°): every such fault is named.
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
	let heading = 0;
	let left = corners[0] as Point;
	let ux = 0;
	let uy = 0;
	for (let i = 1; i < corners.length; i++) {
		const right = corners[i] as Point;
		const dx = right.x - left.x;
		const dy = right.y - left.y;
		const length = Math.sqrt(dx * dx + dy * dy);
		if (length < SHORTEST_WALL) faults.push({ kind: "wall-too-short", wall: i - 1, length });
		const vx = dx / length;
		const vy = dy / length;
		if (i === 1) heading = Math.atan2(vy, vx);
		else {
			const across = uy * vx - ux * vy;
			const along = ux * vx + uy * vy;
			const turn = Math.atan2(across, along);
			turns.push(radians(turn));
			halfTangents.push(across / (1 + along));
			heading -= turn;
			if (Math.abs(turn) > Math.PI - FOLD)
				faults.push({ kind: "corner-folded", corner: i - 1, angle: degrees(180 - (turn * 180) / Math.PI) });
		}
		walls.push({ length, ux: vx, uy: vy, heading: radians(heading), rise: rises[i - 1] ?? 0 });
		left = right;
		ux = vx;
		uy = vy;
	}
	turns.push(radians(0));
	halfTangents.push(0);
	return faults.length > 0 ? { ok: false, faults } : found({ corners, walls, turns, halfTangents });
}
