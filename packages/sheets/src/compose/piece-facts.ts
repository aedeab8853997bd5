import { AT_95, capital, type Piece } from "@baywright/setout";
import type { Entry } from "../paper/words.ts";
import { refusedEntries } from "./refused.ts";
import type { SheetOf } from "./sheet-of.ts";
import { takenUp } from "./strip-rows.ts";

/** What a piece is, before it is marked. */
export function pieceFacts(of: SheetOf, piece: Piece): Entry[] {
	const { plan, fine } = of;
	const { cutLength, finishedLength, sd } = piece;
	const unsure = plan.survey === null ? "nothing is taped, so its ± is not known" : "its ± is not worked out";
	const sure = sd === null ? unsure : `± ${fine(AT_95 * sd)} at 95 %`;
	const [left, right] = takenUp(plan, piece);
	const ends = [
		...(left > 0 ? [`${fine(left)} at its left end`] : []),
		...(right > 0 ? [`${fine(right)} at its right end`] : []),
	];
	const taken = ends.length === 0 ? "" : `; end hardware takes up ${ends.join(" and ")}`;
	return [
		...refusedEntries(of, "cut"),
		{
			sign: "none",
			lead: `Cut length ${fine(cutLength)}`,
			text: `${capital(sure)}. Finished length ${fine(finishedLength)}${taken}.`,
		},
		{
			sign: "none",
			text: "Left and right as seen from the room. Every figure is taped from a cut end of this piece, never from the end of the track; both readings of a mark give the same place.",
		},
	];
}
