import { NARROWEST, wallLength } from "@baywright/editor";
import type { Bay, LengthUnit, Reading } from "@baywright/setout";
import { GREATEST_ANGLE, readAngle } from "../fields/read-angle.ts";
import { readLength } from "../fields/read-length.ts";
import type { Reading as Read } from "../fields/typed-field.tsx";
import type { HeightOf } from "./heights-to-take.ts";

/** Between what a length may lie, mm; left out = open. */
export interface Bounds {
	readonly least?: number;
	readonly greatest?: number;
}

/** As much of a reading as says what it may read. */
export type Bounded = Pick<Reading, "kind"> & { readonly arm?: number };

/** mm. */
const LEAST = 1;
const LONGEST = 10_000;
/** No tape reaches further (common practice, no source); one nought too many does. */
const TAPE = 30_000;

/** A rise and a square are read to either side. */
export const isSigned = ({ kind }: Bounded): boolean => kind === "rise" || kind === "square";

/** What a length of this kind may read, mm: the chord between two arms is shorter than both. An angle has bounds of its own. */
export function boundsOf(reading: Bounded): Bounds {
	return {
		least: isSigned(reading) ? -LONGEST : LEAST,
		greatest: reading.arm === undefined ? (isSigned(reading) ? LONGEST : TAPE) : 2 * reading.arm - LEAST,
	};
}

/** Reads what is typed for a reading: degrees for an angle, else mm. */
export const readReading = (reading: Bounded, text: string, unit: LengthUnit): Read<number> =>
	reading.kind === "angle" ? readAngle(text, GREATEST_ANGLE) : readLength(text, unit, boundsOf(reading));

/** What a height or a measure on a wall may be in this bay, mm: a sill is under its head, nothing goes past the end of its wall. */
export function heightBounds(bay: Bay, of: HeightOf): Bounds {
	if (of.kind === "ceiling") return { least: LEAST };
	if (of.kind === "track" || of.kind === "depth") return { least: 0 };
	if ("opening" in of) {
		const opening = bay.openings[of.opening];
		return of.kind === "sill" ? under(opening?.head) : over(opening?.sill);
	}
	const obstacle = bay.obstacles[of.obstacle];
	if (obstacle === undefined) return {};
	if (of.kind === "bottom") return under(obstacle.top);
	if (of.kind === "top") return over(obstacle.bottom);
	const length = wallLength(bay, obstacle.wall);
	if (of.kind === "from") return { least: 0, greatest: Math.max(0, length - NARROWEST) };
	return { least: NARROWEST, greatest: Math.max(NARROWEST, length - obstacle.from) };
}

const under = (most: number | null | undefined): Bounds =>
	most === null || most === undefined ? { least: 0 } : { least: 0, greatest: most - LEAST };

const over = (least: number | null | undefined): Bounds => ({ least: (least ?? 0) + LEAST });
