import { distance, type Point } from "@baywright/geometry";
import type { CandidateReading, SettledBay } from "./settle-bay.ts";

/** Arms of a chord are marked out in whole steps, and no longer than a rule reaches, mm (common practice, no source). */
const ARM_STEP = 50;
const LONGEST_ARM = 1000;

/** What is taken of a bare bay: anything but a span between brackets. */
export type TapedReading = Exclude<CandidateReading, { readonly kind: "span" }>;

/**
 * Everything that can be read of a bay with tape, bevel and rule, at the kinds' usual deviations: every run, diagonal and angle, at every
 * corner a chord with the longest arms that both walls have, the rise of every bowed wall. In the order in which a fitter would take them.
 */
export function candidateReadings({ corners, network }: SettledBay): TapedReading[] {
	const sd: null = null;
	const runs = corners.slice(1).map((_, wall): TapedReading => ({ kind: "run", wall, sd }));
	const diagonals = corners.flatMap((_, from) =>
		corners.slice(from + 2).map((_, i): TapedReading => ({ kind: "diagonal", from, to: from + 2 + i, sd })),
	);
	const atCorners = corners.slice(1, -1).flatMap((_, i): TapedReading[] => {
		const arm = longestArm(corners, i + 1);
		const angle: TapedReading = { kind: "angle", corner: i + 1, sd };
		return arm > 0 ? [{ kind: "chord", corner: i + 1, arm, sd }, angle] : [angle];
	});
	const rises = network.parameters.flatMap(({ fixed }, wall): TapedReading[] =>
		fixed ? [] : [{ kind: "rise", wall, at: null, sd }],
	);
	return [...runs, ...diagonals, ...atCorners, ...rises];
}

/** The longest arms that a chord at a corner between two walls may have, mm; 0 where a wall is too short for any. */
export function longestArm(corners: readonly Point[], corner: number): number {
	const at = corners[corner] as Point;
	const shortest = Math.min(distance(corners[corner - 1] as Point, at), distance(at, corners[corner + 1] as Point));
	return Math.min(LONGEST_ARM, Math.floor(shortest / ARM_STEP) * ARM_STEP);
}
