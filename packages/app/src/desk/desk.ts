import { applyChange, type BayPlan, type Job, type Operation, type PlanEffort, problemLine } from "@baywright/setout";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";
import { plainJob } from "./plain-job.ts";
import { plansOf, WHILE_DRAGGING } from "./plans.ts";
import type { Selection } from "./selection.ts";
import { share } from "./share.ts";

/** A job to go back or forward to, and what was done to it. */
export interface Step {
	readonly job: Job;
	readonly label: string;
	/** As `Desk.opened` while the job lay on the desk. */
	readonly opened: number;
}

/** What lies on the desk: one job, one of its bays on the table, and the way back. */
export interface Desk {
	/** As last committed. */
	readonly job: Job;
	/** What is on screen: a drag's preview, or `job` itself. */
	readonly shown: Job;
	/** One per bay of `shown`. */
	readonly plans: readonly BayPlan[];
	/** Tells which putting of a job on the desk this one comes from: another number, another job. */
	readonly opened: number;
	/** Index of the bay on the table. */
	readonly bay: number;
	readonly selection: Selection | null;
	readonly hover: Selection | null;
	readonly past: readonly Step[];
	readonly future: readonly Step[];
	readonly saved: "saved" | "saving" | "failed";
	/** During a drag: what is shown changes, history does not. */
	preview(job: Job): void;
	/** What is shown (or `job`) becomes the job: one undo step. */
	commit(label: string, job?: Job): void;
	/** Back to the job as committed. */
	cancel(): void;
	/** Applies edits to the job as one undo step; null, or one plain line that says why not. */
	change(label: string, operations: readonly Operation[]): string | null;
	undo(): void;
	redo(): void;
	/** Puts another job on the desk. The one before is one undo away. */
	open(job: Job, label?: string): void;
	/** Puts a job on the desk with no way back: for what was stored before this visit. */
	restore(job: Job): void;
	select(selection: Selection | null): void;
	point(hover: Selection | null): void;
	showBay(index: number): void;
	mark(saved: Desk["saved"]): void;
}

/** More steps than anyone takes back; keeps memory bounded. */
const LONGEST_HISTORY = 500;

export const desk = createStore<Desk>()((set, get) => {
	const plain = plainJob();
	let openings = 0;

	/** What is shown, planned, with a bay on the table that exists. */
	function showing(job: Job, effort?: PlanEffort): Pick<Desk, "shown" | "plans" | "bay"> {
		return { shown: job, plans: plansOf(job, effort), bay: Math.min(get().bay, job.bays.length - 1) };
	}

	function settle(job: Job, label: string, opened = get().opened): void {
		const { job: before, past, opened: openedBefore } = get();
		const next = share(before, job);
		if (next === before) set({ ...showing(before), opened });
		else
			set({
				job: next,
				...showing(next),
				opened,
				past: [...past, { job: before, label, opened: openedBefore }].slice(-LONGEST_HISTORY),
				future: [],
			});
	}

	return {
		job: plain,
		shown: plain,
		plans: plansOf(plain),
		opened: openings,
		bay: 0,
		selection: null,
		hover: null,
		past: [],
		future: [],
		saved: "saved",

		preview: (job) => set(showing(share(get().shown, job), WHILE_DRAGGING)),
		commit: (label, job) => settle(job ?? get().shown, label),
		cancel: () => set(showing(get().job)),
		change: (label, operations) => {
			const changed = applyChange(get().job, operations);
			if (!changed.ok) return changed.problems.map(problemLine).join(" ");
			settle(changed.job, label);
			return null;
		},
		undo: () => {
			const { job, past, future, opened } = get();
			const step = past.at(-1);
			if (step === undefined) return;
			set({
				job: step.job,
				...showing(step.job),
				opened: step.opened,
				past: past.slice(0, -1),
				future: [...future, { job, label: step.label, opened }],
				selection: null,
			});
		},
		redo: () => {
			const { job, past, future, opened } = get();
			const step = future.at(-1);
			if (step === undefined) return;
			set({
				job: step.job,
				...showing(step.job),
				opened: step.opened,
				past: [...past, { job, label: step.label, opened }],
				future: future.slice(0, -1),
				selection: null,
			});
		},
		open: (job, label) => {
			set({ bay: 0, selection: null, hover: null });
			settle(job, label ?? (job.title === "" ? "open a job" : `open ${job.title}`), ++openings);
		},
		restore: (job) =>
			set({
				job,
				...showing(job),
				opened: ++openings,
				bay: 0,
				past: [],
				future: [],
				selection: null,
				hover: null,
			}),
		select: (selection) => set({ selection }),
		point: (hover) => set({ hover }),
		showBay: (bay) => set({ bay, selection: null, hover: null }),
		mark: (saved) => set({ saved }),
	};
});

/** Subscribes a component to the little that it shows. */
export function useDesk<Part>(select: (desk: Desk) => Part): Part {
	return useStore(desk, select);
}
