import {
	type Bay,
	builtInSystems,
	formatLength,
	type Job,
	type Obstacle,
	type Opening,
	parseJob,
	wallName,
} from "@baywright/setout";
import { addBay } from "./edits/bays.ts";
import { faceLength, facesOf } from "./edits/faces.ts";
import { kept, onBay } from "./edits/on-bay.ts";
import type { Stretch } from "./edits/on-walls.ts";
import type { Selection } from "./selection.ts";

/** What was copied. A bay takes the job's own systems and cloths that it uses with it. */
export type Clip =
	| { readonly kind: "opening"; readonly opening: Opening }
	| { readonly kind: "obstacle"; readonly obstacle: Obstacle }
	| { readonly kind: "bay"; readonly bay: Bay; readonly systems: Job["systems"]; readonly cloths: Job["cloths"] };

/** What is copied when this is chosen: an opening or an obstacle, else the whole bay; null for a bay that is not there. */
export function clipOf(job: Job, index: number, selection: Selection | null): Clip | null {
	const bay = job.bays[index];
	if (bay === undefined) return null;
	const opening = selection?.kind === "opening" ? bay.openings[selection.index] : undefined;
	if (opening !== undefined) return { kind: "opening", opening };
	const obstacle = selection?.kind === "obstacle" ? bay.obstacles[selection.index] : undefined;
	if (obstacle !== undefined) return { kind: "obstacle", obstacle };
	const cloths = bay.curtains.map(({ cloth }) => cloth);
	return {
		kind: "bay",
		bay,
		systems: job.systems.filter(({ id }) => id === bay.track.system),
		cloths: job.cloths.filter(({ id }) => cloths.includes(id)),
	};
}

const FORMAT = "baywright-clip";
const VERSION = 1;

/** A clip as text, for the clipboard. */
export const clipText = (clip: Clip): string =>
	JSON.stringify({ format: FORMAT, version: VERSION, ...clip }, null, "\t");

export type ReadClip =
	| { readonly ok: true; readonly clip: Clip }
	/** One plain line. */
	| { readonly ok: false; readonly message: string };

/** Reads a clip from text, from wherever it came: what is wrong with it is said by name and value. */
export function readClip(text: string): ReadClip {
	const raw = rawClip(text);
	if (raw === null) return refused("What was copied is no opening, obstacle or bay from here: nothing was pasted.");
	if (raw.version !== VERSION)
		return refused(`What was copied is of version ${JSON.stringify(raw.version)}: ${VERSION} is read here.`);
	if (raw.kind === "bay") return readBay(raw);
	if (raw.kind === "opening" || raw.kind === "obstacle") return readThing(raw, raw.kind);
	return refused(`What was copied is ${JSON.stringify(raw.kind)}: an opening, an obstacle or a bay can be pasted.`);
}

type Raw = Readonly<Record<string, unknown>>;

function rawClip(text: string): Raw | null {
	try {
		const raw: unknown = JSON.parse(text);
		return typeof raw === "object" && raw !== null && "format" in raw && raw.format === FORMAT ? (raw as Raw) : null;
	} catch {
		return null;
	}
}

const refused = (message: string): ReadClip => ({ ok: false, message });

/** Checked as a part of a job: one place says what a good bay is. */
function readBay({ bay, systems = [], cloths = [] }: Raw): ReadClip {
	const read = checked({ systems, cloths, bays: [bay] }, /^bays\[0\]\.?/);
	if (!read.ok) return read;
	const { job } = read;
	return { ok: true, clip: { kind: "bay", bay: job.bays[0] as Bay, systems: job.systems, cloths: job.cloths } };
}

function readThing(raw: Raw, kind: "opening" | "obstacle"): ReadClip {
	const thing = raw[kind];
	const list = kind === "opening" ? "openings" : "obstacles";
	const wall = typeof thing === "object" && thing !== null && "wall" in thing ? thing.wall : undefined;
	if (!Number.isSafeInteger(wall) || (wall as number) < 0)
		return refused(
			`The copied ${kind} has wall ${JSON.stringify(wall)}: the number of a wall, counted from 0, is needed.`,
		);
	const corners = [
		[0, 0],
		[1, 0],
	];
	const read = checked(
		{ bays: [{ id: "clip", corners, [list]: [{ ...(thing as object), wall: 0 }] }] },
		new RegExp(`^bays\\[0\\]\\.${list}\\[0\\]\\.?`),
	);
	if (!read.ok) return read;
	const [bay] = read.job.bays;
	const on = wall as number;
	const opening = bay?.openings[0];
	if (opening) return { ok: true, clip: { kind: "opening", opening: { ...opening, wall: on } } };
	return { ok: true, clip: { kind: "obstacle", obstacle: { ...(bay?.obstacles[0] as Obstacle), wall: on } } };
}

function checked(
	part: object,
	own: RegExp,
): { readonly ok: true; readonly job: Job } | { readonly ok: false; readonly message: string } {
	const read = parseJob({ format: "baywright-job", version: 1, ...part });
	if (read.ok) return read;
	const [first] = read.problems;
	const place = first?.path.replace(own, "") ?? "";
	const more = read.problems.length > 1 ? ` (and ${read.problems.length - 1} more)` : "";
	return {
		ok: false,
		message: `What was copied is damaged: ${place === "" ? "" : `${place}: `}found ${first?.found}, allowed ${first?.allowed}${more}.`,
	};
}

export type Pasted =
	| {
			readonly ok: true;
			readonly job: Job;
			readonly bay: number;
			readonly selection: Selection | null;
			readonly label: string;
	  }
	/** One plain line. */
	| { readonly ok: false; readonly message: string };

/**
 * Puts a clip into a job: a bay behind the others; an opening or an obstacle on the wall `on`, or where none is named on the
 * wall it was copied from, at its own place or the nearest one that is free.
 */
export function paste(job: Job, index: number, clip: Clip, on: number | null): Pasted {
	if (clip.kind === "bay") return pasteBay(job, clip);
	const thing = clip.kind === "opening" ? clip.opening : clip.obstacle;
	const bay = job.bays[index];
	const chain = bay ? facesOf(bay) : null;
	if (bay === undefined || chain === null)
		return { ok: false, message: `There is no wall to put the ${clip.kind} on.` };
	const wall = on ?? thing.wall;
	if (!(wall in bay.walls))
		return {
			ok: false,
			message: `This bay has no wall to match the one the ${clip.kind} was copied from: choose one.`,
		};
	const others = clip.kind === "opening" ? bay.openings : bay.obstacles;
	const place = freePlace(
		others.filter((it) => it.wall === wall),
		thing,
		faceLength(chain, wall),
	);
	if (place === null) {
		const width = formatLength(thing.to - thing.from, job.display.length, { unit: true });
		return {
			ok: false,
			message: `The ${wallName(wall, bay.walls.length)} has no room for the ${clip.kind}, which is ${width} wide.`,
		};
	}
	const put = { wall, from: place, to: kept(place + thing.to - thing.from) };
	const next = onBay(job, index, (it) =>
		clip.kind === "opening"
			? { ...it, openings: [...it.openings, { ...clip.opening, ...put }] }
			: { ...it, obstacles: [...it.obstacles, { ...clip.obstacle, ...put }] },
	);
	return {
		ok: true,
		job: next,
		bay: index,
		selection: { kind: clip.kind, index: others.length },
		label: `paste an ${clip.kind}`,
	};
}

/** Where a thing of the same width starts that overlaps nothing: its own place, or the nearest beside one of the others; null for none. */
function freePlace(others: readonly Stretch[], { from, to }: Stretch, length: number): number | null {
	const width = to - from;
	const places = [from, length - width, ...others.flatMap((it) => [it.to, it.from - width])];
	const free = places.filter(
		(at) =>
			at >= 0 &&
			at + width <= length + SLACK &&
			others.every((it) => it.to <= at + SLACK || it.from >= at + width - SLACK),
	);
	return free.length === 0
		? null
		: kept(free.reduce((best, at) => (Math.abs(at - from) < Math.abs(best - from) ? at : best)));
}

/** mm within which two things beside each other only touch. */
const SLACK = 1e-6;

function pasteBay(job: Job, { bay, systems, cloths }: Extract<Clip, { kind: "bay" }>): Pasted {
	const missing = systems.filter(({ id }) => !job.systems.some((own) => own.id === id));
	const withSystems = {
		...job,
		systems: [...job.systems, ...missing],
		cloths: [...job.cloths, ...cloths.filter(({ id }) => !job.cloths.some((own) => own.id === id))],
	};
	const known = [...withSystems.systems, ...builtInSystems].some(({ id }) => id === bay.track.system);
	if (!known)
		return { ok: false, message: `The copied bay hangs on a system that is not known here: "${bay.track.system}".` };
	const put = addBay(withSystems, bay);
	return { ok: true, ...put, selection: null, label: "paste a bay" };
}
