import { anchorOf, nudged } from "@baywright/editor";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { between } from "../app/between.ts";
import { driver } from "./driver.ts";
import { jobOf, valid } from "./sample-bay.ts";

const SEED = 4105;

/** A bay of three walls, each 3000, with room angles of θ and 90° and projections of its own. */
function bayAt(theta: number, left: number, front: number) {
	const lean = ((180 - theta) * Math.PI) / 180;
	const corners = [
		[-3000 * Math.cos(lean), -3000 * Math.sin(lean)],
		[0, 0],
		[3000, 0],
		[3000, -3000],
	].map((it) => it.map((at) => Math.round(at * 1000) / 1000));
	return jobOf({ corners, walls: [{ projection: left }, { projection: front }, {}] });
}

const projection = fc.integer({ min: 40, max: 60 });

/** How far the middle of a bend of radius R lies from where its legs meet: R(1/sin(θ/2) − 1). */
const drawBack = (theta: number, radius: number) => radius * (1 / Math.sin((theta * Math.PI) / 360) - 1);

describe("the middle of a bend that is pulled", () => {
	it("gives the radius whose bend has its middle there, for any angle and projections", () => {
		fc.assert(
			fc.property(between(60, 155), projection, projection, between(-0.6, 0.97), (theta, left, front, share) => {
				const table = driver(bayAt(theta, left, front)).reach(0);
				const corner = table.plan.corners.find((it) => it.corner === 1);
				const from = anchorOf({ kind: "bend", index: 1 }, table.bay, table.plan);
				if (corner === undefined || from === null) throw new Error("no bend");
				// Towards the greatest or the least radius by a share of the way, along the bisector of the legs, which points into the room.
				const wanted =
					corner.radius + share * (share > 0 ? corner.greatest - corner.radius : corner.radius - corner.least);
				const pull = drawBack(theta, wanted) - drawBack(theta, corner.radius);
				const half = (theta * Math.PI) / 360;
				// From the front wall, which runs along +x, half the room angle round to the left wall through the room below.
				const [ux, uy] = [Math.cos(half), -Math.sin(half)];
				const aside = 17;
				table.grab({ kind: "bend", index: 1 }, from);
				table.drag({ x: from.x + ux * pull - uy * aside, y: from.y + uy * pull + ux * aside }).drop();
				const [bend] = valid(table.bay).track.bends;
				expect(Math.abs((bend?.radius ?? Number.NaN) - wanted)).toBeLessThan(0.51);
				// And the plan has that bend's middle where it was pulled to, but for the whole millimetre.
				const after = anchorOf({ kind: "bend", index: 1 }, table.bay, table.plan);
				const short = drawBack(theta, (bend?.radius ?? 0) - wanted);
				expect(after?.x).toBeCloseTo(from.x + ux * (pull + short), 3);
				expect(after?.y).toBeCloseTo(from.y + uy * (pull + short), 3);
			}),
			{ seed: SEED, numRuns: 60 },
		);
	});

	it("stops at the least and the greatest radius, in whole millimetres that the plan takes", () => {
		for (const way of [-1, 1]) {
			const table = driver(bayAt(120, 40, 40)).reach(0);
			const corner = table.plan.corners.find((it) => it.corner === 1);
			const from = anchorOf({ kind: "bend", index: 1 }, table.bay, table.plan);
			if (corner === undefined || from === null) throw new Error("no bend");
			table
				.grab({ kind: "bend", index: 1 }, from)
				.drag({ x: from.x + way * 5000, y: from.y - way * 8660 })
				.drop();
			const radius = table.bay.track.bends[0]?.radius ?? Number.NaN;
			expect(radius).toBe(way < 0 ? Math.ceil(corner.least) : Math.floor(corner.greatest));
			expect(table.plan.corners.find((it) => it.corner === 1)?.radius).toBe(radius);
			expect(table.plan.findings.map(({ code }) => code)).not.toContain("bend-too-tight");
		}
	});

	it("comes in 5 mm, and to the system's own radius where it is near", () => {
		const table = driver(bayAt(90, 40, 40)).reach(8);
		const { preferredRadius } = table.plan.system;
		const from = anchorOf({ kind: "bend", index: 1 }, table.bay, table.plan) ?? { x: Number.NaN, y: 0 };
		const start = table.plan.corners[0]?.radius ?? Number.NaN;
		const pulledTo = (radius: number) => {
			const pull = drawBack(90, radius) - drawBack(90, start);
			table.grab({ kind: "bend", index: 1 }, from);
			table.drag({ x: from.x + pull * Math.SQRT1_2, y: from.y - pull * Math.SQRT1_2 });
			const radiusOf = table.bay.track.bends[0]?.radius;
			table.escape();
			return radiusOf;
		};
		expect(pulledTo(preferredRadius + 62)).toBe(Math.round((preferredRadius + 62) / 5) * 5);
		expect(pulledTo(preferredRadius + 9)).toBe(preferredRadius);
		expect(pulledTo(preferredRadius - 9)).toBe(preferredRadius);
	});

	it("is a millimetre wider with an arrow up or right, tighter with the others", () => {
		const table = driver(bayAt(135, 40, 40));
		const start = table.plan.corners[0]?.radius ?? Number.NaN;
		table.desk.select({ kind: "bend", index: 1 });
		expect(table.key("up").key("right").key("up").bay.track.bends).toEqual([
			{ corner: 1, radius: Math.round(start) + 3 },
		]);
		expect(table.key("down").key("left").bay.track.bends).toEqual([{ corner: 1, radius: Math.round(start) + 1 }]);
	});

	it("is left alone where no radius has an effect: a slight turn that the track springs round", () => {
		const job = jobOf({
			corners: [
				[0, 0],
				[2000, 0],
				[4000, -70],
			],
		});
		const table = driver(job);
		expect(table.plan.corners[0]?.sprung).toBe(true);
		const held = {
			target: { kind: "bend", index: 1 } as const,
			job,
			bay: 0,
			plan: table.plan,
			from: { x: 2000, y: -40 },
		};
		expect(nudged(held, 5, 0)).toBe(job);
		expect(table.grab(held.target, held.from).drag({ x: 2000, y: -80 }).drop().desk.past).toEqual([]);
	});
});
