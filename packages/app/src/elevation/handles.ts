import type { ScreenPoint } from "@baywright/editor";
import { type BoxKind, type BoxPart, type Held, isBox } from "./held.ts";
import type { Ladder } from "./ladder.ts";
import { type ElevationScene, onScreen, screenBox } from "./scene.ts";

/** A bar that is taken hold of. */
export interface Handle {
	readonly held: Held;
	readonly at: ScreenPoint;
	/** Which way it lies. */
	readonly lies: "level" | "upright";
	/** Half its length, px. */
	readonly half: number;
}

/** Half the length and half the breadth of a handle, px. */
export const HANDLE = { halfLength: 11, halfBreadth: 3.5 } as const;
const LEAST_HALF = 6;

/** px: a box smaller than this has handles only while it is chosen, and they stand off it by so much. */
const SMALL = 40;
const STAND_OFF = 8;

/**
 * Bars on sills and heads, those of other things and of edges only where `chosen` or `hover` is on them; the track's and
 * the ceiling's on the ladder.
 */
export function handlesOf(scene: ElevationScene, ladder: Ladder, chosen: Held | null, hover: Held | null): Handle[] {
	const on = (kind: BoxKind, index: number) =>
		[chosen, hover].some((it) => isBox(it) && it.kind === kind && it.index === index);
	const boxes = (["opening", "obstacle"] as const).flatMap((kind) =>
		(kind === "opening" ? scene.openings : scene.obstacles).flatMap((box, index): Handle[] => {
			if (box === null) return [];
			const { left, right, top, bottom } = screenBox(scene, box);
			const across = (left + right) / 2;
			const middle = (top + bottom) / 2;
			const off = Math.min(right - left, bottom - top) < SMALL ? STAND_OFF : 0;
			const bar = (part: BoxPart, at: ScreenPoint, lies: Handle["lies"], length: number): Handle => ({
				held: { kind, index, part },
				at,
				lies,
				half: Math.max(LEAST_HALF, Math.min(HANDLE.halfLength, length / 3)),
			});
			const level = [
				bar("top", { left: across, top: top - off }, "level", right - left),
				bar("bottom", { left: across, top: bottom + off }, "level", right - left),
			];
			const upright = [
				bar("left", { left: left - off, top: middle }, "upright", bottom - top),
				bar("right", { left: right + off, top: middle }, "upright", bottom - top),
			];
			if (on(kind, index)) return [...level, ...upright];
			return kind === "opening" && right - left >= SMALL && bottom - top >= SMALL ? level : [];
		}),
	);
	const rungs = ladder.rungs.flatMap(({ grip, at }): Handle[] =>
		grip === null
			? []
			: [{ held: { kind: grip }, at: { left: ladder.spine, top: at }, lies: "level", half: HANDLE.halfLength }],
	);
	return [...boxes, ...rungs];
}

/** Where what is held lies, so that it can be brought into view. */
export function placeOf(scene: ElevationScene, held: Held): ScreenPoint | null {
	if (!isBox(held)) return { left: scene.size.width / 2, top: onScreen(scene, 0, scene.heights[held.kind].mm).top };
	const box = held.kind === "opening" ? scene.openings[held.index] : scene.obstacles[held.index];
	if (!box) return null;
	const { left, right, top, bottom } = screenBox(scene, box);
	return {
		left: held.part === "left" ? left : held.part === "right" ? right : (left + right) / 2,
		top: held.part === "top" ? top : held.part === "bottom" ? bottom : (top + bottom) / 2,
	};
}
