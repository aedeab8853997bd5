import type { WallChain, WallFace } from "./chain.ts";
import type { Elbow } from "./elbow.ts";
import { pointOffFace } from "./face.ts";
import type { Point } from "./point.ts";

/**
 * The bends between two straight legs, all tangent to both: the centre of the one of radius R lies at `apex` + R·`along`. They lie one
 * inside the other, the wider the further from the apex, so through every point between the legs there is one whose near side it lies on.
 */
export interface Wedge {
	readonly apex: Point;
	/** Longer than 1: |along|² = 1 + slope². */
	readonly along: Point;
	/** tan(|turn|/2). */
	readonly slope: number;
	/** 1 for a turn to the right, −1 to the left. */
	readonly side: number;
}

export function wedgeOf(chain: WallChain, projections: readonly number[], elbow: Elbow): Wedge {
	const { ux, uy } = chain.walls[elbow.left] as WallFace;
	const { slope } = elbow;
	const side = elbow.turn < 0 ? -1 : 1;
	return {
		apex: pointOffFace(chain, elbow.left, elbow.footLeft, projections[elbow.left] as number),
		along: { x: side * uy - slope * ux, y: -side * ux - slope * uy },
		slope,
		side,
	};
}

/** Part by which a point may lie outside a leg and still count as on it: rounding. */
const ON_LEG = 1e-12;

/**
 * The radius of the bend that passes `off` mm outside of a point; wider ones pass nearer to it or leave it out altogether. 0 where no
 * bend is tight enough. With d from the apex of the bends `off` mm within: R² slope² − 2 R d·along + d² = 0, the greater root.
 */
export function radiusThrough({ apex, along, slope }: Wedge, { x, y }: Point, off = 0): number {
	const dx = x - apex.x - off * along.x;
	const dy = y - apex.y - off * along.y;
	const forward = dx * along.x + dy * along.y;
	const root = forward * forward - slope * slope * (dx * dx + dy * dy);
	if (forward <= 0 || root < -ON_LEG * forward * forward) return 0;
	return off + (forward + Math.sqrt(Math.max(0, root))) / (slope * slope);
}
