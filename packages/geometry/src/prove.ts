import { wrapHeading } from "./angle.ts";
import type { WallChain } from "./chain.ts";
import { approach, crossingPoints } from "./curve.ts";
import { faceCurve, footOnFace } from "./face.ts";
import type { TrackEnds } from "./fit.ts";
import type { Segment, TrackPath } from "./path.ts";
import type { Point } from "./point.ts";
import { JOIN_HEADING, JOIN_POSITION, LENGTH_SLACK, LOOP } from "./tolerance.ts";

/** What a fitted path must keep to. Lengths mm. */
export interface ProofRule {
	readonly leastRadius: { readonly internal: number; readonly external: number };
	/** Least distance from the centre line to any wall face. */
	readonly clearance: number;
	readonly projections: readonly number[];
	readonly ends: TrackEnds;
}

/** A law that a path breaks: which, at which segment (−1 for the whole path), and by what figure (mm or radians). */
export interface BrokenLaw {
	readonly law:
		| "not-finite"
		| "position-joins"
		| "heading-joins"
		| "segment-holds-together"
		| "stations-add-up"
		| "radius-at-least"
		| "clear-of-walls"
		| "does-not-cross-itself"
		| "follows-its-wall"
		| "ends-on-their-walls";
	readonly segment: number;
	readonly figure: number;
}

/**
 * Checks a path against every law of a fitted track, by plain comparison of everything with everything.
 * Empty where all hold. A plan that fails is a defect, not bad input.
 */
export function prove(path: TrackPath, chain: WallChain, rule: ProofRule): BrokenLaw[] {
	const broken: BrokenLaw[] = [];
	const law = (name: BrokenLaw["law"], segment: number, figure: number, limit: number) => {
		if (Number.isNaN(figure)) broken.push({ law: "not-finite", segment, figure });
		else if (figure > limit) broken.push({ law: name, segment, figure });
	};
	let station = 0;
	path.segments.forEach((segment, i) => {
		law("stations-add-up", i, Math.abs(segment.start - station), JOIN_POSITION);
		station += segment.length;
		const end = wholeInItself(segment);
		law("segment-holds-together", i, end.off, JOIN_POSITION);
		const next = path.segments[i + 1];
		if (next !== undefined) {
			law("position-joins", i, apart(segment.to, next.from), JOIN_POSITION);
			law("heading-joins", i, Math.abs(wrapHeading(end.heading - next.heading)), JOIN_HEADING);
		}
		if (segment.kind !== "straight") {
			const least = segment.turn > 0 ? rule.leastRadius.internal : rule.leastRadius.external;
			law("radius-at-least", i, least - segment.radius, LENGTH_SLACK);
		}
		if (segment.kind === "bow" || (segment.kind === "straight" && !segment.crosses))
			law("follows-its-wall", i, offItsWall(segment, segment.wall, chain, rule), JOIN_POSITION);
		chain.walls.forEach((_, wall) => {
			law("clear-of-walls", i, rule.clearance - approach(segment, faceCurve(chain, wall)).distance, JOIN_POSITION);
		});
		path.segments.slice(i + 1).forEach((later, j) => {
			const joined = later.start - segment.start - segment.length < LOOP;
			law("does-not-cross-itself", i, joined ? 0 : crossingPoints(segment, later).length * (j + 1), 0);
		});
	});
	law("stations-add-up", -1, Math.abs(path.length - station), JOIN_POSITION);
	const { start, end } = rule.ends;
	law("ends-on-their-walls", 0, offPlace(path.segments[0]?.from, start, chain, rule), JOIN_POSITION);
	law(
		"ends-on-their-walls",
		path.segments.length - 1,
		offPlace(path.segments.at(-1)?.to, end, chain, rule),
		JOIN_POSITION,
	);
	return broken;
}

/** How far a segment's own figures are from one another (mm), and the heading with which it ends. */
function wholeInItself(segment: Segment): { readonly off: number; readonly heading: number } {
	const { from, to, length, heading } = segment;
	if (segment.kind === "straight") {
		const reached = { x: from.x + Math.cos(heading) * length, y: from.y + Math.sin(heading) * length };
		return { off: apart(reached, to), heading };
	}
	const { centre, radius, turn } = segment;
	const side = Math.sign(turn) * radius;
	const ending = heading - turn;
	const centreFromStart = { x: from.x + Math.sin(heading) * side, y: from.y - Math.cos(heading) * side };
	const centreFromEnd = { x: to.x + Math.sin(ending) * side, y: to.y - Math.cos(ending) * side };
	const off = Math.max(
		apart(centreFromStart, centre),
		apart(centreFromEnd, centre),
		Math.abs(length - radius * Math.abs(turn)),
	);
	return { off, heading: ending };
}

function offItsWall({ from, to }: Segment, wall: number, chain: WallChain, { projections }: ProofRule): number {
	const projection = projections[wall] as number;
	return Math.max(...[from, to].map((p) => Math.abs(footOnFace(chain, wall, p).off - projection)));
}

function offPlace(
	p: Point | undefined,
	{ wall, at }: { readonly wall: number; readonly at: number },
	chain: WallChain,
	{ projections }: ProofRule,
): number {
	if (p === undefined) return Number.NaN;
	const foot = footOnFace(chain, wall, p);
	return Math.hypot(foot.at - at, foot.off - (projections[wall] as number));
}

const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
