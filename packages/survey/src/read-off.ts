import { type Point, toDegrees } from "@baywright/geometry";
import { type DrawnBay, drawnState, isExternal, observedOf } from "./bay-network.ts";
import type { Gradient } from "./covariance.ts";
import { foresee } from "./linear.ts";
import type { ReadingOf } from "./reading.ts";

/** A bay as it stands: corners and rises, mm, the room on the right of travel. */
export interface StandingBay {
	readonly corners: readonly Point[];
	readonly rises: readonly number[];
}

/** What a perfect tape, bevel or rule reads of a bay, mm or degrees; null where the bay has no such place or nothing can be read there. */
export function readOff({ corners, rises }: StandingBay, reading: ReadingOf): number | null {
	const standing = { corners, rises, readings: [] };
	const seen = seenIn(standing, reading);
	if (seen === null) return null;
	const { value } = seen;
	if (!Number.isFinite(value)) return null;
	if (reading.kind === "angle") return toDegrees(value);
	if (reading.kind !== "chord") return value;
	// Past an external corner one mark is on a straightedge that carries its face on.
	return 2 * reading.arm * Math.sin((isExternal(standing, reading.corner) ? value - Math.PI : value) / 2);
}

/**
 * How what is read there changes with every x and y in turn, then the rises: over the columns of a settled bay's covariance; radians where it is an
 * angle. Null where the bay has no such place.
 */
export const readingGradient = (bay: DrawnBay, reading: ReadingOf): Gradient | null =>
	seenIn(bay, reading)?.gradient ?? null;

function seenIn(bay: DrawnBay, reading: ReadingOf) {
	const observed = observedOf(bay, reading);
	return observed === null ? null : foresee(observed, drawnState(bay));
}
