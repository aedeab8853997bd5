import { type Point, step } from "@baywright/geometry";

/** Finds a place on the track by station (mm), with the heading there. */
export type Along = (station: number) => { readonly at: Point; readonly heading: number };

/** Lengths mm. */
export interface FoldStyle {
	/** About how long one fold is along the track; made to come out in whole folds. */
	readonly pitch: number;
	/** How far folds stand off the centre line, towards the wall and into the room. */
	readonly behind: number;
	readonly before: number;
}

/** Points to one fold: enough for a smooth line at any zoom that shows single folds. */
const POINTS_PER_FOLD = 10;

/** The most folds that are drawn; more would be one dark band. */
const MOST_FOLDS = 200;

/** A curtain's folds from one station to another as a line that waves about the track, round bends too. */
export function foldWave(along: Along, from: number, to: number, { pitch, behind, before }: FoldStyle): Point[] {
	const length = to - from;
	if (!(length > 0)) return [];
	const folds = Math.max(1, Math.min(MOST_FOLDS, Math.round(length / pitch)));
	const count = folds * POINTS_PER_FOLD;
	return Array.from({ length: count + 1 }, (_, i) => {
		const share = i / count;
		const { at, heading } = along(from + length * share);
		const swing = Math.sin(2 * Math.PI * folds * share);
		return step(at, Math.cos(heading), Math.sin(heading), 0, swing * (swing < 0 ? behind : before));
	});
}
