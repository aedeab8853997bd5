import { readFile } from "node:fs/promises";
import { resolve } from "node:path";
import { csvProblemLine, type Job, readReadingsCsv } from "@baywright/setout";
import { textOf } from "./file-text.ts";
import { quoted } from "./text/plain.ts";

export type WithReadings =
	| { readonly ok: true; readonly job: Job }
	| { readonly ok: false; readonly lines: readonly string[] };

/** The job with the readings of a CSV in place of those of one bay: the bay named, or the only one. A line for everything that is wrong. */
export async function withReadingsOf(
	file: string,
	id: string | undefined,
	job: Job,
	folder: string,
): Promise<WithReadings> {
	const place = bayOf(job, id);
	if (typeof place === "string") return { ok: false, lines: [place] };
	const text = await textOf(file, () => readFile(resolve(folder, file)));
	if (!text.ok) return { ok: false, lines: [text.reason] };
	const bays = [...job.bays];
	const bay = bays[place] as Job["bays"][number];
	const csv = readReadingsCsv(text.text, bay, job.display.length);
	if (!csv.ok) return { ok: false, lines: csv.problems.map((problem) => `${file}: ${csvProblemLine(problem)}`) };
	bays[place] = { ...bay, readings: csv.readings };
	return { ok: true, job: { ...job, bays } };
}

function bayOf({ bays }: Job, id: string | undefined): number | string {
	const ids = bays.map((bay) => quoted(bay.id)).join(", ");
	if (bays.length === 0) return "option --readings: found no bay in the job, allowed a job that has one";
	if (id === undefined)
		return bays.length === 1 ? 0 : `option --readings: found ${bays.length} bays, allowed one, named by --bay: ${ids}`;
	const place = bays.findIndex((bay) => bay.id === id);
	return place < 0 ? `option --bay: found ${quoted(id)}, allowed ${ids}` : place;
}
