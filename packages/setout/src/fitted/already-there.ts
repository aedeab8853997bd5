import type { Bay } from "../job/bay-schema.ts";
import type { Fitted } from "../job/fitted-schema.ts";
import type { WallPlace } from "../job/track-schema.ts";

export type FittedBracket = Fitted["brackets"][number];

/** The brackets of one wall whose projection was measured, mm. */
export interface FittedProjection {
	readonly wall: number;
	/** What the leg runs at: their mean, the level line nearest to them all. */
	readonly mean: number;
	readonly least: number;
	readonly greatest: number;
}

/** Nearer than this (mm) to a pin of the user's own it is the same bracket. */
const SAME_PLACE = 1;

/** Fitted otherwise than planned; one that only records that it was done as planned asks nothing of the plan. */
const isElsewhere = ({ planned, at, projection }: FittedBracket): boolean => projection !== null || planned !== at;

/** The projection that each wall's brackets really have, where any was measured; walls in order. */
export function fittedProjections({ brackets }: Fitted, walls: number): FittedProjection[] {
	return Array.from({ length: walls }, (_, wall) => wall).flatMap((wall) => {
		const measured = brackets.flatMap((each) =>
			each.wall === wall && each.projection !== null ? [each.projection] : [],
		);
		if (measured.length === 0) return [];
		const mean = measured.reduce((sum, each) => sum + each, 0) / measured.length;
		return [{ wall, mean, least: Math.min(...measured), greatest: Math.max(...measured) }];
	});
}

/** The bay with those holes pinned, so that the rest is placed round them. */
export function withPlacesTaken(bay: Bay): Bay {
	const { track } = bay;
	return { ...bay, track: { ...track, brackets: [...track.brackets, ...placesTaken(bay)] } };
}

/** Holes that are there for good: brackets fitted elsewhere than planned, but for those that the user has pinned there already. */
function placesTaken({ fitted, track }: Bay): WallPlace[] {
	const isPinned = ({ wall, at }: FittedBracket) =>
		track.brackets.some((pin) => pin.wall === wall && Math.abs(pin.at - at) < SAME_PLACE);
	return fitted.brackets.filter((each) => isElsewhere(each) && !isPinned(each)).map(({ wall, at }) => ({ wall, at }));
}
