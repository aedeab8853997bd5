import { z } from "zod";
import {
	amount,
	amountOrNull,
	type DeepReadonly,
	index,
	mm,
	mmOrNull,
	NOT_NEGATIVE,
	OVER_ZERO,
	record,
} from "./fields.ts";

const sd = () => mmOrNull(OVER_ZERO).describe("One standard deviation, mm; null = the kind's default.");

const kind = <const Name extends string>(name: Name) => z.literal(name, { error: `"${name}"` });

/** One thing taped or measured on site. */
export const readingSchema = z.discriminatedUnion(
	"kind",
	[
		record(
			{
				kind: kind("run"),
				wall: index("a wall"),
				value: mm(OVER_ZERO).describe("Straight, corner to corner, mm."),
				sd: sd(),
			},
			"a run",
		),
		record(
			{
				kind: kind("diagonal"),
				from: index("a corner"),
				to: index("a corner"),
				value: mm(OVER_ZERO).describe("Straight, corner to corner, mm."),
				sd: sd(),
			},
			"a diagonal",
		),
		record(
			{
				kind: kind("angle"),
				corner: index("a corner"),
				value: amount("degrees", { over: 0, under: 360 }).describe(
					"Interior angle between the tangents of the walls, degrees.",
				),
				sd: amountOrNull("degrees", OVER_ZERO).describe("One standard deviation, degrees; null = the kind's default."),
			},
			"an angle",
		),
		record(
			{
				kind: kind("chord"),
				corner: index("a corner"),
				arm: mm(OVER_ZERO).describe("Length of both arms from the corner, mm."),
				value: mm(OVER_ZERO).describe("Between the ends of the arms, mm."),
				sd: sd(),
			},
			"a chord",
		),
		record(
			{
				kind: kind("rise"),
				wall: index("a wall"),
				at: mmOrNull(NOT_NEGATIVE).describe("mm along the face from the wall's left corner; null = mid-chord."),
				value: mm().describe("mm; + away from the room."),
				sd: sd(),
			},
			"a rise",
		),
		record(
			{
				kind: kind("square"),
				corner: index("a corner"),
				wall: index("a wall"),
				value: mm().describe("Offset of the corner from the line of the wall, mm; + on the room's side."),
				sd: sd(),
			},
			"a square",
		),
	],
	{
		error: (issue) =>
			issue.code === "invalid_union" && issue.note !== undefined
				? "one of run, diagonal, angle, chord, rise, square"
				: "a reading: an object with its kind",
	},
);

export type Reading = DeepReadonly<z.output<typeof readingSchema>>;
