import { describe, expect, test } from "vitest";
import { planOf, track } from "./curtain-bay.ts";

/** Where each curtain hangs drawn and to which side it is drawn back. */
const hung = (curtains: object[], draw = "pair") =>
	planOf({ track: track(0, 4000, { draw }), curtains }).curtains.map(({ curtain, from, to, side }) => [
		curtain,
		from,
		to,
		side,
	]);

describe("where curtains hang", () => {
	test("none given: as the track is drawn", () => {
		expect(hung([])).toEqual([
			[null, 0, 2000, "left"],
			[null, 2000, 4000, "right"],
		]);
		expect(hung([], "right")).toEqual([[null, 0, 4000, "right"]]);
		expect(hung([], "none")).toEqual([]);
	});

	test("one alone on the track is drawn as the track is", () => {
		expect(hung([{}])).toEqual([
			[0, 0, 2000, "left"],
			[0, 2000, 4000, "right"],
		]);
		expect(hung([{}], "left")).toEqual([[0, 0, 4000, "left"]]);
	});

	test("several: each on its stretch, to the nearer end of the track", () => {
		expect(hung([{ from: 3000 }, { to: 1000 }, { from: 1000, to: 3000 }])).toEqual([
			[1, 0, 1000, "left"],
			[2, 1000, 3000, "left"],
			[0, 3000, 4000, "right"],
		]);
	});

	test("one that says where it stacks does, whatever the track says; both is a pair on its own stretch", () => {
		expect(hung([{ stacks: "right" }], "left")).toEqual([[0, 0, 4000, "right"]]);
		expect(hung([{ to: 1000, stacks: "right" }, { from: 1000, to: 3000, stacks: "both" }, { from: 3000 }])).toEqual([
			[0, 0, 1000, "right"],
			[1, 1000, 2000, "left"],
			[1, 2000, 3000, "right"],
			[2, 3000, 4000, "right"],
		]);
	});

	test("one that lies off the track does not hang", () => {
		expect(hung([{ to: 1000 }, { from: 4500, to: 5000 }])).toEqual([[0, 0, 1000, "left"]]);
	});

	test("one beside another that lies off the track is alone on it, and drawn as the track is", () => {
		expect(hung([{ from: 4500, to: 5000 }, {}])).toEqual([
			[1, 0, 2000, "left"],
			[1, 2000, 4000, "right"],
		]);
	});

	// By hand: 2000 long, half an overlap of 120 where the pair parts, return of 80 at its end, ease 10.
	test("the halves of one that parts meet, and end where the track does", () => {
		const { curtains } = planOf({
			track: track(0, 4000),
			curtains: [{}],
			makeUp: { overlap: 120, returns: 80, ease: 10 },
		});
		expect(curtains.map(({ finishedWidth }) => finishedWidth)).toEqual([2150, 2150]);
	});
});
