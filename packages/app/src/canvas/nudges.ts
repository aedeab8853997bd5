import type { Desk } from "../desk/desk.ts";
import { type Grip, moved, moveLabel } from "./grip.ts";

/** ms after the last nudge at which a burst becomes one step of the history. */
const BURST = 700;

export interface Nudges {
	/** Moves what is held by a little more; nudges of the same thing in quick succession are one step. */
	nudge(grip: Pick<Grip, "kind" | "index" | "bay">, dx: number, dy: number): void;
	/** Makes what was nudged so far a step of the history. */
	settle(): void;
	/** Takes the burst back. False where there is none. */
	cancel(): boolean;
}

export function createNudges(desk: () => Desk, settled: (label: string) => void): Nudges {
	let burst: { readonly grip: Grip; dx: number; dy: number } | null = null;
	let timer: ReturnType<typeof setTimeout> | undefined;

	function settle(): void {
		clearTimeout(timer);
		if (burst === null) return;
		const label = moveLabel(burst.grip);
		burst = null;
		desk().commit(label);
		settled(label);
	}

	return {
		nudge(what, dx, dy) {
			const same = burst !== null && burst.grip.kind === what.kind && burst.grip.index === what.index;
			if (!same) settle();
			burst ??= { grip: { ...what, job: desk().job }, dx: 0, dy: 0 };
			burst.dx += dx;
			burst.dy += dy;
			desk().preview(moved(burst.grip, burst.dx, burst.dy));
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
