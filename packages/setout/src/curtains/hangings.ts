import type { Stretch } from "../bay-plan.ts";
import type { Bay } from "../job/bay-schema.ts";
import type { Curtain } from "../job/curtain-schema.ts";

/** Slack (mm) in which two curtains meet, or one reaches the track's end. */
const MEETS = 1;

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

const USUAL = { cloth: null, heading: "pencil", fullness: 2, drop: null } as const;

/**
 * The curtains on a track of `length` mm, left to right. None given, or a single one without stations: as the track is drawn. Else each has
 * its own stretch, as far as the track goes, and is drawn to the end of the track that is nearer.
 */
export function hangingsOf({ curtains, track: { draw } }: Bay, length: number): Hanging[] {
	if (draw === "none") return [];
	const [only] = curtains;
	if (only === undefined || (curtains.length === 1 && only.from === null && only.to === null))
		return asDrawn(draw, length, only ?? USUAL, only === undefined ? null : 0);
	const placed = curtains
		.map((made, curtain) => {
			const from = Math.min(made.from ?? 0, length);
			return { curtain, made, from, to: Math.max(from, Math.min(made.to ?? length, length)) };
		})
		.toSorted((a, b) => a.from - b.from || a.to - b.to);
	return placed.map((each) => {
		const { from, to } = each;
		const others = placed.filter((other) => other !== each);
		const isWhole = from <= MEETS && to >= length - MEETS;
		const nearest = from + to <= length + MEETS ? "left" : "right";
		return {
			...each,
			side: isWhole && draw !== "pair" ? draw : nearest,
			meets: others.filter((other) => touches(other.to, from) || touches(other.from, to)).length,
			ends: endsOf(each, length),
		};
	});
}

function asDrawn(draw: "pair" | "left" | "right", length: number, made: Hanging["made"], curtain: number | null) {
	const whole = { curtain, made, from: 0, to: length, meets: 0, ends: 2 };
	if (draw !== "pair") return [{ ...whole, side: draw }];
	const half = { ...whole, meets: 1, ends: 1 };
	return [{ ...half, side: "left", to: length / 2 } as const, { ...half, side: "right", from: length / 2 } as const];
}

const touches = (a: number, b: number): boolean => Math.abs(a - b) <= MEETS;

const endsOf = ({ from, to }: Stretch, length: number): number =>
	Number(touches(from, 0)) + Number(touches(to, length));
