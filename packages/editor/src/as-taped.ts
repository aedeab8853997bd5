import { asSettled, type Bay, findSystem, type Job } from "@baywright/setout";
import { kept } from "./edits/on-bay.ts";
import { keepStill } from "./keep-still.ts";
import { slid } from "./slide.ts";

/**
 * The job with every taped bay drawn as its readings settle it, so that what is shown, typed or taken hold of is where the walls are; what
 * was dragged goes as far as nothing taped holds it, and what was not dragged stays where it lay `before` as far as it can. Bays with no
 * readings, and those whose readings settle nothing, stay as drawn.
 */
export function asTaped(job: Job, before?: Job): Job {
	const bays = job.bays.map((bay) =>
		drawnAsTaped(
			job,
			bay,
			before?.bays.find(({ id }) => id === bay.id),
		),
	);
	return bays.every((bay, i) => bay === job.bays[i]) ? job : { ...job, bays };
}

/** mm within which a drawing is where its readings put it: settling what was settled comes to rest a little beside itself. */
const SAME = 0.002;

function drawnAsTaped(job: Job, drawn: Bay, before: Bay | undefined): Bay {
	const system = findSystem(job, drawn.track.system);
	if (system === undefined) return drawn;
	const bay = before === undefined ? drawn : slid(drawn, before);
	const { bay: settled, survey } = asSettled(bay, system);
	if (survey === null || isDrawnAs(bay, settled)) return bay;
	const corners = before === undefined ? settled.corners : keepStill(settled.corners, bay.corners, before.corners);
	const ended = (place: Bay["track"]["start"]) => place && { ...place, at: kept(place.at) };
	return {
		...settled,
		corners: corners.map(([x, y]) => [kept(x), kept(y)] as const) as unknown as Bay["corners"],
		walls: settled.walls.map((wall) => ({ ...wall, rise: kept(wall.rise) })),
		track: { ...settled.track, start: ended(settled.track.start), end: ended(settled.track.end) },
	};
}

const isDrawnAs = (bay: Bay, settled: Bay): boolean =>
	bay.corners.every(([x, y], i) => isNear(x, settled.corners[i]?.[0]) && isNear(y, settled.corners[i]?.[1])) &&
	bay.walls.every(({ rise }, i) => isNear(rise, settled.walls[i]?.rise));

const isNear = (a: number, b: number | undefined): boolean => b !== undefined && Math.abs(a - b) <= SAME;
