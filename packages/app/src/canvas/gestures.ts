import type { Fingers, ScreenPoint } from "@baywright/editor";

export type PointerKind = "mouse" | "touch";

/** What a drawing does when it is pointed at, pressed, dragged, pinched and zoomed. Places in px from its top left; `free` while Shift is held: nothing draws what is moved. */
export interface GestureHost {
	/** Whether something lies here that a drag takes hold of; otherwise a drag moves the sheet. */
	holds(at: ScreenPoint, pointer: PointerKind): boolean;
	/** The pointer rests or moves with nothing pressed; null when it has left. */
	hover(at: ScreenPoint | null, free: boolean): void;
	/** Pressed and let go without a drag. */
	tap(at: ScreenPoint, pointer: PointerKind, free: boolean): void;
	/** A drag of what was held at `from`. */
	dragStart(from: ScreenPoint, pointer: PointerKind, free: boolean): void;
	dragTo(at: ScreenPoint, free: boolean): void;
	dragEnd(): void;
	/** The drag does not count: Escape, a second finger, or the system took the pointer away. */
	dragCancel(): void;
	panBy(left: number, top: number): void;
	pinchStart(): void;
	/** Two fingers, from where they were when the pinch started. */
	pinchTo(from: Fingers, to: Fingers): void;
	zoom(at: ScreenPoint, factor: number): void;
	/** What the hand is doing, for the shape of the pointer. */
	busy(what: "idle" | "panning" | "dragging"): void;
}

export interface Gestures {
	/** Ends a drag that is going on, as Escape does. False where there is none. */
	cancel(): boolean;
	/** While held, a drag moves the sheet whatever it starts on. */
	holdSheet(held: boolean): void;
	destroy(): void;
}

/** px that a pointer must go before a press is a drag. */
const SLOP: Readonly<Record<PointerKind, number>> = { mouse: 3, touch: 8 };

/** Zoom per px of wheel; trackpad pinches come as small wheel steps with Ctrl held. */
const WHEEL_ZOOM = 0.0016;
const PINCH_WHEEL_ZOOM = 0.01;

/** px to a line of wheel, and the longest step taken at once. */
const WHEEL_LINE = 16;
const LONGEST_WHEEL = 240;

const MIDDLE_BUTTON = 1;

/** What stands over the drawing and takes its own pointers. */
const OWN = "button, label, input, select, [data-own]";

type State =
	| { readonly is: "idle" }
	| {
			readonly is: "pressed";
			readonly id: number;
			readonly at: ScreenPoint;
			readonly pointer: PointerKind;
			readonly holds: boolean;
	  }
	| { readonly is: "dragging"; readonly id: number }
	| { readonly is: "panning"; readonly id: number; readonly last: ScreenPoint }
	| { readonly is: "pinching"; readonly ids: readonly [number, number]; readonly from: Fingers };

const IDLE: State = { is: "idle" };

/** Reads pointer, touch and wheel events of an element. `scrolls`: one finger on empty sheet scrolls the page instead of the plan. */
export function readGestures(element: HTMLElement, host: GestureHost, scrolls: () => boolean): Gestures {
	const down = new Map<number, ScreenPoint>();
	let state: State = IDLE;
	let sheetHeld = false;
	const life = new AbortController();
	const { signal } = life;

	/** Where the element stood at the first press: nothing moves it while something is held, and to ask anew for every move is dear. */
	let frame = element.getBoundingClientRect();
	const placeOf = (event: { readonly clientX: number; readonly clientY: number }): ScreenPoint => {
		if (down.size === 0) frame = element.getBoundingClientRect();
		return { left: event.clientX - frame.left, top: event.clientY - frame.top };
	};
	const kindOf = (event: PointerEvent): PointerKind => (event.pointerType === "touch" ? "touch" : "mouse");
	const enter = (next: State) => {
		state = next;
		host.busy(
			next.is === "dragging" ? "dragging" : next.is === "panning" || next.is === "pinching" ? "panning" : "idle",
		);
	};

	function press(event: PointerEvent): void {
		if (event.target instanceof Element && event.target.closest(OWN) !== null) return;
		if (event.button > MIDDLE_BUTTON) return;
		const at = placeOf(event);
		const pointer = kindOf(event);
		down.set(event.pointerId, at);
		element.setPointerCapture(event.pointerId);
		if (down.size === 2) {
			if (state.is === "dragging") host.dragCancel();
			const [a, b] = [...down] as [[number, ScreenPoint], [number, ScreenPoint]];
			host.hover(null, false);
			host.pinchStart();
			enter({ is: "pinching", ids: [a[0], b[0]], from: [a[1], b[1]] });
			return;
		}
		if (state.is !== "idle") return;
		if (event.button === MIDDLE_BUTTON || sheetHeld) {
			event.preventDefault();
			enter({ is: "panning", id: event.pointerId, last: at });
		} else enter({ is: "pressed", id: event.pointerId, at, pointer, holds: host.holds(at, pointer) });
	}

	function move(event: PointerEvent): void {
		const at = placeOf(event);
		if (!down.has(event.pointerId)) {
			if (state.is === "idle" && event.pointerType !== "touch") host.hover(at, event.shiftKey);
			return;
		}
		down.set(event.pointerId, at);
		if (state.is === "pinching") {
			const to = state.ids.map((id) => down.get(id)) as [ScreenPoint, ScreenPoint];
			host.pinchTo(state.from, to);
			return;
		}
		if (state.is === "pressed" && state.id === event.pointerId) leavePress(state, at, event.shiftKey);
		if (state.is === "dragging" && state.id === event.pointerId) host.dragTo(at, event.shiftKey);
		else if (state.is === "panning" && state.id === event.pointerId) {
			host.panBy(at.left - state.last.left, at.top - state.last.top);
			state = { ...state, last: at };
		}
	}

	function leavePress(pressed: State & { readonly is: "pressed" }, at: ScreenPoint, free: boolean): void {
		if (Math.hypot(at.left - pressed.at.left, at.top - pressed.at.top) < SLOP[pressed.pointer]) return;
		if (pressed.holds) {
			host.hover(null, false);
			enter({ is: "dragging", id: pressed.id });
			host.dragStart(pressed.at, pressed.pointer, free);
		} else if (pressed.pointer === "touch" && scrolls()) enter(IDLE);
		else {
			host.hover(null, false);
			enter({ is: "panning", id: pressed.id, last: pressed.at });
		}
	}

	function release(event: PointerEvent): void {
		if (!down.delete(event.pointerId)) return;
		if (state.is === "pressed" && state.id === event.pointerId) host.tap(state.at, state.pointer, event.shiftKey);
		if (state.is === "dragging" && state.id === event.pointerId) host.dragEnd();
		if (state.is === "pinching") {
			const [left] = down;
			enter(left === undefined ? IDLE : { is: "panning", id: left[0], last: left[1] });
			return;
		}
		if (state.is !== "idle" && state.id === event.pointerId) enter(IDLE);
	}

	function lose(event: PointerEvent): void {
		if (!down.delete(event.pointerId)) return;
		if (state.is === "dragging") host.dragCancel();
		enter(IDLE);
	}

	function wheel(event: WheelEvent): void {
		event.preventDefault();
		if (state.is === "dragging" || state.is === "pinching") return;
		const lines = event.deltaMode === WheelEvent.DOM_DELTA_PIXEL ? 1 : WHEEL_LINE;
		const turned = Math.max(-LONGEST_WHEEL, Math.min(LONGEST_WHEEL, event.deltaY * lines));
		host.zoom(placeOf(event), Math.exp(-turned * (event.ctrlKey ? PINCH_WHEEL_ZOOM : WHEEL_ZOOM)));
	}

	/** Where the page may scroll under one finger, a finger on a handle must keep it from doing so. */
	function touch(event: TouchEvent): void {
		const [finger] = event.touches;
		if (event.touches.length > 1 || (finger !== undefined && host.holds(placeOf(finger), "touch"))) {
			if (event.cancelable && !(event.target instanceof Element && event.target.closest(OWN))) event.preventDefault();
		}
	}

	element.addEventListener("pointerdown", press, { signal });
	element.addEventListener("pointermove", move, { signal });
	element.addEventListener("pointerup", release, { signal });
	element.addEventListener("pointercancel", lose, { signal });
	element.addEventListener("pointerleave", () => state.is === "idle" && host.hover(null, false), { signal });
	element.addEventListener("wheel", wheel, { signal, passive: false });
	element.addEventListener("touchstart", touch, { signal, passive: false });
	element.addEventListener("auxclick", (event) => event.preventDefault(), { signal });

	return {
		cancel() {
			if (state.is !== "dragging") return false;
			host.dragCancel();
			enter(IDLE);
			return true;
		},
		holdSheet(held) {
			sheetHeld = held;
		},
		destroy() {
			if (state.is === "dragging") host.dragCancel();
			life.abort();
		},
	};
}
