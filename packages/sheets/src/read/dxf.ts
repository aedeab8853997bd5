import { beginning, type FileUnit, LayerSorter, type ReadDrawing, unread } from "./drawing.ts";
import { numberAt, numberOf, readSections, type TagGroup, textAt } from "./dxf-tags.ts";
import type { Stroke, StrokePoint } from "./stroke.ts";

/** What a binary DXF begins with. Source: DXF reference, "Binary DXF files". */
export const BINARY_DXF = "AutoCAD Binary DXF";

/**
 * Reads what is drawn in the model space of a text DXF: LINE, ARC, LWPOLYLINE and flat POLYLINE become strokes, everything else is left out and told.
 * Source of every group code: DXF reference, "ENTITIES section".
 */
export function readDxf(text: string): ReadDrawing {
	const read = readSections(text);
	const allowed = "a DXF as text: pairs of lines, a group code and a value";
	if (!read.ok) return unread(`line ${read.line}`, beginning(read.found), allowed);
	const { header, layers, entities } = read.sections;
	if (entities === null) return unread("", "no section of entities", "a DXF with lines drawn in it");
	const sorter = new LayerSorter();
	const unseen = new Set(layers.filter(isUnseen).map((layer) => textAt(layer, 2)));
	for (let i = 0; i < entities.length; i++) {
		const entity = entities[i] as TagGroup;
		const parts: TagGroup[] = [];
		// A POLYLINE's corners, or a block reference's texts, follow as entities of their own.
		while (/^(VERTEX|ATTRIB)$/.test(entities[i + 1]?.type ?? "")) parts.push(entities[++i] as TagGroup);
		if (entity.type !== "SEQEND") takeIn(entity, parts, unseen, sorter);
	}
	return { ok: true, drawing: { kind: "dxf", unit: unitOf(header.get("$INSUNITS")), layers: sorter.layers } };
}

/** Off where its colour is negative, frozen by bit 1 of its flags. Source: DXF reference, "LAYER", groups 62 and 70. */
const isUnseen = (layer: TagGroup): boolean => numberAt(layer, 62) < 0 || (numberAt(layer, 70) & 1) === 1;

function takeIn(
	entity: TagGroup,
	parts: readonly TagGroup[],
	unseen: ReadonlySet<string | undefined>,
	sorter: LayerSorter,
): void {
	const name = textAt(entity, 8) ?? "0";
	const layer = withLetters(name);
	const place = `${entity.type} at line ${entity.line}`;
	const read = unseen.has(name)
		? "something on a layer that is off or frozen: switch it on in your drawing program first"
		: usable(entity, parts);
	if (typeof read === "string") sorter.leaveOut(layer, read, place);
	else sorter.add(layer, { ...read, place });
}

/** Letters that a code page has none of stand as \\U+ and four hexadecimal digits, in files before 2007. From memory. */
const withLetters = (text: string): string =>
	text.replace(/\\U\+([0-9a-f]{4})/gi, (_, digits: string) => String.fromCharCode(Number.parseInt(digits, 16)));

/** The points of a line that will do, or why it will not. */
function usable(entity: TagGroup, parts: readonly TagGroup[]): Points | string {
	if (numberAt(entity, 67) === 1) return "something on a paper layout: allowed is what is drawn in the model";
	if (numberAt(entity, 60) === 1) return "something hidden: allowed is what is seen";
	const read = readPoints(entity, parts);
	return read ?? WORDS[entity.type] ?? `${entity.type}: ${ALLOWED}`;
}

const ALLOWED = "allowed are LINE, ARC, LWPOLYLINE and flat POLYLINE";

const WORDS: Readonly<Record<string, string>> = {
	SPLINE: `a spline: ${ALLOWED}`,
	ELLIPSE: `an ellipse: ${ALLOWED}`,
	CIRCLE: `a whole circle: ${ALLOWED}`,
	INSERT: "a block reference: explode it in your drawing program first",
	"3DFACE": `a face in space: ${ALLOWED}`,
	"3DSOLID": `a solid: ${ALLOWED}`,
	MLINE: "a multiline: explode it in your drawing program first",
	HATCH: "hatching: it is no wall",
	TEXT: "text: it is no wall",
	MTEXT: "text: it is no wall",
	DIMENSION: "a dimension: it is no wall",
	LEADER: "a leader: it is no wall",
	POINT: "a point: it is no wall",
};

type Points = Pick<Stroke, "points" | "closed">;

/** Null for what is no line at all, words for a line that will not do. */
function readPoints(entity: TagGroup, parts: readonly TagGroup[]): Points | string | null {
	switch (entity.type) {
		case "LINE":
			return linePoints(entity);
		case "ARC":
			return flat(entity, arcPoints(entity));
		case "LWPOLYLINE":
			return flat(entity, { points: corners(entity), closed: isClosed(entity) });
		case "POLYLINE":
			return polyline(entity, parts);
		default:
			return null;
	}
}

const isClosed = (entity: TagGroup): boolean => (numberAt(entity, 70) & 1) === 1;

/** A LINE's ends are in the world's axes, whatever its extrusion. */
function linePoints(entity: TagGroup): Points | string {
	const end = (code: number) => ({ x: numberAt(entity, code, NaN), y: numberAt(entity, code + 10, NaN), bulge: 0 });
	const points = [end(10), end(11)];
	if (rises(points, [numberAt(entity, 30), numberAt(entity, 31)])) return `a line that rises in space: ${FLAT}`;
	return { points, closed: false };
}

const FLAT = "allowed are lines that lie flat";

/** Whether heights differ by more than measuring them does, against the size of the line. */
function rises(points: readonly StrokePoint[], heights: readonly number[]): boolean {
	const span = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
	const size = Math.hypot(span(points.map(({ x }) => x)), span(points.map(({ y }) => y)));
	return span(heights) > size * LEVEL;
}

/** Measured lines are seldom quite level; so little a slope leaves a length in plan right to 1 in 5000. By Pythagoras: √(1 + 0.02²) − 1. */
const LEVEL = 0.02;

/** Always counter-clockwise from its start angle to its end angle, degrees. */
function arcPoints(entity: TagGroup): Points {
	const [x, y, radius] = [numberAt(entity, 10, NaN), numberAt(entity, 20, NaN), numberAt(entity, 40, NaN)];
	const [start, end] = [numberAt(entity, 50), numberAt(entity, 51)];
	const sweep = ((((end - start) % 360) + 360) % 360 || 360) * RADIAN;
	const at = (angle: number) => ({ x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) });
	return {
		points: [
			{ ...at(start * RADIAN), bulge: Math.tan(sweep / 4) },
			{ ...at(end * RADIAN), bulge: 0 },
		],
		closed: false,
	};
}

const RADIAN = Math.PI / 180;

/** Each group 10 begins a corner. */
function corners({ tags }: TagGroup): StrokePoint[] {
	const points: { x: number; y: number; bulge: number }[] = [];
	for (const { code, value } of tags) {
		const last = points.at(-1);
		if (code === 10) points.push({ x: numberOf(value), y: Number.NaN, bulge: 0 });
		else if (code === 20 && last !== undefined) last.y = numberOf(value);
		else if (code === 42 && last !== undefined) last.bulge = numberOf(value);
	}
	return points;
}

/** Bits of a POLYLINE's group 70 and of a VERTEX's. */
const SPLINE_FITTED = 4;
const MESHES = 16 | 64;
const CONTROL_POINT = 16;

function polyline(entity: TagGroup, parts: readonly TagGroup[]): Points | string {
	const flags = numberAt(entity, 70);
	if ((flags & MESHES) !== 0) return `a mesh: ${ALLOWED}`;
	if ((flags & SPLINE_FITTED) !== 0) return `a polyline fitted as a spline: ${ALLOWED}`;
	const drawn = parts.filter((part) => (numberAt(part, 70) & CONTROL_POINT) === 0);
	const points = drawn.map((part) => ({
		x: numberAt(part, 10, NaN),
		y: numberAt(part, 20, NaN),
		bulge: numberAt(part, 42),
	}));
	const heights = drawn.map((part) => numberAt(part, 30));
	if (rises(points, heights)) return `a polyline that rises in space: ${FLAT}`;
	return flat(entity, { points, closed: isClosed(entity) });
}

/**
 * In the world's axes. An entity seen from below has its x the other way round; one that lies aslant is no plan.
 * Source: DXF reference, "Arbitrary axis algorithm": for the extrusion (0, 0, −1) it gives the axes (−1, 0, 0) and (0, 1, 0).
 */
function flat(entity: TagGroup, { points, closed }: Points): Points | string {
	if (points.length < 2) return "a line of one point: allowed are two and more";
	const [x, y, z] = [numberAt(entity, 210), numberAt(entity, 220), numberAt(entity, 230, 1)];
	if (!(Math.abs(x) < UPRIGHT && Math.abs(y) < UPRIGHT)) return `a line that lies aslant in space: ${FLAT}`;
	if (z > 0) return { points, closed };
	return { points: points.map((p) => ({ x: -p.x, y: p.y, bulge: -p.bulge })), closed };
}

const UPRIGHT = 1e-9;

/** Source: DXF reference, header variable $INSUNITS; 25.4 mm to the inch (international yard and pound agreement, 1959). */
const UNITS: Readonly<Record<string, readonly [mm: number, name: string]>> = {
	1: [25.4, "inches"],
	2: [304.8, "feet"],
	4: [1, "millimetres"],
	5: [10, "centimetres"],
	6: [1000, "metres"],
	10: [914.4, "yards"],
	14: [100, "decimetres"],
};

function unitOf(value: string | undefined): FileUnit | null {
	const [mm, name] = UNITS[String(numberOf(value ?? ""))] ?? [];
	return mm === undefined ? null : { mm, source: `$INSUNITS is ${numberOf(value ?? "")}: ${name}` };
}
