import { z } from "zod";
import {
	type DeepReadonly,
	identifier,
	index,
	list,
	listOrNone,
	mm,
	mmOrNull,
	NOT_NEGATIVE,
	OVER_ZERO,
	oneOf,
	record,
} from "./fields.ts";

/** The system a track has when its bay names none: always built in. */
const DEFAULT_SYSTEM = "light-corded";

/** A place on a wall face. */
export const wallPlaceSchema = record(
	{ wall: index("a wall"), at: mm().describe("mm along the face from the wall's left corner.") },
	"a place on a wall: wall and at",
);

/** One track: what it is, where it runs, and what the user has settled about it. */
export const trackSchema = record(
	{
		system: identifier().default(DEFAULT_SYSTEM).describe("Id of a system of the job or a built-in one."),
		mounting: oneOf(["wall", "ceiling"]).default("wall"),
		projection: mmOrNull(OVER_ZERO).describe("Wall face to centre line, mm; null = the system's default."),
		radius: mmOrNull(OVER_ZERO).describe("Preferred bend radius on the centre line, mm; null = the system's."),
		height: mmOrNull(NOT_NEGATIVE).describe(
			"Above the floor, mm; null = 100 above the highest opening head, or unset.",
		),
		start: wallPlaceSchema.nullable().default(null).describe("Left end of the track; null = 0 on the first wall."),
		end: wallPlaceSchema
			.nullable()
			.default(null)
			.describe("Right end of the track; null = the right end of the last wall."),
		bends: listOrNone(
			record(
				{ corner: index("a corner"), radius: mm(OVER_ZERO).describe("On the centre line, mm.") },
				"a bend: corner and radius",
			),
			"bends",
		).describe("Radii that the user has set."),
		joints: z
			.union([oneOf(["auto", "none"]), list(wallPlaceSchema, "places on a wall")], {
				error: '"auto", "none" or a list of places on a wall',
			})
			.default("auto"),
		brackets: listOrNone(wallPlaceSchema, "places on a wall").describe("Pinned by the user."),
		follow: oneOf(["walls", "smoothest"])
			.default("walls")
			.describe("walls = parallel to every wall; smoothest = the fewest bends inside what the brackets reach."),
		draw: oneOf(["pair", "left", "right", "none"])
			.default("pair")
			.describe("pair from the middle; left = one curtain that stacks left; right; none."),
		cordSide: oneOf(["auto", "left", "right"])
			.default("auto")
			.describe(
				"End at which the cord of a corded track hangs; auto = where its curtain stacks, of a pair on the right.",
			),
		cordLowest: mmOrNull(NOT_NEGATIVE).describe(
			"Lowest point of the cord's loop above the floor, mm; null = as low as the region's advice lets it be.",
		),
	},
	"a track",
);

export type Track = DeepReadonly<z.output<typeof trackSchema>>;
export type WallPlace = DeepReadonly<z.output<typeof wallPlaceSchema>>;
