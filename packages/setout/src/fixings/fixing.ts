import type { Bay, Obstacle, Wall } from "../job/bay-schema.ts";

/** What a bracket is screwed into, as far as the job says it. */
export type Surface = Wall["surface"] | Bay["ceilingSurface"];

/** How one bracket is held. One for each of a plan's brackets, in the same order. */
export interface Fixing {
	readonly into: Surface;
	/** Screwed up into the ceiling. */
	readonly overhead: boolean;
	/** Zones of concealed cables in which its holes lie or may lie; none where the figures expect none. */
	readonly zones: readonly CableZone[];
}

/**
 * A zone in which concealed cables are to be expected. `sure`: the middle of the bracket lies in it; else its plate may reach into it, or what
 * would say it (how high the ceiling and the track are, what stands at the end of the bay) is not known.
 */
export type CableZone = WallTopZone | CornerZone | AccessoryZone;

export interface WallTopZone {
	readonly kind: "wall-top";
	/** Of the track under the ceiling, mm; null = not known. */
	readonly below: number | null;
	readonly sure: boolean;
}

export interface CornerZone {
	readonly kind: "corner";
	readonly corner: number;
	/** Along the wall face, mm. */
	readonly distance: number;
	readonly sure: boolean;
}

export interface AccessoryZone {
	readonly kind: "accessory";
	/** Its place in the bay's obstacles, and what it is. */
	readonly obstacle: number;
	readonly accessory: Obstacle["kind"];
	/** Where the hole lies from it; "in-line" = above or below, while the heights are not known. */
	readonly lies: "above" | "below" | "level" | "in-line";
	readonly sure: boolean;
}
