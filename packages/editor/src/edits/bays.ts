import type { Bay, Job } from "@baywright/setout";
import { onBay, withoutAt } from "./on-bay.ts";

/** A job with one bay more, and where in it the bay stands. */
export interface WithBay {
	readonly job: Job;
	readonly bay: number;
}

/** Puts a bay behind the others. Its id, and its name if that is taken, are counted on so that no other bay has them. */
export const addBay = (job: Job, bay: Bay): WithBay => putIn(job, job.bays.length, bay);

/** Puts a copy of a bay right behind it. */
export function duplicateBay(job: Job, index: number): WithBay {
	const bay = job.bays[index];
	return bay === undefined ? { job, bay: index } : putIn(job, index + 1, bay);
}

/** A job keeps at least one bay. */
export const canRemoveBay = ({ bays }: Job): boolean => bays.length > 1;

export const removeBay = (job: Job, index: number): Job =>
	canRemoveBay(job) && index in job.bays ? { ...job, bays: withoutAt(job.bays, index) } : job;

export const renameBay = (job: Job, index: number, name: string): Job =>
	onBay(job, index, (bay) => (bay.name === name ? bay : { ...bay, name }));

function putIn(job: Job, at: number, bay: Bay): WithBay {
	const id = countOn(bay.id, "-", (it) => job.bays.some((other) => other.id === it));
	const name = bay.name === "" ? "" : countOn(bay.name, " ", (it) => job.bays.some((other) => other.name === it));
	return { job: { ...job, bays: [...job.bays.slice(0, at), { ...bay, id, name }, ...job.bays.slice(at)] }, bay: at };
}

/** `text` if it is free, otherwise with the first number from 2 on at its end that is. */
function countOn(text: string, gap: string, taken: (text: string) => boolean): string {
	if (!taken(text)) return text;
	const stem = text.replace(/[ -]\d+$/, "");
	for (let number = 2; ; number++) if (!taken(`${stem}${gap}${number}`)) return `${stem}${gap}${number}`;
}
