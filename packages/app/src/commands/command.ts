import type { Desk } from "@baywright/editor";
import type { Screen } from "../desk/screen.ts";

/** What the page is when a command is asked for. */
export interface Now {
	readonly desk: Desk;
	readonly screen: Screen;
}

/** Something that can be done, in the trade's words. */
export interface Command {
	readonly id: string;
	readonly words: string;
	/** Other words that someone may look for it by. */
	readonly also?: string;
	/** Keys that do the same, as they are read: "Ctrl+Z". */
	readonly key?: string;
	/** Null, or why it cannot be done now. */
	can(now: Now): string | null;
	run(now: Now): void;
}

export const always = (): null => null;

/** Everything but the opening page's own needs a job on the desk. */
export const onDesk = ({ screen }: Now): string | null => (screen.started ? null : "Take a bay first.");
