import { type Bay, readingName } from "@baywright/setout";

type Reading = Bay["readings"][number];

/** Names of the readings that hold these corners where they are, the nearest to hand first: none where nothing taped touches them. */
export function heldBy({ readings, walls }: Bay, corners: readonly number[]): string[] {
	const sorted = [...LENGTHS, ...OTHERS].flatMap((kind) =>
		readings.filter(
			(reading) => reading.kind === kind && cornersOf(reading).some((corner) => corners.includes(corner)),
		),
	);
	return [...new Set(sorted.map((reading) => readingName(reading, walls.length)))];
}

const LENGTHS = ["run", "diagonal", "square"] as const;
const OTHERS = ["angle", "chord"] as const;

/** The corners that cannot move without the reading's noticing; an angle is of three. */
function cornersOf(reading: Reading): readonly number[] {
	switch (reading.kind) {
		case "run":
			return [reading.wall, reading.wall + 1];
		case "diagonal":
			return [reading.from, reading.to];
		case "square":
			return [reading.corner, reading.wall, reading.wall + 1];
		case "angle":
		case "chord":
			return [reading.corner - 1, reading.corner, reading.corner + 1];
		default:
			return [];
	}
}
