import { type Bay, type Job, parseJob, readJobText, serialiseJob } from "@baywright/setout";
import { expect } from "vitest";

/** A job with one bay, of what a file says about it. */
export function jobOf(bay: Readonly<Record<string, unknown>>): Job {
	const parsed = parseJob({ format: "baywright-job", version: 1, bays: [{ id: "b1", ...bay }] });
	if (!parsed.ok) throw new Error(`not a job: ${JSON.stringify(parsed.problems)}`);
	return parsed.job;
}

export const bayOf = (bay: Readonly<Record<string, unknown>>): Bay => jobOf(bay).bays[0] as Bay;

export const SQUARE = [
	[0, 0],
	[0, 900],
	[1800, 900],
	[1800, 0],
] as const;

export const emptyJob = (): Job => jobOf({ corners: [] });

/** Everything that a bay can hold: a splayed bay of four walls with a bow, each kind of reading, and something of each kind on its walls. */
export const fullBay = (): Bay =>
	bayOf({
		corners: [
			[0, 0],
			[400, 700],
			[1600, 700],
			[2600, 700],
			[3000, 0],
		],
		walls: [{ noDrill: [[100, 300]] }, { rise: 90, surface: "masonry", noDrill: [[200, 260]] }, { projection: 45 }, {}],
		readings: [
			{ kind: "run", wall: 0, value: 806 },
			{ kind: "run", wall: 2, value: 1000 },
			{ kind: "diagonal", from: 0, to: 2, value: 1746 },
			{ kind: "angle", corner: 3, value: 120.3 },
			{ kind: "chord", corner: 3, arm: 300, value: 520 },
			{ kind: "rise", wall: 1, at: null, value: 90 },
			{ kind: "rise", wall: 1, at: 300, value: 70 },
			{ kind: "square", corner: 0, wall: 2, value: 700 },
		],
		openings: [
			{ wall: 1, from: 100, to: 1100, sill: 600, head: 2050 },
			{ wall: 2, from: 150, to: 850, sill: 600, head: 2050 },
		],
		obstacles: [{ kind: "socket", wall: 0, from: 300, to: 386, bottom: 450, top: 536, depth: 10 }],
		track: {
			start: { wall: 0, at: 60 },
			end: { wall: 3, at: 700 },
			bends: [
				{ corner: 1, radius: 300 },
				{ corner: 3, radius: 320 },
			],
			joints: [
				{ wall: 1, at: 700 },
				{ wall: 2, at: 500 },
			],
			brackets: [{ wall: 2, at: 400 }],
			draw: "left",
		},
		curtains: [{ from: null, to: 1500 }, { from: 1500.5 }],
		fitted: {
			brackets: [{ wall: 2, planned: 380, at: 400 }],
			spans: [{ from: { wall: 0, at: 500 }, to: { wall: 1, at: 200 }, value: 480 }],
		},
	});

/** What a file of the bay would be read back as; fails where no good job comes back, or another bay than was written. */
export function valid(bay: Bay): Bay {
	const job: Job = { ...jobOf({ corners: [] }), bays: [bay] };
	const read = readJobText(serialiseJob(job));
	if (!read.ok) throw new Error(`not a valid bay: ${JSON.stringify(read.problems)}`);
	expect(read.job.bays[0]).toEqual(bay);
	return bay;
}
