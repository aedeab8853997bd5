import { type Bay, libraryOf, parseJob, planBay } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import { failings } from "../../../packages/app/src/canvas/failing.ts";
import { type Subject, subjectOf } from "../../../packages/app/src/canvas/scene.ts";

function subject(bay: object): Subject {
	const parsed = parseJob({ format: "baywright-job", version: 1, bays: [{ id: "b", ...bay }] });
	if (!parsed.ok) throw new Error(parsed.problems.map(({ path }) => path).join());
	const [read] = parsed.job.bays as [Bay];
	return subjectOf(read, planBay(read, libraryOf(parsed.job)), "mm");
}

const SQUARE = [
	[0, 0],
	[0, 700],
	[1800, 700],
	[1800, 0],
];

describe("clearances that fail", () => {
	it("are none in a bay that fits", () => {
		expect(failings(subject({ corners: SQUARE }))).toEqual([]);
	});

	it("show an obstacle's nearest point and how far the track passes from it", () => {
		const [failing, ...others] = failings(
			subject({ corners: SQUARE, obstacles: [{ kind: "pipe", wall: 0, from: 200, to: 280, depth: 30 }] }),
		);
		expect(others).toEqual([]);
		// The wall's face is at x = 0, the pipe stands 30 off it and the track's centre line 40 (the system's default).
		expect(failing?.distance).toBeCloseTo(10, 9);
		expect(failing?.clearance).toBe(15);
		expect(failing?.thing.x).toBeCloseTo(30, 9);
		expect(failing?.track.x).toBeCloseTo(40, 9);
		expect(failing?.thing.y).toBeCloseTo(failing?.track.y ?? Number.NaN, 9);
	});

	it("show the tightest bend round a corner that leaves no room, and how far it would be out", () => {
		const external = subject({
			corners: [
				[0, -700],
				[700, -700],
				[700, 0],
			],
		});
		const [failing] = failings(external);
		expect(external.plan.findings[0]?.code).toBe("no-room-round-corner");
		expect(failing?.thing).toEqual({ x: 700, y: -700 });
		// Clearance d/cos − R(1/cos − 1) of design section 5, at 90°: d√2 − R(√2 − 1) with d = 40 and R = 225.
		expect(failing?.distance).toBeCloseTo(40 * Math.SQRT2 - 225 * (Math.SQRT2 - 1), 6);
		const { tried } = failing ?? {};
		if (!tried) throw new Error("no bend");
		// Tangent to both legs, 40 off the walls: its ends lie on them and square below its centre.
		expect(tried.from).toMatchObject({ x: expect.closeTo(tried.centre.x, 6), y: expect.closeTo(-740, 6) });
		expect(tried.to).toMatchObject({ x: expect.closeTo(740, 6), y: expect.closeTo(tried.centre.y, 6) });
		expect(Math.hypot(tried.from.x - tried.centre.x, tried.from.y - tried.centre.y)).toBeCloseTo(225, 6);
	});
});
