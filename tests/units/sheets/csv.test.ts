import { composeSheets, type TableData, writeCsv } from "@baywright/sheets";
import { expect, test } from "vitest";
import { planned } from "./jobs.ts";

const table = (rows: string[][]): TableData => ({
	name: "test",
	title: "Test",
	columns: [
		{ heading: "", of: "tick" },
		{ heading: "what\nfor", of: "words" },
		{ heading: "mm", of: "figures" },
	],
	rows,
});

test("headings in one line, no boxes to tick, quoted where it must be", () => {
	expect(writeCsv(table([["", 'a "b", c', "12.5"]]))).toBe('what for,mm\r\n"a ""b"", c",12.5\r\n');
});

test("nothing that a spreadsheet would reckon with is left to begin a field, and numbers stay numbers", () => {
	// Source: OWASP, CSV Injection: = + - @ tab and return.
	const bad = ["=1+1", "+1", "-1+1", "@a", "\t=1", "\r=1"];
	const text = writeCsv(table(bad.map((each) => ["", each, "-3.5"])));
	for (const each of bad) expect(text).not.toContain(`\n${each}`);
	expect(text).toContain("'=1+1,-3.5");
});

test("the tables of the fitting sheet are the plan's", () => {
	const { job, plans, plan } = planned();
	const brackets = composeSheets(job, plans, {}, ["fitting"])[0]?.tables.find(({ name }) => name === "brackets");
	const lines = writeCsv(brackets as TableData)
		.trim()
		.split("\r\n")
		.slice(1);
	expect(lines.map((line) => line.split(",").slice(2, 4).map(Number))).toEqual(
		plan.brackets.map(({ fromLeftCorner, fromRightCorner }) => [
			Number(fromLeftCorner.toFixed(1)),
			Number(fromRightCorner.toFixed(1)),
		]),
	);
});
