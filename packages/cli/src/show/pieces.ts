import {
	AT_95,
	type BayPlan,
	bendName,
	bentAt,
	cutAnswer,
	formatLength,
	type Mark,
	type MarkKind,
	type Piece,
	wallName,
} from "@baywright/setout";
import { figures, table, words } from "../text/table.ts";
import { wrap } from "../text/wrap.ts";
import type { Lengths } from "./lengths.ts";
import { section } from "./section.ts";

/** Each piece with its cut length first, and the marks on its strip. */
export function piecesText(plan: BayPlan, lengths: Lengths): string[] {
	return plan.pieces.flatMap((piece) => pieceText(piece, plan, lengths));
}

function pieceText(piece: Piece, plan: BayPlan, { fine, figure, unit }: Lengths): string[] {
	const rows = piece.marks.map((mark) => [markName(mark, plan, figure), figure(mark.fromLeft), figure(mark.fromRight)]);
	return section(`Piece ${piece.name}: CUT ${fine(piece.cutLength)}   ${uncertainty(piece, fine)}`, [
		`  Finished length ${fine(piece.finishedLength)}${takeUp(piece, fine)}`,
		...cutAlready(piece, plan, unit),
		"  Marks on the strip, taped from this piece's own cut ends",
		...table([words("mark"), figures("from left\ncut end"), figures("from right\ncut end")], rows),
	]);
}

/** What becomes of a piece that is cut already. */
const cutAlready = ({ name }: Piece, { fitted }: BayPlan, unit: Lengths["unit"]): string[] =>
	(fitted?.cut ?? [])
		.filter(({ piece }) => piece === name)
		.flatMap((cut) =>
			wrap(`Cut to ${formatLength(cut.cut, unit, { unit: true })}: ${cutAnswer(cut, unit)}`, { indent: "  " }),
		);

const uncertainty = ({ sd }: Piece, fine: Lengths["fine"]): string =>
	sd === null ? "± not known until the bay is taped" : `± ${fine(AT_95 * sd)} (95 %)`;

function takeUp({ finishedLength, cutLength }: Piece, fine: Lengths["fine"]): string {
	const taken = finishedLength - cutLength;
	return taken === 0 ? "" : `, of which end hardware makes up ${fine(taken)}`;
}

type BendMark = Exclude<MarkKind, "bracket" | "joint">;

const BEND_MARKS: Readonly<Record<BendMark, string>> = {
	"bend-start": "bend starts",
	"bend-middle": "middle of bend",
	"bend-end": "bend ends",
};

function markName(mark: Mark, plan: BayPlan, figure: Lengths["figure"]): string {
	const { kind, of } = mark;
	if (kind === "bracket") return `bracket ${of + 1}`;
	if (kind === "joint") return `joint ${of + 1}`;
	const bent = bentAt(mark, plan);
	const walls = plan.projections.length;
	if (bent === null || bent.wall === null) return `${BEND_MARKS[kind]}, ${bendName(bent?.corners ?? [of], walls)}`;
	return `${bowMark(kind, wallName(bent.wall, walls))}, R ${figure(bent.radius)}`;
}

const bowMark = (kind: BendMark, wall: string): string =>
	kind === "bend-middle" ? `middle of bow, ${wall}` : `bow of ${wall} ${kind === "bend-start" ? "starts" : "ends"}`;
