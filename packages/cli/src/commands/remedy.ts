import { applyChange, describe, type Finding, type Job, planJob, problemLine, serialiseJob } from "@baywright/setout";
import type { Command } from "../command.ts";
import { complain } from "../complain.ts";
import { eachJob, spoken } from "../each-job.ts";
import { type ExitStatus, PLANNED, REFUSED } from "../exit-status.ts";
import { readOptions } from "../options.ts";
import { isRefused } from "../show/findings.ts";
import { quoted } from "../text/plain.ts";
import type { World } from "../world.ts";
import { writeWhole } from "../write-whole.ts";

export const remedy: Command = {
	name: "remedy",
	usage: "remedy JOB CODE [--bay ID] [--at N] [--choice N] [--out FILE]",
	summary: "a job with a finding's remedy applied",
	about:
		"Applies the remedy of a finding and writes the job that comes of it, to standard output or a file. CODE is the finding's, " +
		"as `check --json` gives it. The status is that of planning the new job.",
	options: [
		["--bay ID", "only findings of the bay with this id"],
		["--at N", "only findings at this corner, wall or obstacle, counted from 0 as in the file"],
		["--choice N", "which remedy, where there are several; 1, the first, unless given"],
		["--out FILE", "where to; written whole or not at all"],
	],
	example: "remedy examples/pepperpot.baywright.json leg-too-short --out cured.baywright.json",
	run,
};

async function run(args: readonly string[], world: World): Promise<ExitStatus> {
	const options = readOptions(args, {
		bay: { example: "b1" },
		at: { example: "1" },
		choice: { example: "2" },
		out: { example: "cured.baywright.json" },
	});
	if (!options.ok) return complain(world, `remedy: ${options.message}`);
	const [path, code, ...more] = options.operands;
	if (path === undefined || code === undefined || more.length > 0)
		return complain(
			world,
			`remedy: found ${options.operands.length} names, allowed two: a job file and a finding's code`,
		);
	const at = wholeNumber(options.value("at"), 0);
	const choice = wholeNumber(options.value("choice") ?? "1", 1);
	if (at === "bad")
		return complain(world, `remedy: option --at: found ${quoted(options.value("at") ?? "")}, allowed 0, 1, 2 …`);
	if (choice === "bad" || choice === undefined)
		return complain(
			world,
			`remedy: option --choice: found ${quoted(options.value("choice") ?? "")}, allowed 1, 2, 3 …`,
		);
	const wanted = { code, bay: options.value("bay"), at, choice };
	return eachJob([path], world, {
		planned: (job, name) => applyRemedy(job, name, wanted, options.value("out"), world),
	});
}

interface Wanted {
	readonly code: string;
	readonly bay: string | undefined;
	readonly at: number | undefined;
	readonly choice: number;
}

function applyRemedy(job: Job, name: string, wanted: Wanted, out: string | undefined, world: World): ExitStatus {
	const say = (line: string) => complain(world, `${spoken(name)}: ${line}`);
	const plans = planJob(job);
	const found = plans.flatMap(({ findings, projections }) =>
		findings.map((finding) => ({ finding, walls: projections.length })),
	);
	const match = found.find(({ finding }) => isWanted(finding, wanted));
	if (match === undefined) {
		const findings = found.map(({ finding }) => finding);
		const elsewhere = findings.filter((finding) => isWanted(finding, { ...wanted, at: undefined })).map(placeOf);
		return elsewhere.length > 0
			? say(`option --at: found ${wanted.at}, allowed ${[...new Set(elsewhere)].join(", ")}`)
			: say(`finding: found no ${quoted(wanted.code)} there, allowed ${codesOf(findings)}`);
	}
	const { remedies } = match.finding;
	const chosen = remedies[wanted.choice - 1];
	if (chosen === undefined) {
		const allowed = remedies.length === 0 ? "nothing: this finding has no remedy" : `1 to ${remedies.length}`;
		return say(`option --choice: found ${wanted.choice}, allowed ${allowed}`);
	}
	const changed = applyChange(job, chosen.change);
	if (!changed.ok) return say(changed.problems.map(problemLine).join("; "));
	const text = serialiseJob(changed.job);
	if (out === undefined) world.out(text);
	else {
		writeWhole(world.folder, out, text);
		const label = describe(match.finding, { unit: job.display.length, walls: match.walls }).remedies[wanted.choice - 1];
		world.out(`${label}: written to ${out}\n`);
	}
	return planJob(changed.job).some(isRefused) ? REFUSED : PLANNED;
}

function isWanted({ code, where }: Finding, wanted: Wanted): boolean {
	if (code !== wanted.code || (wanted.bay !== undefined && where.bay !== wanted.bay)) return false;
	return wanted.at === undefined || [where.corner, where.wall, where.obstacle].includes(wanted.at);
}

const placeOf = ({ where: { obstacle, corner, wall } }: Finding): number | "none" =>
	obstacle ?? corner ?? wall ?? "none";

function codesOf(findings: readonly Finding[]): string {
	const codes = [...new Set(findings.filter(({ remedies }) => remedies.length > 0).map(({ code }) => code))];
	return codes.length === 0 ? "none: no finding of this job has a remedy" : codes.join(", ");
}

function wholeNumber(text: string | undefined, least: number): number | undefined | "bad" {
	if (text === undefined) return undefined;
	return /^\d{1,6}$/.test(text) && Number(text) >= least ? Number(text) : "bad";
}
