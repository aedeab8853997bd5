import type { Point } from "@baywright/geometry";
import type { Operation } from "rfc6902";
import type { FindingCode } from "./codes.ts";

/**
 * Something the plan must tell. A code and figures, no words: `describe` puts it into words and units.
 * A refusal is what cannot be fitted, a warning what can but should not be without a look, a note the rest.
 */
export interface Finding {
	readonly code: FindingCode;
	readonly where: Place;
	/** Lengths mm, angles degrees. */
	readonly figures: Readonly<Record<string, number | string>>;
	readonly remedies: readonly Remedy[];
}

export type Severity = "refusal" | "warning" | "note";

/** Where a finding sits; only what applies. */
export interface Place {
	readonly bay?: string;
	readonly wall?: number;
	readonly corner?: number;
	readonly bracket?: number;
	readonly joint?: number;
	readonly obstacle?: number;
	readonly opening?: number;
	readonly curtain?: number;
	readonly piece?: string;
	readonly station?: number;
	readonly end?: "left" | "right";
	readonly at?: Point;
	/** The other end of a distance that is too small, `at` being on the track. */
	readonly from?: Point;
	/** Field of the job file, for findings about the file itself. */
	readonly field?: string;
}

/** A cure that one click applies: a list of edits (RFC 6902). From `planBay` paths are relative to the bay, from `planJob` to the job. */
export interface Remedy {
	readonly action: RemedyAction;
	readonly figures: Readonly<Record<string, number | string>>;
	readonly change: readonly Operation[];
}

export type RemedyAction =
	| "track-to-end-of-bay"
	| "move-end"
	| "swap-ends"
	| "set-wall-projection"
	| "set-projection-either-side"
	| "set-projection"
	| "same-projection"
	| "set-rise"
	| "end-at-corner"
	| "follow-smoothest"
	| "draw-to-one-side"
	| "draw-as-pair"
	| "stack-to-side"
	| "use-heading"
	| "lengthen-track"
	| "meet-at"
	| "end-curtain-with-track"
	| "remove-curtain"
	| "follow-walls"
	| "set-radius"
	| "release-radius"
	| "release-two-radii"
	| "release-all-radii"
	| "use-system"
	| "joints-auto"
	| "no-joints"
	| "remove-joint"
	| "move-joint"
	| "move-bracket"
	| "release-bracket"
	| "pin-brackets"
	| "forget-cut"
	| "raise-cord"
	| "leave-out-reading";
