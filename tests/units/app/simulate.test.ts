import type { StrategyResult } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import { barsOf, scaleTop } from "../../../packages/app/src/simulate/histogram-bars.ts";
import { readOrder } from "../../../packages/app/src/simulate/order-text.ts";
import { type Progress, stepped } from "../../../packages/app/src/simulate/progress.ts";

const asked = { bay: null, count: 40, seed: 3, errors: { tape: 2, bevel: 0.75 } };
const some: readonly StrategyResult[] = [
	{
		name: "once",
		firstFit: 0.5,
		readings: { mean: 5, least: 5, most: 5 },
		median: 4,
		within95: 9,
		histogram: [1, 1],
		byWalls: [],
	},
];

describe("how a run stands", () => {
	const idle: Progress = { state: "idle" };
	const running = stepped(idle, { kind: "started", asked });
	const half = stepped(running, { kind: "measured", done: 20, strategies: some });

	it("runs, shows what it has, and finishes", () => {
		expect(running).toEqual({ state: "running", asked, done: 0, strategies: [] });
		expect(half).toEqual({ state: "running", asked, done: 20, strategies: some });
		expect(stepped(half, { kind: "finished", strategies: some })).toMatchObject({ state: "finished", done: 40 });
		expect(stepped(running, { kind: "no-track" })).toEqual({ state: "no-track" });
	});

	it("keeps what was measured when it is called off or breaks, and heeds no late word", () => {
		const cancelled = stepped(half, { kind: "cancelled" });
		expect(cancelled).toEqual({ state: "cancelled", asked, done: 20, strategies: some });
		expect(stepped(half, { kind: "failed" })).toMatchObject({ state: "failed", done: 20 });
		expect(stepped(cancelled, { kind: "finished", strategies: [] })).toBe(cancelled);
		expect(stepped(idle, { kind: "measured", done: 1, strategies: some })).toBe(idle);
		expect(stepped(cancelled, { kind: "started", asked })).toEqual(running);
	});
});

describe("bars", () => {
	it("one for each millimetre, those under 5 mm fit, the last is open", () => {
		const histogram = [6, 0, 0, 0, 1, 2, ...new Array<number>(14).fill(0), 1];
		const bars = barsOf(histogram);
		expect(bars).toHaveLength(21);
		expect(bars[0]).toEqual({ from: 0, to: 1, bays: 6, share: 0.6, fits: true });
		expect(bars[4]).toMatchObject({ share: 0.1, fits: true });
		expect(bars[5]).toMatchObject({ from: 5, to: 6, share: 0.2, fits: false });
		expect(bars[20]).toEqual({ from: 20, to: null, bays: 1, share: 0.1, fits: false });
		expect(scaleTop(bars)).toBe(0.6);
	});

	it("of nothing are flat", () => {
		expect(barsOf([0, 0]).map(({ share }) => share)).toEqual([0, 0]);
		expect(scaleTop(barsOf([0, 0]))).toBe(0.1);
	});
});

describe("the form", () => {
	const good = { count: "1000", seed: "1", tape: "2", bevel: "0.75" };

	it("reads whole numbers, a length in any unit, degrees", () => {
		expect(readOrder({ count: " 40 ", seed: "0", tape: "0.3 cm", bevel: "0,5°" })).toEqual({
			ok: true,
			order: { count: 40, seed: 0, errors: { tape: 3, bevel: 0.5 } },
		});
	});

	it.each([
		["count", "0", "“0” will not do: write a whole number from 1 to 100000."],
		["count", "", "Nothing is written: write a whole number from 1 to 100000."],
		["seed", "-1", "“-1” will not do: write a whole number from 0 to 4294967295."],
		["seed", "4294967296", "“4294967296” will not do: write a whole number from 0 to 4294967295."],
		["tape", "90", "90 is too large: write 50 or less."],
		["bevel", "0", "“0” will not do: write degrees from 0.01 to 20."],
	] as const)("%s %j is refused with what is allowed", (key, text, message) => {
		const read = readOrder({ ...good, [key]: text });
		expect(read.ok).toBe(false);
		if (!read.ok) expect(read.refused).toEqual({ count: "", seed: "", tape: "", bevel: "", [key]: message });
	});
});
