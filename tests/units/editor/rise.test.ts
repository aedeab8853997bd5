import { deepestBow, plainBay, removeThing, setRise, straightened, typedRise } from "@baywright/editor";
import { type Bay, type BayPlan, libraryOf, planBay } from "@baywright/setout";
import { beforeEach, describe, expect, it } from "vitest";
import { wallCommands } from "../../../packages/app/src/commands/on-walls.ts";
import { setRise as changeRise } from "../../../packages/app/src/desk/changes.ts";
import { desk } from "../../../packages/app/src/desk/desk.ts";
import { screen } from "../../../packages/app/src/desk/screen.ts";
import { driver } from "./driver.ts";
import { jobOf, SQUARE, valid } from "./sample-bay.ts";

/** A front of 1800 bowed 200, with a window from end to end but 100 at either side, and a socket right of the middle. */
const RISE = 200;
/** Face of a bow of rise h over a chord c: radius (c² / 4 + h²) / 2h, half-angle asin(c / 2r), from the circle. */
const RADIUS = (900 ** 2 + RISE ** 2) / (2 * RISE);
const FACE = 2 * RADIUS * Math.asin(900 / RADIUS);
const bowed = (readings: readonly object[] = []) =>
	jobOf({
		corners: SQUARE,
		readings,
		walls: [{}, { rise: RISE, noDrill: [[100, 200]] }, {}],
		openings: [{ wall: 1, from: 100, to: FACE - 100, sill: 600, head: 2050 }],
		obstacles: [{ kind: "socket", wall: 1, from: FACE - 90, to: FACE - 4, bottom: 450, top: 536, depth: 10 }],
		track: { joints: [{ wall: 1, at: FACE / 2 }] },
	});

const planOf = (job: ReturnType<typeof bowed>): BayPlan => planBay(job.bays[0] as Bay, libraryOf(job));

/** Every way of making the front straight, from the same job. */
const WAYS: readonly (readonly [string, (job: ReturnType<typeof bowed>) => Bay])[] = [
	["straightened", (job) => straightened(job.bays[0] as Bay, 1)],
	[
		"removed",
		(job) => {
			const removal = removeThing(job.bays[0] as Bay, planOf(job), { kind: "bow", index: 1 });
			if (!removal.ok) throw new Error(removal.why);
			return removal.bay;
		},
	],
	[
		"by the command",
		(job) => {
			desk.getState().restore(job);
			desk.getState().select({ kind: "wall", index: 1 });
			wallCommands.find(({ id }) => id === "straighten")?.run({ desk: desk.getState(), screen: screen.getState() });
			return desk.getState().job.bays[0] as Bay;
		},
	],
	[
		"typed as 0",
		(job) => {
			desk.getState().restore(job);
			expect(desk.getState().change("rise", changeRise(job, 0, 1, 0))).toBeNull();
			return desk.getState().job.bays[0] as Bay;
		},
	],
];

beforeEach(() => screen.setState({ started: true, sheet: null }));

describe("a bowed wall made straight", () => {
	it.each(WAYS)("%s: what stands on it keeps its share of the face and stays on the wall", (_, straighten) => {
		const bay = valid(straighten(bowed()));
		expect(bay.walls[1]?.rise).toBe(0);
		const [window] = bay.openings;
		// As wide as it was if the straight wall has room for it, its middle in the middle.
		expect((window?.from as number) + (window?.to as number)).toBeCloseTo(1800, 2);
		expect((window?.to as number) - (window?.from as number)).toBeCloseTo(Math.min(FACE - 200, 1800), 2);
		expect(bay.obstacles[0]?.to).toBeLessThanOrEqual(1800);
		expect(bay.walls[1]?.noDrill[0]).toEqual([
			expect.closeTo((150 * 1800) / FACE - 50, 2),
			expect.closeTo((150 * 1800) / FACE + 50, 2),
		]);
		expect(bay.track.joints).toEqual([{ wall: 1, at: expect.closeTo(900, 2) }]);
		expect(bay.readings).toEqual([]);
	});

	it.each(WAYS)("%s: a rise that was taped reads 0, one that was not leaves the readings alone", (_, straighten) => {
		const run = { kind: "run", wall: 0, value: 900, sd: null };
		const taped = straighten(bowed([run, { kind: "rise", wall: 1, value: RISE }]));
		expect(taped.readings).toEqual([run, { kind: "rise", wall: 1, at: null, value: 0, sd: null }]);
		expect(taped.walls[1]?.rise).toBe(0);
		const drawn = straighten(bowed([run]));
		expect(drawn.readings).toEqual([run]);
		expect(drawn.walls[1]?.rise).toBe(0);
	});
});

describe("a rise", () => {
	it("typed keeps its parts of a mm, is never deeper than a half circle and never −0", () => {
		const bay = plainBay("square");
		const deepest = deepestBow(bay, 1);
		expect(typedRise(bay, 1, 101.6).walls[1]?.rise).toBe(101.6);
		expect(setRise(bay, 1, 5000).walls[1]?.rise).toBe(deepest);
		expect(setRise(bay, 1, -5000).walls[1]?.rise).toBe(-deepest);
		expect(Object.is(setRise(bay, 1, -0).walls[1]?.rise, 0)).toBe(true);
	});

	it("pulled is in whole mm, nearly straight is straight, and no pull is a reading", () => {
		const readings = [{ kind: "run", wall: 1, value: 1800 }];
		const table = driver(jobOf({ corners: SQUARE, readings }));
		table.grab({ kind: "bow", index: 1 }, { x: 900, y: 900 }).drag({ x: 900, y: 1000.4 }).drop();
		expect(table.bay.walls[1]?.rise).toBe(100);
		expect(table.bay.readings).toHaveLength(1);
		table.grab({ kind: "bow", index: 1 }, { x: 900, y: 1000 }).drag({ x: 900, y: 902.6 }).drop();
		expect(table.bay.walls[1]?.rise).toBe(0);
	});
});
