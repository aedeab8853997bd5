import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

// Contrast as in WCAG 2.2, "relative luminance" and "contrast ratio" (w3.org/TR/WCAG22, from memory); text needs 4.5, marks 3.

const css = readFileSync(fileURLToPath(new URL("../../../packages/app/src/tokens.css", import.meta.url)), "utf8");
const grounds = ["sheet", "paper"];
const texts = ["ink", "soft", "track", "bend", "cut", "stack", "warn"];
const marks = ["edge", "wall", "hatch", "glass"];
const onTheirPaper = [
	["ink", "warn-paper"],
	["ink", "refusal-paper"],
	["ink", "note-paper"],
	["ink", "chosen"],
	["soft", "chosen"],
	["warn", "warn-paper"],
	["cut", "refusal-paper"],
	["track", "note-paper"],
	["sheet", "track"],
] as const;

describe.each([
	["light", /^:root \{(.*?)^\}/ms],
	["dark by the system", /:root:not\(\[data-theme="light"\]\) \{(.*?)\}/s],
	["dark by choice", /^:root\[data-theme="dark"\] \{(.*?)\}/ms],
])("the %s tokens", (_name, block) => {
	const tokens = read(block);

	it("are read from a colour that is known", () => {
		expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 9);
		// #777777 on white is the grey that just misses 4.5: 4.48 (from memory).
		expect(contrast("#777777", "#ffffff")).toBeCloseTo(4.48, 2);
	});

	it.each(texts.flatMap((text) => grounds.map((ground) => [text, ground])))(
		"%s on %s reads as text",
		(text, ground) => {
			expect(contrast(tokens.get(text), tokens.get(ground))).toBeGreaterThanOrEqual(4.5);
		},
	);

	it.each(onTheirPaper)("%s on %s reads as text", (text, ground) => {
		expect(contrast(tokens.get(text), tokens.get(ground))).toBeGreaterThanOrEqual(4.5);
	});

	it.each(marks.flatMap((mark) => grounds.map((ground) => [mark, ground])))(
		"%s on %s shows as a mark",
		(mark, ground) => {
			expect(contrast(tokens.get(mark), tokens.get(ground))).toBeGreaterThanOrEqual(3);
		},
	);
});

it("dark is one set of colours, chosen or by the system", () => {
	expect(read(/:root:not\(\[data-theme="light"\]\) \{(.*?)\}/s)).toEqual(
		read(/^:root\[data-theme="dark"\] \{(.*?)\}/ms),
	);
});

function read(block: RegExp): Map<string, string> {
	const [, body] = block.exec(css) ?? [];
	if (body === undefined) throw new Error(`tokens.css has no block ${block}`);
	return new Map(
		[...body.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/g)].map(([, name, value]) => [name ?? "", value ?? ""]),
	);
}

function contrast(a: string | undefined, b: string | undefined): number {
	if (a === undefined || b === undefined) throw new Error("a token is missing");
	const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
	return (light + 0.05) / (dark + 0.05);
}

function luminance(hex: string): number {
	const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
		const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
		return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
	});
	return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
