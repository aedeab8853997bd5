import { roundUp } from "../curtains/cutting.ts";
import type { Spare } from "../library/spare.ts";
import type { Part, PartKind } from "./part.ts";

/** What is sold by the metre is ordered to the tenth of one. */
const TENTHS = 10;

const SPARED: Readonly<Partial<Record<PartKind, keyof Spare>>> = {
	bracket: "brackets",
	"ceiling-bracket": "brackets",
	"joint-bracket": "brackets",
	"bracket-base": "brackets",
	glider: "gliders",
	hook: "gliders",
	screw: "fixings",
	plug: "fixings",
	"board-fixing": "fixings",
	"fixing-by-trial": "fixings",
	cord: "cord",
	cloth: "cloth",
	lining: "cloth",
	"heading-tape": "cloth",
};

/** So much of a part as is ordered on top of `quantity`, in its own unit, rounded up. */
export function spareOf({ kind, unit }: Pick<Part, "kind" | "unit">, quantity: number | null, spare: Spare): number {
	const share = SPARED[kind];
	if (share === undefined || quantity === null) return 0;
	const more = (quantity * spare[share]) / 100;
	return unit === "m" ? metresUp(more) : roundUp(more);
}

/** Metres rounded up to the tenth. */
export const metresUp = (metres: number): number => roundUp(metres * TENTHS) / TENTHS;
