import { fitTrack, pointAt, readChain, stationSquareOff, tapedFrom } from "@baywright/geometry";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { check, cornersOf, ordinaryShapes, placings } from "../../properties/bays.ts";

const TOLERANCE = 1e-5;

const tracks = fc
	.tuple(
		ordinaryShapes,
		placings,
		fc.array(fc.integer({ min: 20, max: 120 }), { minLength: 61, maxLength: 61 }),
		fc.boolean(),
		fc.integer({ min: 0, max: 1000 }).map((part) => part / 1000),
	)
	.map(([shape, placing, offs, even, share]) => {
		const read = readChain(cornersOf(shape, placing).map(([x, y]) => ({ x, y })));
		if (!read.ok) return null;
		const { walls } = read.value;
		const last = walls.length - 1;
		const fit = fitTrack(
			read.value,
			walls.map((_, wall) => (even ? 50 : (offs[wall] as number))),
			{ start: { wall: 0, at: 0 }, end: { wall: last, at: walls[last]?.length as number } },
			{
				leastRadius: { internal: 60, external: 60 },
				preferredRadius: 400,
				straightBesideBend: 0,
				endStraight: 0,
				clearance: 0,
				corridor: null,
				setRadii: new Map(),
			},
		);
		return fit.ok ? { track: fit.value, station: share * fit.value.path.length } : null;
	});

describe("from the track to the wall face and back", () => {
	test("a place is taped square off its wall, and its tape reading finds it again", () => {
		let fitted = 0;
		check(
			tracks,
			(fit) => {
				if (fit === null) return;
				fitted++;
				const { track, station } = fit;
				const { wall, at, projection } = tapedFrom(track, station);
				const [a, b] = track.chain.corners.slice(wall, wall + 2) as [
					{ x: number; y: number },
					{ x: number; y: number },
				];
				const long = Math.hypot(b.x - a.x, b.y - a.y);
				const [ux, uy] = [(b.x - a.x) / long, (b.y - a.y) / long];
				const place = pointAt(track.path, station)?.at as { x: number; y: number };
				expect(
					Math.hypot(a.x + ux * at + uy * projection - place.x, a.y + uy * at - ux * projection - place.y),
				).toBeLessThan(TOLERANCE);
				expect(Math.abs((stationSquareOff(track, wall, at) as number) - station)).toBeLessThan(2e-3);
			},
			4000,
		);
		expect(fitted).toBeGreaterThan(800);
	});

	test("a place along a wall has one station, which never runs back as the place goes on", () => {
		check(
			tracks,
			(fit) => {
				if (fit === null) return;
				const { track } = fit;
				track.chain.walls.forEach(({ length }, wall) => {
					let before = 0;
					for (let at = -100; at <= length + 100; at += (length + 200) / 40) {
						const station = stationSquareOff(track, wall, at) as number;
						expect(station).toBeGreaterThanOrEqual(before - TOLERANCE);
						expect(station).toBeLessThanOrEqual(track.path.length + TOLERANCE);
						before = station;
					}
				});
			},
			500,
		);
	});

	test("a bend with the same projection either side passes from wall to wall at its middle", () => {
		check(
			tracks,
			(fit) => {
				if (fit === null || new Set(fit.track.projections).size > 1) return;
				for (const segment of fit.track.path.segments) {
					if (segment.kind !== "bend" || segment.sprung || segment.reverse || segment.corners.length > 1) continue;
					const middle = segment.start + segment.length / 2;
					const corner = segment.corners[0] as number;
					expect(tapedFrom(fit.track, middle - 1e-3).wall).toBe(corner - 1);
					expect(tapedFrom(fit.track, middle + 1e-3).wall).toBe(corner);
				}
			},
			1000,
		);
	});
});
