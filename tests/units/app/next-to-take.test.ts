import { withReading } from "@baywright/editor";
import { type Bay, type Reading, readingName } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import { boundsOf, heightBounds, readReading } from "../../../packages/app/src/taping/bounds.ts";
import { heightsOfRoom, withHeight } from "../../../packages/app/src/taping/heights-to-take.ts";
import { howTo } from "../../../packages/app/src/taping/how-to-take.ts";
import { inDoubt } from "../../../packages/app/src/taping/in-doubt.ts";
import { before, type Known, type ToTake, toTake } from "../../../packages/app/src/taping/next-to-take.ts";
import { bayOf } from "../setout-survey/bay.ts";
import { planned } from "./marks-right-angled.ts";

/** As a plan made in haste knows it: readings, but not how sure anything is. */
const HASTY: Known = { survey: null, pieces: [] };
const none: ReadonlySet<string> = new Set();
const open = (list: readonly ToTake[]) => list.filter(({ state }) => state === "open").map(({ key }) => key);
const run = (wall: number, value: number): Reading => ({ kind: "run", wall, value, sd: null });
const diagonal = (from: number, to: number, value: number): Reading => ({
	kind: "diagonal",
	from,
	to,
	value,
	sd: null,
});
const taken = (bay: Bay, ...readings: Reading[]): Bay => readings.reduce(withReading, bay);

// The order is the survey sheet's: runs, then diagonals or chords, then heights, then obstacles (common practice, no source).
describe("what is to be taped of a bay", () => {
	it("comes in the order of the work while nothing is taken", () => {
		const bay = bayOf({
			openings: [
				{ wall: 1, from: 200, to: 1600 },
				{ wall: 0, from: 100, to: 700, sill: 640, head: 2080 },
			],
			obstacles: [{ kind: "pipe", wall: 2, from: 100, to: 122, depth: 40 }],
		});
		const { list, asked } = toTake(bay, HASTY, none, null);
		expect(list.map(({ key, state }) => [key, state])).toEqual([
			["run of the left wall", "open"],
			["run of the front wall", "open"],
			["run of the right wall", "open"],
			["chord at corner 1", "open"],
			["chord at corner 2", "open"],
			["diagonal left end–right end", "open"],
			["sill of opening 2, left wall", "taken"],
			["head of opening 2, left wall", "taken"],
			["sill of opening 1, front wall", "open"],
			["head of opening 1, front wall", "open"],
			["height of the ceiling", "open"],
			["height of the track", "open"],
			["place of the pipe, right wall", "open"],
			["width of the pipe, right wall", "open"],
			["lower edge of the pipe, right wall", "open"],
			["upper edge of the pipe, right wall", "open"],
			["depth of the pipe, right wall", "taken"],
			["anything else on the walls", "open"],
		]);
		expect(asked?.key).toBe("run of the left wall");
	});

	it("has nothing to ask of a bay without walls", () => {
		const empty = { ...bayOf(), corners: [], walls: [] } as unknown as Bay;
		expect(toTake(empty, HASTY, none, null)).toEqual({ list: [], asked: null });
	});

	it("asks the rise of a bowed wall after the runs", () => {
		const bay = bayOf({ walls: [{}, { rise: 120 }, {}] });
		expect(open(toTake(bay, HASTY, none, null).list).slice(0, 4)).toEqual([
			"run of the left wall",
			"run of the front wall",
			"run of the right wall",
			"rise of the front wall",
		]);
	});

	it("takes a diagonal past walls too short for the arms of a chord", () => {
		const corners = [
			[0, 0],
			[0, 250],
			[1800, 250],
			[1800, 0],
		];
		const keys = open(toTake(bayOf({ corners }), HASTY, none, null).list);
		expect(keys.slice(3, 6)).toEqual(["diagonal left end–2", "diagonal 1–right end", "diagonal left end–right end"]);
	});

	it("one wall has no corner, and one corner has one diagonal", () => {
		const line = bayOf({
			corners: [
				[0, 0],
				[2000, 0],
			],
		});
		expect(open(toTake(line, HASTY, none, null).list)[1]).toBe("height of the ceiling");
		const ell = bayOf({
			corners: [
				[0, 0],
				[0, 200],
				[2000, 200],
			],
		});
		expect(open(toTake(ell, HASTY, none, null).list).slice(2, 4)).toEqual([
			"diagonal left end–right end",
			"height of the ceiling",
		]);
	});

	it("passes over what was skipped, and keeps it in the list", () => {
		const skipped = new Set(["run of the left wall"]);
		const { list, asked } = toTake(bayOf(), HASTY, skipped, null);
		expect(asked?.key).toBe("run of the front wall");
		expect(list[0]).toMatchObject({ key: "run of the left wall", state: "skipped" });
	});

	it("is done when all is taken or skipped", () => {
		const bay = bayOf();
		const every = new Set(toTake(bay, HASTY, none, null).list.map(({ key }) => key));
		expect(toTake(bay, HASTY, every, null).asked).toBeNull();
	});
});

describe("once the runs are taken", () => {
	const bay = taken(bayOf(), run(0, 900), run(1, 1800), run(2, 900));

	it("what the survey asks for is asked, and nothing else of the corners", () => {
		const plan = planned(bay);
		const next = plan.survey?.next;
		if (!next) throw new Error("The survey asks for nothing.");
		const { list, asked } = toTake(bay, plan, none, null);
		expect(asked?.name).toBe(readingName(next.reading, 3));
		expect(list.filter(({ part, state }) => part === "corners" && state === "open")).toHaveLength(1);
	});

	it("where that is skipped, the usual readings are asked, and it stays in the list", () => {
		const plan = planned(bay);
		const first = toTake(bay, plan, none, null).asked?.key as string;
		const { list, asked } = toTake(bay, plan, new Set([first]), null);
		expect(list.find(({ key }) => key === first)?.state).toBe("skipped");
		expect(["chord at corner 1", "chord at corner 2", "diagonal left end–right end"]).toContain(asked?.key);
		expect(asked?.key).not.toBe(first);
	});

	it("a plan made in haste asks the usual readings, but for corners that are read already", () => {
		const read = taken(bay, { kind: "angle", corner: 1, value: 90, sd: null });
		const keys = open(toTake(read, HASTY, none, null).list);
		expect(keys.slice(0, 2)).toEqual(["chord at corner 2", "diagonal left end–right end"]);
	});

	it("readings that settle nothing are in the list, and the usual ones are asked", () => {
		// A chord between arms of 400 cannot be 900 long.
		const wrong = taken(bay, { kind: "chord", corner: 1, arm: 400, value: 900, sd: null });
		const plan = planned(wrong);
		expect(plan.survey?.settled).toBe(false);
		const { list, asked } = toTake(wrong, plan, none, null);
		expect(list.find(({ key }) => key === "chord at corner 1")).toMatchObject({ state: "taken", value: 900 });
		expect(asked?.key).toBe("chord at corner 2");
	});

	it("the same reading taken twice counts on, and a third is asked as one more", () => {
		const twice = taken(bay, run(0, 902));
		const { list } = toTake(twice, HASTY, none, null);
		expect(list.slice(0, 2)).toMatchObject([
			{ key: "run of the left wall", value: 900, what: { index: 0, again: false } },
			// Told with the readings that check, as it was while it was asked: a bay of three walls has three runs.
			{ key: "run of the left wall (2)", part: "corners", value: 902, what: { index: 3, again: true } },
		]);
		const reading = { kind: "run", wall: 0, sd: null } as const;
		const survey = { ...planned(twice).survey, settled: true, next: { reading, from: 3, reaches: 2 } };
		const asking = toTake(twice, { survey, pieces: [] } as unknown as Known, none, null);
		expect(asking.asked).toMatchObject({ key: "run of the left wall (3)", what: { index: null, again: true } });
	});

	it("sure enough, but with nothing to show a slip: one reading that checks is asked", () => {
		const survey = { ...planned(bay).survey, settled: true, redundancy: 0, next: null };
		const known = { survey, pieces: [{ sd: 1.2 }] } as unknown as Known;
		expect(toTake(bay, known, none, null).asked?.key).toBe("diagonal left end–right end");
		const checked = { survey: { ...survey, redundancy: 1 }, pieces: [{ sd: 1.2 }] } as unknown as Known;
		expect(toTake(bay, checked, none, null).asked?.key).toBe("height of the ceiling");
		// Over the goal of 3.5 mm at 95 % and nothing asked for: the usual readings.
		const unsure = { survey: { ...survey, redundancy: 1 }, pieces: [{ sd: 3.6 / 1.96 }] } as unknown as Known;
		expect(toTake(bay, unsure, none, null).asked?.key).toBe("chord at corner 1");
	});

	it("ends: answered with exact figures, the survey comes to rest sure and checked", () => {
		// Right angles, so by Pythagoras: 900, 1800 and 900 have diagonals of √(900² + 1800²), and 1800 from end to end.
		const across = Math.hypot(900, 1800);
		const exact = (reading: Reading | { kind: string }): number => {
			const { kind, wall, from, to, arm } = reading as {
				kind: string;
				wall: number;
				from: number;
				to: number;
				arm: number;
			};
			if (kind === "run") return wall === 1 ? 1800 : 900;
			if (kind === "diagonal") return from === 0 && to === 3 ? 1800 : across;
			return kind === "chord" ? arm * Math.SQRT2 : 90;
		};
		let now = bayOf();
		for (let count = 0; ; count++) {
			expect(count).toBeLessThan(20);
			const plan = planned(now);
			const { asked } = toTake(now, plan, none, null);
			if (asked?.what.kind !== "reading") {
				expect(asked?.key).toBe("height of the ceiling");
				expect(plan.survey?.suspects).toEqual([]);
				expect(plan.survey?.redundancy).toBeGreaterThan(0.5);
				for (const { sd } of plan.pieces) expect(1.96 * (sd as number)).toBeLessThanOrEqual(3.5);
				break;
			}
			now = withReading(now, { ...asked.what.reading, value: exact(asked.what.reading) } as Reading);
		}
	});
});

// Six distances between four corners are one more than hold them together: that one of them is wrong shows, but not which.
describe("a slip of 40 mm that any other reading might as well be", () => {
	const across = Math.hypot(900, 1800);
	const distances = [run(0, 900), run(1, 1800), run(2, 900), diagonal(0, 2, across), diagonal(1, 3, across)];
	const exact = (reading: Reading): number => {
		if (reading.kind === "chord") return reading.arm * Math.SQRT2;
		if (reading.kind === "angle") return 90;
		return (distances.find((each) => readingName(each, 3) === readingName(reading, 3)) ?? { value: 1800 }).value;
	};

	it.each([0, 1, 2, 3, 4, 5])("reading %i: what is asked leads to it by itself, and before any height", (slip) => {
		const right = [...distances, diagonal(0, 3, 1800)];
		let now = taken(bayOf(), ...right.map((each, i) => (i === slip ? { ...each, value: each.value + 40 } : each)));
		expect(inDoubt(planned(now).survey)).toHaveLength(right.length);
		for (let count = 0; inDoubt(planned(now).survey).length > 1; count++) {
			expect(count).toBeLessThan(4);
			const { asked } = toTake(now, planned(now), none, null);
			if (asked?.what.kind !== "reading") throw new Error(`${asked?.key} is asked.`);
			now = withReading(now, { ...asked.what.reading, value: exact(asked.what.reading as Reading) } as Reading);
		}
		expect(inDoubt(planned(now).survey)).toEqual([slip]);
	});

	it("skipped, it is not asked again", () => {
		const now = taken(bayOf(), ...distances, diagonal(0, 3, 1840));
		const plan = planned(now);
		const first = toTake(now, plan, none, null).asked?.key as string;
		expect(toTake(now, plan, new Set([first]), null).asked?.key).not.toBe(first);
	});
});

describe("going back", () => {
	const bay = taken(bayOf(), run(0, 900), run(1, 1800));

	it("leads from each to the one before, past what is open, and ends at the first", () => {
		const third = toTake(bay, HASTY, none, null);
		expect(third.asked?.key).toBe("run of the right wall");
		const second = toTake(bay, HASTY, none, before(third)?.key ?? "");
		expect(second.asked).toMatchObject({ key: "run of the front wall", value: 1800, state: "taken" });
		const first = toTake(bay, HASTY, none, before(second)?.key ?? "");
		expect(first.asked?.key).toBe("run of the left wall");
		expect(before(first)).toBeNull();
	});

	it("leads to what was skipped too, and from the end to the last", () => {
		const list = toTake(bay, HASTY, none, null).list;
		const all = new Set(list.map(({ key }) => key));
		expect(before(toTake(bay, HASTY, all, null))?.key).toBe("anything else on the walls");
	});

	it("a key that is gone is passed over", () => {
		expect(toTake(bay, HASTY, none, "diagonal 1–9").asked?.key).toBe("run of the right wall");
	});
});

describe("heights", () => {
	// A window's usual 600 and 2050 are what nobody has said (editor, USUAL_WINDOW).
	const bay = bayOf({ openings: [{ wall: 1, from: 200, to: 1600, sill: 600, head: 2050 }], ceiling: 2400 });

	it("are asked where nobody has said them, and no more once they are", () => {
		const keys = (of: Bay) => open(toTake(of, HASTY, none, null).list).filter((key) => !key.startsWith("run"));
		expect(keys(bay)).toContain("sill of opening 1, front wall");
		expect(keys(bay)).not.toContain("height of the ceiling");
		const [sill] = heightsOfRoom(bay);
		if (sill === undefined) throw new Error("no sill");
		const said = withHeight(bay, sill, 655);
		expect(said.openings[0]).toMatchObject({ sill: 655, head: 2050 });
		expect(keys(said)).not.toContain("sill of opening 1, front wall");
	});

	it("a sill stays under its head, what is on a wall on its wall", () => {
		expect(heightBounds(bay, { kind: "sill", opening: 0 })).toEqual({ least: 0, greatest: 2049 });
		expect(heightBounds(bay, { kind: "head", opening: 0 })).toEqual({ least: 601 });
		const piped = bayOf({ obstacles: [{ kind: "pipe", wall: 0, from: 100, to: 122 }] });
		expect(heightBounds(piped, { kind: "from", obstacle: 0 })).toEqual({ least: 0, greatest: 890 });
		expect(heightBounds(piped, { kind: "width", obstacle: 0 })).toEqual({ least: 10, greatest: 800 });
		expect(withHeight(piped, { kind: "from", obstacle: 0 }, 300).obstacles[0]).toMatchObject({ from: 300, to: 322 });
	});
});

describe("what is typed", () => {
	it("is read by its kind, in the job's unit", () => {
		expect(readReading({ kind: "run" }, "35 1/2", "in")).toEqual({ ok: true, value: 901.7 });
		expect(readReading({ kind: "run" }, "90.5", "cm")).toEqual({ ok: true, value: 905 });
		expect(readReading({ kind: "angle" }, "134.5", "mm")).toEqual({ ok: true, value: 134.5 });
		expect(readReading({ kind: "rise" }, "-12", "mm")).toEqual({ ok: true, value: -12 });
		expect(readReading({ kind: "run" }, "-12", "mm").ok).toBe(false);
	});

	it("a run with a nought too many is refused: no tape is so long", () => {
		expect(readReading({ kind: "run" }, "18000", "mm")).toEqual({ ok: true, value: 18_000 });
		expect(readReading({ kind: "run" }, "180000", "mm").ok).toBe(false);
		expect(readReading({ kind: "rise" }, "11", "mm").ok).toBe(true);
		expect(readReading({ kind: "rise" }, "11000", "mm").ok).toBe(false);
	});

	it("a chord is shorter than both its arms together", () => {
		expect(boundsOf({ kind: "chord", arm: 600 })).toEqual({ least: 1, greatest: 1199 });
		expect(readReading({ kind: "chord", arm: 600 }, "1200", "mm").ok).toBe(false);
	});
});

describe("how it is taken", () => {
	const site = { bay: bayOf(), unit: "mm", turns: [0, Math.PI / 2, Math.PI / 2, 0], height: 2150 } as const;
	const chord = {
		kind: "reading",
		reading: { kind: "chord", corner: 1, arm: 600, sd: null },
		index: null,
		again: false,
	} as const;

	it("at an internal corner on both walls, at an external one with a straightedge", () => {
		expect(howTo(chord, site)).toContain("Mark 600 mm from corner 1 on both walls, at the height of the track");
		const external = howTo(chord, { ...site, turns: [0, -Math.PI / 2, Math.PI / 2, 0] });
		expect(external).toContain("Lay a straightedge on the left wall so that it carries its face on past corner 1");
		expect(external).toContain("on it and on the front wall");
	});

	it("straight past a bow, and afresh where it is taken again", () => {
		const reading = { kind: "run", wall: 1, sd: null } as const;
		const again = { kind: "reading", reading, index: null, again: true } as const;
		const bowed = { ...site, bay: bayOf({ walls: [{}, { rise: 90 }, {}] }) };
		expect(howTo(again, bowed)).toMatch(/anew.*straight to corner 2, not round the bow/);
	});

	it("every kind says something of its own", () => {
		const readings = [
			{ kind: "run", wall: 0, sd: null },
			diagonal(0, 2, 1),
			{ kind: "angle", corner: 1, sd: null },
			chord.reading,
			{ kind: "rise", wall: 1, at: null, sd: null },
			{ kind: "square", corner: 1, wall: 1, sd: null },
		] as const;
		const words = readings.map((reading) => howTo({ kind: "reading", reading, index: null, again: false }, site));
		expect(new Set(words).size).toBe(readings.length);
	});
});
