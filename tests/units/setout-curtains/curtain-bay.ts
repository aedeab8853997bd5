import { type BayPlan, type Job, parseJob, planJob } from "@baywright/setout";

/** A job of one bay: a straight wall of 5000 unless it says otherwise, with a system whose track runs along it from end to end. */
export function jobOf(bay: object, more: object = {}): Job {
	const read = parseJob({
		format: "baywright-job",
		version: 1,
		systems: [PLAIN_SYSTEM],
		...more,
		bays: [
			{
				id: "b",
				corners: [
					[0, 0],
					[5000, 0],
				],
				...bay,
			},
		],
	});
	if (!read.ok) throw new Error(JSON.stringify(read.problems));
	return read.job;
}

export function planOf(bay: object, more: object = {}): BayPlan {
	const [plan] = planJob(jobOf(bay, more));
	if (plan === undefined) throw new Error("no plan");
	return plan;
}

/** Bends of 100, nothing at the ends, gliders every 100, long stock. */
export const PLAIN_SYSTEM = {
	id: "plain",
	name: "Plain",
	minRadius: { internal: 100, external: 100 },
	preferredRadius: 100,
	projection: { default: 50, min: 30, max: 300 },
	straightBesideBend: 0,
	bracket: { maxSpacing: 500 },
	stock: [{ length: 12_000 }],
	gliderSpacing: 100,
};

/** A track on that system from one station of a straight wall to another. */
export const track = (from: number, to: number, more: object = {}) => ({
	system: "plain",
	start: { wall: 0, at: from },
	end: { wall: 0, at: to },
	...more,
});
