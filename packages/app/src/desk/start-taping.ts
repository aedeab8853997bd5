import { addBay, emptyBay, newJob, type WithBay } from "@baywright/editor";
import type { Bay, Job } from "@baywright/setout";
import { replaceJob } from "../storage/keeper.ts";
import { desk } from "./desk.ts";
import { screen, setStage, toTop } from "./screen.ts";

/** A new job with one bay whose walls are still to be taped, with the walls tool wanted in hand. */
export function startTaping(spare = false): void {
	startJob(newJob(emptyBay()), "start taping a bay", spare);
	screen.getState().set({ wanted: "walls" });
}

/** Begins a job at its first stage. */
export function startJob(job: Job, label: string, spare = false): void {
	setStage("survey");
	void replaceJob(job, label, spare);
}

/** Puts one more bay into the job and on the table. */
export function addToJob(bay: Bay, label: string): void {
	putOnTable(addBay(desk.getState().job, bay), label);
	setStage("survey");
	if (bay.corners.length === 0) screen.getState().set({ wanted: "walls" });
}

/** Makes a job with another set of bays the next step, one of them on the table. */
export function putOnTable({ job, bay }: WithBay, label: string): void {
	desk.getState().commit(label, job);
	desk.getState().showBay(bay);
	screen.getState().close();
	toTop();
}
