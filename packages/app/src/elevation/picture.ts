import type { Desk, ScreenPoint, Size, Viewport } from "@baywright/editor";
import type { Bay, BayPlan } from "@baywright/setout";
import type { PointerKind } from "../canvas/gestures.ts";
import type { Label } from "../canvas/labels/label.ts";
import type { Habits } from "../canvas/labels/place.ts";
import type { Palette } from "../canvas/palette.ts";
import type { Measure } from "../canvas/text.ts";
import { fitElevation } from "./fit-elevation.ts";
import { type Handle, handlesOf } from "./handles.ts";
import { type Held, type HeldReading, heldReadings } from "./held.ts";
import { labelsOf } from "./labels.ts";
import { type Ladder, ladderOf } from "./ladder.ts";
import type { Grasp } from "./move.ts";
import { reachElevation, type Under } from "./reach.ts";
import { type Elevation, type ElevationScene, elevationOf } from "./scene.ts";

/** All that is drawn in one frame, placed. */
export interface Frame {
	readonly scene: ElevationScene;
	readonly ladder: Ladder;
	readonly labels: readonly Label[];
}

/** What is on screen now, worked out at most once a frame. */
export interface Picture {
	readonly view: Viewport;
	readonly size: Size;
	readonly measure: Measure;
	readonly palette: Palette;
	/** What is chosen, and what the pointer is on. */
	chosen: Held | null;
	under: Held | null;
	/** The bay unrolled; null where its corners make no walls. */
	elevation(): Elevation | null;
	frame(): Frame | null;
	handles(): readonly Handle[];
	at(where: ScreenPoint, pointer: PointerKind): Under;
	readings(held: Held): readonly HeldReading[];
	/** What a drag or an arrow starts from. */
	grasp(held: Held): Grasp | null;
	look(view: Viewport): void;
	/** The view that shows everything. */
	whole(): Viewport | null;
	resize(size: Size): void;
	dress(palette: Palette): void;
	/** The curtains are opened otherwise. */
	draw(): void;
	/** Shows where cables may run, or not. */
	cables(shown: boolean): void;
	/** The bay is another, or what is chosen is. */
	renew(bay: boolean): void;
	/** Figures may go back to their best places. */
	relabel(): void;
}

export function createPicture(
	desk: () => Desk,
	first: { readonly palette: Palette; readonly openedBy: (curtain: number) => number },
	measure: Measure,
): Picture {
	const habits: Habits = new Map();
	let { palette } = first;
	let size: Size = { width: 1, height: 1 };
	let view: Viewport = { scale: 0.1, left: 0, top: 0 };
	let elevation: Elevation | null = null;
	let frame: Frame | null = null;
	let cables = true;

	function drawn(): Elevation | null {
		const { shown, plans, bay } = desk();
		elevation ??= elevationOf(shown.bays[bay] as Bay, plans[bay] as BayPlan, shown.display.length, first.openedBy);
		return elevation;
	}

	function frameNow(): Frame | null {
		const it = drawn();
		if (it === null || frame !== null) return it === null ? null : frame;
		const scene = { ...it, cables: cables ? it.cables : [], view, size, palette, measure };
		const ladder = ladderOf(scene);
		frame = { scene, ladder, labels: labelsOf(scene, ladder, picture.chosen, habits) };
		return frame;
	}

	const room = (wall: number): number => {
		const face = drawn()?.unrolled.walls[wall];
		return face === undefined ? 0 : face.to - face.from;
	};

	const picture: Picture = {
		get view() {
			return view;
		},
		get size() {
			return size;
		},
		get palette() {
			return palette;
		},
		measure,
		chosen: null,
		under: null,
		elevation: drawn,
		frame: frameNow,
		handles() {
			const it = frameNow();
			return it === null ? [] : handlesOf(it.scene, it.ladder, picture.chosen, picture.under);
		},
		at(where, pointer) {
			const it = frameNow();
			if (it === null) return { held: null, thing: null, bar: false };
			return reachElevation(it.scene, picture.handles(), where, pointer);
		},
		readings(held) {
			const it = drawn();
			return it === null ? [] : heldReadings(it.bay, it.heights, held, it.unit, room);
		},
		grasp(held) {
			const { job, bay } = desk();
			const it = drawn();
			return it === null ? null : { held, job, bay, heights: it.heights, room };
		},
		look(next) {
			if (next.scale !== view.scale) habits.clear();
			view = next;
			frame = null;
		},
		whole() {
			const it = drawn();
			return it === null ? null : fitElevation(it, size, measure);
		},
		resize(next) {
			size = next;
			habits.clear();
			frame = null;
		},
		dress(next) {
			palette = next;
			frame = null;
		},
		draw() {
			elevation = null;
			frame = null;
		},
		cables(shown) {
			cables = shown;
			habits.clear();
			frame = null;
		},
		renew(bay) {
			if (bay) elevation = null;
			frame = null;
		},
		relabel() {
			habits.clear();
			frame = null;
		},
	};
	return picture;
}
