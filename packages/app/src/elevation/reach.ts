import type { ScreenPoint, Selection } from "@baywright/editor";
import type { PointerKind } from "../canvas/gestures.ts";
import { HANDLE, type Handle } from "./handles.ts";
import { type Held, selectionOf } from "./held.ts";
import { bracketPlaces, jointPlaces, noDrillRows } from "./marks.ts";
import { type ElevationScene, halfTrackHeight, onScreen, type ScreenBox, screenBox } from "./scene.ts";
import { stationAlong } from "./track-run.ts";
import { wallUnder } from "./unrolled.ts";

/** What lies under the pointer: what a drag takes hold of, and what a tap chooses. */
export interface Under {
	readonly held: Held | null;
	readonly thing: Selection | null;
	/** It is one of the bars that are there to be taken hold of. */
	readonly bar: boolean;
}

/** px that a pointer reaches beyond what is drawn: a fine pointer, and a finger (44 px across). */
const REACH: Readonly<Record<PointerKind, number>> = { mouse: 7, touch: 22 };

/** Lines and small things close together. */
const FINE: Readonly<Record<PointerKind, number>> = { mouse: 5, touch: 12 };

const NOTHING: Under = { held: null, thing: null, bar: false };

/** Radius of a corner's number, px, that of an end, how far they stand above the ceiling, and from which radius on there is room for the number. */
export const CORNER = { radius: 10, end: 6, above: 22, numbered: 8 } as const;

/** Handles first, then marks on the track, the track, edges, the ceiling, and what they all stand on. */
export function reachElevation(
	scene: ElevationScene,
	handles: readonly Handle[],
	at: ScreenPoint,
	pointer: PointerKind,
): Under {
	const handle = nearest(handles, (it) => gapToHandle(it, at), REACH[pointer]);
	if (handle !== null) return { held: handle.held, thing: selectionOf(handle.held), bar: true };
	return (
		cornerUnder(scene, at, REACH[pointer]) ??
		trackUnder(scene, at, FINE[pointer]) ??
		noDrillUnder(scene, at, FINE[pointer]) ??
		edgeUnder(scene, at, FINE[pointer]) ??
		ceilingUnder(scene, at, FINE[pointer]) ??
		boxUnder(scene, at) ??
		wallAt(scene, at) ??
		NOTHING
	);
}

function cornerUnder(scene: ElevationScene, at: ScreenPoint, within: number): Under | null {
	const places = scene.unrolled.corners.map((corner, index) => ({
		index,
		at: cornerPlace(scene, corner.at),
	}));
	const corner = nearest(places, (it) => gap(it.at, at) - cornerRadius(scene, it.index), within);
	return corner === null ? null : { held: null, thing: { kind: "corner", index: corner.index }, bar: false };
}

/** The middle of a corner's number: above the ceiling, or at the top of the drawing where that is out of sight. */
export function cornerPlace(scene: ElevationScene, along: number): ScreenPoint {
	const { left, top } = onScreen(scene, along, scene.heights.ceiling.mm);
	return { left, top: Math.max(CORNER.radius + 3, top - CORNER.above) };
}

/** px: smaller where corners stand close. */
export function cornerRadius({ unrolled: { corners }, view }: ElevationScene, index: number): number {
	const corner = corners[index] as (typeof corners)[number];
	const near = [corners[index - 1], corners[index + 1]].map((it) =>
		it === undefined ? Number.POSITIVE_INFINITY : Math.abs(it.at - corner.at) * view.scale,
	);
	return Math.max(3, Math.min(corner.kind === "end" ? CORNER.end : CORNER.radius, Math.min(...near) / 2 - 2));
}

function trackUnder(scene: ElevationScene, at: ScreenPoint, within: number): Under | null {
	const { run, heights, view } = scene;
	if (run === null) return null;
	const { top } = onScreen(scene, 0, heights.track.mm);
	const along = (at.left - view.left) / view.scale;
	if (Math.abs(at.top - top) > halfTrackHeight(scene) + within + 4) return null;
	if (along < run.from - within / view.scale || along > run.to + within / view.scale) return null;
	return { held: { kind: "track" }, thing: trackThing(scene, at, along, within), bar: false };
}

function trackThing(scene: ElevationScene, at: ScreenPoint, along: number, within: number): Selection | null {
	const { run, plan } = scene;
	if (run === null) return null;
	const off = (it: { readonly along: number }) => Math.abs(onScreen(scene, it.along, 0).left - at.left);
	const joint = nearest(jointPlaces(scene), off, within + 3);
	if (joint !== null) return { kind: "joint", index: joint.index };
	const bracket = nearest(bracketPlaces(scene), off, within);
	if (bracket !== null) return { kind: "bracket", index: bracket.index };
	const bend = run.bends.find(({ from, to }) => along >= from && along <= to);
	if (bend !== undefined) return { kind: bend.bow ? "bow" : "bend", index: bend.of };
	const piece = plan.pieces.findIndex(
		({ from, to }) => along >= stationAlong(run, from) && along <= stationAlong(run, to),
	);
	return piece < 0 ? null : { kind: "piece", index: piece };
}

function noDrillUnder(scene: ElevationScene, at: ScreenPoint, within: number): Under | null {
	const row = noDrillRows(scene).find(
		({ left, right, top }) => Math.abs(at.top - top) <= within && at.left >= left - within && at.left <= right + within,
	);
	if (row === undefined) return null;
	return { held: null, thing: { kind: "no-drill", index: row.index, wall: row.wall }, bar: false };
}

/** Sills, heads and edges, by the nearest; a box so small that its edges meet is taken as a whole. */
function edgeUnder(scene: ElevationScene, at: ScreenPoint, within: number): Under | null {
	const edges = (["obstacle", "opening"] as const).flatMap((kind) =>
		(kind === "opening" ? scene.openings : scene.obstacles).flatMap((box, index) => {
			if (box === null) return [];
			const it = screenBox(scene, box);
			if (Math.min(it.right - it.left, it.bottom - it.top) < 4 * within) return [];
			return (["top", "bottom", "left", "right"] as const).map((part) => ({
				held: { kind, index, part },
				away: gapToEdge(it, part, at),
			}));
		}),
	);
	const edge = nearest(edges, ({ away }) => away, within);
	return edge === null ? null : { held: edge.held, thing: selectionOf(edge.held), bar: false };
}

function ceilingUnder(scene: ElevationScene, at: ScreenPoint, within: number): Under | null {
	const { top, left } = onScreen(scene, 0, scene.heights.ceiling.mm);
	const right = onScreen(scene, scene.unrolled.length, 0).left;
	if (Math.abs(at.top - top) > within || at.left < left || at.left > right) return null;
	return { held: { kind: "ceiling" }, thing: null, bar: false };
}

/** Obstacles stand before openings, and of either the last is drawn on top. */
function boxUnder(scene: ElevationScene, at: ScreenPoint): Under | null {
	for (const kind of ["obstacle", "opening"] as const) {
		const boxes = kind === "opening" ? scene.openings : scene.obstacles;
		const index = boxes.findLastIndex((box) => {
			if (box === null) return false;
			const { left, right, top, bottom } = screenBox(scene, box);
			return at.left >= left - 2 && at.left <= right + 2 && at.top >= top - 2 && at.top <= bottom + 2;
		});
		if (index >= 0) return { held: { kind, index, part: "whole" }, thing: { kind, index }, bar: false };
	}
	return null;
}

function wallAt(scene: ElevationScene, at: ScreenPoint): Under | null {
	const { view, heights, unrolled } = scene;
	const height = (view.top - at.top) / view.scale;
	if (height < 0 || height > heights.ceiling.mm) return null;
	const wall = wallUnder(unrolled, (at.left - view.left) / view.scale);
	return wall === null ? null : { held: null, thing: { kind: "wall", index: wall }, bar: false };
}

function gapToHandle({ at: { left, top }, lies, half }: Handle, at: ScreenPoint): number {
	const [halfWidth, halfHeight] = lies === "level" ? [half, HANDLE.halfBreadth] : [HANDLE.halfBreadth, half];
	return Math.hypot(
		Math.max(0, Math.abs(at.left - left) - halfWidth),
		Math.max(0, Math.abs(at.top - top) - halfHeight),
	);
}

function gapToEdge(
	{ left, right, top, bottom }: ScreenBox,
	part: "left" | "right" | "top" | "bottom",
	at: ScreenPoint,
): number {
	const level = part === "top" || part === "bottom";
	const on = part === "top" ? top : part === "bottom" ? bottom : part === "left" ? left : right;
	const [here, low, high] = level ? [at.left, left, right] : [at.top, top, bottom];
	if (here < low || here > high) return Number.POSITIVE_INFINITY;
	return Math.abs((level ? at.top : at.left) - on);
}

function nearest<Item>(items: readonly Item[], distance: (item: Item) => number, within: number): Item | null {
	let best: Item | null = null;
	let least = within;
	for (const item of items) {
		const away = distance(item);
		if (away > least) continue;
		best = item;
		least = away;
	}
	return best;
}

const gap = (a: ScreenPoint, b: ScreenPoint): number => Math.hypot(a.left - b.left, a.top - b.top);
