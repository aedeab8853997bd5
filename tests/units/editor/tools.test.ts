import { describe, expect, it } from "vitest";
import { driver } from "./driver.ts";
import { emptyJob, jobOf, SQUARE, valid } from "./sample-bay.ts";

const square = (more: object = {}) => driver(jobOf({ corners: SQUARE, ...more }));

describe("choosing and moving", () => {
	it("a tap chooses what lies there, on bare sheet nothing", () => {
		const table = square({ openings: [{ wall: 1, from: 300, to: 1500 }] });
		expect(table.tap(2, 899).desk.selection).toEqual({ kind: "corner", index: 1 });
		expect(table.tap(900, 905).desk.selection).toEqual({ kind: "opening", index: 0 });
		expect(table.tap(150, 900).desk.selection).toEqual({ kind: "wall", index: 1 });
		expect(table.tap(900, 300).desk.selection).toBeNull();
		expect(table.desk.past).toEqual([]);
	});

	it("a drag is one step, however often it moves; Escape puts all back and leaves no step", () => {
		const table = square().reach(0);
		const before = table.desk.job;
		table.press(0, 900);
		for (let x = 10; x <= 100; x += 10) table.drag({ x: -x, y: 900 + x });
		expect(table.toolbox.busy).toBe(true);
		expect(table.desk.job).toBe(before);
		expect(table.corners[1]).toEqual([-100, 1000]);
		table.escape();
		expect(table.desk.shown).toBe(before);
		expect([table.desk.past, table.toolbox.busy, table.toolbox.held]).toEqual([[], false, null]);
		table.press(0, 900).drag({ x: -40, y: 900 }).drag({ x: -60, y: 950 }).drop();
		expect(table.corners[1]).toEqual([-60, 950]);
		expect(table.desk.past.map(({ label }) => label)).toEqual(["move corner 1"]);
		expect(table.undo().corners).toEqual(SQUARE);
		expect(table.redo().corners[1]).toEqual([-60, 950]);
	});

	it("a drag that comes back to where it started is no step", () => {
		const table = square().reach(0).press(0, 900).drag({ x: 50, y: 950 }).drag({ x: 0, y: 900 }).drop();
		expect(table.desk.past).toEqual([]);
	});

	it("a drag on bare sheet is left to whoever moves the sheet", () => {
		const table = square().press(900, 300);
		expect([table.taken, table.toolbox.busy, table.toolbox.dragsAnywhere]).toEqual([false, false, false]);
	});

	it("an undo in the middle of a drag ends it", () => {
		const table = square().reach(0).press(0, 900).drag({ x: 50, y: 950 }).drop();
		table.press(1800, 900).drag({ x: 1900, y: 950 }).undo();
		expect([table.toolbox.busy, table.corners]).toEqual([false, SQUARE]);
		table.drag({ x: 2000, y: 2000 }).drop();
		expect([table.corners, table.desk.past]).toEqual([SQUARE, []]);
	});

	it("a double tap on a wall puts a corner there, and that is chosen", () => {
		const table = square().doubleTap(700.4, 903);
		expect(valid(table.bay).corners).toEqual([
			[0, 0],
			[0, 900],
			[700, 900],
			[1800, 900],
			[1800, 0],
		]);
		expect(table.desk.selection).toEqual({ kind: "corner", index: 2 });
		expect(table.desk.past.map(({ label }) => label)).toEqual(["put in a corner"]);
		expect(square().doubleTap(900, 300).taken).toBe(false);
		// Nearer to its end than a corner may stand: between the reach of that corner and the least wall.
		const close = square().send({
			type: "double-tap",
			touch: { at: { x: 10, y: 900 }, target: { kind: "wall", index: 1 }, reach: 5 },
		});
		expect([close.toolbox.said, close.corners.length]).toEqual(["No room for another corner there.", 4]);
	});

	it("Tab goes from handle to handle and arrows push what it came to; pushes in a row are one step", () => {
		const table = square();
		table.walk();
		expect(table.desk.selection).toEqual({ kind: "corner", index: 0 });
		table.walk().key("left").key("left").key("left");
		expect(table.corners.slice(0, 2)).toEqual([
			[-3, 0],
			[-3, 900],
		]);
		expect(table.desk.past).toHaveLength(1);
		table.walk().key("left");
		expect(table.bay.walls[0]?.rise).toBe(1);
		expect(table.walk(true).desk.selection).toEqual({ kind: "wall", index: 0 });
		expect(table.undo().undo().corners).toEqual(SQUARE);
	});
});

describe("the corner tool", () => {
	it("puts a corner where a wall is tapped, drawn to its middle", () => {
		const table = square().take("corner").tap(890, 910);
		expect(table.corners[2]).toEqual([900, 900]);
		expect(table.desk.selection).toEqual({ kind: "corner", index: 2 });
	});

	it("pulls one out of a wall: one step, or none with Escape", () => {
		const table = square().take("corner").reach(0).press(700, 900).drag({ x: 705, y: 1100 });
		expect(table.corners[2]).toEqual([705, 1100]);
		table.escape();
		expect([table.corners, table.desk.selection, table.desk.past]).toEqual([SQUARE, null, []]);
		table.press(700, 900).drag({ x: 705, y: 1100 }).drop();
		expect(valid(table.bay).corners).toEqual([
			[0, 0],
			[0, 900],
			[705, 1100],
			[1800, 900],
			[1800, 0],
		]);
		expect(table.desk.past.map(({ label }) => label)).toEqual(["put in a corner"]);
	});

	it("shows nothing of the wall that was pointed at once that wall is two", () => {
		const table = square({ openings: [{ wall: 1, from: 200, to: 1600 }] })
			.take("corner")
			.hover(700, 910);
		expect(table.toolbox.sketch?.points).toHaveLength(1);
		expect(table.tap(700, 910).toolbox.sketch).toBeNull();
	});

	it("shows where it would go, and says so where there is no wall", () => {
		const table = square().take("corner").hover(893, 920);
		expect(table.toolbox.sketch?.points).toEqual([{ x: 900, y: 900 }]);
		table.tap(900, 300);
		expect(table.toolbox.said).toContain("Tap or pull a wall");
		expect(table.desk.past).toEqual([]);
	});
});

describe("the opening tool", () => {
	it("draws from where a drag starts to where it ends, on the wall where it started", () => {
		const table = square().take("opening").reach(0).press(1500, 880).drag({ x: 700, y: 850 }).drag({ x: 302, y: 500 });
		expect(table.toolbox.sketch?.lines).toEqual([
			{ from: { x: 302, y: 900 }, to: { x: 1500, y: 900 }, kind: "stretch", length: 1198 },
		]);
		expect(table.toolbox.sketch?.figures.map((it) => ("mm" in it ? it.mm : 0))).toEqual([302, 1198, 300]);
		expect(table.desk.past).toEqual([]);
		table.drop();
		expect(valid(table.bay).openings).toEqual([{ wall: 1, from: 302, to: 1500, sill: 600, head: 2050, sillDepth: 0 }]);
		expect(table.desk.selection).toEqual({ kind: "opening", index: 0 });
		expect(table.undo().bay.openings).toEqual([]);
	});

	it("puts one of usual width about a tap, with a hand's breadth left on a narrow wall", () => {
		expect(square().take("opening").tap(700, 900).bay.openings[0]).toMatchObject({ wall: 1, from: 100, to: 1300 });
		// 900 − 300 about the middle of the left wall, to which a tap near it is drawn.
		expect(square().take("opening").tap(10, 455).bay.openings[0]).toMatchObject({ wall: 0, from: 150, to: 750 });
	});

	it("gives up a drag with Escape", () => {
		const table = square().take("opening").press(1500, 880).drag({ x: 300, y: 880 }).escape().drop();
		expect([table.bay.openings, table.desk.past, table.toolbox.tool]).toEqual([[], [], "opening"]);
	});

	it("says that there is no wall to put it on", () => {
		const table = driver(emptyJob()).take("opening").tap(0, 0);
		expect(table.toolbox.said).toBe("Draw a wall first: there is none to put this on.");
		expect(table.take("obstacle").tap(0, 0).toolbox.said).toBe("Draw a wall first: there is none to put this on.");
	});
});

describe("the obstacle tool", () => {
	it("puts one of its kind, of usual size, where a wall is tapped", () => {
		const table = square().take("obstacle", "radiator").reach(0).tap(900, 880);
		expect(valid(table.bay).obstacles).toEqual([
			{ kind: "radiator", wall: 1, from: 400, to: 1400, bottom: 150, top: 600, depth: 110 },
		]);
		expect(table.desk.selection).toEqual({ kind: "obstacle", index: 0 });
		expect(table.take("obstacle", "switch").reach(0).tap(0, 300).bay.obstacles[1]).toMatchObject({
			kind: "switch",
			wall: 0,
			from: 257,
			to: 343,
		});
	});

	it("slides it along the walls until it is let go: one step", () => {
		const table = square()
			.take("obstacle", "switch")
			.reach(0)
			.press(0, 300)
			.drag({ x: 400, y: 890 })
			.drag({ x: 1795, y: 400 });
		expect(table.desk.past).toEqual([]);
		table.drop();
		expect(table.bay.obstacles).toMatchObject([{ wall: 2, from: 457, to: 543 }]);
		table.press(0, 300).drag({ x: 3, y: 200 }).escape().drop();
		expect(table.bay.obstacles).toHaveLength(1);
	});
});

describe("the tool for stretches without holes", () => {
	it("marks what is drawn, one with those that it meets", () => {
		const table = square().take("no-drill").reach(0).press(300, 900).drag({ x: 500, y: 905 }).drop();
		table.press(800, 900).drag({ x: 480, y: 905 }).drop();
		expect(valid(table.bay).walls[1]?.noDrill).toEqual([[300, 800]]);
		expect(table.desk.past.map(({ label }) => label)).toEqual([
			"mark a stretch without holes",
			"mark a stretch without holes",
		]);
		expect(table.undo().bay.walls[1]?.noDrill).toEqual([[300, 500]]);
	});

	it("chooses the stretch that came of it, wherever it stands among the others", () => {
		const table = square().take("no-drill").reach(0).press(1200, 900).drag({ x: 1300, y: 905 }).drop();
		table.press(300, 900).drag({ x: 500, y: 905 }).drop();
		expect(table.desk.selection).toEqual({ kind: "no-drill", index: 0, wall: 1 });
		table.press(1250, 900).drag({ x: 1500, y: 905 }).drop();
		expect(table.desk.selection).toEqual({ kind: "no-drill", index: 1, wall: 1 });
	});

	it("a tap marks a hand's breadth", () => {
		expect(square().take("no-drill").reach(0).tap(600, 900).bay.walls[1]?.noDrill).toEqual([[500, 700]]);
	});
});

describe("the tape", () => {
	const lengths = (table: ReturnType<typeof driver>) => table.toolbox.sketch?.lines.map(({ length }) => length);

	it("measures from corner to corner, and to the face square off", () => {
		const table = square().take("tape").tap(4, -3).tap(1795, 903);
		expect(lengths(table)).toEqual([expect.closeTo(Math.hypot(1800, 900), 6)]);
		table.tap(600, 400).tap(600, 890);
		expect(lengths(table)?.[1]).toBeCloseTo(500, 6);
		expect(table.desk.past).toEqual([]);
	});

	it("measures while it is dragged, and Escape takes the tapes away", () => {
		const table = square().take("tape").press(2, 2).drag({ x: 3, y: 500 }).drag({ x: 2, y: 898 });
		expect(lengths(table)).toEqual([expect.closeTo(900, 6)]);
		table.drop().hover(900, 300);
		expect(lengths(table)).toEqual([expect.closeTo(900, 6)]);
		table.tap(1800, 0).hover(1800, 450).escape();
		expect(table.taken).toBe(true);
		expect(lengths(table)).toEqual([expect.closeTo(900, 6)]);
		expect(table.escape().toolbox.sketch).toBeNull();
		expect(table.escape().taken).toBe(false);
	});

	it("goes to edges of openings, to brackets and to the track", () => {
		const table = square({ openings: [{ wall: 1, from: 300, to: 1500 }] })
			.take("tape")
			.tap(305, 896)
			.tap(1497, 902);
		expect(lengths(table)).toEqual([expect.closeTo(1200, 6)]);
		const bracket = table.plan.brackets[1]?.at ?? { x: Number.NaN, y: 0 };
		table.tap(0, 0).tap(bracket.x + 4, bracket.y - 4);
		expect(lengths(table)?.[1]).toBeCloseTo(Math.hypot(bracket.x, bracket.y), 6);
		expect(table.erase().taken).toBe(true);
		expect(lengths(table)).toHaveLength(1);
	});
});
