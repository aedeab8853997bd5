import {
	centreOn,
	type Desk,
	isGrip,
	keptInSight,
	removeThing,
	type ScreenPoint,
	type Selection,
	type Size,
	type Sketch,
	scaleText,
	stopsOf,
	type Toolbox,
	toPlan,
	toScreen,
	type Viewport,
	zoomAt,
} from "@baywright/editor";
import type { Point } from "@baywright/geometry";
import type { Bay, BayPlan, Finding } from "@baywright/setout";
import type Konva from "konva/lib/Core.js";
import type { StoreApi } from "zustand/vanilla";
import { opened } from "../desk/opened.ts";
import { createEasel } from "./easel.ts";
import { withEdges } from "./edge-hand.ts";
import { findingPlace } from "./finding-place.ts";
import { fitView } from "./fit.ts";
import { bayInView, fitBay } from "./fit-bay.ts";
import { readGestures } from "./gestures.ts";
import { createHand } from "./hand.ts";
import { heldReadings } from "./held-readings.ts";
import { type KeyWish, readKey, readTyping } from "./keys.ts";
import type { Box } from "./labels/box.ts";
import { planLayers } from "./layers.ts";
import { leadingEdges, stationUnder } from "./leading-edges.ts";
import { createNudges } from "./nudges.ts";
import type { Loupe } from "./paint/loupe.ts";
import { readPalette, watchPalette } from "./palette.ts";
import { createPicture } from "./picture.ts";
import { createMeasure } from "./text.ts";
import { figureAt, type PlanFigure } from "./typed-figure.ts";

export interface Board {
	fit(): void;
	/** About the middle. */
	zoom(factor: number): void;
	/** What is shown besides the job has changed: the stage at hand for one. */
	refresh(): void;
	destroy(): void;
}

export interface BoardPlace {
	/** Takes keys and pointers, and carries the view as data-scale (px per mm), data-x and data-y (px of the plan's origin). */
	readonly frame: HTMLElement;
	readonly stage: Konva.Stage;
	/** What stands over the drawing at its upper left, the fields of the wall to come with it, and at its lower right. */
	readonly head: HTMLElement;
	readonly corner: HTMLElement;
	readonly scale: HTMLElement;
	/** Says aloud what a key or a drag did. */
	say(text: string): void;
	/** Tells everybody why something was not done. */
	tell(text: string): void;
	/** A figure of the plan is to be typed, in the place where it stands. */
	type(figure: PlanFigure, box: Box): void;
	/** The survey is the stage at hand. */
	surveying(): boolean;
	/** The curtains are at hand: they are drawn by their leading edges. */
	hanging(): boolean;
	/** One finger on empty sheet scrolls the page. */
	scrolls(): boolean;
}

/** px from the edge within which a place counts as out of sight. */
const OUT_OF_SIGHT = 32;

/** px of sheet that are kept for the bay below what stands over the drawing. */
const LEAST_SHEET = 200;

/** px round the bay and a wall that is typed, when the view steps back to show it. */
const ROUND_SKETCH = 48;

/** The plan on screen: everything between the store and the canvas, outside React. */
export function createBoard(store: StoreApi<Desk>, tools: StoreApi<Toolbox>, place: BoardPlace): Board {
	const { frame, stage } = place;
	const desk = store.getState;
	const toolbox = tools.getState;
	const pen = document.createElement("canvas").getContext("2d") as CanvasRenderingContext2D;
	const { measure, forget } = createMeasure(pen);
	const picture = createPicture(desk, readPalette(frame), measure, place.surveying);
	const nudges = createNudges(desk, done);
	const hand = createHand({
		desk,
		toolbox,
		picture,
		look,
		redrawLive: () => easel.redraw("live"),
		cursor: (shape) => {
			frame.style.cursor = shape;
		},
		settle: nudges.settle,
		done: () => {
			done(desk().past.at(-1)?.label ?? "");
			if (fitted && !picture.scene().corners.every(isSeen)) showAll();
		},
		typeOn,
	});
	const edges = () => (place.hanging() ? leadingEdges(picture.scene(), opened.getState()) : []);
	const edgeHand = withEdges(hand, {
		edges,
		stationUnder: (at) => stationUnder(picture.scene(), at),
		plan: () => picture.scene().plan,
		unit: () => picture.scene().unit,
		cursor: (shape) => {
			frame.style.cursor = shape;
		},
		say: place.say,
	});
	const easel = createEasel(
		stage,
		"plan",
		planLayers(
			picture,
			desk,
			toolbox,
			() => edgeHand.tip() ?? hand.tip(),
			loupe,
			() => headEnd,
			edges,
		),
	);
	const gestures = readGestures(frame, edgeHand, place.scrolls);
	/** The view is as Fit left it, so that a change of size may fit again. */
	let fitted = true;
	/** px from the top of the drawing to the end of what stands over it. */
	let headEnd = 0;

	function look(view: Viewport): void {
		fitted = false;
		const { corners } = picture.scene();
		const xs = corners.map(({ x }) => x);
		const ys = corners.map(({ y }) => y);
		const bay = { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
		show(corners.length === 0 ? view : keptInSight(view, bay, picture.size));
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
		headEnd = place.head.offsetTop + place.head.offsetHeight;
		// On a low sheet the bay rather lies under the fields than out of sight.
		const head = Math.max(0, Math.min(headEnd, picture.size.height - LEAST_SHEET));
		show(fitBay(picture.scene(), picture.size, { head, corner }, measure));
		fitted = true;
	}

	function resize(): void {
		const size = { width: frame.clientWidth, height: frame.clientHeight };
		if (size.width === 0 || size.height === 0) return;
		const over = [place.head, place.corner].map((element) => boxOf(element, frame));
		const before = picture.size;
		picture.resize(size, over);
		headEnd = place.head.offsetTop + place.head.offsetHeight;
		// Fields that come and go over the drawing must not move what is drawn.
		const isOwnSize = size.width !== before.width || size.height !== before.height;
		if (isOwnSize) easel.resize(size);
		if (fitted && (isOwnSize || picture.scene().corners.length === 0)) showAll();
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
		if (!isSeen(at)) look(centreOn(picture.view, at, picture.size));
	}

	function isSeen(at: Point): boolean {
		const { left, top } = toScreen(picture.view, at);
		const { width, height } = picture.size;
		return left > OUT_OF_SIGHT && left < width - OUT_OF_SIGHT && top > OUT_OF_SIGHT && top < height - OUT_OF_SIGHT;
	}

	/** A step of the history is made: says what it was and the figures that it changed. */
	function done(label: string): void {
		const { selection } = desk();
		if (selection === null || !isGrip(selection)) return;
		const figures = heldReadings(selection, null, picture.scene());
		place.say(`${label}: ${figures.map(({ name, figure }) => `${name} ${figure}`).join(", ")}`);
	}

	function loupe(): Loupe | null {
		const at = hand.finger();
		const drawn = at === null ? null : easel.picture("drawing");
		return at === null || drawn === null ? null : { at, ...drawn };
	}

	function typeOn(at: ScreenPoint): boolean {
		const under = figureAt(picture.layout(), at);
		if (under === null) return false;
		place.type(under.figure, under.box);
		return true;
	}

	function keyDown(event: KeyboardEvent): void {
		if (event.target !== frame) return;
		if (event.key === " " && toolbox().entry === null) {
			event.preventDefault();
			gestures.holdSheet(true);
			frame.style.cursor = "grab";
			return;
		}
		if (edgeHand.key(event.key, event.shiftKey)) {
			event.preventDefault();
			return;
		}
		const { selection, bay, shown, plans } = desk();
		const press = { key: event.key, shift: event.shiftKey, command: event.ctrlKey || event.metaKey || event.altKey };
		const stops = stopsOf(shown.bays[bay] as Bay, plans[bay] as BayPlan);
		const wish = toolbox().entry === null ? readKey(press, selection, stops) : readTyping(press);
		if (wish?.does !== "nudge" && event.key !== "Escape" && event.key !== "Shift") nudges.settle();
		if (wish === null) return;
		follow(wish);
		event.preventDefault();
	}

	function follow(wish: KeyWish): void {
		if (wish.does === "walk") desk().select(wish.to);
		else if (wish.does === "nudge") nudgeChosen(wish.dx, wish.dy);
		else if (wish.does === "zoom") zoom(wish.factor);
		else if (wish.does === "fit") showAll();
		else if (wish.does === "remove") removeChosen();
		else if (wish.does === "take") toolbox().take(wish.tool);
		else if (wish.does === "tell") toolbox().send(wish.event);
		else leave();
	}

	/** Escape: what is under way, then the tool, then what is chosen. */
	function leave(): void {
		if (gestures.cancel() || nudges.cancel()) return;
		if (toolbox().tool !== "select") {
			if (!toolbox().send({ type: "cancel" })) toolbox().take("select");
		} else desk().select(null);
	}

	function removeChosen(): void {
		const { selection, job, bay, plans } = desk();
		if (selection === null) return;
		const removal = removeThing(job.bays[bay] as Bay, plans[bay] as BayPlan, selection);
		if (!removal.ok) {
			place.tell(removal.why);
			return;
		}
		desk().select(null);
		desk().commit(removal.label, { ...job, bays: job.bays.map((it, i) => (i === bay ? removal.bay : it)) });
		place.say(removal.label);
	}

	/** Escape lets go of what is dragged wherever the focus is, and does nothing else then; so does undo, for the step under way is the last. */
	function endDrag(event: KeyboardEvent): void {
		const undoes = (event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "z";
		if ((event.key !== "Escape" && !undoes) || !gestures.cancel()) return;
		event.stopPropagation();
		event.preventDefault();
	}

	function nudgeChosen(dx: number, dy: number): void {
		const { selection } = desk();
		if (isGrip(selection)) nudges.nudge(selection, dx, dy);
	}

	/** A wall that is typed may end beyond the edge: the view steps back to show it with the bay. */
	function showSketch(sketch: Sketch | null): void {
		const end = sketch?.points.at(-1);
		if (end === undefined) return;
		if (isSeen(end) && toScreen(picture.view, end).top > headEnd) return;
		const { width, height } = picture.size;
		const ends = sketch?.lines.flatMap(({ from, to }) => [from, to]) ?? [];
		const marks = [...picture.scene().corners, ...ends, end].map((at) => ({ at, right: 0, down: 0, round: 0 }));
		const view = fitView(marks, { width, height: Math.max(1, height - headEnd) }, ROUND_SKETCH);
		const scale = Math.min(view.scale, picture.view.scale);
		const middle = toPlan(view, { left: width / 2, top: (height - headEnd) / 2 });
		show({ scale, left: width / 2 - middle.x * scale, top: (height + headEnd) / 2 + middle.y * scale });
	}

	function toolChanged(state: Toolbox, before: Toolbox): void {
		if (state.sketch !== before.sketch || state.tool !== before.tool) easel.redraw("live");
		if (state.tool !== before.tool) frame.style.cursor = state.dragsAnywhere ? "crosshair" : "grab";
		if (state.entry !== null && state.entry.run !== "") showSketch(state.sketch);
		// Nobody has moved the sheet: the bay that was drawn takes its usual place on it.
		if (state.entry === null && before.entry !== null && fitted) showAll();
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
	sized.observe(place.head);
	const stopStore = store.subscribe(changed);
	const stopTools = tools.subscribe(toolChanged);
	const stopOpened = opened.subscribe(() => {
		easel.redraw("drawing");
		easel.redraw("live");
	});
	const stopPalette = watchPalette(dress);
	resize();

	return {
		fit: showAll,
		zoom,
		refresh() {
			easel.redraw("drawing");
			easel.redraw("live");
		},
		destroy() {
			nudges.settle();
			gestures.destroy();
			life.abort();
			sized.disconnect();
			stopStore();
			stopTools();
			stopOpened();
			stopPalette();
		},
	};
}

/** px that labels keep from what stands over the drawing. */
const CLEAR = 6;

function boxOf(element: HTMLElement, frame: HTMLElement): Box {
	const outer = frame.getBoundingClientRect();
	const { left, top, width, height } = element.getBoundingClientRect();
	return {
		left: left - outer.left + width / 2,
		top: top - outer.top + height / 2,
		halfWidth: width / 2 + CLEAR,
		halfHeight: height / 2 + CLEAR,
		turn: 0,
	};
}

/** A change that was not made by hand on the plan: nothing was under way there. */
function isFromBeside(state: Desk, before: Desk): boolean {
	return state.job !== before.job && before.shown === before.job;
}
