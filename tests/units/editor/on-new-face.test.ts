import { setRise } from "@baywright/editor";
import { type Bay, parseJob } from "@baywright/setout";
import { describe, expect, it } from "vitest";

function jobOf(wall: object, more: object) {
	const parsed = parseJob({
		format: "baywright-job",
		version: 1,
		bays: [
			{
				id: "b",
				corners: [
					[0, 0],
					[2000, 0],
					[2000, -900],
				],
				walls: [wall, {}],
				...more,
			},
		],
	});
	if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
	return parsed.job;
}

const bowed = (job: ReturnType<typeof jobOf>, rise: number): Bay => setRise(job.bays[0] as Bay, 0, rise);

// A rise of 1000 over a chord of 2000 is a half circle: its face is 1000π long, π/2 times the chord.
const SHARE = Math.PI / 2;

describe("what stands on a wall that is bowed", () => {
	const job = jobOf(
		{ noDrill: [[900, 1100]] },
		{
			openings: [
				{ wall: 0, from: 400, to: 1600 },
				{ wall: 1, from: 100, to: 800 },
			],
			obstacles: [{ kind: "socket", wall: 0, from: 457, to: 543, depth: 10 }],
			track: {
				start: { wall: 0, at: 50 },
				end: { wall: 1, at: 850 },
				joints: [{ wall: 0, at: 1500 }],
				brackets: [
					{ wall: 0, at: 1200 },
					{ wall: 1, at: 300 },
				],
			},
		},
	);

	it("moves by its share of the face, as wide as it was; what is in the middle stays there", () => {
		const { openings, obstacles, walls } = bowed(job, 1000);
		const middle = (1000 * Math.PI) / 2;
		expect(openings[0]?.from).toBeCloseTo(middle - 600, 2);
		expect(openings[0]?.to).toBeCloseTo(middle + 600, 2);
		expect(obstacles[0]?.from).toBeCloseTo(500 * SHARE - 43, 2);
		expect(obstacles[0]?.to).toBeCloseTo(500 * SHARE + 43, 2);
		expect(walls[0]?.noDrill[0]?.[0]).toBeCloseTo(middle - 100, 2);
		expect(walls[0]?.noDrill[0]?.[1]).toBeCloseTo(middle + 100, 2);
	});

	it("goes for track ends, joints and pins too, and nothing on another wall moves", () => {
		const after = bowed(job, -1000);
		expect(after.track.start?.at).toBeCloseTo(50 * SHARE, 2);
		expect((after.track.joints as readonly { readonly at: number }[])[0]?.at).toBeCloseTo(1500 * SHARE, 2);
		expect(after.track.brackets[0]?.at).toBeCloseTo(1200 * SHARE, 2);
		expect(after.track.brackets[1]).toEqual({ wall: 1, at: 300 });
		expect(after.track.end).toEqual({ wall: 1, at: 850 });
		expect(after.openings[1]).toEqual(job.bays[0]?.openings[1]);
	});

	it("stays on a face that is made shorter", () => {
		const long = jobOf(
			{ rise: 1000 },
			{ openings: [{ wall: 0, from: 20, to: 3120 }], track: { end: { wall: 0, at: 1000 * Math.PI } } },
		);
		const after = bowed(long, 0);
		expect(after.openings[0]).toMatchObject({ from: 0, to: 2000 });
		expect(after.track.end?.at).toBeLessThanOrEqual(2000);
		expect(after.track.end?.at).toBeCloseTo(2000, 2);
	});
});
