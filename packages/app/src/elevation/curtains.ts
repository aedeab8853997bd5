import type { BayPlan, Stretch } from "@baywright/setout";
import { stationAlong, type TrackRun } from "./track-run.ts";

/** A curtain on the unrolled faces, mm. */
export interface Hanging {
	readonly from: number;
	readonly to: number;
}

/** The curtains drawn over the window. */
export const closedCurtains = ({ curtains }: BayPlan, run: TrackRun): Hanging[] =>
	curtains.map((curtain) => unrolled(curtain, run));

/** The curtains pushed back: what of the track each stack takes up. */
export const openCurtains = ({ curtains }: BayPlan, run: TrackRun): Hanging[] =>
	curtains.map(({ stack }) => unrolled(stack, run));

const unrolled = ({ from, to }: Stretch, run: TrackRun): Hanging => ({
	from: stationAlong(run, from),
	to: stationAlong(run, to),
});
