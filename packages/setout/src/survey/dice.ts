/** Seeds are whole numbers from 0 to this. */
export const GREATEST_SEED = 2 ** 32 - 1;

/** Throws numbers from 0 to just under 1, the same ones for the same seed. */
export type Dice = () => number;

/** Source: mulberry32, a public-domain generator (from memory). */
export function dice(seed: number): Dice {
	let state = seed >>> 0;
	return () => {
		state = (state + 0x6d2b79f5) >>> 0;
		let mixed = Math.imul(state ^ (state >>> 15), state | 1);
		mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
	};
}

/** A seed of its own for each of many trials, so that none depends on how many throws another took. */
export const seedOf = (seed: number, trial: number): number =>
	(Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) + Math.imul(trial + 1, 0xc2b2ae35)) >>> 0;

/** Normal with deviation 1. Source: G. E. P. Box and M. E. Muller, 1958. */
export const normal = (roll: Dice): number => Math.sqrt(-2 * Math.log(1 - roll())) * Math.cos(2 * Math.PI * roll());

export const between = (roll: Dice, low: number, high: number): number => low + (high - low) * roll();
