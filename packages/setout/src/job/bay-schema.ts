import type { z } from "zod";
import { curtainSchema, makeUpSchema } from "./curtain-schema.ts";
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
	pair,
	record,
	text,
} from "./fields.ts";
import { fittedSchema } from "./fitted-schema.ts";
import { readingSchema } from "./reading-schema.ts";
import { trackSchema } from "./track-schema.ts";

/** One run of wall face between two corners. Left out = all defaults. */
export const wallSchema = record(
	{
		rise: mm().default(0).describe("How far a bowed wall stands off its chord at mid-chord, mm; + away from the room."),
		projection: mmOrNull(OVER_ZERO).describe(
			"Wall face to the track's centre line on this wall, mm; null = the track's.",
		),
		surface: oneOf(["batten", "masonry", "plasterboard", "concrete", "joists", "unknown"]).default("unknown"),
		noDrill: listOrNone(pair("a stretch [from, to], mm from the wall's left corner"), "stretches [from, to]").describe(
			"Stretches that take no hole, mm along the face from the wall's left corner.",
		),
	},
	"a wall",
);

const openingSchema = record(
	{
		wall: index("a wall"),
		from: mm().describe("mm along the face from the wall's left corner."),
		to: mm().describe("mm along the face from the wall's left corner."),
		sill: mmOrNull(NOT_NEGATIVE).describe("Above the floor, mm; null = not given."),
		head: mmOrNull(NOT_NEGATIVE).describe("Above the floor, mm; null = not given."),
		sillDepth: mm(NOT_NEGATIVE).default(0).describe("How far its sill board stands off the wall face, mm; 0 = none."),
	},
	"an opening",
);

const obstacleSchema = record(
	{
		kind: oneOf([
			"switch",
			"socket",
			"radiator",
			"handle",
			"pipe",
			"vent",
			"sensor",
			"lintel",
			"sealed-unit",
			"other",
		]).default("other"),
		wall: index("a wall"),
		from: mm().describe("mm along the face from the wall's left corner."),
		to: mm().describe("mm along the face from the wall's left corner."),
		bottom: mmOrNull(NOT_NEGATIVE).describe("Above the floor, mm; null = down to the floor."),
		top: mmOrNull(NOT_NEGATIVE).describe("Above the floor, mm; null = up to the ceiling."),
		depth: mm(NOT_NEGATIVE).default(0).describe("How far it stands off the wall face, mm; 0 = flush."),
	},
	"an obstacle",
);

/** One window bay: its wall faces, what is in them, and the one track that hangs there. */
export const baySchema = record(
	{
		id: identifier().describe("Names the bay in plans and commands."),
		name: text(),
		corners: list(pair("a corner [x, y], both numbers of mm"), "corners [x, y]").describe(
			"Corners of the wall face, left to right as seen from the room, mm, y up; the room is on the right of travel.",
		),
		walls: listOrNone(wallSchema, "walls").describe(
			"One for each consecutive pair of corners; those left out have all defaults.",
		),
		ceiling: mmOrNull(OVER_ZERO).describe("Height of the ceiling above the floor, mm."),
		ceilingSurface: oneOf(["plasterboard", "joists", "concrete", "timber", "unknown"]).default("unknown"),
		readings: listOrNone(readingSchema, "readings"),
		openings: listOrNone(openingSchema, "openings"),
		obstacles: listOrNone(obstacleSchema, "obstacles"),
		track: trackSchema.prefault({}),
		curtains: listOrNone(curtainSchema, "curtains").describe("[] = as the track's draw says."),
		makeUp: makeUpSchema.prefault({}),
		fitted: fittedSchema.prefault({}),
	},
	"a bay",
);

export type Bay = DeepReadonly<z.output<typeof baySchema>>;
export type Wall = Bay["walls"][number];
export type Opening = Bay["openings"][number];
export type Obstacle = Bay["obstacles"][number];
