import type { z } from "zod";
import { amount, NOT_NEGATIVE, oneOf, record } from "../job/fields.ts";

/** How the top of a curtain is made up. */
export const headingSchema = oneOf(["pencil", "pinch", "goblet", "box", "wave"]);

export type Heading = z.output<typeof headingSchema>;

const perMetre = () => amount("mm", NOT_NEGATIVE).optional();

/** Track taken up by a drawn-back curtain, mm for each metre of flat cloth, where it differs from the usual figure. */
export const packingSchema = record(
	{
		pencil: perMetre(),
		pinch: perMetre(),
		goblet: perMetre(),
		box: perMetre(),
		wave: perMetre(),
	} satisfies Record<Heading, z.ZodType>,
	"an object of mm of track for each metre of flat cloth, by heading",
)
	.prefault({})
	.describe(
		"mm of track that each metre of flat cloth takes up when drawn back, by heading; only what differs from the usual.",
	);
