import { readOff } from "@baywright/survey";
import { describe, expect, test } from "vitest";
import { tape } from "../../oracles/tape.ts";
import { anglesOf, bayOf, diagonalsOf, dice, risesOf, runsOf, shapeOf } from "../../properties/surveyed.ts";

describe("what a perfect tape reads", () => {
	test("is what the circles and lines of the faces say, bows and external corners among them", () => {
		const roll = dice(1407);
		let compared = 0;
		for (let i = 0; i < 400; i++) {
			const walls = 2 + Math.floor(roll() * 4);
			const bay = bayOf(shapeOf(roll, walls, { bowed: 0.4, external: 0.4 }));
			const chords = anglesOf(walls).flatMap((angle) =>
				// Beside a bow an arm is a chord of it, and past an external corner a straightedge lies on the tangent.
				angle.kind === "angle" ? [{ kind: "chord" as const, corner: angle.corner, arm: 250, sd: null }] : [],
			);
			const span = {
				kind: "span" as const,
				from: { wall: 0, at: 120, off: 40 },
				to: { wall: 1, at: 150, off: 55 },
				sd: null,
			};
			const rise = { kind: "rise" as const, wall: 1, at: 200, sd: null };
			const square = { kind: "square" as const, corner: 2, wall: 0, sd: null };
			const all = [
				...runsOf(walls),
				...diagonalsOf(walls),
				...anglesOf(walls),
				...chords,
				...risesOf(bay),
				span,
				rise,
				square,
			];
			for (const what of all) {
				expect(readOff(bay, what), `${JSON.stringify(what)} of bay ${i}`).toBeCloseTo(tape(bay, what), 6);
				compared++;
			}
		}
		expect(compared).toBeGreaterThan(4000);
	});

	test("nothing where the bay has no such place", () => {
		const bay = bayOf({ lengths: [900, 1800], turns: [90], bows: [0, 0] });
		expect(readOff(bay, { kind: "run", wall: 2 })).toBeNull();
		expect(readOff(bay, { kind: "angle", corner: 0 })).toBeNull();
		expect(readOff(bay, { kind: "diagonal", from: 1, to: 1 })).toBeNull();
	});
});
