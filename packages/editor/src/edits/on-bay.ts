import type { Bay, Job } from "@baywright/setout";

/** A corner as the job file has it: mm, x to the right, y up. */
export type Corner = readonly [x: number, y: number];

/** The job with one of its bays changed. A bay that `change` gives back as it was leaves the job as it was. */
export function onBay(job: Job, index: number, change: (bay: Bay) => Bay): Job {
	const before = job.bays[index];
	if (before === undefined) return job;
	const after = change(before);
	return after === before ? job : { ...job, bays: job.bays.map((bay, i) => (i === index ? after : bay)) };
}

/** One entry of a list changed. */
export function changeAt<Item>(list: readonly Item[], index: number, change: (item: Item) => Item): readonly Item[] {
	return list.map((item, i) => (i === index ? change(item) : item));
}

export function withoutAt<Item>(list: readonly Item[], index: number): readonly Item[] {
	return list.filter((_, i) => i !== index);
}

/** Parts of a mm that coordinates keep: far finer than a tape, coarse enough that files stay readable. */
const KEPT = 1000;

/** mm as a file keeps them; never −0. */
export const kept = (value: number): number => Math.round(value * KEPT) / KEPT + 0;
