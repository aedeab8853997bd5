import { type BayPlan, bendName, bentAt, type Mark, type Piece, wallName } from "@baywright/setout";

export type CutEnd = "left" | "right";

/** One line of a piece laid along a tape. */
export interface StripReading {
	/** From the cut end the tape is held at, mm. */
	readonly mm: number;
	readonly kind: Mark["kind"];
	/** What is there. */
	readonly words: string;
	/** On a bend or a bow, beyond this mark. */
	readonly bent: boolean;
}

/** Marks nearer to a cut end than this (mm) are that end's own. */
const AT_END = 0.5;

/** Every mark of a piece as a tape from one of its cut ends meets it; those at the very ends are left to the ends. */
export function stripReadings(plan: BayPlan, piece: Piece, from: CutEnd): readonly StripReading[] {
	const far = (mark: Mark) => (from === "left" ? mark.fromLeft : mark.fromRight);
	const between = piece.marks.filter(
		({ kind, fromLeft, fromRight }) =>
			(kind !== "joint" && kind !== "bracket") || (fromLeft > AT_END && fromRight > AT_END),
	);
	const along = from === "left" ? between : between.toReversed();
	let bent = false;
	return along.map((mark) => {
		const kind = seenFrom(mark.kind, from);
		if (kind === "bend-start") bent = true;
		if (kind === "bend-end") bent = false;
		return { mm: Math.max(0, far(mark)), kind, words: wordsOf(mark, kind, plan), bent };
	});
}

/** Taped from the right, a bend starts where it ends from the left. */
function seenFrom(kind: Mark["kind"], from: CutEnd): Mark["kind"] {
	if (from === "left") return kind;
	if (kind === "bend-start") return "bend-end";
	return kind === "bend-end" ? "bend-start" : kind;
}

function wordsOf(mark: Mark, kind: Mark["kind"], plan: BayPlan): string {
	if (kind === "bracket") return `bracket ${mark.of + 1}`;
	if (kind === "joint") return `joint ${mark.of + 1}`;
	const bent = bentAt(mark, plan);
	const walls = plan.projections.length;
	const what = bent === null || bent.wall === null ? "bend" : "bow";
	const where =
		bent === null || bent.wall === null ? bendName(bent?.corners ?? [mark.of], walls) : wallName(bent.wall, walls);
	if (kind === "bend-middle") return `middle of ${what}, ${where}`;
	return `${what} ${kind === "bend-start" ? "starts" : "ends"}, ${where}`;
}

/** The joint at an end of a piece; null at an end of the track. */
export function jointAt(piece: Piece, end: CutEnd): number | null {
	const at = piece.marks.find(
		({ kind, fromLeft, fromRight }) => kind === "joint" && (end === "left" ? fromLeft : fromRight) < AT_END,
	);
	return at === undefined ? null : at.of;
}
