import type { z } from "zod";
import { type DeepReadonly, identifier, index, listOrNone, mm, mmOrNull, OVER_ZERO, record } from "./fields.ts";
import { wallPlaceSchema } from "./track-schema.ts";

/** What has already been done on site. */
export const fittedSchema = record(
	{
		brackets: listOrNone(
			record(
				{
					wall: index("a wall"),
					planned: mmOrNull().describe(
						"Where the plan had it, mm along the face from the wall's left corner; null = nowhere.",
					),
					at: mm().describe("Where it is, mm along the face from the wall's left corner."),
					projection: mmOrNull(OVER_ZERO).describe("Wall face to centre line as fitted, mm; null = as planned."),
				},
				"a fitted bracket",
			),
			"fitted brackets",
		),
		spans: listOrNone(
			record(
				{ from: wallPlaceSchema, to: wallPlaceSchema, value: mm(OVER_ZERO).describe("Taped between the two, mm.") },
				"a span between two brackets",
			),
			"spans",
		).describe("Taped between brackets across a corner: these are readings."),
		cut: listOrNone(
			record(
				{ piece: identifier().describe("Its name in the plan."), length: mm(OVER_ZERO).describe("mm") },
				"a cut piece",
			),
			"cut pieces",
		),
		done: listOrNone(identifier(), "names of things done"),
	},
	"what has been fitted",
);

export type Fitted = DeepReadonly<z.output<typeof fittedSchema>>;
