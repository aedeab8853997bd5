import { type Bay, readReadingsCsv } from "@baywright/setout";
import { composeSheets, type PaperName, type Sheet, writeCsv } from "@baywright/sheets";
import { describe, expect, test } from "vitest";
import { example, type Planned, planned } from "./jobs.ts";
import { expectCalm, linesOf, wordsOf } from "./words-of.ts";

const survey = ({ job, plans }: Planned, paper: PaperName = "A4"): Sheet =>
	composeSheets(job, plans, { paper }, ["survey"])[0] as Sheet;

describe("a bay without readings", () => {
	test("has boxes for its runs, diagonals, corners, heights, openings and what is in the way, in that order", () => {
		const made = planned({
			openings: [{ wall: 1, from: 300, to: 1500 }],
			obstacles: [{ wall: 0, from: 100, to: 180, kind: "socket" }],
		});
		const sheet = survey(made);
		const lines = linesOf(sheet);
		const at = (words: string) => lines.findIndex((each) => each.startsWith(words));
		const order = [
			"Runs and rises",
			"Diagonals",
			"Corners",
			"Heights",
			"Windows and doors",
			"In the way",
			"What is to be drilled",
		].map(at);
		expect(order.every((place) => place >= 0)).toBe(true);
		expect(order).toEqual(order.toSorted((a, b) => a - b));
		for (const words of [
			"1  left wall",
			"2  front wall",
			"3  right wall",
			"left end – corner 2",
			"corner 1 – right end",
			"socket",
		])
			expect(lines).toContain(words);
		expectCalm(sheet);
	});

	test("no figure of the drawing is on it: what is drawn does not lead the hand that writes", () => {
		const words = wordsOf(
			survey(
				planned({
					corners: [
						[0, 0],
						[0, 917],
						[1813, 917],
						[1813, 0],
					],
					openings: [{ wall: 1, from: 317, to: 1511, sill: 823, head: 2047 }],
				}),
			),
		);
		for (const figure of ["1813", "917", "317", "1511", "823", "2047"]) expect(words).not.toContain(figure);
	});

	test("every kind of reading says how it is taken", () => {
		const words = wordsOf(survey(planned()));
		for (const how of [
			"Run: straight from corner to corner",
			"Straight through the air",
			"Chord: mark the same arm",
			"Above the finished floor",
		])
			expect(words).toContain(how);
	});
});

/** What a tape would read of a bay whose corners are known: worked out here from the corners alone. */
function readOff({ corners }: Pick<Bay, "corners">, row: Readonly<Record<string, string>>): number {
	const last = corners.length - 1;
	const corner = (name: string | undefined) => (name === "left end" ? 0 : name === "right end" ? last : Number(name));
	const p = (index: number) => corners[index] as readonly [number, number];
	const apart = (a: number, b: number) => Math.hypot(p(b)[0] - p(a)[0], p(b)[1] - p(a)[1]);
	if (row.kind === "run") return apart(Number(row.wall) - 1, Number(row.wall));
	if (row.kind === "diagonal") return apart(corner(row.from), corner(row.to));
	if (row.kind === "rise") return 0;
	const at = corner(row.corner);
	const [a, b] = [at - 1, at + 1].map((other) => {
		const long = apart(at, other);
		return [(p(other)[0] - p(at)[0]) / long, (p(other)[1] - p(at)[1]) / long] as const;
	}) as [readonly [number, number], readonly [number, number]];
	return Number(row.arm) * Math.hypot(a[0] - b[0], a[1] - b[1]);
}

describe("its readings as CSV", () => {
	test.each(["quay-cottage", "lantern-room", "signal-box"])(
		"%s: filled in, they are read in again and settle the bay as it is",
		(name) => {
			const made = example(name);
			const [bay] = made.job.bays;
			if (bay === undefined) throw new Error("no bay");
			const [table] = survey(made).tables;
			if (table === undefined) throw new Error("no table");
			const headings = table.columns.map(({ heading }) => heading);
			const value = headings.indexOf("value");
			const rows = table.rows.map((cells) => {
				const row = Object.fromEntries(headings.map((heading, i) => [heading, cells[i] ?? ""]));
				return cells.map((cell, i) => (i === value ? readOff(bay, row).toFixed(3) : cell));
			});
			const read = readReadingsCsv(writeCsv({ ...table, rows }), bay, "mm");
			if (!read.ok) throw new Error(JSON.stringify(read.problems));
			expect(read.readings).toHaveLength(rows.length);
			const taped = planned({ ...bay, readings: read.readings });
			expect(taped.plan.survey?.settled).toBe(true);
			expect(taped.plan.survey?.suspects).toEqual([]);
		},
	);

	test("arms are whole inches where an inch tape reads them", () => {
		const table = survey(planned({}, { display: { length: "in" } })).tables[0];
		const arm = table?.columns.findIndex(({ heading }) => heading === "arm") ?? -1;
		const arms = table?.rows.map((cells) => cells[arm]).filter((each) => each !== "") ?? [];
		expect(arms.length).toBeGreaterThan(0);
		for (const each of arms) expect(each).toMatch(/^\d+"$/);
	});
});

test("a bay that is taped in part says what to take first", () => {
	const made = planned({ readings: [{ kind: "run", wall: 0, value: 902 }] });
	expect(made.plan.survey?.next).not.toBeNull();
	const words = wordsOf(survey(made));
	expect(words).toContain("Take first:");
	expect(words).toContain("1 reading is in the job already");
});

test("a bowed wall's rise is asked for", () => {
	const { tables } = survey(example("bandstand"));
	expect(tables[0]?.rows.some(([kind]) => kind === "rise")).toBe(true);
});

test.each(["A4", "A3", "Letter"] as const)("on %s nothing meets, for a bay of many walls", (paper) => {
	expectCalm(survey(example("lantern-room"), paper));
});
