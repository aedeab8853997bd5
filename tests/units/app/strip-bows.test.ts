import { libraryOf, parseJob, planBay } from "@baywright/setout";
import { describe, expect, it } from "vitest";
import { bendsOf, radiiOf } from "../../../packages/app/src/strip/bends.ts";
import { stripFigures } from "../../../packages/app/src/strip/figures.ts";
import { pieceOf } from "../../../packages/app/src/strip/one-piece.ts";

const measure = (text: string): number => text.length * 8;

/** A bow between two straight walls, the track bent at both corners and along the bow. */
function planOf(track: object) {
	const parsed = parseJob({
		format: "baywright-job",
		version: 1,
		bays: [
			{
				id: "b",
				corners: [
					[0, 0],
					[0, 900],
					[2400, 900],
					[2400, 0],
				],
				walls: [{}, { rise: 200 }, {}],
				track,
			},
		],
	});
	const bay = parsed.ok ? parsed.job.bays[0] : undefined;
	if (!parsed.ok || bay === undefined) throw new Error("not a job");
	return planBay(bay, libraryOf(parsed.job));
}

const plan = planOf({ system: "fine-hand-drawn" });
const place = ({ piece, mm }: { readonly piece: number; readonly mm: number }) => piece * 10_000 + mm;

describe("a bow on the strip", () => {
	it("is hatched from its start to its end, between the bends beside it", () => {
		const stretches = bendsOf({ plan, place });
		expect(stretches.map(({ bow, of }) => [bow, of])).toEqual([
			[false, 1],
			[true, 1],
			[false, 2],
		]);
		const [before, bow, after] = stretches as [(typeof stretches)[0], (typeof stretches)[0], (typeof stretches)[0]];
		const { endTakeUp } = plan.system;
		expect(bow.left).toBeCloseTo((plan.bows[0]?.from as number) - endTakeUp, 6);
		expect(bow.right).toBeCloseTo((plan.bows[0]?.to as number) - endTakeUp, 6);
		expect(bow.centre).toBeCloseTo((bow.left + bow.right) / 2, 6);
		expect(before.right).toBeCloseTo(bow.left, 6);
		expect(after.left).toBeCloseTo(bow.right, 6);
	});

	it("goes on over a joint, its middle on one piece only", () => {
		const joined = planOf({ system: "fine-hand-drawn", joints: [{ wall: 1, at: 900 }] });
		const bows = bendsOf({ plan: joined, place }).filter(({ bow }) => bow);
		expect(bows).toHaveLength(2);
		expect(bows[0]?.right).toBeCloseTo(joined.pieces[0]?.cutLength as number, 6);
		expect(bows[1]?.left).toBe(10_000);
		expect(bows.map(({ centre }) => centre === null)).toEqual([true, false]);
		const long = bows.reduce((sum, { left, right }) => sum + right - left, 0);
		expect(long).toBeCloseTo(joined.bows[0]?.sweep as number, 6);
	});

	it("shares the reading where a bend goes over into it", () => {
		const { above } = stripFigures(plan, "mm", "left", place, measure);
		const wants = above.map(({ want }) => want);
		// Three stretches end to end have four ends and three middles.
		expect(wants).toHaveLength(7);
		expect(wants.every((want, i) => i === 0 || want > (wants[i - 1] as number) + 1)).toBe(true);
		expect(above.map(({ of }) => of?.kind)).toEqual(["bend", "bend", "bend", "bow", "bow", "bend", "bend"]);
	});

	it("is on the piece that is shown when it is chosen", () => {
		expect(pieceOf(plan, { kind: "bow", index: 1 })).toBe(0);
		expect(pieceOf(plan, { kind: "bow", index: 0 })).toBeNull();
	});
});

describe("a radius in the hatch", () => {
	const brackets = plan.brackets.map(({ station }) => station - plan.system.endTakeUp);

	it("stands clear of the bend's ends, its middle and every bracket", () => {
		const radii = radiiOf({ plan, place }, brackets, "mm", measure);
		expect(radii.map(({ text }) => text)).toContain(`R ${Math.round(plan.bows[0]?.radius as number)}`);
		const marks = [
			...brackets,
			...bendsOf({ plan, place }).flatMap(({ left, right, centre }) => [left, right, centre ?? left]),
		];
		for (const { left, half } of radii)
			for (const mark of marks) expect(Math.abs(mark - left)).toBeGreaterThanOrEqual(half + 6);
	});

	it("is left out where there is no room for it", () => {
		const wide = (text: string): number => text.length * 200;
		expect(radiiOf({ plan, place }, brackets, "mm", wide)).toEqual([]);
	});
});
