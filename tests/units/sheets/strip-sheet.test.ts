import { findingSamples, formatLength, parseJob, planJob, sampleJob, severityOf } from "@baywright/setout";
import { composeSheets, type Sheet, type SheetOptions, writePdf } from "@baywright/sheets";
import { describe, expect, test } from "vitest";
import { example, type Planned, planned } from "./jobs.ts";
import { type ReadStroke, readPdf } from "./read-pdf.ts";
import { expectCalm, linesOf, wordsOf } from "./words-of.ts";

const strips = ({ job, plans }: Planned, options: SheetOptions = {}): Sheet =>
	composeSheets(job, plans, options, ["strips"])[0] as Sheet;

const printed = async (sheet: Sheet) => (await readPdf(await writePdf([sheet], { title: "Test" }))).pages;

/** Upright straight lines of a pen, by where they stand across the page, mm. */
const uprights = (strokes: readonly ReadStroke[], pen: number): number[] =>
	strokes
		.filter(({ width, points }) => width !== null && Math.abs(width - pen) < 0.01 && points.length === 2)
		.filter(({ points: [a, b] }) => a !== undefined && b !== undefined && Math.abs(a[0] - b[0]) < 1e-3)
		.map(({ points }) => points[0]?.[0] ?? Number.NaN);

describe("what is read from the cut ends", () => {
	// By hand, from the one model of the right angle with a projection of 40 and a radius of 310: set-back 40 + 310 = 350, sweep 310 π/2 =
	// 486.9 (common practice, no source). Walls of 900, 1800 and 900 give 550 + 486.9 + 1100 + 486.9 + 550 = 3173.9; end hardware of 100 comes
	// off both ends.
	test("a square bay's marks are those worked out by hand", () => {
		const made = planned();
		expect(made.plan.system.endTakeUp).toBe(100);
		const lines = linesOf(strips(made));
		expect(lines).toContain("Cut length 2973.9 mm");
		for (const [mark, fromLeft, fromRight] of [
			["bend starts, corner 1", 450, 2523.9],
			["middle of bend, corner 1", 693.5, 2280.4],
			["bend ends, corner 1", 936.9, 2036.9],
			["bend starts, corner 2", 2036.9, 936.9],
			["bend ends, corner 2", 2523.9, 450],
		] as const) {
			expect(lines).toContain(`${mark}   ${fromLeft.toFixed(1)}`);
			expect(lines).toContain(fromRight.toFixed(1));
		}
	});

	test("every mark of every piece is drawn with both its readings, and again in the list", () => {
		const made = example("orchard-lodge");
		const { plan } = made;
		expect(plan.pieces.length).toBeGreaterThan(1);
		const sheet = strips(made);
		const lines = linesOf(sheet);
		plan.pieces.forEach(({ marks, name }, piece) => {
			const rows = sheet.tables[piece]?.rows ?? [];
			expect(rows).toHaveLength(marks.length);
			marks.forEach(({ fromLeft, fromRight }, i) => {
				const [what, left, right] = rows[i] as [string, string, string];
				expect([left, right]).toEqual([fromLeft.toFixed(1), fromRight.toFixed(1)]);
				// Only in the list are a corner and its number kept on one line.
				expect(lines).toContain(`${what.replace("\u00a0", " ")}   ${left}`);
				expect(lines.filter((each) => each === right).length).toBeGreaterThan(1);
			});
			expect(lines).toContain(`above: read from the left cut end of piece ${name}`);
			expect(lines).toContain(`below: read from the right cut end of piece ${name}`);
		});
	});

	test("a row that has not the cut end in it says so", () => {
		const long = {
			corners: [
				[0, 0],
				[0, 900],
				[5600, 900],
				[5600, 0],
			],
		};
		const made = planned({ ...long, track: { joints: "none", system: "light-corded" } });
		const sheet = strips(made, { paper: "Letter" });
		const rows = linesOf(sheet).filter((each) => each.startsWith("above: read from the left cut end"));
		expect(rows.length).toBeGreaterThan(0);
		expect(rows.filter((each) => !each.includes("not in this row"))).toHaveLength(made.plan.pieces.length);
	});
});

describe("to scale", () => {
	test.each(["A4", "A3"] as const)(
		"on %s the strip is as long as its scale says, and its marks lie where they are",
		async (paper) => {
			const made = planned();
			const sheet = strips(made, { paper });
			const scale = Number(/1:(\d+)/.exec(linesOf(sheet).find((each) => /^1:\d+$/.test(each)) ?? "")?.[1]);
			const [page] = await printed(sheet);
			const [piece] = made.plan.pieces;
			if (page === undefined || piece === undefined) throw new Error("no page");
			// Cut ends are the only upright lines of 0.7 that are not of the frame or its title block.
			const frame = [20, page.width - 10, page.width - 190, page.width / 2];
			const cuts = uprights(page.strokes, 0.7).filter((x) => frame.every((each) => Math.abs(each - x) > 0.5));
			const [left, right] = [Math.min(...cuts), Math.max(...cuts)];
			expect((right - left) * scale).toBeCloseTo(piece.cutLength, 1);
			const drawn = [...uprights(page.strokes, 0.5), ...uprights(page.strokes, 0.25)];
			for (const { fromLeft } of piece.marks)
				expect(Math.min(...drawn.map((x) => Math.abs((x - left) * scale - fromLeft)))).toBeLessThan(0.1);
		},
	);

	test("at true size for a roll every mark lies a tenth of a mm where the tape has it, with a bar to check it by", async () => {
		const made = planned();
		const sheet = strips(made, { strips: "roll" });
		expect(sheet.trueSize).toBe(true);
		const [page] = await printed(sheet);
		const [piece] = made.plan.pieces;
		if (page === undefined || piece === undefined) throw new Error("no page");
		expect(page.width).toBeGreaterThan(piece.cutLength);
		const frame = [20, page.width - 10, page.width - 190, page.width / 2];
		const cuts = uprights(page.strokes, 0.7).filter((x) => frame.every((each) => Math.abs(each - x) > 0.5));
		const [left, right] = [Math.min(...cuts), Math.max(...cuts)];
		expect(Math.abs(right - left - piece.cutLength)).toBeLessThan(0.1);
		const drawn = [...uprights(page.strokes, 0.5), ...uprights(page.strokes, 0.25)];
		for (const { fromLeft } of piece.marks)
			expect(Math.min(...drawn.map((x) => Math.abs(x - left - fromLeft)))).toBeLessThan(0.1);
		expect(page.texts.map(({ text }) => text)).toContain("100 mm");
	});

	test("what the bar measured is made good on the next print", async () => {
		const made = planned();
		const [page] = await printed(strips(made, { strips: "roll", measured: { across: 99, down: 100 } }));
		const [piece] = made.plan.pieces;
		if (page === undefined || piece === undefined) throw new Error("no page");
		const frame = [20, page.width - 10, page.width - 190, page.width / 2];
		const cuts = uprights(page.strokes, 0.7).filter((x) => frame.every((each) => Math.abs(each - x) > 0.5));
		// A printer that makes 100 mm 99 makes it right.
		expect(Math.abs((Math.max(...cuts) - Math.min(...cuts)) * 0.99 - piece.cutLength)).toBeLessThan(0.1);
	});

	test("a piece longer than a page may be is parted, no page over what a PDF takes", () => {
		const corners = [
			[0, 0],
			[5700, 0],
		];
		const made = planned({ corners, track: { joints: "none" } });
		expect(made.plan.pieces).toHaveLength(1);
		const sheet = strips(made, { strips: "roll" });
		expect(sheet.pages).toHaveLength(2);
		// 14 400 points of 1/72 inch. Source: ISO 32000-1, annex C.
		for (const { size } of sheet.pages) expect(size.width).toBeLessThan((14_400 / 72) * 25.4);
		expect(wordsOf(sheet)).toContain("part 2 of 2");
		expectCalm(sheet);
	});

	test("on one long page all of a piece is in one row", () => {
		const made = example("orchard-lodge");
		const sheet = strips(made, { strips: "long" });
		expect(sheet.pages).toHaveLength(made.plan.pieces.length);
		expect(wordsOf(sheet)).not.toContain("not in this row");
		expectCalm(sheet);
	});
});

test("in inches every reading is to the sixteenth", () => {
	const made = planned({}, { display: { length: "in" } });
	const lines = linesOf(strips(made));
	for (const { marks } of made.plan.pieces)
		for (const { fromLeft, fromRight } of marks) {
			expect(lines.some((each) => each.endsWith(`   ${formatLength(fromLeft, "in")}`))).toBe(true);
			expect(lines).toContain(formatLength(fromRight, "in"));
		}
});

test("no track, no strips", () => {
	expect(
		strips(
			planned({
				corners: [
					[0, 0],
					[0, 100],
					[90, 100],
					[90, 0],
				],
			}),
		),
	).toBeUndefined();
});

test("each piece goes out as a drawing at true size", () => {
	const made = example("orchard-lodge");
	const { figures } = strips(made);
	expect(figures.map(({ name, scale }) => [name, scale])).toEqual(
		made.plan.pieces.map(({ name }) => [`piece-${name.toLowerCase()}`, 1]),
	);
});

test("where the plan refuses something, every sheet that is cut or bought by says so, and no other does", () => {
	let refused = 0;
	for (const sample of Object.values(findingSamples)) {
		const read = parseJob(sampleJob(sample));
		if (!read.ok) throw new Error(JSON.stringify(read.problems));
		const { job } = read;
		const plans = planJob(job);
		const isRefused = plans.some(({ findings }) => findings.some(({ code }) => severityOf(code) === "refusal"));
		for (const sheet of composeSheets(job, plans, {}, ["strips", "order", "workroom"])) {
			if (isRefused) refused++;
			expect(/Do not (cut|cut cloth|buy) by this sheet yet/.test(wordsOf(sheet)), sheet.name).toBe(isRefused);
		}
	}
	expect(refused).toBeGreaterThan(2);
});
