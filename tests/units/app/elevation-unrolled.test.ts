import { type Bay, libraryOf, planBay } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import { heightsOf } from "../../../packages/app/src/elevation/heights.ts";
import { rungsOf } from "../../../packages/app/src/elevation/ladder.ts";
import { elevationOf } from "../../../packages/app/src/elevation/scene.ts";
import { stationAlong, stationAt, type TrackRun } from "../../../packages/app/src/elevation/track-run.ts";
import { elevated, jobOf, SQUARE } from "./elevation-job.ts";

describe("walls unrolled", () => {
	it("stand side by side, each by the length of its face", () => {
		const { unrolled } = elevated(jobOf({ corners: SQUARE }));
		expect(unrolled.corners.map(({ at }) => at)).toEqual([0, 900, 2700, 3600]);
		expect(unrolled.corners.map(({ kind }) => kind)).toEqual(["end", "internal", "internal", "end"]);
		expect(unrolled.length).toBe(3600);
	});

	it("a bowed wall is as long as its arc, not as its chord", () => {
		// Rise 300 over a chord of 1800: ρ = (900² + 300²)/600 = 1500, half angle asin(900/1500); arc = 2·1500·0.6435 = 1930.5.
		const arc = 2 * 1500 * Math.asin(0.6);
		const { unrolled } = elevated(jobOf({ corners: SQUARE, walls: [{}, { rise: 300 }, {}] }));
		expect(unrolled.corners[2]?.at).toBeCloseTo(900 + arc, 6);
		expect(unrolled.length).toBeCloseTo(1800 + arc, 6);
	});

	it("tells external corners from internal ones, with the room angle", () => {
		const pier = [
			[0, 0],
			[1500, 0],
			[1500, -400],
			[2500, -400],
			[2500, 0],
			[4000, 0],
		];
		const { unrolled } = elevated(jobOf({ corners: pier }));
		expect(unrolled.corners.map(({ kind }) => kind)).toEqual([
			"end",
			"internal",
			"external",
			"external",
			"internal",
			"end",
		]);
		expect(unrolled.corners.slice(1, -1).map(({ angle }) => Math.round(angle))).toEqual([90, 270, 270, 90]);
	});
});

describe("the track on the unrolled walls", () => {
	// Square corners, projection 40, radius 310: the bend starts and ends 350 from the corner along either face (design.md 5).
	const track = {
		system: "light-corded",
		projection: 40,
		radius: 310,
		start: { wall: 0, at: 50 },
		end: { wall: 2, at: 850 },
	};
	const { run, plan } = elevated(jobOf({ corners: SQUARE, track }));

	it("starts and ends where it does on its walls, and bends from set-back to set-back", () => {
		expect(run?.from).toBeCloseTo(50, 6);
		expect(run?.to).toBeCloseTo(3550, 6);
		expect(run?.bends.map(({ of, from, to }) => [of, Math.round(from), Math.round(to)])).toEqual([
			[1, 550, 1250],
			[2, 2350, 3050],
		]);
	});

	it("the middle of a bend is seen at its corner, and nothing ever runs back", () => {
		if (run === null) throw new Error("no track");
		// 500 to the first bend, whose sweep is 310·π/2.
		expect(stationAlong(run, 500 + (310 * Math.PI) / 4)).toBeCloseTo(900, 6);
		let last = -1;
		for (let i = 0; i <= 200; i++) {
			const along = stationAlong(run, ((plan.path?.length ?? 0) * i) / 200);
			expect(along).toBeGreaterThanOrEqual(last);
			last = along;
		}
	});

	it("round a pier it never runs back either", () => {
		const corners = [
			[0, 0],
			[1450, 0],
			[1450, -420],
			[2750, -420],
			[2750, 0],
			[4150, 0],
		];
		const pier = elevated(jobOf({ corners, track: { system: "flexible", projection: 60 } }));
		const knots = pier.run?.knots ?? [];
		expect(knots.length).toBeGreaterThan(4);
		knots.forEach(({ along }, i) => {
			expect(along).toBeGreaterThanOrEqual(knots[i - 1]?.along ?? 0);
			expect(along).toBeLessThanOrEqual(pier.unrolled.length);
		});
	});
});

describe("curtains on the elevation", () => {
	it("a pair drawn meets in the middle of the track; pushed back they take up their stacks", () => {
		const job = jobOf({ corners: SQUARE });
		const closed = elevated(job, "closed");
		expect(closed.hanging.map(({ from, to }) => [Math.round(from), Math.round(to)])).toEqual([
			[0, 1800],
			[1800, 3600],
		]);
		const open = elevated(job, "open");
		expect(open.hanging[0]?.from).toBeCloseTo(0, 6);
		expect(open.hanging[0]?.to).toBeCloseTo(open.plan.stackBack[0]?.to ?? 0, 6);
	});

	it("hang as far as their drop says, and where the job has curtains of its own, from where to where it says", () => {
		const bay = {
			corners: SQUARE,
			track: { height: 2200 },
			curtains: [
				{ from: 0, to: 400, drop: 1500 },
				{ from: 400, to: null },
			],
		};
		const { hanging, heights } = elevated(jobOf(bay), "closed");
		expect(heights.hem).toEqual({ mm: 700, known: "given" });
		expect(hanging.map(({ from }) => Math.round(from))).toEqual([0, 400]);
	});

	it("opened by half, their leading edges hang half-way between drawn and pushed back", () => {
		const job = jobOf({ corners: SQUARE });
		const bay = job.bays[0] as Bay;
		const half = elevationOf(bay, planBay(bay, libraryOf(job)), "mm", () => 0.5);
		const [left] = half?.hanging ?? [];
		const [drawn, back] = [elevated(job, "closed").hanging[0], elevated(job, "open").hanging[0]];
		const stack = half?.plan.stackBack[0]?.to ?? 0;
		const middle = (half?.plan.path?.length ?? 0) / 2;
		expect(left?.leading).toBeCloseTo(stationAlong(half?.run as TrackRun, (stack + middle) / 2), 6);
		expect(left?.leading).toBeLessThan(drawn?.leading ?? 0);
		expect(left?.leading).toBeGreaterThan(back?.leading ?? Number.POSITIVE_INFINITY);
	});

	it("a place along the faces leads back to the station of the track seen there", () => {
		const { run, plan } = elevated(jobOf({ corners: SQUARE }));
		for (let station = 0; station <= (plan.path?.length ?? 0); station += 97)
			expect(stationAt(run as TrackRun, stationAlong(run as TrackRun, station))).toBeCloseTo(station, 6);
	});

	it("there are none where nothing is drawn", () => {
		expect(elevated(jobOf({ corners: SQUARE, track: { draw: "none" } }), "closed").hanging).toEqual([]);
	});
});

describe("heights", () => {
	const bay = (more: object) => jobOf({ corners: SQUARE, ...more }).bays[0] as Parameters<typeof heightsOf>[0];

	it("what nobody has said is drawn all the same, and says so", () => {
		const heights = heightsOf(bay({}), null);
		expect(heights.ceiling.known).toBe("assumed");
		expect(heights.track.known).toBe("assumed");
		expect(heights.ceiling.mm).toBeGreaterThan(heights.track.mm);
		const rungs = rungsOf(elevated(jobOf({ corners: SQUARE })));
		expect(rungs.map(({ name, figure }) => `${name} ${figure}`)).toEqual([
			"ceiling not given",
			"track not given",
			"floor 0",
		]);
	});

	it("a ceiling that is not given is drawn above all that is known", () => {
		const heights = heightsOf(bay({ openings: [{ wall: 1, from: 0, to: 900, sill: 600, head: 2700 }] }), 2800);
		expect(heights.ceiling.mm).toBeGreaterThan(2800);
		expect(heights.track).toEqual({ mm: 2800, known: "derived" });
	});

	it("a track is assumed under a low ceiling that is given", () => {
		const { track } = heightsOf(bay({ ceiling: 1900 }), null);
		expect(track.known).toBe("assumed");
		expect(track.mm).toBeLessThan(1900);
	});

	it("an obstacle without bottom and top goes from floor to ceiling", () => {
		const obstacles = [{ kind: "pipe", wall: 0, from: 10, to: 40, bottom: null, top: null }];
		const heights = heightsOf(bay({ ceiling: 2500, obstacles }), null);
		expect(heights.obstacles[0]?.bottom.mm).toBe(0);
		expect(heights.obstacles[0]?.top.mm).toBe(2500);
	});

	it("each height is told once, from the top down", () => {
		const opening = (wall: number, sill: number) => ({ wall, from: 100, to: 800, sill, head: 2050 });
		const rungs = rungsOf(
			elevated(
				jobOf({ corners: SQUARE, ceiling: 2500, openings: [opening(0, 620), opening(1, 620), opening(2, 900)] }),
			),
		);
		expect(rungs.map(({ name, figure }) => `${name} ${figure}`)).toEqual([
			"ceiling 2500",
			"track 2150",
			"head 2050",
			"sill 900",
			"sill 620",
			"floor 0",
		]);
	});
});
