import { type Radians, radians, wrapHeading } from "./angle.ts";
import type { WallChain, WallFace } from "./chain.ts";
import { footOfVirtualCorner } from "./corner.ts";
import { footOnFace, headingOfFace, pointOffFace } from "./face.ts";
import { nearTangentFeet } from "./near-tangent.ts";
import type { Point } from "./point.ts";
import type { RadiusLimits } from "./radius-limits.ts";
import type { Reverse } from "./reverse.ts";
import { NEARLY_TANGENT, NO_TURN, SLIGHT_TURN } from "./tolerance.ts";

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
	readonly limits: KnownLimits | null;
	/** Past a short wall between opposite turns: two bends of fixed radius and a straight. */
	readonly reverse: Reverse | null;
}

/** Does the track go straight past the walls between two corners, or all but, with nothing to be bent there? */
export const goesStraightPast = ({ first, last, turn, reverse }: Elbow): boolean =>
	reverse === null && first < last && Math.abs(turn) < SLIGHT_TURN;

/** Radii that a bend may have, and of these one that its legs have room for whatever the others take. */
export interface KnownLimits extends RadiusLimits {
	readonly sure: number;
}

/** A bend's ends: mm along the left and the right wall face, and the angle turned (right positive). */
export interface Feet {
	readonly left: number;
	readonly right: number;
	readonly turn: Radians;
	readonly centre: Point;
}

/** Ends of a bend of this radius between straight walls, mm along their faces. */
export function straightEnds({ footLeft, footRight, slope }: Elbow, radius: number) {
	const tangent = slope * radius;
	return { left: footLeft - tangent, right: footRight + tangent };
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

/** Between the lines of two straight legs, whatever lies between them. Only for turns that sum to under 180°. */
export function bridgingElbow(
	chain: WallChain,
	projections: readonly number[],
	first: number,
	last: number,
): Elbow | null {
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
 * Beside a bowed wall. The centre of a bend of radius R lies where the two legs, offset by R to the inside of the turn, meet; its feet on
 * the faces are the bend's ends. Of two meeting places it is the one from which the bend turns the right way, nearest to the corner.
 */
function bowedElbow(chain: WallChain, projections: readonly number[], corner: number): Elbow | null {
	const turn = chain.turns[corner] as Radians;
	const side = turn < 0 ? -1 : 1;
	const dl = projections[corner - 1] as number;
	const dr = projections[corner] as number;
	const elbow = {
		first: corner,
		last: corner,
		left: corner - 1,
		right: corner,
		turn,
		slope: 0,
		limits: null,
		reverse: null,
	};
	const { faceLength } = chain.walls[corner - 1] as WallFace;
	if (Math.abs(turn) < NO_TURN && dl === dr) return { ...elbow, footLeft: faceLength, footRight: 0, feet: null };

	if (Math.abs(turn) < NEARLY_TANGENT && dl === dr) {
		const near = (radius: number) => nearTangentFeet(chain, corner, dl, radius);
		return { ...elbow, footLeft: faceLength, footRight: 0, feet: near };
	}
	const feet = (radius: number): Feet | null => {
		let best: Feet | null = null;
		let least = Number.POSITIVE_INFINITY;
		for (const centre of meetings(chain, corner, dl + side * radius, dr + side * radius)) {
			const left = footOnFace(chain, corner - 1, centre).at;
			const right = footOnFace(chain, corner, centre).at;
			const turned = wrapHeading(headingOfFace(chain, corner - 1, left) - headingOfFace(chain, corner, right));
			const away = Math.abs(left - faceLength) + Math.abs(right);
			if (turned * side < 0 || away >= least) continue;
			least = away;
			best = { left, right, turn: turned, centre };
		}
		return best;
	};
	const virtual = feet(0) ?? feet(1);
	return virtual === null ? null : { ...elbow, footLeft: virtual.left, footRight: virtual.right, feet };
}

/** Where curves `offLeft` and `offRight` mm off the two faces at a corner meet. */
function meetings(chain: WallChain, corner: number, offLeft: number, offRight: number): Point[] {
	const a = chain.walls[corner - 1] as WallFace;
	const b = chain.walls[corner] as WallFace;
	if (a.bow !== null && b.bow !== null)
		return circleCircle(a.bow.centre, reach(a, offLeft), b.bow.centre, reach(b, offRight));
	const [straight, off, bowed, offBowed] =
		a.bow === null ? [corner - 1, offLeft, b, offRight] : [corner, offRight, a, offLeft];
	if (bowed.bow === null) throw new Error("Broken invariant: neither wall at a bowed elbow is bowed.");
	const { ux, uy } = chain.walls[straight] as WallFace;
	const from = pointOffFace(chain, straight, 0, off);
	return lineCircle(from, ux, uy, bowed.bow.centre, reach(bowed, offBowed));
}

/** Radius of the curve `off` mm off a bowed face; negative past its centre, where there is none. */
const reach = ({ bow }: WallFace, off: number): number =>
	bow === null ? Number.NaN : bow.radius - Math.sign(bow.turn) * off;

/** Curves that miss each other by less than this part of their reach touch: rounding, where they are tangent. */
const TOUCH = 1e-12;

function lineCircle(from: Point, ux: number, uy: number, centre: Point, radius: number): Point[] {
	if (!(radius > 0)) return [];
	const along = (centre.x - from.x) * ux + (centre.y - from.y) * uy;
	const off = (centre.x - from.x) * uy - (centre.y - from.y) * ux;
	const root = (radius - off) * (radius + off);
	if (root < -TOUCH * radius * radius) return [];
	const half = Math.sqrt(Math.max(0, root));
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
	const root = (ra - along) * (ra + along);
	if (root < -TOUCH * rb * ra) return [];
	const aside = Math.sqrt(Math.max(0, root));
	const x = a.x + (dx * along) / apart;
	const y = a.y + (dy * along) / apart;
	return [1, -1].map((sign) => ({ x: x + (sign * dy * aside) / apart, y: y - (sign * dx * aside) / apart }));
}
