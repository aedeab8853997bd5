import { appendWall, emptyBay, plainBay } from "@baywright/editor";
import type { Bay } from "@baywright/setout";
import fc from "fast-check";
import { expect, test } from "vitest";

/** Run of the last (or first) wall and the room angle that it makes, degrees, from the corners alone by the law of cosines. */
function taped({ corners }: Bay, end: "left" | "right") {
	const [far, pivot, near] = end === "right" ? corners.slice(-3).reverse() : corners.slice(0, 3);
	if (!far || !pivot || !near) throw new Error("three corners are needed");
	const run = Math.hypot(far[0] - pivot[0], far[1] - pivot[1]);
	const [a, b] = [far, near].map(([x, y]) => [x - pivot[0], y - pivot[1]] as const) as [
		readonly [number, number],
		readonly [number, number],
	];
	const between = Math.acos((a[0] * b[0] + a[1] * b[1]) / Math.hypot(...a) / Math.hypot(...b)) * (180 / Math.PI);
	// The room is on the right of travel: an external corner turns to the left.
	const cross = a[0] * b[1] - a[1] * b[0];
	const internal = end === "right" ? cross < 0 : cross > 0;
	return { run, angle: internal ? between : 360 - between };
}

test("a bay typed run, angle, run is the bay that was taped", () => {
	const bay = [
		[900, 0],
		[1800, 135],
		[900, 135],
	].reduce((on, [run, angle]) => appendWall(on, "right", run as number, angle as number), emptyBay());
	expect(bay.walls).toHaveLength(3);
	const [first, second] = bay.corners;
	expect([first, second]).toEqual([
		[0, 0],
		[0, 900],
	]);
	expect(taped(bay, "right").run).toBeCloseTo(900, 2);
	expect(taped(bay, "right").angle).toBeCloseTo(135, 3);
	expect(taped(bay, "left").angle).toBeCloseTo(135, 3);
});

test("a wall added at either end has the run and the angle typed", () => {
	fc.assert(
		fc.property(
			fc.double({ min: 200, max: 4000, noNaN: true }),
			fc.double({ min: 30, max: 330, noNaN: true }).filter((angle) => Math.abs(angle - 180) > 1),
			fc.constantFrom("left" as const, "right" as const),
			(run, angle, end) => {
				const bay = appendWall(plainBay("splayed"), end, run, angle);
				const back = taped(bay, end);
				expect(back.run).toBeCloseTo(run, 2);
				expect(Math.abs(back.angle - angle)).toBeLessThan(0.001);
			},
		),
		{ seed: 2611 },
	);
});

test("what stands on the walls stays on them when a wall comes before", () => {
	const bay = appendWall(plainBay("square"), "left", 500, 135);
	expect(bay.openings).toEqual([{ wall: 2, from: 150, to: 1650, sill: 600, head: 2050, sillDepth: 0 }]);
});

test("typed at a taped bay, run and angle are readings, whichever end it goes to; nothing is at a drawn one", () => {
	const bay = { ...plainBay("square"), readings: [{ kind: "run", wall: 0, value: 700, sd: null }] } as Bay;
	expect(appendWall(bay, "right", 500, 135).readings).toEqual([
		{ kind: "run", wall: 0, value: 700, sd: null },
		{ kind: "run", wall: 3, value: 500, sd: null },
		{ kind: "angle", corner: 3, value: 135, sd: null },
	]);
	expect(appendWall(bay, "left", 500, 135).readings).toEqual([
		{ kind: "run", wall: 1, value: 700, sd: null },
		{ kind: "run", wall: 0, value: 500, sd: null },
		{ kind: "angle", corner: 1, value: 135, sd: null },
	]);
	expect(appendWall(plainBay("square"), "right", 500, 135).readings).toEqual([]);
});
