import type { Box } from "../../../packages/app/src/canvas/labels/box.ts";

interface Place {
	readonly left: number;
	readonly top: number;
}

/** The four corners of a box, `more` px larger all round. */
export function cornersOf({ left, top, halfWidth, halfHeight, turn }: Box, more = 0): Place[] {
	return [
		[-1, -1],
		[1, -1],
		[1, 1],
		[-1, 1],
	].map(([x, y]) => {
		const along = (x as number) * (halfWidth + more);
		const across = (y as number) * (halfHeight + more);
		return {
			left: left + along * Math.cos(turn) - across * Math.sin(turn),
			top: top + along * Math.sin(turn) + across * Math.cos(turn),
		};
	});
}

/** Whether a place lies in a box: on the inner side of each of its four edges. */
export function insideBox(box: Box, at: Place): boolean {
	const corners = cornersOf(box);
	return corners.every((a, i) => cross(a, corners[(i + 1) % 4] as Place, at) > 0);
}

/** Whether two boxes share ground, by their outlines alone: an edge of one crosses one of the other, or one lies in the other. */
export function boxesShare(a: Box, b: Box, more: number): boolean {
	const ofA = cornersOf(a, more);
	const ofB = cornersOf(b, more);
	const edges = (corners: readonly Place[]) => corners.map((from, i) => [from, corners[(i + 1) % 4] as Place] as const);
	if (edges(ofA).some(([p, q]) => edges(ofB).some(([r, s]) => crosses(p, q, r, s)))) return true;
	return inside(ofA, ofB[0] as Place) || inside(ofB, ofA[0] as Place);
}

const inside = (corners: readonly Place[], at: Place): boolean =>
	corners.every((a, i) => cross(a, corners[(i + 1) % 4] as Place, at) > 0);

const crosses = (p: Place, q: Place, r: Place, s: Place): boolean =>
	cross(p, q, r) > 0 !== cross(p, q, s) > 0 && cross(r, s, p) > 0 !== cross(r, s, q) > 0;

const cross = (a: Place, b: Place, at: Place): number =>
	(b.left - a.left) * (at.top - a.top) - (b.top - a.top) * (at.left - a.left);
