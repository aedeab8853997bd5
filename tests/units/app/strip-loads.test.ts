import { libraryOf, parseJob, planBay } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import type { Palette } from "../../../packages/app/src/canvas/palette.ts";
import { layStrip } from "../../../packages/app/src/strip/layout.ts";
import { hangLoads, LOADS_BAND, type LoadShown, loadUnder } from "../../../packages/app/src/strip/loads.ts";
import { marksOf } from "../../../packages/app/src/strip/paint.ts";

const measure = (text: string): number => text.length * 8;

function hung(shown: LoadShown, width: number, maxLoad: number | null = 6) {
	const parsed = parseJob({
		format: "baywright-job",
		version: 1,
		systems: [
			{
				id: "own",
				name: "Own",
				minRadius: { internal: 100, external: 100 },
				projection: { default: 40, min: 30, max: 100 },
				bracket: { maxSpacing: 250, maxLoad },
				joint: { clearOfBend: 50 },
				stock: [{ length: 3000 }],
			},
		],
		bays: [
			{
				id: "b",
				corners: [
					[0, 0],
					[0, 900],
					[2500, 900],
					[2500, 0],
				],
				track: { system: "own", draw: "left" },
				curtains: [{ cloth: "heavy-interlined", drop: 1800 }],
			},
		],
	});
	const bay = parsed.ok ? parsed.job.bays[0] : undefined;
	if (!parsed.ok || bay === undefined) throw new Error("not a job");
	const plan = planBay(bay, libraryOf(parsed.job));
	const size = { width, height: 240 };
	const above = { width, height: size.height - LOADS_BAND };
	const look = { alone: null, unit: "mm", palette: {} as Palette, from: "left", view: null } as const;
	const strip = layStrip({ plan, size: above, measure, ...look });
	return { plan, size, strip, loads: hangLoads(strip, size, shown, measure) };
}

describe("loads under the strip", () => {
	it("hang under their brackets, reach the line at the limit, and are told apart by how they stand to it", () => {
		const { plan, strip, loads } = hung("greatest", 1000);
		const marks = marksOf(strip, "bracket");
		const standings = new Set(loads.bars.map(({ standing }) => standing));
		expect(plan.pieces.length).toBeGreaterThan(1);
		expect(standings).toEqual(new Set(["within", "near", "over"]));
		expect(loads.bars.map(({ bracket }) => bracket)).toEqual(plan.brackets.map((_, i) => i));
		for (const { bracket, left, length, standing, cut } of loads.bars) {
			const { greatest } = plan.loads[bracket] as (typeof plan.loads)[number];
			// A bracket at a joint is marked on both pieces; its one load hangs between.
			const lefts = marks.filter(({ of }) => of === bracket).map((mark) => mark.left);
			expect(left).toBeCloseTo((Math.min(...lefts) + Math.max(...lefts)) / 2, 9);
			expect(standing).toBe(greatest > 6 ? "over" : greatest >= 4.8 ? "near" : "within");
			if (!cut) expect(length).toBeCloseTo((((loads.limit ?? 0) - loads.base) * greatest) / 6, 9);
			if (standing === "over") expect(loads.base + length).toBeGreaterThan(loads.limit ?? Number.POSITIVE_INFINITY);
		}
	});

	it("stand up where they lift", () => {
		const { plan, loads } = hung("least", 1000);
		expect(plan.loads.some(({ least }) => least < -0.1)).toBe(true);
		for (const { bracket, length } of loads.bars)
			expect(Math.sign(length)).toBe(Math.sign(plan.loads[bracket]?.least ?? 0));
	});

	it("stay inside their band, whatever they are", () => {
		for (const limit of [0.5, 6, 60, null]) {
			const { size, loads } = hung("greatest", 1000, limit);
			for (const { length } of loads.bars) {
				expect(loads.base + length).toBeGreaterThan(size.height - LOADS_BAND);
				expect(loads.base + length).toBeLessThan(size.height);
			}
		}
	});

	it("are not held to a limit that is not stated", () => {
		const { loads } = hung("greatest", 1000, null);
		expect(loads.limit).toBeNull();
		expect(new Set(loads.bars.map(({ standing }) => standing))).toEqual(new Set(["not-checked"]));
	});

	it("write figures that never touch, the greatest always", () => {
		for (const width of [1000, 320]) {
			const { plan, loads } = hung("greatest", width);
			const written = loads.bars.filter(({ figure }) => figure !== null);
			written.slice(1).forEach(({ left, figure }, i) => {
				const before = written[i] as (typeof written)[number];
				expect(left - before.left).toBeGreaterThan((measure(figure ?? "") + measure(before.figure ?? "")) / 2);
			});
			const most = plan.loads.reduce((a, b) => (b.greatest > a.greatest ? b : a));
			expect(written.map(({ bracket }) => bracket)).toContain(most.bracket);
			if (width === 320) expect(written.length).toBeLessThan(loads.bars.length);
		}
	});

	it("are their brackets under a pointer", () => {
		const { size, loads } = hung("greatest", 1000);
		for (const { bracket, left } of loads.bars)
			expect(loadUnder(loads, { left: left + 2, top: size.height - 10 })).toEqual({ kind: "bracket", index: bracket });
		expect(loadUnder(loads, { left: loads.bars[0]?.left ?? 0, top: 20 })).toBeNull();
	});
});
