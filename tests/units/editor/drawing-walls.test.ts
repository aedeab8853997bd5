import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { between } from "../app/between.ts";
import { type Driver, driver } from "./driver.ts";
import { emptyJob, jobOf, SQUARE, valid } from "./sample-bay.ts";

const SEED = 4103;

const blank = () => driver(emptyJob()).take("walls");

/** Runs and room angles as a tape and a bevel read them, from the corners alone. */
function taped({ corners }: Pick<Driver, "corners">) {
	const way = (i: number) => {
		const [a, b] = [corners[i], corners[i + 1]] as [readonly [number, number], readonly [number, number]];
		return { length: Math.hypot(b[0] - a[0], b[1] - a[1]), heading: Math.atan2(b[1] - a[1], b[0] - a[0]) };
	};
	const walls = corners.slice(1).map((_, i) => way(i));
	const angles = walls.slice(1).map(({ heading }, i) => {
		const turn = ((((walls[i] as { heading: number }).heading - heading) * 180) / Math.PI + 540) % 360;
		return 360 - turn;
	});
	return { runs: walls.map(({ length }) => length), angles };
}

/** mm and degrees to which corners kept to 0.001 mm give back what was typed. */
const near = (values: readonly number[], digits = 1) => values.map((value) => expect.closeTo(value, digits));

describe("a bay drawn by typing alone", () => {
	it("square: run, Enter, Tab, angle, Tab, run", () => {
		const table = blank().type("700").enter();
		table.tab().type("90").tab().type("1800").enter();
		table.tab().type("90").tab().type("700").enter();
		expect(table.corners).toEqual([
			[0, 0],
			[0, 700],
			[1800, 700],
			[1800, 0],
		]);
		valid(table.bay);
		expect(table.desk.past.map(({ label }) => label)).toEqual(["draw a wall", "draw a wall", "draw a wall"]);
		expect(table.plan.path).not.toBeNull();
		expect(table.escape().toolbox.tool).toBe("select");
	});

	it("is turned so that its front lies level when it is done, and one undo turns it back", () => {
		const table = blank().type("900").enter();
		for (const run of ["1800", "900"]) table.tab().type("135").tab().type(run).enter();
		const drawn = table.corners;
		table.escape();
		const [, left, right] = table.corners as [unknown, readonly [number, number], readonly [number, number]];
		expect(right[1]).toBe(left[1]);
		expect(right[0] - left[0]).toBeCloseTo(1800, 2);
		expect(taped(table)).toEqual({ runs: near([900, 1800, 900]), angles: near([135, 135]) });
		expect(table.undo().corners).toEqual(drawn);
	});

	it("is turned level too when another tool is taken up, and what is still being typed goes", () => {
		const table = blank().type("900").enter();
		for (const run of ["1800", "900"]) table.tab().type("135").tab().type(run).enter();
		table.type("12").take("opening");
		expect([table.toolbox.tool, table.toolbox.entry]).toEqual(["opening", null]);
		expect(table.corners[2]?.[1]).toBe(table.corners[1]?.[1]);
		expect(table.desk.past.at(-1)?.label).toBe("turn the front level");
	});

	it("stays as it lies where any of it was pointed out", () => {
		const table = blank().type("900").enter();
		table.hover(800, 1800).type("1800").enter();
		const drawn = table.corners;
		expect(table.escape().corners).toEqual(drawn);
	});

	it("splayed, as it is taped: 900, 135°, 1800, 135°, 900", () => {
		const table = blank().type("900").enter();
		for (const [angle, run] of [
			["135", "1800"],
			["135°", "900"],
		] as const)
			table.entry("angle", angle).entry("run", run).enter();
		// The first wall goes straight out, the front one 45° to its right, the last one straight along.
		expect(table.corners).toEqual([
			[0, 0],
			[0, 900],
			[expect.closeTo(1800 * Math.SQRT1_2, 2), expect.closeTo(900 + 1800 * Math.SQRT1_2, 2)],
			[expect.closeTo(1800 * Math.SQRT1_2 + 900, 2), expect.closeTo(900 + 1800 * Math.SQRT1_2, 2)],
		]);
		expect(taped(table)).toEqual({ runs: near([900, 1800, 900]), angles: near([135, 135]) });
		valid(table.bay);
	});

	it("in any unit, and refuses what is no length or no angle with one line", () => {
		const table = blank().type("2.4 m").enter();
		expect(taped(table).runs).toEqual(near([2400]));
		table.entry("angle", "19").entry("run", "900").enter();
		expect(table.toolbox.said).toBe("“19” is not an angle of a room: write 20 to 340 degrees.");
		expect(table.toolbox.entry?.trouble).toBe(table.toolbox.said);
		table.entry("angle", "270").entry("run", "9oo").enter();
		expect(table.toolbox.said).toContain("9oo");
		table.entry("run", "0.4").enter();
		expect(table.toolbox.said).toBe("A wall is at least 1 mm long.");
		expect(table.desk.past).toHaveLength(1);
		table.entry("run", "10 in").enter();
		expect(taped(table)).toEqual({ runs: near([2400, 254]), angles: near([270]) });
	});

	it("reads back as it was typed, whatever is typed, from either end", () => {
		const angle = between(25, 335);
		fc.assert(
			fc.property(fc.array(fc.tuple(angle, between(5, 4000)), { maxLength: 6 }), fc.boolean(), (walls, left) => {
				const table = driver(jobOf({ corners: SQUARE.slice(0, 2) })).take("walls");
				// Near the end that is drawn on from, but pointing nowhere.
				table.hover(0, left ? 1 : 899);
				for (const [degrees, run] of walls)
					table.entry("angle", degrees.toFixed(3)).entry("run", run.toFixed(2)).enter();
				const read = taped(table);
				const [runs, angles] = [walls.map(([, run]) => run), walls.map(([degrees]) => degrees)];
				const shortest = Math.min(...runs, 900);
				expect(read.runs).toEqual(
					(left ? [...runs.toReversed(), 900] : [900, ...runs]).map((it) => expect.closeTo(it, 1)),
				);
				(left ? angles.toReversed() : angles).forEach((it, i) => {
					// 0.0007 mm off at either end of the shortest wall.
					expect(Math.abs((read.angles[i] as number) - it)).toBeLessThan(0.001 + (0.003 / shortest) * 57.3);
				});
				valid(table.bay);
			}),
			{ seed: SEED, numRuns: 50 },
		);
	});

	it("asks where to when nothing points anywhere", () => {
		const table = blank().type("700").enter().type("1800").enter();
		expect(table.corners).toHaveLength(2);
		expect(table.toolbox.said).toContain("Point where the wall goes");
		expect(table.toolbox.entry).toMatchObject({ run: "1800", hasAngle: true });
	});
});

describe("a bay drawn by pointing", () => {
	it("by taps: each is a corner, the last tapped again ends it", () => {
		const table = blank().tap(0, 0).tap(3, 702).tap(1802, 697).tap(1798, 2);
		expect(table.corners).toEqual([
			[0, 0],
			[0, 700],
			[1800, 700],
			[1800, 0],
		]);
		expect(table.desk.past.map(({ label }) => label)).toEqual([
			"start a bay",
			"draw a wall",
			"draw a wall",
			"draw a wall",
		]);
		valid(table.bay);
		expect(table.tap(1800, 4).toolbox.tool).toBe("select");
		expect(table.corners).toHaveLength(4);
	});

	it("by tapping where it starts and typing runs where the pointer is", () => {
		const table = blank().tap(100, 50).hover(104, 400).type("712").enter();
		table.hover(900, 766).type("1795").enter();
		table.hover(1893, 300).type("705").enter();
		expect(table.corners).toEqual([
			[100, 50],
			[100, 762],
			[1895, 762],
			[1895, 57],
		]);
	});

	it("by a run typed right after the first tap, which points nowhere: straight out", () => {
		expect(blank().tap(100, 50).type("700").enter().corners).toEqual([
			[100, 50],
			[100, 750],
		]);
	});

	it("by arrow keys and runs", () => {
		const table = blank().key("up").type("700").enter();
		table.key("right").type("1800").enter().key("down").type("700").enter();
		expect(table.corners).toEqual([
			[0, 0],
			[0, 700],
			[1800, 700],
			[1800, 0],
		]);
		table.key("left").enter();
		expect(table.toolbox.said).toContain("Too short");
	});

	it("by drags, each to the end of a wall", () => {
		const table = blank().tap(0, 0);
		for (const [x, y] of [
			[0, 700],
			[1800, 700],
			[1800, 0],
		] as const)
			table
				.press(x - 50, y - 30)
				.drag({ x, y })
				.drop();
		expect(table.corners).toEqual([
			[0, 0],
			[0, 700],
			[1800, 700],
			[1800, 0],
		]);
	});

	it("by a drag over an empty sheet: a wall from where it started, one step", () => {
		const table = blank().press(100, 50).drag({ x: 103, y: 300 }).drag({ x: 104, y: 748 });
		expect(table.toolbox.sketch?.lines).toMatchObject([
			{ from: { x: 100, y: 50 }, to: { x: expect.closeTo(100, 6), y: 750 }, length: 700 },
		]);
		expect(table.drop().corners).toEqual([
			[100, 50],
			[100, 750],
		]);
		expect(table.desk.past).toHaveLength(1);
		expect(table.erase().corners).toEqual([]);
		// No more than a slip of the hand: the first corner.
		expect(table.press(100, 50).drag({ x: 103, y: 52 }).drop().corners).toEqual([[103, 52]]);
	});

	it("shows the wall to come with its run and angle, and what draws it", () => {
		const table = blank().tap(0, 0).tap(0, 700).hover(1003, 705);
		expect(table.toolbox.sketch).toMatchObject({
			lines: [{ from: { x: 0, y: 700 }, to: { x: 1005, y: 700 }, kind: "wall", length: 1005 }],
			figures: [
				{ name: "run", mm: 1005 },
				{ name: "angle", degrees: expect.closeTo(90, 6) },
			],
		});
		expect(table.toolbox.sketch?.guides.map(({ why }) => why)).toContain("90° at the right end");
		table.hover(710, 1410);
		expect(table.toolbox.sketch?.guides.map(({ why }) => why)).toContain("135° at the right end");
		// The other way along the line of 90° is an outside corner.
		table.hover(-1003, 705);
		expect(table.toolbox.sketch?.guides.map(({ why }) => why)).toContain("270° at the right end");
		expect(table.leave().toolbox.sketch).toBeNull();
	});

	it("goes on from the end of the bay that is nearer, to the left too", () => {
		const table = driver(jobOf({ corners: SQUARE, openings: [{ wall: 1, from: 300, to: 1500 }] })).take("walls");
		table.tap(-600, 4);
		expect(table.corners).toEqual([[-600, 0], ...SQUARE]);
		expect(table.bay.openings[0]).toMatchObject({ wall: 2, from: 300 });
		expect(table.type("250").hover(-600, -300).enter().corners[0]).toEqual([-600, -250]);
		expect(table.erase().corners[0]).toEqual([-600, 0]);
		expect(
			driver(jobOf({ corners: SQUARE }))
				.take("walls")
				.tap(2400, 3).corners,
		).toEqual([...SQUARE, [2400, 0]]);
	});
});

describe("a bay drawn from right to left", () => {
	const backwards = () => blank().tap(1800, 0).tap(1800, 700).tap(0, 700).tap(0, 0);

	it("is turned so that the room lies inside, and drawing goes on where it was", () => {
		const table = backwards();
		expect(table.corners).toEqual([
			[0, 0],
			[0, 700],
			[1800, 700],
			[1800, 0],
		]);
		expect(taped(table).angles).toEqual(near([90, 90]));
		expect(table.tap(-300, 0).corners[0]).toEqual([-300, 0]);
	});

	it("is taken back step by step past the turn, and drawn on again from the same end", () => {
		const table = backwards().erase();
		expect(table.corners).toEqual([
			[0, 700],
			[1800, 700],
			[1800, 0],
		]);
		table.erase();
		expect(table.corners).toEqual([
			[1800, 0],
			[1800, 700],
		]);
		table.tap(0, 700).tap(0, 0);
		expect(table.corners).toEqual([
			[0, 0],
			[0, 700],
			[1800, 700],
			[1800, 0],
		]);
	});
});

describe("Backspace and Escape", () => {
	it("take back signs, then the field, then walls, then nothing", () => {
		const table = blank().type("700").enter().tab().type("90");
		table.erase();
		expect(table.toolbox.entry).toMatchObject({ field: "angle", angle: "9" });
		table.erase().erase();
		expect(table.toolbox.entry).toMatchObject({ field: "run", angle: "" });
		table.erase();
		expect([table.corners, table.taken]).toEqual([[], true]);
		expect(table.erase().taken).toBe(false);
	});

	it("take back the first corner too", () => {
		const table = blank().tap(5, 5);
		expect(table.corners).toHaveLength(1);
		expect(table.erase().corners).toEqual([]);
		expect(table.desk.past).toEqual([]);
	});

	it("give up what is typed, then the drawing", () => {
		const table = blank().type("70").escape();
		expect(table.toolbox.entry).toMatchObject({ run: "", field: "run" });
		expect(table.toolbox.tool).toBe("walls");
		expect(table.escape().toolbox.tool).toBe("select");
	});

	it("in a drag give up the drag alone, as a second finger does", () => {
		const table = blank().tap(0, 0).press(0, 300).drag({ x: 0, y: 600 });
		expect(table.toolbox.busy).toBe(true);
		table.escape();
		expect([table.toolbox.tool, table.toolbox.busy, table.corners.length]).toEqual(["walls", false, 1]);
	});

	it("another tool taken up in a drag gives it up", () => {
		const table = blank().tap(0, 0).press(0, 300).drag({ x: 0, y: 600 }).take("opening");
		expect([table.toolbox.tool, table.toolbox.busy, table.corners.length]).toEqual(["opening", false, 1]);
	});

	it("after an undo take back no more than the drawing", () => {
		const table = driver(jobOf({ corners: SQUARE }))
			.take("walls")
			.tap(2400, 3)
			.tap(2400, -400);
		table.undo().undo();
		expect(table.erase().taken).toBe(false);
		expect(table.corners).toEqual(SQUARE);
	});

	it("Enter with nothing typed ends the drawing, wherever the pointer rests", () => {
		const table = blank().tap(0, 0).tap(0, 700).hover(900, 900).enter();
		expect([table.toolbox.tool, table.corners.length]).toEqual(["select", 2]);
	});
});

it("a job without bays has nothing to draw on, and says so by not taking anything", () => {
	const none = { ...emptyJob(), bays: [] };
	expect(driver(none).take("walls").type("7").taken).toBe(false);
});
