import { type Drawing, type ImportWish, importWalls, readDrawing, type WallImport } from "@baywright/sheets/read";

/** A drawing that can be read. */
export function drawingOf(text: string): Drawing {
	const read = readDrawing(new TextEncoder().encode(text));
	if (!read.ok) throw new Error(JSON.stringify(read.problem));
	return read.drawing;
}

/** The walls wished for, of a drawing that has some. */
export function wallsOf(text: string, wish: ImportWish = {}): WallImport {
	const imported = importWalls(drawingOf(text), wish);
	if (!imported.ok) throw new Error(JSON.stringify(imported.problem));
	return imported.walls;
}

/** Straight from corner to corner, mm. */
export const runsOf = ({ corners }: Pick<WallImport, "corners">): number[] =>
	corners.slice(1).map(([x, y], i) => Math.hypot(x - (corners[i]?.[0] ?? 0), y - (corners[i]?.[1] ?? 0)));

/** Room angles at the corners between straight walls, degrees, by the law of cosines and the side of the turn. */
export function anglesOf({ corners }: Pick<WallImport, "corners">): number[] {
	return corners.slice(1, -1).map((b, i) => {
		const [a, c] = [corners[i], corners[i + 2]] as [readonly [number, number], readonly [number, number]];
		const [p, q, r] = [
			Math.hypot(b[0] - a[0], b[1] - a[1]),
			Math.hypot(c[0] - b[0], c[1] - b[1]),
			Math.hypot(c[0] - a[0], c[1] - a[1]),
		];
		const inner = (Math.acos(Math.min(1, Math.max(-1, (p * p + q * q - r * r) / (2 * p * q)))) * 180) / Math.PI;
		const right = (b[1] - a[1]) * (c[0] - b[0]) - (b[0] - a[0]) * (c[1] - b[1]) >= 0;
		return right ? inner : 360 - inner;
	});
}

/** A text DXF of these entities, each a list of group codes and values. Source: DXF reference, "General DXF file structure". */
export function dxfOf(entities: readonly (readonly (string | number)[])[], unit: number | null = 4): string {
	const header = unit === null ? [] : [9, "$INSUNITS", 70, unit];
	const groups = [
		0,
		"SECTION",
		2,
		"HEADER",
		...header,
		0,
		"ENDSEC",
		0,
		"SECTION",
		2,
		"ENTITIES",
		...entities.flat(),
		0,
		"ENDSEC",
		0,
		"EOF",
	];
	return `${groups.join("\n")}\n`;
}

export const line = (x1: number, y1: number, x2: number, y2: number, layer = "WALLS") =>
	[0, "LINE", 8, layer, 10, x1, 20, y1, 30, 0, 11, x2, 21, y2, 31, 0] as const;

export const polyline = (
	points: readonly (readonly [x: number, y: number, bulge?: number])[],
	closed = false,
	layer = "WALLS",
) =>
	[
		0,
		"LWPOLYLINE",
		8,
		layer,
		90,
		points.length,
		70,
		closed ? 1 : 0,
		...points.flatMap(([x, y, bulge = 0]) => [10, x, 20, y, 42, bulge]),
	] as const;
