import { applyChange, type BayPlan, type Job, type Operation, type PlanEffort, problemLine } from "@baywright/setout";
import { createStore, type StoreApi } from "zustand/vanilla";
import { asTaped } from "./as-taped.ts";
import { plansOf, WHILE_DRAGGING } from "./plans.ts";
import { type Selection, sameThing } from "./selection.ts";
import { share } from "./share.ts";

/** A job to go back or forward to, and what was done to it. */
export interface Step {
	readonly job: Job;
	readonly label: string;
	/** As `Desk.opened` while the job lay on the desk. */
	readonly opened: number;
	/** What the step typed over and over: the next step of the same kind becomes one with it. */
	readonly merge: string | null;
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
	/** What is shown (or `job`) becomes the job: one undo step; with a `merge` the same one as the step before, if that had the same. */
	commit(label: string, job?: Job, merge?: string): void;
	/** Back to the job as committed. */
	cancel(): void;
	/** Applies edits to the job as one undo step, merged as in `commit`; null, or one plain line that says why not. */
	change(label: string, operations: readonly Operation[], merge?: string): string | null;
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

/** A desk with `opening` on it. Whatever comes on it, taped bays lie on it as their readings settle them. */
export function createDesk(opening: Job): StoreApi<Desk> {
	const first = asTaped(opening);
	return createStore<Desk>()((set, get) => {
		let openings = 0;

		/** What is shown, planned, with a bay on the table that exists. */
		function showing(job: Job, effort?: PlanEffort): Pick<Desk, "shown" | "plans" | "bay"> {
			return { shown: job, plans: plansOf(job, effort), bay: Math.max(0, Math.min(get().bay, job.bays.length - 1)) };
		}

		function settle(job: Job, label: string, opened = get().opened, merge: string | null = null): void {
			const { job: before, past, opened: openedBefore } = get();
			// Another job was laid on the desk by itself, wherever its corners are.
			const next = share(before, asTaped(share(before, job), opened === openedBefore ? before : undefined));
			if (next === before) {
				set({ ...showing(before), opened });
				return;
			}
			const last = past.at(-1);
			const goesOn = merge !== null && last?.merge === merge && get().future.length === 0;
			// Typed back to where it started: nothing is left to take back.
			const undone = goesOn && share(last.job, next) === last.job;
			const step: Step = { job: before, label, opened: openedBefore, merge };
			set({
				job: next,
				...showing(next),
				opened,
				past: undone ? past.slice(0, -1) : goesOn ? past : [...past, step].slice(-LONGEST_HISTORY),
				future: [],
			});
		}

		/** Takes one step from one end of the history to the other. */
		function travel(from: "past" | "future", to: "past" | "future"): void {
			const { job, opened } = get();
			const step = get()[from].at(-1);
			if (step === undefined) return;
			set({
				job: step.job,
				...showing(step.job),
				opened: step.opened,
				selection: null,
				hover: null,
				[from]: get()[from].slice(0, -1),
				[to]: [...get()[to], { ...step, job, opened, merge: null }],
			});
		}

		return {
			job: first,
			shown: first,
			plans: plansOf(first),
			opened: openings,
			bay: 0,
			selection: null,
			hover: null,
			past: [],
			future: [],
			saved: "saved",

			preview: (job) => {
				const { shown, job: before } = get();
				set(showing(share(shown, asTaped(share(shown, job), before)), WHILE_DRAGGING));
			},
			commit: (label, job, merge) => settle(job ?? get().shown, label, undefined, merge),
			cancel: () => set(showing(get().job)),
			change: (label, operations, merge) => {
				const changed = applyChange(get().job, operations);
				if (!changed.ok) return changed.problems.map(problemLine).join(" ");
				settle(changed.job, label, undefined, merge);
				return null;
			},
			undo: () => travel("past", "future"),
			redo: () => travel("future", "past"),
			open: (job, label) => {
				set({ bay: 0, selection: null, hover: null });
				settle(job, label ?? (job.title === "" ? "open a job" : `open ${job.title}`), ++openings);
			},
			restore: (stored) => {
				const job = asTaped(stored);
				set({
					job,
					...showing(job),
					opened: ++openings,
					bay: 0,
					past: [],
					future: [],
					selection: null,
					hover: null,
				});
			},
			select: (selection) => {
				if (!sameThing(selection, get().selection)) set({ selection });
			},
			point: (hover) => {
				if (!sameThing(hover, get().hover)) set({ hover });
			},
			showBay: (bay) => set({ bay, selection: null, hover: null }),
			mark: (saved) => set({ saved }),
		};
	});
}
