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
/** What of a job a plan hangs on, beside the bay: with any of it another, so is the library. */
const SHELVED = ["systems", "cloths", "spare", "region"] as const satisfies readonly (keyof Job)[];

let shelf: (Pick<Job, (typeof SHELVED)[number]> & { readonly library: Library }) | null = null;

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
	const known = shelf;
	if (known !== null && SHELVED.every((key) => known[key] === job[key])) return known.library;
	const { systems, cloths, spare, region } = job;
	shelf = { systems, cloths, spare, region, library: libraryOf(job) };
	return shelf.library;
}
