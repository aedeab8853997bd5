import { type ScreenPoint, toScreen } from "@baywright/editor";
import { midpoint, nearestStation, type Point, pointAt, step, type TrackPath } from "@baywright/geometry";
import { formatLength } from "@baywright/setout";
import { CORNER_HANDLE, cornerHandles, NUMBERED } from "../handles.ts";
import type { Scene } from "../scene.ts";
import { halfTrack, madeBends, stackReaches } from "../track-shape.ts";
import { onFace } from "../wall-shape.ts";
import { failingNotes } from "./failing-notes.ts";
import { angleFigure, roomAngle } from "./figures.ts";
import type { NoteLine } from "./label.ts";
import type { Anchor, Note } from "./notes.ts";
import { riseNotes } from "./rises.ts";
import { standOffNotes } from "./stand-offs.ts";

/** px between the track and a note beside it. */
const OFF_TRACK = 14;

/** px by which a joint's diamond and a bracket's bar reach past the track. */
const PAST_TRACK = 8;

/** px: a bay smaller than this on screen is a mark on a map, without notes. */
const SMALLEST_BAY = 150;

/** px: beside walls shorter than this on screen the track's slight turns are not told. */
const SHORT_WALL = 24;

/** What the track has to say inside the room: bends and angles at corners, stack-back, joints. */
export function trackNotes(scene: Scene): Note[] {
	if (extentOnScreen(scene) < SMALLEST_BAY) return [];
	return [
		...cornerNotes(scene),
		...bridgeNotes(scene),
		...bowNotes(scene),
		...standOffNotes(scene),
		...riseNotes(scene),
		...failingNotes(scene),
		...jointNotes(scene),
		...stackNotes(scene),
		...obstacleNotes(scene),
	];
}

function cornerNotes(scene: Scene): Note[] {
	const { plan, walls, view, corners, unit } = scene;
	const numbered = new Set(cornerHandles(scene).flatMap((it) => (it.radius < NUMBERED ? [] : [it.corner])));
	const bends = new Map(madeBends(plan).flatMap(({ bend }) => bend.corners.map((corner) => [corner, bend] as const)));
	return corners.slice(1, -1).flatMap((at, i): Note[] => {
		const corner = i + 1;
		const before = walls[corner - 1]?.along.at(-1);
		const after = walls[corner]?.along[0];
		if (!before || !after) return [];
		const figure = angleFigure(scene, corner, roomAngle(before, after));
		const angle: NoteLine = { text: figure.text, face: figure.taped ? "taped" : "small", colour: "soft" };
		// A handle too small for its number leaves it to the note.
		const name: NoteLine[] = numbered.has(corner) ? [] : [{ text: `corner ${corner}`, face: "small", colour: "soft" }];
		const bend = bends.get(corner);
		const into = intoRoom(before, after);
		if (bend === undefined) {
			const shorter = Math.min(walls[corner - 1]?.length ?? 0, walls[corner]?.length ?? 0);
			if (shorter * view.scale < SHORT_WALL) return [];
			const clear = OFF_TRACK + (plan.path === null ? 0 : (plan.projections[corner] ?? 0) * view.scale);
			const anchor = { at: toScreen(view, at), away: into, clear };
			return [{ key: `corner ${corner}`, importance: 55, lines: [...name, angle], anchors: [anchor], colour: "soft" }];
		}
		if (bend.corners.length > 1) {
			const beside = nearestStation(plan.path as TrackPath, at);
			const anchors = [
				{ at: toScreen(view, at), away: into, clear: CORNER_HANDLE + 3 },
				{ at: toScreen(view, beside?.at ?? at), away: into, clear: halfTrack(plan, view) + OFF_TRACK },
			];
			return [
				{ key: `corner ${corner}`, importance: 50, lines: [...name, angle], anchors, colour: "soft", near: true },
			];
		}
		const path = plan.path as TrackPath;
		const middle = pointAt(path, bend.start + bend.length / 2)?.at ?? at;
		const radius: NoteLine = { text: `R ${formatLength(bend.radius, unit)}`, face: "name", colour: "bend" };
		const clear = halfTrack(plan, view) + OFF_TRACK;
		const anchors = [
			{ at: toScreen(view, middle), away: into, clear },
			...[0, 1].map((share) => roomSide(path, bend.start + bend.length * share, clear, view)),
		];
		return [{ key: `corner ${corner}`, importance: 55, lines: [...name, radius, angle], anchors, colour: "bend" }];
	});
}

/** The radius to which the track is bent along each bowed wall. */
function bowNotes({ plan, view, unit }: Scene): Note[] {
	const { path } = plan;
	if (path === null) return [];
	const clear = halfTrack(plan, view) + OFF_TRACK;
	return plan.bows.map(({ wall, radius, from, sweep }) => ({
		key: `bow ${wall}`,
		importance: 54,
		lines: [{ text: `R ${formatLength(radius, unit)}`, face: "name", colour: "bend" }],
		anchors: [0.5, 0.3, 0.7].map((share) => roomSide(path, from + sweep * share, clear, view)),
		colour: "bend",
	}));
}

/** One bend for several corners is told once. */
function bridgeNotes({ plan, view, unit }: Scene): Note[] {
	const { path } = plan;
	if (path === null) return [];
	return madeBends(plan).flatMap(({ bend }): Note[] => {
		if (bend.corners.length < 2) return [];
		const text = `R ${formatLength(bend.radius, unit)}, corners ${bend.corners[0]}–${bend.corners.at(-1)}`;
		const clear = halfTrack(plan, view) + OFF_TRACK;
		return [
			{
				key: `bridge ${bend.corners[0]}`,
				importance: 56,
				lines: [{ text, face: "name", colour: "bend" }],
				anchors: [0.5, 0.3, 0.7].map((share) => roomSide(path, bend.start + bend.length * share, clear, view)),
				colour: "bend",
			},
		];
	});
}

function extentOnScreen({ corners, view }: Scene): number {
	const xs = corners.map(({ x }) => x);
	const ys = corners.map(({ y }) => y);
	return Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)) * view.scale;
}

function jointNotes({ plan, view }: Scene): Note[] {
	const { path } = plan;
	if (path === null) return [];
	return plan.joints.map(({ station }, i) => ({
		key: `joint ${i}`,
		importance: 90,
		lines: [{ text: "joint", face: "name", colour: "cut" }],
		anchors: besideTrack(path, station, halfTrack(plan, view) + OFF_TRACK + PAST_TRACK, view),
		colour: "cut",
	}));
}

/** What a stack's note is called: it is left out while its curtain is not drawn back. */
export const stackKey = (curtain: number): string => `stack ${curtain}`;

function stackNotes({ plan, view, unit }: Scene): Note[] {
	const { path } = plan;
	if (path === null) return [];
	const reaches = stackReaches(plan);
	return plan.stackBack.map(({ from, to }, i) => {
		const clear = Math.max((reaches[i] as number) * view.scale, halfTrack(plan, view)) + OFF_TRACK;
		return {
			key: stackKey(i),
			importance: 40,
			lines: [{ text: `stack-back ${formatLength(to - from, unit)}`, face: "plain", colour: "stack" }],
			anchors: [0.5, 0.75, 0.25].map((share) => roomSide(path, from + (to - from) * share, clear, view)),
			colour: "stack",
		};
	});
}

function obstacleNotes({ bay, walls, view }: Scene): Note[] {
	return bay.obstacles.flatMap((obstacle, i): Note[] => {
		const shape = walls[obstacle.wall];
		if (!shape) return [];
		const { at, ux, uy } = onFace(shape, (obstacle.from + obstacle.to) / 2);
		const edge = step(at, ux, uy, 0, obstacle.depth);
		return [
			{
				key: `obstacle ${i}`,
				importance: 20,
				lines: [{ text: obstacle.kind.replace("-", " "), face: "small", colour: "soft" }],
				anchors: [{ at: toScreen(view, edge), away: { left: uy, top: ux }, clear: OFF_TRACK }],
				colour: "soft",
			},
		];
	});
}

/** The room's side first, then the wall's. */
function besideTrack(path: TrackPath, station: number, clear: number, view: Scene["view"]): Anchor[] {
	const room = roomSide(path, station, clear, view);
	return [room, { ...room, away: { left: -room.away.left, top: -room.away.top } }];
}

function roomSide(path: TrackPath, station: number, clear: number, view: Scene["view"]): Anchor {
	const place = pointAt(path, station);
	const at: Point = place?.at ?? midpoint({ x: 0, y: 0 }, { x: 0, y: 0 });
	const heading = place?.heading ?? 0;
	return { at: toScreen(view, at), away: { left: Math.sin(heading), top: Math.cos(heading) }, clear };
}

/** The direction into the room midway between two walls, on screen. */
function intoRoom(
	before: { readonly ux: number; readonly uy: number },
	after: { readonly ux: number; readonly uy: number },
): ScreenPoint {
	const right = before.uy + after.uy;
	const down = before.ux + after.ux;
	const length = Math.hypot(right, down);
	return length < 1e-6 ? { left: before.uy, top: before.ux } : { left: right / length, top: down / length };
}
