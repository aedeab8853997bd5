import type { ScreenPoint, Selection } from "@baywright/editor";
import { bendsOf, isBendOf } from "./bends.ts";
import type { StripLayout } from "./layout.ts";
import { endsOf, jointsOf, marksOf } from "./paint.ts";

/** px. */
const REACH = { mouse: 7, touch: 20 } as const;
const ACROSS = 18;

/** What lies under the pointer on the strip: joints and brackets before bends, bends before pieces. */
export function reachStrip(strip: StripLayout, at: ScreenPoint, pointer: keyof typeof REACH): Selection | null {
	if (Math.abs(at.top - strip.middle) > strip.measures.half + ACROSS) return null;
	const within = REACH[pointer];
	const joint = nearest(jointsOf(strip), at.left, within + 4);
	if (joint !== null) return { kind: "joint", index: joint };
	const bracket = nearest(marksOf(strip, "bracket"), at.left, within);
	if (bracket !== null) return { kind: "bracket", index: bracket };
	const bend = bendsOf(strip).find(({ left, right }) => at.left >= left - 2 && at.left <= right + 2);
	if (bend !== undefined) return { kind: bend.bow ? "bow" : "bend", index: bend.of };
	const piece = strip.plan.pieces.findIndex((it, i) => {
		const [left, right] = endsOf(strip, it, i);
		return at.left >= left - within && at.left <= right + within;
	});
	return piece < 0 ? null : { kind: "piece", index: (strip.alone ?? 0) + piece };
}

/** px of the middle of a thing on the strip; null where it is not there, or is all of a piece. */
export function leftOf(strip: StripLayout, it: Selection): number | null {
	const { kind, index } = it;
	if (kind === "bracket") return marksOf(strip, "bracket").find(({ of }) => of === index)?.left ?? null;
	if (kind === "joint") return jointsOf(strip).find(({ of }) => of === index)?.left ?? null;
	const bend = bendsOf(strip).find((each) => isBendOf(strip.plan, each, it));
	return bend === undefined ? null : (bend.centre ?? (bend.left + bend.right) / 2);
}

function nearest(
	marks: readonly { readonly of: number; readonly left: number }[],
	left: number,
	within: number,
): number | null {
	let best: number | null = null;
	let least = within;
	for (const mark of marks) {
		const away = Math.abs(mark.left - left);
		if (away > least) continue;
		best = mark.of;
		least = away;
	}
	return best;
}
