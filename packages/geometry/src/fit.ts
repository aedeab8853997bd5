import type { Degrees, Radians } from "./angle.ts";
import { bowFaults, endFaults, unevenSlightTurns } from "./before-fitting.ts";
import { type BendPlan, planBends } from "./bend-plan.ts";
import { bridgeFacets } from "./bridge.ts";
import type { WallChain } from "./chain.ts";
import type { Corridor } from "./corridor.ts";
import type { Elbow } from "./elbow.ts";
import { layTrack } from "./lay.ts";
import { found, type Outcome } from "./outcome.ts";
import type { TrackPath } from "./path.ts";
import { greatestRadius, shareRadii, starvedLegs, tangents } from "./share.ts";
import { smoothBends } from "./smoothest.ts";
import { SPRUNG_RADIUS } from "./tolerance.ts";

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
	/** Least distance from the centre line to any wall face. */
	readonly clearance: number;
	/** Given, the smoothest track inside it is fitted, as few bends as possible; otherwise the track follows the walls. */
	readonly corridor?: Corridor | null;
	/** Radii that must be kept exactly, by corner. */
	readonly setRadii: ReadonlyMap<number, number>;
}

export interface FittedTrack {
	readonly chain: WallChain;
	readonly projections: readonly number[];
	readonly path: TrackPath;
	readonly bends: BendPlan;
	/** Radius of each bend, mm, left to right; 0 where there is no turn. */
	readonly radii: readonly number[];
	/** Index in the path of each leg (`bends.legs`) and of each bend (`bends.elbows`); −1 where dropped. */
	readonly legOf: readonly number[];
	readonly bendOf: readonly number[];
	/** The same for the last segment of each bend: another one only for a reverse bend. */
	readonly bendEndOf: readonly number[];
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
	/** The legs along the two walls at a corner never meet, however they are rounded. */
	| { readonly kind: "legs-do-not-meet"; readonly corner: number }
	/** A bowed wall whose leg would be tighter than the track bends. */
	| { readonly kind: "bow-too-tight"; readonly wall: number; readonly radius: number; readonly least: number }
	/** Round this corner (or this run of corners) no bend of the least radius keeps its clearance. */
	| {
			readonly kind: "no-room-round-corner";
			readonly corner: number;
			readonly last: number;
			readonly turn: Radians;
			readonly radius: number;
			readonly greatest: number;
	  }
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
 * Fits a track of legs and bends along `chain`, its centre line `projections[wall]` mm off each wall face. Every bend gets the same
 * share of the way from its least to its preferred radius as far as the legs allow; radii set by the user are taken off first and
 * kept. Facets too short for the bends at their ends are bridged, so that as many legs as possible are kept. Slight turns (under
 * 3°) get a sprung bend, as wide as the legs leave room for once all made bends have theirs, up to 5 m.
 */
export function fitTrack(
	chain: WallChain,
	projections: readonly number[],
	ends: TrackEnds,
	rule: FitRule,
): Outcome<FittedTrack, FitFault> {
	const atEnds = endFaults(chain, ends);
	if (atEnds.length > 0) return { ok: false, faults: atEnds };
	const bows = chain.anyBow ? bowFaults(chain, projections, ends, rule) : [];
	const uneven = unevenSlightTurns(chain, projections, ends);
	if (bows.length > 0) return { ok: false, faults: [...bows, ...uneven] };

	const corridor = rule.corridor ?? null;
	const smooth = corridor === null ? null : fitSmoothest(chain, projections, ends, rule, corridor);
	if (smooth !== null) return found(smooth);
	if (uneven.length > 0) return { ok: false, faults: uneven };

	const whole = fitRadii(planBends(chain, projections, ends, rule, null));
	if (whole.ok) return found(layTrack(chain, projections, ends, whole.value.bends, whole.value.radii));
	const bridges = whole.faults.some(mayBeBridged) ? bridgeFacets(chain, projections, ends, rule) : null;
	if (bridges === null) return whole;
	const bridged = fitRadii(planBends(chain, projections, ends, rule, bridges));
	if (!bridged.ok) return whole;
	return found(layTrack(chain, projections, ends, bridged.value.bends, bridged.value.radii));
}

function fitSmoothest(
	chain: WallChain,
	given: readonly number[],
	ends: TrackEnds,
	rule: FitRule,
	corridor: Corridor,
): FittedTrack | null {
	const smooth = smoothBends(chain, given, ends, rule, corridor);
	if (smooth === null) return null;
	const { projections, elbows } = smooth;
	const fitted = fitRadii(planBends(chain, projections, ends, rule, elbows));
	return fitted.ok ? layTrack(chain, projections, ends, fitted.value.bends, fitted.value.radii) : null;
}

const mayBeBridged = ({ kind }: FitFault): boolean => kind === "leg-too-short" || kind === "no-room-round-corner";

interface FittedRadii {
	readonly bends: BendPlan;
	readonly radii: readonly number[];
}

function fitRadii(bends: BendPlan | FitFault[]): Outcome<FittedRadii, FitFault> {
	if (Array.isArray(bends)) return { ok: false, faults: bends };
	const plan = bends as BendPlan;
	const made = shareRadii(plan);
	if (made === null || plan.set.size > 0) {
		const faults = faultsOfRadii(plan);
		if (faults.length > 0) return { ok: false, faults };
	}
	if (made === null) throw new Error("Broken invariant: no radii were shared out and no leg is too short.");
	return found({ bends: plan, radii: plan.sprung.size > 0 ? spring(plan, made) : made });
}

/** Set radii that are too tight or too wide, and legs too short whatever the radii. */
function faultsOfRadii(bends: BendPlan): FitFault[] {
	const faults: FitFault[] = [];
	const { elbows, legs, least, floor, ceiling } = bends;
	const corner = (bend: number) => (elbows[bend] as Elbow).first;
	const blamed = new Set<number>();
	for (const i of bends.set) {
		const radius = least[i] as number;
		if (radius < (floor[i] as number))
			faults.push({ kind: "radius-below-least", corner: corner(i), radius, least: floor[i] as number });
		else if (radius > (ceiling[i] as number)) blamed.add(i);
	}
	const hopeless = new Set(starvedLegs({ ...bends, least: floor }));
	for (const leg of starvedLegs(bends)) {
		if (hopeless.has(leg)) {
			const length = bends.length[leg] as number;
			const needed = length - (bends.room[leg] as number) + tangentsAt(bends, leg);
			faults.push({
				kind: "leg-too-short",
				wall: legs[leg] as number,
				length,
				needed,
				gain: gainPerProjection(bends, leg),
			});
		} else for (const bend of [leg - 1, leg]) if (bends.set.has(bend)) blamed.add(bend);
	}
	for (const bend of blamed) {
		const greatest = greatestRadius(bends, least, bend);
		const floorHere = floor[bend] as number;
		const room = greatest >= floorHere ? greatest : greatestRadius(bends, floor, bend);
		const most = Math.max(Math.min(room, ceiling[bend] as number), floorHere);
		const radius = least[bend] as number;
		// Is its neighbour alone to blame, which leaves it not even its least?
		if (radius <= most) continue;
		faults.push({ kind: "radius-too-large", corner: corner(bend), radius, greatest: most });
	}
	return faults;
}

function tangentsAt(bends: BendPlan, leg: number): number {
	return tangents(bends, bends.floor, leg);
}

/** A leg ends at virtual corners d·tan(turn/2) in from each of its wall's corners, so it grows as the projection d shrinks. */
function gainPerProjection({ elbows }: BendPlan, leg: number): number {
	const slopeOf = (elbow: Elbow | undefined) => (elbow === undefined ? 0 : Math.sign(elbow.turn) * elbow.slope);
	return slopeOf(elbows[leg - 1]) + slopeOf(elbows[leg]);
}

/** Widens the slight turns into what the made bends have left. */
function spring(bends: BendPlan, made: readonly number[]): number[] {
	const goal = made.map((radius, i) => {
		// Beside a bow a wide bend would swallow the bow itself: there it stays at its least.
		const besideBow = (bends.elbows[i] as Elbow).feet !== null;
		if (!bends.sprung.has(i) || radius === 0 || besideBow) return radius;
		return Math.max(radius, Math.min(SPRUNG_RADIUS, bends.ceiling[i] as number));
	});
	return shareRadii({ ...bends, least: made, goal }) ?? [...made];
}
