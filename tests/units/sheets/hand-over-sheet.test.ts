import { cordAdvice, type Region } from "@baywright/setout";
import { composeSheets, type PaperName, type Sheet } from "@baywright/sheets";
import { describe, expect, test } from "vitest";
import { example, type Planned, planned } from "./jobs.ts";
import { expectCalm, linesOf, wordsOf } from "./words-of.ts";

const handOver = ({ job, plans }: Planned, paper: PaperName = "A4"): Sheet =>
	composeSheets(job, plans, { paper }, ["hand-over"])[0] as Sheet;

const REGIONS: readonly Region[] = ["GB", "IE", "EU", "US", "CA", "AU", "other"];

describe("small children", () => {
	test.each(REGIONS)(
		"%s: what its rules are read to say, whence and when, and never that anything complies",
		(region) => {
			for (const system of ["light-corded", "fine-hand-drawn"]) {
				const words = wordsOf(handOver(planned({ track: { system, height: 2150 } }, { region })));
				const { says, source, checked } = cordAdvice(region);
				expect(words).toContain(says);
				expect(words).toContain(source);
				expect(words).toContain(checked);
				expect(words).not.toMatch(/compli|complies|conform|certif|guarant/i);
			}
		},
	);

	test("a corded track's own cord is told, an uncorded one's absence too", () => {
		const corded = wordsOf(handOver(planned({ track: { height: 2150 } })));
		expect(corded).toContain("This track's cord");
		// 1.5 m above the floor. Source: BS EN 13120, as the advice has it.
		expect(corded).toContain("down to 1500 mm above the floor");
		expect(corded).toContain("The cord is taut");
		expect(wordsOf(handOver(planned({ track: { system: "fine-hand-drawn" } })))).toContain(
			"No cord hangs from this track",
		);
	});
});

describe("what was fitted", () => {
	const made = planned({
		fitted: {
			brackets: [
				{ wall: 0, planned: 250, at: 253.5, projection: 42 },
				{ wall: 1, planned: 370, at: 368, projection: null },
			],
			cut: [{ piece: "A", length: 2973.9 }],
			done: ["bend-1", "bend-1 radius 310 sweep 486.9 middle 693.5 of A"],
		},
	});

	test("each bracket is held against its plan", () => {
		const table = handOver(made).tables.find(({ name }) => name === "fitted-brackets");
		expect(table?.rows).toEqual([
			["left wall", "253.5", "3.5 to the right", "2.0 further"],
			["front wall", "368.0", "2.0 to the left", "not measured"],
		]);
	});

	test("each cut piece is held against what the plan needs", () => {
		const [cut] = made.plan.fitted?.cut ?? [];
		const table = handOver(made).tables.find(({ name }) => name === "fitted-pieces");
		expect(table?.rows[0]?.slice(0, 3)).toEqual(["A", "2973.9", cut?.needed.toFixed(1)]);
	});

	test("what is ticked is listed, with how it was when it was made", () => {
		const table = handOver(made).tables.find(({ name }) => name === "fitted-ticks");
		expect(table?.rows).toEqual([["bend 1", "corner 1", "310.0", "486.9"]]);
	});

	test("what is ticked and is in the plan no longer says so", () => {
		const table = handOver(planned({ fitted: { done: ["bend-7", "joint-1"] } })).tables.find(
			({ name }) => name === "fitted-ticks",
		);
		expect(table?.rows.map(([, where]) => where)).toEqual(["not in the plan any more", "not in the plan any more"]);
	});

	test("nothing entered is said, not passed off as done", () => {
		expect(wordsOf(handOver(planned()))).toContain("Nothing was entered as fitted");
	});
});

describe("the elevation", () => {
	test("lies to scale: walls as long as they are, track and heads at their heights", () => {
		const made = planned({
			openings: [{ wall: 1, from: 300, to: 1500, sill: 850, head: 2000 }],
			track: { height: 2150 },
			ceiling: 2500,
		});
		const [figure] = handOver(made).figures;
		if (figure === undefined) throw new Error("no elevation");
		const paths = figure.items.flatMap((item) => (item.kind === "path" ? [item] : []));
		const on = (layer: string) =>
			paths.filter((item) => item.layer === layer).map(({ vertices }) => vertices.map(({ at }) => at));
		const floor = Math.max(...on("WALLS").flatMap((points) => points.map(({ y }) => y)));
		const mm = (paper: number) => paper * figure.scale;
		const [track] = on("TRACK");
		expect(mm(floor - (track?.[0]?.y ?? 0))).toBeCloseTo(2150, 6);
		// 900 + 1800 + 900 of wall, the track from end to end of them.
		expect(mm((track?.[1]?.x ?? 0) - (track?.[0]?.x ?? 0))).toBeCloseTo(3600, 6);
		const opening = on("OPENINGS").find((points) => points.length === 4) ?? [];
		const [xs, ys] = [opening.map(({ x }) => x), opening.map(({ y }) => y)];
		expect(mm(Math.max(...xs) - Math.min(...xs))).toBeCloseTo(1200, 6);
		expect(mm(floor - Math.max(...ys))).toBeCloseTo(850, 6);
		expect(mm(floor - Math.min(...ys))).toBeCloseTo(2000, 6);
		expect(mm(Math.min(...xs) - (track?.[0]?.x ?? 0))).toBeCloseTo(1200, 6);
		expect(linesOf(handOver(made))).toContain("2500 mm");
	});

	test("an opening whose heights are not given says so and is left open there", () => {
		const words = linesOf(handOver(planned({ openings: [{ wall: 1, from: 300, to: 1500 }], track: { height: 2150 } })));
		expect(words).toContain("sill not given");
		expect(words).toContain("head not given");
	});

	test("a track without a height is not drawn at one", () => {
		const [figure] = handOver(planned()).figures;
		expect(figure?.items.filter((item) => item.layer === "TRACK")).toEqual([]);
		expect(linesOf(handOver(planned()))).toContain("not set");
	});
});

test("there are boxes to sign in for both sides", () => {
	const lines = linesOf(handOver(planned()));
	for (const words of ["Signed", "Fitted, and instructions left, by", "Taken over as said above by", "signature"])
		expect(lines).toContain(words);
});

test("no track, nothing to hand over", () => {
	expect(
		handOver(
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

test.each(["quay-cottage", "lantern-room", "bandstand"])("%s: nothing meets", (name) => {
	for (const paper of ["A4", "A3", "Letter"] as const) expectCalm(handOver(example(name), paper));
});
