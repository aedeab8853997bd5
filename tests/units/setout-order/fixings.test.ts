import { type BayPlan, type CableZone, fixingGuidance, type Surface, zoneName } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planned } from "../app/marks-right-angled.ts";
import { bayOf } from "../setout-survey/bay.ts";

const CORNERS: readonly (readonly [number, number])[] = [
	[0, 0],
	[0, 900],
	[1800, 900],
	[1800, 0],
];

const planOf = (more: object): BayPlan => planned(bayOf({ corners: CORNERS, ...more }));

const zonesOf = ({ fixings }: BayPlan, kind: CableZone["kind"]) =>
	fixings.map(({ zones }) => zones.filter((zone) => zone.kind === kind));

/** Figures of BS 7671, regulation 522.6.202, read in secondary sources: 150 mm from the top of a wall and from the angle of two walls. */
const ZONE = 150;

describe("the zone along the top of a wall", () => {
	test.each([
		[2450, 2300, true],
		[2451, 2300, false],
		[2500, 2300, false],
	])("ceiling %d, track %d: every bracket is in it for sure: %s", (ceiling, height, sure) => {
		const plan = planOf({ ceiling, track: { height } });
		expect(plan.brackets.length).toBeGreaterThan(3);
		for (const zones of zonesOf(plan, "wall-top"))
			expect(zones).toEqual([{ kind: "wall-top", below: ceiling - height, sure }]);
	});

	test("ends where no plate reaches it", () => {
		expect(zonesOf(planOf({ ceiling: 2501, track: { height: 2300 } }), "wall-top").flat()).toEqual([]);
	});

	test.each([[{ ceiling: null, track: { height: 2300 } }], [{ ceiling: 2400, track: { height: null } }]])(
		"is a perhaps while %j leaves a height open",
		(more) => {
			for (const zones of zonesOf(planOf(more), "wall-top"))
				expect(zones).toEqual([{ kind: "wall-top", below: null, sure: false }]);
		},
	);
});

test("beside corners: by where the brackets lie in the room, for right-angled bays of any size", () => {
	const property = fc.property(
		fc.integer({ min: 500, max: 1500 }),
		fc.integer({ min: 1000, max: 3000 }),
		(deep, wide) => {
			const corners = [
				[0, 0],
				[0, deep],
				[wide, deep],
				[wide, 0],
			] as const;
			const plan = planOf({ corners, track: { projection: 40, radius: 225 } });
			for (const [i, { at, wall }] of plan.brackets.entries()) {
				// Walls stand on x = 0, y = deep and x = wide: a bracket's distance from the next wall is its distance from the corner.
				const apart = wall === 1 ? [at.x, wide - at.x] : [at.y, deep - at.y];
				const near = apart.filter((mm) => mm <= ZONE).length;
				const inner = wall === 1 ? near : Number(deep - at.y <= ZONE);
				const sure = plan.fixings[i]?.zones.filter((zone) => zone.kind === "corner" && zone.sure) ?? [];
				expect(sure.length).toBe(inner);
				const all = plan.fixings[i]?.zones.filter((zone) => zone.kind === "corner") ?? [];
				// A bracket of 30 reaches 15 further.
				expect(all.length).toBe(apart.filter((mm) => mm <= ZONE + 15).length);
			}
		},
	);
	fc.assert(property, { seed: 522_6202, numRuns: 200 });
});

describe("in line with a socket", () => {
	const socket = (box: object) => ({
		track: { height: 2300 },
		ceiling: 3000,
		obstacles: [{ kind: "socket", wall: 1, from: 600, to: 1000, bottom: 450, top: 536, ...box }],
	});

	test("a bracket over it, and none beside it", () => {
		const plan = planOf(socket({}));
		const zones = zonesOf(plan, "accessory");
		const over = plan.brackets.map(({ wall, at }) => wall === 1 && at.x >= 600 && at.x <= 1000);
		expect(over).toContain(true);
		expect(over).toContain(false);
		plan.brackets.forEach((bracket, i) => {
			if (over[i])
				expect(zones[i]).toEqual([{ kind: "accessory", obstacle: 0, accessory: "socket", lies: "above", sure: true }]);
			else if (bracket.wall !== 1 || Math.abs(bracket.at.x - 800) > 215) expect(zones[i]).toEqual([]);
		});
	});

	test("a bracket under one over the track", () => {
		const plan = planOf(socket({ bottom: 2500, top: 2580 }));
		const below = zonesOf(plan, "accessory").flat();
		expect(below).toContainEqual({ kind: "accessory", obstacle: 0, accessory: "socket", lies: "below", sure: true });
	});

	test("every bracket of its wall at its height, none of another wall", () => {
		const plan = planOf(socket({ from: 20, to: 60, bottom: 2260, top: 2340 }));
		const level = zonesOf(plan, "accessory").map((zones) =>
			zones.some((zone) => zone.kind === "accessory" && zone.lies === "level"),
		);
		expect(level).toEqual(plan.brackets.map(({ wall }) => wall === 1));
	});

	test("a radiator makes none", () => {
		expect(zonesOf(planOf(socket({ kind: "radiator", depth: 0 })), "accessory").flat()).toEqual([]);
	});
});

test("what is fixed to the ceiling lies in no zone of a wall, and is told nothing of them", () => {
	const plan = planOf({
		ceiling: 2400,
		ceilingSurface: "joists",
		track: { height: 2380, mounting: "ceiling", system: "ceiling-channel" },
	});
	expect(plan.fixings.length).toBe(plan.brackets.length);
	expect(plan.brackets.length).toBeGreaterThan(3);
	for (const fixing of plan.fixings) expect(fixing).toEqual({ into: "joists", overhead: true, zones: [] });
	expect(plan.findings.map(({ code }) => code)).not.toContain("holes-in-cable-zones");
});

test("each bracket is fixed to its own wall's surface", () => {
	const walls = [{ surface: "batten" }, { surface: "masonry" }, { surface: "plasterboard" }];
	const plan = planOf({ walls });
	expect(new Set(plan.brackets.map(({ wall }) => wall))).toEqual(new Set([0, 1, 2]));
	plan.brackets.forEach(({ wall }, i) => {
		expect(plan.fixings[i]?.into).toBe(walls[wall]?.surface);
	});
});

test("the finding counts each bracket once, by the gravest of its zones", () => {
	const plan = planOf({ ceiling: 2400, track: { height: 2300 } });
	const found = plan.findings.filter(({ code }) => code === "holes-in-cable-zones");
	expect(found.length).toBe(1);
	const count = plan.brackets.length;
	// By the room's own axes: within 150 of another wall, on the front wall or toward the front.
	const corner = plan.brackets.filter(
		({ wall, at }) => (wall === 1 ? Math.min(at.x, 1800 - at.x) : 900 - at.y) <= ZONE,
	).length;
	expect(found[0]?.figures).toEqual({
		holes: count,
		perhaps: 0,
		total: count,
		top: count,
		corner,
		accessory: 0,
		unmeasured: 0,
	});
});

test("guidance defers and never names a wall it does not know", () => {
	const all: readonly Surface[] = ["batten", "masonry", "plasterboard", "concrete", "joists", "timber", "unknown"];
	expect(new Set(all.map((into) => fixingGuidance(into).pilot)).size).toBe(all.length);
	expect(fixingGuidance("unknown").pilot).toContain("trial hole");
	// Common practice, no source: a pilot of 2 mm in a batten.
	expect(fixingGuidance("batten").pilot).toContain("2 mm");
	expect(zoneName({ kind: "corner", corner: 2, distance: 120, sure: false }, 3)).toBe("perhaps beside corner 2");
});
