import type { ScreenPoint } from "@baywright/editor";
import type { Palette } from "../palette.ts";
import type { Face } from "../text.ts";
import type { Spot } from "./box.ts";
import type { Line } from "./clip.ts";

/** A wall's run with its dimension line outside the wall. */
export interface RunLabel extends Spot {
	readonly kind: "run";
	readonly wall: number;
	readonly text: string;
	readonly face: Face;
	readonly taped: boolean;
	/** Runs of the dimension line: two where the text stands in its gap. */
	readonly lines: readonly Line[];
	/** Where a slanted tick ends the line; a line that runs off the screen has none there. */
	readonly ticks: readonly ScreenPoint[];
	/** From the wall out to the line. */
	readonly extensions: readonly Line[];
	/** Unit direction of the line on screen. */
	readonly along: ScreenPoint;
}

/** A dimension that a note gives the figure of: drawn with the note or not at all. */
export interface Dimension {
	readonly line: Line;
	/** Thin broken lines that it is measured from. */
	readonly from: readonly Line[];
}

/** A few words beside something. */
export interface NoteLabel extends Spot {
	readonly kind: "note";
	readonly lines: readonly NoteLine[];
	/** Leads back to what it is about, where the note stands far off. */
	readonly leader: Line | null;
	readonly colour: keyof Palette;
	readonly dimension: Dimension | null;
}

export interface NoteLine {
	readonly text: string;
	readonly face: Face;
	readonly colour: keyof Palette;
}

/** The mark of one or more findings. */
export interface BadgeLabel extends Spot {
	readonly kind: "badge";
	readonly mark: number;
	readonly leader: Line | null;
}

export type Label = RunLabel | NoteLabel | BadgeLabel;
