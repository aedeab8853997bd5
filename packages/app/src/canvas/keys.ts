import { isGrip, nextStop, type Selection, type ToolEvent, type ToolName } from "@baywright/editor";

/** What a key does on the plan. */
export type KeyWish =
	| { readonly does: "walk"; readonly to: Selection }
	| { readonly does: "nudge"; readonly dx: number; readonly dy: number }
	| { readonly does: "zoom"; readonly factor: number }
	| { readonly does: "fit" }
	| { readonly does: "leave" }
	| { readonly does: "remove" }
	| { readonly does: "take"; readonly tool: ToolName }
	| { readonly does: "tell"; readonly event: ToolEvent };

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

/** The key that takes up each tool. */
export const TOOL_KEYS: Readonly<Record<ToolName, string>> = {
	select: "s",
	walls: "w",
	corner: "c",
	opening: "o",
	obstacle: "b",
	"no-drill": "n",
	tape: "t",
};

const TOOL_OF = new Map(Object.entries(TOOL_KEYS).map(([tool, key]) => [key, tool as ToolName]));

/** Reads a key while things are chosen and moved; null for keys that are not the plan's. Past the last stop and before the first, Tab leaves the plan as it leaves any control. */
export function readKey(
	{ key, shift, command }: KeyPress,
	selection: Selection | null,
	stops: readonly Selection[],
): KeyWish | null {
	if (command) return null;
	if (key === "Tab") {
		const to = nextStop(stops, selection, shift);
		return to === null ? null : { does: "walk", to };
	}
	const arrow = ARROWS[key];
	if (arrow !== undefined) {
		if (!isGrip(selection)) return null;
		const way = shift ? LONG_NUDGE : NUDGE;
		return { does: "nudge", dx: arrow[0] * way, dy: arrow[1] * way };
	}
	if (key === "Delete" || key === "Backspace") return selection === null ? null : { does: "remove" };
	if (key === "+" || key === "=") return { does: "zoom", factor: KEY_ZOOM };
	if (key === "-" || key === "_") return { does: "zoom", factor: 1 / KEY_ZOOM };
	if (key === "0") return { does: "fit" };
	if (key === "Escape") return { does: "leave" };
	const tool = TOOL_OF.get(key);
	return tool === undefined ? null : { does: "take", tool };
}

/** Signs that a length may be typed with. */
const TYPED = /^[\d.,/'"½⅓¼¾⅛⅜⅝⅞ a-z°]$/i;

/** Reads a key while walls are being drawn: what is typed goes into the run or the angle. */
export function readTyping({ key, shift, command }: KeyPress): KeyWish | null {
	if (command) return null;
	const arrow = ARROWS[key];
	if (arrow !== undefined) return { does: "tell", event: { type: "point", heading: Math.atan2(arrow[1], arrow[0]) } };
	if (key === "Tab") return shift ? null : { does: "tell", event: { type: "next-field" } };
	if (key === "Enter") return { does: "tell", event: { type: "enter" } };
	if (key === "Backspace") return { does: "tell", event: { type: "erase" } };
	if (key === "Escape") return { does: "tell", event: { type: "cancel" } };
	if (key === "+") return { does: "zoom", factor: KEY_ZOOM };
	if (key === "-") return { does: "zoom", factor: 1 / KEY_ZOOM };
	return TYPED.test(key) ? { does: "tell", event: { type: "type", text: key } } : null;
}
