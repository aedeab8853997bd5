import { isDeepStrictEqual } from "node:util";
import {
	createDesk,
	insertCorner,
	levelWall,
	mirror,
	onBay,
	otherSide,
	removeThing,
	stopsOf,
	type Target,
	type ToolName,
} from "@baywright/editor";
import { type Bay, type Job, parseJob } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Driver, driver } from "./driver.ts";
import { emptyJob, fullBay, jobOf, SQUARE } from "./sample-bay.ts";

const SEED = 4106;

const replace = (path: string, value: unknown) => [{ op: "replace" as const, path: `/bays/0/${path}`, value }];

describe("typed values", () => {
	it("of one kind in a row are one step, of another kind another", () => {
		const table = createDesk(jobOf({ corners: SQUARE }));
		const { change, undo } = table.getState();
		for (const radius of [3, 31, 310]) expect(change("radius", replace("track/radius", radius), "radius")).toBeNull();
		for (const at of [4, 45]) change("projection", replace("track/projection", at), "projection");
		change("radius", replace("track/radius", 320), "radius");
		change("radius", replace("track/radius", 330));
		expect(table.getState().past.map(({ label }) => label)).toEqual(["radius", "projection", "radius", "radius"]);
		undo();
		undo();
		expect(table.getState().job.bays[0]?.track).toMatchObject({ radius: 310, projection: 45 });
		undo();
		undo();
		expect(table.getState().job.bays[0]?.track).toMatchObject({ radius: null, projection: null });
	});

	it("after an undo begin a step of their own", () => {
		const table = createDesk(jobOf({ corners: SQUARE }));
		const { change, undo, redo } = table.getState();
		for (const radius of [310, 320]) change("radius", replace("track/radius", radius), "radius");
		undo();
		redo();
		change("radius", replace("track/radius", 330), "radius");
		expect(table.getState().past).toHaveLength(2);
		undo();
		expect(table.getState().job.bays[0]?.track.radius).toBe(320);
	});

	it("typed back to what was there leave no step", () => {
		const table = createDesk(jobOf({ corners: SQUARE, track: { radius: 310 } }));
		const before = table.getState().job;
		for (const radius of [31, 3, 31, 310]) table.getState().change("radius", replace("track/radius", radius), "radius");
		expect(table.getState().past).toEqual([]);
		expect(table.getState().job).toEqual(before);
	});

	it("that the job cannot hold change nothing and say why", () => {
		const table = createDesk(jobOf({ corners: SQUARE }));
		const before = table.getState().job;
		expect(table.getState().change("radius", replace("track/radius", -3))).toContain("bays[0].track.radius");
		expect(table.getState().job).toBe(before);
		expect(table.getState().past).toEqual([]);
	});
});

/** One thing done at random: what, and three numbers that say where and how far. */
type Deed = readonly [name: keyof typeof DEEDS, a: number, b: number, c: number];

const TOOLS: readonly ToolName[] = ["select", "walls", "corner", "opening", "obstacle", "no-drill", "tape"];
const KINDS = ["switch", "socket", "radiator", "handle", "pipe", "vent", "lintel"] as const;
const WORDS = ["700", "1800", "35 1/2 in", "2,4 m", "x", "0", "90"];
const MOST_CORNERS = 7;

/** Somewhere about a bay, mm. */
const spot = (a: number, b: number) => ({ x: a * 3800 - 400, y: b * 2000 - 500 });

const pick = <Item>(items: readonly Item[], share: number): Item | undefined =>
	items[Math.min(items.length - 1, Math.floor(share * items.length))];

const edit = (table: Driver, label: string, change: (bay: Bay) => Bay) =>
	table.desk.commit(label, onBay(table.desk.job, table.desk.bay, change));

const DEEDS = {
	take: (it: Driver, a: number, b: number) => it.take(pick(TOOLS, a) as ToolName, pick(KINDS, b)),
	hover: (it: Driver, a: number, b: number) => it.hover(spot(a, b).x, spot(a, b).y),
	tap: (it: Driver, a: number, b: number) => it.tap(spot(a, b).x, spot(a, b).y),
	"double-tap": (it: Driver, a: number, b: number) => it.doubleTap(spot(a, b).x, spot(a, b).y),
	press: (it: Driver, a: number, b: number) => it.press(spot(a, b).x, spot(a, b).y),
	drag: (it: Driver, a: number, b: number) => it.drag(spot(a, b)),
	drop: (it: Driver) => it.drop(),
	escape: (it: Driver) => it.escape(),
	reach: (it: Driver, a: number) => it.reach(a < 0.3 ? 0 : a * 40),
	type: (it: Driver, a: number) => it.type(pick(WORDS, a) as string),
	tab: (it: Driver) => it.tab(),
	enter: (it: Driver) => it.enter(),
	erase: (it: Driver) => it.erase(),
	point: (it: Driver, a: number) => it.send({ type: "point", heading: a * 2 * Math.PI }),
	walk: (it: Driver, a: number) => it.walk(a < 0.3),
	key: (it: Driver, a: number) => it.key(pick(["up", "down", "left", "right"] as const, a) as "up"),
	/** A whole drag of any handle there is. */
	pull: (it: Driver, a: number, b: number, c: number) => {
		const target = pick(stopsOf(it.bay, it.plan), a) as Target | undefined;
		if (target === undefined) return it;
		const part = pick(["whole", "left", "right"] as const, c) as "whole";
		it.take("select")
			.grab({ ...target, part }, spot(c, b))
			.drag(spot(b, a))
			.drag(spot(b, c));
		return c < 0.1 ? it.escape() : it.drop();
	},
	remove: (it: Driver, a: number) => {
		const target = pick(stopsOf(it.bay, it.plan), a);
		if (target === undefined) return it;
		const removal = removeThing(it.bay, it.plan, target);
		if (removal.ok)
			it.desk.commit(
				removal.label,
				onBay(it.desk.job, it.desk.bay, () => removal.bay),
			);
		return it;
	},
	mirror: (it: Driver) => edit(it, "mirror", (bay) => mirror(bay, it.plan.path?.length ?? null)),
	"other side": (it: Driver) => edit(it, "other side", (bay) => otherSide(bay, it.plan.path?.length ?? null)),
	level: (it: Driver, a: number) => edit(it, "level", (bay) => levelWall(bay, Math.floor(a * bay.walls.length))),
	insert: (it: Driver, a: number, b: number) =>
		edit(it, "put in a corner", (bay) => insertCorner(bay, Math.floor(a * bay.walls.length), b * 2000)),
	typed: (it: Driver, a: number, b: number) =>
		it.desk.change("radius", replace("track/radius", Math.round(150 + b * 400)), a < 0.7 ? "radius" : undefined),
	remedy: (it: Driver, a: number) => {
		const chosen = pick(
			it.plan.findings.flatMap((finding) => finding.remedies),
			a,
		);
		return chosen ? it.desk.change("remedy", chosen.change) : it;
	},
	/** A few walls drawn from wherever, some of them taken back. */
	draw: (it: Driver, a: number, b: number, c: number) => {
		it.take("walls")
			.tap(spot(a, b).x, spot(a, b).y)
			.entry("run", String(300 + Math.round(c * 900)))
			.enter();
		it.entry("angle", String(60 + Math.round(b * 200)))
			.entry("run", "800")
			.enter();
		return a < 0.2 ? it.erase().erase() : it;
	},
	/** Something put on a wall, or drawn along it. */
	put: (it: Driver, a: number, b: number, c: number) => {
		it.take(pick(["opening", "obstacle", "no-drill", "corner"] as const, a) as ToolName, pick(KINDS, b));
		if (c < 0.5) return it.tap(spot(b, c).x, spot(b, c).y);
		return it.press(spot(b, c).x, spot(b, c).y).drag(spot(c, b)).drop();
	},
	undo: (it: Driver) => it.undo(),
	redo: (it: Driver) => it.redo(),
};

const share = fc.integer({ min: 0, max: 999 }).map((it) => it / 1000);
const NAMES = Object.keys(DEEDS) as (keyof typeof DEEDS)[];
/** Few bays have nothing left to undo. */
const deed: fc.Arbitrary<Deed> = fc.tuple(
	fc.constantFrom(...NAMES, "pull", "pull", "tap", "drag", "drop"),
	share,
	share,
	share,
);
const starts: readonly [name: string, start: () => Job, runs: number][] = [
	["nothing", emptyJob, 1],
	["a square bay", () => jobOf({ corners: SQUARE }), 1],
	["a full bay", () => ({ ...emptyJob(), bays: [fullBay()] }), 4],
];

/** Every step that any table took, with # for its numbers. */
const reached = new Set<string>();

/** Does it all, checking at every change that the job is a good one and that history holds what was there; gives back the table. */
function doAll(start: Job, deeds: readonly Deed[]): Driver {
	const table = driver(start);
	/** The job after each step of the history, as the desk showed it then. */
	const steps: string[] = [JSON.stringify(start)];
	let doing = "";
	table.watch(({ job, past }, before) => {
		if (job === before.job) return;
		reached.add(past.at(-1)?.label.replace(/\d+/g, "#") ?? "");
		const text = JSON.stringify(job);
		const read = parseJob(JSON.parse(text));
		if (!read.ok) throw new Error(`after ${doing}: ${JSON.stringify(read.problems)}`);
		if (!isDeepStrictEqual(read.job, job)) expect(read.job).toEqual(job);
		if (past.length < before.past.length || doing.startsWith("redo")) expect(text, doing).toBe(steps[past.length]);
		else steps.splice(past.length, Number.POSITIVE_INFINITY, text);
	});
	for (const [name, a, b, c] of deeds) {
		doing = `${name} ${a} ${b} ${c}`;
		DEEDS[name](table, a, b, c);
		doing = "a plain bay";
		if (table.bay.corners.length > MOST_CORNERS) table.desk.commit("a plain bay", start);
	}
	return table;
}

describe("whatever is done", () => {
	it.each(starts)("from %s, undo all the way is the start, redo all the way the end", (_, start, numRuns) => {
		fc.assert(
			fc.property(fc.array(deed, { minLength: 300, maxLength: 340 }), (deeds) => {
				// A taped bay lies on the table as its readings settle it.
				const first = createDesk(start()).getState().job;
				const table = doAll(first, deeds);
				table.take("select");
				const [end, { past }] = [table.desk.job, table.desk];
				const forward = table.desk.future.length;
				for (const _step of past) table.undo();
				expect(table.desk.past).toEqual([]);
				expect(table.desk.job).toEqual(first);
				expect(table.undo().desk.job).toEqual(first);
				for (const _step of past) table.redo();
				expect(table.desk.job).toEqual(end);
				expect(table.desk.shown).toEqual(end);
				expect(table.desk.future).toHaveLength(forward);
			}),
			{ seed: SEED, numRuns, endOnFailure: true },
		);
	});

	it("has reached what the deeds are meant to", () => {
		for (const label of [
			"draw a wall",
			"put in a corner",
			"put in an opening",
			"put in an obstacle",
			"mark a stretch without holes",
			"move corner #",
			"pin bracket #",
			"radius of corner #",
			"remedy",
			"mirror",
			"other side",
			"level",
		])
			expect([...reached]).toContain(label);
	});
});
