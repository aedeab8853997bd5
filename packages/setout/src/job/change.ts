import { applyPatch, type Operation } from "rfc6902";

export type { Operation };

import { type Parsed, parseJob } from "./parse.ts";
import { foundText, type Problem } from "./problem.ts";
import type { Job } from "./schema.ts";

/**
 * Applies a list of edits (RFC 6902, paths from the root of the job) and checks the result. All or nothing: where an
 * edit cannot be made or the result is no good job, only problems come back. The job itself is never changed.
 */
export const applyChange = (job: Job, operations: readonly Operation[]): Parsed => {
	const copy: unknown = JSON.parse(JSON.stringify(job));
	for (const [i, operation] of operations.entries()) {
		const problem = edit(copy, operation, i);
		if (problem !== undefined) return { ok: false, problems: [problem] };
	}
	return parseJob(copy);
};

const OPERATIONS = ["add", "remove", "replace", "move", "copy", "test"];

const edit = (target: unknown, operation: Operation, i: number): Problem | undefined => {
	const at = `change[${i}]`;
	if (typeof operation !== "object" || operation === null)
		return { path: at, found: foundText(operation), allowed: "an edit: an object" };
	const { op, path } = operation;
	if (!OPERATIONS.includes(op))
		return { path: `${at}.op`, found: foundText(op), allowed: `one of ${OPERATIONS.join(", ")}` };
	if (typeof path !== "string" || path === "")
		return { path: `${at}.path`, found: foundText(path), allowed: "a path into the job, as in /bays/0/track/radius" };
	if (attempt(target, operation)) return undefined;
	return {
		path: at,
		found: `${op} ${foundText(path)}`,
		allowed: op === "test" ? "a test that holds" : "an edit of something that the job has",
	};
};

/** The library answers some faults and throws others (a path that is no path at all). */
const attempt = (target: unknown, operation: Operation): boolean => {
	try {
		return applyPatch(target, [operation]).every((fault) => fault === null);
	} catch {
		return false;
	}
};
