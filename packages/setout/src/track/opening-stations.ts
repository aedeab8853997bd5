import { type FittedTrack, stationSquareOff } from "@baywright/geometry";
import type { Bay } from "../job/bay-schema.ts";

/** The stretch of track in front of an opening. Stations and widths mm. */
export interface OpeningStretch {
	readonly opening: number;
	/** Along the wall face. */
	readonly width: number;
	readonly from: number;
	readonly to: number;
}

/** One for each opening on a wall that the track follows. */
export function openingStretches({ openings }: Bay, track: FittedTrack): OpeningStretch[] {
	return openings.flatMap(({ wall, from, to }, opening) => {
		const left = stationSquareOff(track, wall, from);
		const right = stationSquareOff(track, wall, to);
		return left === null || right === null ? [] : [{ opening, width: to - from, from: left, to: right }];
	});
}

/** Station half-way between the outermost edges of the glass; null without openings. */
export function middleOfGlass(bay: Bay, track: FittedTrack): number | null {
	const stretches = openingStretches(bay, track);
	if (stretches.length === 0) return null;
	const from = Math.min(...stretches.map((stretch) => stretch.from));
	return (from + Math.max(...stretches.map((stretch) => stretch.to))) / 2;
}
