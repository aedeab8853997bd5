import { type Wall, wallSchema } from "./bay-schema.ts";
import { migrate } from "./migrate.ts";
import { issueProblems, type Problem } from "./problem.ts";
import { referenceProblems } from "./references.ts";
import { type Job, jobSchema } from "./schema.ts";

/** A job ready to plan, or every problem that the file has. */
export type Parsed =
	| { readonly ok: true; readonly job: Job }
	| { readonly ok: false; readonly problems: readonly Problem[] };

/** Migrates, checks and fills in a job file. Its argument, anything at all, is never changed. */
export const parseJob = (input: unknown): Parsed => {
	const migrated = migrate(input);
	if (!migrated.ok) return { ok: false, problems: [migrated.problem] };
	const read = jobSchema.safeParse(migrated.file);
	const references = referenceProblems(migrated.file);
	if (!read.success)
		return { ok: false, problems: [...issueProblems(migrated.file, read.error.issues), ...references] };
	if (references.length > 0) return { ok: false, problems: references };
	return { ok: true, job: { ...read.data, bays: read.data.bays.map(withAllWalls) } };
};

const withAllWalls = <Some extends { readonly corners: readonly unknown[]; readonly walls: readonly Wall[] }>(
	bay: Some,
) => ({
	...bay,
	walls: bay.corners.slice(1).map((_, i) => bay.walls[i] ?? wallSchema.parse({})),
});
