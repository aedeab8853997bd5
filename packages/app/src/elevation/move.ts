import {
	NARROWEST,
	onBay,
	type SnapAlong,
	setObstacle,
	setOpening,
	slide,
	snapAlong,
	stopsOn,
} from "@baywright/editor";
import type { Bay, Job, Obstacle, Opening } from "@baywright/setout";
import type { Heights } from "./heights.ts";
import { type BoxKind, type BoxPart, type Held, isBox } from "./held.ts";

/** What is moved, and how everything was when it was taken hold of: every move starts from there. */
export interface Grasp {
	readonly held: Held;
	readonly job: Job;
	readonly bay: number;
	readonly heights: Heights;
	/** Length of a wall's face, mm. */
	readonly room: (wall: number) => number;
}

/** A way on the unrolled faces, mm. */
export interface Way {
	readonly along: number;
	readonly up: number;
}

/**
 * The job with what is held moved by a way. Other edges and heights within `reach` mm draw it, else whole 5 mm; with a
 * reach of 0 nothing does and it comes to stand on whole millimetres.
 */
export function moveHeld(grasp: Grasp, way: Way, reach: number): Job {
	const { held, job, bay: index } = grasp;
	const bay = job.bays[index];
	if (bay === undefined) return job;
	const after = isBox(held) ? moveBox(bay, grasp, held, way, reach) : moveLevel(bay, grasp, held.kind, way.up, reach);
	return onBay(job, index, () => after);
}

/** mm: an arrow key moves by so much and nothing draws. */
export const nudgeHeld = (grasp: Grasp, way: Way): Job => moveHeld(grasp, way, 0);

function moveLevel(bay: Bay, { heights }: Grasp, kind: "track" | "ceiling", up: number, reach: number): Bay {
	const from = heights[kind].mm;
	const wish = from + up;
	if (kind === "ceiling") {
		const ceiling = Math.max(1, wish + snapUp([wish], bay, null, reach).by);
		return from === ceiling && bay.ceiling === null ? bay : { ...bay, ceiling };
	}
	const top = bay.ceiling ?? Number.POSITIVE_INFINITY;
	const height = Math.min(top, Math.max(0, wish + snapUp([wish], bay, null, reach).by));
	return height === from ? bay : { ...bay, track: { ...bay.track, height } };
}

type BoxHeld = Held & { readonly kind: BoxKind };

function moveBox(bay: Bay, grasp: Grasp, held: BoxHeld, way: Way, reach: number): Bay {
	const box = held.kind === "opening" ? bay.openings[held.index] : bay.obstacles[held.index];
	if (box === undefined) return bay;
	const along = held.part === "bottom" || held.part === "top" ? {} : alongWall(bay, grasp, held, box, way.along, reach);
	const up = held.part === "left" || held.part === "right" ? {} : upWall(bay, grasp, held, way.up, reach);
	const part = { ...along, ...up };
	if (Object.keys(part).length === 0) return bay;
	return held.kind === "opening" ? setOpening(bay, held.index, part) : setObstacle(bay, held.index, part);
}

function alongWall(
	bay: Bay,
	{ room }: Grasp,
	{ kind, index, part }: BoxHeld,
	box: Opening | Obstacle,
	by: number,
	reach: number,
): Partial<Pick<Opening, "from" | "to">> {
	if (part === "bottom" || part === "top") return {};
	const length = room(box.wall);
	const moved = slide(box, part, by, length);
	// It holds to where it was at first: a drag straight up or down leaves it in its place.
	const stays = part === "whole" && Math.abs(moved.from - box.from) <= reach / 2;
	const stops = stopsOn(bay, box.wall, length, kind === "opening" ? index : null);
	const drawn = stays ? box.from - moved.from : snapAlong(placesOf(moved, part), stops, reach).by;
	const { from, to } = slide(moved, part, drawn, length);
	if (from === box.from && to === box.to) return {};
	return { from: tenth(from), to: tenth(to) };
}

const placesOf = ({ from, to }: Pick<Opening, "from" | "to">, part: BoxPart): readonly number[] =>
	part === "left" ? [from] : part === "right" ? [to] : [from, to, (from + to) / 2];

function upWall(
	bay: Bay,
	{ heights }: Grasp,
	{ kind, index, part }: BoxHeld,
	by: number,
	reach: number,
): Record<string, number | null> {
	const span = kind === "opening" ? heights.openings[index] : heights.obstacles[index];
	if (span === undefined) return {};
	const [low, high] = kind === "opening" ? (["sill", "head"] as const) : (["bottom", "top"] as const);
	const bottom = span.bottom.mm;
	const top = span.top.mm;
	const besides = kind === "opening" ? index : null;
	const ceiling = bay.ceiling ?? Number.POSITIVE_INFINITY;
	if (part === "bottom") {
		const wish = bottom + by;
		const next = Math.max(0, Math.min(top - NARROWEST, wish + snapUp([wish], bay, besides, reach).by));
		return next === bottom ? {} : { [low]: kind === "obstacle" && next === 0 ? null : next };
	}
	if (part === "top") {
		const wish = top + by;
		const next = Math.min(ceiling, Math.max(bottom + NARROWEST, wish + snapUp([wish], bay, besides, reach).by));
		return next === top ? {} : { [high]: kind === "obstacle" && next === ceiling ? null : next };
	}
	return lifted(bay, saidOf(bay, kind, index), { low, high, bottom, top, ceiling, besides }, by, reach);
}

interface Lift {
	readonly low: string;
	readonly high: string;
	readonly bottom: number;
	readonly top: number;
	readonly ceiling: number;
	readonly besides: number | null;
}

/** What reaches down to the floor or up to the ceiling, or whose height nobody has said, moves along only. */
function lifted(
	bay: Bay,
	said: readonly [number | null, number | null],
	{ low, high, bottom, top, ceiling, besides }: Lift,
	by: number,
	reach: number,
): Record<string, number | null> {
	if (said[0] === null || said[1] === null || Math.abs(by) <= reach) return {};
	const wish = bottom + by;
	const drawn = by + snapUp([wish, top + by], bay, besides, reach).by;
	const held = Math.max(-bottom, Math.min(ceiling - top, drawn));
	return held === 0 ? {} : { [low]: bottom + held, [high]: top + held };
}

function saidOf(bay: Bay, kind: BoxKind, index: number): readonly [number | null, number | null] {
	const opening = bay.openings[index];
	const obstacle = bay.obstacles[index];
	return kind === "opening"
		? [opening?.sill ?? null, opening?.head ?? null]
		: [obstacle?.bottom ?? null, obstacle?.top ?? null];
}

/** Sills and heads of openings other than `besides` draw a height, the ceiling too. */
function snapUp(places: readonly number[], bay: Bay, besides: number | null, reach: number): SnapAlong {
	const levels = bay.openings.flatMap(({ sill, head }, i) => (i === besides ? [] : [sill, head]));
	const stops = [...levels, bay.ceiling].flatMap((at) => (at === null ? [] : [{ at, why: "level with another" }]));
	return snapAlong(places, stops, reach);
}

/** Which ways a part goes. */
export function waysOf(held: Held): { readonly along: boolean; readonly up: boolean } {
	if (!isBox(held)) return { along: false, up: true };
	const part: BoxPart = held.part;
	return { along: part !== "bottom" && part !== "top", up: part !== "left" && part !== "right" };
}

const tenth = (mm: number): number => Math.round(mm * 10) / 10;
