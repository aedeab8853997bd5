import { type ScreenPoint, type Selection, type Target, toPlan, toScreen } from "@baywright/editor";
import { type Bend, nearestStation, type Point, pointAt } from "@baywright/geometry";
import { BOW_HANDLE, bowHandles, cornerHandles, WALL_HANDLE, wallHandles } from "./handles.ts";
import { BADGE, type Layout } from "./labels/layout.ts";
import type { Scene } from "./scene.ts";
import { bendHandles, type SmallHandle, stretchHandles, trackEndHandles } from "./small-handles.ts";
import { bracketBar, halfTrack, madeBends } from "./track-shape.ts";
import { DRAWN_THICKNESS, footOnShape, type WallShape } from "./wall-shape.ts";

/** px that a pointer reaches beyond what is drawn: a fine pointer, and a finger (44 px across). */
export const REACH = { mouse: 9, touch: 22 } as const;

/** Small things close together: a finger still tells them apart by which is nearest. */
const SMALL_REACH = { mouse: 6, touch: 14 } as const;

/** What lies under the pointer, by the shape drawn and not by its colour: the marks of findings before handles, handles before what they stand on. */
export function reach(
	scene: Scene,
	layout: Layout,
	chosen: Selection | null,
	at: ScreenPoint,
	pointer: keyof typeof REACH,
): Target | null {
	return (
		findingAt(layout, at, pointer) ??
		smallHandleAt(stretchHandles(scene, chosen), at, REACH[pointer]) ??
		handleAt(scene, at, REACH[pointer]) ??
		smallHandleAt(trackEndHandles(scene), at, SMALL_REACH[pointer]) ??
		smallHandleAt(bendHandles(scene), at, SMALL_REACH[pointer]) ??
		trackThingAt(scene, at, SMALL_REACH[pointer]) ??
		onWallAt(scene, at, SMALL_REACH[pointer]) ??
		bendAt(scene, at, SMALL_REACH[pointer]) ??
		wallAt(scene, at, SMALL_REACH[pointer]) ??
		pieceAt(scene, at, SMALL_REACH[pointer])
	);
}

function smallHandleAt(handles: readonly SmallHandle[], at: ScreenPoint, within: number): Target | null {
	return nearest(handles, (it) => Math.max(0, gap(it.at, at) - it.half), within)?.target ?? null;
}

/** Obstacles in front of the wall, then stretches without holes at its face, then openings in its thickness. */
function onWallAt({ bay, walls, view }: Scene, at: ScreenPoint, within: number): Target | null {
	const place = toPlan(view, at);
	const reachable = within / view.scale;
	const band = (wall: number, from: number, to: number, out: number, into: number): number => {
		const shape = walls[wall];
		if (!shape) return Number.POSITIVE_INFINITY;
		const foot = footOnShape(shape, place);
		const along = Math.max(from - foot.at, foot.at - to, 0);
		const across = Math.max(-out - foot.off, foot.off - into, 0);
		return Math.hypot(along, across);
	};
	const obstacle = nearest(
		bay.obstacles.map((it, index) => ({ it, index })),
		({ it }) => band(it.wall, it.from, it.to, 0, Math.max(it.depth, LEAST_OBSTACLE / view.scale)),
		Math.min(reachable, LEAST_OBSTACLE / view.scale),
	);
	if (obstacle !== null) return { kind: "obstacle", index: obstacle.index };
	const stretches = bay.walls.flatMap(({ noDrill }, wall) =>
		noDrill.map(([from, to], index) => ({ wall, index, from, to })),
	);
	const noDrill = nearest(stretches, (it) => band(it.wall, it.from, it.to, NO_DRILL / view.scale, 0), 0);
	if (noDrill !== null) return { kind: "no-drill", index: noDrill.index, wall: noDrill.wall };
	const opening = nearest(
		bay.openings.map((it, index) => ({ it, index })),
		({ it }) => band(it.wall, it.from, it.to, DRAWN_THICKNESS, 0),
		0,
	);
	return opening === null ? null : { kind: "opening", index: opening.index };
}

/** px that a flush obstacle stands off the wall as drawn, and that the crosses of a stretch without holes reach into it. */
const LEAST_OBSTACLE = 5;
const NO_DRILL = 12;

function findingAt(layout: Layout, at: ScreenPoint, pointer: keyof typeof REACH): Target | null {
	const within = Math.max(BADGE, REACH[pointer]);
	const badges = layout.labels.filter((label) => label.kind === "badge");
	const badge = nearest(badges, ({ box }) => gap(box, at), within);
	const finding = badge === null ? undefined : layout.marks[badge.mark]?.findings[0];
	return finding === undefined ? null : { kind: "finding", index: finding };
}

/** Of handles that stand close a finger means the nearest; a corner of those that are as near. */
function handleAt(scene: Scene, at: ScreenPoint, within: number): Target | null {
	const corners = cornerHandles(scene).map((it) => ({
		it: { kind: "corner" as const, index: it.corner },
		away: Math.max(0, gap(it.at, at) - it.radius),
	}));
	const bars = wallHandles(scene).map((it) => {
		const along = { left: Math.cos(it.turn) * BAR_REST, top: Math.sin(it.turn) * BAR_REST };
		const from = { left: it.at.left - along.left, top: it.at.top - along.top };
		const to = { left: it.at.left + along.left, top: it.at.top + along.top };
		return {
			it: { kind: "wall" as const, index: it.wall },
			away: Math.max(0, gapToLine(from, to, at) - WALL_HANDLE.halfBreadth),
		};
	});
	const bows = bowHandles(scene).map((it) => ({
		it: { kind: "bow" as const, index: it.wall },
		away: Math.max(0, gap(it.at, at) - BOW_HANDLE.drop),
	}));
	return nearest([...bows, ...bars, ...corners], ({ away }) => away, within)?.it ?? null;
}

/** px from the middle of a wall's handle to where its round end begins. */
const BAR_REST = WALL_HANDLE.halfLength - WALL_HANDLE.halfBreadth;

/** Joints before brackets: the smaller lies on the larger. */
function trackThingAt({ plan, bay, view }: Scene, at: ScreenPoint, within: number): Target | null {
	const { path } = plan;
	if (path === null) return null;
	const places = plan.joints.map(({ station }, index) => ({ index, at: pointAt(path, station)?.at }));
	const joint = nearest(
		places,
		(it) => (it.at ? gap(toScreen(view, it.at), at) - 8 : Number.POSITIVE_INFINITY),
		within,
	);
	if (joint !== null) return { kind: "joint", index: joint.index };

	const bars = plan.brackets.map((bracket, index) => {
		const heading = pointAt(path, bracket.station)?.heading;
		return { index, bar: heading === undefined ? null : bracketBar(bay, plan, bracket, heading, view) };
	});
	const bracket = nearest(
		bars,
		({ bar }) => (bar ? gapToLine(toScreen(view, bar.from), toScreen(view, bar.to), at) : Number.POSITIVE_INFINITY),
		within,
	);
	return bracket === null ? null : { kind: "bracket", index: bracket.index };
}

/** A bend's band is broad: what stands on the wall beside it is taken first. */
function bendAt({ plan, view }: Scene, at: ScreenPoint, within: number): Target | null {
	const reachOfBand = halfTrack(plan, view) + 6;
	const bend = nearest(
		madeBends(plan),
		(it) => gapToBend(it.bend, toPlan(view, at)) * view.scale - reachOfBand,
		within,
	);
	return bend === null ? null : { kind: "bend", index: bend.corner };
}

/** Anywhere in a wall's thickness. */
function wallAt(scene: Scene, at: ScreenPoint, within: number): Target | null {
	const shapes = scene.walls.filter((shape) => shape !== null);
	const wall = nearest(shapes, (shape) => gapToBand(shape, scene, at), within);
	return wall === null ? null : { kind: "wall", index: wall.wall };
}

function pieceAt({ plan, view }: Scene, at: ScreenPoint, within: number): Target | null {
	if (plan.path === null) return null;
	const near = nearestStation(plan.path, toPlan(view, at));
	if (near === null || near.distance * view.scale > halfTrack(plan, view) + within) return null;
	const index = plan.pieces.findIndex(({ from, to }) => near.station >= from && near.station <= to);
	return index < 0 ? null : { kind: "piece", index };
}

function nearest<Item>(items: readonly Item[], distance: (item: Item) => number, within: number): Item | null {
	let best: Item | null = null;
	let least = within;
	for (const item of items) {
		const away = distance(item);
		if (away <= least) {
			best = item;
			least = away;
		}
	}
	return best;
}

const gap = (a: ScreenPoint, b: ScreenPoint): number => Math.hypot(a.left - b.left, a.top - b.top);

function gapToLine(from: ScreenPoint, to: ScreenPoint, at: ScreenPoint): number {
	const left = to.left - from.left;
	const top = to.top - from.top;
	const square = left * left + top * top;
	const share = square === 0 ? 0 : ((at.left - from.left) * left + (at.top - from.top) * top) / square;
	const held = Math.min(1, Math.max(0, share));
	return Math.hypot(at.left - from.left - left * held, at.top - from.top - top * held);
}

/** mm from a bend's centre line. */
function gapToBend(bend: Bend, at: Point): number {
	return (
		nearestStation({ segments: [{ ...bend, start: 0 }], length: bend.length }, at)?.distance ?? Number.POSITIVE_INFINITY
	);
}

/** px outside a wall's body; 0 inside it. */
function gapToBand(shape: WallShape, { view }: Scene, at: ScreenPoint): number {
	const ring = [...shape.face, ...[...shape.outer].reverse()].map((corner) => toScreen(view, corner));
	let inside = false;
	let least = Number.POSITIVE_INFINITY;
	ring.forEach((a, i) => {
		const b = ring[(i + 1) % ring.length] as ScreenPoint;
		least = Math.min(least, gapToLine(a, b, at));
		const crosses = a.top > at.top !== b.top > at.top;
		if (crosses && at.left < a.left + ((b.left - a.left) * (at.top - a.top)) / (b.top - a.top)) inside = !inside;
	});
	return inside ? 0 : least;
}
