import type { Bay, BayPlan } from "@baywright/setout";
import { stationAlong, type TrackRun } from "./track-run.ts";

/** A curtain on the unrolled faces, mm. */
export interface Hanging {
	readonly from: number;
	readonly to: number;
}

/** The curtains drawn over the window: those that the job names, else as the track draws. */
export function closedCurtains(bay: Bay, plan: BayPlan, run: TrackRun): Hanging[] {
	const length = plan.path?.length ?? 0;
	return stretches(bay, length).map(({ from, to }) => ({
		from: stationAlong(run, from),
		to: stationAlong(run, Math.min(to, length)),
	}));
}

/** The curtains pushed back: what of the track each stack takes up. */
export function openCurtains({ stackBack }: BayPlan, run: TrackRun): Hanging[] {
	return stackBack.map(({ from, to }) => ({ from: stationAlong(run, from), to: stationAlong(run, to) }));
}

function stretches({ curtains, track: { draw } }: Bay, length: number): Hanging[] {
	if (draw === "none") return [];
	if (curtains.length > 1 || curtains.some(({ from, to }) => from !== null || to !== null))
		return curtains.map(({ from, to }) => ({ from: from ?? 0, to: to ?? length }));
	if (draw !== "pair") return [{ from: 0, to: length }];
	return [
		{ from: 0, to: length / 2 },
		{ from: length / 2, to: length },
	];
}
