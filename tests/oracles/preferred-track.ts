import type { Point } from "@baywright/geometry";

/**
 * Length of a track from one end of a bay of straight walls to the other with every bend at radius R, and its slopes by the chain rule:
 * Σ runs less, at every corner, (dl + dr)·tan(δ/2) + 2R·tan(|δ|/2) − R·|δ|. Source: the circular curve of route surveying.
 */
export function preferredTrack(
	corners: readonly Point[],
	projections: readonly number[],
	radius: number,
): { readonly length: number; readonly slopes: readonly number[] } {
	const slopes = new Array<number>(2 * corners.length).fill(0);
	const add = (corner: number, x: number, y: number) => {
		slopes[2 * corner] = (slopes[2 * corner] as number) + x;
		slopes[2 * corner + 1] = (slopes[2 * corner + 1] as number) + y;
	};
	const walls = corners.slice(1).map((right, i) => {
		const left = corners[i] as Point;
		const run = Math.hypot(right.x - left.x, right.y - left.y);
		return { run, x: (right.x - left.x) / run, y: (right.y - left.y) / run };
	});
	let length = 0;
	walls.forEach(({ run, x, y }, i) => {
		length += run;
		add(i, -x, -y);
		add(i + 1, x, y);
		const next = walls[i + 1];
		if (next === undefined) return;
		const turn = Math.asin(Math.max(-1, Math.min(1, y * next.x - x * next.y)));
		// Obtuse room angles only: the turn is under a right angle, where the sine is enough.
		const reach = (projections[i] as number) + (projections[i + 1] as number);
		const side = Math.sign(turn);
		length -= reach * Math.tan(turn / 2) + 2 * radius * Math.tan(Math.abs(turn) / 2) - radius * Math.abs(turn);
		const byTurn = -(reach / 2 + radius * side) / Math.cos(turn / 2) ** 2 + radius * side;
		// A wall's heading turns left as its right corner moves left of it; the turn is to the right, from this wall to the next.
		add(i + 1, (-y * byTurn) / run, (x * byTurn) / run);
		add(i, (y * byTurn) / run, (-x * byTurn) / run);
		add(i + 2, (next.y * byTurn) / next.run, (-next.x * byTurn) / next.run);
		add(i + 1, (-next.y * byTurn) / next.run, (next.x * byTurn) / next.run);
	});
	return { length, slopes };
}
