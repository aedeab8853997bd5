import { composeSheets, type Sheet, writeCsv } from "@baywright/sheets";
import { describe, expect, test } from "vitest";
import { example, type Planned, planned } from "./jobs.ts";
import { expectCalm, wordsOf } from "./words-of.ts";

const orders = ({ job, plans }: Planned): Sheet[] => composeSheets(job, plans, {}, ["order"]);
const order = (made: Planned): Sheet => orders(made)[0] as Sheet;

const cellsUnder = ({ tables }: Sheet, heading: string): (string | undefined)[] => {
	const [table] = tables;
	const column = table?.columns.findIndex((each) => each.heading === heading) ?? -1;
	return table?.rows.map((cells) => cells[column]) ?? [];
};

describe("without prices", () => {
	test("there is no money on the sheet, and it says that nothing is priced", () => {
		const sheet = order(planned());
		expect(cellsUnder(sheet, "each").every((each) => each === undefined)).toBe(true);
		expect(wordsOf(sheet)).toContain("Not priced");
		expect(wordsOf(sheet)).not.toContain("Total");
	});

	test("brackets are as many as the plan has, needed and spare make what is to be ordered", () => {
		const made = planned({}, { spare: { brackets: 25 } });
		const sheet = order(made);
		const row = sheet.tables[0]?.rows.find((cells) => cells[1]?.startsWith("Wall bracket"));
		const count = made.plan.brackets.filter(({ role }) => role !== "joint").length;
		expect(row?.slice(2, 5)).toEqual([
			String(count),
			String(Math.ceil(count / 4)),
			String(count + Math.ceil(count / 4)),
		]);
	});

	test("every line says what it was counted from", () => {
		const made = example("orchard-lodge");
		const sheet = order(made);
		const [what, why] = sheet.tables;
		expect(why?.rows.map(([name]) => name)).toEqual(what?.rows.map((cells) => cells[1]));
		for (const cells of why?.rows ?? []) expect(cells.at(-1)).not.toBe("");
	});
});

describe("with some prices", () => {
	const made = planned(
		{},
		{
			prices: [
				{ item: "bracket", each: 3.45 },
				{ item: "glider", each: 0.15 },
				{ item: "tassel", each: 9 },
			],
		},
	);
	const sheet = order(made);

	test("cost is quantity times price and the total is their sum, reckoned here in hundredths", () => {
		const ordered = cellsUnder(sheet, "to order");
		const each = cellsUnder(sheet, "each");
		const cost = cellsUnder(sheet, "cost");
		const hundredths = (text: string | undefined) => Math.round(Number(text) * 100);
		let total = 0;
		each.forEach((price, i) => {
			if (price === "not priced") {
				expect(cost[i]).toBe("");
				return;
			}
			expect(hundredths(cost[i])).toBe(Math.round(Number(ordered[i]) * hundredths(price)));
			total += hundredths(cost[i]);
		});
		expect(total).toBeGreaterThan(0);
		expect(wordsOf(sheet)).toContain(`Total of what is priced: ${(total / 100).toFixed(2)}`);
	});

	test("what has no price says so, in the table and under the total", () => {
		const unpriced = cellsUnder(sheet, "each").filter((price) => price === "not priced").length;
		expect(unpriced).toBeGreaterThan(0);
		expect(wordsOf(sheet)).toContain(`Not in it: ${unpriced} lines have no price`);
		expect(wordsOf(sheet)).toContain("Prices that nothing here goes by: tassel");
	});
});

describe("a job of several bays", () => {
	const one = {
		corners: [
			[0, 0],
			[0, 900],
			[1800, 900],
			[1800, 0],
		],
	};
	const made = planned(
		{},
		{
			bays: [
				{ id: "hall", name: "Hall", ...one },
				{ id: "study", name: "Study", ...one },
			],
		},
	);

	test("has one order, for all of them", () => {
		const sheets = orders(made);
		expect(sheets.map(({ bay }) => bay)).toEqual(["job"]);
		const gliders = made.plans.flatMap(({ parts }) => parts.filter(({ kind }) => kind === "glider"));
		const needed = gliders.reduce((sum, { quantity }) => sum + (quantity ?? 0), 0);
		expect(sheets[0]?.tables[0]?.rows.find((cells) => cells[1] === "Glider")?.[2]).toBe(String(needed));
		const why = sheets[0]?.tables[1]?.rows ?? [];
		expect(why.some((cells) => cells[1] === "study")).toBe(true);
		expect(wordsOf(sheets[0] as Sheet)).toContain("Hall, Study");
	});
});

test("what is not known yet is not counted as nothing", () => {
	// Without a height nobody knows how far the cord hangs.
	const sheet = order(planned());
	const cord = sheet.tables[0]?.rows.find((cells) => cells[1] === "Cord");
	expect(cord?.slice(2, 5)).toEqual(["not known", "–", "not known"]);
});

test("as CSV it has a line for each part", () => {
	const sheet = order(planned());
	const [table] = sheet.tables;
	if (table === undefined) throw new Error("no table");
	expect(writeCsv(table).trim().split("\r\n")).toHaveLength(table.rows.length + 1);
});

test.each(["tollgate-house", "orchard-lodge", "gable-end"])("%s: nothing meets", (name) => {
	expectCalm(order(example(name)));
});
