import {
	addJoint,
	addNoDrill,
	addObstacle,
	addOpening,
	anchorOf,
	jointPlaces,
	NARROWEST,
	pinOf,
	plansOf,
	releasePin,
	removeJoint,
	removeNoDrill,
	setJoints,
	setPin,
	setRadius,
	type Target,
} from "@baywright/editor";
import type { Bay, BayPlan } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { slide } from "../../../packages/editor/src/edits/on-walls.ts";
import { driver } from "./driver.ts";
import { jobOf, SQUARE, valid } from "./sample-bay.ts";

const SEED = 4102;

const WINDOW = { wall: 1, from: 300, to: 1500, sill: 600, head: 2050 };
const SOCKET = { kind: "socket", wall: 1, from: 400, to: 486 };

const job = (more: object = {}) =>
	jobOf({ corners: SQUARE, openings: [WINDOW], obstacles: [SOCKET], walls: [{}, { noDrill: [[200, 600]] }], ...more });

const bay = (more: object = {}): Bay => job(more).bays[0] as Bay;

describe("what stands on a wall", () => {
	const thing = fc.constantFrom<Target["kind"]>("opening", "obstacle", "no-drill");
	const part = fc.constantFrom("whole", "left", "right" as const);

	it("slides along it and is held between its corners, whole or by an end, however far it is dragged", () => {
		fc.assert(
			fc.property(thing, part, fc.integer({ min: -2500, max: 2500 }), (kind, held, by) => {
				const target = { kind, index: 0, part: held, ...(kind === "no-drill" ? { wall: 1 } : {}) } as Target;
				const table = driver(job()).reach(0);
				const at = anchorOf(target, table.bay, table.plan);
				const was = stretchOf(table.bay, kind);
				if (at === null) throw new Error("not there");
				table
					.grab(target, at)
					.drag({ x: at.x + by, y: at.y })
					.drop();
				const is = stretchOf(valid(table.bay), kind);
				const clamp = (value: number, low: number, high: number) => Math.min(Math.max(value, low), high);
				if (held === "left") expect(is).toEqual([clamp(was[0] + by, 0, was[1] - NARROWEST), was[1]]);
				else if (held === "right") expect(is).toEqual([was[0], clamp(was[1] + by, was[0] + NARROWEST, 1800)]);
				else if (kind === "no-drill" || at.x + by <= 1800) {
					const from = clamp(was[0] + by, 0, 1800 - (was[1] - was[0]));
					if (onFront(table.bay, kind)) expect(is).toEqual([from, from + was[1] - was[0]]);
				}
				expect(table.desk.past.length).toBe(
					JSON.stringify(is) === JSON.stringify(was) && onFront(table.bay, kind) ? 0 : 1,
				);
			}),
			{ seed: SEED, numRuns: 300 },
		);
	});

	it("goes on to another wall that it is taken to, if that is long enough", () => {
		const table = driver(job({ openings: [{ ...WINDOW, from: 300, to: 1100 }] })).reach(0);
		table.grab({ kind: "opening", index: 0 }, { x: 700, y: 900 }).drag({ x: 1800, y: 500 }).drop();
		// The right wall is 900 long, 800 of opening leave 100: its middle at 400 from the top is held at 400.
		expect(table.bay.openings[0]).toMatchObject({ wall: 2, from: 0, to: 800 });
		const long = driver(job()).reach(0);
		long.grab({ kind: "opening", index: 0 }, { x: 900, y: 900 }).drag({ x: 1800, y: 500 }).drop();
		expect(long.bay.openings[0]).toMatchObject({ wall: 1, from: 600, to: 1800 });
	});

	it("does not jump to another wall that is nearer to where it was taken hold of", () => {
		const near = job({ obstacles: [{ kind: "socket", wall: 1, from: 20, to: 106 }] });
		const table = driver(near).reach(0);
		table.grab({ kind: "obstacle", index: 0 }, { x: 40, y: 830 }).drag({ x: 41, y: 830 }).drop();
		expect(table.bay.obstacles[0]).toMatchObject({ wall: 1, from: 21, to: 107 });
	});

	it("is drawn to corners, to the middle of its wall and to openings, with its ends and its middle", () => {
		const drawn = (by: number) => {
			const table = driver(job({ obstacles: [{ ...SOCKET, from: 100, to: 200 }] })).reach(12);
			table
				.grab({ kind: "obstacle", index: 0 }, { x: 150, y: 900 })
				.drag({ x: 150 + by, y: 900 })
				.drop();
			return table.bay.obstacles[0]?.from;
		};
		expect(drawn(-93)).toBe(0);
		expect(drawn(110)).toBe(200);
		expect(drawn(195)).toBe(300);
		expect(drawn(741)).toBe(850);
		expect(drawn(1610)).toBe(1700);
		expect(drawn(1390)).toBe(1500);
		// Nothing near: whole 5 mm.
		expect(drawn(443)).toBe(545);
	});

	it("taken into view by an arrow goes by 1 mm, drawn to nothing", () => {
		const table = driver(job());
		table.desk.select({ kind: "opening", index: 0 });
		table.key("right").key("right").key("left").key("right");
		expect(table.bay.openings[0]).toMatchObject({ from: 302, to: 1502 });
		expect(table.desk.past).toHaveLength(1);
	});

	it("that a file has narrower than may be drawn is not pushed off its wall", () => {
		expect(slide({ wall: 0, from: 0, to: 4 }, "left", -3, 900)).toEqual({ wall: 0, from: 0, to: 4 });
		expect(slide({ wall: 0, from: 0, to: 4 }, "left", 3, 900)).toEqual({ wall: 0, from: 0, to: 4 });
		expect(slide({ wall: 0, from: 896, to: 900 }, "right", 3, 900)).toEqual({ wall: 0, from: 896, to: 900 });
	});
});

const stretchOf = (it: Bay, kind: Target["kind"]): readonly [number, number] => {
	if (kind === "no-drill") return it.walls[1]?.noDrill[0] as readonly [number, number];
	const found = kind === "opening" ? it.openings[0] : it.obstacles[0];
	return [found?.from ?? Number.NaN, found?.to ?? Number.NaN];
};

const onFront = (it: Bay, kind: Target["kind"]) =>
	kind === "no-drill" || (kind === "opening" ? it.openings[0] : it.obstacles[0])?.wall === 1;

describe("what is put on a wall", () => {
	it("an opening has the heights of the one beside it, or the usual ones", () => {
		const like = bay({ openings: [{ ...WINDOW, sill: 850, head: 2100 }] });
		expect(valid(addOpening(like, { wall: 0, from: 10, to: 500 })).openings[1]).toEqual({
			wall: 0,
			from: 10,
			to: 500,
			sill: 850,
			head: 2100,
			sillDepth: 0,
		});
		expect(addOpening(bay({ openings: [] }), { wall: 0, from: 10, to: 500 }).openings[0]).toMatchObject({
			sill: 600,
			head: 2050,
		});
	});

	it("an obstacle is held on its wall, and no wider than that", () => {
		const put = (middle: number, wall: number) =>
			valid(addObstacle(bay({ obstacles: [] }), "radiator", wall, middle)).obstacles[0];
		expect(put(900, 1)).toMatchObject({ kind: "radiator", wall: 1, from: 400, to: 1400 });
		expect(put(100, 1)).toMatchObject({ from: 0, to: 1000 });
		expect(put(1799, 1)).toMatchObject({ from: 800, to: 1800 });
		expect(put(450, 0)).toMatchObject({ wall: 0, from: 0, to: 900 });
	});

	it("stretches without holes that meet become one", () => {
		const it = bay();
		expect(valid(addNoDrill(it, { wall: 1, from: 600, to: 700 })).walls[1]?.noDrill).toEqual([[200, 700]]);
		const two = addNoDrill(it, { wall: 1, from: 50, to: 60 });
		expect(two.walls[1]?.noDrill).toEqual([
			[50, 60],
			[200, 600],
		]);
		expect(addNoDrill(two, { wall: 1, from: 55, to: 900 }).walls[1]?.noDrill).toEqual([[50, 900]]);
		expect(removeNoDrill(two, 1, 0)).toEqual(it);
	});
});

describe("what is settled about the track", () => {
	it("radii are one a corner, in order, and can be left to be chosen again", () => {
		const two = setRadius(setRadius(bay(), 2, 310), 1, 300);
		expect(valid(two).track.bends).toEqual([
			{ corner: 1, radius: 300 },
			{ corner: 2, radius: 310 },
		]);
		expect(setRadius(two, 2, 320).track.bends).toEqual([
			{ corner: 1, radius: 300 },
			{ corner: 2, radius: 320 },
		]);
		expect(setRadius(setRadius(two, 1, null), 2, null)).toEqual(bay());
	});

	it("joints stay in order along the walls, wherever they are put or moved", () => {
		const table = driver(
			job({
				track: {
					joints: [
						{ wall: 0, at: 500 },
						{ wall: 1, at: 600 },
					],
				},
			}),
		);
		const more = valid(addJoint(table.bay, table.plan, { wall: 1, at: 300 }));
		expect(more.track.joints).toEqual([
			{ wall: 0, at: 500 },
			{ wall: 1, at: 300 },
			{ wall: 1, at: 600 },
		]);
		const [plan] = plansOf({ ...table.desk.job, bays: [more] });
		expect(removeJoint(more, plan as BayPlan, 1)).toEqual(table.bay);
		table.reach(0).grab({ kind: "joint", index: 0 }, { x: 0, y: 500 }).drag({ x: 1100, y: 900 }).drop();
		expect(table.bay.track.joints).toEqual([
			{ wall: 1, at: 600 },
			{ wall: 1, at: 1100 },
		]);
		expect(setJoints(table.bay, []).track.joints).toBe("none");
	});

	it("joints that the rule has placed become the user's when one is moved", () => {
		const long = jobOf({
			corners: [
				[0, 0],
				[0, 2000],
				[4000, 2000],
				[4000, 0],
			],
		});
		const table = driver(long).reach(0);
		const [first] = jointPlaces(table.bay, table.plan);
		expect(table.bay.track.joints).toBe("auto");
		if (first === undefined) throw new Error("no joint");
		const from = anchorOf({ kind: "joint", index: 0 }, table.bay, table.plan) ?? { x: 0, y: 0 };
		table
			.grab({ kind: "joint", index: 0 }, from)
			.drag({ x: from.x + 100, y: from.y })
			.drop();
		expect(table.bay.track.joints).toEqual([
			{ wall: first.wall, at: Math.round(first.at + 100) },
			...jointPlaces(long.bays[0] as Bay, plansOf(long)[0] as BayPlan).slice(1),
		]);
	});

	it("a bracket that is moved is pinned where it is put, moved on as the same pin, and released", () => {
		const table = driver(job({ obstacles: [], walls: [] })).reach(0);
		const field = table.plan.brackets.findIndex(({ wall, role }) => wall === 1 && role === "field");
		const at = table.plan.brackets[field]?.fromLeftCorner ?? Number.NaN;
		const grabAt = (index: number) =>
			anchorOf({ kind: "bracket", index }, table.bay, table.plan) ?? { x: Number.NaN, y: 0 };
		expect(pinOf(table.bay, table.plan, field)).toBeNull();
		const spot = grabAt(field);
		table
			.grab({ kind: "bracket", index: field }, { x: spot.x, y: spot.y - 30 })
			.drag({ x: spot.x + 25, y: spot.y - 10 })
			.drop();
		expect(valid(table.bay).track.brackets).toEqual([{ wall: 1, at: Math.round(at + 25) }]);
		const pinned = table.plan.brackets.findIndex(({ role }) => role === "pinned");
		expect(pinOf(table.bay, table.plan, pinned)).toBe(0);
		const there = grabAt(pinned);
		table
			.grab({ kind: "bracket", index: pinned }, there)
			.drag({ x: there.x - 40, y: there.y })
			.drop();
		expect(table.bay.track.brackets).toEqual([{ wall: 1, at: Math.round(at + 25) - 40 }]);
		expect(releasePin(table.bay, 0).track.brackets).toEqual([]);
		expect(setPin(table.bay, null, { wall: 0, at: 100 }).track.brackets).toHaveLength(2);
	});

	it("a track end goes round corners, and at the end of the bay is no longer a place of its own", () => {
		const table = driver(job()).reach(0);
		const end = { kind: "track-end", index: 0 } as const;
		table.grab(end, { x: 0, y: 0 }).drag({ x: 5, y: 120 }).drop();
		expect(valid(table.bay).track.start).toEqual({ wall: 0, at: 120 });
		table.grab(end, { x: 0, y: 120 }).drag({ x: 400, y: 905 }).drop();
		expect(table.bay.track.start).toEqual({ wall: 1, at: 400 });
		table.grab(end, { x: 400, y: 900 }).drag({ x: 0, y: -50 }).drop();
		expect(table.bay.track.start).toBeNull();
		const right = { kind: "track-end", index: 1 } as const;
		table.grab(right, { x: 1800, y: 0 }).drag({ x: 1800, y: 250 }).drop();
		expect(table.bay.track.end).toEqual({ wall: 2, at: 650 });
		table.reach(30).grab(right, { x: 1800, y: 250 }).drag({ x: 1800, y: 20 }).drop();
		expect(table.bay.track.end).toBeNull();
	});
});
