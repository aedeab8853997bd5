import type { Bay, MeasuringErrors, StrategyResult, TrackSystem } from "@baywright/setout";

/** What the worker is asked for. Without a bay: random ones. */
export interface Asked {
	readonly bay: { readonly bay: Bay; readonly system: TrackSystem } | null;
	readonly count: number;
	readonly seed: number;
	readonly errors: MeasuringErrors;
}

/** What the worker answers: how far it has come with the figures until then, that it is done, or that no track fits. */
export type Answer =
	| { readonly kind: "measured"; readonly done: number; readonly strategies: readonly StrategyResult[] }
	| { readonly kind: "finished"; readonly strategies: readonly StrategyResult[] }
	| { readonly kind: "no-track" };

/** How a run stands. What was measured until it was called off stays in sight. */
export type Progress =
	| { readonly state: "idle" }
	| (Measured & { readonly state: "running" | "finished" | "cancelled" | "failed" })
	| { readonly state: "no-track" };

interface Measured {
	readonly asked: Asked;
	readonly done: number;
	readonly strategies: readonly StrategyResult[];
}

export type Step =
	| { readonly kind: "started"; readonly asked: Asked }
	| { readonly kind: "cancelled" }
	| { readonly kind: "failed" }
	| Answer;

/** A late word from a run that is over changes nothing. */
export function stepped(progress: Progress, step: Step): Progress {
	if (step.kind === "started") return { state: "running", asked: step.asked, done: 0, strategies: [] };
	if (progress.state !== "running") return progress;
	switch (step.kind) {
		case "measured":
			return { ...progress, done: step.done, strategies: step.strategies };
		case "finished":
			return { ...progress, state: "finished", done: progress.asked.count, strategies: step.strategies };
		case "no-track":
			return { state: "no-track" };
		case "cancelled":
		case "failed":
			return { ...progress, state: step.kind };
	}
}
