import type { Cloth } from "../library/cloth.ts";
import { type Heading, USUAL_HEADINGS } from "../library/heading.ts";
import type { TrackSystem } from "../library/system.ts";
import { roundUp } from "./cutting.ts";

/** How far a packed curtain's layers spring apart, in times their thickness, and what a glider takes along the track, mm (common practice, no source). */
const SPRING = 3;
const GLIDER = 8;

/** Track (mm) that so much flat cloth takes up drawn back: by the cloth's or the system's packing, else as usual for the heading, or more where its folds lie thicker. */
export function stackLength(
	flatWidth: number,
	heading: Heading,
	fold: number,
	gliders: number,
	cloth: Cloth | null,
	system: TrackSystem,
): number {
	const given = cloth?.packing[heading] ?? system.packing[heading];
	if (given !== undefined) return (flatWidth * given) / 1000;
	const usual = (flatWidth * USUAL_HEADINGS[heading].packing) / 1000;
	const thick = cloth?.thickness ?? null;
	if (thick === null || fold === 0) return usual;
	const layers = flatWidth / fold;
	return Math.max(usual, layers * SPRING * (thick + (cloth?.lining?.thickness ?? 0)), gliders * GLIDER);
}

/** Between hooks along the drawn curtain, mm. */
export const hookSpacing = (heading: Heading, { gliderSpacing }: TrackSystem): number =>
	USUAL_HEADINGS[heading].hookSpacing ?? gliderSpacing;

/** Gliders of a curtain on so much track: one at either edge and none further apart than its hooks. */
export const glidersOf = (stretch: number, spacing: number): number =>
	stretch <= 0 ? 0 : Math.max(1, roundUp(stretch / spacing)) + 1;

/** Front to back of a drawn curtain's folds, mm, as straight zigzags between hooks; 0 where it has no more cloth than track. */
export const foldDepth = (spacing: number, fullness: number): number =>
	fullness <= 1 ? 0 : spacing * Math.sqrt(fullness * fullness - 1);
