import { type BayPlan, type Job, planJob, planJson, type Region } from "@baywright/setout";
import type { Command } from "../command.ts";
import { complain } from "../complain.ts";
import { eachJob, severalJobs, spoken } from "../each-job.ts";
import { type ExitStatus, PLANNED, REFUSED } from "../exit-status.ts";
import { readOptions } from "../options.ts";
import { cautionsText } from "../show/cautions.ts";
import { isRefused } from "../show/findings.ts";
import { jobText } from "../show/job.ts";
import { quoted } from "../text/plain.ts";
import type { World } from "../world.ts";

export const plan: Command = {
	name: "plan",
	usage: "plan JOB… [--bay ID] [--json]",
	summary: "corners, pieces to cut, stock, brackets, findings",
	about:
		"Plans every bay of each job: where to bend the track, how long to cut it, what stock to buy and where its " +
		"brackets go, with everything found on the way.",
	options: [
		["--bay ID", "only the bay with this id"],
		["--json", "the plan as data: one line for each job, lengths in mm, angles in degrees"],
	],
	example: "plan examples/quay-cottage.baywright.json",
	run,
};

async function run(args: readonly string[], world: World): Promise<ExitStatus> {
	const options = readOptions(args, { bay: { example: "b1" }, json: "alone" });
	if (!options.ok) return complain(world, `plan: ${options.message}`);
	const several = severalJobs(options.operands, world);
	let first = true;
	const cautioned = new Map<Region, boolean>();
	const status = await eachJob(options.operands, world, {
		planned: (job, name) => {
			const bay = options.value("bay");
			if (bay !== undefined && !job.bays.some(({ id }) => id === bay))
				return complain(world, `${spoken(name)}: option --bay: found ${quoted(bay)}, allowed ${bayNames(job)}`);
			const plans = planJob(job).filter(({ id }) => bay === undefined || id === bay);
			if (options.has("json")) world.out(jsonLine(job, plans, several ? name : null));
			else world.out((first ? "" : "\n\n") + jobText(job, plans, several ? name : null));
			first = false;
			const corded = plans.some(({ cords }) => cords !== null);
			cautioned.set(job.region, corded || cautioned.get(job.region) === true);
			return plans.some(isRefused) ? REFUSED : PLANNED;
		},
	});
	if (!first && !options.has("json")) world.out(`${cautionsText(cautioned).join("\n")}\n`);
	return status;
}

function jsonLine(job: Job, plans: readonly BayPlan[], name: string | null): string {
	const json = planJson(plans, job.display.length);
	return `${JSON.stringify(name === null ? json : { job: name, ...json })}\n`;
}

/** Bays named before the rest are only counted. */
const MOST_NAMED = 8;

function bayNames({ bays }: Job): string {
	const named = bays.slice(0, MOST_NAMED).map(({ id }) => id);
	const rest = bays.length - named.length;
	if (named.length === 0) return "none: the job has no bays";
	return rest > 0 ? `${named.join(", ")} and ${rest} more` : named.join(", ");
}
