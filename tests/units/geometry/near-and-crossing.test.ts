import {
	bayPolygon,
	clearance,
	indexWalls,
	nearerThan,
	type Point,
	pathCrossings,
	pointAt,
	readChain,
	type Segment,
	type TrackPath,
	wallCrossings,
} from "@baywright/geometry";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { distanceBetween, polygonOf } from "../../oracles/jsts-plane.ts";
import { anyShapes, check, cornersOf, ordinaryBays, placings, planDrawn } from "../../properties/bays.ts";

const TOLERANCE = 1e-5;

/** A segment as a polyline whose chords stay within `off` mm of it. */
function sampled(segment: Segment, off: number): Point[] {
	if (segment.kind === "straight") return [segment.from, segment.to];
	const path: TrackPath = { segments: [{ ...segment, start: 0 }], length: segment.length };
	// A chord that spans an angle a stands off its arc by r(1 − cos a/2), just under r·a²/8.
	const steps = Math.ceil(segment.length / Math.sqrt(8 * segment.radius * off)) + 1;
	return Array.from({ length: steps + 1 }, (_, i) => pointAt(path, (segment.length * i) / steps)?.at as Point);
}

const SAMPLING = 1e-3;

/** A path of straights and bends, joined but otherwise as it comes: it may cross itself and the walls. */
const pathsOf = (most: number, longest: number, leastTurn = -2800): fc.Arbitrary<TrackPath> =>
	fc
		.array(
			fc.record({
				length: fc.integer({ min: 5, max: longest }),
				turn: fc.integer({ min: leastTurn, max: 2800 }).map((part) => part / 1000),
				radius: fc.integer({ min: 20, max: 900 }),
				bend: fc.boolean(),
			}),
			{ minLength: 1, maxLength: most },
		)
		.map((parts) => {
			const segments: Record<string, unknown>[] = [];
			let from = { x: 0, y: 0 };
			let heading = 0;
			let start = 0;
			for (const { length, turn, radius, bend } of parts) {
				if (bend && turn !== 0) {
					const side = Math.sign(turn) * radius;
					const centre = { x: from.x + Math.sin(heading) * side, y: from.y - Math.cos(heading) * side };
					const out = heading - turn;
					const to = { x: centre.x - Math.sin(out) * side, y: centre.y + Math.cos(out) * side };
					const arc = radius * Math.abs(turn);
					segments.push({
						kind: "bend",
						from,
						to,
						start,
						length: arc,
						heading,
						centre,
						radius,
						turn,
						corners: [1],
						sprung: false,
					});
					heading = out;
					from = to;
					start += arc;
				} else {
					const to = { x: from.x + Math.cos(heading) * length, y: from.y + Math.sin(heading) * length };
					segments.push({ kind: "straight", from, to, start, length, heading, wall: 0 });
					from = to;
					start += length;
				}
			}
			return { segments: segments as unknown as Segment[], length: start };
		});

const paths = pathsOf(6, 2000);

const chains = fc.tuple(anyShapes, placings).map(([shape, placing]) => {
	const corners = cornersOf(shape, { ...placing, x: placing.x / 5, y: placing.y / 5 });
	const read = readChain(corners.map(([x, y]) => ({ x, y })));
	return read.ok ? read.value : null;
});

describe("how near a path comes to walls", () => {
	test("is what the general library finds on a fine polyline, for any path and any walls", () => {
		let apart = 0;
		check(
			fc.tuple(paths, chains),
			([path, chain]) => {
				if (chain === null) return;
				const near = clearance(path, indexWalls(chain));
				const slow = Math.min(...path.segments.map((each) => distanceBetween(sampled(each, SAMPLING), chain.corners)));
				expect(Math.abs((near?.distance as number) - slow)).toBeLessThan(SAMPLING + TOLERANCE);
				if (near === null) throw new Error("nothing");
				if (slow > SAMPLING) apart++;
				const { onPath, onCurve, distance, station } = near;
				expect(Math.abs(Math.hypot(onPath.x - onCurve.x, onPath.y - onCurve.y) - distance)).toBeLessThan(TOLERANCE);
				const there = pointAt(path, station)?.at as Point;
				expect(Math.hypot(there.x - onPath.x, there.y - onPath.y)).toBeLessThan(TOLERANCE);
			},
			800,
		);
		expect(apart).toBeGreaterThan(300);
	});

	test("names every segment nearer than a limit and no other", () => {
		let named = 0;
		check(
			fc.tuple(paths, chains, fc.integer({ min: 0, max: 600 })),
			([path, chain, limit]) => {
				if (chain === null) return;
				const found = nearerThan(path, indexWalls(chain), limit);
				path.segments.forEach((segment, i) => {
					const slow = distanceBetween(sampled(segment, SAMPLING), chain.corners);
					const near = found.find((each) => each.segment === i);
					if (slow < limit - SAMPLING) expect(near).toBeDefined();
					if (slow > limit + SAMPLING) expect(near).toBeUndefined();
					if (near === undefined) return;
					named++;
					expect(Math.abs(near.distance - slow)).toBeLessThan(SAMPLING + TOLERANCE);
				});
			},
			800,
		);
		expect(named).toBeGreaterThan(300);
	});

	test("on fitted tracks is never less than refused", () => {
		let fitted = 0;
		check(
			ordinaryBays,
			(drawn) => {
				const plan = planDrawn(drawn);
				if (plan.path === null || plan.chain === null) return;
				fitted++;
				const { corners } = plan.chain;
				const slow = Math.min(...plan.path.segments.map((each) => distanceBetween(sampled(each, SAMPLING), corners)));
				const refused = plan.findings.some(({ code }) => code === "track-too-near-wall");
				if (slow < plan.system.clearance - SAMPLING) expect(refused).toBe(true);
				if (slow > plan.system.clearance + SAMPLING) expect(refused).toBe(false);
			},
			1000,
		);
		expect(fitted).toBeGreaterThan(200);
	});
});

describe("crossings", () => {
	test("walls cross exactly where every pair but neighbours, tried one by one, meets", () => {
		let crossed = 0;
		check(
			chains,
			(chain) => {
				if (chain === null) return;
				const faces = chain.walls.map((_, wall) => chain.corners.slice(wall, wall + 2));
				const found = wallCrossings(chain).map(({ first, second }) => `${first} ${second}`);
				for (let first = 0; first < faces.length; first++)
					for (let second = first + 2; second < faces.length; second++) {
						const gap = distanceBetween(faces[first] as Point[], faces[second] as Point[]);
						const named = found.includes(`${first} ${second}`);
						if (gap === 0) expect(named).toBe(true);
						if (gap > 1e-4) expect(named).toBe(false);
						if (named) crossed++;
					}
			},
			1500,
		);
		expect(crossed).toBeGreaterThan(100);
	});

	test("a path crosses itself exactly where its polylines do", () => {
		let crossed = 0;
		const coiled = pathsOf(9, 600, -400);
		check(
			coiled,
			(path) => {
				const lines = path.segments.map((segment) => sampled(segment, 0.01));
				const found = pathCrossings(path);
				for (let first = 0; first < lines.length; first++)
					for (let second = first + 2; second < lines.length; second++) {
						const [a, b] = [lines[first], lines[second]] as [Point[], Point[]];
						const gap = distanceBetween(a, b);
						const named = found.find((each) => each.first === first && each.second === second);
						if (gap > 0.1) expect(named).toBeUndefined();
						// A polyline that runs only just through another may be an arc that only just does not.
						if (named === undefined) {
							if (gap === 0) expect(onlyTouches(a, b)).toBe(true);
							continue;
						}
						crossed++;
						for (const line of [a, b]) expect(distanceBetween([named.at, named.at], line)).toBeLessThan(0.1);
					}
			},
			1500,
		);
		expect(crossed).toBeGreaterThan(100);
	});
});

/** Do two polylines that meet come apart when one is moved by half a millimetre some way or other? */
const onlyTouches = (a: readonly Point[], b: readonly Point[]): boolean =>
	[0, 1, 2, 3, 4, 5, 6, 7].some((part) => {
		const angle = (part * Math.PI) / 4;
		const moved = a.map(({ x, y }) => ({ x: x + 0.5 * Math.cos(angle), y: y + 0.5 * Math.sin(angle) }));
		return distanceBetween(moved, b) > 0;
	});

describe("the floor of a bay", () => {
	test("has the area, the inside and the edge that the general library gives it", () => {
		let inside = 0;
		let outside = 0;
		check(
			fc.tuple(chains, placings),
			([chain, { x, y }]) => {
				if (chain === null || chain.corners.length < 3) return;
				const slow = polygonOf(chain.corners);
				if (!slow.isSimple) return;
				const floor = bayPolygon(chain);
				if (floor === null) throw new Error("no floor");
				expect(Math.abs(floor.area - slow.area)).toBeLessThan(1e-9 * slow.area + 1e-3);
				const middle = chain.corners.reduce(
					(sum, p) => ({ x: sum.x + p.x / chain.corners.length, y: sum.y + p.y / chain.corners.length }),
					{
						x: 0,
						y: 0,
					},
				);
				const p = { x: middle.x + x / 5, y: middle.y + y / 5 };
				const edge = slow.distanceToEdge(p);
				expect(Math.abs(floor.distanceToEdge(p) - edge)).toBeLessThan(1e-5);
				if (edge < 1e-4) return;
				expect(floor.contains(p)).toBe(slow.contains(p));
				if (slow.contains(p)) inside++;
				else outside++;
			},
			2000,
		);
		expect(Math.min(inside, outside)).toBeGreaterThan(100);
	});

	test("a single wall has none", () => {
		const chain = readChain([
			{ x: 0, y: 0 },
			{ x: 900, y: 0 },
		]);
		expect(chain.ok && bayPolygon(chain.value)).toBeNull();
	});
});
