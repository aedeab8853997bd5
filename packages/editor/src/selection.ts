import type { Part } from "./edits/on-walls.ts";

export type ThingKind =
	| "corner"
	| "wall"
	| "bow"
	| "opening"
	| "obstacle"
	| "no-drill"
	| "track-end"
	| "bend"
	| "bracket"
	| "joint"
	| "piece"
	| "reading"
	| "finding";

/**
 * One thing of the bay on the table: its kind and its index in the job or the plan. A bend goes by its first corner, a
 * track end by 0 (left) or 1 (right), a stretch without holes by its wall and its place in that wall's list.
 */
export interface Selection {
	readonly kind: ThingKind;
	readonly index: number;
	/** Of a stretch without holes only. */
	readonly wall?: number;
}

/** What a pointer is on: a thing, and which part of it. */
export interface Target extends Selection {
	/** Of an opening, an obstacle or a stretch without holes: an end, or all of it. */
	readonly part?: Part;
}

export function isSelected(selection: Selection | null, kind: ThingKind, index: number, wall?: number): boolean {
	return selection !== null && selection.kind === kind && selection.index === index && selection.wall === wall;
}

export const sameThing = (a: Selection | null, b: Selection | null): boolean =>
	a === b || (a !== null && b !== null && a.kind === b.kind && a.index === b.index && a.wall === b.wall);
