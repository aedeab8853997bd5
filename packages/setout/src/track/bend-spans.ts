import { type Bend, type Bow, type FittedTrack, goesStraightPast, standOff } from "@baywright/geometry";
import type { BridgedFacet } from "../bay-plan.ts";
import type { TrackSystem } from "../library/system.ts";

/** A stretch of bent track: one bend, both halves of a reverse bend with the straight between, a bow, or several of them that touch. Stations, mm. */
export interface BendSpan {
	readonly start: number;
	readonly length: number;
	/** The corners that it goes round; none for a bow by itself. */
	readonly corners: readonly number[];
	/** The bowed walls that it runs along. */
	readonly walls: readonly number[];
	/** 0 for a reverse bend: it carries no bracket whatever its radii. */
	readonly carryingRadius: number;
}

/** A bow too tight for brackets that carries them all the same, because it is too long to hang free. */
export interface LadenBow {
	readonly bow: Bow;
	/** Without brackets on it this much track would hang free, and the system allows so much, mm. */
	readonly gap: number;
	readonly limit: number;
}

/** Where brackets may go on what is bent. */
export interface Carrying {
	/** Stretches that hold no bracket, left to right. */
	readonly bare: readonly BendSpan[];
	readonly laden: readonly LadenBow[];
}

/** Slack (mm) when stretches are taken to touch, or a distance is compared with a limit. */
const SLACK = 1e-6;

/** The made bends of a track, left to right; sprung ones are not made. */
export function madeBends({ path, bends, bendOf, bendEndOf }: FittedTrack): BendSpan[] {
	return bends.elbows.flatMap(({ reverse }, i): BendSpan[] => {
		const first = path.segments[bendOf[i] as number] as Bend | undefined;
		const last = path.segments[bendEndOf[i] as number] as Bend | undefined;
		if (first === undefined || last === undefined || first.sprung) return [];
		const corners = reverse === null ? first.corners : [...first.corners, ...last.corners];
		const length = last.start + last.length - first.start;
		return [{ start: first.start, length, corners, walls: [], carryingRadius: reverse === null ? first.radius : 0 }];
	});
}

/** The bends that can hold no bracket, bows among them: those under the system's carrying radius, where it has one. */
export function carryingOf(track: FittedTrack, system: TrackSystem): Carrying {
	const { carryRadius } = system.bracket;
	const isTight = (radius: number) => carryRadius === null || radius < carryRadius;
	const bends = madeBends(track).filter(({ carryingRadius }) => isTight(carryingRadius));
	const bows = bowsIn(track).filter(({ radius }) => isTight(radius));
	if (bows.length === 0) return { bare: bends, laden: [] };

	const bowOf = new Map(bows.map((bow) => [bow.wall, bow]));
	const spans = [...bends, ...bows.map(spanOfBow)].sort((a, b) => a.start - b.start);
	const bare: BendSpan[] = [];
	const laden: LadenBow[] = [];
	for (const run of touching(spans)) {
		const whole = joined(run);
		const over = whole.walls.length === 0 ? null : tooLongToHang(whole, track.path.length, system);
		if (over === null) {
			if (whole.walls.length > 0) bare.push(whole);
			else bare.push(...run);
			continue;
		}
		bare.push(...run.filter(({ walls }) => walls.length === 0));
		for (const wall of whole.walls) laden.push({ bow: bowOf.get(wall) as Bow, ...over });
	}
	return { bare, laden };
}

export const bowsIn = ({ path }: FittedTrack): Bow[] => path.segments.filter((segment) => segment.kind === "bow");

/** From the middle of the bracket beside a bend to the bend, mm, where there is room. */
export const besideBend = ({ bracket, straightBesideBend }: TrackSystem): number =>
	Math.max(bracket.width / 2, straightBesideBend / 2);

/**
 * What would hang free if a stretch with a bow in it held no bracket, where that is more than the system allows: between the brackets
 * beside it, or from the cut end if the track ends on it. A leg along a wall is meant to hang on that wall; so where the system
 * sets no limit for bends its usual spacing is the limit.
 */
function tooLongToHang({ start, length }: BendSpan, whole: number, system: TrackSystem) {
	const { bracket, endTakeUp } = system;
	const off = besideBend(system);
	const atLeft = start - off < endTakeUp + bracket.width / 2;
	const atRight = start + length + off > whole - endTakeUp - bracket.width / 2;
	const limit = bracket.acrossBendMax ?? bracket.maxSpacing;
	if (atLeft && atRight) return { gap: whole - 2 * endTakeUp, limit };
	if (atLeft) return { gap: start + length + off - endTakeUp, limit: bracket.endMax };
	if (atRight) return { gap: whole - endTakeUp - start + off, limit: bracket.endMax };
	const gap = length + 2 * off;
	return gap > limit + SLACK ? { gap, limit } : null;
}

const spanOfBow = ({ start, length, wall, radius }: Bow): BendSpan => ({
	start,
	length,
	corners: [],
	walls: [wall],
	carryingRadius: radius,
});

/** Stretches that follow each other without straight track between, together. */
function touching(spans: readonly BendSpan[]): BendSpan[][] {
	const runs: BendSpan[][] = [];
	for (const span of spans) {
		const before = runs.at(-1)?.at(-1);
		if (before !== undefined && span.start - before.start - before.length < SLACK) runs.at(-1)?.push(span);
		else runs.push([span]);
	}
	return runs;
}

function joined(run: readonly BendSpan[]): BendSpan {
	const first = run[0] as BendSpan;
	const last = run.at(-1) as BendSpan;
	return {
		start: first.start,
		length: last.start + last.length - first.start,
		corners: run.flatMap(({ corners }) => corners),
		walls: run.flatMap(({ walls }) => walls),
		carryingRadius: Math.min(...run.map(({ carryingRadius }) => carryingRadius)),
	};
}

/** The facets that bends leave out; walls that the track goes straight past have brackets of their own. */
export function bridgedFacets({ chain, projections, bends, radii }: FittedTrack): BridgedFacet[] {
	return bends.elbows.flatMap((elbow, i) => {
		if (elbow.reverse !== null || elbow.first === elbow.last || goesStraightPast(elbow)) return [];
		return Array.from({ length: elbow.last - elbow.first }, (_, j) => {
			const wall = elbow.first + j;
			return { wall, standOff: standOff(chain, projections, elbow, radii[i] as number, wall) };
		});
	});
}
