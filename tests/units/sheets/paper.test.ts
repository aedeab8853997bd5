import { composeSheets, PAPERS, type PaperName, type SheetFile, sheetFiles } from "@baywright/sheets";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dimension } from "../../../packages/sheets/src/paper/dimension.ts";
import { flow } from "../../../packages/sheets/src/paper/flow.ts";
import { layoutOn } from "../../../packages/sheets/src/paper/frame.ts";
import { at } from "../../../packages/sheets/src/paper/place.ts";
import { scaleFor } from "../../../packages/sheets/src/paper/scales.ts";
import { spreadApart } from "../../../packages/sheets/src/paper/spread.ts";
import { table } from "../../../packages/sheets/src/paper/table.ts";
import { ownPart, tiled } from "../../../packages/sheets/src/paper/tiling.ts";
import { planned } from "./jobs.ts";

const SEED = 5457;

describe("the sheet", () => {
	test.each(Object.keys(PAPERS) as PaperName[])("%s: frame and title block stand as the standards say", (paper) => {
		const { size, inside, title } = layoutOn(paper);
		// ISO 5457:1999: 20 mm on the filing edge, 10 mm elsewhere (from memory).
		expect([inside.left, inside.top, size.width - inside.right, size.height - inside.bottom]).toEqual([
			20,
			10,
			expect.closeTo(10, 9),
			expect.closeTo(10, 9),
		]);
		// ISO 7200:2004: 180 mm wide, in the lower right corner.
		expect(title.right - title.left).toBeCloseTo(180, 9);
		expect([title.right, title.bottom]).toEqual([inside.right, inside.bottom]);
	});

	test("ISO 216 sizes, in the way that they are held", () => {
		expect(PAPERS).toMatchObject({
			A4: { width: 210, height: 297 },
			A3: { width: 420, height: 297 },
			A2: { width: 594, height: 420 },
			Letter: { width: 215.9, height: 279.4 },
		});
	});

	test("the largest scale of the usual series that goes in", () => {
		const room = { width: 140, height: 90 };
		expect(scaleFor({ width: 1800, height: 900 }, room)).toBe(20);
		expect(scaleFor({ width: 2800, height: 900 }, room)).toBe(20);
		expect(scaleFor({ width: 2801, height: 900 }, room)).toBe(25);
		expect(scaleFor({ width: 600, height: 400 }, room)).toBe(5);
		expect(scaleFor({ width: 600, height: 1900 }, room)).toBe(25);
	});
});

describe("dimensions", () => {
	test.each([0, 30, 60, 89, 90, 91, 135, 180, 225, 269, 270, 271, 315])(
		"at %i° read from below or from the right",
		(degrees) => {
			const angle = (degrees * Math.PI) / 180;
			const [from, to] = [at(100, 100), at(100 + 60 * Math.cos(angle), 100 - 60 * Math.sin(angle))];
			const placed = dimension({ from, to, side: "left", text: "1800.0", offsets: [8] }, [], {
				left: 0,
				top: 0,
				right: 200,
				bottom: 200,
			});
			const figure = placed?.items.find(({ kind }) => kind === "text");
			const turn = ((figure?.kind === "text" ? figure.turn : Number.NaN) * 180) / Math.PI;
			expect(turn).toBeGreaterThan(-90);
			expect(turn).toBeLessThanOrEqual(90 + 1e-6);
			expect(Math.abs(Math.sin(((turn - degrees) * Math.PI) / 180))).toBeLessThan(1e-9);
		},
	);

	test("stack outwards where there is something already, and give up where there is no room", () => {
		const wish = { from: at(50, 100), to: at(150, 100), side: "left", text: "900.0", offsets: [8, 14] } as const;
		const paper = { left: 0, top: 0, right: 200, bottom: 200 };
		const first = dimension(wish, [], paper);
		const second = dimension(wish, first?.shapes ?? [], paper);
		const heightOf = (placed: typeof first) => placed?.items.find(({ kind }) => kind === "text");
		expect(heightOf(first)).toMatchObject({ at: { y: expect.closeTo(91.1, 6) } });
		expect(heightOf(second)).toMatchObject({ at: { y: expect.closeTo(85.1, 6) } });
		expect(dimension(wish, [...(first?.shapes ?? []), ...(second?.shapes ?? [])], paper)).toBeNull();
		expect(dimension({ ...wish, to: at(58, 100) }, [], paper)).toBeNull();
	});
});

test("a table that goes on has its headings again, and every row once", () => {
	const rows = Array.from({ length: 90 }, (_, i) => [`row ${i}`, String(i)]);
	const columns = [
		{ heading: "name", of: "words" },
		{ heading: "number", of: "figures" },
	] as const;
	const pages = flow([table({ name: "t", title: "Test", columns, rows, note: "A note." })], layoutOn("A4").columns);
	const texts = pages.map((items) => items.flatMap((item) => (item.kind === "text" ? [item.text] : [])));
	expect(pages.length).toBeGreaterThan(1);
	for (const page of texts) expect(page).toEqual(expect.arrayContaining(["name", "number"]));
	expect(texts[1]?.[0]).toBe("Test, continued");
	expect(texts.flat().filter((text) => text.startsWith("row "))).toEqual(rows.map(([name]) => name));
	expect(texts.at(-1)?.at(-1)).toBe("A note.");
});

test("figures that stand too close are moved apart, as little as can be", () => {
	fc.assert(
		fc.property(
			fc
				.array(fc.integer({ min: 0, max: 160 }), { minLength: 1, maxLength: 20 })
				.map((all) => all.toSorted((a, b) => a - b)),
			fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 20, maxLength: 20 }),
			(places, nudges) => {
				const spread = spreadApart(places, 4, 0, 160);
				spread.forEach((place, i) => {
					expect(place).toBeGreaterThanOrEqual(-1e-9);
					expect(place).toBeLessThanOrEqual(160 + 1e-9);
					if (i > 0) expect(place - (spread[i - 1] as number)).toBeGreaterThanOrEqual(4 - 1e-9);
				});
				// Any other way of standing apart moves them no less in all (least squares): tried by nudging and mending.
				const other: number[] = [];
				spread.forEach((place, i) => {
					other.push(Math.max(place + (nudges[i] as number) / 10, (other.at(-1) ?? -4) + 4, 0));
				});
				if (other.some((place) => place > 160)) return;
				const moved = (all: readonly number[]) =>
					all.reduce((sum, place, i) => sum + (place - (places[i] as number)) ** 2, 0);
				expect(moved(spread)).toBeLessThanOrEqual(moved(other) + 1e-6);
			},
		),
		{ numRuns: 400, seed: SEED },
	);
});

test("every place of a drawing lies on a sheet of its tiling, and no sheet is empty", () => {
	const places = fc.array(fc.tuple(fc.integer({ min: 0, max: 900 }), fc.integer({ min: 0, max: 600 })), {
		minLength: 1,
		maxLength: 40,
	});
	fc.assert(
		fc.property(places, fc.constantFrom(0, 20, 45), (all, degrees) => {
			const turn = (degrees * Math.PI) / 180;
			const tiling = tiled({
				points: all.map(([x, y]) => at(x, y)),
				window: { width: 169, height: 225 },
				overlap: 12,
				turns: [turn],
			});
			const parts = tiling.tiles.map((tile) => ownPart(tiling, tile));
			const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
			const turned = all.map(([x, y]) => [x * cos + y * sin, y * cos - x * sin] as const);
			const isOn = ([x, y]: readonly [number, number], part: (typeof parts)[number]) =>
				x >= part.left - 1e-9 && x <= part.right + 1e-9 && y >= part.top - 1e-9 && y <= part.bottom + 1e-9;
			for (const place of turned) expect(parts.some((part) => isOn(place, part))).toBe(true);
			for (const part of parts) expect(turned.some((place) => isOn(place, part))).toBe(true);
		}),
		{ numRuns: 300, seed: SEED },
	);
});

test("no two files have the same name, whatever the bays are called", () => {
	const { job, plans } = planned();
	const ids = ["Bay A", "bay-a", "bay a!", "窓", "窗", "x".repeat(80)];
	const bays = ids.map((id) => ({ ...(job.bays[0] as (typeof job.bays)[number]), id }));
	const own = ids.map((id) => ({ ...(plans[0] as (typeof plans)[number]), id }));
	const names = sheetFiles(composeSheets({ ...job, bays }, own, {}, ["fitting"]), ["pdf"]).map(
		({ name }: SheetFile) => name,
	);
	expect(new Set(names).size).toBe(ids.length);
	for (const name of names) expect(name).toMatch(/^[a-z0-9-]{1,60}\.pdf$/);
});
