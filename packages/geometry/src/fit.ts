import { type Degrees, toDegrees } from "./angle.ts";
import { type BendPlan, planBends } from "./bend-plan.ts";
import type { WallChain, WallFace } from "./chain.ts";
import { layTrack } from "./lay.ts";
import { found, type Outcome } from "./outcome.ts";
import type { TrackPath } from "./path.ts";
import { greatestRadius, shareRadii, starvedLegs } from "./share.ts";
import { LENGTH_SLACK, SLIGHT_TURN, SPRUNG_RADIUS } from "./tolerance.ts";

/** A place along a wall face, mm from its left corner. */
export interface WallPlace {
	readonly wall: number;
	readonly at: number;
}

/** Where a track starts and ends. */
export interface TrackEnds {
	readonly start: WallPlace;
	readonly end: WallPlace;
}

/** What a track can do. Lengths mm, radii on the centre line. */
export interface FitRule {
	readonly leastRadius: { readonly internal: number; readonly external: number };
	/** Radius of a bend that has room to spare. */
	readonly preferredRadius: number;
	/** Straight that must follow each end of a bend on its leg. */
	readonly straightBesideBend: number;
	/** Straight that the hardware at each end of the track takes up. */
	readonly endStraight: number;
	/** Radii that must be kept exactly, by corner. */
	readonly setRadii: ReadonlyMap<number, number>;
}

export interface FittedTrack {
	readonly chain: WallChain;
	readonly projections: readonly number[];
	readonly path: TrackPath;
	readonly bends: BendPlan;
	/** Radius at each corner between the track's ends, mm, left to right; 0 where there is no turn. */
	readonly radii: readonly number[];
	/** Index in the path of the straight along each wall from start to end, and of the bend at each corner; −1 where dropped. */
	readonly straightOf: readonly number[];
	readonly bendOf: readonly number[];
}

/** Why a track cannot be fitted. Lengths mm, angles degrees. */
export type FitFault =
	| {
			readonly kind: "end-off-wall";
			readonly end: "left" | "right";
			readonly wall: number;
			readonly at: number;
			/** Length of that wall; 0 where there is no such wall. */
			readonly length: number;
	  }
	| { readonly kind: "ends-reversed" }
	| { readonly kind: "external-corner"; readonly corner: number; readonly angle: Degrees }
	| { readonly kind: "bowed-wall"; readonly wall: number; readonly rise: number }
	| {
			readonly kind: "projection-change-at-slight-turn";
			readonly corner: number;
			readonly left: number;
			readonly right: number;
			readonly turn: Degrees;
	  }
	| { readonly kind: "radius-below-least"; readonly corner: number; readonly radius: number; readonly least: number }
	| {
			readonly kind: "radius-too-large";
			readonly corner: number;
			readonly radius: number;
			/** The largest that would fit, its neighbours as they are; at least the least radius. */
			readonly greatest: number;
	  }
	| {
			readonly kind: "leg-too-short";
			readonly wall: number;
			/** Length of the leg between its virtual corners or the track's end, and what its bends and straights need at their least radii. */
			readonly length: number;
			readonly needed: number;
			/** What its length would grow by for each mm less projection all round. */
			readonly gain: number;
	  };

/**
 * Fits a track of straight legs and bends along `chain`, its centre line `projections[wall]` mm off each wall face.
 * Every bend gets the same share of the way from its least to its preferred radius as far as the legs allow; radii set by
 * the user are taken off first and kept. Slight turns (under 3°) get a sprung bend, as wide as the legs leave room for once
 * all made bends have theirs, up to 5 m.
 */
export function fitTrack(
	chain: WallChain,
	projections: readonly number[],
	ends: TrackEnds,
	rule: FitRule,
): Outcome<FittedTrack, FitFault> {
	const before = faultsBeforeFitting(chain, projections, ends);
	if (before !== null) return { ok: false, faults: before };

	const bends = planBends(chain, projections, ends, rule);
	const made = shareRadii(bends);
	if (made === null || bends.set.size > 0) {
		const faults = faultsOfRadii(chain, bends);
		if (faults.length > 0) return { ok: false, faults };
	}
	if (made === null) throw new Error("Broken invariant: no radii were shared out and no leg is too short.");
	const radii = bends.sprung.size > 0 ? spring(bends, made) : made;
	return found(layTrack(chain, projections, ends.start, bends, radii));
}

function faultsBeforeFitting(chain: WallChain, projections: readonly number[], ends: TrackEnds): FitFault[] | null {
	const { start, end } = ends;
	const offLeft = offWall(chain, "left", start);
	const offRight = offWall(chain, "right", end);
	if (offLeft !== null || offRight !== null) return [offLeft, offRight].filter((fault) => fault !== null);
	const reversed = start.wall > end.wall || (start.wall === end.wall && end.at - start.at <= LENGTH_SLACK);
	if (reversed) return [{ kind: "ends-reversed" }];

	const faults: FitFault[] = [];
	for (let wall = start.wall; wall <= end.wall; wall++) {
		const { rise } = chain.walls[wall] as WallFace;
		if (rise !== 0) faults.push({ kind: "bowed-wall", wall, rise });
		if (wall === start.wall) continue;
		const turn = chain.turns[wall] as number;
		const left = projections[wall - 1] as number;
		const right = projections[wall] as number;
		if (turn <= -SLIGHT_TURN) faults.push({ kind: "external-corner", corner: wall, angle: toDegrees(Math.PI - turn) });
		if (left !== right && Math.abs(turn) < SLIGHT_TURN)
			faults.push({
				kind: "projection-change-at-slight-turn",
				corner: wall,
				left,
				right,
				turn: toDegrees(turn),
			});
	}
	return faults.length > 0 ? faults : null;
}

function offWall(chain: WallChain, end: "left" | "right", { wall, at }: WallPlace): FitFault | null {
	const length = chain.walls[wall]?.length ?? 0;
	const onWall = length > 0 && at >= -LENGTH_SLACK && at <= length + LENGTH_SLACK;
	return onWall ? null : { kind: "end-off-wall", end, wall, at, length };
}

/** Set radii that are too tight or too wide, and legs too short whatever the radii. */
function faultsOfRadii(chain: WallChain, bends: BendPlan): FitFault[] {
	const faults: FitFault[] = [];
	const { first, least, floor } = bends;
	for (const i of bends.set)
		if ((least[i] as number) < (floor[i] as number))
			faults.push({
				kind: "radius-below-least",
				corner: first + 1 + i,
				radius: least[i] as number,
				least: floor[i] as number,
			});

	const starved = starvedLegs(bends);
	const hopeless = new Set(starvedLegs({ ...bends, least: floor }));
	const blamed = new Set<number>();
	for (const leg of starved) {
		const wall = first + leg;
		if (hopeless.has(leg)) {
			const length = bends.length[leg] as number;
			const needed = length - (bends.room[leg] as number) + tangentsAt(bends, leg);
			faults.push({ kind: "leg-too-short", wall, length, needed, gain: gainPerProjection(chain, bends, leg) });
		} else for (const bend of [leg - 1, leg]) if (bends.set.has(bend)) blamed.add(bend);
	}
	for (const bend of blamed) {
		const greatest = greatestRadius(bends, least, bend);
		const floorHere = floor[bend] as number;
		const most = Math.max(greatest >= floorHere ? greatest : greatestRadius(bends, floor, bend), floorHere);
		const radius = least[bend] as number;
		// Is its neighbour alone to blame, which leaves it not even its least?
		if (radius <= most) continue;
		faults.push({ kind: "radius-too-large", corner: first + 1 + bend, radius, greatest: most });
	}
	return faults;
}

function tangentsAt({ slope, floor }: BendPlan, leg: number): number {
	const left = leg > 0 ? (slope[leg - 1] as number) * (floor[leg - 1] as number) : 0;
	return left + (leg < slope.length ? (slope[leg] as number) * (floor[leg] as number) : 0);
}

/** A leg ends at virtual corners d·tan(turn/2) in from each of its wall's corners, so it grows as the projection d shrinks. */
function gainPerProjection(chain: WallChain, bends: BendPlan, leg: number): number {
	const wall = bends.first + leg;
	const left = leg > 0 ? (chain.halfTangents[wall] as number) : 0;
	return left + (leg < bends.slope.length ? (chain.halfTangents[wall + 1] as number) : 0);
}

/** Widens the slight turns into what the made bends have left. */
function spring(bends: BendPlan, made: readonly number[]): number[] {
	const goal = made.map((radius, i) => (bends.sprung.has(i) && radius > 0 ? Math.max(radius, SPRUNG_RADIUS) : radius));
	return shareRadii({ room: bends.room, slope: bends.slope, least: made, goal }) ?? [...made];
}
