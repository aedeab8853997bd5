import { toScreen } from "@baywright/editor";
import { type Point, pointAt } from "@baywright/geometry";
import type { Scene } from "../scene.ts";
import { linesCross } from "./box.ts";
import type { Line } from "./clip.ts";

/** What a dimension line may not cross: a wall's face or outer line anywhere, the track where there is another way. */
export interface Obstructions {
	readonly walls: readonly Line[];
	readonly track: readonly Line[];
}

/** A bowed wall stands for at most so many lines; an arc of the track for one every so many radians. */
const MOST_LINES = 8;
const ARC_STEP = 0.2;

/** Null where no wall stands in the way of any dimension outside it: all of them turn the same way and none bows into the room. */
export function obstructionsIn(scene: Scene): Obstructions | null {
	const { plan, walls } = scene;
	const external =
		(plan.chain?.turns.some((turn) => turn < 0) ?? true) || walls.some((wall) => (wall?.arc?.rise ?? 0) < 0);
	return external ? { walls: wallLines(scene), track: trackLines(scene) } : null;
}

/** Whether a dimension line, but for its ends, crosses any of `lines`. */
export function crosses({ from, to }: Line, lines: readonly Line[]): boolean {
	const inset = Math.min(0.25, 12 / Math.max(1, Math.hypot(to.left - from.left, to.top - from.top)));
	const at = (share: number) => ({
		left: from.left + (to.left - from.left) * share,
		top: from.top + (to.top - from.top) * share,
	});
	const inner = { from: at(inset), to: at(1 - inset) };
	const low = Math.min(inner.from.left, inner.to.left);
	const high = Math.max(inner.from.left, inner.to.left);
	return lines.some((line) => {
		if (Math.max(line.from.left, line.to.left) < low || Math.min(line.from.left, line.to.left) > high) return false;
		return linesCross(inner, line);
	});
}

function wallLines({ walls, view }: Scene): Line[] {
	return walls.flatMap((shape) =>
		shape === null ? [] : [shape.face, shape.outer].flatMap((points) => linesThrough(thinned(points), view)),
	);
}

function thinned(points: readonly Point[]): readonly Point[] {
	const stride = Math.ceil((points.length - 1) / MOST_LINES);
	return points.filter((_, i) => i % stride === 0 || i === points.length - 1);
}

function trackLines({ plan: { path }, view }: Scene): Line[] {
	return (path?.segments ?? []).flatMap((segment) => {
		const steps = segment.kind === "straight" ? 1 : Math.max(1, Math.ceil(Math.abs(segment.turn) / ARC_STEP));
		const points = Array.from({ length: steps + 1 }, (_, i) => {
			const station = segment.start + (segment.length * i) / steps;
			return pointAt({ segments: [segment], length: segment.length }, station)?.at ?? segment.from;
		});
		return linesThrough(points, view);
	});
}

const linesThrough = (points: readonly Point[], view: Scene["view"]): Line[] =>
	points.slice(1).map((to, i) => ({ from: toScreen(view, points[i] as Point), to: toScreen(view, to) }));
