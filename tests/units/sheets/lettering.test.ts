import { composeSheets } from "@baywright/sheets";
import { expect, test } from "vitest";
import { shortened, textWidth, wrapped } from "../../../packages/sheets/src/lettering/measure.ts";
import { shape } from "../../../packages/sheets/src/lettering/shape.ts";
import { letterWidth } from "../../oracles/lettering.ts";
import { example } from "./jobs.ts";

test("no sign that a sheet needs is missing", () => {
	for (const bold of [false, true]) {
		for (const sign of "0123456789.,:;–—−+±×÷=≤≥<>°′″'\"½¼¾⅓⅔⅛⅜⅝⅞£€$§&@#%/→←✓…“”‘’éüßøłčž") {
			expect({ sign, missing: shape(sign, bold).missing }).toEqual({ sign, missing: [] });
		}
	}
});

test("what no font here has is drawn as an empty box and told", () => {
	const { missing, strokes, width } = shape("窓 bay 窓", false);
	expect(missing).toEqual(["窓"]);
	expect(strokes).toHaveLength(2);
	expect(width).toBeGreaterThan(1);
});

test("letters are as wide as the font says", () => {
	for (const bold of [false, true]) {
		for (const words of ["Bend template", "AVA 310.5 mm", "Łódź", "Кострома", "Ωμέγα"]) {
			const wide = [...words].reduce((sum, letter) => sum + (letterWidth(letter, bold) ?? Number.NaN), 0);
			// Capitals are 714 of 1000 high: what stands 7.14 mm high has an em of 10 mm.
			expect(textWidth(words, 7.14, bold)).toBeCloseTo(wide / 100, 6);
		}
	}
});

test("lines are broken at spaces, longer words where they must be, and nothing is lost", () => {
	const words = "Find cables and pipes before drilling Donaudampfschifffahrtsgesellschaftskapitän now";
	for (const width of [12, 25, 60, 400]) {
		const lines = wrapped(words, width, 2.5);
		for (const line of lines) expect(textWidth(line, 2.5)).toBeLessThanOrEqual(width);
		expect(lines.join("").replaceAll(" ", "")).toBe(words.replaceAll(" ", ""));
	}
});

test("what is too long for its box ends in dots", () => {
	const short = shortened("The house at the very end of the long lane", 40, 2.5);
	expect(short.endsWith("…")).toBe(true);
	expect(textWidth(short, 2.5)).toBeLessThanOrEqual(40);
	expect(shortened("Bay", 40, 2.5)).toBe("Bay");
});

test("no sheet of an example has a letter that is missing", () => {
	const { job, plans } = example("quay-cottage");
	for (const { pages } of composeSheets(job, plans))
		for (const { items } of pages)
			for (const item of items) if (item.kind === "text") expect(shape(item.text, item.bold).missing).toEqual([]);
});
