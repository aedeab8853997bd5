import type { WallChain, WallFace } from "./chain.ts";
import { type Corridor, corridorLimits } from "./corridor.ts";
import { type Elbow, elbowBetween, reverseElbow } from "./elbow.ts";
import type { FitRule } from "./fit.ts";
import { radiusLimits } from "./radius-limits.ts";
import { reverseBetween } from "./reverse.ts";
import { NO_TURN, SLIGHT_TURN } from "./tolerance.ts";

/** Most corners that one bend may go round: more than any bay has facets in a row. */
export const MOST_CORNERS = 24;

/** Facets are bridged up to this turn in all (rad): at 180° the outer legs no longer meet. */
const MOST_TURN = (175 * Math.PI) / 180;

/** A bend that could be, between legs of known projection, and the radii that it could have there. */
export interface Candidate {
	readonly elbow: Elbow;
	/** Projection of the leg on its left and on its right, mm. */
	readonly offLeft: number;
	readonly offRight: number;
	readonly least: number;
	readonly greatest: number;
	/** Its radius is not open: the user set it, nothing is bent, or it is a reverse bend. */
	readonly fixed: boolean;
	/** Straight that it asks for beside it on either leg. */
	readonly straight: number;
	/** Bends that have to be made: none where the track is straight or springs, two for a reverse bend. */
	readonly made: number;
}

/** Last corners of the runs from `first` on that one bend could go round: corners of one sense, and slight ones. */
export function* runsFrom(chain: WallChain, first: number, until: number): Generator<number> {
	let turn = 0;
	let sense = 0;
	for (let last = first; last <= until && last - first < MOST_CORNERS; last++) {
		const here = chain.turns[last] as number;
		// A slight turn either way hardly shows: it belongs to whatever run it is in.
		const senseHere = Math.abs(here) < SLIGHT_TURN ? 0 : Math.sign(here);
		if (last > first && (senseHere * sense < 0 || (chain.walls[last - 1] as WallFace).bow !== null)) return;
		turn += here;
		sense ||= senseHere;
		if (last > first && Math.abs(turn) > MOST_TURN) return;
		if (last === first || sense === 0 || Math.sign(turn) === sense) yield last;
	}
}

/** The bend round the corners from `first` to `last`, as the walls or a corridor along them let it be; null where there is none. */
export function bendCandidate(
	chain: WallChain,
	projections: readonly number[],
	first: number,
	last: number,
	{ leastRadius, clearance, straightBesideBend, setRadii }: FitRule,
	corridor: Corridor | null,
): Candidate | null {
	const elbow = elbowBetween(chain, projections, first, last);
	if (elbow === null) return null;
	const { turn } = elbow;
	const offLeft = projections[elbow.left] as number;
	const offRight = projections[elbow.right] as number;
	const slight = Math.abs(turn) < SLIGHT_TURN;
	// Where two lines hardly turn they may meet anywhere: in a corridor that is for `straightPast` to judge.
	if (slight && corridor !== null && (first < last || offLeft !== offRight)) return null;
	const straight = slight ? 0 : straightBesideBend;
	const made = slight ? 0 : 1;
	if (Math.abs(turn) < NO_TURN) return { elbow, offLeft, offRight, least: 0, greatest: 0, fixed: true, straight, made };

	const tightest = turn > 0 ? leastRadius.internal : leastRadius.external;
	const inCorridor = corridor !== null && elbow.feet === null && !slight;
	const limits = inCorridor
		? corridorLimits(chain, projections, elbow, corridor, clearance, tightest)
		: radiusLimits(chain, projections, elbow, clearance);
	const { greatest } = limits;
	const floor = Math.max(tightest, limits.least);
	if (!(floor <= greatest)) return null;
	const set = slight ? [] : setBetween(setRadii, first, last);
	const least = Math.max(floor, ...set);
	if (set.length > 1 || !(least <= greatest)) return null;
	return {
		elbow: inCorridor ? { ...elbow, limits: { least: floor, greatest, sure: 0 } } : elbow,
		offLeft,
		offRight,
		least,
		greatest,
		fixed: slight || set.length > 0,
		straight,
		made,
	};
}

/** Radii that the user has set at these corners: two of them are two bends, and never bridged into one. */
export function setBetween(setRadii: ReadonlyMap<number, number>, first: number, last: number): number[] {
	if (setRadii.size === 0) return [];
	const radii: number[] = [];
	for (let corner = first; corner <= last; corner++) {
		const radius = setRadii.get(corner);
		if (radius !== undefined) radii.push(radius);
	}
	return radii;
}

/** Past a wall between opposite turns: as the last resort, since it keeps one leg fewer. */
export function reverseCandidate(
	chain: WallChain,
	projections: readonly number[],
	first: number,
	{ leastRadius, straightBesideBend, clearance }: FitRule,
): Candidate | null {
	if (!isReverse(chain, first)) return null;
	const radius = (corner: number) =>
		(chain.turns[corner] as number) > 0 ? leastRadius.internal : leastRadius.external;
	const radii = [radius(first), radius(first + 1)] as const;
	const reverse = reverseBetween(chain, projections, first, radii, straightBesideBend, clearance);
	if (reverse === null) return null;
	const least = Math.min(...radii);
	return {
		elbow: reverseElbow(chain, first, reverse),
		offLeft: projections[first - 1] as number,
		offRight: projections[first + 1] as number,
		least,
		greatest: least,
		fixed: true,
		straight: straightBesideBend,
		made: 2,
	};
}

/** Do a corner and the next turn opposite ways, both more than slightly? */
export function isReverse({ turns }: WallChain, first: number): boolean {
	const turn = turns[first] as number;
	const next = turns[first + 1] as number;
	return turn * next < 0 && Math.min(Math.abs(turn), Math.abs(next)) >= SLIGHT_TURN;
}
