import { z } from "zod";
import { clothSchema } from "../library/cloth.ts";
import { priceSchema } from "../library/price.ts";
import { spareSchema } from "../library/spare.ts";
import { trackSystemSchema } from "../library/system.ts";
import { baySchema } from "./bay-schema.ts";
import { type DeepReadonly, list, listOrNone, oneOf, record, text } from "./fields.ts";

export const JOB_FORMAT = "baywright-job";

/** The version written; older ones are migrated to it, newer ones refused. */
export const JOB_VERSION = 1;

const displaySchema = record(
	{
		length: oneOf(["mm", "cm", "in"])
			.default("mm")
			.describe("Unit of every length shown or typed; files are always in mm."),
	},
	"the display: length",
);

/** The job file. Lengths mm, angles degrees, masses kg, areal mass g/m². */
export const jobSchema = record(
	{
		format: z.literal(JOB_FORMAT, { error: `"${JOB_FORMAT}"` }),
		version: z.literal(JOB_VERSION, { error: `${JOB_VERSION}` }),
		title: text(),
		site: text(),
		notes: text(),
		display: displaySchema.prefault({}),
		region: oneOf(["GB", "IE", "EU", "US", "CA", "AU", "other"]).default("GB").describe("Whose cautions apply."),
		systems: listOrNone(trackSystemSchema, "track systems").describe(
			"The job's own; an id here hides the built-in one.",
		),
		cloths: listOrNone(clothSchema, "cloths"),
		prices: listOrNone(priceSchema, "prices"),
		spare: spareSchema.prefault({}),
		bays: list(baySchema, "bays"),
	},
	"a job: an object",
);

/** A job as planned: every default filled in, one wall for each consecutive pair of corners. */
export type Job = DeepReadonly<z.output<typeof jobSchema>>;
export type LengthUnit = Job["display"]["length"];
export type Region = Job["region"];
