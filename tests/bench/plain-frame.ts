// Runs in the page of `bench:screen`: the work of one frame without a store, React, Konva or labels to place.

import { type Bay, libraryOf, parseJob, planBay } from "@baywright/setout";

/** Plans the bay of a job file with one corner at (x, y) mm, as a drag does. */
function planWith(file: unknown, corner: number): (x: number, y: number) => number {
	const parsed = parseJob(file);
	if (!parsed.ok) throw new Error("the bench's bay is no valid job");
	const library = libraryOf(parsed.job);
	const bay = parsed.job.bays[0] as Bay;
	return (x, y) => {
		const corners = bay.corners.map((at, i) => (i === corner ? ([x, y] as const) : at)) as Bay["corners"];
		return planBay({ ...bay, corners }, library, { stockNodes: 100, trials: 60 }).pieces.length;
	};
}

Object.assign(globalThis, { planWith });
