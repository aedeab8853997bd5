import { type Bay, type Reading, USUAL_SD } from "@baywright/setout";

/** The bay with one more reading, the last of its list. */
export const withReading = (bay: Bay, reading: Reading): Bay => ({ ...bay, readings: [...bay.readings, reading] });

/** The bay without reading `index`. */
export const withoutReading = (bay: Bay, index: number): Bay => ({
	...bay,
	readings: bay.readings.filter((_, i) => i !== index),
});

/** Reading `index` with twice its standard deviation, so that it counts a quarter of what it did; from the kind's usual one where none was set. */
export const loosened = (bay: Bay, index: number): Bay =>
	withOther(bay, index, (reading) => ({ ...reading, sd: 2 * (reading.sd ?? USUAL_SD[reading.kind]) }));

/** Reading `index` as it was read again: `value` mm, or degrees where it is an angle. How sure it is stays. */
export const takenAgain = (bay: Bay, index: number, value: number): Bay =>
	withOther(bay, index, (reading) => ({ ...reading, value }));

const withOther = (bay: Bay, index: number, other: (reading: Reading) => Reading): Bay => ({
	...bay,
	readings: bay.readings.map((reading, i) => (i === index ? other(reading) : reading)),
});
