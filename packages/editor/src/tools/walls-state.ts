import type { ChainEnd } from "../edits/chain.ts";
import { bayOf, type EntryField, type Touch, type World } from "./tool.ts";

/** How far the drawing of walls has come. */
export interface WallsState {
	/** The end of the bay that is drawn on from; null while the pointer's nearness decides. */
	readonly end: ChainEnd | null;
	/** Where the pointer is. */
	readonly over: Touch | null;
	/** Pointed by an arrow key, radians. */
	readonly heading: number | null;
	readonly field: EntryField;
	readonly run: string;
	readonly angle: string;
	/** Where the drag that is going on started. */
	readonly pressed: Touch | null;
	/** The end that was drawn on from at each step since the tool was taken up; Backspace takes them back. */
	readonly steps: readonly ChainEnd[];
	/** The whole bay was pointed out in these steps, which leaves open on which side its room is. */
	readonly sideIsOpen: boolean;
	/** Every wall so far was typed, run and angle: how the bay lies on the sheet is nobody's wish. */
	readonly typed: boolean;
}

export const hasTyped = ({ run, angle }: WallsState): boolean => run !== "" || angle !== "";

/** The end that is drawn on from. */
export function endOf(state: Pick<WallsState, "end" | "over">, world: World): ChainEnd {
	if (state.end !== null) return state.end;
	const { corners } = bayOf(world);
	const [first, last] = [corners[0], corners.at(-1)];
	if (state.over === null || !first || !last || corners.length < 2) return "right";
	const { x, y } = state.over.at;
	return Math.hypot(x - first[0], y - first[1]) < Math.hypot(x - last[0], y - last[1]) ? "left" : "right";
}
