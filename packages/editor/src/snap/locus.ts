import type { Point } from "@baywright/geometry";

/** Places that a point is drawn to, and why, as words that follow "here it is …". Lengths mm. */
export type Locus = LineLocus | CircleLocus;

/** The side of a line to which a locus keeps: what holds on one side of it is untrue on the other. */
export interface Side {
	readonly of: Point;
	/** Unit direction square to the line, to the side that counts. */
	readonly nx: number;
	readonly ny: number;
}

interface LineLocus {
	readonly kind: "line";
	readonly through: Point;
	/** Unit direction. */
	readonly ux: number;
	readonly uy: number;
	readonly why: string;
	readonly side?: Side;
}

interface CircleLocus {
	readonly kind: "circle";
	readonly centre: Point;
	readonly radius: number;
	readonly why: string;
	readonly side?: Side;
}

export const line = (through: Point, heading: number, why: string): Locus => ({
	kind: "line",
	through,
	ux: Math.cos(heading),
	uy: Math.sin(heading),
	why,
});

export const circle = (centre: Point, radius: number, why: string): Locus => ({ kind: "circle", centre, radius, why });

/** The half of a line that starts at `from`. */
export function ray(from: Point, heading: number, why: string): Locus {
	const [ux, uy] = [Math.cos(heading), Math.sin(heading)];
	return { kind: "line", through: from, ux, uy, why, side: { of: from, nx: ux, ny: uy } };
}

/** The part of a circle on one side of a line. */
export const arc = (centre: Point, radius: number, side: Side, why: string): Locus => ({
	kind: "circle",
	centre,
	radius,
	why,
	side,
});

/** The nearest point of a locus; null where every point of it is as near, or the nearest is on the side that does not count. */
export function footOn(locus: Locus, p: Point): Point | null {
	const foot = footOnWhole(locus, p);
	return foot !== null && keepsTo(locus, foot) ? foot : null;
}

/** Where two loci meet: none, one or two points. */
export function meetings(a: Locus, b: Locus): readonly Point[] {
	return meetingsOfWhole(a, b).filter((p) => keepsTo(a, p) && keepsTo(b, p));
}

const keepsTo = ({ side }: Locus, { x, y }: Point): boolean =>
	side === undefined || (x - side.of.x) * side.nx + (y - side.of.y) * side.ny > 0;

function footOnWhole(locus: Locus, p: Point): Point | null {
	if (locus.kind === "line") {
		const along = (p.x - locus.through.x) * locus.ux + (p.y - locus.through.y) * locus.uy;
		return { x: locus.through.x + locus.ux * along, y: locus.through.y + locus.uy * along };
	}
	const away = Math.hypot(p.x - locus.centre.x, p.y - locus.centre.y);
	if (away === 0) return null;
	const share = locus.radius / away;
	return {
		x: locus.centre.x + (p.x - locus.centre.x) * share,
		y: locus.centre.y + (p.y - locus.centre.y) * share,
	};
}

function meetingsOfWhole(a: Locus, b: Locus): readonly Point[] {
	if (a.kind === "circle") return b.kind === "circle" ? circles(a, b) : lineAndCircle(b, a);
	return b.kind === "circle" ? lineAndCircle(a, b) : lines(a, b);
}

/** Sine of the least angle at which two lines are said to meet. */
const LEAST_CROSSING = 0.02;

function lines(a: LineLocus, b: LineLocus): Point[] {
	const across = a.ux * b.uy - a.uy * b.ux;
	if (Math.abs(across) < LEAST_CROSSING) return [];
	const along = ((b.through.x - a.through.x) * b.uy - (b.through.y - a.through.y) * b.ux) / across;
	return [{ x: a.through.x + a.ux * along, y: a.through.y + a.uy * along }];
}

function lineAndCircle(a: LineLocus, { centre, radius }: CircleLocus): Point[] {
	const along = (centre.x - a.through.x) * a.ux + (centre.y - a.through.y) * a.uy;
	const foot = { x: a.through.x + a.ux * along, y: a.through.y + a.uy * along };
	const half = radius ** 2 - (centre.x - foot.x) ** 2 - (centre.y - foot.y) ** 2;
	if (half < 0) return [];
	return [-Math.sqrt(half), Math.sqrt(half)].map((by) => ({ x: foot.x + a.ux * by, y: foot.y + a.uy * by }));
}

function circles(a: CircleLocus, b: CircleLocus): Point[] {
	const apart = Math.hypot(b.centre.x - a.centre.x, b.centre.y - a.centre.y);
	if (apart === 0) return [];
	const [ux, uy] = [(b.centre.x - a.centre.x) / apart, (b.centre.y - a.centre.y) / apart];
	const along = (apart ** 2 + a.radius ** 2 - b.radius ** 2) / (2 * apart);
	const half = a.radius ** 2 - along ** 2;
	if (half < 0) return [];
	return [-Math.sqrt(half), Math.sqrt(half)].map((by) => ({
		x: a.centre.x + ux * along - uy * by,
		y: a.centre.y + uy * along + ux * by,
	}));
}
