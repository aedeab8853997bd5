import { anchorOf, type Desk, gripOf, type Held, isGrip, nudged, type Selection, sameThing } from "@baywright/editor";
import type { Bay, BayPlan } from "@baywright/setout";

/** ms after the last nudge at which a burst becomes one step of the history. */
const BURST = 700;

export interface Nudges {
	/** Moves what is chosen by a little more; nudges of the same thing in quick succession are one step. */
	nudge(chosen: Selection, dx: number, dy: number): void;
	/** Makes what was nudged so far a step of the history. */
	settle(): void;
	/** Takes the burst back. False where there is none. */
	cancel(): boolean;
}

export function createNudges(desk: () => Desk, settled: (label: string) => void): Nudges {
	let burst: { readonly held: Held; dx: number; dy: number } | null = null;
	let timer: ReturnType<typeof setTimeout> | undefined;

	function settle(): void {
		clearTimeout(timer);
		if (burst === null) return;
		const { held } = burst;
		burst = null;
		if (!isGrip(held.target)) return;
		const label = gripOf(held.target.kind).label(held);
		desk().commit(label);
		settled(label);
	}

	function hold(target: Selection): Held | null {
		const { job, bay, plans } = desk();
		const plan = plans[bay] as BayPlan;
		const from = anchorOf(target, job.bays[bay] as Bay, plan);
		return from === null ? null : { target, job, bay, plan, from };
	}

	return {
		nudge(chosen, dx, dy) {
			if (burst !== null && !sameThing(burst.held.target, chosen)) settle();
			if (burst === null) {
				const held = hold(chosen);
				if (held === null) return;
				burst = { held, dx: 0, dy: 0 };
			}
			burst.dx += dx;
			burst.dy += dy;
			desk().preview(nudged(burst.held, burst.dx, burst.dy));
			clearTimeout(timer);
			timer = setTimeout(settle, BURST);
		},
		settle,
		cancel() {
			clearTimeout(timer);
			if (burst === null) return false;
			burst = null;
			desk().cancel();
			return true;
		},
	};
}
