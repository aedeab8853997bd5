import { type BayPlan, type Job, planJob, planJson } from "@baywright/setout";
import type { Command } from "../command.ts";
import { complain } from "../complain.ts";
import { eachJob, severalJobs, spoken } from "../each-job.ts";
import { type ExitStatus, PLANNED, REFUSED } from "../exit-status.ts";
import { readOptions } from "../options.ts";
import { findingsText, isRefused, tally } from "../show/findings.ts";
import { count } from "../show/section.ts";
import { plain } from "../text/plain.ts";
import { wrap } from "../text/wrap.ts";
import type { World } from "../world.ts";

export const check: Command = {
	name: "check",
	usage: "check JOB… [--json]",
	summary: "whether job files are valid, and their findings",
	about:
		"Says whether each job file is valid and what planning it finds, without the plan itself. What is wrong with an " +
		"invalid file goes to standard error, a line each.",
	options: [["--json", "as data: one line for each job"]],
	example: "check examples",
	run,
};

async function run(args: readonly string[], world: World): Promise<ExitStatus> {
	const options = readOptions(args, { json: "alone" });
	if (!options.ok) return complain(world, `check: ${options.message}`);
	const json = options.has("json");
	const several = severalJobs(options.operands, world);
	const write = (name: string, answer: object) =>
		world.out(`${JSON.stringify(several ? { job: name, ...answer } : answer)}\n`);
	return eachJob(options.operands, world, {
		planned: (job, name) => {
			const plans = planJob(job);
			if (json) write(name, { valid: true, bays: findingsJson(job, plans) });
			else world.out(checkText(job, plans, name));
			return plans.some(isRefused) ? REFUSED : PLANNED;
		},
		invalid: (problems, name) => {
			if (json) write(name, { valid: false, problems });
		},
	});
}

const findingsJson = (job: Job, plans: readonly BayPlan[]) =>
	planJson(plans, job.display.length).bays.map(({ id, findings }) => ({ id, findings }));

function checkText(job: Job, plans: readonly BayPlan[], name: string): string {
	const lines = [
		...wrap(`${plain(spoken(name))}: valid, ${count(plans.length, "bay")}`),
		...plans.flatMap((plan) => [
			...wrap(`Bay ${plain(plan.id)}: ${tally(plan)}`, { indent: "  " }),
			...findingsText(plan, job.display.length).map((line) => `  ${line}`),
		]),
	];
	return `${lines.join("\n")}\n`;
}
