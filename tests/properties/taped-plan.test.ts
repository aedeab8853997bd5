import { type Job, libraryOf, parseJob, planBay } from "@baywright/setout";
import type { CandidateReading } from "@baywright/survey";
import fc from "fast-check";
import { expect, test } from "vitest";
import { anglesOf, bayOf, diagonalsOf, dice, misdrawn, risesOf, runsOf, shapeOf, taken } from "./surveyed.ts";

const SEED = 2027;

function jobOf(
	corners: readonly { readonly x: number; readonly y: number }[],
	rises: readonly number[],
	more = {},
): Job {
	const parsed = parseJob({
		format: "baywright-job",
		version: 1,
		bays: [
			{
				id: "b",
				corners: corners.map(({ x, y }) => [x, y]),
				walls: rises.map((rise) => ({ rise })),
				track: { system: "flexible", joints: "none" },
				...more,
			},
		],
	});
	if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
	return parsed.job;
}

/** What a fitter works by: wherever the bay lies. */
const figuresOf = (job: Job) => {
	const { pieces, corners, path } = planBay(job.bays[0] as Job["bays"][number], libraryOf(job));
	return {
		length: path?.length ?? null,
		cuts: pieces.map(({ cutLength }) => cutLength),
		setBacks: corners.flatMap(({ setBack, sweep }) => [...setBack.map((each) => each ?? 0), sweep]),
	};
};

test("exact readings of a bay drawn 10 % off give the plan of the bay as it stands, within 0.01 mm", () => {
	let planned = 0;
	fc.assert(
		fc.property(fc.integer({ min: 1, max: 1e9 }), fc.integer({ min: 2, max: 5 }), (seed, walls) => {
			const roll = dice(seed);
			const shape = shapeOf(roll, walls, { bowed: 0.2 });
			const [stands, drawn] = [bayOf(shape), bayOf(misdrawn(shape, 0.1, roll))];
			const what: CandidateReading[] = [
				...runsOf(walls),
				...diagonalsOf(walls),
				...anglesOf(walls),
				...risesOf(stands),
			];
			const readings = what.map((each) => taken(stands, each));
			const truth = figuresOf(jobOf(stands.corners, stands.rises));
			const taped = figuresOf(jobOf(drawn.corners, drawn.rises, { readings }));
			expect(taped.length === null).toBe(truth.length === null);
			if (truth.length === null || taped.length === null) return;
			planned++;
			expect(taped.cuts).toHaveLength(truth.cuts.length);
			expect(taped.setBacks).toHaveLength(truth.setBacks.length);
			const pairs = [
				[taped.length, truth.length],
				...taped.cuts.map((cut, i) => [cut, truth.cuts[i]]),
				...taped.setBacks.map((each, i) => [each, truth.setBacks[i]]),
			];
			for (const [one, other] of pairs) expect(Math.abs((one as number) - (other as number))).toBeLessThan(0.01);
		}),
		{ seed: SEED, numRuns: 120 },
	);
	// Most bays take the track, so that most are compared.
	expect(planned).toBeGreaterThan(60);
});
