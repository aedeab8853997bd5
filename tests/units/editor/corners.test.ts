import { insertCorner, LEAST_WALL, removeCorner } from "@baywright/editor";
import type { Bay, WallPlace } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addCorner } from "../../../packages/editor/src/edits/chain.ts";
import { between } from "../app/between.ts";
import { apart, chordOf, faceOf, placesOf, pointOf } from "./places.ts";
import { bayOf, fullBay, SQUARE, valid } from "./sample-bay.ts";
import { faceAt } from "./under-point.ts";

const SEED = 4101;

/** mm: coordinates and rises are kept to 0.001; a deep bow of a short chord makes a little more of it. */
const KEPT = 0.01;

describe("a corner put into a wall", () => {
	it("of a straight wall lies on it, and each place on the wall is counted from its own corner", () => {
		const bay = fullBay();
		const after = valid(insertCorner(bay, 2, 450));
		expect(after.corners).toEqual([...bay.corners.slice(0, 3), [2050, 700], ...bay.corners.slice(3)]);
		expect(after.walls.map(({ rise }) => rise)).toEqual([0, 90, 0, 0, 0]);
		expect(after.walls.map(({ projection }) => projection)).toEqual([null, null, 45, 45, null]);
		expect(after.track.joints).toEqual([
			{ wall: 1, at: 700 },
			{ wall: 3, at: 50 },
		]);
		expect(after.track.brackets).toEqual([{ wall: 2, at: 400 }]);
		expect(after.track.bends).toEqual([
			{ corner: 1, radius: 300 },
			{ corner: 4, radius: 320 },
		]);
		expect(after.track.end).toEqual({ wall: 4, at: 700 });
		// 300 of the opening lie before the new corner, 400 after it.
		expect(after.openings.slice(1)).toMatchObject([
			{ wall: 2, from: 150, to: 450, sill: 600, head: 2050 },
			{ wall: 3, from: 0, to: 400, sill: 600, head: 2050 },
		]);
		expect(after.fitted.brackets).toEqual([{ wall: 2, planned: 380, at: 400, projection: null }]);
	});

	it("turns the run that was taped over the wall into the diagonal that it is, and counts the other readings on", () => {
		const kinds = valid(insertCorner(fullBay(), 2, 450)).readings.map(({ sd: _, ...it }) => it);
		expect(kinds).toEqual([
			{ kind: "run", wall: 0, value: 806 },
			{ kind: "diagonal", from: 2, to: 4, value: 1000 },
			{ kind: "diagonal", from: 0, to: 2, value: 1746 },
			{ kind: "angle", corner: 4, value: 120.3 },
			{ kind: "chord", corner: 4, arm: 300, value: 520 },
			{ kind: "rise", wall: 1, at: null, value: 90 },
			{ kind: "rise", wall: 1, at: 300, value: 70 },
			{ kind: "square", corner: 0, wall: 2, value: 700 },
		]);
	});

	it("of a bow makes two bows of the same circle", () => {
		const bay = fullBay();
		// c 1200, h 90: ρ = 360000/180 + 45 = 2045; the face is 2045 · 4·atan(0.15) = 1217.9.
		const rho = 2045;
		const after = valid(insertCorner(bay, 1, 300));
		const centre = { x: 1000, y: 790 - rho };
		const [x, y] = after.corners[2] as readonly [number, number];
		expect(Math.hypot(x - centre.x, y - centre.y)).toBeCloseTo(rho, 2);
		for (const wall of [1, 2]) {
			const [c, h] = [chordOf(after, wall), after.walls[wall]?.rise ?? 0];
			// The rise is kept to 0.0005; ρ ≈ c²/8h goes wrong by as much of itself as the rise does.
			expect(Math.abs(((c * c) / 4 + h * h) / (2 * h) - rho)).toBeLessThan((rho * 0.0006) / h + 0.01);
		}
		expect(faceOf(after, 1)).toBeCloseTo(300, 2);
		expect(faceOf(after, 1) + faceOf(after, 2)).toBeCloseTo(faceOf(bay, 1), 2);
		expect(after.readings.filter(({ kind }) => kind === "rise")).toEqual([]);
	});

	it("leaves a stretch without holes on both sides of it", () => {
		const after = valid(insertCorner(fullBay(), 0, 120));
		expect(after.walls[0]?.noDrill).toEqual([[100, 120]]);
		expect(after.walls[1]?.noDrill).toEqual([[0, 180]]);
	});

	it("is refused within reach of another corner or off the bay", () => {
		const bay = fullBay();
		for (const at of [LEAST_WALL - 1, 1000 - LEAST_WALL + 1, -5, 1200]) expect(insertCorner(bay, 2, at)).toBe(bay);
		expect(insertCorner(bay, 7, 100)).toBe(bay);
		expect(insertCorner(bayOf({ corners: [] }), 0, 100).corners).toEqual([]);
	});

	it("anywhere on any wall keeps the bay's shape and every place on it where it was", () => {
		const bow = fc.constantFrom(-200, -31.5, 0, 0, 12.345, 90, 260);
		fc.assert(
			fc.property(
				fc.integer({ min: 0, max: 3 }),
				between(0.03, 0.97),
				fc.tuple(bow, bow, bow, bow),
				(wall, share, rises) => {
					const full = fullBay();
					const bay = { ...full, walls: full.walls.map((it, i) => ({ ...it, rise: rises[i] ?? 0 })) } as Bay;
					const at = faceOf(bay, wall) * share;
					const after = valid(insertCorner(bay, wall, at));
					expect(after.corners).toHaveLength(6);
					for (const step of [0, 0.13, 0.5, 0.77, 1]) {
						const part = faceAt(after, wall, step);
						expect(apart(part, faceAt(bay, wall, step * share))).toBeLessThan(KEPT);
						expect(apart(faceAt(after, wall + 1, step), faceAt(bay, wall, share + (1 - share) * step))).toBeLessThan(
							KEPT,
						);
					}
					const kept = placesOf({ ...bay, openings: [], obstacles: [] });
					placesOf({ ...after, openings: [], obstacles: [] }).forEach((place, i) => {
						if (Number.isNaN(place.at)) return;
						expect(apart(pointOf(after, place), pointOf(bay, kept[i] as WallPlace))).toBeLessThan(KEPT);
					});
					// As much wall without holes as there was, and as much glass, but for a sliver beyond the corner.
					const bare = ({ walls }: Bay) =>
						walls.flatMap(({ noDrill }) => noDrill).reduce((sum, [a, b]) => sum + b - a, 0);
					expect(Math.abs(bare(after) - bare(bay))).toBeLessThan(1 + KEPT);
					const glass = ({ openings }: Bay) => openings.reduce((sum, { from, to }) => sum + to - from, 0);
					expect(glass(after)).toBeLessThan(glass(bay) + KEPT);
					expect(glass(after)).toBeGreaterThan(glass(bay) - 100 - KEPT);
					// Taken out again from a straight wall, nothing has been.
					if (bay.walls[wall]?.rise === 0 && glass(after) > glass(bay) - KEPT)
						expect(removeCorner(after, wall + 1).openings).toHaveLength(bay.openings.length);
				},
			),
			{ seed: SEED, numRuns: 200 },
		);
	});
});

describe("a corner taken out", () => {
	it("that was put in leaves the straight bay as it was, but for the run that is a run again", () => {
		const bay = bayOf({ ...fullBay(), walls: [], track: { ...fullBay().track } });
		const there = insertCorner(bay, 2, 130);
		const back = valid(removeCorner(there, 3));
		expect(back).toEqual(bay);
	});

	it("makes one straight wall of two, and what stood on them keeps its share of the way", () => {
		// 300 up and 400 across: the wall between their ends is 500 long, 5/7 of the two.
		const bay = bayOf({
			corners: [
				[0, 0],
				[0, 300],
				[400, 300],
				[900, 300],
			],
			walls: [{ rise: 20 }, {}, {}],
			openings: [{ wall: 1, from: 50, to: 350, sill: null, head: null }],
			track: {
				brackets: [{ wall: 2, at: 70 }],
				bends: [
					{ corner: 1, radius: 250 },
					{ corner: 2, radius: 260 },
				],
			},
			readings: [
				{ kind: "run", wall: 2, value: 500 },
				{ kind: "diagonal", from: 2, to: 0, value: 501 },
				{ kind: "angle", corner: 1, value: 90 },
				{ kind: "angle", corner: 2, value: 180 },
				{ kind: "square", corner: 3, wall: 0, value: 900 },
				{ kind: "square", corner: 0, wall: 2, value: 300 },
			],
		});
		const straight = { ...bay, walls: bay.walls.map((it) => ({ ...it, rise: 0 })) };
		const after = valid(removeCorner(straight, 1));
		expect(after.corners).toEqual([
			[0, 0],
			[400, 300],
			[900, 300],
		]);
		expect(after.openings[0]?.from).toBeCloseTo((350 * 5) / 7, 2);
		expect(after.openings[0]?.to).toBeCloseTo((650 * 5) / 7, 2);
		expect(after.track.brackets).toEqual([{ wall: 1, at: 70 }]);
		expect(after.track.bends).toEqual([{ corner: 1, radius: 260 }]);
		expect(after.readings.map(({ sd: _, ...it }) => it)).toEqual([
			{ kind: "run", wall: 1, value: 500 },
			{ kind: "run", wall: 0, value: 501 },
			{ kind: "square", corner: 0, wall: 1, value: 300 },
		]);
		expect(valid(removeCorner(bay, 1)).walls.map(({ rise }) => rise)).toEqual([0, 0]);
	});

	it("at an end takes its wall and what stood there with it", () => {
		const bay = fullBay();
		const left = valid(removeCorner(bay, 0));
		expect(left.corners).toEqual(bay.corners.slice(1));
		expect(left.obstacles).toEqual([]);
		expect(left.track.start).toBeNull();
		expect(left.track.end).toEqual({ wall: 2, at: 700 });
		expect(left.track.bends).toEqual([{ corner: 2, radius: 320 }]);
		expect(left.fitted.spans).toEqual([]);
		const right = valid(removeCorner(bay, 4));
		expect(right.track.end).toBeNull();
		expect(right.track.bends).toEqual([{ corner: 1, radius: 300 }]);
		expect(right.readings.some(({ kind }) => kind === "angle" || kind === "chord")).toBe(false);
		expect(right.openings).toEqual(bay.openings);
	});

	it("never leaves less than one wall", () => {
		const one = bayOf({
			corners: [
				[0, 0],
				[900, 0],
			],
		});
		expect(removeCorner(one, 0)).toBe(one);
		expect(removeCorner(fullBay(), 5)).toEqual(fullBay());
	});

	it("any of any bay leaves a good job", () => {
		for (let corner = 0; corner < 5; corner++) {
			let bay = fullBay();
			while (bay.corners.length > 2) {
				const next = valid(removeCorner(bay, Math.min(corner, bay.corners.length - 1)));
				expect(next.corners).toHaveLength(bay.corners.length - 1);
				bay = next;
			}
		}
	});
});

describe("a corner more at an end", () => {
	it("to the right changes nothing that was there", () => {
		const bay = fullBay();
		const after = valid(addCorner(bay, "right", [3000, -500]));
		expect(after).toEqual({
			...bay,
			corners: [...bay.corners, [3000, -500]],
			walls: [...bay.walls, bayOf({ corners: SQUARE }).walls[0]],
		});
	});

	it("to the left counts everything on by one", () => {
		const bay = fullBay();
		const after = valid(addCorner(bay, "left", [0, -500.00049]));
		expect(after.corners).toEqual([[0, -500], ...bay.corners]);
		expect(placesOf(after)).toEqual(placesOf(bay).map(({ wall, at }) => ({ wall: wall + 1, at })));
		expect(after.walls.slice(1)).toEqual(bay.walls);
		expect(after.track.bends.map(({ corner }) => corner)).toEqual([2, 4]);
		expect(after.readings.map((it) => ("corner" in it ? it.corner : "from" in it ? it.from : it.wall))).toEqual([
			1, 3, 1, 4, 4, 2, 2, 1,
		]);
		expect(valid(removeCorner(after, 0))).toEqual(bay);
	});

	it("starts an empty bay with a corner alone", () => {
		const one = valid(addCorner(bayOf({ corners: [] }), "left", [10, 20]));
		expect([one.corners, one.walls]).toEqual([[[10, 20]], []]);
		expect(valid(addCorner(one, "left", [0, 0])).corners).toEqual([
			[0, 0],
			[10, 20],
		]);
	});
});
