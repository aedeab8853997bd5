import type { Finding, Remedy } from "../finding/finding.ts";
import type { Bay } from "../job/bay-schema.ts";
import { moveEnd } from "../track/remedies.ts";
import { endsOf } from "../track/track-rule.ts";
import { type AsFitted, type CutPiece, SAWN_TO } from "./as-fitted.ts";
import { bentSoFar } from "./describe-fitted.ts";

/** Brackets of one wall that differ by no more (mm) are in line: the track takes it up (common practice, no source). */
const IN_LINE = 3;

/** What of the fitted and the cut does not go with the plan. Remedies of the cut pieces are still to be tried. */
export function fittedFindings(bay: Bay, fitted: AsFitted | null, names: readonly string[]): Finding[] {
	if (fitted === null) return [];
	return [
		...fitted.walls
			.filter(({ least, greatest }) => greatest - least > IN_LINE)
			.map(
				({ wall, least, greatest, mean }): Finding => ({
					code: "bracket-off-projection",
					where: { wall },
					figures: { least, greatest, mean },
					remedies: [],
				}),
			),
		...fitted.cut.flatMap(cutFinding),
		...bay.fitted.cut.flatMap(({ piece, length }, index): Finding[] =>
			names.includes(piece)
				? []
				: [{ code: "piece-not-in-plan", where: { piece }, figures: { length }, remedies: [forgetCut(index, piece)] }],
		),
	];
}

function cutFinding({ piece, cut, needed, verdict, play, bends, bent }: CutPiece): Finding[] {
	if (verdict === "fits") return [];
	if (verdict === "bends-apart" && bent?.between) {
		const { first, last, by } = bent.between;
		return [{ code: "cut-piece-bends-apart", where: { piece }, figures: { first, last, by }, remedies: [] }];
	}
	const ends = bent === null ? {} : { leftOver: bent.left, rightOver: bent.right };
	const figures = { cut, needed, left: play.left, right: play.right, bent: bentSoFar(bends), ...ends };
	const code = verdict === "long" ? "cut-piece-too-long" : "cut-piece-too-short";
	return [{ code, where: { piece }, figures, remedies: [] }];
}

const forgetCut = (index: number, piece: string): Remedy => ({
	action: "forget-cut",
	figures: { piece },
	change: [{ op: "remove", path: `/fitted/cut/${index}` }],
});

/** Where the ends of the track may stand so that a piece cut too short still hangs: at one end all of it, whole mm. */
export function endsForShortPiece({ figures }: Finding, bay: Bay, lengths: readonly number[]): Remedy[] {
	const { start, end } = endsOf(bay, lengths);
	const [atLeft, atRight] = missing(figures).map(Math.ceil) as [number, number];
	return [
		...(atLeft > 0 && atLeft <= Number(figures.left)
			? [moveEnd("left", start.wall, Math.round(start.at) + atLeft)]
			: []),
		...(atRight > 0 && atRight <= Number(figures.right)
			? [moveEnd("right", end.wall, Math.round(end.at) - atRight)]
			: []),
	];
}

/** What a piece lacks at its left and right end, mm: at either one the whole of it, until its bends say at which. */
function missing({ cut, needed, leftOver, rightOver }: Finding["figures"]): readonly [number, number] {
	if (leftOver === undefined) return [Number(needed) - Number(cut), Number(needed) - Number(cut)];
	return [leftOver, rightOver].map((over) => (Number(over) < -SAWN_TO ? -Number(over) : 0)) as [number, number];
}

/** Remedies for pins that are only the brackets already there lead nowhere: the pin is no entry of the track's list. */
export function ofOwnPins(findings: readonly Finding[], own: number): Finding[] {
	const isOwn = ({ path }: { readonly path: string }) => {
		const [, index] = /^\/track\/brackets\/(\d+)/.exec(path) ?? [];
		return index === undefined || Number(index) < own;
	};
	return findings.map((finding) => ({
		...finding,
		remedies: finding.remedies.filter(({ change }) => change.every(isOwn)),
	}));
}
