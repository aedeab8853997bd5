import { type SettledAnswer, settleAnswer, settleJson } from "@baywright/setout";
import type { Command } from "../command.ts";
import { complain } from "../complain.ts";
import { eachJob, severalJobs } from "../each-job.ts";
import { type ExitStatus, PLANNED, REFUSED, together } from "../exit-status.ts";
import { readOptions } from "../options.ts";
import { withReadingsOf } from "../readings-file.ts";
import { surveyText } from "../show/survey.ts";
import { systemOf } from "../system-of.ts";
import type { World } from "../world.ts";

export const settle: Command = {
	name: "settle",
	usage: "settle JOB… [--readings FILE.csv] [--bay ID] [--json]",
	summary: "corners by the readings, which reading to doubt, which to take next",
	about:
		"Settles the corners of every bay by what was taped: how well the readings agree, which of them to doubt, how sure each " +
		"cut length is, and which readings to take until all are sure enough. A bay that its readings do not settle counts as refused.",
	options: [
		[
			"--readings FILE.csv",
			"readings that take the place of all that the job has for the bay: headings kind, value and what each kind needs of wall, " +
				"corner, from, to, arm, at, sd; bare lengths in the job's unit. For one JOB; the file itself is not changed",
		],
		["--bay ID", "the bay that the CSV is of; not needed where the job has only one"],
		["--json", "as data: one line for each job, lengths in mm, angles in degrees"],
	],
	example: "settle examples/quay-cottage.baywright.json",
	run,
};

const OPTIONS = { readings: { example: "taped.csv" }, bay: { example: "b1" }, json: "alone" } as const;

async function run(args: readonly string[], world: World): Promise<ExitStatus> {
	const options = readOptions(args, OPTIONS);
	if (!options.ok) return complain(world, `settle: ${options.message}`);
	const file = options.value("readings");
	const several = severalJobs(options.operands, world);
	if (file === undefined && options.has("bay"))
		return complain(world, "settle: option --bay: found without --readings, allowed only with it");
	if (file !== undefined && several && options.operands.length > 0)
		return complain(world, "settle: option --readings: found several jobs, allowed one");
	let first = true;
	return eachJob(options.operands, world, {
		planned: async (saved, name) => {
			const taken = file === undefined ? null : await withReadingsOf(file, options.value("bay"), saved, world.folder);
			if (taken?.ok === false) return together(taken.lines.map((line) => complain(world, `settle: ${line}`)));
			const job = taken?.job ?? saved;
			const answers = job.bays.map((bay): SettledAnswer => settleAnswer(bay, systemOf(job, bay.track.system)));
			if (options.has("json")) {
				const json = { bays: job.bays.map((bay, i) => settleJson(bay, answers[i] as SettledAnswer)) };
				world.out(`${JSON.stringify(several ? { job: name, ...json } : json)}\n`);
			} else world.out((first ? "" : "\n\n") + surveyText(job, answers, several ? name : null));
			first = false;
			return answers.some(({ ok }) => !ok) ? REFUSED : PLANNED;
		},
	});
}
