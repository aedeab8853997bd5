import type { Bay, Job, Opening } from "@baywright/setout";
import { parseJob } from "@baywright/setout";
import type { Corner } from "./edits/on-bay.ts";

/** A bay drawn to start from: dragged and typed on, it becomes the one that was taped. */
export interface PlainBay {
	readonly id: PlainBayId;
	/** What it is called, and what to say of it. */
	readonly title: string;
	readonly note: string;
	/** mm, as in a job file. */
	readonly corners: readonly Corner[];
	/** How far each wall bows, mm; left out = straight. */
	readonly rises: readonly number[];
	/** mm along the face; sills and heads above the floor. */
	readonly openings: readonly Opening[];
	/** The track that suits it. */
	readonly system: string;
}

export type PlainBayId = "recess" | "square" | "splayed" | "five-sided" | "bow" | "l-shaped";

const CORDED = "light-corded";

const SILL = 600;
const HEAD = 2050;

/** An opening of the usual heights. */
const window = (wall: number, from: number, to: number): Opening => ({
	wall,
	from,
	to,
	sill: SILL,
	head: HEAD,
	sillDepth: 0,
});

/** The bays that most houses have, the plainest first. */
export const plainBays: readonly PlainBay[] = [
	{
		id: "recess",
		title: "A straight recess",
		note: "One wall from side to side: nothing to bend.",
		corners: [
			[0, 0],
			[2000, 0],
		],
		rises: [],
		openings: [window(0, 200, 1800)],
		system: CORDED,
	},
	{
		id: "square",
		title: "A plain square bay",
		note: "Two returns and a front, at right angles.",
		corners: [
			[0, 0],
			[0, 700],
			[1800, 700],
			[1800, 0],
		],
		rises: [],
		openings: [window(1, 150, 1650)],
		system: CORDED,
	},
	{
		id: "splayed",
		title: "A splayed bay",
		note: "Three walls, both corners 135°.",
		corners: [
			[0, 0],
			[636.396, 636.396],
			[2436.396, 636.396],
			[3072.792, 0],
		],
		rises: [],
		openings: [window(0, 150, 750), window(1, 150, 1650), window(2, 150, 750)],
		system: CORDED,
	},
	{
		id: "five-sided",
		title: "A five-sided bay",
		note: "Five walls, every corner 135°.",
		corners: [
			[0, 0],
			[0, 600],
			[565.685, 1165.685],
			[1765.685, 1165.685],
			[2331.37, 600],
			[2331.37, 0],
		],
		rises: [],
		openings: [window(1, 120, 680), window(2, 120, 1080), window(3, 120, 680)],
		system: CORDED,
	},
	{
		id: "bow",
		title: "A bow",
		note: "One wall curved away from the room.",
		corners: [
			[0, 0],
			[2400, 0],
		],
		rises: [300],
		openings: [window(0, 200, 2300)],
		// Nothing of it needs a straight, at the ends or where the curtains meet.
		system: "flexible",
	},
	{
		id: "l-shaped",
		title: "An L-shaped bay",
		note: "Two windows that meet at one corner.",
		corners: [
			[0, 0],
			[0, 1200],
			[2200, 1200],
		],
		rises: [],
		openings: [window(0, 150, 1050), window(1, 150, 2000)],
		system: CORDED,
	},
];

/** A plain bay as a bay of a job. */
export const plainBay = (id: PlainBayId = "square"): Bay => bayFrom(plainBays.find((bay) => bay.id === id));

/** A bay with nothing in it yet: its walls are still to be taped. */
export const emptyBay = (): Bay => bayFrom(undefined);

/** A new job with one bay. */
export const newJob = (bay: Bay): Job => parsed({ bays: [bay] });

/** A new job with a plain square bay. */
export const plainJob = (): Job => newJob(plainBay());

function bayFrom(plain: PlainBay | undefined): Bay {
	const { corners, rises, openings, system } = plain ?? { corners: [], rises: [], openings: [], system: CORDED };
	const [bay] = parsed({
		bays: [
			{
				id: "bay-1",
				name: "Bay",
				corners,
				walls: rises.map((rise) => ({ rise })),
				openings,
				track: { system },
			},
		],
	}).bays;
	return bay as Bay;
}

function parsed(part: object): Job {
	const read = parseJob({ format: "baywright-job", version: 1, title: "New job", ...part });
	if (!read.ok) throw new Error("Broken invariant: a plain bay is no valid job.");
	return read.job;
}
