import { type Bay, libraryOf, parseJob, planBay } from "@baywright/setout";
import { marksOf } from "../../../packages/app/src/phone/marks.ts";

/** A right-angled bay of 900, 1800 and 900, projection 40, radius 310, brackets pinned where the tests say. */
export function rightAngled(change: object = {}, track: object = {}): Bay {
	const parsed = parseJob({
		format: "baywright-job",
		version: 1,
		bays: [
			{
				id: "b",
				corners: [
					[0, 0],
					[0, 900],
					[1800, 900],
					[1800, 0],
				],
				track: {
					system: "light-corded",
					projection: 40,
					radius: 310,
					height: 2200,
					joints: [{ wall: 1, at: 900 }],
					brackets: [{ wall: 0, at: 300 }],
					...track,
				},
				...change,
			},
		],
	});
	const bay = parsed.ok ? parsed.job.bays[0] : undefined;
	if (bay === undefined) throw new Error(JSON.stringify(parsed));
	return bay;
}

const nothingElse = parseJob({ format: "baywright-job", version: 1, bays: [] });

export function planned(bay: Bay) {
	if (!nothingElse.ok) throw new Error("not a job");
	return planBay(bay, libraryOf(nothingElse.job));
}

export const marked = (bay: Bay) => marksOf(planned(bay));
