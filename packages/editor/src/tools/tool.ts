import type { Point } from "@baywright/geometry";
import type { Bay, BayPlan, Job } from "@baywright/setout";
import type { Selection, Target } from "../selection.ts";
import type { Locus } from "../snap/locus.ts";

export type ToolName = "select" | "walls" | "corner" | "opening" | "obstacle" | "no-drill" | "tape";

/** Where a pointer is. */
export interface Touch {
	/** mm in the plan. */
	readonly at: Point;
	/** What lies there. */
	readonly target: Target | null;
	/** How far things draw what is moved, mm; 0 while the user wants none of it. */
	readonly reach: number;
}

export type ToolEvent =
	| { readonly type: "hover"; readonly touch: Touch | null }
	| { readonly type: "tap"; readonly touch: Touch }
	| { readonly type: "double-tap"; readonly touch: Touch }
	/** A press has become a drag. */
	| { readonly type: "grab"; readonly touch: Touch }
	| { readonly type: "drag"; readonly touch: Touch }
	| { readonly type: "drop" }
	/** Escape, a second finger, or the pointer was taken away. */
	| { readonly type: "cancel" }
	/** A sign typed on the plan. */
	| { readonly type: "type"; readonly text: string }
	/** A whole entry, as from a field. */
	| { readonly type: "entry"; readonly field: EntryField; readonly text: string }
	| { readonly type: "next-field" }
	| { readonly type: "enter" }
	| { readonly type: "erase" }
	/** An arrow key: a way to point without a pointer, radians. */
	| { readonly type: "point"; readonly heading: number };

export type EntryField = "run" | "angle";

/** What a tool knows besides its own state. */
export interface World {
	readonly job: Job;
	readonly bay: number;
	readonly plan: BayPlan;
	readonly selection: Selection | null;
}

export const bayOf = ({ job, bay }: World): Bay => job.bays[bay] as Bay;

/** What comes of an event. What is left out stays as it is. */
export interface Answer<State> {
	readonly state: State;
	/** False: the event was not for this tool. */
	readonly taken?: boolean;
	/** Shown, not yet done. */
	readonly preview?: Job;
	/** One step of the history: what is shown, or `job`. */
	readonly commit?: { readonly label: string; readonly job?: Job };
	/** What is shown is the job again. */
	readonly rollBack?: boolean;
	/** Takes the last step back. */
	readonly undo?: boolean;
	readonly select?: Selection | null;
	readonly say?: string;
	/** The tool to go on with. */
	readonly tool?: ToolName;
}

/** What a tool in this state shows on the plan. */
export interface Sketch {
	readonly guides: readonly Locus[];
	readonly lines: readonly SketchLine[];
	/** Places marked with a small cross. */
	readonly points: readonly Point[];
	/** Figures shown beside the last point. */
	readonly figures: readonly Figure[];
}

/** A line that is not there yet. */
export interface SketchLine {
	readonly from: Point;
	readonly to: Point;
	readonly kind: "wall" | "stretch" | "tape";
	/** mm, or null where it has no figure of its own. */
	readonly length: number | null;
}

export type Figure =
	| { readonly name: string; readonly kind: "length"; readonly mm: number }
	| { readonly name: string; readonly kind: "angle"; readonly degrees: number };

/** What is being typed, for fields that show it. */
export interface Entry {
	readonly field: EntryField;
	readonly run: string;
	readonly angle: string;
	/** Why Enter would not do; "" where it would. */
	readonly trouble: string;
	/** False for the first wall, which makes no angle. */
	readonly hasAngle: boolean;
}

/** One tool: a small machine whose state is plain data. */
export interface Tool<State> {
	readonly start: State;
	on(state: State, event: ToolEvent, world: World): Answer<State>;
	sketch?(state: State, world: World): Sketch | null;
	/** Present while something can be typed. */
	entry?(state: State, world: World): Entry | null;
	/** A drag takes hold of whatever it starts on, empty sheet too. */
	readonly dragsAnywhere: boolean;
}

export const NO_SKETCH: Sketch = { guides: [], lines: [], points: [], figures: [] };
