import type { z } from "zod";
import { amount, type DeepReadonly, record } from "../job/fields.ts";

const percent = () => amount("%", { least: 0, most: 100 });

/** What is ordered on top of what the plan needs, in hundredths of it. The defaults are common practice, no source. */
export const spareSchema = record(
	{
		brackets: percent().default(0).describe("Brackets, their bases and joint brackets, %."),
		gliders: percent().default(10).describe("Gliders and hooks, %."),
		fixings: percent().default(10).describe("Screws, plugs and other fixings, %."),
		cord: percent().default(5).describe("Cord, %."),
		cloth: percent().default(0).describe("Cloth, lining and heading tape, %."),
	},
	"the spare: brackets, gliders, fixings, cord and cloth, each in %",
);

export type Spare = DeepReadonly<z.output<typeof spareSchema>>;
