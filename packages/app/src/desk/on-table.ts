import type { BayPlan } from "@baywright/setout";
import { formatLength, type Job } from "@baywright/setout";
import { useRef } from "react";
import { type Desk, useDesk } from "./desk.ts";
import { share } from "./share.ts";

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

/** As `usePlan`, for a part that is made anew with every plan: it counts as changed only where something in it did. */
export function usePlanPart<Part>(select: (plan: BayPlan) => Part): Part {
	const last = useRef<Part>(null);
	return usePlan((plan) => {
		const part = share(last.current, select(plan));
		last.current = part;
		return part;
	});
}

/** Subscribes to a part of the bay on the table. */
export function useBay<Part>(select: (bay: Job["bays"][number]) => Part): Part {
	return useDesk((desk) => select(bayOnTable(desk)));
}

/** Lengths (mm) written in the job's unit. */
export function useLength(): (mm: number) => string {
	const unit = useDesk((desk) => desk.shown.display.length);
	return (mm) => formatLength(mm, unit);
}
