import type { Bend } from "@baywright/geometry";
import { composeSheets, type Sheet, type SheetOptions, writePdf } from "@baywright/sheets";
import { describe, expect, test } from "vitest";
import { example, type Planned, planned } from "./jobs.ts";
import { type ReadPage, type ReadStroke, readPdf } from "./read-pdf.ts";
import { linesOf } from "./words-of.ts";

// What is on the paper is measured on the file that is printed, by a reader that shares no code with the writer, and held to the plan.

const templates = ({ job, plans }: Planned, options: SheetOptions = {}): Sheet =>
	composeSheets(job, plans, options, ["bends"])[0] as Sheet;

const printed = async (sheet: Sheet) => (await readPdf(await writePdf([sheet], { title: "Test" }))).pages;

/** mm to which a place on paper must be the plan's. */
const NEAR = 0.1;

type Place = readonly [x: number, y: number];
const apart = ([a, b]: Place, [c, d]: Place) => Math.hypot(c - a, d - b);
const middle = ([a, b]: Place, [c, d]: Place): Place => [(a + c) / 2, (b + d) / 2];
const isStraight = ({ points }: ReadStroke) => points.length === 2;
const ends = ({ points }: ReadStroke) => [points[0] as Place, points.at(-1) as Place] as const;
const inPen = (mm: number) => (stroke: ReadStroke) => stroke.width !== null && Math.abs(stroke.width - mm) < 0.01;

/** The lengths of straight lines across and down that are 100 mm long, or should be: the bars' long edges, the only ones of 0.25 near that length in the margins. */
function bars({ strokes }: ReadPage): { across: number[]; down: number[] } {
	const near = strokes.filter(inPen(0.25)).filter(isStraight).map(ends);
	const lengths = (way: 0 | 1) =>
		near
			.filter(
				([a, b]) =>
					Math.abs(a[1 - way] as number) > 0 && Math.abs((a[1 - way] as number) - (b[1 - way] as number)) < 1e-3,
			)
			.map(([a, b]) => Math.abs(b[way] - a[way]))
			.filter((length) => length > 90 && length < 110);
	return { across: lengths(0), down: lengths(1) };
}

/** The middle of the ring on the corner of the walls: the only circle of 1.6 mm. */
function ring({ strokes }: ReadPage): Place {
	const curved = strokes.filter(inPen(0.35)).filter((stroke) => !isStraight(stroke));
	const xs = curved.flatMap(({ points }) => points.map(([x]) => x));
	const ys = curved.flatMap(({ points }) => points.map(([, y]) => y));
	expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(3.2, 1);
	return [(Math.max(...xs) + Math.min(...xs)) / 2, (Math.max(...ys) + Math.min(...ys)) / 2];
}

/** From a wall's corner to the foot of a place on the wall, and off the wall, by the line drawn for its face. */
function alongWall([x, y]: Place, corner: Place, face: readonly [Place, Place]): { along: number; off: number } {
	const far = apart(face[0], corner) > apart(face[1], corner) ? face[0] : face[1];
	const long = apart(corner, far);
	const [ux, uy] = [(far[0] - corner[0]) / long, (far[1] - corner[1]) / long];
	return {
		along: (x - corner[0]) * ux + (y - corner[1]) * uy,
		off: Math.abs((x - corner[0]) * uy - (y - corner[1]) * ux),
	};
}

/** Length of a cubic by many short chords. */
function curveLength({ points }: ReadStroke): number {
	const on = (t: number): Place => {
		const [a, b, c, d] = points as [Place, Place, Place, Place];
		const at = (i: 0 | 1) =>
			(1 - t) ** 3 * a[i] + 3 * t * (1 - t) ** 2 * b[i] + 3 * t * t * (1 - t) * c[i] + t ** 3 * d[i];
		return [at(0), at(1)];
	};
	return Array.from({ length: 50 }, (_, i) => apart(on(i / 50), on((i + 1) / 50))).reduce((sum, each) => sum + each, 0);
}

describe("on one large sheet", () => {
	test.each([
		["a right angle", {}],
		[
			"a splay with different projections",
			{
				corners: [
					[0, 0],
					[500, 900],
					[2300, 900],
					[2900, 0],
				],
				walls: [{ projection: 60 }, { projection: 40 }, {}],
			},
		],
	])("%s: set-back, corner gap, sweep and brackets lie where the plan has them", async (_, bay) => {
		const made = planned(bay);
		const { plan } = made;
		const pages = await printed(templates(made, { paper: "A0" }));
		const page = pages.find(
			({ texts }) => texts.some(({ text }) => text === "Template 1") && texts.some(({ text }) => text === "100 mm"),
		) as ReadPage;
		const set = plan.corners[0];
		if (set === undefined) throw new Error("no corner");
		const corner = ring(page);
		// The faces are the heavy lines that end at the corner.
		const faces = page.strokes
			.filter(inPen(0.7))
			.filter(isStraight)
			.map(ends)
			.filter(([a, b]) => Math.min(apart(a, corner), apart(b, corner)) < 0.01);
		expect(faces).toHaveLength(2);
		const marks = page.strokes
			.filter(inPen(0.35))
			.filter(isStraight)
			.map(ends)
			.filter(([a, b]) => Math.abs(apart(a, b) - (plan.system.profile.width + 14)) < 0.01);
		expect(marks).toHaveLength(3);
		const [start, half, end] = marks.map(([a, b]) => middle(a, b)) as [Place, Place, Place];
		expect(apart(half, corner)).toBeCloseTo(set.cornerGap, 1);
		for (const [place, side] of [
			[start, 0],
			[end, 1],
		] as const) {
			const face = faces[side] as readonly [Place, Place];
			const { along, off } = alongWall(place, corner, face);
			expect(Math.abs(along - (set.setBack[side] ?? Number.NaN))).toBeLessThan(NEAR);
			expect(Math.abs(off - (plan.projections[side] ?? Number.NaN))).toBeLessThan(NEAR);
		}
		const swept = page.strokes
			.filter(inPen(0.25))
			.filter((stroke) => !isStraight(stroke))
			.reduce((sum, stroke) => sum + curveLength(stroke), 0);
		expect(Math.abs(swept - set.sweep)).toBeLessThan(NEAR);
		// A bracket is a box from the wall across the track: its middle line on the wall is where the tape reads it.
		const beside = plan.brackets.filter(({ role, wall }) => role === "bend" && wall < 2).slice(0, 2);
		expect(beside).toHaveLength(2);
		const boxes = page.strokes
			.filter(inPen(0.35))
			.filter(isStraight)
			.map(ends)
			.filter(([a, b]) => Math.abs(apart(a, b) - plan.system.bracket.width) < 0.01);
		for (const { wall, fromLeftCorner, fromRightCorner } of beside) {
			const face = faces[wall] as readonly [Place, Place];
			const onWall = boxes.map(([a, b]) => alongWall(middle(a, b), corner, face)).filter(({ off }) => off < 0.05);
			const wanted = wall === 0 ? fromRightCorner : fromLeftCorner;
			expect(onWall.some(({ along }) => Math.abs(along - wanted) < NEAR)).toBe(true);
		}
	});
});

describe("on sheets of A4", () => {
	test("every sheet has a bar of 100 mm either way, to a twentieth of a mm", async () => {
		const pages = await printed(templates(example("tollgate-house")));
		const tiles = pages.filter(({ texts }) => texts.some(({ text }) => text === "100 mm"));
		expect(tiles.length).toBeGreaterThan(2);
		for (const page of tiles) {
			const { across, down } = bars(page);
			for (const found of [across, down]) {
				expect(found.length).toBeGreaterThanOrEqual(2);
				for (const length of found) expect(Math.abs(length - 100)).toBeLessThan(0.05);
			}
			expect(page.texts.filter(({ text }) => text === "100 mm")).toHaveLength(2);
			expect(page.texts.map(({ text }) => text).join(" ")).toContain("Print at 100 %");
		}
	});

	test("what a bar measured is made good on the next print, each way by itself", async () => {
		const pages = await printed(templates(planned(), { measured: { across: 98.5, down: 101 } }));
		const tile = pages.find(({ texts }) => texts.some(({ text }) => text === "100 mm")) as ReadPage;
		// A printer that makes 100 mm 98.5 makes 101.523 mm 100.
		for (const length of bars(tile).across) expect(length * 0.985).toBeCloseTo(100, 2);
		for (const length of bars(tile).down) expect(length * 1.01).toBeCloseTo(100, 2);
	});

	test("sheets laid cross on cross show one drawing: its lines meet to a hundredth of a mm", async () => {
		const pages = await printed(templates(planned()));
		const tiles = pages.filter(({ texts }) => texts.some(({ text }) => text === "100 mm"));
		// The centre of each cross, by its name: the two long strokes of 8 mm cross there.
		const crosses = tiles.map(({ strokes, texts }) => {
			const arms = strokes
				.filter(inPen(0.25))
				.filter(isStraight)
				.map(ends)
				.filter(([a, b]) => Math.abs(apart(a, b) - 8) < 1e-3 && a[1] === b[1])
				.map(([a, b]) => middle(a, b));
			return new Map(
				texts
					.filter(({ text, x, y }) => /^[A-Z]+\d+$/.test(text) && arms.some((arm) => apart(arm, [x, y]) < 10))
					.map(({ text, x, y }) => [
						text,
						arms.reduce((best, arm) => (apart(arm, [x, y]) < apart(best, [x, y]) ? arm : best)),
					]),
			);
		});
		let shared = 0;
		let compared = 0;
		crosses.forEach((own, i) => {
			crosses.slice(i + 1).forEach((other, k) => {
				const [name] = [...own.keys()].filter((each) => other.has(each));
				if (name === undefined) return;
				shared++;
				const [a, b] = [own.get(name) as Place, other.get(name) as Place];
				const rings = [tiles[i], tiles[i + 1 + k]].map((page) => trackEnds(page as ReadPage));
				const moved = (rings[0] ?? []).map(([x, y]): Place => [x - a[0] + b[0], y - a[1] + b[1]]);
				if (moved.length === 0 || (rings[1] ?? []).length === 0) return;
				compared++;
				// A sheet leaves out edges that it shows nothing of; the others are on both.
				const met = moved.filter((place) => Math.min(...(rings[1] ?? []).map((each) => apart(each, place))) < 0.01);
				expect(met.length).toBeGreaterThan(moved.length / 3);
			});
		});
		expect(shared).toBeGreaterThan(2);
		expect(compared).toBeGreaterThan(1);
	});
});

/** Where the edges of the track begin and end: every sheet has the whole of them, cut off by its window. */
const trackEnds = ({ strokes }: ReadPage): Place[] =>
	strokes
		.filter(inPen(0.5))
		.filter((stroke) => !isStraight(stroke))
		.flatMap((stroke) => [...ends(stroke)]);

test("bends that are the same are drawn once, and said to be for both corners", () => {
	const sheet = templates(planned());
	expect(sheet.figures).toHaveLength(1);
	const words = sheet.pages.flatMap(({ items }) => items.flatMap((item) => (item.kind === "text" ? [item.text] : [])));
	expect(words).toContain("corner 1, corner 2");
	const odd = templates(planned({ track: { bends: [{ corner: 2, radius: 260 }] } }));
	expect(odd.figures).toHaveLength(2);
});

test("a bow is drawn whole, with its bends", () => {
	const { plan } = example("bandstand");
	const [bow] = plan.bows;
	const sheet = templates(example("bandstand"));
	const row = sheet.tables[0]?.rows.find((cells) => cells.some((cell) => cell.startsWith("bow")));
	expect(row?.join(" ")).toContain(bow?.radius.toFixed(1));
	const bent = plan.path?.segments.filter(({ kind }) => kind !== "straight") as Bend[];
	expect(sheet.figures.length).toBeLessThanOrEqual(bent.length);
});

test("a track that is nowhere bent has no templates", () => {
	expect(
		templates(
			planned({
				corners: [
					[0, 0],
					[2000, 0],
				],
			}),
		),
	).toBeUndefined();
});

test("a template of several bends names all that it stands for", () => {
	const { job, plans } = example("quay-cottage");
	const [sheet] = composeSheets(job, plans, {}, ["bends"]);
	const lines = linesOf(sheet as Sheet);
	for (const words of ["Corners 1, 2", "Brackets 2, 6", "Brackets 3, 7"]) expect(lines).toContain(words);
});

test.each(["sluice-cottage", "orchard-lodge", "bandstand"])(
	"how to use the templates of %s stands on one page with how they lie",
	(name) => {
		const { job, plans } = example(name);
		const [sheet] = composeSheets(job, plans, {}, ["bends"]);
		const [front] = (sheet as Sheet).pages;
		const lines = linesOf({ pages: front === undefined ? [] : [front] });
		for (const words of ["How the sheets lie", "How to use them", "Cut last"]) expect(lines).toContain(words);
	},
);
