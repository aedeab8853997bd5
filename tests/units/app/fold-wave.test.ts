import { describe, expect, it } from "vitest";
import { foldWave } from "../../../packages/app/src/canvas/fold-wave.ts";

const straight = (station: number) => ({ at: { x: station, y: 0 }, heading: 0 });

/** A quarter circle of radius 300 round the origin, from the top to the right. */
const RADIUS = 300;
const round = (station: number) => {
	const angle = Math.PI / 2 - station / RADIUS;
	return { at: { x: RADIUS * Math.cos(angle), y: RADIUS * Math.sin(angle) }, heading: angle - Math.PI / 2 };
};

describe("folds of a stacked curtain", () => {
	it("start and end on the track, in whole folds as near the pitch as they come", () => {
		const wave = foldWave(straight, 100, 400, { pitch: 28, behind: 35, before: 35 });
		expect(wave[0]).toEqual({ x: 100, y: 0 });
		expect(wave.at(-1)?.x).toBeCloseTo(400, 9);
		expect(wave.at(-1)?.y).toBeCloseTo(0, 9);
		const crossings = wave.filter(
			(at, i) => i > 0 && Math.sign(at.y) > 0 && Math.sign(wave[i - 1]?.y ?? 0) <= 0,
		).length;
		expect(crossings).toBe(11);
	});

	it("stand off the track by their depth to both sides and no more", () => {
		const offsets = foldWave(straight, 0, 280, { pitch: 28, behind: 35, before: 35 }).map(({ y }) => y);
		expect(Math.max(...offsets)).toBeGreaterThan(33);
		expect(Math.max(...offsets)).toBeLessThanOrEqual(35);
		expect(Math.min(...offsets)).toBeLessThan(-33);
		expect(Math.min(...offsets)).toBeGreaterThanOrEqual(-35);
	});

	it("stand off it to each side by what is there", () => {
		const offsets = foldWave(straight, 0, 280, { pitch: 28, behind: 35, before: 104 }).map(({ y }) => y);
		expect(Math.max(...offsets)).toBeGreaterThan(33);
		expect(Math.max(...offsets)).toBeLessThanOrEqual(35);
		expect(Math.min(...offsets)).toBeLessThan(-98);
		expect(Math.min(...offsets)).toBeGreaterThanOrEqual(-104);
	});

	it("follow a bend", () => {
		const wave = foldWave(round, 0, (RADIUS * Math.PI) / 2, { pitch: 28, behind: 35, before: 35 });
		for (const { x, y } of wave) expect(Math.abs(Math.hypot(x, y) - RADIUS)).toBeLessThanOrEqual(35 + 1e-9);
		expect(wave.at(-1)?.x).toBeCloseTo(RADIUS, 6);
		expect(wave.at(-1)?.y).toBeCloseTo(0, 6);
	});

	it("are none where nothing is stacked, and never without end", () => {
		expect(foldWave(straight, 50, 50, { pitch: 28, behind: 35, before: 35 })).toEqual([]);
		expect(foldWave(straight, 50, 40, { pitch: 28, behind: 35, before: 35 })).toEqual([]);
		expect(foldWave(straight, 0, 1e6, { pitch: 28, behind: 35, before: 35 }).length).toBeLessThan(3000);
	});
});
