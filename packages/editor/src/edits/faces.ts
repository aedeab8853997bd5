import { footOnFace, type Point, pointOffFace, readChain, type WallChain } from "@baywright/geometry";
import type { Bay } from "@baywright/setout";

/** The wall faces as drawn; null while the corners make no bay. */
export function facesOf({ corners, walls }: Pick<Bay, "corners" | "walls">): WallChain | null {
	const chain = readChain(
		corners.map(([x, y]) => ({ x, y })),
		walls.map(({ rise }) => rise),
	);
	return chain.ok ? chain.value : null;
}

/** Along a wall's face, mm; 0 for one that is not there. */
export const faceLength = (chain: WallChain, wall: number): number => chain.walls[wall]?.faceLength ?? 0;

/** As `faceLength`, of a bay; 0 where its corners make no bay. */
export function wallLength(bay: Pick<Bay, "corners" | "walls">, wall: number): number {
	const chain = facesOf(bay);
	return chain === null ? 0 : faceLength(chain, wall);
}

/** Along a wall's face, mm; while the corners make no bay, straight from corner to corner. */
export function lengthOfWall(bay: Pick<Bay, "corners" | "walls">, wall: number): number {
	const chain = facesOf(bay);
	if (chain !== null) return faceLength(chain, wall);
	const [from, to] = [bay.corners[wall], bay.corners[wall + 1]];
	return from && to ? Math.hypot(to[0] - from[0], to[1] - from[1]) : 0;
}

/** A place on a wall's face: mm from its left corner, mm off it into the room. */
export interface OnWall {
	readonly wall: number;
	readonly at: number;
	readonly off: number;
}

/** The place on the nearest wall face, held between its corners; null where there is no wall. Of walls as near, the one with the place in front of it. */
export function nearestOnWalls(chain: WallChain, p: Point): OnWall | null {
	let best: (OnWall & { readonly away: number }) | null = null;
	for (let wall = 0; wall < chain.walls.length; wall++) {
		const foot = footOnFace(chain, wall, p);
		const at = Math.min(Math.max(foot.at, 0), faceLength(chain, wall));
		const on = pointOffFace(chain, wall, at, 0);
		const away = Math.hypot(p.x - on.x, p.y - on.y);
		const nearer = best === null || away < best.away - SAME || (away < best.away + SAME && foot.off > best.off);
		if (nearer) best = { wall, at, off: foot.off, away };
	}
	return best === null ? null : { wall: best.wall, at: best.at, off: best.off };
}

/** mm within which two walls are as near: at a corner they are. */
const SAME = 1e-6;
