import { type Outcome, readChain, type WallFace } from "@baywright/geometry";
import type { BayFault } from "@baywright/survey";
import type { Bay } from "../job/bay-schema.ts";
import type { TrackSystem } from "../library/system.ts";
import { projectionsOf } from "../track/track-rule.ts";
import { type BaySurvey, settle } from "./settle.ts";
import { drawnAtEnd } from "./settled-track.ts";

/** A bay by its readings. */
export interface AsSettled {
	/**
	 * Corners and rises where the readings put them, ends of the track drawn at the very end of their wall still there; the very bay that was
	 * given where nothing was taped or its readings settle nothing.
	 */
	readonly bay: Bay;
	/** Null where nothing was taped, or its readings settle nothing. */
	readonly survey: BaySurvey | null;
	/** Why its readings settle nothing. */
	readonly faults: readonly BayFault[];
}

/** The bay as it is to be worked with. Remembered for the same corners, rises, readings and spans, so that edits to its track cost nothing. */
export function asSettled(bay: Bay, system: TrackSystem): AsSettled {
	if (!isTaped(bay)) return { bay, survey: null, faults: [] };
	const { outcome, corners } = remembered(bay, system);
	if (!outcome.ok) return { bay, survey: null, faults: outcome.faults };
	const { rises } = outcome.value;
	const walls = bay.walls.map((wall, i) => (wall.rise === rises[i] ? wall : { ...wall, rise: rises[i] as number }));
	return { bay: { ...bay, corners, walls, track: trackOn(bay, outcome.value) }, survey: outcome.value, faults: [] };
}

/** How its readings settle a bay, without the bay as it then is; null where nothing was taped or they settle nothing. */
export function settledSurvey(bay: Bay, system: TrackSystem): BaySurvey | null {
	if (!isTaped(bay)) return null;
	const { outcome } = remembered(bay, system);
	return outcome.ok ? outcome.value : null;
}

export const isTaped = ({ readings, fitted }: Bay): boolean => readings.length + fitted.spans.length > 0;

interface Remembered {
	readonly readings: Bay["readings"];
	readonly spans: Bay["fitted"]["spans"];
	readonly brackets: Bay["fitted"]["brackets"];
	readonly rises: readonly number[];
	/** Spans reach from bracket to bracket, so they alone hang on these. */
	readonly projections: readonly number[];
	readonly outcome: Outcome<BaySurvey, BayFault>;
	readonly corners: Bay["corners"];
}

const known = new WeakMap<Bay["corners"], Remembered>();

function remembered(bay: Bay, system: TrackSystem): Remembered {
	const { corners, walls, readings, fitted } = bay;
	const { spans, brackets } = fitted;
	const rises = walls.map(({ rise }) => rise);
	const projections = spans.length === 0 ? [] : projectionsOf(bay, system);
	const last = known.get(corners);
	const isSame =
		last?.readings === readings &&
		last.spans === spans &&
		last.brackets === brackets &&
		alike(last.rises, rises) &&
		alike(last.projections, projections);
	if (isSame) return last;
	const outcome = settle(bay, system);
	const settled = outcome.ok ? outcome.value.corners.map(({ x, y }) => [x, y] as const) : corners;
	const next = { readings, spans, brackets, rises, projections, outcome, corners: settled };
	known.set(corners, next);
	return next;
}

const alike = (a: readonly number[], b: readonly number[]): boolean =>
	a.length === b.length && a.every((each, i) => each === b[i]);

function trackOn(bay: Bay, { corners, rises }: BaySurvey): Bay["track"] {
	const { track } = bay;
	const atEnd = drawnAtEnd(bay);
	if (!atEnd.start && !atEnd.end) return track;
	const chain = readChain(corners, rises);
	if (!chain.ok) return track;
	const moved = (place: Bay["track"]["start"]) =>
		place && { ...place, at: (chain.value.walls[place.wall] as WallFace).faceLength };
	return {
		...track,
		start: atEnd.start ? moved(track.start) : track.start,
		end: atEnd.end ? moved(track.end) : track.end,
	};
}
