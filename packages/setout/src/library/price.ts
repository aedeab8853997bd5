import type { z } from "zod";
import { amount, type DeepReadonly, identifier, NOT_NEGATIVE, record } from "../job/fields.ts";

/** What one of something costs, in the user's own money. There are no prices but these. */
export const priceSchema = record(
	{
		item: identifier().describe("Name of the part as the order lists it."),
		each: amount("", NOT_NEGATIVE).describe("Price of one, or of one metre of what is sold by the metre."),
	},
	"a price",
);

export type Price = DeepReadonly<z.output<typeof priceSchema>>;
