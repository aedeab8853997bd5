import { useMemo } from "react";
import { useBay, usePlan } from "../desk/on-table.ts";
import { marksOf, type SiteMark } from "./marks.ts";
import { type Ticks, ticksOf } from "./ticks.ts";

interface Work {
	readonly marks: readonly SiteMark[];
	readonly ticks: Ticks;
	readonly done: number;
	/** The first that is still to be done. */
	readonly next: SiteMark | null;
}

/** The list of marks of the bay on the table, and how far the work has come. */
export function useMarks(): Work {
	const plan = usePlan((each) => each);
	const bay = useBay((each) => each);
	return useMemo(() => {
		const marks = marksOf(plan);
		const ticks = ticksOf(bay, marks);
		const open = marks.filter(({ name }) => ticks.of.get(name)?.state !== "done");
		return { marks, ticks, done: marks.length - open.length, next: open[0] ?? null };
	}, [plan, bay]);
}
