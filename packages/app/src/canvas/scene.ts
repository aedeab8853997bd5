import type { Size, Viewport } from "@baywright/editor";
import type { Point } from "@baywright/geometry";
import type { Bay, BayPlan, LengthUnit } from "@baywright/setout";
import type { Palette } from "./palette.ts";
import type { Measure } from "./text.ts";
import { shapeWalls, type WallShape } from "./wall-shape.ts";

/** All that the painters draw from, in one frame. */
export interface Scene {
	readonly unit: LengthUnit;
	readonly bay: Bay;
	readonly plan: BayPlan;
	/** Of the wall faces as planned, or as drawn where they make no bay. */
	readonly corners: readonly Point[];
	readonly walls: readonly (WallShape | null)[];
	/** The survey is at hand: what it knows is shown even where all readings agree. */
	readonly surveying: boolean;
	readonly view: Viewport;
	readonly size: Size;
	readonly palette: Palette;
	readonly measure: Measure;
}

/** What lies in the bay, whatever the view: kept from frame to frame while the bay keeps its identity. */
export type Subject = Pick<Scene, "unit" | "bay" | "plan" | "corners" | "walls" | "surveying">;

export function subjectOf(bay: Bay, plan: BayPlan, unit: LengthUnit, surveying = false): Subject {
	const corners = plan.chain?.corners ?? bay.corners.map(([x, y]) => ({ x: finite(x), y: finite(y) }));
	const rises = bay.walls.map((wall) => wall.rise);
	return { unit, bay, plan, corners, walls: shapeWalls(corners, rises), surveying };
}

/** A painter draws one kind of thing, in CSS px. */
export type Painter<Seen = Scene> = (pen: CanvasRenderingContext2D, seen: Seen) => void;

const finite = (value: number): number => (Number.isFinite(value) ? value : 0);
