import type { Selection } from "../desk/selection.ts";
import { type GripKind, isGrip } from "./grip.ts";

/** What a key does on the plan. */
export type KeyWish =
	| { readonly does: "walk"; readonly to: Selection }
	| { readonly does: "nudge"; readonly dx: number; readonly dy: number }
	| { readonly does: "zoom"; readonly factor: number }
	| { readonly does: "fit" }
	| { readonly does: "leave" };

export interface KeyPress {
	readonly key: string;
	readonly shift: boolean;
	/** Ctrl, Alt or Meta: the page's own commands. */
	readonly command: boolean;
}

/** mm that an arrow moves what is chosen, and with Shift. */
const NUDGE = 1;
const LONG_NUDGE = 10;

const KEY_ZOOM = 1.25;

const ARROWS: Readonly<Record<string, readonly [dx: number, dy: number]>> = {
	ArrowLeft: [-1, 0],
	ArrowRight: [1, 0],
	ArrowUp: [0, 1],
	ArrowDown: [0, -1],
};

/** Reads a key; null for keys that are not the plan's. Past the last thing and before the first, Tab leaves the plan as it leaves any control. */
export function readKey(
	{ key, shift, command }: KeyPress,
	selection: Selection | null,
	corners: number,
): KeyWish | null {
	if (command) return null;
	if (key === "Tab") {
		const to = nextHandle(selection, corners, shift);
		return to === null ? null : { does: "walk", to };
	}
	const arrow = ARROWS[key];
	if (arrow !== undefined) {
		if (!isGrip(selection)) return null;
		const way = shift ? LONG_NUDGE : NUDGE;
		return { does: "nudge", dx: arrow[0] * way, dy: arrow[1] * way };
	}
	if (key === "+" || key === "=") return { does: "zoom", factor: KEY_ZOOM };
	if (key === "-" || key === "_") return { does: "zoom", factor: 1 / KEY_ZOOM };
	if (key === "0") return { does: "fit" };
	if (key === "Escape") return { does: "leave" };
	return null;
}

/** What is met at every wall, in turn; after the last wall there is only its right corner. */
const STOPS: readonly GripKind[] = ["corner", "wall", "bow"];

/** Corners, walls and bows in turn along the bay: corner 0, wall 0, its bow, corner 1, … */
function nextHandle(selection: Selection | null, corners: number, back: boolean): Selection | null {
	const place = isGrip(selection) ? STOPS.length * selection.index + STOPS.indexOf(selection.kind) : null;
	if (place === null && back) return null;
	const next = place === null ? 0 : place + (back ? -1 : 1);
	if (next < 0 || next > STOPS.length * (corners - 1)) return null;
	return { kind: STOPS[next % STOPS.length] as GripKind, index: Math.floor(next / STOPS.length) };
}
