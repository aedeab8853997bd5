/** The job of the format's own description, every key written out. */
export const fullJob = () => ({
	format: "baywright-job",
	version: 1,
	title: "",
	site: "",
	notes: "",
	display: { length: "mm" },
	region: "GB",
	systems: [] as unknown[],
	cloths: [] as unknown[],
	prices: [{ item: "bracket", each: 2.4 }],
	spare: { brackets: 0, gliders: 10, fixings: 10, cord: 5, cloth: 0 },
	bays: [
		{
			id: "b1",
			name: "",
			corners: [
				[0, 0],
				[0, 900],
				[1800, 900],
				[1800, 0],
			],
			walls: [
				{ rise: 0, projection: null, surface: "unknown", noDrill: [[100, 200]] },
				{ rise: 0, projection: null, surface: "masonry", noDrill: [] as number[][] },
				{ rise: 0, projection: 60, surface: "unknown", noDrill: [] as number[][] },
			],
			ceiling: null,
			ceilingSurface: "unknown",
			readings: [
				{ kind: "run", wall: 0, value: 900, sd: null },
				{ kind: "diagonal", from: 0, to: 2, value: 2012, sd: null },
				{ kind: "angle", corner: 1, value: 90, sd: null },
				{ kind: "chord", corner: 1, arm: 300, value: 424.3, sd: null },
				{ kind: "rise", wall: 1, at: null, value: 0, sd: null },
				{ kind: "square", corner: 3, wall: 0, value: 1800, sd: null },
			] as Record<string, unknown>[],
			openings: [{ wall: 1, from: 150, to: 1650, sill: 600, head: 2050, sillDepth: 0 }],
			obstacles: [{ kind: "socket", wall: 0, from: 300, to: 386, bottom: 450, top: 536, depth: 10 }],
			track: {
				system: "light-corded",
				mounting: "wall",
				projection: null,
				radius: null,
				height: null,
				start: { wall: 0, at: 50 },
				end: { wall: 2, at: 850 },
				bends: [{ corner: 1, radius: 300 }],
				joints: "auto" as unknown,
				brackets: [{ wall: 1, at: 400 }],
				follow: "walls",
				draw: "pair",
				cordSide: "auto",
				cordLowest: null,
			},
			curtains: [
				{
					from: null,
					to: null,
					stacks: "auto",
					cloth: null as string | null,
					heading: "pencil",
					fullness: 2,
					drop: null,
				},
			] as Record<string, unknown>[],
			makeUp: {
				overlap: 100,
				returns: 0,
				ease: 0,
				widths: "whole",
				sideTurning: 60,
				headingTurning: 80,
				hemTurning: 200,
			},
			fitted: {
				brackets: [{ wall: 1, planned: 400, at: 412, projection: null }],
				spans: [{ from: { wall: 0, at: 700 }, to: { wall: 1, at: 350 }, value: 481 }],
				cut: [{ piece: "A", length: 1555 }],
				done: ["bracket-1"],
			},
		},
	],
});

/** Only what the format requires. */
export const leastJob = () => ({
	format: "baywright-job",
	version: 1,
	bays: [
		{
			id: "b1",
			corners: [
				[0, 0],
				[0, 900],
				[1800, 900],
				[1800, 0],
			],
		},
	],
});

/** Only what a track system requires. */
export const leastSystem = () => ({
	id: "s1",
	name: "Own",
	minRadius: { internal: 200, external: 250 },
	projection: { default: 50, min: 40, max: 90 },
	bracket: { maxSpacing: 400 },
	stock: [{ length: 3000 }],
});

/** A copy of `file` with the value at this path put in its place; undefined takes the key out. */
export const withValue = <File>(file: File, path: readonly (string | number)[], value: unknown): File => {
	const copy = structuredClone(file);
	const last = path.at(-1) as string;
	// biome-ignore lint/suspicious/noExplicitAny: the point is to put anything anywhere.
	const owner = path.slice(0, -1).reduce<any>((at, key) => at[key], copy);
	if (value === undefined) delete owner[last];
	else owner[last] = value;
	return copy;
};
