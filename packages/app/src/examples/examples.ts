import { toDegrees } from "@baywright/geometry";
import { type BayPlan, type Job, libraryOf, type PlanEffort, planBay, readJobText } from "@baywright/setout";

/** A job file of an invented house, ready to open. */
export interface Example {
	readonly file: string;
	readonly job: Job;
	readonly plan: BayPlan;
}

// This module comes with the opening list, and the list shows every one of them.
const files = import.meta.glob<string>("../../../../examples/*.baywright.json", {
	query: "?raw",
	import: "default",
	eager: true,
});

let read: readonly Example[] | null = null;

/** All examples, the plain ones first. One that cannot be read would be a defect of ours and is named. */
export function examples(): readonly Example[] {
	read ??= Object.entries(files)
		.map(([path, text]) => exampleOf(path.slice(path.lastIndexOf("/") + 1), text))
		.sort((a, b) => oddness(a.plan) - oddness(b.plan) || a.file.localeCompare(b.file));
	return read;
}

/** How far a bay is from the square one with three walls, degrees; what cannot be fitted comes last. */
function oddness({ chain, path }: BayPlan): number {
	const turns = chain?.turns.slice(1, -1) ?? [];
	const worst = Math.max(0, ...turns.map((turn) => Math.abs(turn - Math.PI / 2)));
	return toDegrees(worst) + 100 * Math.abs(turns.length - 2) + (path === null ? 1000 : 0);
}

/** A small drawing asks for neither cures nor a ±. */
const SKETCH: PlanEffort = { trials: 0, sureness: false };

function exampleOf(file: string, text: string): Example {
	const parsed = readJobText(text);
	if (!parsed.ok) throw new Error(`${file} is not a valid job`);
	const [bay] = parsed.job.bays;
	if (bay === undefined) throw new Error(`${file} has no bay`);
	return { file, job: parsed.job, plan: planBay(bay, libraryOf(parsed.job), SKETCH) };
}
