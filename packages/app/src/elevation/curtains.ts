import { type BayPlan, positionOf } from "@baywright/setout";
import { stationAlong, type TrackRun } from "./track-run.ts";

/** A curtain on the unrolled faces, mm. */
export interface Hanging {
	readonly from: number;
	readonly to: number;
	/** How far it is opened: 0 = drawn over the window, 1 = pushed back. */
	readonly opened: number;
	/** Where its leading edge hangs. */
	readonly leading: number;
}

/** The curtains as far as each is opened. */
export const hangingOf = ({ curtains }: BayPlan, run: TrackRun, openedBy: (curtain: number) => number): Hanging[] =>
	curtains.map((curtain, i) => {
		const opened = openedBy(i);
		const { from, to, leading } = positionOf(curtain, opened);
		return {
			from: stationAlong(run, from),
			to: stationAlong(run, to),
			opened,
			leading: stationAlong(run, leading),
		};
	});
