import { inflateSync } from "node:zlib";
import { expect, test } from "vitest";
import { textWidth } from "../../../packages/sheets/src/lettering/measure.ts";
import type { Item, Sheet } from "../../../packages/sheets/src/paper/drawing.ts";
import { line, path, text, vertex } from "../../../packages/sheets/src/paper/marks.ts";
import { at } from "../../../packages/sheets/src/paper/place.ts";
import { writePdf } from "../../../packages/sheets/src/write/pdf/pdf.ts";
import { readPdf } from "./read-pdf.ts";

const sheetOf = (...items: Item[]): Sheet => ({
	name: "bends",
	bay: "b1",
	title: "Test",
	trueSize: true,
	figures: [],
	tables: [],
	pages: [
		{ size: { width: 210, height: 297 }, label: "BT-1", inside: { left: 20, top: 10, right: 200, bottom: 287 }, items },
	],
});

const write = (...items: Item[]) => writePdf([sheetOf(...items)], { title: "Test" });

test("what is 100 mm long is read back as 100 mm, in its pen", async () => {
	const { pages } = await readPdf(await write(line("PAPER", at(30, 40), at(130, 40), { pen: "wide" })));
	const [stroke] = pages[0]?.strokes ?? [];
	const [[x = 0, y = 0] = [], [to = 0] = []] = stroke?.points ?? [];
	expect([x, y, to - x]).toEqual([expect.closeTo(30, 3), expect.closeTo(40, 3), expect.closeTo(100, 3)]);
	expect(stroke?.width).toBeCloseTo(0.5, 4);
	expect(pages[0]?.width).toBeCloseTo(210, 3);
});

test("a quarter circle keeps its radius all along, within a hundredth of a mm at 310", async () => {
	// A quarter circle has the bulge tan(90°/4) = 0.414213562 (checks of drawing exchange: DXF, LWPOLYLINE).
	const quarter = path("TRACK", [vertex(at(10, 320), 0.414213562), vertex(at(-300, 10))], { stroke: { pen: "wide" } });
	const { pages } = await readPdf(await write(quarter));
	// Counter-clockwise as seen, from 3 o'clock to 12 o'clock: its centre is left of the first place.
	const radii = (pages[0]?.strokes ?? []).flatMap(({ points }) =>
		[0, 0.25, 0.5, 0.75, 1].map((t) => {
			const [a, b, c, d] = points as [number, number][];
			const on = (i: 0 | 1) =>
				(1 - t) ** 3 * (a?.[i] ?? 0) +
				3 * t * (1 - t) ** 2 * (b?.[i] ?? 0) +
				3 * t * t * (1 - t) * (c?.[i] ?? 0) +
				t ** 3 * (d?.[i] ?? 0);
			return Math.hypot(on(0) + 300, on(1) - 320);
		}),
	);
	expect(radii.length).toBeGreaterThan(10);
	for (const radius of radii) expect(Math.abs(radius - 310)).toBeLessThan(0.01);
});

test("lettering is as wide as it was reckoned to be", async () => {
	const samples = ["Bend template", "AVAWAY Toffee fi", "310.5 ± 2 mm", "Łódź Ωμέγα Кострома"];
	const items = samples.flatMap((words, i) => [
		text(at(30, 30 + i * 20), words, { height: 3.5 }),
		text(at(30, 40 + i * 20), words, { height: 3.5, bold: true }),
	]);
	const { pages } = await readPdf(await write(...items));
	for (const [i, words] of samples.entries()) {
		for (const bold of [false, true]) {
			const parts = (pages[0]?.texts ?? []).filter(({ y }) => Math.abs(y - (bold ? 40 : 30) - i * 20) < 0.1);
			const left = Math.min(...parts.map(({ x }) => x));
			const right = Math.max(...parts.map(({ x, width }) => x + width));
			expect(left).toBeCloseTo(30, 2);
			expect(right - left).toBeCloseTo(textWidth(words, 3.5, bold), 1);
		}
	}
});

test("asks for no scaling, names its pages, and is the same bytes every time", async () => {
	const bytes = await write(text(at(30, 30), "Once", { height: 2.5 }));
	const { preferences, pages, info } = await readPdf(bytes);
	expect(preferences).toMatchObject({ PrintScaling: "None" });
	expect(pages.map(({ label }) => label)).toEqual(["BT-1"]);
	expect(info.CreationDate).toBe("D:20000101000000Z");
	expect(await write(text(at(30, 30), "Once", { height: 2.5 }))).toEqual(bytes);
});

test("signs that the font lacks are put together and read back as themselves", async () => {
	const bytes = await write(text(at(30, 30), "4⅛″ ≤ 5⅞″", { height: 5 }));
	expect(streamsOf(bytes)).toContain("/ActualText");
	const { pages } = await readPdf(bytes);
	const read = (pages[0]?.texts ?? []).map(({ text: part }) => part).join("");
	for (const figure of ["4", "1", "8", "⁄", "5", "7", "″"]) expect(read).toContain(figure);
});

/** What the compressed streams of a PDF hold. */
function streamsOf(bytes: Uint8Array): string {
	const whole = Buffer.from(bytes);
	const parts: string[] = [];
	for (let at = whole.indexOf("stream\n"); at >= 0; at = whole.indexOf("stream\n", at + 1)) {
		if (whole.subarray(at - 3, at).toString() === "end") continue;
		try {
			parts.push(inflateSync(whole.subarray(at + 7)).toString("latin1"));
		} catch {
			// Not a compressed one.
		}
	}
	return parts.join("\n");
}
