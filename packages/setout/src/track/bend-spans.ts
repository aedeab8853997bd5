import { type Bend, type FittedTrack, standOff } from "@baywright/geometry";
import type { BridgedFacet } from "../bay-plan.ts";
import type { TrackSystem } from "../library/system.ts";

/** A stretch of made bend: one bend, or both halves of a reverse bend with the straight between. Stations, mm. */
export interface BendSpan {
	readonly start: number;
	readonly length: number;
	readonly corners: readonly number[];
	/** 0 for a reverse bend: it carries no bracket whatever its radii. */
	readonly carryingRadius: number;
}

/** The made bends of a track, left to right; sprung ones are not made. */
export function madeBends({ path, bends, bendOf, bendEndOf }: FittedTrack): BendSpan[] {
	return bends.elbows.flatMap(({ reverse }, i): BendSpan[] => {
		const first = path.segments[bendOf[i] as number] as Bend | undefined;
		const last = path.segments[bendEndOf[i] as number] as Bend | undefined;
		if (first === undefined || last === undefined || first.sprung) return [];
		const corners = reverse === null ? first.corners : [...first.corners, ...last.corners];
		const length = last.start + last.length - first.start;
		return [{ start: first.start, length, corners, carryingRadius: reverse === null ? first.radius : 0 }];
	});
}

/** The made bends that can hold no bracket: those under the system's carrying radius, where it has one. */
export function bendsWithoutBrackets(track: FittedTrack, { bracket: { carryRadius } }: TrackSystem): BendSpan[] {
	return madeBends(track).filter(({ carryingRadius }) => carryRadius === null || carryingRadius < carryRadius);
}

/** The facets that bends leave out. */
export function bridgedFacets({ chain, projections, bends, radii }: FittedTrack): BridgedFacet[] {
	return bends.elbows.flatMap((elbow, i) => {
		if (elbow.reverse !== null || elbow.first === elbow.last) return [];
		return Array.from({ length: elbow.last - elbow.first }, (_, j) => {
			const wall = elbow.first + j;
			return { wall, standOff: standOff(chain, projections, elbow, radii[i] as number, wall) };
		});
	});
}
