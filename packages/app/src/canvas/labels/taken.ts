import { type ScreenPoint, toScreen } from "@baywright/editor";
import { type Point, pointAt, type Segment, type TrackPath } from "@baywright/geometry";
import { BOW_HANDLE, bowHandles, CORNER_HANDLE, WALL_HANDLE, wallHandles } from "../handles.ts";
import type { Scene } from "../scene.ts";
import { bracketBar, halfTrack, stackReaches } from "../track-shape.ts";
import { DRAWN_THICKNESS, wallBand } from "../wall-shape.ts";
import type { Box, Stroke } from "./box.ts";
import { clipLine } from "./clip.ts";
import type { Taken } from "./place.ts";

/** px kept clear beside the lines of walls and track. */
const BREATH = 3;

/** px by which strokes are followed off the screen. */
const BEYOND = -40;

/** A bowed wall is stood for by at most so many strokes. */
const MOST_STROKES = 12;

/** Radians of a bend between two points of the strokes that stand for it. */
const BEND_STEP = 0.2;

/** Half of what a wall's handles cover, px. */
const WALL_GRIP = { halfWidth: WALL_HANDLE.halfLength, halfHeight: WALL_HANDLE.halfBreadth } as const;
const BOW_GRIP = { halfWidth: BOW_HANDLE.halfWidth + 4, halfHeight: BOW_HANDLE.drop } as const;

/** What labels may not cover: walls, track, brackets, folds, obstacles, handles, what the survey draws, and what stands over the drawing. */
export function takenBy(scene: Scene, over: readonly Box[], surveyed: readonly Stroke[]): Taken {
	const strokes: Stroke[] = [];
	const add = (from: ScreenPoint, to: ScreenPoint, half: number) => {
		const seen = clipLine({ from, to }, scene.size, BEYOND - half);
		if (seen !== null) strokes.push({ ...seen, half, leader: false });
	};
	addWalls(scene, add);
	if (scene.plan.path !== null) addTrack(scene, scene.plan.path, add);
	for (const { from, to, half } of surveyed) add(from, to, half);

	const handles = scene.corners.map((corner): Box => {
		const { left, top } = toScreen(scene.view, corner);
		return { left, top, halfWidth: CORNER_HANDLE, halfHeight: CORNER_HANDLE, turn: 0 };
	});
	const grips = [
		...wallHandles(scene).map((it): Box => ({ ...it.at, ...WALL_GRIP, turn: it.turn })),
		...bowHandles(scene).map((it): Box => ({ ...it.at, ...BOW_GRIP, turn: it.turn })),
	];
	return { boxes: [...over, ...handles, ...grips], strokes };
}

type Add = (from: ScreenPoint, to: ScreenPoint, half: number) => void;

function addWalls({ walls, bay, view }: Scene, add: Add): void {
	const half = (DRAWN_THICKNESS / 2) * view.scale + BREATH;
	for (const shape of walls) {
		if (shape === null) continue;
		const last = shape.face.length - 1;
		const stride = Math.max(1, Math.ceil(last / MOST_STROKES));
		const middle = (k: number) => toScreen(view, between(shape.face[k] as Point, shape.outer[k] as Point));
		for (let i = 0; i < last; i += stride) add(middle(i), middle(Math.min(last, i + stride)), half);
	}
	for (const obstacle of bay.obstacles) {
		const shape = walls[obstacle.wall];
		if (!shape) continue;
		const band = wallBand(shape, obstacle.from, obstacle.to, -obstacle.depth / 2, 0);
		const middle = band.slice(0, band.length / 2).map((at) => toScreen(view, at));
		for (let i = 0; i + 1 < middle.length; i++)
			add(middle[i] as ScreenPoint, middle[i + 1] as ScreenPoint, (obstacle.depth / 2) * view.scale + BREATH + 3);
	}
}

function addTrack({ plan, bay, view }: Scene, path: TrackPath, add: Add): void {
	const half = halfTrack(plan, view) + BREATH;
	const follow = (from: number, to: number, reach: number) => {
		const stops = stopsBetween(path, from, to).map((station) => toScreen(view, pointAt(path, station)?.at as Point));
		for (let i = 0; i + 1 < stops.length; i++) add(stops[i] as ScreenPoint, stops[i + 1] as ScreenPoint, reach);
	};
	follow(0, path.length, half);
	const reaches = stackReaches(plan);
	plan.stackBack.forEach(({ from, to }, i) => {
		follow(from, to, (reaches[i] as number) * view.scale + BREATH);
	});
	for (const bracket of plan.brackets) {
		const heading = pointAt(path, bracket.station)?.heading;
		if (heading === undefined) continue;
		const bar = bracketBar(bay, plan, bracket, heading, view);
		add(toScreen(view, bar.from), toScreen(view, bar.to), BREATH + 2);
	}
}

function stopsBetween(path: TrackPath, from: number, to: number): number[] {
	const stops = [from];
	for (const segment of path.segments) {
		if (segment.start >= to || segment.start + segment.length <= from) continue;
		const steps = stepsOf(segment);
		for (let i = 0; i < steps; i++) {
			const station = segment.start + (segment.length * i) / steps;
			if (station > from && station < to) stops.push(station);
		}
	}
	stops.push(to);
	return stops;
}

const stepsOf = (segment: Segment): number =>
	segment.kind === "straight" ? 1 : Math.max(1, Math.ceil(Math.abs(segment.turn) / BEND_STEP));

const between = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
