import { type Bay, type Job, libraryOf, parseJob, planBay } from "@baywright/setout";
import { type Elevation, elevationOf } from "../../../packages/app/src/elevation/scene.ts";

/** A job with one bay of this and all defaults. */
export function jobOf(bay: object): Job {
	const parsed = parseJob({ format: "baywright-job", version: 1, bays: [{ id: "b", ...bay }] });
	if (!parsed.ok) throw new Error(parsed.problems.map(({ path }) => path).join());
	return parsed.job;
}

export function elevated(job: Job, curtains: "open" | "closed" = "open"): Elevation {
	const bay = job.bays[0] as Bay;
	const elevation = elevationOf(bay, planBay(bay, libraryOf(job)), "mm", () => (curtains === "open" ? 1 : 0));
	if (elevation === null) throw new Error("no walls");
	return elevation;
}

/** A square bay of three walls: 900, 1800 and 900 mm. */
export const SQUARE = [
	[0, 0],
	[0, 900],
	[1800, 900],
	[1800, 0],
] as const;
