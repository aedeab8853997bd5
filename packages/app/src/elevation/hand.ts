import type { Desk, ScreenPoint, Viewport } from "@baywright/editor";
import { panBy, pinch, SNAP_REACH, zoomAt } from "@baywright/editor";
import type { Bay } from "@baywright/setout";
import type { GestureHost, PointerKind } from "../canvas/gestures.ts";
import type { Tip } from "../canvas/paint/tip.ts";
import { type Held, isBox, moveName, sameHeld } from "./held.ts";
import { type Grasp, moveHeld, waysOf } from "./move.ts";
import type { Picture } from "./picture.ts";
import type { Under } from "./reach.ts";

/** What the pointer does to the elevation. */
export interface Hand extends GestureHost {
	/** The figures shown beside the pointer during a drag. */
	tip(): Tip | null;
	readonly drags: boolean;
}

export interface HandTools {
	readonly desk: () => Desk;
	readonly picture: Picture;
	look(view: Viewport): void;
	/** Takes up what is chosen here, whatever else is. */
	choose(held: Held | null): void;
	redrawLive(): void;
	cursor(shape: string): void;
	/** A drag has begun, or is over: what is chosen is said anew. */
	settled(): void;
}

/** px: other heights and edges draw from nearer than on the plan, for most of a bay's are nearly alike. */
const REACH = SNAP_REACH * 0.45;

/** mm: so near at least, which is what makes whole 5 mm. */
const LEAST_REACH = 2.5;

interface Drag {
	readonly grasp: Grasp;
	readonly from: ScreenPoint;
	readonly pointer: PointerKind;
	readonly at: ScreenPoint;
}

export function createHand({ desk, picture, look, choose, redrawLive, cursor, settled }: HandTools): Hand {
	let drag: Drag | null = null;
	let pinchedFrom: Viewport | null = null;

	/** A finger that lands on a window is most often about to move the sheet: it takes hold of what is chosen, and of bars. */
	function heldAt(where: ScreenPoint, pointer: PointerKind): Held | null {
		const { held, bar }: Under = picture.at(where, pointer);
		if (pointer === "mouse" || bar || !isBox(held)) return held;
		const { chosen } = picture;
		return isBox(chosen) && chosen.kind === held.kind && chosen.index === held.index ? held : null;
	}

	function end(): void {
		drag = null;
		picture.relabel();
	}

	return {
		get drags() {
			return drag !== null;
		},
		tip: () =>
			drag === null
				? null
				: {
						at: drag.at,
						touch: drag.pointer === "touch",
						readings: picture.readings(drag.grasp.held),
						out: { left: 1, top: -1 },
					},
		holds: (where, pointer) => heldAt(where, pointer) !== null,
		hover(where) {
			const { held, thing } = where === null ? { held: null, thing: null } : picture.at(where, "mouse");
			desk().point(thing);
			if (!sameHeld(held, picture.under)) {
				picture.under = held;
				redrawLive();
			}
			cursor(cursorOf(held) ?? (thing === null ? "grab" : "pointer"));
		},
		tap(where, pointer) {
			const { held, thing } = picture.at(where, pointer);
			desk().select(thing);
			// On the track a tap means the mark that it is on; without one, its height.
			choose(held?.kind === "track" && thing !== null ? null : held);
		},
		dragStart(from, pointer) {
			const held = heldAt(from, pointer);
			const grasp = held === null ? null : picture.grasp(held);
			if (held === null || grasp === null) return;
			choose(held);
			drag = { grasp, from, pointer, at: from };
			settled();
		},
		dragTo(at, free) {
			if (drag === null) return;
			drag = { ...drag, at };
			const { scale } = picture.view;
			const way = { along: (at.left - drag.from.left) / scale, up: (drag.from.top - at.top) / scale };
			desk().preview(moveHeld(drag.grasp, way, free ? 0 : Math.max(LEAST_REACH, REACH / scale)));
			redrawLive();
		},
		dragEnd() {
			if (drag === null) return;
			const { held, job, bay } = drag.grasp;
			end();
			desk().commit(moveName(job.bays[bay] as Bay, held));
			settled();
		},
		dragCancel() {
			if (drag === null) return;
			end();
			desk().cancel();
			settled();
		},
		panBy: (left, top) => look(panBy(picture.view, left, top)),
		pinchStart() {
			pinchedFrom = picture.view;
		},
		pinchTo(from, to) {
			if (pinchedFrom !== null) look(pinch(pinchedFrom, from, to));
		},
		zoom: (where, factor) => look(zoomAt(picture.view, where, factor)),
		busy(what) {
			if (what !== "dragging") cursor(what === "panning" ? "grabbing" : "grab");
		},
	};
}

function cursorOf(held: Held | null): string | null {
	if (held === null) return null;
	const { along, up } = waysOf(held);
	return along && up ? "move" : up ? "ns-resize" : "ew-resize";
}
