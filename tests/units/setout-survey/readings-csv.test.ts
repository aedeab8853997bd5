import { csvProblemLine, readReadingsCsv, writeReadingsCsv } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bayOf } from "./bay.ts";

const bay = bayOf();

const read = (text: string, unit: "mm" | "cm" | "in" = "mm", of = bay) => {
	const outcome = readReadingsCsv(text, of, unit);
	if (!outcome.ok) throw new Error(outcome.problems.map(csvProblemLine).join("\n"));
	return outcome.readings;
};
const refused = (text: string) => {
	const outcome = readReadingsCsv(text, bay, "mm");
	return outcome.ok ? [] : outcome.problems.map(csvProblemLine);
};

const every = [
	{ kind: "run", wall: 0, value: 903, sd: null },
	{ kind: "diagonal", from: 0, to: 2, value: 2012, sd: 3 },
	{ kind: "diagonal", from: 1, to: 3, value: 2011.5, sd: null },
	{ kind: "angle", corner: 1, value: 90.5, sd: 0.5 },
	{ kind: "chord", corner: 2, arm: 300, value: 424.3, sd: null },
	{ kind: "rise", wall: 1, at: null, value: -12, sd: null },
	{ kind: "rise", wall: 1, at: 400, value: 8, sd: 1 },
	{ kind: "square", corner: 3, wall: 0, value: 1800, sd: null },
];

describe("readings from a CSV", () => {
	test("every kind, corners and walls as on screen", () => {
		const text = [
			"kind,wall,corner,from,to,arm,at,value,sd",
			"run,1,,,,,,903,",
			"diagonal,,,left end,2,,,2012,3",
			"diagonal,,,1,right end,,,2011.5,",
			"angle,,1,,,,,90.5°,0.5",
			"chord,,Corner 2,,,300,,424.3,",
			"rise,front wall,,,,,,-12,",
			"Rise,2,,,,,400,8,1",
			"square,left,Right end,,,,,1800,",
		].join("\n");
		expect(read(text)).toEqual(every);
	});

	test("only the headings that are needed, in any order; semicolons with decimal commas; quotes; empty lines; a byte order mark", () => {
		const text = '\uFEFFValue;KIND;"wall"\r\n903,5;run;1\r\n;;\r\n"1800";"run";"front wall"\r\n';
		expect(read(text)).toEqual([
			{ kind: "run", wall: 0, value: 903.5, sd: null },
			{ kind: "run", wall: 1, value: 1800, sd: null },
		]);
	});

	test("lengths in the job's unit or in their own", () => {
		const text = 'kind,wall,value\nrun,1,90.3\nrun,2,1.8 m\nrun,3,"35 1/2"""\n';
		expect(read(text, "cm").map(({ value }) => value)).toEqual([903, 1800, 901.7]);
	});

	test("walls of a bay of more than three by the corners at their ends", () => {
		const corners = [
			[0, 0],
			[0, 900],
			[900, 1500],
			[1800, 900],
			[1800, 0],
		];
		const five = bayOf({ corners });
		const text = "kind,wall,value\nrun,left end-1,903\nrun,wall 1–2,1100\nrun,4,900\n";
		expect(read(text, "mm", five)).toMatchObject([{ wall: 0 }, { wall: 1 }, { wall: 3 }]);
	});

	test.each([
		[
			"kind,wall,value\nrun,4,900",
			'line 2, wall: found "4", allowed 1 to 3 from the left, or left wall, front wall, right wall',
		],
		["kind,wall,value\n\nrun,1,90x", 'line 3, value: found "90x", allowed the units mm, cm, m, in and ft'],
		["kind,wall,value\nrun,1,-900", 'line 2, value: found "-900", allowed a length without a sign'],
		["kind,wall,value\nrun,1,0", 'line 2, value: found "0", allowed a length over 0'],
		["kind,wall,value\nwalk,1,900", 'line 2, kind: found "walk", allowed run, diagonal, angle, chord, rise, square'],
		["kind,wall,value,corner\nrun,1,900,2", 'line 2, corner: found "2", allowed nothing: a run has none'],
		["kind,corner,value\nangle,left end,90", 'line 2, corner: found "left end", allowed 1, 2'],
		["kind,corner,value\nangle,1,400", 'line 2, value: found "400", allowed degrees over 0 and under 360'],
		["kind,from,to,value\ndiagonal,1,1,900", 'line 2, to: found "1", allowed another corner than from'],
		["kind,from,to,value\ndiagonal,1,,900", "line 2, to: found nothing, allowed left end, 1, 2, right end"],
		["kind,corner,arm,value\nchord,1,300,600", 'line 2, value: found "600", allowed less than both arms together'],
		[
			"kind,corner,wall,value\nsquare,1,2,600",
			'line 2, corner: found "1", allowed a corner that is not at an end of that wall',
		],
		["kind,wall,value\nrun,1,900,5", "line 2: found 4 fields, allowed 3, one under each heading"],
		["kind,wall,value,kind\n", 'line 1: found the heading "kind" twice, allowed once'],
		[
			"kind,wall,length\n",
			'line 1: found the heading "length", allowed the headings kind, wall, corner, from, to, arm, at, value, sd',
		],
		[
			"kind,wall\n",
			'line 1: found no heading "value", allowed the headings kind, wall, corner, from, to, arm, at, value, sd',
		],
		["", "line 1: found nothing, allowed the headings kind, wall, corner, from, to, arm, at, value, sd"],
		[
			'kind,wall,value\nrun,1,"900',
			"line 2: found a double quote that is never closed, allowed one at either end of a field",
		],
		[
			'kind,wall,value\nrun,1,9"00',
			"line 2: found a double quote within a field, allowed one at either end of it, and twice inside",
		],
		['kind,wall,value\nrun,1,"9"00', "line 2: found text after a closing double quote, allowed the end of the field"],
	])("refused: %j", (text, message) => {
		expect(refused(text)).toEqual([message]);
	});

	test("every bad field is told, and nothing is taken", () => {
		expect(refused("kind,wall,value\nrun,1,900\nrun,9,\n")).toEqual([
			'line 3, wall: found "9", allowed 1 to 3 from the left, or left wall, front wall, right wall',
			"line 3, value: found nothing, allowed a length such as 2400, 240 cm, 2.4 m or 94 1/2 in",
		]);
	});

	test("a quoted field that runs over lines does not put the line numbers out", () => {
		expect(refused('kind,wall,value\nrun,1,"9\n00"\nwalk,1,900\n').at(-1)).toMatch(/^line 4, kind/);
	});

	test("what is written is read back, in every unit", () => {
		const length = fc.double({ min: 0.1, max: 9000, noNaN: true });
		const sd = fc.option(fc.double({ min: 0.01, max: 50, noNaN: true }), { nil: null });
		const wall = fc.integer({ min: 0, max: 2 });
		const between = fc.integer({ min: 1, max: 2 });
		const signed = fc.double({ min: -900, max: 900, noNaN: true });
		const reading = fc.oneof(
			fc.record({ kind: fc.constant("run" as const), wall, value: length, sd }),
			fc.record({ kind: fc.constant("diagonal" as const), from: fc.constant(0), to: between, value: length, sd }),
			fc.record({
				kind: fc.constant("angle" as const),
				corner: between,
				value: fc.double({ min: 0.1, max: 359.9, noNaN: true }),
				sd,
			}),
			length.chain((arm) =>
				fc.record({
					kind: fc.constant("chord" as const),
					corner: between,
					arm: fc.constant(arm),
					value: fc.constant(arm * 1.4),
					sd,
				}),
			),
			fc.record({ kind: fc.constant("rise" as const), wall, at: fc.option(length, { nil: null }), value: signed, sd }),
			fc.record({
				kind: fc.constant("square" as const),
				corner: fc.constant(3),
				wall: fc.constant(0),
				value: signed,
				sd,
			}),
		);
		fc.assert(
			fc.property(
				fc.array(reading, { maxLength: 8 }),
				fc.constantFrom("mm" as const, "cm" as const, "in" as const),
				(readings, unit) => {
					const back = read(writeReadingsCsv({ readings, walls: bay.walls }, unit), unit);
					expect(back).toHaveLength(readings.length);
					back.forEach((each, i) => {
						const wanted = Object.entries(readings[i] as object);
						for (const [key, value] of wanted) {
							const found = (each as unknown as Record<string, unknown>)[key];
							if (typeof value === "number") expect(found).toBeCloseTo(value, 8);
							else expect(found).toBe(value);
						}
					});
				},
			),
			{ seed: 1407, numRuns: 200 },
		);
	});
});
