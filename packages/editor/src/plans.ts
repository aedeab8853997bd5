import {
	type Bay,
	type BayPlan,
	forJob,
	type Job,
	type Library,
	libraryOf,
	type PlanEffort,
	planBay,
} from "@baywright/setout";

/** During a drag the stock search is cut short, few cures are tried and nobody asks how sure it is; the release works everything out in full. */
export const WHILE_DRAGGING: PlanEffort = { stockNodes: 40, trials: 60, sureness: false };

interface Remembered {
	readonly library: Library;
	readonly index: number;
	readonly effort: PlanEffort | undefined;
	readonly plan: BayPlan;
}

const remembered = new WeakMap<Bay, Remembered>();
let shelf: {
	readonly systems: Job["systems"];
	readonly region: Job["region"];
	readonly library: Library;
} | null = null;

/** The plan of every bay. A bay that kept its identity keeps its plan: a drag works out only the bay it changes. */
export function plansOf(job: Job, effort?: PlanEffort): readonly BayPlan[] {
	const library = libraryFor(job);
	return job.bays.map((bay, index) => {
		const known = remembered.get(bay);
		if (known?.library === library && known.index === index && (known.effort === effort || known.effort === undefined))
			return known.plan;
		const planned = planBay(bay, library, effort);
		const plan = { ...planned, findings: planned.findings.map((finding) => forJob(finding, index, bay.id)) };
		remembered.set(bay, { library, index, effort, plan });
		return plan;
	});
}

function libraryFor(job: Job): Library {
	if (shelf === null || shelf.systems !== job.systems || shelf.region !== job.region)
		shelf = { systems: job.systems, region: job.region, library: libraryOf(job) };
	return shelf.library;
}
