import { composeSheets, type Figure, writeDxf } from "@baywright/sheets";
import DxfParser from "dxf-parser";
import { expect, test } from "vitest";
import { example, type Planned, planned } from "./jobs.ts";

// Read back by a parser that shares no code with the writer.

interface Vertex {
	readonly x: number;
	readonly y: number;
	readonly bulge?: number;
}

interface Entity {
	readonly type: string;
	readonly layer: string;
	readonly vertices?: readonly Vertex[];
	readonly text?: string;
	readonly textHeight?: number;
	readonly center?: Vertex;
}

function read(figure: Figure) {
	const text = writeDxf(figure);
	const parsed = new DxfParser().parseSync(text);
	if (parsed === null) throw new Error("not read");
	return {
		text,
		header: parsed.header,
		entities: parsed.entities as unknown as readonly Entity[],
		layers: Object.keys(parsed.tables.layer.layers),
	};
}

const figuresOf = ({ job, plans }: Planned) =>
	composeSheets(job, plans, {}, ["fitting", "bends"]).flatMap(({ figures }) => figures);
const named = (made: Planned, name: string) => figuresOf(made).find((figure) => figure.name === name) as Figure;

/** Source: DXF reference, LWPOLYLINE: bulge = tan(included angle / 4); the chord of an angle a is 2 r sin(a/2). */
function radiiIn(entities: readonly Entity[], layer: string): number[] {
	return entities
		.filter((entity) => entity.layer === layer)
		.flatMap(({ vertices = [] }) =>
			vertices.flatMap(({ x, y, bulge = 0 }, i) => {
				const next = vertices[i + 1];
				if (bulge === 0 || next === undefined) return [];
				return [Math.hypot(next.x - x, next.y - y) / (2 * Math.abs(Math.sin(2 * Math.atan(bulge))))];
			}),
		);
}

test("the plan is in mm of the room, by layers, its bends arcs of their own radius", () => {
	const made = planned({ openings: [{ wall: 1, from: 200, to: 1600, sill: 600, head: 2000 }] });
	const { header, entities, layers, text } = read(named(made, "plan"));
	expect(header.$INSUNITS).toBe(4);
	expect(layers).toEqual(expect.arrayContaining(["WALLS", "OPENINGS", "TRACK", "BRACKETS", "CUTS", "STACK", "TEXT"]));
	expect(text).toBe(writeDxf(named(made, "plan")));
	const radii = radiiIn(entities, "TRACK");
	expect(radii).toHaveLength(2);
	for (const radius of radii) expect(radius).toBeCloseTo(310, 3);
	// A turn to the right is clockwise, and that is a negative bulge.
	const track = entities.find(({ layer, vertices = [] }) => layer === "TRACK" && vertices.length > 4);
	expect(track?.vertices?.filter(({ bulge = 0 }) => bulge !== 0).map(({ bulge }) => bulge)).toEqual([
		expect.closeTo(-Math.tan(Math.PI / 8), 6),
		expect.closeTo(-Math.tan(Math.PI / 8), 6),
	]);
	const walls = entities.find(({ layer, vertices = [] }) => layer === "WALLS" && vertices.length === 4)?.vertices ?? [];
	const runs = walls.slice(1).map(({ x, y }, i) => Math.hypot(x - (walls[i]?.x ?? 0), y - (walls[i]?.y ?? 0)));
	expect(runs.map((run) => Number(run.toFixed(3)))).toEqual([900, 1800, 900]);
});

test("a template is at its own size: both edges of the track by the profile's width", () => {
	const made = planned();
	const { profile } = made.plan.system;
	const radii = radiiIn(read(named(made, "bend-1")).entities, "TRACK").map((radius) => Number(radius.toFixed(3)));
	expect(radii.sort((a, b) => a - b)).toEqual([310 - profile.width / 2, 310, 310 + profile.width / 2]);
});

test("a bow keeps its radius", () => {
	const made = example("bandstand");
	const radii = radiiIn(read(named(made, "plan")).entities, "TRACK");
	for (const { radius } of made.plan.bows)
		expect(Math.min(...radii.map((each) => Math.abs(each - radius)))).toBeLessThan(0.01);
});

test("text stands where it is read, in one line, whatever a job is called", () => {
	const made = planned({ name: "Front\tof %%c ^J house" });
	const { entities } = read(named(made, "plan"));
	const texts = entities.filter(({ type }) => type === "TEXT").map(({ text = "" }) => text);
	for (const figure of ["Corner 1", "(1800.0)", "R 310.0"]) expect(texts).toContain(figure);
	for (const text of texts) expect(text).not.toMatch(/[\r\n]/);
});

/** Source: DXF reference, LWPOLYLINE: an arc of bulge b on a chord c is c (1 + b²) / (2 b) · 2 atan b long. */
const lengthOf = ({ vertices = [] }: Entity): number =>
	vertices.slice(1).reduce((sum, { x, y }, i) => {
		const { x: fromX, y: fromY, bulge = 0 } = vertices[i] as Vertex;
		const chord = Math.hypot(x - fromX, y - fromY);
		return sum + (bulge === 0 ? chord : (chord * (1 + bulge ** 2) * Math.atan(Math.abs(bulge))) / Math.abs(bulge));
	}, 0);

test.each(["bandstand", "coach-house", "harbour-office", "tide-mill", "weir-keeper"])(
	"of %s the track is as long as planned, and each bracket as far from the first, however the paper is scaled",
	(name) => {
		const made = example(name);
		const { entities } = read(named(made, "plan"));
		const track = entities.filter(({ layer, type }) => layer === "TRACK" && type === "LWPOLYLINE").map(lengthOf);
		expect(Math.max(...track)).toBeCloseTo(made.plan.path?.length ?? 0, 0);
		const circles = entities
			.filter(({ layer, type }) => layer === "BRACKETS" && type === "CIRCLE")
			.map(({ center }) => center as Vertex);
		expect(circles).toHaveLength(made.plan.brackets.length);
		const [first, reference] = [circles[0], made.plan.brackets[0]?.at];
		if (first === undefined || reference === undefined) throw new Error("no bracket");
		made.plan.brackets.forEach(({ at }, i) => {
			const { x = 0, y = 0 } = circles[i] ?? {};
			expect(x - first.x, `bracket ${i + 1}`).toBeCloseTo(at.x - reference.x, 1);
			expect(y - first.y, `bracket ${i + 1}`).toBeCloseTo(at.y - reference.y, 1);
		});
	},
);
