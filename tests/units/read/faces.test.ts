import { describe, expect, test } from "vitest";
import { anglesOf, dxfOf, line, polyline, runsOf, wallsOf } from "./reading.ts";

type Corners = readonly (readonly [x: number, y: number])[];

/** The inner face of a bay, both corners 135°: 600, 500 √2, 1800, 500 √2, 600. */
const INNER: Corners = [
	[0, 0],
	[0, 600],
	[500, 1100],
	[2300, 1100],
	[2800, 600],
	[2800, 0],
];
/** Its outer face, 250 mm further out: offset corners move on by 250 · tan 22.5° along each wall. */
const ON = 250 * Math.tan(Math.PI / 8);
const OUTER: Corners = [
	[-250, 0],
	[-250, 600 + ON],
	[500 - ON, 1350],
	[2300 + ON, 1350],
	[3050, 600 + ON],
	[3050, 0],
];
const RUNS = [600, 500 * Math.SQRT2, 1800, 500 * Math.SQRT2, 600].map((run) => expect.closeTo(run, 2));

const turned = (corners: Corners, quarters: number): Corners =>
	Array.from({ length: quarters }).reduce<Corners>((points) => points.map(([x, y]) => [-y, x] as const), corners);
const lines = (corners: Corners) =>
	corners.slice(1).map(([x, y], i) => line(corners[i]?.[0] as number, corners[i]?.[1] as number, x, y));

describe("a wall drawn with both its faces", () => {
	test.each([0, 1, 2, 3])("gives the face to the room, and tells of the other, turned by %d quarters", (quarters) => {
		const walls = wallsOf(dxfOf([...lines(turned(OUTER, quarters)), ...lines(turned(INNER, quarters))]));
		expect(runsOf(walls)).toEqual(RUNS);
		expect(walls.notes).toEqual([
			"Chain 2 runs along it 250 mm further from the room, as the other face of a wall does: the bay needs the face to the room.",
		]);
	});

	test("of which the outer is chosen tells that the other is nearer to the room", () => {
		const walls = wallsOf(dxfOf([...lines(OUTER), ...lines(INNER)]), { chain: 1 });
		expect(runsOf(walls)[2]).toBeCloseTo(1800 + 2 * ON, 2);
		expect(walls.notes[0]).toMatch(/^Chain 1 runs along it 250 mm nearer to the room/);
	});

	test("and closed at its ends gives the same face; the other side gives the other face", () => {
		const text = dxfOf([polyline([...INNER, ...OUTER.toReversed()], true)]);
		const walls = wallsOf(text);
		expect(walls.closed).toBe(true);
		expect(runsOf(walls)).toEqual(RUNS);
		expect(anglesOf(walls)).toEqual([135, 135, 135, 135].map((angle) => expect.closeTo(angle, 2)));
		expect(walls.problems).toEqual([]);
		expect(walls.notes).toEqual([
			"Its sides lie 250 mm apart: it is taken for the outline of a wall, and the face to the room for the bay.",
		]);
		const outside = wallsOf(text, { otherSide: true });
		expect(runsOf(outside)[2]).toBeCloseTo(1800 + 2 * ON, 2);
		expect(anglesOf(outside)).toEqual([225, 225, 225, 225].map((angle) => expect.closeTo(angle, 2)));
	});

	test("with bows: arcs of one centre, 300 mm apart", () => {
		const bow = (radius: number) => [0, "ARC", 8, "WALLS", 10, 0, 20, 0, 30, 0, 40, radius, 50, 0, 51, 180] as const;
		const walls = wallsOf(dxfOf([bow(1500), bow(1200)]));
		expect(runsOf(walls)).toEqual([expect.closeTo(2400, 3)]);
		expect(walls.rises).toEqual([expect.closeTo(1200, 3)]);
		expect(walls.notes[0]).toContain("300 mm further from the room");
	});
});

test("of a room drawn with both faces the inner outline comes first, wherever each begins", () => {
	const inner: Corners = [...INNER, [2800, -1500], [0, -1500]];
	const outer: Corners = [...OUTER, [3050, -1750], [-250, -1750]];
	// The ends of the bay are no corners of the room.
	const round = (corners: Corners) => corners.filter((_, i) => i !== 0 && i !== 5);
	for (const start of [0, 1, 2, 3, 4, 5]) {
		const begun = [...round(outer).slice(start), ...round(outer).slice(0, start)];
		const walls = wallsOf(dxfOf([polyline(begun, true), polyline(round(inner), true)]));
		expect(Math.max(...runsOf(walls))).toBeCloseTo(2100, 3);
		expect(walls.notes[0]).toContain("250 mm further from the room");
	}
});

describe("no second face", () => {
	test("is a room's own outline, whatever stands along a part of its walls", () => {
		const room: Corners = [
			[0, 0],
			[4000, 0],
			[4000, 3000],
			[0, 3000],
		];
		const shelf: Corners = [
			[300, 2700],
			[1500, 2700],
		];
		const walls = wallsOf(dxfOf([polyline(room, true), ...lines(shelf)]));
		expect(runsOf(walls)).toEqual([3000, 4000, 3000]);
		expect(walls.notes).toEqual([]);
	});

	test("is a line further off than walls are thick", () => {
		const walls = wallsOf(dxfOf([line(0, 0, 2400, 0), line(0, -1500, 2400, -1500)]));
		expect(walls.notes.join(" ")).not.toContain("runs along it");
	});

	test.each([
		["a splayed bay of 300", 300],
		["a steeper one", 173],
		["a recess", 0],
	])("is the line across the mouth of %s, joined to it or not", (_, splay) => {
		const corners: Corners = [
			[0, 0],
			[splay, 300],
			[2400 - splay, 300],
			[2400, 0],
		];
		const side = Math.hypot(splay, 300);
		const runs = [side, 2400 - 2 * splay, side].map((run) => expect.closeTo(run, 2));
		expect(runsOf(wallsOf(dxfOf([polyline(corners, true)])))).toEqual(runs);
		expect(runsOf(wallsOf(dxfOf([polyline(corners), line(0, -20, 2400, -20)])))).toEqual(runs);
	});

	test("is the line across the mouth of a bow", () => {
		const bow = [0, "ARC", 8, "WALLS", 10, 0, 20, 0, 30, 0, 40, 1300, 50, 60, 51, 120] as const;
		const walls = wallsOf(dxfOf([bow, line(-650, 900, 650, 900)]));
		expect(walls.rises).toEqual([expect.closeTo(1300 * (1 - Math.cos(Math.PI / 6)), 2)]);
		expect(walls.notes.join(" ")).not.toContain("runs along it");
	});
});
