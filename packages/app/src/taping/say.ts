import { type Bay, formatAngle, type LengthUnit } from "@baywright/setout";
import { readLength, showLength } from "../fields/read-length.ts";
import type { Reading as Read } from "../fields/typed-field.tsx";
import { heightBounds, readReading } from "./bounds.ts";
import type { ToTake } from "./next-to-take.ts";

/** Reads what is typed for an entry, mm or degrees; or says what is wrong with it. */
export function readEntry({ what }: ToTake, text: string, bay: Bay, unit: LengthUnit): Read<number> {
	if (what.kind === "reading") return readReading(what.reading, text, unit);
	return readLength(text, unit, what.kind === "height" ? heightBounds(bay, what.of) : {});
}

/** A value of an entry as it is typed. */
export function entryText({ what }: ToTake, value: number, unit: LengthUnit): string {
	// The inch mark stands after the field, as other units do.
	return isAngle(what) ? formatAngle(value) : showLength(value, unit).replace(/"$/, "");
}

/** The same with its unit. */
export function entryFigure(entry: ToTake, value: number, unit: LengthUnit): string {
	const text = entryText(entry, value, unit);
	if (isAngle(entry.what)) return text;
	return unit === "in" ? `${text}"` : `${text} ${unit}`;
}

export const isAngle = (what: ToTake["what"]): boolean => what.kind === "reading" && what.reading.kind === "angle";
