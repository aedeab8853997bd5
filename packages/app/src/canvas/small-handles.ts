import { isPulled, type ScreenPoint, type Selection, stretchOf, type Target, toScreen } from "@baywright/editor";
import { pointAt } from "@baywright/geometry";
import type { Scene } from "./scene.ts";
import { halfTrack, madeBends } from "./track-shape.ts";
import { DRAWN_THICKNESS, onFace } from "./wall-shape.ts";

/** A handle on what stands on walls or belongs to the track. */
export interface SmallHandle {
	readonly target: Target;
	readonly at: ScreenPoint;
	/** Along the wall or the track on screen, radians clockwise. */
	readonly turn: number;
	/** px across it. */
	readonly half: number;
}

/** px by which a track end's bar reaches past the track. */
const END_PAST = 7;

/** px: a track shorter than this on screen has no handles. */
const SHORTEST_TRACK = 60;

/** Bars across the ends of the track. */
export function trackEndHandles({ plan, view }: Scene): SmallHandle[] {
	const { path } = plan;
	if (path === null || path.length * view.scale < SHORTEST_TRACK) return [];
	return [0, path.length].flatMap((station, index): SmallHandle[] => {
		const place = pointAt(path, station);
		if (place === null) return [];
		return [
			{
				target: { kind: "track-end", index },
				at: toScreen(view, place.at),
				turn: -place.heading,
				half: halfTrack(plan, view) + END_PAST,
			},
		];
	});
}

/** px: bends smaller than this on screen are pulled only after zooming in. */
const SHORTEST_BEND = 22;

/** Knobs in the middle of bends whose radius can be pulled. */
export function bendHandles({ plan, bay, view }: Scene): SmallHandle[] {
	const { path } = plan;
	if (path === null) return [];
	const pulled = new Set(plan.corners.filter((it) => isPulled(bay, it)).map(({ corner }) => corner));
	return madeBends(plan).flatMap(({ bend, corner }): SmallHandle[] => {
		if (!pulled.has(corner) || bend.length * view.scale < SHORTEST_BEND) return [];
		const middle = pointAt(path, bend.start + bend.length / 2);
		if (middle === null) return [];
		return [{ target: { kind: "bend", index: corner }, at: toScreen(view, middle.at), turn: -middle.heading, half: 5 }];
	});
}

/** Knobs at both ends of the opening, obstacle or stretch without holes that is chosen. */
export function stretchHandles({ bay, walls, view }: Scene, chosen: Selection | null): SmallHandle[] {
	if (chosen === null) return [];
	const it = stretchOf(bay, chosen);
	const shape = it && walls[it.wall];
	if (!it || !shape) return [];
	const out = chosen.kind === "opening" ? DRAWN_THICKNESS / 2 : 0;
	return (["left", "right"] as const).map((part) => {
		const { at, ux, uy } = onFace(shape, part === "left" ? it.from : it.to);
		return {
			target: { ...chosen, part },
			at: toScreen(view, { x: at.x - uy * out, y: at.y + ux * out }),
			turn: Math.atan2(-uy, ux),
			half: 7,
		};
	});
}
