import { importWalls, readDrawing } from "@baywright/sheets/read";
import { describe, expect, test } from "vitest";
import { anglesOf, drawingOf, dxfOf, line, polyline, runsOf, wallsOf } from "./reading.ts";

describe("joining", () => {
	test("lines in any order and direction become one chain from left to right, the room on the right", () => {
		const walls = wallsOf(dxfOf([line(1800, 900, 0, 900), line(1800, 0, 1800, 900), line(0, 0, 0, 900)]));
		expect(walls.corners).toEqual([
			[0, 0],
			[0, 900],
			[1800, 900],
			[1800, 0],
		]);
		expect(anglesOf(walls)).toEqual([90, 90]);
	});

	test("a bay on the south side of a house is turned so that its room lies at the bottom", () => {
		const walls = wallsOf(
			dxfOf([
				polyline([
					[5000, 3000],
					[5000, 2400],
					[7000, 2400],
					[7000, 3100],
				]),
			]),
		);
		expect(walls.corners).toEqual([
			[0, 0],
			[0, 700],
			[2000, 700],
			[2000, 100],
		]);
	});

	test("a bay between two walls, whose turns cancel out, stands out from the room", () => {
		const walls = wallsOf(
			dxfOf([
				polyline([
					[4000, 0],
					[3000, 0],
					[3000, 700],
					[1000, 700],
					[1000, 0],
					[0, 0],
				]),
			]),
		);
		expect(runsOf(walls)).toEqual([1000, 700, 2000, 700, 1000]);
		expect(anglesOf(walls)).toEqual([270, 90, 90, 270]);
		expect(walls.notes).toEqual([]);
	});

	test("a straight wall says nothing of its room's side, which is told; the other side turns it round", () => {
		const text = dxfOf([
			polyline([
				[0, 0],
				[1000, 0],
				[3000, 50],
			]),
		]);
		const walls = wallsOf(text);
		expect(walls.notes).toContain("Nothing in the drawing says on which side the room lies: it is a guess.");
		expect(runsOf(wallsOf(text, { otherSide: true }))).toEqual(runsOf(walls).toReversed());
	});

	test("gaps are told with their width, and closed when asked", () => {
		const text = dxfOf([line(0, 0, 0, 900), line(0, 912.4, 1800, 912.4), line(1800, 912.4, 1800, 0)]);
		const parted = wallsOf(text);
		expect(runsOf(parted)).toEqual([1800, 912.4]);
		expect(parted.notes).toContain("A gap of 12.4 mm parts it from chain 2: join ends up to 13 mm to close it.");
		const joined = wallsOf(text, { reach: 13 });
		expect(runsOf(joined).map(Math.round)).toEqual([906, 1800, 912]);
		expect(joined.notes).toContain("Gaps up to 12.4 mm wide were closed.");
	});

	test("chains end where lines branch, which is told in the drawing's figures", () => {
		const walls = wallsOf(dxfOf([line(0, 0, 0, 0.9), line(0, 0.9, 1.8, 0.9), line(0, 0.9, 0, 3)], 6));
		expect(walls.chains).toHaveLength(3);
		expect(walls.notes).toContain(
			"3 lines meet at 0, 0.9 of the drawing: chains end there, because walls do not branch.",
		);
	});

	test("a wall drawn in two goes is one, a line drawn twice is told, a speck is left out", () => {
		const walls = wallsOf(
			dxfOf([line(0, 0, 700, 0), line(700, 0, 2000, 0), line(2000, 0, 700, 0), line(0, 0, 0.4, 0)]),
		);
		expect(runsOf(walls)).toEqual([2000]);
		expect(walls.notes).toEqual(
			expect.arrayContaining(["1 line was drawn twice.", "1 line no longer than 1 mm left out."]),
		);
	});

	test("a corner set twice is one, and told; a short wall is none, and refused", () => {
		const twice = wallsOf(
			dxfOf([
				polyline([
					[0, 0],
					[0, 900],
					[0.6, 900.4],
					[1800, 900],
				]),
			]),
		);
		expect(twice.corners).toEqual([
			[0, 0],
			[0, 900],
			[1800, 900],
		]);
		expect(twice.notes).toEqual(["1 piece of it, no longer than 1 mm, left out."]);
		expect(
			wallsOf(
				dxfOf([
					polyline([
						[0, 0],
						[0, 900],
						[7, 900],
						[7, 1800],
					]),
				]),
			).problems[0],
		).toMatchObject({ path: "wall 2", found: "7 mm" });
	});

	test("the longest chain comes first, and any may be chosen", () => {
		const text = dxfOf([line(0, 0, 900, 0), line(0, 500, 2400, 500), line(0, 1000, 1500, 1000)]);
		expect(wallsOf(text).chains.map(({ length }) => length)).toEqual([2400, 1500, 900]);
		expect(runsOf(wallsOf(text, { chain: 2 }))).toEqual([900]);
	});
});

describe("a closed outline", () => {
	const room = dxfOf([
		polyline(
			[
				[0, 0],
				[4000, 0],
				[4000, 3000],
				[0, 3000],
			],
			true,
		),
	]);

	test("is taken but for its longest wall, clockwise", () => {
		const walls = wallsOf(room);
		expect(walls.closed).toBe(true);
		expect(runsOf(walls)).toEqual([3000, 4000, 3000]);
		expect(anglesOf(walls)).toEqual([90, 90]);
		expect(walls.problems).toEqual([]);
	});

	test("gives any stretch, also past its beginning, but not all of it", () => {
		expect(runsOf(wallsOf(room, { walls: [3, 0] }))).toEqual([4000, 3000]);
		expect(wallsOf(room, { walls: [0, 3] }).problems).toEqual([
			{
				path: "walls",
				found: "all 4 of a closed outline",
				allowed: "a stretch of it: leave out the side that is open to the room",
			},
		]);
		expect(wallsOf(room, { walls: [1, 7] }).problems[0]).toMatchObject({ path: "walls", found: "2 to 8" });
	});
});

/** Every refusal names its place, what is there and what may be. */
describe("refusals", () => {
	const one = (entities: Parameters<typeof dxfOf>[0], unit = 4) => wallsOf(dxfOf(entities, unit)).problems[0];

	test("walls that cross, fold back, or are too short", () => {
		expect(
			one([
				polyline([
					[0, 0],
					[0, 2000],
					[2000, 2000],
					[2000, 500],
					[-500, 500],
				]),
			]),
		).toMatchObject({ path: "walls 1 and 4" });
		expect(
			one([
				polyline([
					[0, 0],
					[2000, 0],
					[100, 300],
				]),
			]),
		).toMatchObject({
			path: "the corner of walls 1 and 2",
			found: "a room angle of 9.0°",
			allowed: "20° to 340°",
		});
		expect(
			one([
				polyline([
					[0, 0],
					[0, 900],
					[4, 900],
					[4, 0],
				]),
			]),
		).toEqual({ path: "wall 2", found: "4 mm", allowed: "10 mm to 30 m" });
	});

	test.each([
		[6, "3.6 km", /in mm it would be 3600 mm/],
		[1, "91.4 m", /in mm it would be 3600 mm/],
	])("a bay of an unlikely size, $INSUNITS %d", (unit, found, allowed) => {
		const problem = one(
			[
				polyline([
					[0, 0],
					[0, 900],
					[1800, 900],
					[1800, 0],
				]),
			],
			unit,
		);
		expect(problem?.path).toBe("unit");
		expect(problem?.found).toContain(found);
		expect(problem?.allowed).toMatch(allowed);
	});

	test("2 mm in all, and nothing long enough to be a wall", () => {
		const small = importWalls(
			drawingOf(
				dxfOf([
					polyline([
						[0, 0],
						[0, 1.2],
						[1.2, 1.2],
					]),
				]),
			),
		);
		expect(small).toMatchObject({ ok: true, walls: { problems: [{ path: "unit" }] } });
		expect(importWalls(drawingOf(dxfOf([line(0, 0, 0.5, 0)])))).toMatchObject({
			ok: false,
			problem: { path: "unit", found: 'lines up to 0.5 mm long on layer "WALLS"' },
		});
	});

	test("a layer that is not there, or has no lines", () => {
		const text = dxfOf([line(0, 0, 900, 0, "INSIDE"), [0, "SPLINE", 8, "CURVES"]]);
		expect(importWalls(drawingOf(text), { layer: "OUTSIDE" })).toMatchObject({
			ok: false,
			problem: { path: "layer", found: '"OUTSIDE"', allowed: 'one that has lines: layer "INSIDE"' },
		});
		expect(importWalls(drawingOf(text), { layer: "CURVES" })).toMatchObject({
			ok: false,
			problem: { path: 'layer "CURVES"', found: expect.stringContaining("only a spline") },
		});
		expect(importWalls(drawingOf(text), { chain: 4 })).toMatchObject({
			ok: false,
			problem: { path: "chain", found: "5", allowed: "1" },
		});
	});

	test.each([
		["", "", "nothing"],
		["text", "hello", '"hello"'],
		["binary DXF", "AutoCAD Binary DXF\r\n\u001a\u0000", "a binary DXF"],
		["DWG", "AC1032\u0000\u0000", "a drawing in a form of its own program (DWG)"],
		["a picture", "\u0089PNG\r\n\u001a\n\u0000\u0000\u0000\rIHDR", "a file that is no text"],
		["another XML", "<html><body/></html>", "the element <html>"],
		["XML cut off", "<svg>\n<g>", "XML that cannot be read"],
		["DXF without entities", "0\nSECTION\n2\nHEADER\n0\nENDSEC\n0\nEOF\n", "no section of entities"],
		["DXF out of step", "0\nSECTION\n2\nENTITIES\nLINE\n8\n0\nEOF\n", '"LINE"'],
		["nothing drawn", "0\nSECTION\n2\nENTITIES\n0\nENDSEC\n0\nEOF\n", "nothing drawn"],
	])("no drawing: %s", (_, text, found) => {
		const read = readDrawing(new TextEncoder().encode(text));
		expect(read).toMatchObject({
			ok: false,
			problem: { found: expect.stringContaining(found), allowed: expect.stringMatching(/DXF|SVG/) },
		});
	});

	test("a file too large, by its size", () => {
		expect(readDrawing(new Uint8Array(20_000_001))).toMatchObject({ ok: false, problem: { found: "20.0 MB" } });
	});
});

test("names of layers in the code page of older files are kept", () => {
	const bytes = Uint8Array.from(dxfOf([line(0, 0, 900, 0, "WÄNDE")]), (letter) => letter.charCodeAt(0));
	expect(readDrawing(bytes)).toMatchObject({ ok: true, drawing: { layers: [{ name: "WÄNDE" }] } });
});

test.each([
	["windows-1251", "ANSI_1251", [0xd1, 0xd2, 0xc5, 0xcd, 0xdb], "СТЕНЫ"],
	["Shift JIS", "ANSI_932", [0x95, 0xc7], "壁"],
])("names of layers in the code page that the file names: %s", (_, page, letters, name) => {
	const text = dxfOf([line(0, 0, 900, 0, "@")]).replace("9\n$INSUNITS", `9\n$DWGCODEPAGE\n3\n${page}\n9\n$INSUNITS`);
	const bytes = Uint8Array.from([...text].flatMap((each) => (each === "@" ? letters : [each.charCodeAt(0)])));
	expect(readDrawing(bytes)).toMatchObject({ ok: true, drawing: { layers: [{ name }] } });
});

test("a drawing in UTF-16, and one with the line ends of old, are read", () => {
	const text = dxfOf([line(0, 0, 900, 0, "WÄNDE")]);
	const units = Uint16Array.from(`\ufeff${text}`, (letter) => letter.charCodeAt(0));
	for (const bytes of [new Uint8Array(units.buffer), new TextEncoder().encode(text.replaceAll("\n", "\r"))])
		expect(readDrawing(bytes)).toMatchObject({ ok: true, drawing: { layers: [{ name: "WÄNDE" }] } });
});

test("something left lying at the origin does not spoil the guess of a unit far from it", () => {
	const [x, y] = [450_000, 180_000];
	const bay = [line(x, y, x, y + 0.9), line(x, y + 0.9, x + 1.8, y + 0.9), line(x + 1.8, y + 0.9, x + 1.8, y)];
	const walls = wallsOf(dxfOf([...bay, line(0, 0, 1, 0)], null));
	expect(walls.unit).toMatchObject({ unit: "m", guessed: true });
	expect(runsOf(walls)).toEqual([900, 1800, 900].map((run) => expect.closeTo(run, 3)));
});

test("a corner that is written twice is nothing to tell", () => {
	const corners = [
		[0, 0],
		[4000, 0],
		[4000, 3000],
		[0, 3000],
		[0, 0],
	] as const;
	expect(wallsOf(dxfOf([polyline(corners, true)])).notes).toEqual([]);
});

test("a gap is closed by the distance that its note names", () => {
	const walls = (reach?: number) =>
		wallsOf(dxfOf([line(0, 0, 0, 900), line(3, 903, 1800, 903), line(1800, 903, 1800, 0)]), { reach });
	// By Pythagoras: 3 √2 = 4.243.
	expect(walls().notes).toContain("A gap of 4.24 mm parts it from chain 2: join ends up to 5 mm to close it.");
	expect(walls(4.24).chains).toHaveLength(2);
	expect(walls(5).chains).toHaveLength(1);
});
