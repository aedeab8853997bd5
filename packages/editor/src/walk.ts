import type { Bay, BayPlan } from "@baywright/setout";
import { isPulled } from "./grips/bend.ts";
import { type Selection, sameThing } from "./selection.ts";

/** Everything that Tab walks through, in turn: along the walls from the left end, then what stands on them, then the track from its left end. */
export function stopsOf(bay: Bay, plan: BayPlan): readonly Selection[] {
	const last = bay.corners.length - 1;
	return [
		...bay.corners.flatMap((_, index): Selection[] =>
			index === last
				? [{ kind: "corner", index }]
				: [
						{ kind: "corner", index },
						{ kind: "wall", index },
						{ kind: "bow", index },
					],
		),
		...bay.openings.map((_, index): Selection => ({ kind: "opening", index })),
		...bay.obstacles.map((_, index): Selection => ({ kind: "obstacle", index })),
		...bay.walls.flatMap(({ noDrill }, wall) =>
			noDrill.map((_, index): Selection => ({ kind: "no-drill", index, wall })),
		),
		...(last > 0 ? [{ kind: "track-end", index: 0 } as const] : []),
		...plan.corners.flatMap((corner): Selection[] =>
			isPulled(bay, corner) ? [{ kind: "bend", index: corner.corner }] : [],
		),
		...plan.joints.map((_, index): Selection => ({ kind: "joint", index })),
		...plan.brackets.map((_, index): Selection => ({ kind: "bracket", index })),
		...(last > 0 ? [{ kind: "track-end", index: 1 } as const] : []),
	];
}

/** The stop after (or before) what is chosen; from nothing chosen the first. Null past the last and before the first. */
export function nextStop(stops: readonly Selection[], chosen: Selection | null, back: boolean): Selection | null {
	const place = chosen === null ? -1 : stops.findIndex((it) => sameThing(it, chosen));
	if (place < 0) return back ? null : (stops[0] ?? null);
	return stops[place + (back ? -1 : 1)] ?? null;
}
