import { readChain, wallCrossings } from "@baywright/geometry";
import { importWalls, readDrawing, type WallImport } from "@baywright/sheets/read";
import fc from "fast-check";
import { expect, test } from "vitest";

/** A bay as it is measured: runs (mm), turns at its corners (degrees, right positive) and rises (mm, + away from the room). */
interface Measured {
	readonly runs: readonly number[];
	readonly turns: readonly number[];
	readonly rises: readonly number[];
}

/** Rises as shares of their runs. */

const measured: fc.Arbitrary<Measured> = fc.integer({ min: 1, max: 7 }).chain((count) =>
	fc.record({
		runs: fc.array(fc.double({ min: 150, max: 4000, noNaN: true }), { minLength: count, maxLength: count }),
		turns: fc.array(
			fc.oneof(fc.double({ min: 8, max: 110, noNaN: true }), fc.double({ min: -100, max: -8, noNaN: true })),
			{
				minLength: count - 1,
				maxLength: count - 1,
			},
		),
		rises: fc.array(
			fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, fc.double({ min: -0.3, max: 0.4, noNaN: true })),
			{
				minLength: count,
				maxLength: count,
			},
		),
	}),
);

/** How the drawing is made: where it lies, in what unit, and in which order and direction its lines come. */
const drawn = fc.record({
	heading: fc.double({ min: -180, max: 180, noNaN: true }),
	x: fc.double({ min: -20_000, max: 20_000, noNaN: true }),
	y: fc.double({ min: -20_000, max: 20_000, noNaN: true }),
	unit: fc.constantFrom<readonly [code: number, mm: number]>([4, 1], [5, 10], [6, 1000], [1, 25.4], [2, 304.8]),
	order: fc.array(fc.nat(), { minLength: 7, maxLength: 7 }),
	backwards: fc.array(fc.boolean(), { minLength: 7, maxLength: 7 }),
	/** Each wall as a LINE or ARC, or as an LWPOLYLINE of one side. */
	asPolyline: fc.array(fc.boolean(), { minLength: 7, maxLength: 7 }),
});

type Drawn = typeof drawn extends fc.Arbitrary<infer Value> ? Value : never;
type Spot = readonly [x: number, y: number];

/** Corners by walking the runs: the chords' headings, y up. */
function walked({ runs, turns }: Measured, { heading, x, y }: Pick<Drawn, "heading" | "x" | "y">): Spot[] {
	let [at, way]: [Spot, number] = [[x, y], (heading * Math.PI) / 180];
	return [
		at,
		...runs.map((run, i): Spot => {
			at = [at[0] + run * Math.cos(way), at[1] + run * Math.sin(way)];
			way -= ((turns[i] ?? 0) * Math.PI) / 180;
			return at;
		}),
	];
}

/** A writer of its own, from the published groups of DXF: nothing of it is shared with the reader or with our own writer. */
function written(bay: Measured, how: Drawn): string {
	const corners = walked(bay, how);
	const [code, mm] = how.unit;
	const out = (value: number) => (value / mm).toFixed(10);
	const entities = bay.runs.map((run, i) => {
		const [a, b] = [corners[i], corners[i + 1]] as [Spot, Spot];
		const rise = bay.rises[i] ?? 0;
		const [from, to, side] = how.backwards[i] ? [b, a, -1] : [a, b, 1];
		if (how.asPolyline[i])
			return [
				0,
				"LWPOLYLINE",
				8,
				"BAY",
				90,
				2,
				70,
				0,
				10,
				out(from[0]),
				20,
				out(from[1]),
				42,
				(-side * 2 * rise) / run,
				10,
				out(to[0]),
				20,
				out(to[1]),
			];
		if (rise === 0)
			return [0, "LINE", 8, "BAY", 10, out(from[0]), 20, out(from[1]), 30, 0, 11, out(to[0]), 21, out(to[1]), 31, 0];
		// The circle through both ends: radius c²/8h + h/2, its centre on the other side of the chord than the rise.
		const radius = (run * run) / (8 * Math.abs(rise)) + Math.abs(rise) / 2;
		const off = rise - Math.sign(rise) * radius;
		const [left, up] = [-(b[1] - a[1]) / run, (b[0] - a[0]) / run];
		const centre: Spot = [(a[0] + b[0]) / 2 + left * off, (a[1] + b[1]) / 2 + up * off];
		const angle = (p: Spot) => ((Math.atan2(p[1] - centre[1], p[0] - centre[0]) * 180) / Math.PI + 360) % 360;
		// An ARC runs counter-clockwise; a wall that bows away from the room runs clockwise from its left end.
		const [start, end] = rise > 0 ? [b, a] : [a, b];
		return [
			0,
			"ARC",
			8,
			"BAY",
			10,
			out(centre[0]),
			20,
			out(centre[1]),
			40,
			out(radius),
			50,
			angle(start).toFixed(12),
			51,
			angle(end).toFixed(12),
		];
	});
	const mixed = entities.map((entity, i) => ({ entity, key: how.order[i] ?? 0 })).sort((a, b) => a.key - b.key);
	const groups = [0, "SECTION", 2, "HEADER", 9, "$INSUNITS", 70, code, 0, "ENDSEC", 0, "SECTION", 2, "ENTITIES"];
	return [...groups, ...mixed.flatMap(({ entity }) => entity), 0, "ENDSEC", 0, "EOF", ""].join("\n");
}

/** Only bays that can be: no crossings, no folds, ends further apart than any gap that is asked about, and a turn to the right in all, which tells the room's side. */
function isBay(bay: Measured): boolean {
	const corners = walked(bay, { heading: 0, x: 0, y: 0 }).map(([x, y]) => ({ x, y }));
	const chain = readChain(corners, bay.rises);
	if (!chain.ok || wallCrossings(chain.value).length > 0) return false;
	const arcs = bay.rises.map((rise, i) => (4 * Math.atan((2 * rise) / (bay.runs[i] as number)) * 180) / Math.PI);
	const [first, last] = [corners[0], corners.at(-1)] as [{ x: number; y: number }, { x: number; y: number }];
	const apart = corners.every((a, i) => corners.slice(i + 1).every((b) => Math.hypot(a.x - b.x, a.y - b.y) > 20));
	// The turn between the tangents at both ends: half of the end walls' own arcs lies beyond their chords.
	const turn = bay.turns.reduce((sum, each) => sum + each, 0) + ((arcs[0] ?? 0) + (arcs.at(-1) ?? 0)) / 2;
	return apart && Math.hypot(last.x - first.x, last.y - first.y) > 101 && turn > 15;
}

function anglesAt(corners: readonly Spot[]): number[] {
	return corners.slice(1, -1).map((b, i) => {
		const [a, c] = [corners[i], corners[i + 2]] as [Spot, Spot];
		const turn = Math.atan2(b[1] - a[1], b[0] - a[0]) - Math.atan2(c[1] - b[1], c[0] - b[0]);
		return (Math.atan2(Math.sin(turn), Math.cos(turn)) * 180) / Math.PI;
	});
}

test("a bay drawn line by line, in any order, direction and unit, comes back with its runs, turns and rises", () => {
	const bays = measured
		.map((bay) => ({
			...bay,
			rises: bay.rises.map((share, i) => (Math.abs(share) < 0.005 ? 0 : share * (bay.runs[i] as number))),
		}))
		.filter(isBay);
	fc.assert(
		fc.property(bays, drawn, (bay, how) => {
			const read = readDrawing(new TextEncoder().encode(written(bay, how)));
			if (!read.ok) throw new Error(JSON.stringify(read.problem));
			const imported = importWalls(read.drawing, { reach: 0.01 });
			if (!imported.ok) throw new Error(JSON.stringify(imported.problem));
			const walls: WallImport = imported.walls;
			expect(walls.problems).toEqual([]);
			expect(walls.notes).toEqual([]);
			const runs = walls.corners
				.slice(1)
				.map(([x, y], i) => Math.hypot(x - (walls.corners[i]?.[0] ?? 0), y - (walls.corners[i]?.[1] ?? 0)));
			expect(runs).toEqual(bay.runs.map((run) => expect.closeTo(run, 2)));
			expect(walls.rises).toEqual(bay.rises.map((rise) => expect.closeTo(rise, 2)));
			// A thousandth of a mm at either end of 150 mm is less than a thousandth of a degree.
			expect(anglesAt(walls.corners)).toEqual(bay.turns.map((turn) => expect.closeTo(turn, 2)));
		}),
		{ seed: 1407, numRuns: 300 },
	);
});
