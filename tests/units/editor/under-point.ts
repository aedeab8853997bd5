import type { Target } from "@baywright/editor";
import type { Bay } from "@baywright/setout";

/** A point of the plan, mm. */
export interface Place {
	readonly x: number;
	readonly y: number;
}

/** A look at the plan: corners first, then what stands on the wall there, then the wall; null away from all walls. `near` mm. */
export function underPoint(bay: Bay, at: Place, near: number): Target | null {
	const corner = bay.corners.findIndex(([x, y]) => Math.hypot(x - at.x, y - at.y) <= near);
	if (corner >= 0) return { kind: "corner", index: corner };
	for (let wall = 0; wall + 1 < bay.corners.length; wall++) {
		const along = alongWall(bay, wall, at, near);
		if (along === null) continue;
		const onIt = (it: { readonly wall: number; readonly from: number; readonly to: number }) =>
			it.wall === wall && along >= it.from && along <= it.to;
		const obstacle = bay.obstacles.findIndex(onIt);
		if (obstacle >= 0) return { kind: "obstacle", index: obstacle };
		const opening = bay.openings.findIndex(onIt);
		if (opening >= 0) return { kind: "opening", index: opening };
		const stretch = bay.walls[wall]?.noDrill.findIndex(([from, to]) => onIt({ wall, from, to })) ?? -1;
		if (stretch >= 0) return { kind: "no-drill", index: stretch, wall };
		return { kind: "wall", index: wall };
	}
	return null;
}

const SAMPLES = 200;

/** mm along a wall's face of the place nearest a point, by walking the face in short steps; null where it is further off than `near`. */
function alongWall(bay: Bay, wall: number, at: Place, near: number): number | null {
	let best: number | null = null;
	let least = near;
	let walked = 0;
	let last = faceAt(bay, wall, 0);
	for (let i = 0; i <= SAMPLES; i++) {
		const here = faceAt(bay, wall, i / SAMPLES);
		walked += Math.hypot(here.x - last.x, here.y - last.y);
		last = here;
		const away = Math.hypot(here.x - at.x, here.y - at.y);
		if (away <= least) [best, least] = [walked, away];
	}
	return best;
}

/** A share of the way along a face: on a bow, the point of its arc seen from the arc's middle. From the circle through three points; from memory. */
export function faceAt(bay: Pick<Bay, "corners" | "walls">, wall: number, share: number): Place {
	const [[ax, ay], [bx, by]] = [bay.corners[wall], bay.corners[wall + 1]] as [[number, number], [number, number]];
	const rise = bay.walls[wall]?.rise ?? 0;
	const chord = Math.hypot(bx - ax, by - ay);
	const [ux, uy] = [(bx - ax) / chord, (by - ay) / chord];
	if (rise === 0) return { x: ax + (bx - ax) * share, y: ay + (by - ay) * share };
	// Half the angle of the arc: its chord and rise give tan of a quarter of it.
	const half = 2 * Math.atan((2 * Math.abs(rise)) / chord);
	const radius = chord / 2 / Math.sin(half);
	const swung = half * (2 * share - 1);
	const along = chord / 2 + radius * Math.sin(swung);
	const out = Math.sign(rise) * radius * (Math.cos(swung) - Math.cos(half));
	return { x: ax + ux * along - uy * out, y: ay + uy * along + ux * out };
}
