import { expect, test } from "vitest";
import { dubins } from "../../oracles/dubins.ts";

/** The oracle itself, against paths that can be laid out by hand. */
test.each([
	{ name: "straight on", to: [1000, 0, 0], radius: 200, length: 1000 },
	{ name: "a quarter turn left at the end", to: [800, 200, 90], radius: 200, length: 600 + 100 * Math.PI },
	{ name: "half a turn right on the spot it takes", to: [0, -400, 180], radius: 200, length: 200 * Math.PI },
	{ name: "aside by a diameter and back in line", to: [400, 400, 0], radius: 200, length: 200 * Math.PI },
	// Three circles that touch: two of 60° outside and one of 300° between, for a turn about on the spot.
	{ name: "about on the spot", to: [0, 0, 180], radius: 100, length: (100 * 7 * Math.PI) / 3 },
	// To the right of where it stands by 3 radii and facing back: right, straight, right.
	{ name: "back three radii aside", to: [0, -600, 180], radius: 200, length: 200 * Math.PI + 200 },
])("the shortest path of least radius: $name", ({ to: [x, y, heading], radius, length }) => {
	const end = { x: x as number, y: y as number, heading: ((heading as number) * Math.PI) / 180 };
	expect(dubins({ x: 0, y: 0, heading: 0 }, end, radius)).toBeCloseTo(length, 6);
});
