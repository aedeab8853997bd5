import type { Bay, Finding } from "@baywright/setout";
import type Konva from "konva/lib/Core.js";
import type { StoreApi } from "zustand/vanilla";
import type { Desk } from "../desk/desk.ts";
import type { Selection } from "../desk/selection.ts";
import { createEasel } from "./easel.ts";
import { findingPlace } from "./finding-place.ts";
import { bayInView, fitBay } from "./fit-bay.ts";
import { readGestures } from "./gestures.ts";
import { gripReadings, isGrip } from "./grip.ts";
import { createHand } from "./hand.ts";
import { readKey } from "./keys.ts";
import { planLayers } from "./layers.ts";
import { createNudges } from "./nudges.ts";
import { readPalette, watchPalette } from "./palette.ts";
import { createPicture } from "./picture.ts";
import { createMeasure } from "./text.ts";
import { centreOn, type Size, scaleText, toScreen, type Viewport, zoomAt } from "./viewport.ts";

export interface Board {
	fit(): void;
	/** About the middle. */
	zoom(factor: number): void;
	destroy(): void;
}

export interface BoardPlace {
	/** Takes keys and pointers, and carries the view as data-scale (px per mm), data-x and data-y (px of the plan's origin). */
	readonly frame: HTMLElement;
	readonly stage: Konva.Stage;
	/** What stands over the drawing at its lower right. */
	readonly corner: HTMLElement;
	readonly scale: HTMLElement;
	/** Says aloud what a key or a drag did. */
	say(text: string): void;
	/** One finger on empty sheet scrolls the page. */
	scrolls(): boolean;
}

/** px from the edge within which a place counts as out of sight. */
const OUT_OF_SIGHT = 32;

/** The plan on screen: everything between the store and the canvas, outside React. */
export function createBoard(store: StoreApi<Desk>, place: BoardPlace): Board {
	const { frame, stage } = place;
	const desk = store.getState;
	const pen = document.createElement("canvas").getContext("2d") as CanvasRenderingContext2D;
	const { measure, forget } = createMeasure(pen);
	const picture = createPicture(desk, readPalette(frame), measure);
	const nudges = createNudges(desk, done);
	const hand = createHand({
		desk,
		picture,
		look,
		redrawLive: () => easel.redraw("live"),
		cursor: (shape) => {
			frame.style.cursor = shape;
		},
		settle: nudges.settle,
		done,
	});
	const easel = createEasel(stage, "plan", planLayers(picture, desk, hand.tip));
	const gestures = readGestures(frame, hand, place.scrolls);
	/** The view is as Fit left it, so that a change of size may fit again. */
	let fitted = true;

	function look(view: Viewport): void {
		fitted = false;
		show(view);
	}

	function show(view: Viewport): void {
		picture.look(view);
		frame.dataset.scale = String(view.scale);
		frame.dataset.x = String(view.left);
		frame.dataset.y = String(view.top);
		place.scale.textContent = scaleText(view);
		for (const layer of ["sheet", "drawing", "live"]) easel.redraw(layer);
	}

	function showAll(): void {
		const corner: Size = { width: place.corner.offsetWidth + 12, height: place.corner.offsetHeight + 12 };
		show(fitBay(picture.scene(), picture.size, corner, measure));
		fitted = true;
	}

	function resize(): void {
		const size = { width: frame.clientWidth, height: frame.clientHeight };
		if (size.width === 0 || size.height === 0) return;
		const halfWidth = place.corner.offsetWidth / 2 + 6;
		const halfHeight = place.corner.offsetHeight / 2 + 6;
		const over = {
			left: size.width - halfWidth - 6,
			top: size.height - halfHeight - 6,
			halfWidth,
			halfHeight,
			turn: 0,
		};
		const before = picture.size;
		picture.resize(size, [over]);
		easel.resize(size);
		if (fitted) showAll();
		else
			show({
				...picture.view,
				left: picture.view.left + (size.width - before.width) / 2,
				top: picture.view.top + (size.height - before.height) / 2,
			});
	}

	function changed(state: Desk, before: Desk): void {
		const drawn = state.shown !== before.shown || state.plans !== before.plans || state.bay !== before.bay;
		if (drawn) {
			easel.redraw("drawing");
			easel.redraw("live");
			// What was in view says nothing about where another bay lies.
			if (state.opened !== before.opened || state.bay !== before.bay) {
				gestures.cancel();
				nudges.cancel();
				picture.relabel();
				showAll();
			} else if (isFromBeside(state, before) && !bayInView(picture.scene(), measure)) showAll();
		}
		if (state.selection !== before.selection || state.hover !== before.hover) easel.redraw("live");
		if (state.selection !== before.selection && state.selection !== null) bringIntoView(state.selection);
	}

	function bringIntoView({ kind, index }: Selection): void {
		const scene = picture.scene();
		const finding = kind === "finding" ? scene.plan.findings[index] : undefined;
		const at = finding ? findingPlace(finding as Finding, scene) : kind === "corner" ? scene.corners[index] : null;
		if (!at) return;
		const { left, top } = toScreen(picture.view, at);
		const { width, height } = picture.size;
		const seen =
			left > OUT_OF_SIGHT && left < width - OUT_OF_SIGHT && top > OUT_OF_SIGHT && top < height - OUT_OF_SIGHT;
		if (!seen) look(centreOn(picture.view, at, picture.size));
	}

	/** A step of the history is made: says what it was and the figures that it changed. */
	function done(label: string): void {
		const { selection, job, bay } = desk();
		if (!isGrip(selection)) return;
		const readings = gripReadings({ kind: selection.kind, index: selection.index, job, bay }, picture.scene());
		const figures = readings.filter(({ name }) => !name.startsWith("moved"));
		place.say(`${label}: ${figures.map(({ name, figure }) => `${name} ${figure}`).join(", ")}`);
	}

	function keyDown(event: KeyboardEvent): void {
		if (event.target !== frame) return;
		if (event.key === " ") {
			event.preventDefault();
			gestures.holdSheet(true);
			frame.style.cursor = "grab";
			return;
		}
		const { selection, bay, shown } = desk();
		const press = { key: event.key, shift: event.shiftKey, command: event.ctrlKey || event.metaKey || event.altKey };
		const wish = readKey(press, selection, (shown.bays[bay] as Bay).corners.length);
		if (wish?.does !== "nudge" && event.key !== "Escape" && event.key !== "Shift") nudges.settle();
		if (wish === null) return;
		if (wish.does === "walk") desk().select(wish.to);
		else if (wish.does === "nudge") nudgeChosen(wish.dx, wish.dy);
		else if (wish.does === "zoom") zoom(wish.factor);
		else if (wish.does === "fit") showAll();
		else if (!gestures.cancel() && !nudges.cancel()) desk().select(null);
		event.preventDefault();
	}

	/** Escape lets go of what is dragged wherever the focus is, and does nothing else then. */
	function endDrag(event: KeyboardEvent): void {
		if (event.key === "Escape" && gestures.cancel()) event.stopPropagation();
	}

	function nudgeChosen(dx: number, dy: number): void {
		const { selection, bay } = desk();
		if (isGrip(selection)) nudges.nudge({ kind: selection.kind, index: selection.index, bay }, dx, dy);
	}

	function zoom(factor: number): void {
		look(zoomAt(picture.view, { left: picture.size.width / 2, top: picture.size.height / 2 }, factor));
	}

	function dress(): void {
		picture.dress(readPalette(frame));
		for (const layer of ["sheet", "drawing", "live"]) easel.redraw(layer);
	}

	function fontsCameIn(): void {
		forget();
		picture.relabel();
		if (fitted) showAll();
		easel.redraw("drawing");
		easel.redraw("live");
	}

	const life = new AbortController();
	const { signal } = life;
	frame.addEventListener("keydown", keyDown, { signal });
	frame.addEventListener("keyup", (event) => event.key === " " && gestures.holdSheet(false), { signal });
	frame.addEventListener("blur", () => gestures.holdSheet(false), { signal });
	// Whatever is pressed next, in the plan or beside it, comes after the burst of nudges.
	window.addEventListener("pointerdown", nudges.settle, { signal, capture: true });
	window.addEventListener("keydown", endDrag, { signal, capture: true });
	frame.addEventListener("focusout", nudges.settle, { signal });
	document.fonts.addEventListener("loadingdone", fontsCameIn, { signal });
	const sized = new ResizeObserver(resize);
	sized.observe(frame);
	const stopStore = store.subscribe(changed);
	const stopPalette = watchPalette(dress);
	resize();

	return {
		fit: showAll,
		zoom,
		destroy() {
			nudges.settle();
			gestures.destroy();
			life.abort();
			sized.disconnect();
			stopStore();
			stopPalette();
		},
	};
}

/** A change that was not made by hand on the plan: nothing was under way there. */
function isFromBeside(state: Desk, before: Desk): boolean {
	return state.job !== before.job && before.shown === before.job;
}
