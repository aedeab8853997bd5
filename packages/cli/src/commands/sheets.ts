import { existsSync, mkdirSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { setImmediate } from "node:timers/promises";
import { planJob } from "@baywright/setout";
import type { SheetFile } from "@baywright/sheets";
import type { Command } from "../command.ts";
import { complain } from "../complain.ts";
import { eachJob, severalJobs, spoken } from "../each-job.ts";
import { type ExitStatus, FAILED, PLANNED, REFUSED } from "../exit-status.ts";
import { STANDARD_INPUT } from "../job-paths.ts";
import { readOptions } from "../options.ts";
import { isRefused } from "../show/findings.ts";
import { count } from "../show/section.ts";
import { plain, quoted } from "../text/plain.ts";
import type { World } from "../world.ts";
import { writeWhole } from "../write-whole.ts";
import { readSheetsOrder, SHEETS_OPTIONS, type SheetsOrder } from "./sheets-order.ts";

export const sheets: Command = {
	name: "sheets",
	usage: "sheets JOB… --out DIR [--only fitting,bends] [--paper A4] [--format pdf]",
	summary: "sheets to work from, from the survey to the hand-over; bend templates at true size",
	about:
		"Writes the sheets of every bay of each job into a folder, which is made if there is none; of several jobs each has a folder of its own in it. " +
		"Bend templates must be printed at 100 %: where the bars on them do not measure 100 mm, type what they measure with --measured.",
	options: [
		["--out DIR", "the folder to write into"],
		["--only NAMES", "only these sheets, parted by commas; all of them when left out"],
		["--paper SIZE", "A4, the size when left out, A3, A2, A1, A0, Letter or Tabloid"],
		["--format NAMES", "any of pdf, svg, dxf, csv, parted by commas; pdf when left out"],
		[
			"--measured MM",
			"what the bars of an earlier print measured, across and down as in 98.5x98.7, or once for both; of a print made with that, after a comma: 98.5,99.8",
		],
		["--strips PAPER", "sheets when left out; long: each piece on one page to scale; roll: at true size"],
		["--date DATE", "date of issue, as in 2026-11-27; today when left out"],
		["--force", "write over files that are there"],
	],
	example: "sheets examples/quay-cottage.baywright.json --out sheets",
	run,
};

async function run(args: readonly string[], world: World): Promise<ExitStatus> {
	const options = readOptions(args, SHEETS_OPTIONS);
	if (!options.ok) return complain(world, `sheets: ${options.message}`);
	// Loaded only here: no other command needs the writers and their letters.
	const { FORMATS, PAPERS, SHEET_NAMES, composeSheets, missingLetters, sheetFiles } = await import("@baywright/sheets");
	const order = readSheetsOrder(options, { formats: FORMATS, names: SHEET_NAMES, papers: PAPERS });
	if (typeof order === "string") return complain(world, `sheets: ${order}`);
	const several = severalJobs(options.operands, world);
	const taken = new Set<string>();
	let stopped = false;
	const unwatch = world.onBreak?.(() => {
		stopped = true;
	});
	try {
		return await eachJob(options.operands, world, {
			planned: async (job, name) => {
				if (stopped) return FAILED;
				const plans = planJob(job);
				const composed = composeSheets(job, plans, order.options, order.only);
				const files = sheetFiles(composed, order.formats);
				const folder = several ? join(order.out, ownFolder(name, taken)) : order.out;
				const written = await writeAll(files, folder, order, `${spoken(name)}: `, world, () => stopped);
				if (!written) return FAILED;
				const missing = missingLetters(composed);
				if (missing.length > 0)
					world.out(
						`  Drawn as empty boxes, because the sheets have no such letters: ${plain(missing.slice(0, MOST_NAMED).join(" "))}\n`,
					);
				return plans.some(isRefused) ? REFUSED : PLANNED;
			},
		});
	} finally {
		unwatch?.();
	}
}

/** Letters named before the rest are left out. */
const MOST_NAMED = 20;

/** A job's folder is called as its file is; files of the same name in several folders are numbered. */
function ownFolder(name: string, taken: Set<string>): string {
	const stem = name === STANDARD_INPUT ? "job" : basename(name).replace(/(?:\.baywright)?\.json$/i, "") || "job";
	let folder = stem;
	for (let number = 2; taken.has(folder.toLowerCase()); number++) folder = `${stem}-${number}`;
	taken.add(folder.toLowerCase());
	return folder;
}

/** Writes every file, or says why not: none is begun while one of them is there already and may not be written over. */
async function writeAll(
	files: readonly SheetFile[],
	folder: string,
	{ force }: SheetsOrder,
	about: string,
	world: World,
	isStopped: () => boolean,
): Promise<boolean> {
	if (files.length === 0) {
		world.out(`${about}nothing to write: no bay has such sheets\n`);
		return true;
	}
	const path = resolve(world.folder, folder);
	const there = files.filter(({ name }) => existsSync(join(path, name)));
	if (there.length > 0 && !force) {
		complain(
			world,
			`${about}found ${quoted(join(folder, there[0]?.name ?? ""))} there already${there.length > 1 ? ` and ${there.length - 1} more` : ""}, allowed a folder without them, or --force to write over them; nothing was written`,
		);
		return false;
	}
	try {
		mkdirSync(path, { recursive: true });
	} catch {
		complain(
			world,
			`${about}cannot make the folder ${quoted(folder)}, allowed a place where one can be made; nothing was written`,
		);
		return false;
	}
	try {
		for (const [i, { name, make }] of files.entries()) {
			world.progress?.(`sheets: ${i + 1} of ${files.length}, ${name}`);
			await setImmediate();
			if (isStopped()) {
				world.progress?.("");
				complain(world, `${about}broken off: ${i} of ${count(files.length, "file")} written, each of them whole`);
				return false;
			}
			writeWhole(path, name, await make());
		}
	} finally {
		world.progress?.("");
	}
	world.out(
		`${about}${count(files.length, "file")} written to ${folder}\n${files.map(({ name }) => `  ${name}\n`).join("")}`,
	);
	return true;
}
