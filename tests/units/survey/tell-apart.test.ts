import {
	type CandidateReading,
	candidateReadings,
	settleBay,
	suspectReadings,
	tellApartBayReading,
} from "@baywright/survey";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { tape } from "../../oracles/tape.ts";

const sd: null = null;
const run = (wall: number) => ({ kind: "run", wall, sd }) as const;
const diagonal = (from: number, to: number) => ({ kind: "diagonal", from, to, sd }) as const;
/** Six distances between four corners, one more than hold them together: whichever is wrong, any other might as well be. */
const DISTANCES = [run(0), run(1), run(2), diagonal(0, 2), diagonal(1, 3), diagonal(0, 3)];

type Corner = { readonly x: number; readonly y: number };
const splayed: Corner[] = [
	{ x: 0, y: 0 },
	{ x: 640, y: 640 },
	{ x: 2440, y: 600 },
	{ x: 3000, y: -60 },
];

const settledWith = (corners: readonly Corner[], asked: readonly CandidateReading[], slip: number, by: number) => {
	const bay = { corners, rises: [0, 0, 0] };
	const readings = asked.map((reading, i) => ({ ...reading, value: tape(bay, reading) + (i === slip ? by : 0) }));
	const settled = settleBay({ ...bay, readings: readings as never });
	if (!settled.ok) throw new Error(JSON.stringify(settled.faults));
	return settled.value;
};

describe("the reading that tells a wrong one from those it might be mistaken for", () => {
	it("nothing is asked for where nothing is doubted", () => {
		const bay = settledWith(splayed, DISTANCES, 0, 0);
		expect(suspectReadings(bay)).toEqual([]);
		expect(tellApartBayReading(bay, { readings: [0], alike: [] }, candidateReadings(bay))).toBeNull();
	});

	it("is none of those that leave the rest as they were", () => {
		const bay = settledWith(splayed, DISTANCES, 3, 40);
		const [suspicion] = suspectReadings(bay);
		expect(suspicion?.alike.length).toBe(DISTANCES.length - 1);
		const choice = candidateReadings(bay);
		const best = tellApartBayReading(bay, suspicion as NonNullable<typeof suspicion>, choice);
		// A run or diagonal once more says only whether that one was wrong.
		expect(["angle", "chord"]).toContain(choice[best as number]?.kind);
		expect(tellApartBayReading(bay, suspicion as NonNullable<typeof suspicion>, [])).toBeNull();
	});

	// What the choice is for: with it taken, as the true bay has it, far fewer could be the culprit, and the culprit is among them.
	it("leaves the wrong reading named with fewer alike, whichever it is", () => {
		const around = (at: number) => fc.integer({ min: at - 120, max: at + 120 });
		const shape = fc.tuple(...splayed.map(({ x, y }) => fc.record({ x: around(x), y: around(y) })));
		const slips = fc.integer({ min: 0, max: DISTANCES.length - 1 });
		fc.assert(
			fc.property(shape, slips, fc.constantFrom(-60, 60), (corners, slip, by) => {
				const before = settledWith(corners, DISTANCES, slip, by);
				const [suspicion] = suspectReadings(before);
				if (suspicion === undefined || suspicion.alike.length === 0) return;
				const choice = candidateReadings(before);
				const best = choice[tellApartBayReading(before, suspicion, choice) as number] as CandidateReading;
				// Arms that the true bay has room for.
				const telling = best.kind === "chord" ? { ...best, arm: best.arm - 100 } : best;
				const [first] = suspectReadings(settledWith(corners, [...DISTANCES, telling], slip, by));
				expect(first?.alike.length ?? 0).toBeLessThan(suspicion.alike.length);
				expect([...(first?.readings ?? []), ...(first?.alike ?? [])]).toContain(slip);
			}),
			{ numRuns: 60, seed: 1 },
		);
	});
});
