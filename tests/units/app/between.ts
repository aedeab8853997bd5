import fc from "fast-check";

const PARTS = 1_000_000;

/** Numbers spread evenly between two limits; fast-check's own doubles crowd round 0. */
export const between = (low: number, high: number): fc.Arbitrary<number> =>
	fc.integer({ min: 0, max: PARTS }).map((part) => low + ((high - low) * part) / PARTS);
