import type { Selection } from "@baywright/editor";
import { type BayPlan, formatLength, type LengthUnit } from "@baywright/setout";
import type { Measure } from "../canvas/text.ts";
import { bentStretches } from "../canvas/track-shape.ts";
import type { StripLayout } from "./layout.ts";

/** A bend or bow, or what of it lies on one piece. px. */
export interface StripBend {
	readonly bow: boolean;
	/** Its first corner, or the bowed wall. */
	readonly of: number;
	/** mm. */
	readonly radius: number;
	readonly left: number;
	readonly right: number;
	/** Its middle; null where that lies on another piece. */
	readonly centre: number | null;
}

/** Every stretch that is bent, piece by piece, as far as there is track to bend. */
export function bendsOf({ plan, place }: Pick<StripLayout, "plan" | "place">): StripBend[] {
	const bent = bentStretches(plan);
	const { endTakeUp } = plan.system;
	const cutEnd = (plan.path?.length ?? 0) - endTakeUp;
	return plan.pieces.flatMap(({ from, cutLength }, piece) => {
		const leftCut = from === 0 ? endTakeUp : from;
		return bent.flatMap((segment): StripBend[] => {
			const start = Math.max(segment.start, endTakeUp) - leftCut;
			const end = Math.min(segment.start + segment.length, cutEnd) - leftCut;
			const left = Math.max(0, start);
			const right = Math.min(cutLength, end);
			if (left >= right) return [];
			const middle = (start + end) / 2;
			const bow = segment.kind === "bow";
			return [
				{
					bow,
					of: bow ? segment.wall : (segment.corners[0] as number),
					radius: segment.radius,
					left: place({ piece, mm: left }),
					right: place({ piece, mm: right }),
					centre: middle >= left && middle <= right ? place({ piece, mm: middle }) : null,
				},
			];
		});
	});
}

/** Whether a bend is what is chosen or pointed at; a corner means the bend that goes round it, alone or with others. */
export function isBendOf(plan: BayPlan, { bow, of }: StripBend, { kind, index }: Selection): boolean {
	if (kind === "bow") return bow && of === index;
	if (bow || (kind !== "bend" && kind !== "corner")) return false;
	const set = kind === "corner" ? plan.corners.find(({ corner }) => corner === index) : undefined;
	return of === (set?.corners[0] ?? index);
}

/** A radius written into the hatch of its bend, px. */
export interface StripRadius {
	readonly text: string;
	readonly left: number;
	readonly half: number;
}

/** px that a radius keeps from the marks to either side of it. */
const ROOM = 7;

/** The radius of each bend, in the widest gap that its middle and its brackets leave; none where that is too narrow. */
export function radiiOf(
	strip: Pick<StripLayout, "plan" | "place">,
	brackets: readonly number[],
	unit: LengthUnit,
	measure: Measure,
): StripRadius[] {
	return bendsOf(strip).flatMap(({ left, right, centre, radius }): StripRadius[] => {
		const text = `R ${formatLength(radius, unit)}`;
		const half = measure(text, "small") / 2;
		const within = brackets.filter((at) => at > left && at < right);
		const stops = [left, ...within, ...(centre === null ? [] : [centre]), right].sort((a, b) => a - b);
		let best = 0;
		for (let i = 1; i + 1 < stops.length; i++) if (gapAfter(stops, i) > gapAfter(stops, best) + 0.5) best = i;
		if (gapAfter(stops, best) < 2 * (half + ROOM)) return [];
		return [{ text, half, left: (stops[best] as number) + gapAfter(stops, best) / 2 }];
	});
}

const gapAfter = (stops: readonly number[], i: number): number => (stops[i + 1] as number) - (stops[i] as number);
