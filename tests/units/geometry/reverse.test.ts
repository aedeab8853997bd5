import { type Bend, pointAt, stationSquareOff, tapedFrom } from "@baywright/geometry";
import { describe, expect, test } from "vitest";
import { faultsOf, fitted, rad } from "./fit-walls.ts";

/** A step: out by `step` at right angles or splayed, and on in the same direction. */
const stepped = (step: number, turn = 60, d = 60) => ({
	lengths: [1800, step, 1800],
	turns: [turn, -turn],
	projection: d,
});

describe("a reverse bend past a step between parallel walls", () => {
	test.each([
		{ step: 60, turn: 60, r1: 200, r2: 260, m: 30 },
		{ step: 120, turn: 45, r1: 150, r2: 150, m: 0 },
		{ step: 90, turn: -60, r1: 180, r2: 240, m: 50 },
		{ step: 100, turn: -90, r1: 225, r2: 225, m: 40 },
	])("turns by the angle whose (R1 + R2)(1 − cos φ) + m sin φ is the step: %o", ({ step, turn, r1, r2, m }) => {
		const [internal, external] = turn > 0 ? [r1, r2] : [r2, r1];
		const { path } = fitted(stepped(step, turn), {
			leastRadius: { internal, external },
			straightBesideBend: m,
		});
		const bends = path.segments.filter((segment): segment is Bend => segment.kind === "bend");
		expect(bends.map(({ reverse }) => reverse)).toEqual([true, true]);
		const [before, after] = bends as [Bend, Bend];
		expect([before.radius, after.radius]).toEqual([r1, r2]);
		expect(before.turn).toBeCloseTo(-after.turn, 9);
		const phi = Math.abs(before.turn);
		expect((r1 + r2) * (1 - Math.cos(phi)) + m * Math.sin(phi)).toBeCloseTo(step * Math.sin(rad(Math.abs(turn))), 6);
		// What it covers along the walls.
		const covers = (r1 + r2) * Math.sin(phi) + m * Math.cos(phi);
		expect(after.to.x - before.from.x).toBeCloseTo(covers, 6);
		const between = path.segments[path.segments.indexOf(before) + 1];
		if (m > 0) expect(between).toMatchObject({ kind: "straight", crosses: true });
		if (m > 0) expect(between?.length).toBeCloseTo(m, 9);
	});

	test("keeps its clearance from the edge it goes round, and stands as near to it as that lets it", () => {
		for (const turn of [60, -60]) {
			const { path, chain } = fitted(stepped(80, turn), { leastRadius: { internal: 225, external: 225 } });
			const edge = chain.corners[turn > 0 ? 2 : 1] as { x: number; y: number };
			let nearest = Number.POSITIVE_INFINITY;
			for (let i = 0; i <= 20_000; i++) {
				const at = pointAt(path, (path.length * i) / 20_000)?.at as { x: number; y: number };
				nearest = Math.min(nearest, Math.hypot(at.x - edge.x, at.y - edge.y));
			}
			expect(nearest).toBeGreaterThan(15 - 1e-3);
		}
	});

	test("is refused where the walls beside it are too short for it", () => {
		const walls = { ...stepped(80), lengths: [100, 80, 100] };
		const faults = faultsOf(walls, { leastRadius: { internal: 225, external: 225 } });
		expect(faults.map(({ kind }) => kind)).toContain("leg-too-short");
	});
});

test("a place on a reverse bend is taped and found again, and a place along a wall never runs back", () => {
	for (const turn of [60, -60, 85, -85]) {
		const track = fitted(stepped(90, turn), { leastRadius: { internal: 180, external: 200 }, straightBesideBend: 20 });
		for (let share = 0; share <= 1; share += 1 / 200) {
			const station = share * track.path.length;
			const { wall, at, projection } = tapedFrom(track, station);
			const corner = track.chain.corners[wall] as { x: number; y: number };
			const { ux, uy } = track.chain.walls[wall] as { ux: number; uy: number };
			const place = pointAt(track.path, station)?.at as { x: number; y: number };
			expect(corner.x + ux * at + uy * projection).toBeCloseTo(place.x, 7);
			expect(corner.y + uy * at - ux * projection).toBeCloseTo(place.y, 7);
			expect(
				Math.abs((stationSquareOff(track, wall, at) as number) - station),
				`turn ${turn}, wall ${wall}, at ${at}`,
			).toBeLessThan(2e-3);
		}
		track.chain.walls.forEach(({ length }, wall) => {
			let before = 0;
			for (let at = -50; at <= length + 50; at += length / 60) {
				const station = stationSquareOff(track, wall, at) as number;
				expect(station).toBeGreaterThanOrEqual(before - 1e-6);
				before = station;
			}
		});
	}
});
