import type { ScreenPoint } from "@baywright/editor";
import {
	type BayPlan,
	type CurtainSetOut,
	formatLength,
	type LengthUnit,
	openedAt,
	positionOf,
} from "@baywright/setout";
import { clearNow, holdEdge, openCurtain, opened, shareOpened } from "../desk/opened.ts";
import type { GestureHost, PointerKind } from "./gestures.ts";
import type { Tip } from "./paint/tip.ts";

/** The handle of a curtain's leading edge on screen, and the edge itself. */
export interface EdgeHandle {
	/** Its place among the plan's curtains. */
	readonly curtain: number;
	readonly edge: ScreenPoint;
	readonly at: ScreenPoint;
	/** The way that it is drawn: radians, clockwise on screen. */
	readonly turn: number;
}

/** Radius of a handle as it is drawn, and how far beyond it a pointer reaches, px. */
export const EDGE_HANDLE = 7;
const REACH: Readonly<Record<PointerKind, number>> = { mouse: 5, touch: 15 };

/** mm that an arrow draws the edge in hand, and with Shift. */
const NUDGE = 10;
const LONG_NUDGE = 100;

/** The drawing in which edges are dragged. */
export interface EdgePlace {
	/** None where they are not shown. */
	edges(): readonly EdgeHandle[];
	/** The station of the track under a place on screen. */
	stationUnder(at: ScreenPoint): number | null;
	plan(): BayPlan;
	unit(): LengthUnit;
	cursor(shape: string): void;
	/** A drag or a nudge is over: says what it led to. */
	say(text: string): void;
}

/** A hand that draws curtains by their leading edges, and for all else does what it did. */
export interface EdgeHand extends GestureHost {
	tip(): Tip | null;
	/** An arrow draws the edge in hand. False where it is not about it. */
	key(key: string, shift: boolean): boolean;
}

export function withEdges(hand: GestureHost, place: EdgePlace): EdgeHand {
	let drag: {
		readonly curtain: number;
		readonly before: number;
		readonly off: number;
		at: ScreenPoint;
		readonly kind: PointerKind;
	} | null = null;

	const edgeAt = (at: ScreenPoint, kind: PointerKind): EdgeHandle | undefined =>
		place
			.edges()
			.map((edge) => ({ edge, away: Math.hypot(edge.at.left - at.left, edge.at.top - at.top) }))
			.filter(({ away }) => away <= EDGE_HANDLE + REACH[kind])
			.toSorted((a, b) => a.away - b.away)[0]?.edge;

	const curtainOf = (index: number): CurtainSetOut | undefined => place.plan().curtains[index];

	function drawTo(curtain: number, station: number): void {
		const hung = curtainOf(curtain);
		if (hung !== undefined) openCurtain(curtain, openedAt(hung, station));
	}

	function say(curtain: number): void {
		const { readings } = figures(curtain);
		place.say(readings.map(({ name, figure }) => `${name} ${figure}`).join(", "));
	}

	function figures(curtain: number): Pick<Tip, "readings"> {
		const now = opened.getState();
		const plan = place.plan();
		const clear = formatLength(clearNow(plan, now), place.unit());
		return {
			readings: [
				{ name: "opened", figure: `${Math.round(100 * shareOpened(now, curtain))} %` },
				...(plan.glass.openings.length === 0 ? [] : [{ name: "glass clear", figure: clear }]),
			],
		};
	}

	return {
		...hand,
		tip: () =>
			drag === null
				? null
				: { at: drag.at, touch: drag.kind === "touch", out: { left: 1, top: -1 }, ...figures(drag.curtain) },
		holds: (at, kind) => edgeAt(at, kind) !== undefined || hand.holds(at, kind),
		hover(at, free) {
			if (at === null || edgeAt(at, "mouse") === undefined) {
				hand.hover(at, free);
				return;
			}
			hand.hover(null, free);
			place.cursor("ew-resize");
		},
		tap(at, kind, free) {
			const edge = edgeAt(at, kind);
			holdEdge(edge?.curtain ?? null);
			if (edge === undefined) hand.tap(at, kind, free);
		},
		dragStart(from, kind, free) {
			const edge = edgeAt(from, kind);
			const hung = edge === undefined ? undefined : curtainOf(edge.curtain);
			holdEdge(edge?.curtain ?? null);
			if (edge === undefined || hung === undefined) {
				hand.dragStart(from, kind, free);
				return;
			}
			const before = shareOpened(opened.getState(), edge.curtain);
			const off = positionOf(hung, before).leading - (place.stationUnder(from) ?? 0);
			drag = { curtain: edge.curtain, before, off, at: from, kind };
		},
		dragTo(at, free) {
			if (drag === null) {
				hand.dragTo(at, free);
				return;
			}
			drag.at = at;
			const station = place.stationUnder(at);
			if (station !== null) drawTo(drag.curtain, station + drag.off);
		},
		dragEnd() {
			if (drag === null) {
				hand.dragEnd();
				return;
			}
			const { curtain } = drag;
			drag = null;
			say(curtain);
			holdEdge(curtain);
		},
		dragCancel() {
			if (drag === null) {
				hand.dragCancel();
				return;
			}
			const { curtain, before } = drag;
			drag = null;
			openCurtain(curtain, before);
		},
		key(key, shift) {
			const { held } = opened.getState();
			const way = key === "ArrowLeft" ? -1 : key === "ArrowRight" ? 1 : 0;
			const hung = held === null ? undefined : curtainOf(held);
			if (held === null || hung === undefined || place.edges().length === 0) return false;
			if (key === "Escape") {
				holdEdge(null);
				return true;
			}
			if (way === 0) return false;
			const { leading } = positionOf(hung, shareOpened(opened.getState(), held));
			drawTo(held, leading + way * (shift ? LONG_NUDGE : NUDGE));
			say(held);
			return true;
		},
	};
}
