import type { Bracket, BracketLoad, CurtainSetOut } from "../bay-plan.ts";
import type { TrackSystem } from "../library/system.ts";
import { bracketReactions } from "./bracket-reactions.ts";

/**
 * What every bracket of a track of `length` mm carries of it and of the curtains whose mass is known; none while no mass is known, for the
 * track alone says nothing of what will hang there.
 */
export function bayLoads(
	{ bracket: { width, maxLoad }, massPerMetre }: TrackSystem,
	length: number,
	brackets: readonly Pick<Bracket, "station">[],
	curtains: readonly CurtainSetOut[],
): BracketLoad[] {
	if (!curtains.some(({ mass }) => mass !== null)) return [];
	const stations = brackets.map(({ station }) => station);
	const track = { length, brackets: stations, bracketWidth: width, massPerMetre };
	return bracketReactions(track, curtains).map(({ worst, least, drawn, stacked }, bracket) => ({
		bracket,
		greatest: worst,
		least,
		drawn,
		stacked,
		share: maxLoad === null ? null : worst / maxLoad,
	}));
}

/** The curtains that the job gives without telling what they weigh. */
export const withoutMass = (curtains: readonly CurtainSetOut[]): CurtainSetOut[] =>
	curtains.filter(({ curtain, mass }) => curtain !== null && mass === null);

/** From this part of the limit on a bracket counts as near it: what cloth weighs and where brackets stand are not known more closely (no source). */
const NEAR_LIMIT = 0.8;

/** Relative slack when a load is compared with the limit. */
const SLACK = 1e-9;

/** How a bracket's greatest load stands to the system's limit. */
export type LoadStanding = "within" | "near" | "over" | "not-checked";

export function standingOf({ share }: Pick<BracketLoad, "share">): LoadStanding {
	if (share === null) return "not-checked";
	if (share > 1 + SLACK) return "over";
	return share >= NEAR_LIMIT ? "near" : "within";
}
