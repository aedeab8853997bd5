import { importWalls, readDrawing } from "@baywright/sheets/read";
import fc from "fast-check";
import { expect, test } from "vitest";

/** Groups as a careless or hostile writer may put them: real names and codes, values of any kind. */
const value = fc.oneof(
	fc.constantFrom("0", "-1", "1e9", "1e300", "-1e-300", "NaN", "", "1800", "900.5", "WALLS", "0.4142", "1e12"),
	fc.double().map(String),
	fc.string({ maxLength: 8 }),
);
const group = fc.tuple(
	fc.constantFrom(0, 5, 8, 10, 11, 20, 21, 30, 31, 40, 42, 50, 51, 60, 66, 67, 70, 90, 91, 210, 220, 230),
	value,
);
const entity = fc
	.tuple(
		fc.constantFrom("LINE", "ARC", "LWPOLYLINE", "POLYLINE", "VERTEX", "SEQEND", "SPLINE", "INSERT", "ENDSEC"),
		fc.array(group, { maxLength: 14 }),
	)
	.map(([type, groups]) => `0\n${type}\n${groups.map(([code, text]) => `${code}\n${text}\n`).join("")}`);
const dxf = fc
	.tuple(value, fc.array(entity, { maxLength: 12 }))
	.map(
		([unit, entities]) =>
			`0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n${unit}\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n${entities.join("")}0\nENDSEC\n0\nEOF\n`,
	);

const number = fc.constantFrom("0", "10", "-5", "900", "1800", "1e400", "1e-9", ".5", "x");
const data = fc
	.array(fc.tuple(fc.constantFrom(..."MLHVCSQTAZmlhvcsqtaz"), fc.array(number, { maxLength: 7 })), { maxLength: 10 })
	.map((commands) => commands.map(([letter, numbers]) => letter + numbers.join(" ")).join(""));
const shape = fc
	.tuple(fc.constantFrom("path", "polyline", "polygon", "line", "rect", "g", "svg", "use"), data, number, number)
	.map(
		([name, d, a, b]) =>
			`<${name} d="${d}" points="${d}" x2="${a}" y2="${b}" width="${a}" height="${b}" transform="scale(${a} ${b})"/>`,
	);
const svg = fc
	.tuple(number, fc.array(shape, { maxLength: 8 }))
	.map(([width, shapes]) => `<svg width="${width}mm" viewBox="0 0 ${width} 9">${shapes.join("")}</svg>`);

const wish = fc.record({
	unit: fc.constantFrom("mm", "m", "file", undefined),
	chain: fc.constantFrom(undefined, 0, 1, 7),
	walls: fc.constantFrom<[number, number] | undefined>(undefined, [0, 0], [2, 1], [0, 9]),
	otherSide: fc.boolean(),
	reach: fc.constantFrom(undefined, 0.001, 100),
} as const);

test("whatever a file holds, there is an answer: walls, or where, what and what is allowed", () => {
	fc.assert(
		fc.property(fc.oneof(dxf, svg, fc.string()), wish, (text, wanted) => {
			const read = readDrawing(new TextEncoder().encode(text));
			const imported = read.ok ? importWalls(read.drawing, wanted) : read;
			if (!imported.ok) {
				expect(imported.problem.found).not.toBe("");
				expect(imported.problem.allowed).not.toBe("");
				return;
			}
			const { corners, rises, problems } = imported.walls;
			if (problems.length > 0) return;
			expect(rises).toHaveLength(corners.length - 1);
			for (const figure of [...corners.flat(), ...rises]) expect(Number.isFinite(figure)).toBe(true);
		}),
		{ seed: 1407, numRuns: 2000 },
	);
});
