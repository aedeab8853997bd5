import { describe, expect, it } from "vitest";
import { heldBy } from "../../../packages/app/src/canvas/holding.ts";
import { bayOf, SQUARE } from "../editor/sample-bay.ts";

describe("what holds a corner", () => {
	const bay = bayOf({
		corners: SQUARE,
		readings: [
			{ kind: "angle", corner: 2, value: 90 },
			{ kind: "diagonal", from: 0, to: 2, value: 2012 },
			{ kind: "run", wall: 0, value: 900 },
			{ kind: "run", wall: 0, value: 901 },
		],
	});

	it("is every reading it has a part in, lengths first and a repeat told once", () => {
		expect(heldBy(bay, [0])).toEqual(["run of the left wall", "diagonal left end–2"]);
		expect(heldBy(bay, [1])).toEqual(["run of the left wall", "angle at corner 2"]);
	});

	it("is nothing where nothing taped touches it", () => {
		expect(heldBy(bayOf({ corners: SQUARE, readings: [{ kind: "run", wall: 0, value: 900 }] }), [2, 3])).toEqual([]);
	});
});
