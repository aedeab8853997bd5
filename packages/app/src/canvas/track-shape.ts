import type { Viewport } from "@baywright/editor";
import {
	type Bend,
	type Bow,
	type Point,
	pointAt,
	pointOffFace,
	type Radians,
	step,
	type TrackPath,
} from "@baywright/geometry";
import {
	type Bay,
	type BayPlan,
	type Bracket,
	type CurtainPosition,
	type CurtainSetOut,
	positionOf,
} from "@baywright/setout";
import type { Along, FoldStyle } from "./fold-wave.ts";

/** The two lines of the track are drawn at least this far from its centre line, px, so that they stay two. */
const LEAST_HALF_WIDTH = 2.25;

/** A bracket's bar is drawn at least this wide and reaches at least this far past the track, px. */
const LEAST_BAR = 4;

/** Where brackets stand close on screen their bars are drawn this much of the way from one to the next, or they would run together. */
const BAR_SHARE = 0.35;
const THINNEST_BAR = 1.25;
const BAR_OVERHANG = 4;

/** mm by which folds stay off the wall face; they never stand off less than LEAST_FOLD. */
const FOLD_GAP = 5;
const LEAST_FOLD = 20;
const GREATEST_FOLD = 60;

/** Finds a place on a path that has at least one segment. */
export function alongTrack(path: TrackPath): Along {
	return (station) => {
		const place = pointAt(path, station);
		if (place === null) throw new Error("Broken invariant: a fitted track has at least one segment.");
		return place;
	};
}

/** Half the drawn width of the track, px: its profile's own, or as much as keeps its lines apart. */
export const halfTrack = (plan: BayPlan, view: Viewport): number =>
	Math.max(LEAST_HALF_WIDTH, (plan.system.profile.width * view.scale) / 2);

/** px. */
export function barWidth(plan: BayPlan, view: Viewport): number {
	const apart = ((plan.path?.length ?? 0) * view.scale) / Math.max(1, plan.brackets.length);
	return Math.max(
		Math.min(LEAST_BAR, Math.max(THINNEST_BAR, apart * BAR_SHARE)),
		plan.system.bracket.width * view.scale,
	);
}

export interface Bar {
	readonly from: Point;
	readonly to: Point;
}

/**
 * A bracket's bar in the plan: square off the wall face, or at a ceiling square to the track from beyond it, across the track to
 * the room's side.
 */
export function bracketBar(bay: Bay, plan: BayPlan, bracket: Bracket, heading: Radians, view: Viewport): Bar {
	const { at, wall, fromLeftCorner, projection } = bracket;
	const overhang = halfTrack(plan, view) / view.scale + BAR_OVERHANG / view.scale;
	if (bay.track.mounting === "ceiling" || plan.chain === null || projection < overhang) {
		const ux = Math.cos(heading);
		const uy = Math.sin(heading);
		return { from: step(at, ux, uy, 0, -overhang), to: step(at, ux, uy, 0, overhang) };
	}
	const foot = pointOffFace(plan.chain, wall, fromLeftCorner, 0);
	const past = overhang / projection;
	return { from: foot, to: { x: at.x + (at.x - foot.x) * past, y: at.y + (at.y - foot.y) * past } };
}

/** A line across the track at a station, `reach` px to either side of its centre line. */
export function acrossTrack(path: TrackPath, station: number, reach: number, view: Viewport): Bar {
	const { at, heading } = alongTrack(path)(station);
	const ux = Math.cos(heading);
	const uy = Math.sin(heading);
	return { from: step(at, ux, uy, 0, -reach / view.scale), to: step(at, ux, uy, 0, reach / view.scale) };
}

/** Folds are drawn no deeper than this, mm, whatever figures they come of. */
const DEEPEST_FOLD = 400;

/** How far (mm) a curtain's folds reach behind and before the track: as they do while the job says how it is made, else as folds look. */
export function foldReach(
	plan: BayPlan,
	{ curtain, behind }: CurtainSetOut,
	{ foldDepth }: Pick<CurtainPosition, "foldDepth">,
	spread = 1,
): Pick<FoldStyle, "behind" | "before"> {
	if (curtain === null || foldDepth <= 0) {
		const depth = usualFold(plan) * Math.max(SHALLOWEST, 1 / Math.sqrt(Math.max(1, spread)));
		return { behind: depth, before: depth };
	}
	// Packed, folds grow deeper into the room: behind them is the wall.
	return { behind: Math.min(behind, DEEPEST_FOLD), before: Math.min(foldDepth - behind, DEEPEST_FOLD) };
}

/** How far (mm) the folds of each curtain reach into the room drawn back. */
export const stackReaches = (plan: BayPlan): number[] =>
	plan.curtains.map((curtain) => foldReach(plan, curtain, positionOf(curtain, 1)).before);

/** A drawn curtain's folds are shallow, but still folds: this share of the packed ones' depth. */
const SHALLOWEST = 0.6;

function usualFold(plan: BayPlan): number {
	const nearest = Math.min(...plan.projections.filter((projection) => projection > 0));
	const room = Number.isFinite(nearest) ? nearest - FOLD_GAP : LEAST_FOLD;
	return Math.min(GREATEST_FOLD, Math.max(LEAST_FOLD, room));
}

/** The bends that are made (a track springs round the others), with the index by which they are selected: their first corner. */
export function madeBends(plan: BayPlan): { readonly bend: Bend; readonly corner: number }[] {
	return (plan.path?.segments ?? []).flatMap((segment) =>
		segment.kind === "bend" && !segment.sprung ? [{ bend: segment, corner: segment.corners[0] as number }] : [],
	);
}

/** All that is bent: made bends, and bows along their walls. */
export function bentStretches(plan: BayPlan): (Bend | Bow)[] {
	return (plan.path?.segments ?? []).filter(
		(segment): segment is Bend | Bow => segment.kind === "bow" || (segment.kind === "bend" && !segment.sprung),
	);
}

/** Stations of the two places where the track is cut: in from its finished ends by what end hardware takes up. */
export function cutStations(plan: BayPlan): number[] {
	if (plan.path === null) return [];
	const { length } = plan.path;
	const takeUp = Math.min(plan.system.endTakeUp, length / 2);
	return [takeUp, length - takeUp];
}
