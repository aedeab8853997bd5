import type { Size } from "@baywright/editor";
import { type Box, boxInside, type Spot, type Stroke } from "./box.ts";
import { createCrowd } from "./crowd.ts";

/** A label that wants a place. */
export interface Wish<Drawn extends Spot> {
	/** The same label from frame to frame. */
	readonly key: string;
	/** Who goes first: the least important is the first to be left out. */
	readonly importance: number;
	/** Ways to put it, best first; null after the last. */
	spot(choice: number): Drawn | null;
}

/** Which way each label was put, by key: kept where it still does and is nearly the best, so that labels hold still during a drag. */
export type Habits = Map<string, number>;

/** What labels keep clear of. */
export interface Taken {
	readonly boxes: readonly Box[];
	readonly strokes: readonly Stroke[];
}

/** px that labels keep from the edge of the drawing. */
const EDGE = 4;

/** Puts every label where it covers nothing and nothing covers it, the most important first; leaves out those for which there is no such place. */
export function placeLabels<Drawn extends Spot>(
	wishes: readonly Wish<Drawn>[],
	taken: Taken,
	size: Size,
	habits: Habits,
): Map<string, Drawn> {
	const crowd = createCrowd();
	for (const box of taken.boxes) crowd.add(box);
	for (const stroke of taken.strokes) crowd.addStroke(stroke);

	const fits = (spot: Spot) =>
		boxInside(spot.box, size, EDGE) && crowd.isFree(spot.box) && spot.strokes.every((stroke) => crowd.isClear(stroke));

	const placed = new Map<string, Drawn>();
	for (const wish of [...wishes].sort((a, b) => b.importance - a.importance)) {
		const found = firstThatFits(wish, habits.get(wish.key), fits);
		if (found === null) {
			habits.delete(wish.key);
			continue;
		}
		habits.set(wish.key, found.choice);
		placed.set(wish.key, found.spot);
		crowd.add(found.spot.box);
		for (const stroke of found.spot.strokes) crowd.addStroke(stroke);
		for (const stroke of found.spot.under ?? []) crowd.addStroke(stroke);
	}
	return placed;
}

/** How many choices a label may stand short of its best, for the sake of standing still. */
const HABIT_REACH = 4;

function firstThatFits<Drawn extends Spot>(
	wish: Wish<Drawn>,
	habit: number | undefined,
	fits: (spot: Spot) => boolean,
): { readonly spot: Drawn; readonly choice: number } | null {
	for (let choice = 0; ; choice++) {
		const spot = wish.spot(choice);
		if (spot === null) return null;
		if (!fits(spot)) continue;
		if (habit !== undefined && habit > choice && habit <= choice + HABIT_REACH) {
			const kept = wish.spot(habit);
			if (kept !== null && fits(kept)) return { spot: kept, choice: habit };
		}
		return { spot, choice };
	}
}
