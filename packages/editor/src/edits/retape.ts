import type { Bay } from "@baywright/setout";

type Reading = Bay["readings"][number];

/** What is typed: a wall's run, its rise, or the angle at a corner. */
export type Typed =
	| { readonly kind: "run" | "rise"; readonly wall: number }
	| { readonly kind: "angle"; readonly corner: number };

/**
 * The bay with its readings of the very thing that is typed made one, of this value (mm or degrees); the very bay that it was where there
 * are none, for then it is the drawing that changes. A rise is typed as it is in the middle of its wall.
 */
export function retaped(bay: Bay, typed: Typed, value: number): Bay {
	const { readings } = bay;
	const first = readings.findIndex((reading) => isOf(reading, typed));
	if (first < 0) return bay;
	return {
		...bay,
		readings: readings.flatMap((reading, i) => {
			if (!isOf(reading, typed)) return [reading];
			if (i > first) return [];
			return [reading.kind === "rise" ? { ...reading, at: null, value } : { ...reading, value }];
		}),
	};
}

function isOf(reading: Reading, typed: Typed): boolean {
	if (typed.kind === "angle") return reading.kind === "angle" && reading.corner === typed.corner;
	return reading.kind === typed.kind && reading.wall === typed.wall;
}
