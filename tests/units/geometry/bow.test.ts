import { footOnFace, pointAt, stationSquareOff, tapedFrom } from "@baywright/geometry";
import { describe, expect, test } from "vitest";
import { planDrawn } from "../../properties/bays.ts";
import { chainOf, faultsOf, fitted, rad } from "./fit-walls.ts";

describe("a bowed wall", () => {
	test.each([
		["away from the room", 200, 1],
		["into the room", -200, -1],
	])("%s: its face has radius (c²/4 + h²)/2h, its leg ρ ∓ d, concentric", (_, rise, side) => {
		const walls = { lengths: [2000], rises: [rise], projection: 60 };
		const { path, chain } = fitted(walls);
		const rho = (2000 ** 2 / 4 + 200 ** 2) / (2 * 200);
		expect(chain.walls[0]?.bow?.radius).toBeCloseTo(rho, 9);
		expect(chain.walls[0]?.faceLength).toBeCloseTo(rho * 2 * Math.asin(1000 / rho), 9);
		const [leg] = path.segments;
		if (leg?.kind !== "bow" || path.segments.length !== 1) throw new Error(`${leg?.kind}`);
		expect(leg.radius).toBeCloseTo(rho - side * 60, 9);
		expect(leg.length).toBeCloseTo((rho - side * 60) * 2 * Math.asin(1000 / rho), 9);
		expect(Math.sign(leg.turn)).toBe(side);
		// Its centre lies on the room side of a wall that bows away from the room.
		expect(leg.centre.x).toBeCloseTo(1000, 9);
		expect(leg.centre.y).toBeCloseTo(side * (200 - rho), 9);
		const middle = pointAt(path, path.length / 2)?.at;
		expect(middle?.y).toBeCloseTo(rise - 60, 9);
	});

	test("is refused where its leg would be tighter than the track bends, exactly from there on", () => {
		// ρ = 500 on a chord of 800 and a rise of 200.
		const walls = (projection: number) => ({ lengths: [800], rises: [200], projection });
		const rule = { leastRadius: { internal: 450, external: 450 } };
		expect(faultsOf(walls(50 - 1e-6), rule)).toEqual([]);
		expect(faultsOf(walls(50 + 1e-3), rule)).toMatchObject([{ kind: "bow-too-tight", wall: 0, least: 450 }]);
		// The other way round a wider projection is the easier one.
		const into = (projection: number) => ({ lengths: [800], rises: [-200], projection });
		const wide = { leastRadius: { internal: 550, external: 550 } };
		expect(faultsOf(into(50 + 1e-6), wide)).toEqual([]);
		expect(faultsOf(into(50 - 1e-3), wide)).toMatchObject([{ kind: "bow-too-tight", wall: 0, least: 550 }]);
	});

	test.each([200, -200])("carries brackets along it, taped along its face, rise %d", (rise) => {
		const plan = planDrawn({
			id: "b",
			corners: [
				[0, 0],
				[2000, 0],
			],
			walls: [{ rise }],
			track: { system: "fine-hand-drawn" },
		});
		expect(plan.findings.map(({ code }) => code)).toEqual(["bow-to-be-bent", "holes-in-cable-zones"]);
		const rho = (2000 ** 2 / 4 + 200 ** 2) / 400;
		const half = Math.asin(1000 / rho);
		expect(plan.brackets.length).toBeGreaterThan(4);
		for (const { fromLeftCorner, fromRightCorner, projection, at } of plan.brackets) {
			expect(projection).toBeCloseTo(60, 6);
			expect(fromLeftCorner + fromRightCorner).toBeCloseTo(rho * 2 * half, 6);
			// By the angle at the centre.
			const side = Math.sign(rise);
			const swung = fromLeftCorner / rho - half;
			const reach = rho - side * 60;
			expect(at.x).toBeCloseTo(1000 + reach * Math.sin(swung), 6);
			expect(at.y).toBeCloseTo(side * (200 - rho + reach * Math.cos(swung)), 6);
		}
	});
});

describe("between a bow and its neighbour", () => {
	test("a junction that is already tangent has no bend", () => {
		// Straight, bowed, straight, each tangent to the next.
		const walls = { lengths: [800, 1500, 800], turns: [0, 0], rises: [0, 180, 0], projection: 70 };
		const { path, radii } = fitted(walls);
		expect(path.segments.map(({ kind }) => kind)).toEqual(["straight", "bow", "straight"]);
		expect(radii).toEqual([0, 0]);
	});

	test("the bend touches both legs at its ends: centre R off either, whichever way the bow goes", () => {
		for (const rise of [120, -120])
			for (const turn of [60, -60]) {
				const walls = { lengths: [1500, 1500], turns: [turn], rises: [0, rise], projection: 80 };
				const { path } = fitted(walls);
				const [leg, bend, bow] = path.segments;
				if (leg?.kind !== "straight" || bend?.kind !== "bend" || bow?.kind !== "bow") throw new Error("not fitted");
				expect(Math.sign(bend.turn)).toBe(Math.sign(turn));
				expect(Math.abs(-80 - bend.centre.y)).toBeCloseTo(bend.radius, 7);
				// Two circles that touch: centres a sum or a difference of radii apart.
				const apart = Math.hypot(bend.centre.x - bow.centre.x, bend.centre.y - bow.centre.y);
				const inside = Math.sign(bend.turn) === Math.sign(bow.turn);
				expect(apart).toBeCloseTo(inside ? Math.abs(bow.radius - bend.radius) : bow.radius + bend.radius, 7);
			}
	});

	test("angles are between the faces: a bow turns by its own sweep and the corner by the rest", () => {
		const chain = chainOf({ lengths: [1000, 2000, 1000], turns: [30, 40], rises: [0, 300, 0], projection: 60 });
		expect(chain.turns[1]).toBeCloseTo(rad(30), 12);
		expect(chain.turns[2]).toBeCloseTo(rad(40), 12);
		const { path } = fitted({ lengths: [1000, 2000, 1000], turns: [30, 40], rises: [0, 300, 0], projection: 60 });
		const first = path.segments[0];
		const last = path.segments.at(-1);
		const swept = rad(70) + 4 * Math.atan(600 / 2000);
		expect((first?.heading as number) - (last?.heading as number)).toBeCloseTo(swept, 9);
	});
});

test("a place on a bow is taped and found again, all along and on the bends beside it", () => {
	for (const rises of [
		[0, 250, 0],
		[0, -250, 0],
		[-100, 200, -60],
	]) {
		const track = fitted({ lengths: [1200, 1800, 1200], turns: [50, 35], rises, projection: 60 });
		for (let share = 0; share <= 1; share += 1 / 64) {
			const station = share * track.path.length;
			const { wall, at, projection } = tapedFrom(track, station);
			const place = pointAt(track.path, station)?.at as { x: number; y: number };
			const foot = footOnFace(track.chain, wall, place);
			expect(at).toBeCloseTo(foot.at, 9);
			expect(projection).toBeCloseTo(foot.off, 9);
			expect(Math.abs((stationSquareOff(track, wall, at) as number) - station)).toBeLessThan(1e-3);
		}
	}
});
