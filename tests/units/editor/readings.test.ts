import { loosened, takenAgain, withoutReading, withReading } from "@baywright/editor";
import type { Reading } from "@baywright/setout";
import { expect, test } from "vitest";
import { emptyBay } from "../../../packages/editor/src/plain-bays.ts";

const run: Reading = { kind: "run", wall: 0, value: 900, sd: null };
const angle: Reading = { kind: "angle", corner: 1, value: 135, sd: 0.5 };
const bay = { ...emptyBay(), readings: [run, angle] };

test("a reading is added last, removed, and taken again in its place", () => {
	const diagonal: Reading = { kind: "diagonal", from: 0, to: 2, value: 1500, sd: null };
	expect(withReading(bay, diagonal).readings).toEqual([run, angle, diagonal]);
	expect(withoutReading(bay, 0).readings).toEqual([angle]);
	expect(takenAgain(bay, 1, 134.5).readings).toEqual([run, { ...angle, value: 134.5 }]);
});

// A run's usual deviation, 2 mm: common practice, no source.
test("loosened, a reading has twice its deviation, or twice its kind's usual one", () => {
	expect(loosened(bay, 0).readings).toEqual([{ ...run, sd: 4 }, angle]);
	expect(loosened(bay, 1).readings).toEqual([run, { ...angle, sd: 1 }]);
	expect(loosened(loosened(bay, 0), 0).readings[0]?.sd).toBe(8);
});
