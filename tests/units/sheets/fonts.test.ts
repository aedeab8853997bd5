import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { expect, test } from "vitest";

// The lettering of every sheet is carried in modules, so that it is there in the browser and in the command alike. They are made
// here from the font's own files: `npx vitest run tests/units/sheets/fonts --update`.

const require = createRequire(import.meta.url);
/** The reader of fonts that comes with the writer of PDF. */
const fontkit = createRequire(createRequire(require.resolve("@baywright/sheets")).resolve("pdfkit"))("fontkit");

/** In the order in which a character is looked for. */
const SUBSETS = ["latin", "latin-ext", "greek", "cyrillic"] as const;
const WEIGHTS = { regular: 400, bold: 700 } as const;
type Weight = keyof typeof WEIGHTS;

const bytesOf = (subset: string, weight: Weight, form: "woff" | "woff2"): Buffer =>
	readFileSync(require.resolve(`@fontsource/noto-sans/files/noto-sans-${subset}-${WEIGHTS[weight]}-normal.${form}`));

const module = (name: string): string => `../../../packages/sheets/src/fonts/${name}.ts`;

test.each(["regular", "bold"] as const)("the %s letters are the font's own", async (weight) => {
	const lines = SUBSETS.map((subset) => `\t"${bytesOf(subset, weight, "woff").toString("base64")}",`);
	const text = [
		"// Noto Sans, SIL Open Font License 1.1. Written by tests/units/sheets/fonts.test.ts.",
		"",
		`/** Files (woff in base64) of the ${weight} letters, one for each of SUBSETS. */`,
		`export const ${weight.toUpperCase()}_FILES: readonly string[] = [`,
		...lines,
		"];",
		"",
	].join("\n");
	await expect(text).toMatchFileSnapshot(module(weight));
});

test("the widths of all letters are the font's own", async () => {
	const widths = (["regular", "bold"] as const).map((weight) => {
		const runs = SUBSETS.map((subset) => `\t"${runsOf(fontkit.create(bytesOf(subset, weight, "woff2")))}",`);
		return [
			`/** Widths of the ${weight} letters, one text for each of SUBSETS: runs of neighbours, each its first character in base 16 and their widths. */`,
			`export const ${weight.toUpperCase()}_WIDTHS: readonly string[] = [`,
			...runs,
			"];",
		].join("\n");
	});
	const text = [
		"// Noto Sans, SIL Open Font License 1.1. Written by tests/units/sheets/fonts.test.ts.",
		"",
		`/** Parts that the font comes in, in the order in which a character is looked for. */`,
		`export const SUBSETS = [${SUBSETS.map((name) => `"${name}"`).join(", ")}] as const;`,
		"",
		widths.join("\n\n"),
		"",
	].join("\n");
	await expect(text).toMatchFileSnapshot(module("widths"));
});

interface ReadFont {
	readonly unitsPerEm: number;
	readonly characterSet: readonly number[];
	readonly glyphForCodePoint: (code: number) => { readonly advanceWidth: number };
}

/** In thousandths of the em. */
function runsOf(font: ReadFont): string {
	expect(font.unitsPerEm).toBe(1000);
	const runs: { first: number; widths: number[] }[] = [];
	for (const code of font.characterSet.toSorted((a, b) => a - b)) {
		if (code < 32) continue;
		const last = runs.at(-1);
		const width = font.glyphForCodePoint(code).advanceWidth;
		if (last !== undefined && last.first + last.widths.length === code) last.widths.push(width);
		else runs.push({ first: code, widths: [width] });
	}
	return runs.map(({ first, widths }) => `${first.toString(16)} ${widths.join(",")}`).join(";");
}
