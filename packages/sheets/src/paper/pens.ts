/**
 * Widths of lines, mm. Source: ISO 128-2, line widths 0.25, 0.35, 0.5 and 0.7 mm; narrow and wide lines of one drawing stand in the
 * ratio 1 : 2.
 */
export const PENS = {
	/** Dimensions, hatching, leaders, centre lines, rules of tables. */
	narrow: 0.25,
	/** Lettering drawn as lines, marks. */
	medium: 0.35,
	/** Visible outlines. */
	wide: 0.5,
	/** The frame, and what the sheet is about. */
	heavy: 0.7,
} as const;

export type Pen = keyof typeof PENS;

/** Lengths (mm) of dashes and gaps by turns. Source: ISO 128-2, line types 01, 02, 04 and 05, in tenths of the usual widths. */
export const DASHES = {
	continuous: [],
	dashed: [3, 1],
	/** Centre lines: long dash, dot. */
	chain: [6, 0.8, 0.4, 0.8],
} as const satisfies Readonly<Record<string, readonly number[]>>;

export type Dash = keyof typeof DASHES;

/** What a line, a letter or a tone is drawn in. All are told apart in black and white, too. */
export const INKS = {
	black: "#1b2430",
	grey: "#5c6570",
	light: "#9aa1a8",
	/** Tone behind headings and in boxes: letters stay readable on it. */
	tint: "#ececea",
	white: "#ffffff",
} as const;

export type Ink = keyof typeof INKS;
