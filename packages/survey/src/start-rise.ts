import { placeByBow } from "./bow.ts";

/** Rises tried, from a straight wall to a half circle. */
const TRIES = 60;

/**
 * A rise to settle from: the flattest of those that the readings fit best, on the side that they lie on. A deep bow can pass a place
 * near its end at two rises, so a descent from anywhere might find the wrong one.
 */
export function startRise(
	chord: number,
	drawn: number,
	readings: readonly { readonly at: number | null; readonly value: number; readonly sd: number }[],
): number {
	if (!(chord > 0)) return drawn;
	if (readings.every(({ at }) => at === null)) return weightedMean(readings);
	const side = Math.sign(readings.reduce((sum, { value, sd }) => sum + value / sd ** 2, 0));
	const misfit = (rise: number) =>
		readings.reduce((sum, { at, value, sd }) => {
			const stands = at === null ? side * rise : placeByBow(chord, side * rise, at, 0).left.value;
			return sum + ((stands - value) / sd) ** 2;
		}, 0);
	let best = 0;
	for (let i = 1; i <= TRIES; i++) if (misfit((i * chord) / 2 / TRIES) < misfit((best * chord) / 2 / TRIES)) best = i;
	return (side * best * chord) / 2 / TRIES;
}

function weightedMean(readings: readonly { readonly value: number; readonly sd: number }[]): number {
	const weight = readings.reduce((sum, { sd }) => sum + 1 / sd ** 2, 0);
	return readings.reduce((sum, { value, sd }) => sum + value / sd ** 2, 0) / weight;
}
