import { distance } from "@baywright/geometry";
import type { Bay } from "../job/bay-schema.ts";
import type { Reading } from "../job/reading-schema.ts";

type RiseReading = Extract<Reading, { kind: "rise" }>;

/** One standard deviation of a rise taped without saying how sure it is, mm (common practice, no source). */
const USUAL_SD = 1;

/** Steps of the adjustment, and the rise (mm) that a step may still move when it ends. */
const STEPS = 30;
const SETTLED = 1e-9;

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

/** Gauss–Newton on the one unknown, from the rise that a parabola would have. */
export function fitRise(
	chord: number,
	taped: readonly { readonly at: number | null; readonly value: number; readonly sd: number | null }[],
): number {
	const most = chord / 2;
	const points = taped.map(({ at, value, sd }) => ({ at, value, weight: 1 / (sd ?? USUAL_SD) ** 2 }));
	let rise = clamp(
		weighted(points, ({ at, value, weight }) => {
			const along = at === null ? 0.5 : at / chord;
			const shape = 4 * along * (1 - along);
			return [weight * shape * value, weight * shape * shape];
		}),
		most,
	);
	for (let i = 0; i < STEPS; i++) {
		const nudge = 1e-6 * chord;
		const step = weighted(points, ({ at, value, weight }) => {
			const off = offChord(chord, rise, at);
			const slope = (offChord(chord, rise + nudge, at) - off) / nudge;
			return [weight * slope * (value - off), weight * slope * slope];
		});
		const next = clamp(rise + step, most);
		if (Math.abs(next - rise) < SETTLED) return next;
		rise = next;
	}
	return rise;
}

/** How far the face stands off its chord `at` mm along the face; null = mid-chord. */
function offChord(chord: number, rise: number, at: number | null): number {
	if (at === null || Math.abs(rise) < 1e-9) return at === null ? rise : (4 * rise * at * (chord - at)) / chord ** 2;
	const deep = Math.abs(rise);
	const radius = (chord * chord) / (8 * deep) + deep / 2;
	const half = 2 * Math.atan((2 * deep) / chord);
	return Math.sign(rise) * (radius * Math.cos(half - at / radius) - (radius - deep));
}

function weighted<Point>(points: readonly Point[], terms: (point: Point) => readonly [number, number]): number {
	const sums = points.map(terms).reduce(([a, b], [c, d]) => [a + c, b + d], [0, 0]);
	return sums[1] > 0 ? sums[0] / sums[1] : 0;
}

const clamp = (rise: number, most: number): number => Math.min(Math.max(rise, -most), most);
