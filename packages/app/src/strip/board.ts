import type { Desk, ScreenPoint, Selection, Size } from "@baywright/editor";
import type { BayPlan } from "@baywright/setout";
import type Konva from "konva/lib/Core.js";
import type { StoreApi } from "zustand/vanilla";
import { createEasel } from "../canvas/easel.ts";
import { type GestureHost, readGestures } from "../canvas/gestures.ts";
import { readPalette, watchPalette } from "../canvas/palette.ts";
import { createMeasure } from "../canvas/text.ts";
import { fitStrip, type StripView, zoomStrip } from "./axis.ts";
import type { ReadFrom } from "./figures.ts";
import { layStrip, type StripLayout } from "./layout.ts";
import {
	hangLoads,
	LOADS_BAND,
	type LoadShown,
	loadUnder,
	paintLoadHighlight,
	paintStripLoads,
	type StripLoads,
} from "./loads.ts";
import { aloneOf, pieceOf } from "./one-piece.ts";
import {
	paintPieces,
	paintStripBends,
	paintStripBrackets,
	paintStripEnds,
	paintStripFigures,
	paintStripHighlight,
} from "./paint.ts";
import { leftOf, reachStrip } from "./reach.ts";

export interface StripBoard {
	readFrom(from: ReadFrom): void;
	/** Hangs loads under the brackets; null for none. */
	showLoads(shown: LoadShown | null): void;
	fit(): void;
	zoom(factor: number): void;
	destroy(): void;
}

export interface StripPlace {
	readonly frame: HTMLElement;
	/** Carries the drawing and gives it its size. */
	readonly canvas: HTMLDivElement;
	readonly stage: Konva.Stage;
	/** Whether all of the strip shows, how many readings wait for more room, and the piece shown alone (null: all are). */
	shows(whole: boolean, left: number, alone: number | null): void;
}

export const STRIP_LAYERS = ["strip"] as const;

const KEY_ZOOM = 1.4;

/** px along the strip at an arrow with Shift. */
const KEY_PAN = 80;

/** px from either edge within which a thing counts as out of sight. */
const OUT_OF_SIGHT = 40;

/** This near to showing the whole strip, it is shown whole. */
const ALL_BUT = 1.001;

/** The strip on screen, outside React. */
export function createStripBoard(store: StoreApi<Desk>, { frame, canvas, stage, shows }: StripPlace): StripBoard {
	const desk = store.getState;
	const { measure, forget } = createMeasure(
		document.createElement("canvas").getContext("2d") as CanvasRenderingContext2D,
	);
	let palette = readPalette(frame);
	let size: Size = { width: 1, height: 1 };
	let from: ReadFrom = "left";
	/** Null while the whole strip shows. */
	let view: StripView | null = null;
	let layout: StripLayout | null = null;
	let shown: LoadShown | null = null;
	/** Made with the layout; null while no loads are shown or known. */
	let loads: StripLoads | null = null;
	/** The piece that was chosen last, for a strip that shows one at a time. */
	let piece = 0;

	function strip(): StripLayout {
		const { plans, bay, shown: job } = desk();
		if (layout === null) {
			const plan = plans[bay] as BayPlan;
			const alone = aloneOf(plan, piece);
			const which = plan.loads.length === 0 ? null : shown;
			const left = which === null ? size : { ...size, height: size.height - LOADS_BAND };
			layout = layStrip({ plan, alone, unit: job.display.length, size: left, palette, from, view, measure });
			loads = which === null ? null : hangLoads(layout, size, which, measure);
			shows(view === null, layout.left, alone);
		}
		return layout;
	}

	function renew(): void {
		layout = null;
		easel.redraw("strip");
	}

	function zoomAbout(left: number, factor: number): void {
		const { lengths, view: now } = strip();
		if (lengths.length === 0) return;
		const next = zoomStrip(now, lengths, size.width, left, factor);
		view = next.scale <= fitStrip(lengths, size.width).scale * ALL_BUT ? null : next;
		renew();
	}

	function pan(left: number): void {
		if (view === null) return;
		const now = strip().view;
		view = { scale: now.scale, left: now.left + left };
		renew();
		view = strip().view;
	}

	const reach = (at: ScreenPoint, pointer: "mouse" | "touch"): Selection | null =>
		reachStrip(strip(), at, pointer) ?? (loads === null ? null : loadUnder(loads, at));

	const host: GestureHost = {
		holds: () => false,
		hover(at) {
			const hover = at === null ? null : reach(at, "mouse");
			const before = desk().hover;
			if (before?.kind !== hover?.kind || before?.index !== hover?.index) desk().point(hover);
			frame.style.cursor = hover !== null ? "pointer" : view === null ? "default" : "grab";
		},
		tap: (at, pointer) => desk().select(reach(at, pointer)),
		dragStart: () => undefined,
		dragTo: () => undefined,
		dragEnd: () => undefined,
		dragCancel: () => undefined,
		panBy: pan,
		pinchStart() {
			pinched = { factor: 1, middle: null };
		},
		pinchTo(start, now) {
			const factor = Math.abs(spread(now)) / Math.max(1, Math.abs(spread(start)));
			const middle = middleOf(now);
			pan(middle - (pinched.middle ?? middleOf(start)));
			zoomAbout(middle, factor / pinched.factor);
			pinched = { factor, middle };
		},
		zoom: (at, factor) => zoomAbout(at.left, factor),
		busy: (what) => {
			frame.style.cursor = what === "panning" && view !== null ? "grabbing" : "default";
		},
	};
	/** What of a pinch is done: the strip goes with the fingers' middle. */
	let pinched: { readonly factor: number; readonly middle: number | null } = { factor: 1, middle: null };

	const easel = createEasel(stage, "strip", [
		{
			name: "strip",
			painters: [
				{ name: "highlight", paint: paintHighlights },
				{ name: "pieces", paint: (pen) => paintPieces(pen, strip()) },
				{ name: "bends", paint: (pen) => paintStripBends(pen, strip()) },
				{ name: "brackets", paint: (pen) => paintStripBrackets(pen, strip()) },
				{ name: "ends", paint: (pen) => paintStripEnds(pen, strip()) },
				{ name: "figures", paint: (pen) => paintStripFigures(pen, strip()) },
				{ name: "loads", paint: paintLoads },
			],
		},
	]);

	function paintHighlights(pen: CanvasRenderingContext2D): void {
		const { selection, hover } = desk();
		paintStripHighlight(pen, strip(), hover, 0.18);
		paintStripHighlight(pen, strip(), selection, 0.34);
		if (loads === null) return;
		paintLoadHighlight(pen, strip(), loads, hover, 0.18);
		paintLoadHighlight(pen, strip(), loads, selection, 0.34);
	}

	function paintLoads(pen: CanvasRenderingContext2D): void {
		const now = strip();
		if (loads !== null) paintStripLoads(pen, now, loads);
	}

	function keyDown(event: KeyboardEvent): void {
		if (event.target !== frame || event.ctrlKey || event.metaKey || event.altKey) return;
		if (event.key === "+" || event.key === "=") zoomAbout(size.width / 2, KEY_ZOOM);
		else if (event.key === "-") zoomAbout(size.width / 2, 1 / KEY_ZOOM);
		else if (event.key === "0") fitAll();
		else if (event.key === "ArrowRight" || event.key === "ArrowLeft") {
			const way = event.key === "ArrowRight" ? 1 : -1;
			if (event.shiftKey) pan(-way * KEY_PAN);
			else walk(way);
		} else if (event.key === "Escape") desk().select(null);
		else return;
		event.preventDefault();
	}

	/** From bracket to bracket along the strip. */
	function walk(way: 1 | -1): void {
		const { selection, plans, bay } = desk();
		const all = (plans[bay] as BayPlan).pieces.flatMap(({ marks }) =>
			marks.flatMap(({ kind, of }) => (kind === "bracket" ? [of] : [])),
		);
		const here = selection?.kind === "bracket" ? all.indexOf(selection.index) : -1;
		const next = all[here < 0 ? (way > 0 ? 0 : all.length - 1) : here + way];
		if (next === undefined) return;
		desk().select({ kind: "bracket", index: next });
	}

	/** What is chosen anywhere on screen comes into sight on a strip that is zoomed in. */
	function reveal(it: Selection | null): void {
		const left = it === null || view === null ? null : leftOf(strip(), it);
		if (left === null) return;
		if (left < OUT_OF_SIGHT) pan(OUT_OF_SIGHT - left);
		if (left > size.width - OUT_OF_SIGHT) pan(size.width - OUT_OF_SIGHT - left);
	}

	function fitAll(): void {
		view = null;
		renew();
	}

	function resize(): void {
		size = { width: canvas.clientWidth, height: canvas.clientHeight };
		easel.resize(size);
		renew();
	}

	function changed(state: Desk, before: Desk): void {
		if (state.bay !== before.bay || state.opened !== before.opened) {
			view = null;
			piece = 0;
		}
		const turned = turnTo(state);
		if (turned || state.plans !== before.plans || state.bay !== before.bay || state.shown !== before.shown) renew();
		else if (!same(state.selection, before.selection) || !same(state.hover, before.hover)) easel.redraw("strip");
		if (!same(state.selection, before.selection)) reveal(state.selection);
	}

	/** Takes up the piece on which the chosen thing lies; true where the strip then shows another. */
	function turnTo({ selection, plans, bay }: Desk): boolean {
		const plan = plans[bay] as BayPlan;
		const before = aloneOf(plan, piece);
		piece = pieceOf(plan, selection) ?? piece;
		const turned = aloneOf(plan, piece) !== before;
		if (turned) view = null;
		return turned;
	}

	const life = new AbortController();
	frame.addEventListener("keydown", keyDown, { signal: life.signal });
	document.fonts.addEventListener(
		"loadingdone",
		() => {
			forget();
			renew();
		},
		{ signal: life.signal },
	);
	const gestures = readGestures(frame, host, () => false);
	const sized = new ResizeObserver(resize);
	sized.observe(canvas);
	const stopStore = store.subscribe(changed);
	const stopPalette = watchPalette(() => {
		palette = readPalette(frame);
		renew();
	});
	resize();

	return {
		readFrom(end) {
			from = end;
			renew();
		},
		showLoads(which) {
			if (which === shown) return;
			shown = which;
			renew();
		},
		fit: fitAll,
		zoom: (factor) => zoomAbout(size.width / 2, factor),
		destroy() {
			gestures.destroy();
			life.abort();
			sized.disconnect();
			stopStore();
			stopPalette();
		},
	};
}

const same = (a: Selection | null, b: Selection | null): boolean => a?.kind === b?.kind && a?.index === b?.index;

const middleOf = ([a, b]: readonly [ScreenPoint, ScreenPoint]): number => (a.left + b.left) / 2;

const spread = ([a, b]: readonly [ScreenPoint, ScreenPoint]): number => b.left - a.left;
