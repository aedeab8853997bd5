import type { BayPlan, Finding } from "@baywright/setout";
import { planJob, planJson } from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { jobOf, planDrawn } from "../../properties/bays.ts";

/** Half of the angle that a bow turns through: chord and tangent enclose 2·atan(2h/c). */
const halfTurn = (chord: number, rise: number) => 2 * Math.atan((2 * rise) / chord);
const faceRadius = (chord: number, rise: number) => (chord ** 2 / 4 + rise ** 2) / (2 * rise);

const STRAIGHT = 900;

/** A straight wall, a bow away from the room and a straight wall again, each tangent to the next: no bends but the bow. */
function flanked(chord: number, rise: number, more: { readonly track?: object; readonly flank?: number } = {}) {
	const half = halfTurn(chord, rise);
	const flank = more.flank ?? STRAIGHT;
	const [x, y] = [flank * Math.cos(half), flank * Math.sin(half)];
	return {
		id: "b",
		corners: [
			[-x, -y],
			[0, 0],
			[chord, 0],
			[chord + x, -y],
		] as const,
		walls: [{}, { rise }, {}],
		openings: [],
		obstacles: [],
		track: { system: "light-corded", draw: "none", ...more.track },
	};
}

const named = (plan: BayPlan, code: Finding["code"]) => plan.findings.filter((finding) => finding.code === code);
const stations = ({ brackets }: BayPlan) => brackets.map(({ station }) => station);

// Light corded: projection 40, brackets 30 wide and at most 380 apart, 40 straight beside a bend, 800 across one, carried from radius 1000 on.

describe("a bow too tight for brackets", () => {
	const [chord, rise] = [500, 70];
	const sweep = (faceRadius(chord, rise) - 40) * 2 * halfTurn(chord, rise);

	test("carries none where the brackets beside it are near enough, half the straight off either end", () => {
		const plan = planDrawn(flanked(chord, rise));
		const from = STRAIGHT;
		const beside = stations(plan).filter((station) => station > from - 100 && station < from + sweep + 100);
		expect(beside).toHaveLength(2);
		expect(beside[0]).toBeCloseTo(from - 20, 4);
		expect(beside[1]).toBeCloseTo(from + sweep + 20, 4);
		expect(named(plan, "brackets-on-tight-bow")).toEqual([]);
		expect(named(plan, "bracket-gap-too-wide")).toEqual([]);
	});

	test("with bends at both ends hangs free with them, as one stretch", () => {
		const turned = (length: number): BayPlan =>
			planDrawn({
				id: "b",
				corners: [
					[0, 0],
					[0, 900],
					[length, 900],
					[length, 0],
				],
				walls: [{}, { rise: 60 }, {}],
				openings: [],
				obstacles: [],
				track: { system: "flexible" },
			});
		// The bow of 40 between two bends of 148: 336 in all and 20 for the brackets beside, of the 400 that the system allows.
		const short = turned(300);
		const bent = short.path?.segments.filter(({ kind }) => kind !== "straight") ?? [];
		expect(bent.map(({ kind }) => kind)).toEqual(["bend", "bow", "bend"]);
		const from = bent[0]?.start as number;
		const to = (bent[2]?.start as number) + (bent[2]?.length as number);
		expect(stations(short).some((station) => station > from && station < to)).toBe(false);
		expect(named(short, "brackets-too-far-across-bend")).toEqual([]);
	});

	test("carries brackets where it is too long to hang free, one on the straight at either end as well, and says so", () => {
		const plan = planDrawn(flanked(1600, 400));
		// Chord 1600 and rise 400: face of radius 1000, so the track has 960.
		const long = 960 * 2 * halfTurn(1600, 400);
		const on = stations(plan).filter((station) => station > STRAIGHT && station < STRAIGHT + long);
		expect(on.length).toBeGreaterThanOrEqual(4);
		const gaps = stations(plan).map((station, i, all) => station - (all[i - 1] ?? station));
		expect(Math.max(...gaps)).toBeLessThanOrEqual(380 + 1e-6);
		for (const beside of [STRAIGHT - 20, STRAIGHT + long + 20])
			expect(stations(plan).some((station) => Math.abs(station - beside) < 1e-4)).toBe(true);
		const [said, ...more] = named(plan, "brackets-on-tight-bow");
		expect(more).toEqual([]);
		expect(said?.figures).toMatchObject({ least: 1000, limit: 800, count: on.length });
		expect(said?.figures.radius).toBeCloseTo(960, 6);
		expect(said?.figures.gap).toBeCloseTo(long + 40, 4);
		// At radius 1000 the track would lie on the face itself, which no bracket reaches; flexible track carries from 400.
		const remedies = planJob(jobOf(flanked(1600, 400)))[0]?.findings.find(({ code }) => code === said?.code)?.remedies;
		expect(remedies?.map(({ figures }) => figures.system)).toContain("Flexible");
		expect(remedies?.map(({ action }) => action)).not.toContain("set-projection");
	});

	test("at the carrying radius is told nothing", () => {
		// Radius on the centre line 1000.4 and 999.6.
		const at = (rise: number) => named(planDrawn(flanked(1600, rise)), "brackets-on-tight-bow").length;
		const riseFor = (radius: number) => radius + 40 - Math.sqrt((radius + 40) ** 2 - 800 ** 2);
		expect(at(riseFor(1000.4))).toBe(0);
		expect(at(riseFor(999.6))).toBe(1);
	});
});

describe("the end of a track on a bow", () => {
	const alone = (system: string, rise: number) =>
		planDrawn({
			id: "b",
			corners: [
				[0, 0],
				[1800, 0],
			],
			walls: [{ rise }],
			openings: [],
			obstacles: [],
			track: { system },
		});

	test("is told with how far the end hardware stands off the curve", () => {
		for (const rise of [500, -500]) {
			const radius = faceRadius(1800, 500) - Math.sign(rise) * 40;
			const said = named(alone("light-corded", rise), "end-on-bow");
			expect(said.map(({ where }) => where.end)).toEqual(["left", "right"]);
			for (const { figures } of said) {
				expect(figures.radius).toBeCloseTo(radius, 6);
				// The middle of a chord of 100.
				expect(figures.off).toBeCloseTo(radius * (1 - Math.cos(Math.asin(50 / radius))), 6);
			}
		}
	});

	test("matters to no end hardware of a few millimetres", () => {
		expect(named(alone("fine-hand-drawn", 500), "end-on-bow")).toEqual([]);
	});

	test("still has its brackets, the first within reach of the cut end", () => {
		const { brackets, path } = alone("light-corded", 500);
		expect(brackets[0]?.station).toBeLessThanOrEqual(200);
		expect(brackets.at(-1)?.station).toBeGreaterThanOrEqual((path?.length as number) - 200);
	});
});

describe("straight track beside a bow", () => {
	const beginning = (straight: number) =>
		named(
			planDrawn(flanked(800, 200, { track: { system: "flexible", start: { wall: 0, at: STRAIGHT - straight } } })),
			"straight-beside-bow-short",
		);

	test("is needed as beside a bend", () => {
		// Flexible track wants 20 and its end hardware nothing; the track at 460 is over its carrying radius of 400.
		expect(beginning(15)).toEqual([]);
		const tight = (straight: number) =>
			named(
				planDrawn(flanked(400, 100, { track: { system: "flexible", start: { wall: 0, at: STRAIGHT - straight } } })),
				"straight-beside-bow-short",
			);
		expect(tight(15).map(({ figures }) => figures.needed)).toEqual([20]);
		expect(tight(15)[0]?.figures.length).toBeCloseTo(15, 6);
		expect(tight(20.01)).toEqual([]);
	});

	test("keeps a joint as far from the bow as from a bend", () => {
		const joined = (off: number) =>
			named(
				planDrawn(flanked(1600, 300, { track: { joints: [{ wall: 0, at: STRAIGHT - off }] } })),
				"joint-badly-placed",
			);
		// The system wants 150.
		expect(joined(149)).toHaveLength(1);
		expect(joined(151)).toEqual([]);
	});
});

describe("the marks of a bow", () => {
	test("are its start, middle and end, told apart from those of bends by its wall", () => {
		const plan = planDrawn(flanked(1600, 300));
		const radius = faceRadius(1600, 300) - 40;
		const sweep = radius * 2 * halfTurn(1600, 300);
		const marks = plan.pieces.flatMap((piece) => piece.marks).filter(({ bow }) => bow);
		expect(marks.map(({ kind, of }) => [kind, of])).toEqual([
			["bend-start", 1],
			["bend-middle", 1],
			["bend-end", 1],
		]);
		// End hardware takes 100 off the left end.
		[0, 0.5, 1].forEach((share, i) => {
			expect(marks[i]?.fromLeft).toBeCloseTo(STRAIGHT - 100 + share * sweep, 4);
		});
		expect(plan.bows).toHaveLength(1);
		expect(plan.bows[0]).toMatchObject({ wall: 1 });
		expect(plan.bows[0]?.radius).toBeCloseTo(radius, 6);
		expect(plan.bows[0]?.sweep).toBeCloseTo(sweep, 4);
		const written = planJson([plan], "mm").bays[0]?.pieces.flatMap((piece) => piece.marks) ?? [];
		const bent = written.filter(({ kind }) => kind.startsWith("bend"));
		expect(bent).toHaveLength(3);
		for (const mark of bent) expect(mark).toMatchObject({ where: { wall: 1 }, radius: plan.bows[0]?.radius });
	});

	test("stay on the piece where the bow runs past its cut ends", () => {
		const plan = planDrawn({
			id: "b",
			corners: [
				[0, 0],
				[1800, 0],
			],
			walls: [{ rise: 400 }],
			openings: [],
			obstacles: [],
			track: { system: "light-corded" },
		});
		const [piece] = plan.pieces;
		const cut = piece?.cutLength as number;
		const read = piece?.marks.filter(({ bow }) => bow).map(({ fromLeft }) => fromLeft) ?? [];
		expect(read[0]).toBeCloseTo(0, 9);
		expect(read[1]).toBeCloseTo(cut / 2, 6);
		expect(read[2]).toBeCloseTo(cut, 6);
	});
});

describe("one bend past several corners", () => {
	test("gives each corner its distance to the track: from the bend's centre, less the radius", () => {
		const plan = planDrawn({
			id: "b",
			corners: [
				[0, 0],
				[0, 800],
				[120, 920],
				[1500, 920],
				[1500, 0],
			],
			walls: [],
			openings: [],
			obstacles: [],
			track: { system: "heavy-hand-drawn" },
		});
		const bend = plan.path?.segments.find((segment) => segment.kind === "bend");
		if (bend?.kind !== "bend") throw new Error("no bend");
		expect(bend.corners).toEqual([1, 2]);
		for (const corner of bend.corners) {
			const at = plan.chain?.corners[corner] ?? { x: 0, y: 0 };
			const away = Math.hypot(at.x - bend.centre.x, at.y - bend.centre.y) - bend.radius;
			expect(plan.corners.find((set) => set.corner === corner)?.cornerGap).toBeCloseTo(away, 6);
		}
	});
});

describe("where a pair meets", () => {
	const meets = (left: number, right: number, more: object = {}) =>
		named(
			planDrawn({
				id: "b",
				corners: [
					[0, 0],
					[0, left],
					[right, left],
				],
				walls: [],
				openings: [],
				obstacles: [],
				track: { system: "light-corded", ...more },
			}),
			"overlap-on-bend",
		);
	// Set-back 350 at a right angle (common practice, no source): the middle lies (right − left)/2 − sweep/2 past the bend's end.
	const sweep = (310 * Math.PI) / 2;
	const right = (past: number) => 1200 + 2 * past + sweep;

	test("is the middle of the track, and half the straight that the overlap needs must lie to either side", () => {
		expect(meets(1500, 1500)).toMatchObject([{ where: { corner: 1 }, figures: { straight: 200, radius: 310 } }]);
		expect(meets(1200, right(99))).toHaveLength(1);
		expect(meets(1200, right(101))).toEqual([]);
	});

	test("is nowhere with a single curtain, or on a system that needs no straight there", () => {
		expect(meets(1500, 1500, { draw: "right" })).toEqual([]);
		expect(meets(1500, 1500, { system: "fine-hand-drawn" })).toEqual([]);
	});
});
