import type { Stretch } from "../bay-plan.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { Curtain } from "../job/curtain-schema.ts";

/** Slack (mm) in which two curtains meet, or one reaches the track's end. */
export const MEETS = 1;

/** A curtain on its stretch of track, before it is made up. Stations mm. */
export interface Hanging extends Stretch {
	/** Its place in the bay's `curtains`; null where the job says nothing of curtains. */
	readonly curtain: number | null;
	readonly side: "left" | "right";
	/** What is made; what is usual where the job says nothing. */
	readonly made: Pick<Curtain, "cloth" | "heading" | "fullness" | "drop">;
	/** Edges at which it meets another curtain, and edges at an end of the track. */
	readonly meets: number;
	readonly ends: number;
}

/** A stretch with what hangs there, before it is known what is beside it. */
type Placed = Omit<Hanging, "meets" | "ends">;

const USUAL = { cloth: null, heading: "pencil", fullness: 2, drop: null } as const;

/**
 * The curtains on a track of `length` mm, left to right. None given: as the track is drawn. Else each has its own stretch, as far as the
 * track goes; one that lies off the track is left out, and one that parts in the middle is two.
 */
export function hangingsOf({ curtains, track: { draw } }: Bay, length: number): Hanging[] {
	if (draw === "none") return [];
	const whole = { from: 0, to: length };
	const onTrack = curtains
		.map((made, curtain) => ({ ...stretchOf(made, length), curtain, made }))
		.filter(({ from, to }) => to - from > MEETS);
	const placed =
		curtains.length === 0
			? hung({ ...whole, curtain: null, made: USUAL }, draw === "pair" ? "both" : draw)
			: onTrack.flatMap((each) => hung(each, stacksOf(each.made, onTrack.length, draw, length)));
	const inOrder = placed.toSorted((a, b) => a.from - b.from || a.to - b.to);
	return inOrder.map((each) => ({
		...each,
		meets: inOrder.filter((other) => other !== each && (touches(other.to, each.from) || touches(other.from, each.to)))
			.length,
		ends: Number(touches(each.from, 0)) + Number(touches(each.to, length)),
	}));
}

/** A curtain's stretch, as far as the track goes. */
function stretchOf(made: Pick<Curtain, "from" | "to">, length: number): Stretch {
	const from = Math.min(made.from ?? 0, length);
	return { from, to: Math.max(from, Math.min(made.to ?? length, length)) };
}

/** Where a curtain is drawn back to: as it says, as the track is drawn where it is alone of the `count` that hang, else to the nearer end. */
function stacksOf(
	made: Pick<Curtain, "from" | "to" | "stacks">,
	count: number,
	draw: "pair" | "left" | "right",
	length: number,
): "left" | "right" | "both" {
	if (made.stacks !== "auto") return made.stacks;
	if (draw === "pair" && count === 1 && made.from === null && made.to === null) return "both";
	const { from, to } = stretchOf(made, length);
	const isWhole = from <= MEETS && to >= length - MEETS;
	if (isWhole && draw !== "pair") return draw;
	return from + to <= length + MEETS ? "left" : "right";
}

function hung(placed: Omit<Placed, "side">, stacks: "left" | "right" | "both"): Placed[] {
	if (stacks !== "both") return [{ ...placed, side: stacks }];
	const middle = (placed.from + placed.to) / 2;
	return [
		{ ...placed, side: "left", to: middle },
		{ ...placed, side: "right", from: middle },
	];
}

const touches = (a: number, b: number): boolean => Math.abs(a - b) <= MEETS;
