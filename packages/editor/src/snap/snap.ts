import type { Point } from "@baywright/geometry";
import { footOn, type Locus, meetings } from "./locus.ts";

/** Where a moved point comes to stand, and what it was drawn to: the guides to show. */
export interface Snap {
	readonly at: Point;
	readonly guides: readonly Locus[];
}

/** How far a point is drawn, mm: so many px on screen. 0 = not at all. */
export type Reach = number;

/** px on screen within which something draws a point to it. */
export const SNAP_REACH = 9;

/**
 * The candidate for a point put down at `raw`: where two of the `loci` meet within reach, else the nearest place on one, else
 * nothing is drawn to. `even` are the loci that make a run a whole number: they are never a reason, they only settle
 * what is left open, within `EVEN_REACH`.
 */
export function snapPoint(
	raw: Point,
	loci: readonly Locus[],
	reach: Reach,
	even: (near: Point) => readonly Locus[],
): Snap {
	if (reach > 0) {
		const near = loci.flatMap((locus) => {
			const foot = footOn(locus, raw);
			const away = foot === null ? Number.POSITIVE_INFINITY : apart(foot, raw);
			return foot !== null && away <= reach ? [{ locus, foot, away }] : [];
		});
		near.sort((a, b) => a.away - b.away);
		const pair = nearestMeeting(
			raw,
			near.slice(0, MOST_PAIRED).map(({ locus }) => locus),
			reach,
		);
		if (pair !== null) return pair;
		const [best] = near;
		if (best !== undefined) {
			const evened = even(best.foot).flatMap((locus) => meetings(best.locus, locus));
			return { at: nearestOf(evened, best.foot, Math.min(reach, EVEN_REACH)) ?? best.foot, guides: [best.locus] };
		}
		const [a, b] = even(raw);
		if (a !== undefined) {
			const met = b === undefined ? [footOn(a, raw)].filter((it) => it !== null) : meetings(a, b);
			const at = nearestOf(met, raw, Math.min(reach, EVEN_REACH));
			if (at !== null) return { at, guides: [] };
		}
	}
	return { at: { x: Math.round(raw.x), y: Math.round(raw.y) }, guides: [] };
}

/** mm by which a point is moved to make runs whole numbers, at most. */
const EVEN_REACH = 7.5;

/** Of all loci in reach so many, the nearest, are tried in pairs. */
const MOST_PAIRED = 12;

function nearestMeeting(raw: Point, near: readonly Locus[], reach: Reach): Snap | null {
	let best: (Snap & { readonly away: number }) | null = null;
	for (let i = 0; i < near.length; i++) {
		for (let j = 0; j < i; j++) {
			const guides = [near[j] as Locus, near[i] as Locus];
			for (const at of meetings(guides[0] as Locus, guides[1] as Locus)) {
				const away = apart(at, raw);
				if (away <= reach && (best === null || away < best.away)) best = { at, guides, away };
			}
		}
	}
	return best === null ? null : { at: best.at, guides: best.guides };
}

function nearestOf(points: readonly Point[], to: Point, within: number): Point | null {
	let best: Point | null = null;
	for (const p of points) {
		if (apart(p, to) <= within && (best === null || apart(p, to) < apart(best, to))) best = p;
	}
	return best;
}

const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
