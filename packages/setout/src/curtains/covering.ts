import type { FittedTrack } from "@baywright/geometry";
import type { CoveredObstacle, CurtainSetOut, Glass, OpeningGlass, Stretch } from "../bay-plan.ts";
import type { Bay } from "../job/bay-schema.ts";
import { openingStretches, stretchAlong } from "../track/opening-stations.ts";

/** Part of the track that cloth covers, and how far it hangs down from the track, mm; null = not known. */
export interface Covering extends Stretch {
	readonly drop: number | null;
}

/** The openings with the stretch of track before each, and how much of each the curtains leave clear and take of its light. */
export function glassOf(
	bay: Bay,
	track: FittedTrack,
	curtains: readonly CurtainSetOut[],
	height: number | null,
): Glass {
	const before = new Map(openingStretches(bay, track).map(({ opening, ...rest }) => [opening, rest]));
	const bare = bay.openings.map(({ from, to, sill, head }, opening) => {
		const passing = before.get(opening);
		return {
			opening,
			width: to - from,
			height: sill === null || head === null ? null : head - sill,
			reach: { bottom: sill, top: head },
			stretch: passing === undefined ? null : { from: passing.from, to: passing.to },
			passed: passing?.passed ?? 0,
		};
	});
	const drawn = curtains.map(({ from, to, drop }) => ({ from, to, drop }));
	const open = curtains.map(({ stack, drop }) => ({ ...stack, drop }));
	const openings = bare.map(({ reach, ...one }) => ({
		...one,
		clearOpen: clearOf(one, open),
		clearDrawn: clearOf(one, drawn),
		lostOpen: shareCovered(one, reach, open, height),
		lostDrawn: shareCovered(one, reach, drawn, height),
	}));
	const total = sum(openings, ({ width }) => width);
	// By area where every opening's height is known, else by width.
	const areas = openings.every((one) => one.height !== null);
	const weight = (one: (typeof openings)[number]) => one.width * (areas ? (one.height as number) : 1);
	const all = sum(openings, weight);
	const lost = (of: (one: (typeof openings)[number]) => number) =>
		all > 0 ? sum(openings, (one) => weight(one) * of(one)) / all : 0;
	return {
		total,
		clearOpen: sum(openings, ({ clearOpen }) => clearOpen),
		clearDrawn: sum(openings, ({ clearDrawn }) => clearDrawn),
		lostOpen: lost(({ lostOpen }) => lostOpen),
		lostDrawn: lost(({ lostDrawn }) => lostDrawn),
		openings,
	};
}

/** Width of an opening (mm) that these stretches of track leave clear. */
export const clearOf = (opening: Passing, covered: readonly Stretch[]): number =>
	opening.width - opening.passed * shareWithin(opening.stretch, covered);

type Passing = Pick<OpeningGlass, "width" | "passed" | "stretch">;

/** Every obstacle that a curtain hangs before, drawn or drawn back. */
export function coveredObstacles(
	bay: Bay,
	track: FittedTrack,
	curtains: readonly CurtainSetOut[],
	height: number | null,
): CoveredObstacle[] {
	return bay.obstacles.flatMap((obstacle, index) => {
		const stretch = stretchAlong(track, obstacle);
		// What lies past the track's end is before no part of it.
		if (stretch === null || stretch.to <= stretch.from) return [];
		const reach = { bottom: obstacle.bottom, top: obstacle.top };
		const covered = (of: (curtain: CurtainSetOut) => Stretch) =>
			shareWithin(stretch, curtains.filter(({ drop }) => hangsBefore(reach, drop, height)).map(of));
		const found = { obstacle: index, open: covered(({ stack }) => stack), drawn: covered((curtain) => curtain) };
		return found.drawn > 0 || found.open > 0 ? [found] : [];
	});
}

/** Heights above the floor, mm; null = not known, or down to the floor and up to the ceiling. */
interface Reach {
	readonly bottom: number | null;
	readonly top: number | null;
}

/** Does a curtain with this drop reach as low as a thing stands? Where a height is not known, it does. */
export const hangsBefore = ({ bottom, top }: Reach, drop: number | null, height: number | null): boolean =>
	(height === null || bottom === null || bottom < height) &&
	(height === null || drop === null || top === null || top > height - drop);

/** Share of an opening's area that cloth covers, 0 to 1. */
function shareCovered(
	{ width, passed, stretch }: Passing,
	reach: Reach,
	covered: readonly Covering[],
	height: number | null,
): number {
	const parts = covered.map((one) => shareWithin(stretch, [one]) * shareOfHeight(reach, one.drop, height));
	const share = Math.min(
		1,
		sum(parts, (part) => part),
	);
	return width > 0 ? (share * passed) / width : 0;
}

/** Share of a thing's height that a curtain with this drop covers; all of it where a height is not known. */
function shareOfHeight({ bottom, top }: Reach, drop: number | null, height: number | null): number {
	if (height === null || bottom === null || top === null || top <= bottom) return 1;
	const low = drop === null ? Number.NEGATIVE_INFINITY : height - drop;
	return Math.max(0, Math.min(top, height) - Math.max(bottom, low)) / (top - bottom);
}

/** Share of a stretch's length that others cover, 0 to 1. */
const shareWithin = (stretch: Stretch | null, covered: readonly Stretch[]): number =>
	stretch === null || stretch.to <= stretch.from ? 0 : lengthWithin(stretch, covered) / (stretch.to - stretch.from);

/** Length of a stretch (mm) that others cover, where they overlap counted once. */
function lengthWithin(stretch: Stretch, covered: readonly Stretch[]): number {
	let length = 0;
	let upTo = stretch.from;
	for (const { from, to } of covered.toSorted((a, b) => a.from - b.from)) {
		const end = Math.min(to, stretch.to);
		length += Math.max(0, end - Math.max(from, upTo));
		upTo = Math.max(upTo, end);
	}
	return length;
}

function sum<One>(all: readonly One[], of: (one: One) => number): number {
	return all.reduce((so, one) => so + of(one), 0);
}
