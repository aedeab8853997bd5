import { z } from "zod";
import { jobSchema } from "./schema.ts";

/** JSON Schema (draft 2020-12) of the job file as it may be written: only the required keys required. */
export const jobJsonSchema = (): object => z.toJSONSchema(jobSchema, { io: "input" });
