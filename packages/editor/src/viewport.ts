import type { Point } from "@baywright/geometry";

/** A place on screen: CSS px from the top left of the drawing, `top` downwards. Named apart from `Point` so that neither passes for the other. */
export interface ScreenPoint {
	readonly left: number;
	readonly top: number;
}

export interface Size {
	readonly width: number;
	readonly height: number;
}

/** How the plan lies on screen: the one place where mm (y up) become px (y down). */
export interface Viewport {
	/** CSS px per mm. */
	readonly scale: number;
	/** Where the plan's origin lies on screen, px. */
	readonly left: number;
	readonly top: number;
}

/** CSS px per mm of paper: a CSS inch is 96 px. */
const PAPER_PX_PER_MM = 96 / 25.4;

/** px per mm at which the longest job taken (200 m across) still shows, as 100 px. */
export const LEAST_SCALE = 0.0005;

/** px per mm at which half a millimetre is seen plainly; closer shows nothing that a tape could tell. */
export const GREATEST_SCALE = 12;

export const toScreen = (view: Viewport, { x, y }: Point): ScreenPoint => ({
	left: view.left + x * view.scale,
	top: view.top - y * view.scale,
});

export const toPlan = (view: Viewport, { left, top }: ScreenPoint): Point => ({
	x: (left - view.left) / view.scale,
	y: (view.top - top) / view.scale,
});

export const panBy = (view: Viewport, left: number, top: number): Viewport => ({
	scale: view.scale,
	left: view.left + left,
	top: view.top + top,
});

/** Zooms by `factor` about `at`: the plan's point there stays there. */
export function zoomAt(view: Viewport, at: ScreenPoint, factor: number): Viewport {
	const scale = clampScale(view.scale * factor);
	const ratio = scale / view.scale;
	return { scale, left: at.left + (view.left - at.left) * ratio, top: at.top + (view.top - at.top) * ratio };
}

export type Fingers = readonly [ScreenPoint, ScreenPoint];

/** The view after two fingers went from `from` to `to`: zoomed about their middle and moved with it, never turned. */
export function pinch(view: Viewport, from: Fingers, to: Fingers): Viewport {
	const apart = spread(from);
	const factor = apart > 0 ? spread(to) / apart : 1;
	const start = middle(from);
	const now = middle(to);
	return panBy(zoomAt(view, start, factor), now.left - start.left, now.top - start.top);
}

/** Part of the plan, mm. */
export interface Extent {
	readonly left: number;
	readonly right: number;
	readonly bottom: number;
	readonly top: number;
}

/** px of what is drawn that stay on screen however far the sheet is moved. */
const IN_SIGHT = 60;

/** The view moved back as far as some of `extent` needs to stay in sight. */
export function keptInSight(view: Viewport, { left, right, bottom, top }: Extent, size: Size): Viewport {
	const upper = toScreen(view, { x: left, y: top });
	const lower = toScreen(view, { x: right, y: bottom });
	const back = (low: number, high: number, room: number) =>
		Math.max(0, IN_SIGHT - high) - Math.max(0, low - (room - IN_SIGHT));
	return panBy(view, back(upper.left, lower.left, size.width), back(upper.top, lower.top, size.height));
}

/** Puts the plan's point `at` in the middle of the screen. */
export function centreOn(view: Viewport, at: Point, size: Size): Viewport {
	const on = toScreen(view, at);
	return panBy(view, size.width / 2 - on.left, size.height / 2 - on.top);
}

/** "1 : 8", as on paper, at 96 px to the inch. */
export function scaleText(view: Viewport): string {
	const ratio = PAPER_PX_PER_MM / view.scale;
	if (ratio < 1) return `${tidy(1 / ratio)} : 1`;
	return `1 : ${tidy(ratio)}`;
}

export const clampScale = (scale: number): number => Math.min(GREATEST_SCALE, Math.max(LEAST_SCALE, scale));

const tidy = (ratio: number): string => (ratio < 9.95 ? ratio.toFixed(1).replace(/\.0$/, "") : ratio.toFixed(0));

const spread = ([a, b]: Fingers): number => Math.hypot(b.left - a.left, b.top - a.top);

const middle = ([a, b]: Fingers): ScreenPoint => ({ left: (a.left + b.left) / 2, top: (a.top + b.top) / 2 });
