import type { Bay } from "@baywright/setout";
import { isTaped } from "@baywright/setout";

type Reading = Bay["readings"][number];

/** What is typed: a wall's run, its rise, or the angle at a corner. */
export type Typed =
	| { readonly kind: "run" | "rise"; readonly wall: number }
	| { readonly kind: "angle"; readonly corner: number };

/**
 * The bay with what is typed (mm or degrees) among its readings: those of the very thing become one, in the place of the first and as sure as
 * it was; where there are none it is one more. Without that, readings would have their way over what was just typed. Where nothing was taped
 * the bay is a drawing, and the very bay that it was comes back.
 *
 * A rise is typed as it is in the middle of its wall. An angle takes the place of chords as well: they are another way to read it.
 */
export function retaped(bay: Bay, typed: Typed, value: number): Bay {
	const { readings } = bay;
	if (!isTaped(bay)) return bay;
	const own = readings.filter((reading) => isOf(reading, typed));
	const sd = own.find(({ kind }) => kind === typed.kind)?.sd ?? null;
	const one: Reading = { ...typed, ...(typed.kind === "rise" ? { at: null } : {}), value, sd } as Reading;
	const first = own[0];
	if (first === undefined) return { ...bay, readings: [...readings, one] };
	return { ...bay, readings: readings.flatMap((it) => (it === first ? [one] : isOf(it, typed) ? [] : [it])) };
}

/** Has this very thing been read? */
export const isRead = (bay: Bay, typed: Typed): boolean => bay.readings.some((reading) => isOf(reading, typed));

function isOf(reading: Reading, typed: Typed): boolean {
	if (typed.kind !== "angle") return reading.kind === typed.kind && reading.wall === typed.wall;
	return (reading.kind === "angle" || reading.kind === "chord") && reading.corner === typed.corner;
}
