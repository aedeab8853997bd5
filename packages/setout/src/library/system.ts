import { z } from "zod";
import {
	amount,
	amountOrNull,
	type DeepReadonly,
	FROM_ONE,
	identifier,
	list,
	mm,
	mmOrNull,
	NOT_NEGATIVE,
	OVER_ZERO,
	record,
} from "../job/fields.ts";
import { packingSchema } from "./heading.ts";

const SCREWS = "a whole number, 0 or more and 12 or less";

/**
 * A track system: everything its leaflet says that a set-out needs. Lengths mm, radii on the centre line, masses kg.
 * Every figure is editable, because the leaflet in the fitter's hand decides. The defaults are cautious where a
 * missing figure could spoil a fit (no joints, no brackets on a bend) and common where it could not.
 */
export const trackSystemSchema = record(
	{
		id: identifier().describe("What a bay's track calls it by."),
		name: identifier().describe("For people."),
		minRadius: record(
			{
				internal: mm(OVER_ZERO).describe("Bends that turn to the right, round an internal corner, mm."),
				external: mm(OVER_ZERO).describe("Bends that turn to the left, round an external corner, mm."),
			},
			"the least radii, internal and external",
		).describe("Least bend radius on the centre line, mm."),
		preferredRadius: mm(OVER_ZERO)
			.default(310)
			.describe("Radius a bend is given where there is room, mm on the centre line; never under the least."),
		projection: record(
			{
				default: mm(OVER_ZERO).describe("mm"),
				min: mm(OVER_ZERO).describe("mm"),
				max: mm(OVER_ZERO).describe("mm"),
			},
			"the projection: default, min and max",
		).describe("Wall face to centre line that the brackets reach, mm."),
		clearance: mm(OVER_ZERO)
			.default(10)
			.describe(
				"Least distance of the centre line from any wall or obstacle, mm: half the track and what hangs in it.",
			),
		straightBesideBend: mm(NOT_NEGATIVE)
			.default(40)
			.describe("Straight track needed at each end of a bend, mm: room for the bracket beside it."),
		profile: record(
			{
				width: mm(OVER_ZERO).default(16).describe("Across the track seen from above, mm."),
				height: mm(OVER_ZERO).default(20).describe("mm"),
			},
			"the track's section: width and height",
		)
			.prefault({})
			.describe("Outside size of the track's section, mm."),
		bracket: record(
			{
				maxSpacing: mm(FROM_ONE).describe("Greatest distance between brackets, mm along the centre line."),
				endMax: mm(OVER_ZERO).default(100).describe("From the cut end of the track to its last bracket at most, mm."),
				besideBendMax: mm(OVER_ZERO)
					.default(100)
					.describe("From the end of a bend to the bracket beside it at most, mm."),
				acrossBendMax: mmOrNull(OVER_ZERO).describe(
					"Greatest distance along the track between the brackets of one bend, mm; null = no limit.",
				),
				jointCompanion: mm(OVER_ZERO)
					.default(150)
					.describe("From a joint's bracket to its companion on each side, mm."),
				width: mm(FROM_ONE).default(30).describe("Along the track, mm."),
				base: z
					.boolean({ error: "true or false" })
					.default(false)
					.describe("A base is screwed on first and the bracket goes on it."),
				screws: z
					.int({ error: SCREWS })
					.min(0, { error: SCREWS })
					.max(12, { error: SCREWS })
					.default(2)
					.describe("Screws that one bracket, or its base, is fixed with."),
				maxLoad: amountOrNull("kg", OVER_ZERO).describe(
					"Greatest load on one bracket, kg; null = the leaflet states none.",
				),
				carryRadius: mmOrNull(OVER_ZERO).describe(
					"Least radius of a bend that may itself carry brackets, mm; null = no bend may.",
				),
			},
			"the brackets",
		),
		joint: record(
			{ clearOfBend: mm(NOT_NEGATIVE).describe("Straight between a joint and the nearest bend, mm.") },
			"the joint, or null",
		)
			.nullable()
			.default(null)
			.describe("null = the track cannot be joined."),
		stock: list(
			record(
				{
					length: mm(OVER_ZERO).describe("mm"),
					cost: amountOrNull("", NOT_NEGATIVE).describe(
						"Price of one length, in the user's own money; null = not known.",
					),
				},
				"a stock length",
			),
			"stock lengths, at least one",
		)
			.min(1, { error: "a list of stock lengths, at least one" })
			.describe("Lengths that the track is sold in."),
		kerf: mm(NOT_NEGATIVE).default(3).describe("Lost in each saw cut, mm."),
		corded: z.boolean({ error: "true or false" }).default(false).describe("Drawn by a cord rather than by hand."),
		endTakeUp: mm(NOT_NEGATIVE)
			.default(0)
			.describe("What end hardware takes off each end of the track, mm; never off a joint."),
		overlapStraight: mm(NOT_NEGATIVE)
			.default(0)
			.describe("Straight track that a pair needs where its curtains meet, mm."),
		massPerMetre: amount("kg", OVER_ZERO).default(0.3).describe("Track alone, kg for each metre."),
		gliderSpacing: mm(FROM_ONE).default(80).describe("Along a drawn curtain, mm."),
		packing: packingSchema,
	},
	"a track system",
);

export type TrackSystem = DeepReadonly<z.output<typeof trackSystemSchema>>;
