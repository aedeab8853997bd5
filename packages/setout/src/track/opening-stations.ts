import { type FittedTrack, stationSquareOff } from "@baywright/geometry";
import type { Stretch } from "../bay-plan.ts";
import type { Bay } from "../job/bay-schema.ts";
import { endsOf } from "./track-rule.ts";

/** The stretch of track in front of an opening. Stations and widths mm. */
export interface OpeningStretch {
	readonly opening: number;
	/** How much of its width the track passes; less than all of it where the track ends before it. */
	readonly passed: number;
	readonly from: number;
	readonly to: number;
}

/** One for each opening on a wall that the track follows. */
export function openingStretches(bay: Bay, track: FittedTrack): OpeningStretch[] {
	const { start, end } = endsOf(
		bay,
		track.chain.walls.map(({ faceLength }) => faceLength),
	);
	return bay.openings.flatMap((each, opening) => {
		const stretch = stretchAlong(track, each);
		if (stretch === null) return [];
		const from = each.wall === start.wall ? Math.max(each.from, start.at) : each.from;
		const to = each.wall === end.wall ? Math.min(each.to, end.at) : each.to;
		return [{ opening, passed: Math.max(0, to - from), ...stretch }];
	});
}

/** The stretch of track in front of a place on a wall, as far as the track goes; null where the track does not follow the wall. */
export function stretchAlong(
	track: FittedTrack,
	{ wall, from, to }: { readonly wall: number; readonly from: number; readonly to: number },
): Stretch | null {
	const left = stationSquareOff(track, wall, from);
	const right = stationSquareOff(track, wall, to);
	return left === null || right === null ? null : { from: left, to: right };
}

/** Station half-way between the outermost edges of the glass; null without openings. */
export function middleOfGlass(bay: Bay, track: FittedTrack): number | null {
	const stretches = openingStretches(bay, track);
	if (stretches.length === 0) return null;
	const from = Math.min(...stretches.map((stretch) => stretch.from));
	return (from + Math.max(...stretches.map((stretch) => stretch.to))) / 2;
}
