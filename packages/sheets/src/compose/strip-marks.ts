import { type BayPlan, bendName, bentAt, type Piece, type Mark as StripMark, wallName } from "@baywright/setout";
import { SIZES } from "../lettering/measure.ts";
import type { Mark } from "../paper/drawing.ts";
import { line, rectangle, text } from "../paper/marks.ts";
import { at, boxAt } from "../paper/place.ts";

/** Between two figures that stand side by side on end, and the slant of the lines to them, mm. */
export const PITCH = 4.1;
export const SLANT = 6;

/** Tint where the track is bent. */
export function bentParts(
	{ marks }: Piece,
	row: { readonly to: number },
	along: (mm: number) => number,
	{ top, bottom }: { readonly top: number; readonly bottom: number },
): Mark[] {
	return marks.flatMap((mark, i): Mark[] => {
		if (mark.kind !== "bend-start") return [];
		const end = marks.slice(i).find(({ kind, of, bow }) => kind === "bend-end" && of === mark.of && bow === mark.bow);
		const [from, to] = [along(mark.fromLeft), along(end?.fromLeft ?? mark.fromLeft)];
		if (!(to > from) || mark.fromLeft >= row.to) return [];
		return [rectangle("STACK", boxAt(from, top, to - from, bottom - top), { fill: "tint" })];
	});
}

/** A mark across the strip, and what is read of it from either cut end, on end beside one another. */
export function markItems(
	kind: StripMark["kind"],
	x: number,
	figureX: number,
	[above, below]: readonly [string, string],
	{ top, bottom, past }: { readonly top: number; readonly bottom: number; readonly past: number },
): Mark[] {
	const isBend = kind.startsWith("bend");
	const pen =
		kind === "bend-middle"
			? ({ pen: "narrow", dash: "dashed" } as const)
			: ({ pen: isBend || kind === "joint" ? "wide" : "narrow" } as const);
	const leader = { pen: "narrow", ink: "grey" } as const;
	const half = SIZES.usual / 2;
	const style = { height: SIZES.usual, turn: Math.PI / 2, bold: isBend };
	const [over, under] = [top - past, bottom + past];
	return [
		line(isBend ? "CUTS" : "BRACKETS", at(x, over), at(x, under), pen),
		line("DIMENSIONS", at(x, over), at(figureX, over - SLANT + 1), leader),
		line("DIMENSIONS", at(x, under), at(figureX, under + SLANT - 1), leader),
		text(at(figureX + half, over - SLANT), above, style),
		text(at(figureX + half, under + SLANT), below, { ...style, align: "right" }),
	];
}

const BEND_WORDS = { "bend-start": "bend starts", "bend-middle": "middle of bend", "bend-end": "bend ends" } as const;

/** What a mark on a strip is called. */
export function markName(mark: StripMark, plan: BayPlan): string {
	if (mark.kind === "bracket") return `bracket ${mark.of + 1}`;
	if (mark.kind === "joint") return `joint ${mark.of + 1}`;
	const bent = bentAt(mark, plan);
	const walls = plan.projections.length;
	if (bent === null || bent.wall === null)
		return `${BEND_WORDS[mark.kind]}, ${bendName(bent?.corners ?? [mark.of], walls)}`;
	const wall = wallName(bent.wall, walls);
	if (mark.kind === "bend-middle") return `middle of bow, ${wall}`;
	return `bow of ${wall} ${mark.kind === "bend-start" ? "starts" : "ends"}`;
}
