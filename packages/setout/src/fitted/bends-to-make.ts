import type { Bend, Bow, TrackPath } from "@baywright/geometry";
import type { Piece } from "../bay-plan.ts";
import type { TrackSystem } from "../library/system.ts";

/** Bends that somebody makes, left to right; slight turns spring by themselves. On site they are "bend-1", "bend-2", … */
export const bendsToMake = ({ segments }: TrackPath): Bend[] =>
	segments.filter((each): each is Bend => each.kind === "bend" && !each.sprung);

/** Bows that the track is bent along, left to right: "bow-1", "bow-2", … */
export const bowsToMake = ({ segments }: TrackPath): Bow[] =>
	segments.filter((each): each is Bow => each.kind === "bow");

/** Where a bend lies on its piece, mm from the piece's left cut end. */
export interface OnPiece {
	readonly piece: string;
	readonly start: number;
	readonly middle: number;
}

/** mm; a bend that starts at a joint is the next piece's. */
const SLACK = 1e-6;

/** The piece that a bend starts on; what lies under end hardware is not bent. Null where nothing of it is. */
export function onPiece(
	{ start, length }: Pick<Bend, "start" | "length">,
	pieces: readonly Piece[],
	{ endTakeUp }: TrackSystem,
): OnPiece | null {
	const from = Math.max(start, endTakeUp);
	const to = Math.min(start + length, (pieces.at(-1)?.to ?? 0) - endTakeUp);
	const piece = pieces.find((each) => from < each.to - SLACK);
	if (piece === undefined || from >= to) return null;
	const left = piece === pieces[0] ? endTakeUp : piece.from;
	return { piece: piece.name, start: from - left, middle: (from + to) / 2 - left };
}
