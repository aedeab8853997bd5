import { libraryOf, parseJob, planBay } from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { cableBands } from "../../../packages/app/src/elevation/cable-bands.ts";
import { heightsOf } from "../../../packages/app/src/elevation/heights.ts";
import { unroll } from "../../../packages/app/src/elevation/unrolled.ts";
import { marksOf } from "../../../packages/app/src/phone/marks.ts";

/** Walls of 900, 1800 and 900, unrolled from 0 to 3600; the corners stand at 900 and 2700. */
function drawn(more: object) {
	const corners = [
		[0, 0],
		[0, 900],
		[1800, 900],
		[1800, 0],
	];
	const parsed = parseJob({ format: "baywright-job", version: 1, bays: [{ id: "b", corners, ...more }] });
	if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
	const [bay] = parsed.job.bays;
	if (bay === undefined) throw new Error("no bay");
	const plan = planBay(bay, libraryOf(parsed.job));
	if (plan.chain === null) throw new Error("no walls");
	const unrolled = unroll(plan.chain);
	return { plan, bands: cableBands(bay, unrolled, heightsOf(bay, plan.height)) };
}

// BS 7671, regulation 522.6.202, read in secondary sources: 150 mm from the top of a wall and from the angle of two walls.
describe("bands where cables may run", () => {
	test("along the top only where the ceiling's height is given", () => {
		const { bands } = drawn({ ceiling: 2400 });
		expect(bands.filter(({ kind }) => kind === "wall-top")).toEqual([
			{ kind: "wall-top", from: 0, to: 3600, bottom: 2250, top: 2400 },
		]);
		expect(drawn({}).bands.filter(({ kind }) => kind === "wall-top")).toEqual([]);
	});

	test("either side of every corner, inside of both ends", () => {
		const corners = drawn({ ceiling: 2400 }).bands.filter(({ kind }) => kind === "corner");
		expect(corners.map(({ from, to }) => [from, to].map(Math.round))).toEqual([
			[0, 150],
			[750, 1050],
			[2550, 2850],
			[3450, 3600],
		]);
	});

	test("over, under and level with a switch, and none with a radiator", () => {
		const box = { wall: 1, from: 600, to: 680, bottom: 1200, top: 1280 };
		const of = (kind: string) =>
			drawn({ ceiling: 2400, obstacles: [{ kind, ...box }] })
				.bands.filter((band) => band.kind === "accessory")
				.map(({ from, to, bottom, top }) => [from, to, bottom, top].map(Math.round));
		expect(of("switch")).toEqual([
			[1500, 1580, 0, 2400],
			[900, 2700, 1200, 1280],
		]);
		expect(of("radiator")).toEqual([]);
	});

	test("a bracket that the plan puts in a zone for sure is drawn in a band, and no other", () => {
		const { plan, bands } = drawn({
			ceiling: 3000,
			track: { height: 2300, projection: 40, radius: 225 },
			obstacles: [{ kind: "socket", wall: 1, from: 700, to: 1100, bottom: 300, top: 386 }],
		});
		const starts = [0, 900, 2700];
		const drawnIn = plan.brackets.map(({ wall, fromLeftCorner }) => {
			const along = (starts[wall] as number) + fromLeftCorner;
			return bands.some(({ from, to, bottom, top }) => along >= from && along <= to && bottom <= 2300 && top >= 2300);
		});
		const beyondEnds = plan.brackets.map(({ wall, fromLeftCorner, fromRightCorner }) =>
			wall === 0 ? fromLeftCorner <= 150 : wall === 2 && fromRightCorner <= 150,
		);
		const sure = plan.fixings.map(({ zones }) => zones.some((zone) => zone.sure));
		expect(sure).toContain(true);
		expect(sure).toContain(false);
		expect(drawnIn).toEqual(sure.map((is, i) => is || beyondEnds[i]));
	});
});

test("the list of marks tells a bracket's zones; the top of the wall is told once where all lie there", () => {
	const cables = (more: object) =>
		marksOf(drawn(more).plan).flatMap((mark) => (mark.kind === "bracket" ? [mark.cables.map(({ kind }) => kind)] : []));
	const near = cables({ ceiling: 2400, track: { height: 2300 } });
	expect(near.flat()).not.toContain("wall-top");
	expect(near.flat()).toContain("corner");
	expect(cables({ ceiling: 3000, track: { height: 2300 } }).flat()).not.toContain("wall-top");
});
