import { cornerBend, radians } from "@baywright/geometry";
import { cornerCard, RIGHT_ANGLE_RULE } from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { planDrawn } from "../properties/bays.ts";

/** Every figure here: common practice, no source. Lengths mm. */
const RIGHT_ANGLE = radians(Math.PI / 2);
const card = (angle: number, radius: number) =>
	cornerCard({ angle: radians((angle * Math.PI) / 180), left: 40, right: 40, radius, brackets: 350 });

const SQUARE_BAY = {
	id: "b",
	corners: [
		[0, 0],
		[0, 1500],
		[4000, 1500],
		[4000, 0],
	],
	openings: [{ wall: 1, from: 500, to: 3500, sill: 900, head: 2100 }],
};

describe("a right-angled corner", () => {
	test("brackets 350 either side and 490 between them are the bend of radius 310 at projection 40", () => {
		const bend = cornerBend(RIGHT_ANGLE, 40, 40, 310);
		expect(bend.setBack[0]).toBeCloseTo(350, 9);
		expect(bend.setBack[1]).toBeCloseTo(350, 9);
		expect(bend.sweep).toBeCloseTo(486.9, 1);
		expect(Math.abs(bend.sweep - 490)).toBeLessThan(5);
		expect(RIGHT_ANGLE_RULE).toEqual({ brackets: 350, between: 490 });
		expect(card(90, 310).betweenBrackets).toBeCloseTo(486.9, 1);
	});

	test("the least radius 225 puts the middle of the bend 150 from the corner", () => {
		const { cornerGap } = cornerBend(RIGHT_ANGLE, 40, 40, 225);
		expect(cornerGap).toBeCloseTo(149.8, 1);
		expect(Math.abs(cornerGap - 150)).toBeLessThan(0.5);
	});

	test("a bend under 225 is refused", () => {
		const plan = planDrawn({ ...SQUARE_BAY, track: { bends: [{ corner: 1, radius: 224 }] } });
		expect(plan.findings.map(({ code }) => code)).toContain("radius-below-least");
		const allowed = planDrawn({ ...SQUARE_BAY, track: { bends: [{ corner: 1, radius: 225 }] } });
		expect(allowed.corners[0]?.radius).toBe(225);
	});
});

test("at 135° the rule is 163 short: set-back 145.0, sweep 243.5, 653.5 between the brackets", () => {
	const { setBack, sweep, betweenBrackets, overRule } = card(135, 310);
	expect(setBack[0]).toBeCloseTo(145, 1);
	expect(setBack[1]).toBeCloseTo(145, 1);
	expect(sweep).toBeCloseTo(243.5, 1);
	expect(betweenBrackets).toBeCloseTo(653.5, 1);
	expect(overRule).toBeCloseTo(163.5, 1);
});

describe("a corded track in a square bay", () => {
	const plan = planDrawn(SQUARE_BAY);
	const stations = (role: string) =>
		plan.brackets.filter((bracket) => bracket.role === role).map(({ station }) => station);

	test("is bent to 310 and has its brackets within 380 of one another along the straights", () => {
		expect(plan.corners.map(({ radius }) => radius)).toEqual([310, 310]);
		const bends = plan.path?.segments.filter(({ kind }) => kind === "bend") ?? [];
		expect(bends).toHaveLength(2);
		plan.brackets.slice(1).forEach(({ station }, i) => {
			const before = plan.brackets[i]?.station as number;
			const acrossBend = bends.some(({ start }) => start > before && start < station);
			if (!acrossBend) expect(station - before).toBeLessThanOrEqual(380);
		});
	});

	test("has companions 150 either side of its joint", () => {
		expect(plan.joints).toHaveLength(1);
		const [joint] = plan.joints;
		const off = [-150, 150].map((far) => (joint?.station as number) + far);
		for (const station of off)
			expect(plan.brackets.some((bracket) => Math.abs(bracket.station - station) < 1e-6)).toBe(true);
		expect(stations("joint")).toEqual([joint?.station]);
	});

	test("loses 100 at each end to its pulleys, and nothing at the joint", () => {
		const finished = plan.pieces.reduce((sum, { finishedLength }) => sum + finishedLength, 0);
		const cut = plan.pieces.reduce((sum, { cutLength }) => sum + cutLength, 0);
		expect(finished - cut).toBeCloseTo(200, 6);
		expect(plan.pieces.map(({ finishedLength, cutLength }) => finishedLength - cutLength)).toEqual([
			expect.closeTo(100, 6),
			expect.closeTo(100, 6),
		]);
	});

	test("gives up 150 each side to the stacks and hangs 100 above the opening", () => {
		expect(plan.stackBack.map(({ from, to }) => to - from)).toEqual([150, expect.closeTo(150, 6)]);
		expect(plan.height).toBe(2200);
	});
});
