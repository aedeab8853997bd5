import type { BayPlan } from "../bay-plan.ts";
import type { Part, PartKind, PartSource } from "./part.ts";

/** A part before its spare is added. */
export type Counted = Omit<Part, "spare">;

/** What a plan is counted from. */
export type ToCount = Pick<
	BayPlan,
	"system" | "path" | "brackets" | "fixings" | "joints" | "stock" | "curtains" | "cords"
>;

/** The bay's own curtains among those that hang, each once though it parts in two. */
export const curtainPlaces = (curtains: ToCount["curtains"]): number[] => [
	...new Set(curtains.flatMap(({ curtain }) => (curtain === null ? [] : [curtain]))),
];

/** What is counted by the piece. */
export const piece = (
	kind: PartKind,
	system: string | null,
	quantity: number,
	from: readonly PartSource[],
	figures: Part["figures"] = {},
	size: number | null = null,
): Counted => ({ kind, item: ITEMS[kind], system, quantity, unit: "piece", size, from, figures });

/** Names by which a price list knows what has only one name. */
const ITEMS: Readonly<Record<PartKind, string>> = {
	track: "track",
	bracket: "bracket",
	"ceiling-bracket": "ceiling bracket",
	"joint-bracket": "joint bracket",
	"bracket-base": "bracket base",
	joint: "joint",
	"end-stop": "end stop",
	"end-pulley": "end pulley",
	glider: "glider",
	"master-carrier": "master carrier",
	cord: "cord",
	tensioner: "cord tensioner",
	screw: "screw",
	plug: "plug",
	"board-fixing": "board fixing",
	"fixing-by-trial": "fixing by trial hole",
	cloth: "cloth",
	lining: "lining",
	"heading-tape": "heading tape",
	hook: "hook",
};
