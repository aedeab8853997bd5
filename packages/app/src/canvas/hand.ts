import {
	type Desk,
	isGrip,
	panBy,
	pinch,
	type ScreenPoint,
	type Selection,
	SNAP_REACH,
	sameThing,
	type Toolbox,
	type Touch,
	toPlan,
	type Viewport,
	zoomAt,
} from "@baywright/editor";
import { type Bay, formatAngle, formatLength } from "@baywright/setout";
import type { GestureHost, PointerKind } from "./gestures.ts";
import { heldOut, heldReadings } from "./held-readings.ts";
import type { Tip } from "./paint/tip.ts";
import type { Picture } from "./picture.ts";
import { reach } from "./reach.ts";

/** What the pointer does to the plan. */
export interface Hand extends GestureHost {
	/** The figures shown beside the pointer while a tool is at work. */
	tip(): Tip | null;
	/** Where a finger is that hides what it does; null for a mouse or an idle hand. */
	finger(): ScreenPoint | null;
}

export interface HandTools {
	readonly desk: () => Desk;
	readonly toolbox: () => Toolbox;
	readonly picture: Picture;
	/** Takes up a new view. */
	look(view: Viewport): void;
	/** Draws what is live: handles, highlights, the tip. */
	redrawLive(): void;
	cursor(shape: string): void;
	/** Before anything else is done to the job. */
	settle(): void;
	/** A drag has become a step of the history. */
	done(): void;
	/** A label of the plan that can be typed on is tapped. */
	typeOn(at: ScreenPoint): boolean;
}

/** ms and px within which a second tap makes the first a double one. */
const DOUBLE = { within: 380, apart: 14 } as const;

export function createHand(tools: HandTools): Hand {
	const { desk, toolbox, picture, look, redrawLive, cursor, settle, done, typeOn } = tools;
	let pointer: { readonly at: ScreenPoint; readonly kind: PointerKind } | null = null;
	let pinchedFrom: Viewport | null = null;
	let lastTap: { readonly at: ScreenPoint; readonly time: number } | null = null;

	const under = (at: ScreenPoint, kind: PointerKind) =>
		reach(picture.scene(), picture.layout(), desk().selection, at, kind);

	const touchAt = (at: ScreenPoint, kind: PointerKind, free: boolean): Touch => ({
		at: toPlan(picture.view, at),
		target: under(at, kind),
		reach: free ? 0 : SNAP_REACH / picture.view.scale,
	});

	function point(hover: Selection | null): void {
		if (!sameThing(hover, desk().hover)) desk().point(hover);
	}

	function tip(): Tip | null {
		const { busy, held, sketch } = toolbox();
		if (pointer === null || (!busy && sketch === null)) return null;
		const touch = pointer.kind === "touch";
		const scene = picture.scene();
		if (held !== null) {
			const before = held.job.bays[held.bay] as Bay;
			return {
				at: pointer.at,
				touch,
				readings: heldReadings(held.target, before, scene),
				out: heldOut(held.target, scene),
			};
		}
		const figures = sketch?.figures ?? [];
		const readings = figures.map((it) => ({
			name: it.name,
			figure: it.kind === "length" ? formatLength(it.mm, scene.unit) : formatAngle(it.degrees),
		}));
		return readings.length === 0 ? null : { at: pointer.at, touch, readings, out: { left: 1, top: -1 } };
	}

	return {
		tip,
		finger: () => (toolbox().busy && pointer?.kind === "touch" ? pointer.at : null),
		holds: (at, kind) => toolbox().dragsAnywhere || isGrip(under(at, kind)),
		hover(at, free) {
			pointer = at === null ? null : { at, kind: "mouse" };
			const touch = at === null ? null : touchAt(at, "mouse", free);
			const { tool, dragsAnywhere } = toolbox();
			if (tool !== "select") toolbox().send({ type: "hover", touch });
			const hover = dragsAnywhere ? null : (touch?.target ?? null);
			point(hover);
			cursor(dragsAnywhere ? "crosshair" : hover === null ? "grab" : isGrip(hover) ? "move" : "pointer");
		},
		tap(at, kind, free) {
			settle();
			pointer = { at, kind };
			const touch = touchAt(at, kind, free);
			const now = performance.now();
			const twice =
				lastTap !== null &&
				now - lastTap.time < DOUBLE.within &&
				Math.hypot(at.left - lastTap.at.left, at.top - lastTap.at.top) < DOUBLE.apart;
			lastTap = twice ? null : { at, time: now };
			if (twice && toolbox().send({ type: "double-tap", touch })) return;
			if (toolbox().tool === "select") {
				if (typeOn(at)) return;
				desk().select(nextUnder(touch.target, desk().selection, picture));
				return;
			}
			toolbox().send({ type: "tap", touch });
		},
		dragStart(from, kind, free) {
			settle();
			pointer = { at: from, kind };
			toolbox().send({ type: "grab", touch: touchAt(from, kind, free) });
		},
		dragTo(at, free) {
			if (pointer === null) return;
			pointer = { at, kind: pointer.kind };
			toolbox().send({
				type: "drag",
				touch: { at: toPlan(picture.view, at), target: null, reach: free ? 0 : SNAP_REACH / picture.view.scale },
			});
			redrawLive();
		},
		dragEnd() {
			toolbox().send({ type: "drop" });
			if (pointer?.kind === "touch") pointer = null;
			picture.relabel();
			done();
			redrawLive();
		},
		dragCancel() {
			toolbox().send({ type: "cancel" });
			picture.relabel();
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
			cursor(
				what === "panning" ? "grabbing" : what === "dragging" ? "move" : toolbox().dragsAnywhere ? "crosshair" : "grab",
			);
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
