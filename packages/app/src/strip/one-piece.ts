import type { Selection } from "@baywright/editor";
import type { BayPlan, Mark } from "@baywright/setout";

/** With more pieces than this side by side none can be read: the strip shows one at a time. */
const MOST_TOGETHER = 4;

/** Index of the piece that the strip shows alone, as near to `wanted` as there is one; null while it shows all. */
export function aloneOf({ pieces }: Pick<BayPlan, "pieces">, wanted: number): number | null {
	return pieces.length > MOST_TOGETHER ? Math.max(0, Math.min(pieces.length - 1, wanted)) : null;
}

/** The plan with that piece alone, for the strip to lay out. */
export function withPiece(plan: BayPlan, alone: number | null): BayPlan {
	const piece = alone === null ? undefined : plan.pieces[alone];
	return piece === undefined ? plan : { ...plan, pieces: [piece] };
}

/** The piece on which the chosen thing lies; null where it is on none. Of two that meet in a joint, the left. */
export function pieceOf({ pieces }: Pick<BayPlan, "pieces">, chosen: Selection | null): number | null {
	if (chosen === null) return null;
	if (chosen.kind === "piece" || chosen.kind === "joint") return chosen.index;
	const kind = MARK_OF[chosen.kind];
	const bow = chosen.kind === "bow";
	const piece = pieces.findIndex(({ marks }) =>
		marks.some((mark) => mark.kind === kind && mark.bow === bow && mark.of === chosen.index),
	);
	return piece < 0 ? null : piece;
}

/** The mark by which a piece is told to carry it. */
const MARK_OF: Partial<Record<Selection["kind"], Mark["kind"]>> = {
	bracket: "bracket",
	bend: "bend-start",
	bow: "bend-start",
	corner: "bend-start",
};
