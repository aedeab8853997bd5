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

/** What is usual for a heading; a system or a cloth may say otherwise. */
interface UsualHeading {
	/** Track taken up drawn back, mm for each metre of flat cloth. */
	readonly packing: number;
	/** Between hooks, mm; null = as the system spaces its gliders. */
	readonly hookSpacing: number | null;
	/** How much of a fold lies behind the track's centre line, 0 to 1: a wave hangs under the track, the others before it. */
	readonly behind: number;
}

/** Common practice, no source. */
export const USUAL_HEADINGS: Readonly<Record<Heading, UsualHeading>> = {
	pencil: { packing: 80, hookSpacing: null, behind: 0.25 },
	pinch: { packing: 90, hookSpacing: 110, behind: 0.25 },
	goblet: { packing: 110, hookSpacing: 120, behind: 0.25 },
	box: { packing: 100, hookSpacing: 120, behind: 0.1 },
	wave: { packing: 65, hookSpacing: null, behind: 0.5 },
};
