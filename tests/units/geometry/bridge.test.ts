import { pointAt, stationSquareOff, tapedFrom } from "@baywright/geometry";
import { describe, expect, test } from "vitest";
import { bridgedOf } from "./bridged.ts";
import { faultsOf, fitted, rad } from "./fit-walls.ts";

const long = 1500;
const sumUnder180 = { lengths: [long, 160, long], turns: [40, 55], projection: 50 };

/** The leg along the one facet, between virtual corners, for an even projection. */
const legOf = (facet: number, first: number, second: number, d: number) =>
	facet - d * (Math.tan(rad(first) / 2) + Math.tan(rad(second) / 2));

describe("one facet bridged", () => {
	test("by a bend tangent to it where that is wide enough: R0 = ℓ/(tan(δ₁/2) + tan(δ₂/2))", () => {
		const R0 = legOf(160, 40, 55, 50) / (Math.tan(rad(20)) + Math.tan(rad(27.5)));
		// Two bends of R0 fill the leg without a straight; one that asks for straight beside bends must bridge.
		const least = { internal: 60, external: 60 };
		expect(R0).toBeGreaterThan(60);
		const track = fitted(sumUnder180, { leastRadius: least, straightBesideBend: 40 });
		const bridged = bridgedOf(track);
		expect(bridged).toHaveLength(1);
		expect(track.radii[0]).toBeCloseTo(R0, 9);
		expect(bridged[0]?.standOff).toBeCloseTo(0, 9);
		expect(track.path.segments.map(({ kind }) => kind)).toEqual(["straight", "bend", "straight"]);
	});

	test.each([
		{ first: 40, second: 55, facet: 160, d: 50, radius: 250 },
		{ first: 12, second: 20, facet: 90, d: 30, radius: 400 },
		{ first: 70, second: 70, facet: 200, d: 40, radius: 225 },
		{ first: -40, second: -55, facet: 160, d: 200, radius: 420 },
		{ first: -20, second: -30, facet: 100, d: 150, radius: 500 },
	])("stands off by 2·sin·sin/cos·(R − R0): %o", ({ first, second, facet, d, radius }) => {
		const walls = { lengths: [long, facet, long], turns: [first, second], projection: d };
		const { radii, ...track } = fitted(walls, { leastRadius: { internal: radius, external: radius } });
		const [a, b] = [rad(Math.abs(first)) / 2, rad(Math.abs(second)) / 2];
		// Legs between external corners are longer than their walls.
		const leg = first > 0 ? legOf(facet, first, second, d) : facet + d * (Math.tan(a) + Math.tan(b));
		const R0 = leg / (Math.tan(a) + Math.tan(b));
		const off = ((2 * Math.sin(a) * Math.sin(b)) / Math.cos(a + b)) * (radius - R0);
		expect(radii[0]).toBeCloseTo(radius, 9);
		// Off an internal wall, towards an external one.
		const [bridged] = bridgedOf({ radii, ...track });
		expect(bridged?.standOff).toBeCloseTo(Math.sign(first) * off, 7);
		// And so the path itself says.
		const across = tapedFrom({ radii, ...track }, track.path.length / 2);
		if (across.wall === 1) expect(across.projection).toBeGreaterThan(0);
	});

	test("never where the turns come to 180° or more: then it says what the facet lacks", () => {
		const faults = faultsOf({ lengths: [long, 300, long], turns: [95, 90], projection: 50 }, { clearance: 1 });
		expect(faults.map(({ kind }) => kind)).toEqual(["leg-too-short"]);
		const [fault] = faults;
		if (fault?.kind !== "leg-too-short") throw new Error("other");
		const slopes = Math.tan(rad(47.5)) + Math.tan(rad(45));
		expect(fault.needed - fault.length).toBeCloseTo(100 * slopes - (300 - 50 * slopes), 9);
	});

	test("never where a leg beside it is too short for the wider bend", () => {
		const walls = { lengths: [long, 60, 120], turns: [60, 60], projection: 50 };
		expect(faultsOf(walls, { leastRadius: { internal: 225, external: 225 } }).map(({ kind }) => kind)).toContain(
			"leg-too-short",
		);
	});

	test("never round an external edge that it would not clear", () => {
		const walls = { lengths: [long, 100, long], turns: [-50, -50], projection: 40 };
		const faults = faultsOf(walls, { leastRadius: { internal: 225, external: 225 } });
		expect(faults.length).toBeGreaterThan(0);
	});
});

describe("a run of facets", () => {
	test("each too short: one bend past all, off every one of them", () => {
		const walls = { lengths: [long, 60, 60, 60, long], turns: [25, 25, 25, 25], projection: 40 };
		const track = fitted(walls, { leastRadius: { internal: 300, external: 300 } });
		expect(track.path.segments.map(({ kind }) => kind)).toEqual(["straight", "bend", "straight"]);
		const bridged = bridgedOf(track);
		expect(bridged.map(({ wall }) => wall)).toEqual([1, 2, 3]);
		for (const { standOff } of bridged) expect(standOff).toBeGreaterThanOrEqual(-1e-9);
		// The whole turn in one sweep.
		expect(track.path.segments[1]?.length).toBeCloseTo((track.radii[0] as number) * rad(100), 6);
	});

	test("is parted where a facet between is long enough: as many legs as can be", () => {
		const walls = { lengths: [long, 60, 900, 60, long], turns: [20, 20, 20, 20], projection: 40 };
		const { path } = fitted(walls, { leastRadius: { internal: 300, external: 300 } });
		const bends = path.segments.flatMap((segment) => (segment.kind === "bend" ? [segment.corners] : []));
		expect(bends).toEqual([
			[1, 2],
			[3, 4],
		]);
	});
});

test("a place on a bridging bend is taped from one wall after another and found again", () => {
	const runs = [
		{ lengths: [long, 60, 60, 60, long], turns: [25, 25, 25, 25], projection: 40 },
		{ lengths: [long, 120, long], turns: [30, 50], projection: [40, 60, 55] },
		{ lengths: [long, 100, long], turns: [-20, -30], projection: 150 },
	];
	for (const walls of runs) {
		const track = fitted(walls, { leastRadius: { internal: 300, external: 450 } });
		const walked = new Set<number>();
		for (let share = 0; share <= 1; share += 1 / 256) {
			const station = share * track.path.length;
			const { wall, at, projection } = tapedFrom(track, station);
			walked.add(wall);
			const corner = track.chain.corners[wall] as { x: number; y: number };
			const { ux, uy } = track.chain.walls[wall] as { ux: number; uy: number };
			const place = pointAt(track.path, station)?.at as { x: number; y: number };
			expect(corner.x + ux * at + uy * projection).toBeCloseTo(place.x, 7);
			expect(corner.y + uy * at - ux * projection).toBeCloseTo(place.y, 7);
			expect(Math.abs((stationSquareOff(track, wall, at) as number) - station)).toBeLessThan(2e-3);
		}
		// From wall to wall, never back.
		expect([...walked]).toEqual([...walked].sort());
		expect(walked.size).toBeGreaterThan(1);
	}
});
