import type { CurtainSetOut, Stretch } from "../bay-plan.ts";

/** A curtain somewhere between drawn and drawn back. mm. */
export interface CurtainPosition extends Stretch {
	/** Station of the edge that is drawn. */
	readonly leading: number;
	/** Front to back of its folds, which grow deeper as it is packed. */
	readonly foldDepth: number;
}

/** Where a curtain hangs when it is opened by a share of the way: 0 = drawn, 1 = drawn back into its stack. */
export function positionOf(
	{ side, from, to, stack, fullness, foldDepth }: CurtainSetOut,
	opened: number,
): CurtainPosition {
	const share = Math.min(1, Math.max(0, opened));
	const between = (drawn: number, back: number) => drawn + (back - drawn) * share;
	const now = { from: between(from, stack.from), to: between(to, stack.to) };
	const pitch = fullness > 1 ? foldDepth / Math.sqrt(fullness * fullness - 1) : 0;
	const spread = to > from ? (now.to - now.from) / (to - from) : 1;
	return {
		...now,
		leading: side === "left" ? now.to : now.from,
		foldDepth: pitch * Math.sqrt(Math.max(0, fullness * fullness - spread * spread)),
	};
}

/** The share by which a curtain is opened when its leading edge stands at a station; 0 where it cannot be opened. */
export function openedAt({ side, from, to, stack }: CurtainSetOut, station: number): number {
	const [drawn, back] = side === "left" ? [to, stack.to] : [from, stack.from];
	if (drawn === back) return 0;
	return Math.min(1, Math.max(0, (station - drawn) / (back - drawn)));
}
