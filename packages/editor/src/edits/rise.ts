import type { Bay } from "@baywright/setout";
import { changeAt, kept } from "./on-bay.ts";
import { onNewFace } from "./on-new-face.ts";
import { isRead, retaped, type Typed } from "./retape.ts";

/** Draws one wall bowed by `rise` mm, + away from the room, no deeper than half its chord; what stands on it keeps its share of the face. */
export function setRise(bay: Bay, wall: number, rise: number): Bay {
	const deepest = deepestBow(bay, wall);
	const next = kept(Math.max(-deepest, Math.min(deepest, rise)));
	const moved = onNewFace(bay, wall, next);
	return { ...moved, walls: changeAt(moved.walls, wall, (old) => ({ ...old, rise: next })) };
}

/**
 * The same as typed: where the bay is taped, it is a reading as well. Nought is one only where the rise had been read: a wall that is drawn
 * straight is straight, and one read as straight would be an unknown that makes every length less sure.
 */
export function typedRise(bay: Bay, wall: number, rise: number): Bay {
	const typed: Typed = { kind: "rise", wall };
	const drawn = setRise(bay, wall, rise);
	const value = drawn.walls[wall]?.rise ?? 0;
	return value !== 0 || isRead(bay, typed) ? retaped(drawn, typed, value) : drawn;
}

/** The wall straight. */
export const straightened = (bay: Bay, wall: number): Bay => typedRise(bay, wall, 0);

/** The greatest rise a wall can have, mm: a half circle over its chord. */
export function deepestBow({ corners }: Pick<Bay, "corners">, wall: number): number {
	const [left, right] = [corners[wall], corners[wall + 1]];
	return left && right ? Math.floor(Math.hypot(right[0] - left[0], right[1] - left[1]) / 2) : 0;
}
