import { readDrawing } from "@baywright/sheets/read";
import { describe, expect, test } from "vitest";
import { drawingOf, runsOf, wallsOf } from "./reading.ts";

const svg = (inside: string, attributes = 'width="2000mm" viewBox="0 0 2000 2000"') =>
	`<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>\n${inside}\n</svg>`;

describe("arcs", () => {
	test("a quarter circle of 150: chord 150 √2, rise 150 (1 − cos 45°)", () => {
		// Source: SVG 2, 9.3.8 "The elliptical arc curve commands", the smaller piece of the pie.
		const walls = wallsOf(svg('<path d="M275,175 v-150 a150,150 0 0,0 -150,150 z"/>'), { scale: 1 });
		expect(walls.closed).toBe(true);
		const [run, rise] = [150 * Math.SQRT2, 150 * (1 - Math.SQRT1_2)];
		// The arc is the longest side, so it is the one left open; asked for alone, it stands out from the room.
		const arc = walls.shown.findIndex(({ bulge }) => bulge !== 0);
		expect(arc).toBe(2);
		const alone = wallsOf(svg('<path d="M275,175 v-150 a150,150 0 0,0 -150,150 z"/>'), { scale: 1, walls: [arc, arc] });
		expect(runsOf(alone)).toEqual([expect.closeTo(run, 3)]);
		expect(alone.rises).toEqual([expect.closeTo(rise, 3)]);
	});

	test("both flags: of the four arcs between two places the two lesser rise by r − √(r² − c²/4), one each way", () => {
		// r = 1300, c = 1000: √(1300² − 500²) = 1200, so the lesser arcs rise by 100.
		const rise = (sweep: number) =>
			wallsOf(svg(`<path d="M0 0V-900A1300 1300 0 0 ${sweep} 1000 -900V0"/>`), { scale: 1 }).rises[1];
		expect(rise(1)).toBeCloseTo(100, 3);
		expect(rise(0)).toBeCloseTo(-100, 3);
		expect(wallsOf(svg('<path d="M0 0V-900A1300 1300 0 1 1 1000 -900V0"/>'), { scale: 1 }).problems[0]?.found).toMatch(
			/^an arc of 3/,
		);
	});

	test("a radius too small for its chord is raised to half of it (SVG 2, B.2.5)", () => {
		const walls = wallsOf(svg('<path d="M0 0V-900A10 10 0 0 1 1000 -900V0"/>'), { scale: 1 });
		expect(walls.rises[1]).toBeCloseTo(500, 3);
		expect(walls.problems).toEqual([]);
	});

	test("squeezed to an ellipse it is left out, turned and mirrored it is not", () => {
		const arc = '<path d="M0 0V-900A1300 1300 0 0 1 1000 -900V0"/>';
		const squeezed = drawingOf(svg(`<g transform="scale(1 2)">${arc}</g>`)).layers[0];
		expect(squeezed?.strokes).toEqual([]);
		expect(squeezed?.leftOut[0]?.what).toMatch(/^an arc of an ellipse/);
		const turned = wallsOf(svg(`<g transform="translate(40 7) scale(-1 1)"><g transform="rotate(30)">${arc}</g></g>`), {
			scale: 1,
		});
		expect(turned.rises).toEqual([0, expect.closeTo(100, 3), 0]);
		expect(runsOf(turned)).toEqual([expect.closeTo(900, 3), expect.closeTo(1000, 3), expect.closeTo(900, 3)]);
	});
});

test("line, polyline, polygon and rect; layers by label, else by id", () => {
	const drawing = drawingOf(
		svg(`<g id="g1" xmlns:x="x" x:label="Ground"><line x1="0" y1="0" x2="0" y2="-900"/><polyline points="0,-900 1800,-900 1800,0"/></g>
<g id="furniture"><rect width="500" height="400"/><polygon points="0,0 9,0 9,9"/></g><line x2="5"/>`),
	);
	expect(
		drawing.layers.map(({ name, strokes }) => [name, strokes.length, strokes.filter(({ closed }) => closed).length]),
	).toEqual([
		["Ground", 2, 0],
		["furniture", 2, 2],
		["", 1, 0],
	]);
	const text = svg('<g id="a"><line y2="-900"/><polyline points="0,-900 1800,-900 1800,0"/></g>');
	expect(runsOf(wallsOf(text, { scale: 1 }))).toEqual([900, 1800, 900]);
});

test("what is no wall is left out by name, with its line in the file", () => {
	const layer = drawingOf(
		svg(`<line x2="900"/>
<path d="M0 0C1 1 2 2 3 3"/>
<circle r="5"/>
<text>hall</text>
<use href="#door"/>
<line x2="5" style="display: none"/>
<path d="M0 0L"/>`),
	).layers[0];
	expect(layer?.strokes).toHaveLength(1);
	expect(layer?.leftOut.map(({ what, place }) => `${what.split(":")[0]}, ${place}`)).toEqual([
		"a curve (Bézier), path at line 4",
		"a whole circle, circle at line 5",
		"text, text at line 6",
		"a copy of another part (use), use at line 7",
		"something hidden, line at line 8",
		"path data that cannot be read, path at line 9",
	]);
});

/** Source: CSS Values and Units 3: 1 in = 25.4 mm = 96 px = 72 pt. */
test.each([
	['width="500mm" viewBox="0 0 1000 1000"', 0.5],
	['width="10in" viewBox="0 0 254 254"', 1],
	['width="72pt" viewBox="0 0 254 254"', 0.1],
	['width="10cm" height="20cm" viewBox="0 0 100 400"', 0.5],
	['width="2000mm"', 25.4 / 96],
])("a page of %s has units of %d mm", (attributes, mm) => {
	expect(drawingOf(svg('<line x2="900"/>', attributes)).unit?.mm).toBeCloseTo(mm, 9);
});

test("a page of paper is taken to be to scale, which is told as a guess; a size in px says nothing", () => {
	const walls = wallsOf(svg('<line x2="120"/>', 'width="210mm" viewBox="0 0 210 297"'));
	expect(walls.unit).toMatchObject({ unit: "file", scale: 10, guessed: true });
	expect(walls.notes[0]).toMatch(/1 : 10 is a guess/);
	expect(wallsOf(svg('<line x2="120"/>', 'width="210mm" viewBox="0 0 210 297"'), { scale: 20 }).corners[1]).toEqual([
		2400, 0,
	]);
	expect(drawingOf(svg('<line x2="900"/>', 'width="2000" height="900px"')).unit).toBeNull();
});

test("groups in a layer with a label are no layers of their own, whatever their ids", () => {
	const drawing = drawingOf(
		svg(`<g xmlns:x="x" x:label="Ground" id="l1"><g id="g12"><line x2="900"/></g><g id="g13"><line y2="900"/></g>
<g x:label="Doors"><line x2="5"/></g></g>`),
	);
	expect(drawing.layers.map(({ name, strokes }) => [name, strokes.length])).toEqual([
		["Ground", 2],
		["Doors", 1],
	]);
});

test("what a style sheet hides by its class is left out", () => {
	const drawing = drawingOf(
		svg(`<defs><style>.a, .b { fill: none } .c,.d{display:none} g .e{display:none}</style></defs>
<g id="old" class="d"><line x2="900"/></g><g id="now" class="b e"><line x2="900"/></g>`),
	);
	expect(drawing.layers.map(({ name, strokes, leftOut }) => [name, strokes.length, leftOut[0]?.what])).toEqual([
		["old", 0, "something hidden: allowed is what is seen"],
		["now", 1, undefined],
	]);
});

test("a rect with round corners is left out for them, not for being one", () => {
	expect(drawingOf(svg('<rect width="900" height="900" rx="5"/>')).layers[0]?.leftOut[0]?.what).toBe(
		"a rect with round corners: allowed are sharp ones",
	);
});

test("names of layers in the encoding that the file names", () => {
	const head = '<?xml version="1.0" encoding="windows-1250"?>';
	const text = `${head}<svg xmlns="http://www.w3.org/2000/svg"><g id="@"><line x2="900"/></g></svg>`;
	// ś is 9C in windows-1250.
	const bytes = Uint8Array.from(text, (each) => (each === "@" ? 0x9c : each.charCodeAt(0)));
	expect(readDrawing(bytes)).toMatchObject({ ok: true, drawing: { layers: [{ name: "ś" }] } });
});
