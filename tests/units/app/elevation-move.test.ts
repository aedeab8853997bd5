import { createDesk } from "@baywright/editor";
import type { Bay, Job } from "@baywright/setout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Held, moveName, stopsOfElevation } from "../../../packages/app/src/elevation/held.ts";
import { type Grasp, moveHeld, nudgeHeld } from "../../../packages/app/src/elevation/move.ts";
import { elevated, jobOf, SQUARE } from "./elevation-job.ts";

const job = jobOf({
	corners: SQUARE,
	ceiling: 2600,
	openings: [
		{ wall: 0, from: 150, to: 800, sill: 620, head: 2050 },
		{ wall: 1, from: 150, to: 1650, sill: 620, head: 2050 },
		{ wall: 2, from: 100, to: 750, sill: null, head: null },
	],
	obstacles: [
		{ kind: "socket", wall: 1, from: 300, to: 386, bottom: 300, top: 386, depth: 10 },
		{ kind: "pipe", wall: 2, from: 800, to: 830, bottom: null, top: null, depth: 40 },
	],
});

const drawn = elevated(job);

function grasp(held: Held, of: Job = job): Grasp {
	const { unrolled, heights } = of === job ? drawn : elevated(of);
	return {
		held,
		job: of,
		bay: 0,
		heights,
		room: (wall) => (unrolled.walls[wall]?.to ?? 0) - (unrolled.walls[wall]?.from ?? 0),
	};
}

const moved = (held: Held, along: number, up: number, reach = 3) =>
	moveHeld(grasp(held), { along, up }, reach).bays[0] as Bay;

describe("a drag in the elevation", () => {
	it("moves a sill by whole 5 mm and leaves all else", () => {
		const after = moved({ kind: "opening", index: 1, part: "bottom" }, 40, 182.4);
		expect(after).toEqual({
			...job.bays[0],
			openings: job.bays[0]?.openings.map((it, i) => (i === 1 ? { ...it, sill: 800 } : it)),
		});
	});

	it("draws a sill to the sill of another opening within reach, and with a reach of 0 to nothing", () => {
		const start: Held = { kind: "opening", index: 1, part: "bottom" };
		const raised = moveHeld(grasp(start), { along: 0, up: 200 }, 3);
		const again = { ...grasp(start, raised) };
		expect((moveHeld(again, { along: 0, up: -178 }, 30).bays[0] as Bay).openings[1]?.sill).toBe(620);
		expect((moveHeld(again, { along: 0, up: -178.4 }, 0).bays[0] as Bay).openings[1]?.sill).toBe(642);
	});

	it("gives a height to a head and a track that had none, from where they are drawn", () => {
		const { heights } = elevated(job);
		const head = heights.openings[2]?.top.mm ?? 0;
		expect(moved({ kind: "opening", index: 2, part: "top" }, 0, -100).openings[2]?.head).toBe(head - 100);
		expect(moved({ kind: "track" }, 0, 50).track.height).toBe(2200);
		expect(moved({ kind: "track" }, 0, 5000).track.height).toBe(2600);
		expect(moved({ kind: "ceiling" }, 0, -96).ceiling).toBe(2505);
	});

	it("an obstacle's bottom let down to the floor is the floor, its top at the ceiling the ceiling", () => {
		const socket = (part: "bottom" | "top"): Held => ({ kind: "obstacle", index: 0, part });
		expect(moved(socket("bottom"), 0, -900).obstacles[0]?.bottom).toBeNull();
		expect(moved(socket("top"), 0, 4000).obstacles[0]?.top).toBeNull();
		expect(moved({ kind: "obstacle", index: 1, part: "top" }, 0, -600).obstacles[1]?.top).toBe(2000);
	});

	it("slides a thing along its wall and lifts it, held between its corners, floor and ceiling", () => {
		const whole: Held = { kind: "obstacle", index: 0, part: "whole" };
		expect(moved(whole, 90, 200).obstacles[0]).toMatchObject({ from: 390, to: 476, bottom: 500, top: 586 });
		expect(moved(whole, -4000, 9000).obstacles[0]).toMatchObject({ from: 0, to: 86, bottom: 2514, top: 2600 });
		// What reaches from floor to ceiling only slides.
		expect(moved({ kind: "obstacle", index: 1, part: "whole" }, -100, 300).obstacles[1]).toMatchObject({
			from: 700,
			to: 730,
			bottom: null,
			top: null,
		});
	});

	it("straight up leaves a thing at its place along the wall", () => {
		const after = moved({ kind: "obstacle", index: 0, part: "whole" }, 9, 300, 25).obstacles[0];
		expect(after).toMatchObject({ from: 300, to: 386 });
		expect(after?.bottom).toBeGreaterThan(500);
	});

	it("never turns a thing over nor takes it off its wall, whatever the drag", () => {
		const held = fc.constantFrom(...stopsOfElevation(job.bays[0] as Bay));
		const way = fc.record({ along: fc.integer({ min: -5000, max: 5000 }), up: fc.integer({ min: -5000, max: 5000 }) });
		const widths = [900, 1800, 900];
		fc.assert(
			fc.property(held, way, fc.constantFrom(0, 3, 80), (it, by, reach) => {
				const after = moveHeld(grasp(it), by, reach).bays[0] as Bay;
				for (const { wall, from, to } of [...after.openings, ...after.obstacles]) {
					expect(from).toBeGreaterThanOrEqual(0);
					expect(to).toBeLessThanOrEqual(widths[wall] as number);
					expect(to - from).toBeGreaterThanOrEqual(10);
				}
				for (const { sill, head } of after.openings)
					if (sill !== null && head !== null) expect(head - sill).toBeGreaterThanOrEqual(10);
				for (const { bottom, top } of after.obstacles)
					if (bottom !== null && top !== null) expect(top - bottom).toBeGreaterThanOrEqual(10);
				expect(after.ceiling).toBeGreaterThan(0);
				expect(after.track.height ?? 0).toBeGreaterThanOrEqual(0);
			}),
			{ numRuns: 600 },
		);
	});

	it("is one step of the history, named, and undo takes it back", () => {
		const desk = createDesk(job);
		const held: Held = { kind: "opening", index: 1, part: "bottom" };
		for (const up of [10, 60, 130]) desk.getState().preview(moveHeld(grasp(held), { along: 0, up }, 3));
		desk.getState().commit(moveName(job.bays[0] as Bay, held));
		expect(desk.getState().past.map(({ label }) => label)).toEqual(["sill of the opening in the front wall"]);
		expect(desk.getState().job.bays[0]?.openings[1]?.sill).toBe(750);
		desk.getState().undo();
		expect(desk.getState().job).toEqual(job);
	});
});

describe("an arrow key in the elevation", () => {
	it("moves by exactly what it says", () => {
		const after = nudgeHeld(grasp({ kind: "opening", index: 0, part: "right" }), { along: 1, up: 0 });
		expect(after.bays[0]?.openings[0]?.to).toBe(801);
		const up = nudgeHeld(grasp({ kind: "obstacle", index: 0, part: "whole" }), { along: 0, up: 10 });
		expect(up.bays[0]?.obstacles[0]).toMatchObject({ bottom: 310, top: 396, from: 300 });
	});

	it("Tab walks ceiling, track and every part of every thing, left to right", () => {
		const stops = stopsOfElevation(job.bays[0] as Bay);
		expect(stops).toHaveLength(2 + 5 * 5);
		expect(stops.slice(0, 3)).toEqual([
			{ kind: "ceiling" },
			{ kind: "track" },
			{ kind: "opening", index: 0, part: "whole" },
		]);
		expect(new Set(stops.map((it) => JSON.stringify(it))).size).toBe(stops.length);
	});
});
