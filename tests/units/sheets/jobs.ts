import { readFileSync } from "node:fs";
import { type BayPlan, type Job, parseJob, planJob, readJobText } from "@baywright/setout";

export interface Planned {
	readonly job: Job;
	readonly plans: readonly BayPlan[];
	readonly plan: BayPlan;
}

/** A job of one bay, 900, 1800 and 900 square, with whatever else is given. */
export function planned(bay: object = {}, more: object = {}): Planned {
	const corners = [
		[0, 0],
		[0, 900],
		[1800, 900],
		[1800, 0],
	];
	const parsed = parseJob({
		format: "baywright-job",
		version: 1,
		title: "Test",
		bays: [{ id: "b1", corners, ...bay }],
		...more,
	});
	if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
	return withPlans(parsed.job);
}

export function example(name: string): Planned {
	const read = readJobText(readFileSync(new URL(`../../../examples/${name}.baywright.json`, import.meta.url), "utf8"));
	if (!read.ok) throw new Error(JSON.stringify(read.problems));
	return withPlans(read.job);
}

function withPlans(job: Job): Planned {
	const plans = planJob(job);
	return { job, plans, plan: plans[0] as BayPlan };
}
