import { jsonText } from "./json-text.ts";
import { type Parsed, parseJob } from "./parse.ts";
import type { Problem } from "./problem.ts";
import { foundText } from "./problem.ts";
import { type Job, jobSchema } from "./schema.ts";

/** Reads the text of a job file. Text that is not JSON is a problem like any other. */
export const readJobText = (text: string): Parsed => {
	const plain = text.replace(/^\uFEFF/, "");
	try {
		return parseJob(JSON.parse(plain));
	} catch (error) {
		if (!(error instanceof SyntaxError)) throw error;
		return { ok: false, problems: [syntaxProblem(plain, error.message)] };
	}
};

/** The text of a job file, keys always in the same order, so that two saves of one job are the same to the letter. */
export const serialiseJob = (job: Job): string => {
	const ordered = jobSchema.safeParse(job);
	// A job that the schema refuses is written as it stands: a wrong order is better than lost work.
	return jsonText(ordered.success ? ordered.data : job);
};

/** Engines say where in different ways, or not at all; the place is given where it can be had. */
const syntaxProblem = (text: string, message: string): Problem => {
	const allowed = "JSON: a comma, colon, quote or bracket is wrong or missing here";
	if (text.trim() === "") return { path: "", found: "nothing", allowed: "JSON" };
	const offset = faultOffset(text, message);
	if (offset === undefined) return { path: "", found: foundText(text), allowed };
	const before = text.slice(0, offset).split("\n");
	const found = offset >= text.trimEnd().length ? "the end of the file" : foundText(text.slice(offset).split("\n")[0]);
	return { path: `line ${before.length}, column ${(before.at(-1) ?? "").length + 1}`, found, allowed };
};

const faultOffset = (text: string, message: string): number | undefined => {
	const position = /position (\d+)/.exec(message);
	if (position !== null) return Number(position[1]);
	const lineColumn = /line (\d+) column (\d+)/.exec(message);
	if (lineColumn !== null) {
		const above = text.split("\n").slice(0, Number(lineColumn[1]) - 1);
		return above.reduce((sum, line) => sum + line.length + 1, 0) + Number(lineColumn[2]) - 1;
	}
	return /end of|EOF/i.test(message) ? text.length : undefined;
};
