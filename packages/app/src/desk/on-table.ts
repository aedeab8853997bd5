import type { Desk } from "@baywright/editor";
import { share } from "@baywright/editor";
import type { BayPlan } from "@baywright/setout";
import { formatLength, type Job } from "@baywright/setout";
import { useRef, useSyncExternalStore } from "react";
import { desk, useDesk } from "./desk.ts";

/** The plan of the bay on the table. */
export function planOnTable(desk: Desk): BayPlan {
	return desk.plans[desk.bay] as BayPlan;
}

/** The bay on the table, as shown. */
export function bayOnTable(desk: Desk): Job["bays"][number] {
	return desk.shown.bays[desk.bay] as Job["bays"][number];
}

/** Subscribes to a part of the plan on the table. */
export function usePlan<Part>(select: (plan: BayPlan) => Part): Part {
	return useDesk((desk) => select(planOnTable(desk)));
}

/**
 * As `usePlan`, for a part that is made anew with every plan: it counts as changed only where something in it did. While
 * something is dragged it comes a few times a second, as in `useBayAtEase`.
 */
export function usePlanPart<Part>(select: (plan: BayPlan) => Part): Part {
	return useDeskAtEase((state) => select(planOnTable(state)));
}

/** As `usePlanPart`, for what is made of more than one bay's plan. */
export function useDeskAtEase<Part>(select: (desk: Desk) => Part): Part {
	const last = useRef<Part>(null);
	const now = () => {
		const part = share(last.current, select(desk.getState()));
		last.current = part;
		return part;
	};
	return useSyncExternalStore(atEase, now, now);
}

/** Subscribes to a part of the bay on the table. */
export function useBay<Part>(select: (bay: Job["bays"][number]) => Part): Part {
	return useDesk((desk) => select(bayOnTable(desk)));
}

/**
 * As `useBay`, for what stands in fields: while something is dragged it comes a few times a second, since a field made anew with every
 * frame costs more than all the drawing; at rest it is exact. Figures that must keep up with the drawing are `Figure`s.
 */
export function useBayAtEase<Part>(select: (bay: Job["bays"][number]) => Part): Part {
	const now = () => select(bayOnTable(desk.getState()));
	return useSyncExternalStore(atEase, now, now);
}

/** ms between two looks at what is dragged. */
const EASE = 120;

const listeners = new Set<() => void>();
let due: ReturnType<typeof setTimeout> | null = null;

function tell(): void {
	if (due !== null) clearTimeout(due);
	due = null;
	for (const listener of listeners) listener();
}

desk.subscribe((state) => {
	if (state.shown === state.job) tell();
	else due ??= setTimeout(tell, EASE);
});

function atEase(listener: () => void): () => void {
	listeners.add(listener);
	return () => {
		listeners.delete(listener);
	};
}

/** Lengths (mm) written in the job's unit. */
export function useLength(): (mm: number) => string {
	const unit = useDesk((desk) => desk.shown.display.length);
	return (mm) => formatLength(mm, unit);
}
