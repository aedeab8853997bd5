import type { Cutting } from "../bay-plan.ts";
import type { MakeUp } from "../job/curtain-schema.ts";
import type { Cloth } from "../library/cloth.ts";

/** Widths, repeats and hooks by which a count may be over a whole number and still be held for it: an exact fit is not rounded up. */
const EXACT_FIT = 1e-6;

/** Rounds up, but not an exact fit. */
export const roundUp = (count: number): number => Math.ceil(count - EXACT_FIT);

/** A drop before its heading and hem are turned, mm. */
const withTurnings = (finishedDrop: number, { headingTurning, hemTurning }: MakeUp): number =>
	finishedDrop + headingTurning + hemTurning;

/** Widths of cloth for so much flat cloth (mm) and its two side turnings: whole or in halves, at least one of them. */
function widthsOf(flatWidth: number, clothWidth: number, { widths, sideTurning }: MakeUp): number {
	const parts = widths === "half" ? 2 : 1;
	return Math.max(1, roundUp((parts * (flatWidth + 2 * sideTurning)) / clothWidth)) / parts;
}

/**
 * The length along the roll (mm) that each width takes: drop and turnings, rounded up to where the next width may begin. With a straight match
 * that is a whole number of repeats. With a half drop the next width begins half a repeat on, so that it is an odd number of half repeats:
 * where the drop needs more than that of whole repeats, alternate widths lose the half, where it needs less they save it.
 */
function cutDropOf(finishedDrop: number, { repeat, match }: Cloth, widths: number, makeUp: MakeUp): number {
	const needed = withTurnings(finishedDrop, makeUp);
	if (repeat === 0) return needed;
	const repeats = needed / repeat;
	if (match === "straight" || widths <= 1) return Math.max(1, roundUp(repeats)) * repeat;
	return (Math.max(0, roundUp(repeats - 0.5)) + 0.5) * repeat;
}

/** What to cut for one curtain; `before` counts the widths of its cloth and cut drop that are cut already. */
export function cuttingOf(
	flatWidth: number,
	finishedDrop: number | null,
	cloth: Cloth,
	makeUp: MakeUp,
	before: (cutDrop: number | null) => number,
): Cutting {
	const { lining } = cloth;
	const widths = widthsOf(flatWidth, cloth.width, makeUp);
	const cutDrop = finishedDrop === null ? null : cutDropOf(finishedDrop, cloth, widths, makeUp);
	const cut = before(cutDrop);
	const lengths = roundUp(cut + widths) - roundUp(cut);
	const liningWidths = lining === null ? null : widthsOf(flatWidth, lining.width ?? cloth.width, makeUp);
	const plain = finishedDrop === null ? null : withTurnings(finishedDrop, makeUp);
	return {
		widths,
		lengths,
		finishedDrop,
		cutDrop,
		metres: cutDrop === null ? null : (lengths * cutDrop) / 1000,
		liningWidths,
		// The half left over of a lining is not counted on another curtain's.
		liningMetres: liningWidths === null || plain === null ? null : (roundUp(liningWidths) * plain) / 1000,
	};
}

/**
 * Made-up mass, kg: every width of cloth as it is cut, without what the pattern wastes, and the lining. Null where a mass or the drop is
 * not known. Areal masses g/m².
 */
export function massOf({ widths, finishedDrop, liningWidths }: Cutting, cloth: Cloth, makeUp: MakeUp): number | null {
	const { lining } = cloth;
	if (finishedDrop === null || cloth.mass === null) return null;
	const long = withTurnings(finishedDrop, makeUp);
	const face = widths * cloth.width * long * cloth.mass;
	if (lining === null || liningWidths === null) return face / GRAMS_MM2;
	if (lining.mass === null) return null;
	return (face + liningWidths * (lining.width ?? cloth.width) * long * lining.mass) / GRAMS_MM2;
}

/** g/m² times mm² in a kilogram. */
const GRAMS_MM2 = 1e9;
