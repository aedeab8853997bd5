import { z } from "zod";
import { headingSchema } from "../library/heading.ts";
import { amount, type DeepReadonly, mm, mmOrNull, NOT_NEGATIVE, OVER_ZERO, oneOf, record } from "./fields.ts";

/** One curtain. `from` and `to` are stations on the track. */
export const curtainSchema = record(
	{
		from: mmOrNull(NOT_NEGATIVE).describe("Station, mm; null = the left end of the track."),
		to: mmOrNull(NOT_NEGATIVE).describe("Station, mm; null = the right end of the track."),
		stacks: oneOf(["auto", "left", "right", "both"])
			.default("auto")
			.describe(
				"Where it is drawn back to; both = it parts in the middle; auto = as the track's draw says, else to the nearer end of the track.",
			),
		cloth: z
			.string({ error: "the id of a cloth, or null" })
			.nullable()
			.default(null)
			.describe("Id of a cloth of the job or a built-in one."),
		heading: headingSchema.default("pencil"),
		fullness: amount("", OVER_ZERO).default(2).describe("Flat cloth for each length of track; 2 = twice the track."),
		drop: mmOrNull(OVER_ZERO).describe("Finished drop, mm; null = not given."),
	},
	"a curtain",
);

export const makeUpSchema = record(
	{
		overlap: mm(NOT_NEGATIVE).default(100).describe("The whole crossing where a pair meets, mm; half to each curtain."),
		returns: mm(NOT_NEGATIVE).default(0).describe("From the track's end back to the wall, mm."),
		ease: mm(NOT_NEGATIVE).default(0).describe("Added to each curtain's finished width, mm."),
		widths: oneOf(["whole", "half"])
			.default("whole")
			.describe("Widths of cloth are rounded up to whole ones or to halves."),
		sideTurning: mm(NOT_NEGATIVE).default(60).describe("Turned in at each side, mm."),
		headingTurning: mm(NOT_NEGATIVE).default(80).describe("Turned over at the heading, mm."),
		hemTurning: mm(NOT_NEGATIVE).default(200).describe("Turned up at the hem, mm."),
	},
	"the make-up: overlap, returns, ease, widths and turnings",
);

export type Curtain = DeepReadonly<z.output<typeof curtainSchema>>;
export type MakeUp = DeepReadonly<z.output<typeof makeUpSchema>>;
