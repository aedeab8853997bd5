import { describe, expect, test } from "vitest";
import { fewestByProgramme, leastGapOnGrid } from "../../oracles/bracket-programme.ts";
import { planDrawn } from "../../properties/bays.ts";

/** mm between the places that the integer programme may choose from. */
const GRID = 10;

const SYSTEM = {
	id: "own",
	name: "Own",
	minRadius: { internal: 100, external: 100 },
	projection: { default: 40, min: 30, max: 100 },
	// End brackets 50 in from the cut ends: on the grid.
	bracket: { maxSpacing: 400, endMax: 100, width: 40 },
	stock: [{ length: 9000 }],
};

/** Stretches along one straight wall that take no hole; all figures on the grid. */
const tracks = [
	{ length: 2500, noDrill: [] },
	{ length: 3100, noDrill: [[440, 480]] },
	{
		length: 4000,
		noDrill: [
			[400, 760],
			[1500, 1700],
			[2900, 3280],
		],
	},
	{
		length: 3600,
		noDrill: [
			[430, 470],
			[830, 870],
			[1230, 1270],
			[2000, 2390],
		],
	},
	{
		length: 5200,
		noDrill: [
			[300, 600],
			[700, 1000],
			[1100, 1400],
			[3000, 3050],
			[3400, 3450],
		],
	},
	{
		length: 2870,
		noDrill: [
			[460, 800],
			[870, 1250],
			[1310, 1690],
		],
	},
	{
		length: 6000,
		noDrill: [
			[250, 640],
			[1430, 1450],
			[2210, 2600],
			[4000, 4010],
			[5200, 5590],
		],
	},
];

describe("brackets of a whole straight track, left to the plan", () => {
	test.each(tracks)(
		"$length long with $noDrill closed: as few and as even as an integer programme finds",
		({ length, noDrill }) => {
			const plan = planDrawn(
				{
					id: "b",
					corners: [
						[0, 0],
						[length, 0],
					],
					walls: [{ noDrill }],
					track: { system: "own" },
				},
				[SYSTEM],
			);
			// Of no height given, its holes may lie where cables run.
			expect(plan.findings.map(({ code }) => code)).toEqual(["holes-in-cable-zones"]);
			const stations = plan.brackets.map(({ station }) => station);
			const from = stations[0] as number;
			const to = stations.at(-1) as number;
			expect([from, to]).toEqual([50, length - 50]);

			const end = (to - from) / GRID;
			const free = Array.from({ length: end + 1 }, (_, i) => {
				const at = from + i * GRID;
				return noDrill.every(([low, high]) => at <= (low as number) || at >= (high as number));
			});
			const grid = { end, spacing: SYSTEM.bracket.maxSpacing / GRID, least: SYSTEM.bracket.width / GRID, free };
			const fewest = fewestByProgramme(grid);
			expect(stations).toHaveLength((fewest as number) + 2);

			const widest = Math.max(...stations.slice(1).map((station, i) => station - (stations[i] as number)));
			const onGrid = leastGapOnGrid(grid, fewest as number) * GRID;
			// Off the grid it can only be better, and by no more than the grid is coarse.
			expect(widest).toBeLessThan(onGrid + 1e-6);
			expect(widest).toBeGreaterThan(onGrid - GRID);
		},
	);
});
