import { type GripKind, gripOf, type Held, plansOf } from "@baywright/editor";
import { type BayPlan, type Job, parseJob } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { moveWall, wayOut } from "../../../packages/editor/src/grips/wall.ts";

const SQUARE = [
	[0, 0],
	[0, 700],
	[1800, 700],
	[1800, 0],
] as const;

const SPLAYED = [
	[0, 0],
	[636.4, 636.4],
	[2436.4, 636.4],
	[3072.79, 0],
] as const;

function job(corners: readonly (readonly [number, number])[]): Job {
	const parsed = parseJob({
		format: "baywright-job",
		version: 1,
		bays: [
			{ id: "a", corners: SQUARE },
			{ id: "b", corners },
		],
	});
	if (!parsed.ok) throw new Error("not a job");
	return parsed.job;
}

const cornersOf = (it: Job) => it.bays[1]?.corners;

const risesOf = (it: Job) => (it.bays[1] as Job["bays"][number]).walls.map(({ rise }) => rise);

interface Hold {
	readonly kind: GripKind;
	readonly index: number;
	readonly job: Job;
	readonly bay: number;
}

const held = ({ kind, index, job: it, bay }: Hold): Held => ({
	target: { kind, index },
	job: it,
	bay,
	plan: plansOf(it)[bay] as BayPlan,
	from: { x: 0, y: 0 },
});

/** The job with what is held moved by a way in the plan; `reach` as things draw it, 0 for not at all. */
const moved = (hold: Hold, dx: number, dy: number, reach = 0): Job =>
	gripOf(hold.kind).move(held(hold), { x: dx, y: dy }, reach).job;

const moveLabel = (hold: Hold): string => gripOf(hold.kind).label(held(hold));

describe("moving", () => {
	it("brings a corner onto whole millimetres and leaves all else alone", () => {
		const before = job(SPLAYED);
		const after = moved({ kind: "corner", index: 1, job: before, bay: 1 }, -10.2, 3.9);
		expect(cornersOf(after)).toEqual([
			[0, 0],
			[626, 640],
			[2436.4, 636.4],
			[3072.79, 0],
		]);
		expect(after.bays[0]).toBe(before.bays[0]);
		expect(cornersOf(before)).toEqual(SPLAYED);
	});

	it("moves a wall out from the room and its neighbours follow", () => {
		expect(cornersOf(moveWall(job(SQUARE), 1, 1, 40))).toEqual([
			[0, 0],
			[0, 740],
			[1800, 740],
			[1800, 0],
		]);
		expect(cornersOf(moveWall(job(SQUARE), 1, 0, 40))).toEqual([
			[-40, 0],
			[-40, 700],
			[1800, 700],
			[1800, 0],
		]);
		expect(cornersOf(moveWall(job(SQUARE), 1, 2, 40))).toEqual([
			[0, 0],
			[0, 700],
			[1840, 700],
			[1840, 0],
		]);
	});

	it("keeps a wall's length and direction to a thousandth of a millimetre, whichever way it is dragged", () => {
		const way = fc.integer({ min: -900, max: 900 });
		fc.assert(
			fc.property(fc.constantFrom(0, 1, 2), way, way, (index, dx, dy) => {
				const before = job(SPLAYED);
				const after = moved({ kind: "wall", index, job: before, bay: 1 }, dx, dy);
				const vector = (it: Job) => {
					const [a, b] = [cornersOf(it)?.[index], cornersOf(it)?.[index + 1]] as [[number, number], [number, number]];
					return { x: b[0] - a[0], y: b[1] - a[1], from: a };
				};
				const [was, is] = [vector(before), vector(after)];
				expect(Math.hypot(is.x - was.x, is.y - was.y)).toBeLessThan(0.002);
				const length = Math.hypot(was.x, was.y);
				const [mx, my] = [is.from[0] - was.from[0], is.from[1] - was.from[1]];
				// Square to itself, by whole millimetres, and the part of the way that goes square to it.
				expect(Math.abs((mx * was.x + my * was.y) / length)).toBeLessThan(0.002);
				const out = (my * was.x - mx * was.y) / length;
				expect(Math.abs(out - Math.round(out))).toBeLessThan(0.002);
				expect(Math.abs(out - (dy * was.x - dx * was.y) / length)).toBeLessThan(0.51);
			}),
		);
	});

	it("says how far a way goes out from the room", () => {
		const [, bay] = job(SQUARE).bays as [Job["bays"][0], Job["bays"][0]];
		expect(wayOut(bay, 1, 5, 30)).toBeCloseTo(30, 9);
		expect(wayOut(bay, 0, -30, 5)).toBeCloseTo(30, 9);
		expect(wayOut(bay, 9, 1, 1)).toBe(0);
	});

	it("names the step as a person would", () => {
		const grip = { job: job(SQUARE), bay: 1 };
		expect(moveLabel({ ...grip, kind: "corner", index: 1 })).toBe("move corner 1");
		expect(moveLabel({ ...grip, kind: "corner", index: 0 })).toBe("move the left end");
		expect(moveLabel({ ...grip, kind: "wall", index: 1 })).toBe("move the front wall");
	});

	it("bows a wall by the way that goes out from the room, in whole millimetres, and leaves all else alone", () => {
		const before = job(SQUARE);
		const out = moved({ kind: "bow", index: 1, job: before, bay: 1 }, 300, 119.6);
		expect(risesOf(out)).toEqual([0, 120, 0]);
		expect(cornersOf(out)).toEqual(SQUARE);
		expect(out.bays[0]).toBe(before.bays[0]);
		expect(risesOf(moved({ kind: "bow", index: 1, job: out, bay: 1 }, 0, -300))).toEqual([0, -180, 0]);
		expect(moveLabel({ kind: "bow", index: 1, job: before, bay: 1 })).toBe("bow the front wall");
	});

	it("bows a wall no deeper than a half circle, and by hand leaves it straight where it all but is", () => {
		const grip = { kind: "bow", index: 0, job: job(SQUARE), bay: 1 } as const;
		expect(risesOf(moved(grip, -2000, 0))).toEqual([350, 0, 0]);
		expect(risesOf(moved(grip, 2000, 0))).toEqual([-350, 0, 0]);
		for (const way of [-3, 3]) expect(Object.is(risesOf(moved(grip, way, 0, 3))[0], 0)).toBe(true);
		expect(risesOf(moved(grip, -4, 0, 3))).toEqual([4, 0, 0]);
		expect(risesOf(moved(grip, -1, 0))).toEqual([1, 0, 0]);
	});

	it("does nothing to a wall without length", () => {
		const flat = job([
			[5, 5],
			[5, 5],
			[900, 5],
		]);
		expect(cornersOf(moveWall(flat, 1, 0, 40))).toEqual(cornersOf(flat));
	});
});
