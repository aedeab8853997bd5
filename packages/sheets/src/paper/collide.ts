import { at, type Box, type PaperPoint } from "./place.ts";

/** Whether two convex outlines share more than an edge. Source: separating axis theorem. */
export function collide(a: readonly PaperPoint[], b: readonly PaperPoint[]): boolean {
	return !isParted(a, b) && !isParted(b, a);
}

/** How near (mm) two outlines are still only touching. */
const TOUCH = 1e-6;

/** Whether a line along one side of `a` has all of `b` beyond it. */
function isParted(a: readonly PaperPoint[], b: readonly PaperPoint[]): boolean {
	return a.some((from, i) => {
		const to = a[(i + 1) % a.length] as PaperPoint;
		const [nx, ny] = [to.y - from.y, from.x - to.x];
		const across = ({ x, y }: PaperPoint) => x * nx + y * ny;
		const own = a.map(across);
		const other = b.map(across);
		const slack = TOUCH * Math.hypot(nx, ny);
		return Math.min(...other) >= Math.max(...own) - slack || Math.max(...other) <= Math.min(...own) + slack;
	});
}

export const cornersOfBox = ({ left, top, right, bottom }: Box): readonly PaperPoint[] => [
	at(left, bottom),
	at(right, bottom),
	at(right, top),
	at(left, top),
];
