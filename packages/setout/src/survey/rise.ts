import { distance } from "@baywright/geometry";
import type { Bay } from "../job/bay-schema.ts";
import type { Reading } from "../job/reading-schema.ts";

type RiseReading = Extract<Reading, { kind: "rise" }>;

/** One standard deviation of a rise taped without saying how sure it is, mm (common practice, no source). */
const USUAL_SD = 1;

/** Rises tried from a straight wall to a half circle before the best is narrowed down, and rounds of that. */
const TRIES = 200;
const ROUNDS = 80;

/**
 * The rise of each wall, mm: where it was taped, at mid-chord or at several stations, the arc through both corners that fits the readings
 * best (least squares, each at its own weight); else as drawn.
 */
export function risesOf({ corners, walls, readings }: Bay): number[] {
	return walls.map(({ rise }, wall) => {
		const taped = readings.filter(
			(reading): reading is RiseReading => reading.kind === "rise" && reading.wall === wall,
		);
		const [left, right] = [corners[wall], corners[wall + 1]];
		if (taped.length === 0 || left === undefined || right === undefined) return rise;
		const chord = distance({ x: left[0], y: left[1] }, { x: right[0], y: right[1] });
		return chord > 0 ? fitRise(chord, taped) : rise;
	});
}

/**
 * Least squares on the one unknown: the flattest of the best among rises tried on the side that the readings lie on, narrowed down by
 * golden section. A deep bow can pass a place near its end at two rises, so a descent from anywhere might find the wrong one.
 */
export function fitRise(
	chord: number,
	taped: readonly { readonly at: number | null; readonly value: number; readonly sd: number | null }[],
): number {
	const points = taped.map(({ at, value, sd }) => ({ at, value, weight: 1 / (sd ?? USUAL_SD) ** 2 }));
	const side = Math.sign(points.reduce((sum, { value, weight }) => sum + weight * value, 0));
	const misfit = (rise: number) =>
		points.reduce((sum, { at, value, weight }) => sum + weight * (offChord(chord, side * rise, at) - value) ** 2, 0);
	const step = chord / 2 / TRIES;
	let best = 0;
	for (let i = 1; i <= TRIES; i++) if (misfit(i * step) < misfit(best * step) - 1e-9) best = i;
	return side * narrowed(misfit, Math.max(0, best - 1) * step, Math.min(TRIES, best + 1) * step);
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Where a function is least between two places, if it falls and then rises between them. */
function narrowed(of: (x: number) => number, from: number, to: number): number {
	let low = from;
	let high = to;
	for (let i = 0; i < ROUNDS; i++) {
		const left = high - GOLDEN * (high - low);
		const right = low + GOLDEN * (high - low);
		if (of(left) <= of(right)) high = right;
		else low = left;
	}
	return (low + high) / 2;
}

/** How far the face stands off its chord `at` mm along the face; null = mid-chord. */
function offChord(chord: number, rise: number, at: number | null): number {
	if (at === null || Math.abs(rise) < 1e-9) return at === null ? rise : (4 * rise * at * (chord - at)) / chord ** 2;
	const deep = Math.abs(rise);
	const radius = (chord * chord) / (8 * deep) + deep / 2;
	const half = 2 * Math.atan((2 * deep) / chord);
	return Math.sign(rise) * (radius * Math.cos(half - at / radius) - (radius - deep));
}
