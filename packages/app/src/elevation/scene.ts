import { type ScreenPoint, type Size, toScreen, type Viewport } from "@baywright/editor";
import type { Bay, BayPlan, LengthUnit } from "@baywright/setout";
import type { Palette } from "../canvas/palette.ts";
import type { Measure } from "../canvas/text.ts";
import { type CableBand, cableBands } from "./cable-bands.ts";
import { type Hanging, hangingOf } from "./curtains.ts";
import { type Heights, heightsOf, type Span } from "./heights.ts";
import { type TrackRun, trackRun } from "./track-run.ts";
import { alongOf, type Unrolled, unroll } from "./unrolled.ts";

/** All that the elevation's painters draw from, in one frame. In the view x runs along the unrolled faces and y up from the floor. */
export interface ElevationScene {
	readonly unit: LengthUnit;
	readonly bay: Bay;
	readonly plan: BayPlan;
	readonly unrolled: Unrolled;
	readonly heights: Heights;
	readonly run: TrackRun | null;
	readonly hanging: readonly Hanging[];
	/** One for each opening, then one for each obstacle; null where it lies on no wall. */
	readonly openings: readonly (Box | null)[];
	readonly obstacles: readonly (Box | null)[];
	/** Where concealed cables are to be expected; none while they are not shown. */
	readonly cables: readonly CableBand[];
	readonly view: Viewport;
	readonly size: Size;
	readonly palette: Palette;
	readonly measure: Measure;
}

/** A box on the unrolled faces, mm. */
export interface Box extends Span {
	readonly from: number;
	readonly to: number;
}

/** What hangs on the wall, whatever the view. */
export type Elevation = Omit<ElevationScene, "view" | "size" | "palette" | "measure">;

/** The bay unrolled, with each curtain opened by its share (0 = drawn); null where its corners make no walls. */
export function elevationOf(
	bay: Bay,
	plan: BayPlan,
	unit: LengthUnit,
	openedBy: (curtain: number) => number,
): Elevation | null {
	if (plan.chain === null) return null;
	const unrolled = unroll(plan.chain);
	const heights = heightsOf(bay, plan.height);
	const run = trackRun(plan, unrolled);
	const boxes = (
		things: readonly { readonly wall: number; readonly from: number; readonly to: number }[],
		spans: readonly Span[],
	) =>
		things.map(({ wall, from, to }, i): Box | null => {
			const left = alongOf(unrolled, wall, Math.min(from, to));
			const right = alongOf(unrolled, wall, Math.max(from, to));
			return right > left ? { from: left, to: right, ...(spans[i] as Span) } : null;
		});
	return {
		unit,
		bay,
		plan,
		unrolled,
		heights,
		run,
		hanging: run === null ? [] : hangingOf(plan, run, openedBy),
		openings: boxes(bay.openings, heights.openings),
		obstacles: boxes(bay.obstacles, heights.obstacles),
		cables: cableBands(bay, unrolled, heights),
	};
}

/** Where a place on the unrolled faces lies on screen. */
export const onScreen = ({ view }: Pick<ElevationScene, "view">, along: number, height: number): ScreenPoint =>
	toScreen(view, { x: along, y: height });

export interface ScreenBox {
	readonly left: number;
	readonly top: number;
	readonly right: number;
	readonly bottom: number;
}

export function screenBox(scene: Pick<ElevationScene, "view">, { from, to, bottom, top }: Box): ScreenBox {
	const low = onScreen(scene, from, bottom.mm);
	const high = onScreen(scene, to, top.mm);
	return { left: low.left, bottom: low.top, right: high.left, top: high.top };
}

/** px. The track keeps its two lines apart however small it is drawn. */
export const halfTrackHeight = ({ plan, view }: Pick<ElevationScene, "plan" | "view">): number =>
	Math.max(2.5, (plan.system.profile.height * view.scale) / 2);

/** One painter of the elevation. */
export type Paint<Seen = ElevationScene> = (pen: CanvasRenderingContext2D, scene: Seen) => void;
