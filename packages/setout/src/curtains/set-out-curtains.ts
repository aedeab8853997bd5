import type { CurtainSetOut, Cutting, Stretch } from "../bay-plan.ts";
import type { Bay } from "../job/bay-schema.ts";
import { USUAL_HEADINGS } from "../library/heading.ts";
import type { Library } from "../library/library.ts";
import type { TrackSystem } from "../library/system.ts";
import { cuttingOf, massOf } from "./cutting.ts";
import { foldDepth, glidersOf, hookSpacing, stackLength } from "./folds.ts";
import { type Hanging, hangingsOf } from "./hangings.ts";

/** Track that each stack takes up while the job says nothing of curtains, mm (common practice, no source). */
const USUAL_STACK = 150;

/** Every curtain on a track of `length` mm, left to right: where it hangs, what it takes up drawn back, and how it is made. */
export function setOutCurtains(
	bay: Bay,
	{ cloths }: Pick<Library, "cloths">,
	system: TrackSystem,
	length: number,
): CurtainSetOut[] {
	const { makeUp } = bay;
	const cut = new Map<string, number>();
	return hangingsOf(bay, length).map((hanging) => {
		const { curtain, side, from, to, made } = hanging;
		const { heading, fullness } = made;
		const cloth = cloths.find(({ id }) => id === made.cloth) ?? null;
		const finishedWidth = finishedWidthOf(hanging, makeUp);
		const flatWidth = finishedWidth * fullness;
		const spacing = hookSpacing(heading, system);
		const gliders = glidersOf(to - from, spacing);
		const fold = foldDepth(spacing, fullness);
		const wanted = curtain === null ? USUAL_STACK : stackLength(flatWidth, heading, fold, gliders, cloth, system);
		let cutting: Cutting | null = null;
		if (cloth !== null) {
			const key = (cutDrop: number | null) => `${cutDrop} ${cloth.id}`;
			cutting = cuttingOf(flatWidth, made.drop, cloth, makeUp, (cutDrop) => cut.get(key(cutDrop)) ?? 0);
			cut.set(key(cutting.cutDrop), (cut.get(key(cutting.cutDrop)) ?? 0) + cutting.widths);
		}
		return {
			curtain,
			side,
			from,
			to,
			stack: packedAt(side, from, to, wanted),
			stackWanted: wanted,
			heading,
			fullness,
			cloth: made.cloth,
			drop: made.drop,
			finishedWidth,
			flatWidth,
			gliders,
			foldDepth: fold,
			behind: fold * USUAL_HEADINGS[heading].behind,
			mass: cutting === null || cloth === null ? null : massOf(cutting, cloth, makeUp),
			cutting,
		};
	});
}

const finishedWidthOf = ({ from, to, meets, ends }: Hanging, { overlap, returns, ease }: Bay["makeUp"]): number =>
	to - from + (meets * overlap) / 2 + ends * returns + ease;

function packedAt(side: "left" | "right", from: number, to: number, wanted: number): Stretch {
	const deep = Math.min(wanted, to - from);
	return side === "left" ? { from, to: from + deep } : { from: to - deep, to };
}
