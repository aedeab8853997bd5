import { describe, expect, test } from "vitest";
import { figures, table, words } from "../../../packages/cli/src/text/table.ts";
import { columnsOf, wrap } from "../../../packages/cli/src/text/wrap.ts";

describe("a table", () => {
	test("sets figures to the right, words to the left, and raises the heads to stand on one line", () => {
		expect(
			table(
				[words("mark"), figures("from left\ncut end"), words("note")],
				[
					["bracket 1", "50.0", ""],
					["b 2", "1043.5", "pinned"],
				],
			),
		).toEqual([
			"             from left",
			"  mark         cut end  note",
			"  bracket 1       50.0",
			"  b 2           1043.5  pinned",
		]);
	});

	test("wraps the widest words, never the figures, to stay within 100 columns", () => {
		const lines = table(
			[words("piece"), figures("length"), words("why")],
			[["A", "1234567.8", "so ".repeat(60).trim()]],
		);
		expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(100);
		expect(lines.slice(1).join(" ").match(/so/g)).toHaveLength(60);
		expect(lines[1]).toMatch(/^ {2}A {6}1234567\.8 {2}so so/);
		expect(lines[2]).toMatch(/^ {20}so so/);
	});

	test("wraps two wide columns of words alike", () => {
		const lines = table([words("a"), words("b")], [["x ".repeat(90).trim(), "y ".repeat(90).trim()]]);
		expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(100);
		expect(lines.length).toBeLessThan(1 + 6);
	});

	test("keeps columns under each other where signs are two columns wide", () => {
		const lines = table(
			[words("name"), figures("mm")],
			[
				["窓", "1.0"],
				["bay", "20.0"],
			],
		);
		expect(lines).toEqual(["  name    mm", "  窓     1.0", "  bay   20.0"]);
	});
});

describe("wrapped text", () => {
	test("keeps within its width with its indent, and loses no word", () => {
		const text = "one two three four five six seven eight nine ten";
		const lines = wrap(text, { width: 14, indent: "  " });
		expect(lines.every((line) => line.length <= 14 && line.startsWith("  "))).toBe(true);
		expect(lines.map((line) => line.trim()).join(" ")).toBe(text);
	});

	test("breaks a word longer than a line", () => {
		expect(wrap("ab abcdefghij", { width: 4 })).toEqual(["ab", "abcd", "efgh", "ij"]);
	});

	test.each([
		["it is 418 mm", 10, ["it is", "418 mm"]],
		['it is 94 1/2"', 10, ["it is", '94 1/2"']],
	])("keeps %j whole", (text, width, lines) => {
		expect(wrap(text, { width })).toEqual(lines);
	});

	test("counts marks upon letters as nothing", () => {
		expect(columnsOf("e\u0301t")).toBe(2);
	});
});
