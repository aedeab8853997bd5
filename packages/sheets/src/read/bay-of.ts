import { type Job, parseJob } from "@baywright/setout";
import type { WallImport } from "./wall-import.ts";

export interface NewJob {
	readonly title: string;
	/** Of the bay. */
	readonly name: string;
	/** Id of a track system; null = one that suits the walls. */
	readonly system: string | null;
}

/** A job with one bay of these walls, which must have no problem. */
export function bayOf({ corners, rises }: WallImport, { title, name, system }: NewJob): Job {
	const read = parseJob({
		format: "baywright-job",
		version: 1,
		title,
		bays: [
			{
				id: "bay-1",
				name,
				corners,
				walls: rises.map((rise) => ({ rise })),
				track: { system: system ?? suiting(rises) },
			},
		],
	});
	if (!read.ok) throw new Error(`Broken invariant: imported walls make no job: ${read.problems[0]?.path}.`);
	return read.job;
}

/** The plainest that goes round a bow as well as along straights. */
const suiting = (rises: readonly number[]): string => (rises.some((rise) => rise !== 0) ? "flexible" : "light-corded");
