import { dimensionSureness, libraryOf, planBay } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import { jobOf, SQUARE } from "../editor/sample-bay.ts";

function surenessWith(readings: readonly object[]) {
	const job = jobOf({ corners: SQUARE, readings });
	const bay = job.bays[0] as (typeof job.bays)[number];
	return dimensionSureness(bay, planBay(bay, libraryOf(job)).system);
}

describe("which figures the readings settle", () => {
	it("none with nothing taped", () => expect(surenessWith([])).toBeNull());

	it("only the run that was read, good to its tape", () => {
		const sure = surenessWith([{ kind: "run", wall: 1, value: 1800 }]);
		expect(sure?.runs[0]).toBeNull();
		expect(sure?.runs[1]).toBeCloseTo(2, 2);
		expect(sure?.angles).toEqual([null, null, null, null]);
	});

	it("an angle that nobody read, by the three sides of its triangle", () => {
		const [a, b] = [900, 1800];
		const diagonal = Math.hypot(a, b);
		const sure = surenessWith([
			{ kind: "run", wall: 0, value: a },
			{ kind: "run", wall: 1, value: b },
			{ kind: "diagonal", from: 0, to: 2, value: diagonal },
		]);
		// From d² = a² + b² − 2ab cos θ at a right angle, each side good to 2 mm.
		const sd = ((2 * Math.hypot(a, b, diagonal)) / (a * b)) * (180 / Math.PI);
		expect(sure?.angles[1]).toBeCloseTo(sd, 3);
		expect(sure?.angles[2]).toBeNull();
		expect(sure?.runs[2]).toBeNull();
	});
});
