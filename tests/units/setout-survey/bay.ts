import { type Bay, findSystem, type Job, parseJob, type TrackSystem } from "@baywright/setout";

/** A bay read as from a job file: a square one, 900, 1800 and 900, with whatever else is given. */
export function bayOf(more: object = {}): Bay {
	const corners = [
		[0, 0],
		[0, 900],
		[1800, 900],
		[1800, 0],
	];
	const parsed = parseJob({ format: "baywright-job", version: 1, bays: [{ id: "b1", corners, ...more }] });
	if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
	return parsed.job.bays[0] as Bay;
}

export function systemOf(bay: Bay, job: Pick<Job, "systems"> = { systems: [] }): TrackSystem {
	const system = findSystem(job, bay.track.system);
	if (system === undefined) throw new Error(bay.track.system);
	return system;
}
