import { type Desk, keptInSight, panBy, type Viewport, zoomAt } from "@baywright/editor";
import { type Bay, type BayPlan, capital } from "@baywright/setout";
import type Konva from "konva/lib/Core.js";
import type { StoreApi } from "zustand/vanilla";
import { createEasel } from "../canvas/easel.ts";
import { withEdges } from "../canvas/edge-hand.ts";
import { readGestures } from "../canvas/gestures.ts";
import { readPalette, watchPalette } from "../canvas/palette.ts";
import { createMeasure } from "../canvas/text.ts";
import { opened, shareOpened } from "../desk/opened.ts";
import { edgesOf, stationSeen } from "./edges.ts";
import { createHand } from "./hand.ts";
import { placeOf } from "./handles.ts";
import { type Held, heldBy, heldName, moveName, sameHeld, selectionOf, stopsOfElevation } from "./held.ts";
import { elevationLayers } from "./layers.ts";
import { nudgeHeld, type Way, waysOf } from "./move.ts";
import { createPicture } from "./picture.ts";

export interface ElevationBoard {
	fit(): void;
	/** About the middle. */
	zoom(factor: number): void;
	/** Shows where cables may run, or not. */
	cables(shown: boolean): void;
	destroy(): void;
}

export interface ElevationPlace {
	/** Takes keys and pointers, and carries the view as data-scale (px per mm), data-x and data-y (px of the left end at the floor). */
	readonly frame: HTMLElement;
	readonly canvas: HTMLElement;
	readonly stage: Konva.Stage;
	/** Whether all of the elevation shows. */
	shows(whole: boolean): void;
	/** What is chosen, with its figures; "" for nothing. */
	says(text: string): void;
}

const KEY_ZOOM = 1.4;

/** mm that an arrow moves what is held, and with Shift. */
const NUDGE = 1;
const LONG_NUDGE = 10;

/** px from the edge within which a place counts as out of sight. */
const OUT_OF_SIGHT = 24;

/** The elevation on screen, outside React. */
export function createElevationBoard(store: StoreApi<Desk>, place: ElevationPlace): ElevationBoard {
	const { frame, canvas, stage } = place;
	const desk = store.getState;
	const { measure, forget } = createMeasure(
		document.createElement("canvas").getContext("2d") as CanvasRenderingContext2D,
	);
	const picture = createPicture(
		desk,
		{ palette: readPalette(frame), openedBy: (curtain) => shareOpened(opened.getState(), curtain) },
		measure,
	);
	const hand = createHand({
		desk,
		picture,
		look: (view) => look(view, false),
		choose,
		redrawLive: () => easel.redraw("live"),
		cursor: (shape) => {
			frame.style.cursor = shape;
		},
		settled() {
			redraw();
			speak();
		},
	});
	const edges = () => edgesOf(picture.frame()?.scene ?? null);
	const edgeHand = withEdges(hand, {
		edges,
		stationUnder: (at) => stationSeen(picture.frame()?.scene ?? null, at),
		plan: () => desk().plans[desk().bay] as BayPlan,
		unit: () => desk().shown.display.length,
		cursor: (shape) => {
			frame.style.cursor = shape;
		},
		say: place.says,
	});
	const easel = createEasel(
		stage,
		"elevation",
		elevationLayers(picture, desk, () => edgeHand.tip() ?? hand.tip(), edges),
	);
	const gestures = readGestures(frame, edgeHand, () => false);
	let fitted = true;
	/** Arrows without anything else in between are one step of the history. */
	let burst = 0;
	picture.chosen = heldBy(desk().selection, null);

	function redraw(): void {
		easel.redraw("drawing");
		easel.redraw("live");
	}

	function look(wanted: Viewport, whole: boolean): void {
		const walls = whole ? null : picture.elevation();
		const view =
			walls === null
				? wanted
				: keptInSight(
						wanted,
						{ left: 0, right: walls.unrolled.length, bottom: 0, top: walls.heights.ceiling.mm },
						picture.size,
					);
		picture.look(view);
		fitted = whole;
		frame.dataset.scale = String(view.scale);
		frame.dataset.x = String(view.left);
		frame.dataset.y = String(view.top);
		place.shows(whole);
		redraw();
	}

	function fitAll(): void {
		const view = picture.whole();
		if (view !== null) look(view, true);
	}

	function zoom(factor: number): void {
		const { width, height } = picture.size;
		look(zoomAt(picture.view, { left: width / 2, top: height / 2 }, factor), false);
	}

	function choose(held: Held | null): void {
		if (held !== null) desk().select(selectionOf(held));
		picture.chosen = held;
		picture.renew(false);
		redraw();
		speak();
	}

	/** The status line: what is chosen, and when it rests its figures. */
	function speak(): void {
		const bay = picture.elevation()?.bay;
		const { chosen } = picture;
		if (bay === undefined || chosen === null) {
			place.says("");
			return;
		}
		const name = capital(heldName(bay, chosen));
		const figures = picture.readings(chosen).map((it) => `${it.name} ${it.figure}`);
		place.says(hand.drags ? name : `${name}: ${figures.join(", ")}`);
	}

	function keyDown(event: KeyboardEvent): void {
		if (event.target !== frame || event.ctrlKey || event.metaKey || event.altKey) return;
		const { key, shiftKey } = event;
		if (edgeHand.key(key, shiftKey)) {
			event.preventDefault();
			return;
		}
		const arrow = ARROWS[key];
		if (arrow === undefined && key !== "Shift") endBurst();
		if (key === "Tab") {
			const next = walked(shiftKey);
			choose(next);
			if (next === null) return;
			bringIntoView(next);
		} else if (arrow !== undefined) {
			if (picture.chosen === null) return;
			const step = shiftKey ? LONG_NUDGE : NUDGE;
			nudge(picture.chosen, { along: arrow.along * step, up: arrow.up * step });
		} else if (key === "+" || key === "=") zoom(KEY_ZOOM);
		else if (key === "-" || key === "_") zoom(1 / KEY_ZOOM);
		else if (key === "0") fitAll();
		else if (key === "Escape") letGo();
		else return;
		event.preventDefault();
	}

	function endBurst(): void {
		burst++;
	}

	function letGo(): void {
		if (gestures.cancel()) return;
		desk().select(null);
		choose(null);
	}

	/** The next thing that can be held; null past the last and before the first, where Tab leaves. */
	function walked(back: boolean): Held | null {
		const bay = picture.elevation()?.bay;
		if (bay === undefined) return null;
		const stops = stopsOfElevation(bay);
		const here = stops.findIndex((stop) => sameHeld(stop, picture.chosen));
		if (here < 0) return back ? null : (stops[0] ?? null);
		return stops[here + (back ? -1 : 1)] ?? null;
	}

	function nudge(held: Held, way: Way): void {
		const ways = waysOf(held);
		const grasp = picture.grasp(held);
		if (grasp === null || (way.along !== 0 && !ways.along) || (way.up !== 0 && !ways.up)) return;
		const label = moveName(grasp.job.bays[grasp.bay] as Bay, held);
		desk().commit(label, nudgeHeld(grasp, way), `elevation ${burst}`);
	}

	function bringIntoView(held: Held): void {
		const it = picture.frame();
		const where = it === null ? null : placeOf(it.scene, held);
		if (it === null || where === null) return;
		const { width, height } = picture.size;
		const left = Math.min(Math.max(where.left, it.ladder.edge + OUT_OF_SIGHT), width - OUT_OF_SIGHT);
		// Below are the runs.
		const top = Math.min(Math.max(where.top, OUT_OF_SIGHT), height - 3 * OUT_OF_SIGHT);
		if (left === where.left && top === where.top) return;
		look(panBy(picture.view, left - where.left, top - where.top), false);
	}

	function changed(next: Desk, before: Desk): void {
		const drawn = next.shown !== before.shown || next.plans !== before.plans || next.bay !== before.bay;
		if (drawn) {
			picture.renew(true);
			if (next.bay !== before.bay || next.opened !== before.opened) {
				gestures.cancel();
				picture.chosen = null;
				picture.relabel();
				fitAll();
			} else if (fitted && !hand.drags && next.job !== before.job) fitAll();
		}
		if (next.selection !== before.selection) {
			picture.chosen = heldBy(next.selection, picture.chosen);
			picture.renew(false);
		}
		if (drawn || next.selection !== before.selection) {
			redraw();
			if (!hand.drags) speak();
		}
		if (next.hover !== before.hover) easel.redraw("live");
	}

	function resize(): void {
		const size = { width: canvas.clientWidth, height: canvas.clientHeight };
		if (size.width === 0 || size.height === 0) return;
		picture.resize(size);
		easel.resize(size);
		if (fitted) fitAll();
		else redraw();
	}

	/** Escape lets go of what is dragged wherever the focus is. */
	function endDrag(event: KeyboardEvent): void {
		if (event.key === "Escape" && gestures.cancel()) event.stopPropagation();
	}

	function fontsCameIn(): void {
		forget();
		picture.relabel();
		if (fitted) fitAll();
		else redraw();
	}

	const life = new AbortController();
	const { signal } = life;
	frame.addEventListener("keydown", keyDown, { signal });
	frame.addEventListener("focusout", endBurst, { signal });
	window.addEventListener("pointerdown", endBurst, { signal, capture: true });
	window.addEventListener("keydown", endDrag, { signal, capture: true });
	document.fonts.addEventListener("loadingdone", fontsCameIn, { signal });
	const sized = new ResizeObserver(resize);
	sized.observe(canvas);
	const stopStore = store.subscribe(changed);
	const stopOpened = opened.subscribe(() => {
		picture.draw();
		redraw();
	});
	const stopPalette = watchPalette(() => {
		picture.dress(readPalette(frame));
		redraw();
	});
	resize();
	speak();

	return {
		fit: fitAll,
		zoom,
		cables(shown) {
			picture.cables(shown);
			redraw();
		},
		destroy() {
			gestures.destroy();
			life.abort();
			sized.disconnect();
			stopStore();
			stopOpened();
			stopPalette();
		},
	};
}

const ARROWS: Readonly<Record<string, Way>> = {
	ArrowLeft: { along: -1, up: 0 },
	ArrowRight: { along: 1, up: 0 },
	ArrowUp: { along: 0, up: 1 },
	ArrowDown: { along: 0, up: -1 },
};
