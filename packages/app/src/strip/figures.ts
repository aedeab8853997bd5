import type { Selection } from "@baywright/editor";
import { type BayPlan, formatLength, type LengthUnit, type Mark } from "@baywright/setout";
import type { Palette } from "../canvas/palette.ts";
import type { Face, Measure } from "../canvas/text.ts";
import type { PiecePlace } from "./axis.ts";
import type { RowItem } from "./rows.ts";

/** The cut end of a piece from which the strip's readings are taken. */
export type ReadFrom = "left" | "right" | "both";

/** A reading that wants to stand beside its mark. */
export interface StripFigure extends RowItem {
	readonly lines: readonly { readonly text: string; readonly face: Face; readonly colour: keyof Palette }[];
	readonly of: Selection | null;
	readonly colour: keyof Palette;
}

export interface StripFigures {
	/** Bends and bows, above the strip. */
	readonly above: readonly StripFigure[];
	/** Cut ends and brackets, below it. */
	readonly below: readonly StripFigure[];
}

/** A bracket in the middle of nothing can wait for more room; ends, joints and bends cannot. */
const IMPORTANCE = { end: 4, joint: 4, bend: 3, "bend-middle": 1, bracket: 2 } as const;

/** Readings nearer to a cut end than this (mm) are that end's own. */
const AT_END = 0.5;

/** Every reading of every piece, left to right. `place`: px of a place on a piece. */
export function stripFigures(
	{ pieces }: BayPlan,
	unit: LengthUnit,
	from: ReadFrom,
	place: (at: PiecePlace) => number,
	measure: Measure,
): StripFigures {
	const figure = (
		at: PiecePlace,
		readings: Pick<Mark, "fromLeft" | "fromRight">,
		look: {
			readonly face: Face;
			readonly colour: keyof Palette;
			readonly importance: number;
			readonly of: Selection | null;
		},
	): StripFigure => {
		const lines = readingLines(readings, from, unit).map((text, i) => ({
			text,
			face: i === 0 ? look.face : ("small" as const),
			colour: look.colour,
		}));
		const half = Math.max(...lines.map(({ text, face }) => measure(text, face))) / 2;
		return { want: place(at), half, lines, colour: look.colour, importance: look.importance, of: look.of };
	};

	const above: StripFigure[] = [];
	const below: StripFigure[] = [];
	pieces.forEach(({ cutLength, marks }, piece) => {
		const end = {
			face: "name",
			colour: "cut",
			importance: IMPORTANCE.end,
			of: { kind: "piece", index: piece },
		} as const;
		below.push(figure({ piece, mm: 0 }, { fromLeft: 0, fromRight: cutLength }, end));
		for (const mark of marks) {
			const at = { piece, mm: mark.fromLeft };
			if (mark.kind === "bracket") {
				if (mark.fromLeft < AT_END || mark.fromRight < AT_END) continue;
				const of: Selection = { kind: "bracket", index: mark.of };
				below.push(figure(at, mark, { face: "name", colour: "ink", importance: IMPORTANCE.bracket, of }));
			} else if (mark.kind !== "joint" && !isSameAs(above.at(-1)?.want, place(at))) {
				const importance = mark.kind === "bend-middle" ? IMPORTANCE["bend-middle"] : IMPORTANCE.bend;
				const face = mark.kind === "bend-middle" ? "small" : "name";
				const of: Selection = { kind: mark.bow ? "bow" : "bend", index: mark.of };
				above.push(figure(at, mark, { face, colour: "bend", importance, of }));
			}
		}
		below.push(figure({ piece, mm: cutLength }, { fromLeft: cutLength, fromRight: 0 }, end));
	});
	return { above, below };
}

/** Where a bend goes over into a bow, one ends where the other starts: that is one reading. */
const isSameAs = (before: number | undefined, here: number): boolean =>
	before !== undefined && Math.abs(here - before) < 1e-6;

function readingLines(
	{ fromLeft, fromRight }: Pick<Mark, "fromLeft" | "fromRight">,
	from: ReadFrom,
	unit: LengthUnit,
): string[] {
	const left = formatLength(Math.max(0, fromLeft), unit);
	const right = formatLength(Math.max(0, fromRight), unit);
	return from === "both" ? [left, right] : [from === "left" ? left : right];
}
