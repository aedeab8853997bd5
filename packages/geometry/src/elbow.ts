import { type Radians, radians, wrapHeading } from "./angle.ts";
import type { WallChain, WallFace } from "./chain.ts";
import { footOfVirtualCorner } from "./corner.ts";
import { footOnFace, headingOfFace, pointOffFace } from "./face.ts";
import type { Point } from "./point.ts";
import type { RadiusLimits } from "./radius-limits.ts";
import type { Reverse } from "./reverse.ts";
import { NO_TURN } from "./tolerance.ts";

/**
 * A bend between two legs, before it has a radius: at one corner, or past several whose facets it bridges.
 * Lengths mm along the wall faces; radii on the centre line.
 */
export interface Elbow {
	/** First and last corner; the same for an ordinary bend. */
	readonly first: number;
	readonly last: number;
	/** Wall of the leg on its left and on its right. */
	readonly left: number;
	readonly right: number;
	/** Right positive. */
	readonly turn: Radians;
	/** Where on each wall a bend of no radius would start and end: feet of the virtual corner. */
	readonly footLeft: number;
	readonly footRight: number;
	/** Between straight walls: track that each mm of radius takes from either leg. */
	readonly slope: number;
	/** Beside a bowed wall: the feet of a bend of a given radius; null where there is none so wide. */
	readonly feet: ((radius: number) => Feet | null) | null;
	/** Radii it may have, where these are already known; null where the walls decide. */
	readonly limits: RadiusLimits | null;
	/** Past a short wall between opposite turns: two bends of fixed radius and a straight. */
	readonly reverse: Reverse | null;
}

/** A bend's ends: mm along the left and the right wall face, and the angle turned (right positive). */
export interface Feet {
	readonly left: number;
	readonly right: number;
	readonly turn: Radians;
	readonly centre: Point;
}

/** The bend between legs along two walls whose faces meet at one corner, or past the facets between; null where the legs do not meet. */
export function elbowBetween(
	chain: WallChain,
	projections: readonly number[],
	first: number,
	last: number,
): Elbow | null {
	const left = first - 1;
	const right = last;
	const bowed = (chain.walls[left] as WallFace).bow !== null || (chain.walls[right] as WallFace).bow !== null;
	if (bowed) return first === last ? bowedElbow(chain, projections, first) : null;
	return first === last ? straightElbow(chain, projections, first) : bridgingElbow(chain, projections, first, last);
}

/** A reverse bend as one elbow; its bends have the radius they have. */
export const reverseElbow = (chain: WallChain, first: number, reverse: Reverse): Elbow => ({
	first,
	last: first + 1,
	left: first - 1,
	right: first + 1,
	turn: radians((chain.turns[first] as number) + (chain.turns[first + 1] as number)),
	footLeft: reverse.footLeft,
	footRight: reverse.footRight,
	slope: 0,
	feet: null,
	limits: null,
	reverse,
});

function straightElbow(chain: WallChain, projections: readonly number[], corner: number): Elbow {
	const turn = chain.turns[corner] as Radians;
	const halfTangent = chain.halfTangents[corner] as number;
	const dl = projections[corner - 1] as number;
	const dr = projections[corner] as number;
	return {
		first: corner,
		last: corner,
		left: corner - 1,
		right: corner,
		turn,
		footLeft: (chain.walls[corner - 1] as WallFace).length - footOfVirtualCorner(turn, dl, dr, halfTangent),
		footRight: footOfVirtualCorner(turn, dr, dl, halfTangent),
		slope: Math.abs(halfTangent),
		feet: null,
		limits: null,
		reverse: null,
	};
}

/** Between the lines of two straight legs with facets between them. Only for turns of one sense that sum to under 180°. */
function bridgingElbow(chain: WallChain, projections: readonly number[], first: number, last: number): Elbow | null {
	let turn = 0;
	for (let corner = first; corner <= last; corner++) turn += chain.turns[corner] as number;
	const left = chain.walls[first - 1] as WallFace;
	const right = chain.walls[last] as WallFace;
	const a = pointOffFace(chain, first - 1, 0, projections[first - 1] as number);
	const b = pointOffFace(chain, last, 0, projections[last] as number);
	const across = left.uy * right.ux - left.ux * right.uy;
	if (across === 0) return null;
	const dx = b.x - a.x;
	const dy = b.y - a.y;
	return {
		first,
		last,
		left: first - 1,
		right: last,
		turn: radians(turn),
		footLeft: (dy * right.ux - dx * right.uy) / across,
		footRight: (dy * left.ux - dx * left.uy) / across,
		slope: Math.abs(Math.tan(turn / 2)),
		feet: null,
		limits: null,
		reverse: null,
	};
}

/**
 * Beside a bowed wall. The centre of a bend of radius R lies where the two legs, offset by R to the inside of the turn, meet;
 * of two meeting places the one nearer to the corner. Its feet on the faces are the bend's ends.
 */
function bowedElbow(chain: WallChain, projections: readonly number[], corner: number): Elbow | null {
	const turn = chain.turns[corner] as Radians;
	const side = turn < 0 ? -1 : 1;
	const wallBefore = chain.walls[corner - 1] as WallFace;
	const dl = projections[corner - 1] as number;
	const dr = projections[corner] as number;
	const feet = (radius: number): Feet | null => {
		const centre = meet(chain, corner, dl + side * radius, dr + side * radius);
		if (centre === null) return null;
		const left = footOnFace(chain, corner - 1, centre).at;
		const right = footOnFace(chain, corner, centre).at;
		const turned = wrapHeading(headingOfFace(chain, corner - 1, left) - headingOfFace(chain, corner, right));
		return { left, right, turn: turned, centre };
	};
	const virtual = feet(0);
	if (virtual === null) return null;
	return {
		first: corner,
		last: corner,
		left: corner - 1,
		right: corner,
		turn,
		footLeft: Math.abs(turn) < NO_TURN && dl === dr ? wallBefore.faceLength : virtual.left,
		footRight: Math.abs(turn) < NO_TURN && dl === dr ? 0 : virtual.right,
		slope: 0,
		feet,
		limits: null,
		reverse: null,
	};
}

/** Where curves `offLeft` and `offRight` mm off the two faces at a corner meet, nearest to the corner; null where they do not. */
function meet(chain: WallChain, corner: number, offLeft: number, offRight: number): Point | null {
	const near = chain.corners[corner] as Point;
	const a = chain.walls[corner - 1] as WallFace;
	const b = chain.walls[corner] as WallFace;
	if (a.bow === null && b.bow === null) throw new Error("Broken invariant: neither wall at a bowed elbow is bowed.");
	if (a.bow !== null && b.bow !== null) {
		return nearestOf(near, circleCircle(a.bow.centre, reach(a, offLeft), b.bow.centre, reach(b, offRight)));
	}
	const [straight, off, bowed, offBowed] =
		a.bow === null ? [corner - 1, offLeft, b, offRight] : [corner, offRight, a, offLeft];
	const { ux, uy } = chain.walls[straight] as WallFace;
	const from = pointOffFace(chain, straight, 0, off);
	return nearestOf(near, lineCircle(from, ux, uy, (bowed.bow as { centre: Point }).centre, reach(bowed, offBowed)));
}

/** Radius of the curve `off` mm off a bowed face; negative past its centre, where there is none. */
const reach = ({ bow }: WallFace, off: number): number =>
	bow === null ? Number.NaN : bow.radius - Math.sign(bow.turn) * off;

function nearestOf(near: Point, points: readonly Point[]): Point | null {
	let best: Point | null = null;
	let least = Number.POSITIVE_INFINITY;
	for (const p of points) {
		const away = (p.x - near.x) ** 2 + (p.y - near.y) ** 2;
		if (away < least) {
			least = away;
			best = p;
		}
	}
	return best;
}

function lineCircle(from: Point, ux: number, uy: number, centre: Point, radius: number): Point[] {
	if (!(radius > 0)) return [];
	const along = (centre.x - from.x) * ux + (centre.y - from.y) * uy;
	const off = (centre.x - from.x) * uy - (centre.y - from.y) * ux;
	const root = radius * radius - off * off;
	if (root < 0) return [];
	const half = Math.sqrt(root);
	return [along - half, along + half].map((s) => ({ x: from.x + ux * s, y: from.y + uy * s }));
}

function circleCircle(a: Point, ra: number, b: Point, rb: number): Point[] {
	// Reckoned from the smaller one, which keeps its digits beside a wall that is all but straight.
	if (ra > rb) return circleCircle(b, rb, a, ra);
	const dx = b.x - a.x;
	const dy = b.y - a.y;
	const apart = Math.sqrt(dx * dx + dy * dy);
	if (!(ra > 0 && rb > 0) || apart === 0) return [];
	const along = ((apart - rb) * (apart + rb) + ra * ra) / (2 * apart);
	const root = ra * ra - along * along;
	if (root < 0) return [];
	const aside = Math.sqrt(root);
	const x = a.x + (dx * along) / apart;
	const y = a.y + (dy * along) / apart;
	return [1, -1].map((sign) => ({ x: x + (sign * dy * aside) / apart, y: y - (sign * dx * aside) / apart }));
}
