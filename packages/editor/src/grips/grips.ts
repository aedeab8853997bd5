import type { Job } from "@baywright/setout";
import type { Target } from "../selection.ts";
import { bendGrip } from "./bend.ts";
import { bowGrip } from "./bow.ts";
import { cornerGrip } from "./corner.ts";
import type { Grip, Held } from "./grip.ts";
import { bracketGrip, jointGrip, trackEndGrip } from "./place.ts";
import { noDrillGrip, obstacleGrip, openingGrip } from "./stretch.ts";
import { wallGrip } from "./wall.ts";

const GRIPS = {
	corner: cornerGrip,
	wall: wallGrip,
	bow: bowGrip,
	opening: openingGrip,
	obstacle: obstacleGrip,
	"no-drill": noDrillGrip,
	"track-end": trackEndGrip,
	bend: bendGrip,
	joint: jointGrip,
	bracket: bracketGrip,
} as const satisfies Partial<Record<Target["kind"], Grip>>;

/** What can be taken hold of and moved. */
export type GripKind = keyof typeof GRIPS;

export const isGrip = <Thing extends Target>(it: Thing | null): it is Thing & { readonly kind: GripKind } =>
	it !== null && it.kind in GRIPS;

export const gripOf = (kind: GripKind): Grip => GRIPS[kind];

/** The job with what is held pushed by (dx, dy) mm, as an arrow key does: nothing draws it anywhere. */
export function nudged(held: Held, dx: number, dy: number): Job {
	if (!isGrip(held.target)) return held.job;
	const grip = gripOf(held.target.kind);
	if (grip.nudge) return grip.nudge(held, dx, dy);
	return grip.move(held, { x: held.from.x + dx, y: held.from.y + dy }, 0).job;
}
