import { findSystem, type Job, type TrackSystem } from "@baywright/setout";

/** A job that was read names no other system than one it has. */
export function systemOf(job: Job, id: string): TrackSystem {
	const system = findSystem(job, id);
	if (system === undefined) throw new Error(`Broken invariant: no system "${id}".`);
	return system;
}
