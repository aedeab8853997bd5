import { composeSheets, type PaperName, type Sheet } from "@baywright/sheets";
import { describe, expect, test } from "vitest";
import { type Planned, planned } from "./jobs.ts";
import { expectCalm, linesOf, wordsOf } from "./words-of.ts";

const workroom = ({ job, plans }: Planned, paper: PaperName = "A4"): Sheet =>
	composeSheets(job, plans, { paper }, ["workroom"])[0] as Sheet;

const cloths = [
	{ id: "check", name: "Check", width: 1370, repeat: 640 },
	{ id: "drop", name: "Leaf", width: 1370, repeat: 640, match: "half-drop" },
	{ id: "plain", name: "Plain", width: 1370, lining: { name: "Cotton lining" } },
];

const bayOf = (curtain: object, makeUp: object = {}): Planned =>
	planned({ curtains: [{ cloth: "check", fullness: 2, drop: 2100, ...curtain }], makeUp }, { cloths });

// By hand: the track of this bay is 550 + 310 π/2 + 1100 + 310 π/2 + 550 = 3173.9 along its centre line, so each of a pair has 1586.9; half an
// overlap of 100 makes it 1636.9 wide; twice as full it is 3273.9 of cloth, with 60 turned in at both sides 3393.9, which is 2.48 widths of
// 1370. A drop of 2100 with 80 and 200 for heading and hem is 2380, four repeats of 640 are 2560. (Widths and drops as the handbooks of the
// trade reckon them; from memory.)
describe("a pair that was worked out by hand", () => {
	test("is on the sheet figure for figure", () => {
		const sheet = workroom(bayOf({}));
		const rows = sheet.tables[0]?.rows ?? [];
		expect(rows).toHaveLength(2);
		for (const row of rows)
			expect(row.slice(3)).toEqual(["2", "1636.9", "2100.0", "3273.9", "3", "3", "2560.0", "7.68", "", "", row.at(-1)]);
		const lines = linesOf(sheet);
		for (const figure of [
			"1637 mm",
			"2100 mm",
			"3274 mm",
			"2560 mm",
			"7.68 m",
			"Curtain 1, left part",
			"Curtain 1, right part",
		])
			expect(lines).toContain(figure);
		expect(wordsOf(sheet)).toContain("1587 of track + 50 overlap");
		expect(wordsOf(sheet)).toContain("2380 mm with turnings, up to 4 × 640 mm of repeat");
	});

	test("its cut plan has six lengths, numbered, of the cut drop, and the metres of all", () => {
		const lines = linesOf(workroom(bayOf({})));
		expect(lines).toContain("Cutting Check: 15.36 m");
		for (const number of ["1", "2", "3", "4", "5", "6"]) expect(lines).toContain(number);
		expect(lines.filter((each) => each === "2560 mm").length).toBeGreaterThanOrEqual(6);
	});

	test("in half widths it has five, and one of them is shared", () => {
		const sheet = workroom(bayOf({}, { widths: "half" }));
		expect(sheet.tables[0]?.rows.map((row) => [row[7], row[8]])).toEqual([
			["2.5", "3"],
			["2.5", "2"],
		]);
		const lines = linesOf(sheet);
		expect(lines).toContain("Cutting Check: 12.80 m");
		expect(lines).toContain("5");
		expect(lines.filter((each) => each === "Curtain 1, left part").length).toBe(4);
		expect(lines.filter((each) => each === "Curtain 1, right part").length).toBe(4);
	});

	test("in a half-drop match each length is an odd number of half repeats", () => {
		// 2380 / 640 = 3.72: 3.5 repeats are too short, 4.5 are 2880.
		const sheet = workroom(bayOf({ cloth: "drop" }));
		expect(sheet.tables[0]?.rows[0]?.[9]).toBe("2880.0");
		expect(wordsOf(sheet)).toContain("up to 4.5 × 640 mm of repeat, half-drop");
	});
});

describe("edges", () => {
	test("the leading edges of a pair meet in the middle with half the overlap, the others turn back to the wall", () => {
		const sheet = workroom(bayOf({}, { returns: 75, overlap: 120 }));
		const lines = linesOf(sheet);
		expect(lines.filter((each) => each === "leading edge, overlap 60 mm")).toHaveLength(2);
		expect(lines.filter((each) => each === "return 75 mm")).toHaveLength(2);
		expect(wordsOf(sheet)).toContain("1587 of track + 60 overlap + 75 return");
	});

	test("a single curtain has both returns and no overlap", () => {
		const sheet = workroom(bayOf({ stacks: "left" }, { returns: 75 }));
		expect(wordsOf(sheet)).toContain("3174 of track + 150 return");
		expect(linesOf(sheet)).toContain("leading edge");
		expect(linesOf(sheet).filter((each) => each === "return 75 mm")).toHaveLength(2);
	});
});

describe("what is not known", () => {
	test("a drop that is not given is said, and nothing is cut by it", () => {
		const words = wordsOf(workroom(bayOf({ drop: null })));
		expect(words).toContain("A drop is not given");
		expect(words).toContain("not known");
		expect(words).not.toContain("Cutting Check");
	});

	test("a cloth that is not chosen is said", () => {
		expect(wordsOf(workroom(bayOf({ cloth: null })))).toContain("none chosen");
	});

	test("what is drawn but not taped is not to be cut by", () => {
		expect(wordsOf(workroom(bayOf({})))).toContain("nothing is taped yet, so do not cut by them");
	});
});

test("lining is said, in widths of its own", () => {
	const sheet = workroom(bayOf({ cloth: "plain" }));
	expect(sheet.tables[0]?.rows[0]?.slice(11, 13)).toEqual(["3", "7.14"]);
	expect(wordsOf(sheet)).toContain("3 widths of 2380 mm, Cotton lining");
});

test("a job that names no curtain has nothing for the workroom", () => {
	expect(workroom(planned())).toBeUndefined();
});

test.each(["A4", "A3", "Letter"] as const)("on %s nothing meets, in mm and in inches", (paper) => {
	for (const length of ["mm", "cm", "in"] as const)
		expectCalm(
			workroom(
				planned(
					{
						curtains: [
							{ from: 0, to: 700, cloth: "check", drop: 2100 },
							{ from: 700, to: 2400, cloth: "plain", drop: 2100, stacks: "both" },
							{ from: 2400, cloth: "drop", drop: 1700, heading: "wave" },
						],
						makeUp: { returns: 75, widths: "half" },
					},
					{ cloths, display: { length } },
				),
				paper,
			),
		);
});
