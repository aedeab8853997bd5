import type { Desk } from "../desk/desk.ts";
import type { Selection } from "../desk/selection.ts";
import type { GestureHost, PointerKind } from "./gestures.ts";
import { type Grip, gripOut, gripReadings, isGrip, moved, moveLabel } from "./grip.ts";
import type { Tip } from "./paint/tip.ts";
import type { Picture } from "./picture.ts";
import { reach } from "./reach.ts";
import { panBy, pinch, type ScreenPoint, toPlan, type Viewport, zoomAt } from "./viewport.ts";

/** What the pointer does to the plan. */
export interface Hand extends GestureHost {
	/** The figures shown beside the pointer during a drag. */
	tip(): Tip | null;
}

export interface HandTools {
	readonly desk: () => Desk;
	readonly picture: Picture;
	/** Takes up a new view. */
	look(view: Viewport): void;
	/** Draws what is live: handles, highlights, the tip. */
	redrawLive(): void;
	cursor(shape: string): void;
	/** Before anything else is done to the job. */
	settle(): void;
	/** A drag has become a step of the history. */
	done(label: string): void;
}

/** mm: a bow pulled as near to straight as this is straight. */
const BOW_SNAP = 3;

interface Drag {
	readonly grip: Grip;
	readonly from: ScreenPoint;
	readonly pointer: PointerKind;
	readonly at: ScreenPoint;
}

export function createHand({ desk, picture, look, redrawLive, cursor, settle, done }: HandTools): Hand {
	let drag: Drag | null = null;
	let pinchedFrom: Viewport | null = null;

	const under = (at: ScreenPoint, pointer: PointerKind) => reach(picture.scene(), picture.layout(), at, pointer);

	function point(hover: Selection | null): void {
		const before = desk().hover;
		if (before?.kind === hover?.kind && before?.index === hover?.index) return;
		desk().point(hover);
	}

	return {
		tip: () =>
			drag === null
				? null
				: {
						at: drag.at,
						touch: drag.pointer === "touch",
						readings: gripReadings(drag.grip, picture.scene()),
						out: gripOut(drag.grip, picture.scene()),
					},
		holds: (at, pointer) => isGrip(under(at, pointer)),
		hover(at) {
			const hover = at === null ? null : under(at, "mouse");
			point(hover);
			cursor(hover === null ? "grab" : isGrip(hover) ? "move" : "pointer");
		},
		tap(at, pointer) {
			settle();
			desk().select(nextUnder(under(at, pointer), desk().selection, picture));
		},
		dragStart(from, pointer) {
			settle();
			const held = under(from, pointer);
			if (held === null || !isGrip(held)) return;
			const { job, bay } = desk();
			desk().select(held);
			drag = { grip: { kind: held.kind, index: held.index, job, bay }, from, pointer, at: from };
		},
		dragTo(at) {
			if (drag === null) return;
			drag = { ...drag, at };
			const start = toPlan(picture.view, drag.from);
			const now = toPlan(picture.view, at);
			desk().preview(moved(drag.grip, now.x - start.x, now.y - start.y, BOW_SNAP));
			redrawLive();
		},
		dragEnd() {
			if (drag === null) return;
			const label = moveLabel(drag.grip);
			drag = null;
			picture.relabel();
			desk().commit(label);
			done(label);
			redrawLive();
		},
		dragCancel() {
			if (drag === null) return;
			drag = null;
			picture.relabel();
			desk().cancel();
			redrawLive();
		},
		panBy(left, top) {
			look(panBy(picture.view, left, top));
		},
		pinchStart() {
			pinchedFrom = picture.view;
		},
		pinchTo(from, to) {
			if (pinchedFrom !== null) look(pinch(pinchedFrom, from, to));
		},
		zoom(at, factor) {
			look(zoomAt(picture.view, at, factor));
		},
		busy(what) {
			cursor(what === "panning" ? "grabbing" : what === "dragging" ? "move" : "grab");
		},
	};
}

/** Several findings at one place: each tap shows the next. */
function nextUnder(hit: Selection | null, chosen: Selection | null, picture: Picture): Selection | null {
	if (hit?.kind !== "finding" || chosen?.kind !== "finding") return hit;
	const mark = picture.layout().marks.find(({ findings }) => findings.includes(hit.index));
	const place = mark?.findings.indexOf(chosen.index) ?? -1;
	const next = place < 0 ? undefined : mark?.findings[(place + 1) % mark.findings.length];
	return next === undefined ? hit : { kind: "finding", index: next };
}
