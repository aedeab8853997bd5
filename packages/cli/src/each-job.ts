import { readFile } from "node:fs/promises";
import { resolve } from "node:path";
import { type Job, type Problem, problemLine, readJobText } from "@baywright/setout";
import { complain, complainOf } from "./complain.ts";
import { type ExitStatus, FAILED, together } from "./exit-status.ts";
import { textOf } from "./file-text.ts";
import { isOneJob, type JobPath, jobPaths, STANDARD_INPUT } from "./job-paths.ts";
import type { World } from "./world.ts";

export interface JobWork {
	/** What to do with a job that could be read. `name` as the user would call it. */
	readonly planned: (job: Job, name: string) => ExitStatus | Promise<ExitStatus>;
	/** What to do with a file that is no valid job, besides the lines on standard error. */
	readonly invalid?: (problems: readonly Problem[], name: string) => void;
}

/** Does the work for every job typed; what fails is said and does not keep the others from being done. */
export async function eachJob(operands: readonly string[], world: World, work: JobWork): Promise<ExitStatus> {
	if (operands.length === 0 || operands.includes(""))
		return complain(world, "job: found nothing, allowed job files, folders, or - for standard input");
	const statuses: ExitStatus[] = [];
	for (const path of jobPaths(operands, world.folder)) {
		try {
			statuses.push(await oneJob(path, world, work));
		} catch (error) {
			statuses.push(complainOf(world, error, `${spoken(path.name)}: `));
		}
	}
	return together(statuses);
}

/** Whether what is written needs to say which job it is of. */
export const severalJobs = (operands: readonly string[], world: World): boolean => !isOneJob(operands, world.folder);

async function oneJob(path: JobPath, world: World, work: JobWork): Promise<ExitStatus> {
	if (!path.ok) return complain(world, path.reason);
	const text = await textOf(spoken(path.name), async () =>
		path.name === STANDARD_INPUT ? world.input() : readFile(resolve(world.folder, path.name)),
	);
	if (!text.ok) {
		work.invalid?.([{ path: "", found: text.reason, allowed: "a job file that can be read" }], path.name);
		return complain(world, text.reason);
	}
	const parsed = readJobText(text.text);
	if (parsed.ok) return work.planned(parsed.job, path.name);
	for (const problem of parsed.problems) complain(world, `${spoken(path.name)}: ${problemLine(problem)}`);
	work.invalid?.(parsed.problems, path.name);
	return FAILED;
}

/** What people call it. */
export const spoken = (name: string): string => (name === STANDARD_INPUT ? "standard input" : name);
