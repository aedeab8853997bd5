import type { z } from "zod";
import {
	amountOrNull,
	type DeepReadonly,
	identifier,
	mm,
	mmOrNull,
	NOT_NEGATIVE,
	OVER_ZERO,
	oneOf,
	record,
	text,
} from "../job/fields.ts";
import { packingSchema } from "./heading.ts";

const arealMass = () => amountOrNull("g/m²", OVER_ZERO);

const liningSchema = record(
	{
		name: text(),
		width: mmOrNull(OVER_ZERO).describe("Usable width, mm; null = the cloth's."),
		mass: arealMass().describe("g/m²; null = not known."),
		thickness: mmOrNull(OVER_ZERO).describe("mm; null = not known."),
	},
	"a lining",
);

/** A cloth as it comes off the roll. */
export const clothSchema = record(
	{
		id: identifier().describe("What curtains call it by."),
		name: text(),
		width: mm(OVER_ZERO).describe("Usable width across the roll, mm."),
		repeat: mm(NOT_NEGATIVE).default(0).describe("Length of one pattern repeat along the roll, mm; 0 = plain."),
		match: oneOf(["straight", "half-drop"])
			.default("straight")
			.describe("How the pattern meets at the side of the next width: level, or half a repeat lower."),
		mass: arealMass().describe("g/m²; null = not known."),
		thickness: mmOrNull(OVER_ZERO).describe("mm; null = not known."),
		lining: liningSchema.nullable().default(null).describe("null = unlined."),
		packing: packingSchema,
	},
	"a cloth",
);

export type Cloth = DeepReadonly<z.output<typeof clothSchema>>;
