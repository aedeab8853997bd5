import { composeSheets, writeDxf } from "@baywright/sheets";
import DxfParser from "dxf-parser";
import makerjs from "makerjs";
import { describe, expect, test } from "vitest";
import { example } from "../sheets/jobs.ts";
import { anglesOf, drawingOf, dxfOf, line, polyline, runsOf, wallsOf } from "./reading.ts";

describe("written by another library (makerjs)", () => {
	test("lines and an arc on a layer of their own become walls and a bowed one", () => {
		// A chord of 1800 and a rise of 200 make a radius of 1800²/(8·200) + 200/2 = 2125, its centre 1925 under the chord.
		const half = (Math.atan2(900, 1925) * 180) / Math.PI;
		const model: makerjs.IModel = {
			paths: {
				right: new makerjs.paths.Line([1800, 900], [1800, 0]),
				front: new makerjs.paths.Arc([900, 900 - 1925], 2125, 90 - half, 90 + half),
				left: new makerjs.paths.Line([0, 900], [0, 0]),
			},
		};
		for (const path of Object.values(model.paths ?? {})) path.layer = "inside";
		const walls = wallsOf(makerjs.exporter.toDXF(model, { units: makerjs.unitType.Millimeter, accuracy: 1e-6 }));
		expect(walls.layer).toBe("inside");
		expect(walls.problems).toEqual([]);
		expect(runsOf(walls)).toEqual([900, expect.closeTo(1800, 3), 900]);
		expect(walls.rises).toEqual([0, expect.closeTo(200, 3), 0]);
	});

	test("a polygon of polyline segments, in inches", () => {
		const model = new makerjs.models.ConnectTheDots(false, [
			[0, 0],
			[0, 30],
			[72, 30],
			[72, 0],
		]);
		const walls = wallsOf(makerjs.exporter.toDXF(model, { units: makerjs.unitType.Inch }));
		expect(runsOf(walls).map((run) => Number(run.toFixed(3)))).toEqual([762, 1828.8, 762]);
		expect(walls.unit.guessed).toBe(false);
	});
});

/** Source: DXF reference, LWPOLYLINE group 42: the bulge is the tangent of a quarter of the included angle, negative where the arc runs clockwise. */
describe("bulges", () => {
	test.each([30, 60, 90, 120, 180])(
		"an arc of %d° has the rise r (1 − cos(angle / 2)) over the chord 2 r sin(angle / 2)",
		(angle) => {
			const half = (angle * Math.PI) / 360;
			const chord = 2 * 1000 * Math.sin(half);
			const bulge = Math.tan((angle * Math.PI) / 720);
			// From left to right and clockwise: the arc stands up, away from the room.
			const walls = wallsOf(
				dxfOf([
					polyline([
						[0, 0],
						[0, 2000, -bulge],
						[chord, 2000],
						[chord, 0],
					]),
				]),
			);
			expect(runsOf(walls)[1]).toBeCloseTo(chord, 2);
			expect(walls.rises[1]).toBeCloseTo(1000 * (1 - Math.cos(half)), 2);
			const into = wallsOf(
				dxfOf([
					polyline([
						[0, 0],
						[0, 2000, bulge],
						[chord, 2000],
						[chord, 0],
					]),
				]),
				{ chain: 0 },
			);
			if (angle < 120) expect(into.rises[1]).toBeCloseTo(-1000 * (1 - Math.cos(half)), 2);
		},
	);

	test("over a half circle is refused by its angle", () => {
		const { problems } = wallsOf(
			dxfOf([
				polyline([
					[0, 0],
					[0, 900, -Math.tan(Math.PI / 3)],
					[1800, 900],
					[1800, 0],
				]),
			]),
		);
		expect(problems).toEqual([{ path: "wall 2", found: "an arc of 240.0°", allowed: "up to 180°: break it in two" }]);
	});

	test("two arcs of one circle are one wall", () => {
		const quarter = Math.tan(Math.PI / 16);
		const [x, y] = [1000 * Math.sin(Math.PI / 4), 1000 * Math.cos(Math.PI / 4)];
		const walls = wallsOf(
			dxfOf([
				polyline([
					[-x, y, -quarter],
					[0, 1000, -quarter],
					[x, y],
				]),
			]),
		);
		expect(runsOf(walls)).toEqual([expect.closeTo(2 * x, 2)]);
		expect(walls.rises).toEqual([expect.closeTo(1000 - y, 2)]);
	});
});

test("corners behind a group 91 are not lost, nor is a POLYLINE's bulge", () => {
	const entity = [0, "LWPOLYLINE", 8, "W", 90, 3, 70, 0, 10, 0, 20, 0, 91, 7, 10, 0, 20, 900, 91, 8, 10, 1800, 20, 900];
	expect(runsOf(wallsOf(dxfOf([entity])))).toEqual([900, 1800]);
	const vertex = (x: number, y: number, bulge: number) => [0, "VERTEX", 8, "W", 10, x, 20, y, 30, 0, 42, bulge];
	const old = [
		0,
		"POLYLINE",
		8,
		"W",
		66,
		1,
		70,
		0,
		...vertex(0, 0, 0),
		...vertex(0, 900, -0.1),
		...vertex(1800, 900, 0),
		0,
		"SEQEND",
	];
	const walls = wallsOf(dxfOf([old]));
	expect(walls.rises).toEqual([0, 90]);
});

test("a polyline drawn from below lies mirrored (DXF reference, arbitrary axis algorithm)", () => {
	const entity = [
		0,
		"LWPOLYLINE",
		8,
		"W",
		90,
		3,
		70,
		0,
		210,
		0,
		220,
		0,
		230,
		-1,
		10,
		0,
		20,
		0,
		10,
		-500,
		20,
		900,
		10,
		-1800,
		20,
		900,
	];
	const seen = wallsOf(
		dxfOf([
			polyline([
				[0, 0],
				[500, 900],
				[1800, 900],
			]),
		]),
	);
	const walls = wallsOf(dxfOf([entity]));
	expect(runsOf(walls)).toEqual(runsOf(seen));
	expect(anglesOf(walls)).toEqual(anglesOf(seen));
});

/** Source: DXF reference, header variable $INSUNITS. */
test.each([
	[1, 25.4],
	[2, 304.8],
	[4, 1],
	[5, 10],
	[6, 1000],
])("$INSUNITS %d is %d mm", (code, mm) => {
	const far = 2000 / mm;
	const walls = wallsOf(dxfOf([line(0, 0, far, 0)], code));
	expect(runsOf(walls)[0]).toBeCloseTo(2000, 2);
	expect(walls.unit).toMatchObject({ mm, guessed: false, unit: "file" });
});

test.each([
	[1800, "mm"],
	[18, "m"],
	[240, "cm"],
])("without a unit a wall of %d is guessed to be in %s, and told as a guess", (long, unit) => {
	const walls = wallsOf(dxfOf([line(0, 0, long, 0)], null));
	expect(walls.unit).toMatchObject({ unit, guessed: true });
	expect(walls.notes[0]).toMatch(/guess.*Check a wall that you know/);
});

test("what is no wall is left out by name, with its place", () => {
	const text = dxfOf([
		line(0, 0, 0, 900),
		[0, "SPLINE", 8, "WALLS"],
		[0, "ELLIPSE", 8, "WALLS"],
		[0, "INSERT", 8, "WALLS", 2, "DOOR"],
		[0, "INSERT", 8, "WALLS", 2, "SINK"],
		[0, "LINE", 8, "WALLS", 10, 0, 20, 0, 30, 0, 11, 0, 21, 9, 31, 5],
		[0, "LINE", 8, "WALLS", 67, 1, 10, 0, 20, 0, 11, 0, 21, 9],
		[0, "LINE", 8, "WALLS", 10, "wide", 20, 0, 11, 0, 21, 9],
	]);
	const layer = drawingOf(text).layers[0];
	expect(layer?.strokes).toHaveLength(1);
	expect(layer?.leftOut.map(({ what, count }) => [what.split(":")[0], count])).toEqual([
		["a spline", 1],
		["an ellipse", 1],
		["a block reference", 2],
		["a line that rises in space", 1],
		["something on a paper layout", 1],
		["a line with a figure that is no number, or one out of reach", 1],
	]);
	expect(layer?.leftOut[0]?.place).toBe(`SPLINE at line ${text.split("\n").indexOf("SPLINE") + 1}`);
});

test("reads of our own plan what another reader (dxf-parser) reads", () => {
	const { job, plans } = example("bandstand");
	const figure = composeSheets(job, plans, {}, ["fitting"])[0]?.figures[0];
	if (figure === undefined) throw new Error("no plan");
	const text = writeDxf(figure);
	const others = new DxfParser().parseSync(text)?.entities ?? [];
	for (const { name, strokes } of drawingOf(text).layers) {
		const wanted = others.filter(({ layer, type }) => layer === name && (type === "LINE" || type === "LWPOLYLINE"));
		expect(strokes, name).toHaveLength(wanted.length);
		const corners = wanted.map(
			(entity) =>
				(entity as unknown as { readonly vertices: readonly { readonly x: number; readonly y: number }[] }).vertices,
		);
		expect(strokes.map(({ points }) => points.map(({ x, y }) => [x, y]))).toEqual(
			corners.map((each) => each.map(({ x, y }) => [x, y])),
		);
	}
});

test("letters that a code page has none of are read from their numbers", () => {
	expect(drawingOf(dxfOf([line(0, 0, 900, 0, "W\\U+00C4NDE")])).layers[0]?.name).toBe("WÄNDE");
});

test("lines measured with their heights are taken where they are as good as level", () => {
	const measured = (rise: number) => [
		0,
		"LINE",
		8,
		"WALLS",
		10,
		0,
		20,
		0,
		30,
		12.004,
		11,
		1800,
		21,
		0,
		31,
		12.004 + rise,
	];
	// A slope of 2 in 100 is the most: 36 on 1800.
	expect(runsOf(wallsOf(dxfOf([measured(35)])))).toEqual([1800]);
	expect(drawingOf(dxfOf([measured(37)])).layers[0]?.leftOut[0]?.what).toMatch(/^a line that rises in space/);
});

/** Source: DXF reference, "LAYER": a negative colour (62) is a layer that is off, bit 1 of its flags (70) one that is frozen. */
test.each([
	["off", 0, -7, 0],
	["frozen", 1, 7, 0],
	["locked", 4, 7, 1],
	["seen", 0, 7, 1],
])("lines on a layer that is %s", (_, flags, colour, lines) => {
	const table = [0, "SECTION", 2, "TABLES", 0, "TABLE", 2, "LAYER", 70, 1, 0, "LAYER", 2, "OLD", 70, flags, 62, colour];
	const head = [...table, 0, "ENDTAB", 0, "ENDSEC"].join("\n");
	const drawing = drawingOf(`${head}\n${dxfOf([line(0, 0, 900, 0, "OLD"), line(0, 0, 900, 0)])}`);
	expect(drawing.layers.map(({ name, strokes }) => [name, strokes.length])).toEqual([
		["OLD", lines],
		["WALLS", 1],
	]);
	if (lines === 0) expect(drawing.layers[0]?.leftOut[0]?.what).toMatch(/^something on a layer that is off or frozen/);
});
