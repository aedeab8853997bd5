import type { Point } from "@baywright/geometry";
import type { BayPlan, Job } from "@baywright/setout";
import type { Target } from "../selection.ts";
import type { Locus } from "../snap/locus.ts";

/** What is held to be moved, and how everything was then: every move starts from there. */
export interface Held {
	readonly target: Target;
	readonly job: Job;
	readonly bay: number;
	readonly plan: BayPlan;
	/** Where it was taken hold of, mm in the plan. */
	readonly from: Point;
}

export interface Moved {
	readonly job: Job;
	/** What drew it there, to be shown. */
	readonly guides: readonly Locus[];
}

/** How one kind of thing is moved. */
export interface Grip {
	/** The job with what is held taken to `to`; things draw it within `reach` mm (0: nothing does, whole millimetres). */
	move(held: Held, to: Point, reach: number): Moved;
	/** The job with what is held pushed by an arrow key, mm; where it is left out, as if it were moved by so much. */
	nudge?(held: Held, dx: number, dy: number): Job;
	/** What a history calls the move: "move corner 1". */
	label(held: Held): string;
}
