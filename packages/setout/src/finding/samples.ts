import type { FindingCode } from "./codes.ts";

/** The least that brings a finding about: a bay as in a job file, with a system of its own where it needs one. */
export interface FindingSample {
	readonly bay: Readonly<Record<string, unknown>>;
	readonly system?: Readonly<Record<string, unknown>>;
	/** Search nodes for the stock, where the search is to be cut short. */
	readonly stockNodes?: number;
}

/** A plain square bay, to which a sample adds what it needs. */
const SAMPLE_CORNERS = [
	[0, 0],
	[0, 1500],
	[2500, 1500],
	[2500, 0],
];

const SAMPLE_RUNS = [
	{ kind: "run", wall: 0, value: 1500 },
	{ kind: "run", wall: 1, value: 2500 },
	{ kind: "run", wall: 2, value: 1500 },
];

/** All but the right wall. */
const SAMPLE_DISTANCES = [
	...SAMPLE_RUNS.slice(0, 2),
	{ kind: "diagonal", from: 0, to: 2, value: Math.hypot(1500, 2500) },
	{ kind: "diagonal", from: 1, to: 3, value: Math.hypot(1500, 2500) },
	{ kind: "diagonal", from: 0, to: 3, value: 2500 },
	{ kind: "angle", corner: 1, value: 90 },
	{ kind: "angle", corner: 2, value: 90 },
];

const OWN = {
	id: "own",
	name: "Own",
	minRadius: { internal: 100, external: 100 },
	projection: { default: 40, min: 30, max: 100 },
	bracket: { maxSpacing: 400 },
	stock: [{ length: 6000 }],
	straightBesideBend: 0,
};

/** One for every finding there is: for the help, which draws each, and for the tests, which hold each to what it says. */
export const findingSamples: Readonly<Record<FindingCode, FindingSample>> = {
	"too-few-corners": { bay: { corners: [[0, 0]] } },
	// Two arms of 254 reach 508 at the most.
	"readings-cannot-settle": { bay: { readings: [{ kind: "chord", corner: 1, arm: 254, value: 600 }] } },
	"coordinate-out-of-range": {
		bay: {
			corners: [
				[0, 0],
				[100_001, 0],
			],
		},
	},
	"wall-too-short": {
		bay: {
			corners: [
				[0, 0],
				[0.5, 0],
				[900, 0],
			],
		},
	},
	"corner-folded": {
		bay: {
			corners: [
				[0, 0],
				[900, 0],
				[0, -10],
			],
		},
	},
	"walls-cross": {
		bay: {
			corners: [
				[0, 0],
				[0, 1000],
				[1000, 1000],
				[1000, 500],
				[-500, 500],
			],
		},
	},
	"bow-too-deep": { bay: { walls: [{ rise: 762 }] } },
	"bow-too-tight": {
		// Chord 600 and rise 200: face of radius 325, so the track along it has 198.
		bay: {
			corners: [
				[0, 0],
				[600, 0],
			],
			walls: [{ rise: 200 }],
			track: { projection: 127 },
		},
	},
	"legs-do-not-meet": {
		// The track along the straight wall passes further out than the one round the bow ever comes.
		bay: {
			corners: [
				[0, 0],
				[1500, 0],
				[3500, 0],
			],
			walls: [{ projection: 150 }, { rise: -50, projection: 30 }],
		},
	},
	"no-room-round-corner": {
		// Least projection 15 cos 45° + 225 (1 − cos 45°) = 76.5; greatest radius (40/cos 45° − 15)/(1/cos 45° − 1) = 100.4.
		bay: {
			corners: [
				[0, 0],
				[1000, 0],
				[1000, 1000],
			],
		},
	},
	"projection-out-of-range": { bay: { track: { projection: 254 } } },
	"projection-change-at-slight-turn": {
		bay: {
			corners: [
				[0, 0],
				[1000, 0],
				[2000, 10],
			],
			walls: [{ projection: 50.8 }],
		},
	},
	"end-off-wall": { bay: { track: { start: { wall: 0, at: 1524 } } } },
	"ends-reversed": { bay: { track: { start: { wall: 2, at: 500 }, end: { wall: 0, at: 500 } } } },
	"radius-below-least": { bay: { track: { bends: [{ corner: 1, radius: 203.2 }] } } },
	"radius-too-large": { bay: { track: { bends: [{ corner: 1, radius: 1524 }] } } },
	"leg-too-short": {
		bay: {
			corners: [
				[0, 0],
				[0, 1500],
				[508, 1500],
				[508, 0],
			],
		},
	},
	"end-too-near-corner": { bay: { track: { start: { wall: 0, at: 1270 } } } },
	"track-too-short": { bay: { track: { start: { wall: 1, at: 1000 }, end: { wall: 1, at: 1152.4 } } } },
	"track-too-near-wall": { bay: { track: { start: { wall: 1, at: 12.7 } } } },
	"track-crosses-itself": {
		// The last wall stops short of the first one, but the track along it runs on past the track along the first.
		bay: {
			corners: [
				[0, 0],
				[0, 2000],
				[2000, 2000],
				[2000, 1000],
				[50, 1000],
			],
			track: { system: "own" },
		},
		system: { ...OWN, projection: { default: 100, min: 30, max: 200 }, clearance: 1 },
	},
	"obstacle-in-the-way": { bay: { obstacles: [{ kind: "radiator", wall: 1, from: 1000, to: 1500, depth: 127 }] } },
	"piece-longer-than-stock": {
		bay: {
			corners: [
				[0, 0],
				[6452, 0],
			],
			track: { joints: "none" },
		},
	},
	"piece-too-short": {
		bay: {
			track: {
				joints: [
					{ wall: 1, at: 1200 },
					{ wall: 1, at: 1212.7 },
				],
			},
		},
	},
	"cannot-be-joined": { bay: { track: { system: "own", joints: [{ wall: 1, at: 1200 }] } }, system: OWN },
	// Everything as drawn but the right wall, which was read 101.6 short.
	"readings-disagree": { bay: { readings: [...SAMPLE_DISTANCES, { kind: "run", wall: 2, value: 1398.4 }] } },
	"cut-length-unsure": { bay: { readings: SAMPLE_RUNS } },
	// The track is some 5 m long: one is longer than needed, one far too short.
	"cut-piece-too-long": { bay: { fitted: { cut: [{ piece: "A", length: 5600 }] } } },
	"cut-piece-too-short": { bay: { fitted: { cut: [{ piece: "A", length: 4848 }] } } },
	// Bent with an inch more between the bends than the 2286.9 from middle to middle that are needed.
	"cut-piece-bends-apart": {
		bay: {
			fitted: {
				cut: [{ piece: "A", length: 4874 }],
				done: [
					"bend-1",
					"bend-1 radius 310 sweep 486.9 middle 1293.5 of A",
					"bend-2",
					"bend-2 radius 310 sweep 486.9 middle 3605.8 of A",
				],
			},
		},
	},
	"piece-not-in-plan": { bay: { fitted: { cut: [{ piece: "Q", length: 1270 }] } } },
	"bracket-off-projection": {
		bay: {
			fitted: {
				brackets: [
					{ wall: 0, planned: 400, at: 400, projection: 38.1 },
					{ wall: 0, planned: 800, at: 800, projection: 50.8 },
				],
			},
		},
	},
	"track-may-change": {
		// 40 off either side wall, two bends of at least 225 and 40 of straight beside each: 610.
		bay: {
			corners: [
				[0, 0],
				[0, 900],
				[611, 900],
				[611, 0],
			],
			readings: [
				{ kind: "run", wall: 0, value: 900 },
				{ kind: "run", wall: 1, value: 611 },
				{ kind: "run", wall: 2, value: 900 },
				{ kind: "diagonal", from: 0, to: 2, value: Math.hypot(900, 611) },
				{ kind: "diagonal", from: 1, to: 3, value: Math.hypot(900, 611) },
			],
		},
	},
	"radius-not-used": {
		bay: {
			corners: [
				[0, 0],
				[0, 1500],
				[1250, 1500],
				[2500, 1490],
				[2500, 0],
			],
			track: { bends: [{ corner: 2, radius: 254 }] },
		},
	},
	"joint-off-track": { bay: { track: { start: { wall: 1, at: 100 }, joints: [{ wall: 0, at: 254 }] } } },
	"joint-badly-placed": { bay: { track: { joints: [{ wall: 1, at: 400 }] } } },
	"pin-off-track": { bay: { track: { start: { wall: 1, at: 100 }, brackets: [{ wall: 0, at: 254 }] } } },
	"pin-where-no-bracket-goes": { bay: { track: { brackets: [{ wall: 1, at: 254 }] } } },
	"no-place-for-bracket": { bay: { walls: [{ noDrill: [[0, 1500]] }] } },
	"brackets-too-far-across-bend": {
		bay: { track: { system: "own" } },
		system: { ...OWN, preferredRadius: 300, bracket: { maxSpacing: 400, acrossBendMax: 254 } },
	},
	"bracket-out-of-reach": {
		// A facet of 100 between turns of 30°: bridged at radius 400 the bend stands 39 off the leg that follows it at 40.
		bay: {
			corners: [
				[0, 0],
				[1000, 0],
				[1086.6, -50],
				[1586.6, -916],
			],
			track: { system: "own" },
		},
		system: {
			...OWN,
			minRadius: { internal: 400, external: 400 },
			projection: { default: 40, min: 30, max: 45 },
			bracket: { maxSpacing: 100, carryRadius: 300 },
		},
	},
	"bracket-gap-too-wide": { bay: { walls: [{}, { noDrill: [[1000, 1508]] }] } },
	"brackets-on-tight-bow": {
		// Chord 2500 and rise 600: face of radius 1602, so the track along it has 1512 at a projection of 90, and 1524 at 78.
		bay: { walls: [{}, { rise: 600 }, {}], track: { system: "own", projection: 90 } },
		system: { ...OWN, bracket: { maxSpacing: 400, acrossBendMax: 508, carryRadius: 1524 } },
	},
	"straight-beside-bow-short": {
		// Chord 800 and rise 200: the bow starts at 53.13° to its chord, the way that the first wall runs.
		bay: {
			corners: [
				[-300, -400],
				[0, 0],
				[800, 0],
			],
			walls: [{}, { rise: 200 }],
			track: { system: "own", start: { wall: 0, at: 474.6 } },
		},
		system: { ...OWN, straightBesideBend: 38.1 },
	},
	"end-on-bow": {
		bay: {
			corners: [
				[0, 0],
				[2500, 0],
			],
			walls: [{ rise: 700 }],
		},
	},
	"overlap-on-bend": {
		bay: {
			corners: [
				[0, 0],
				[0, 1500],
				[1500, 1500],
			],
		},
	},
	"bracket-overloaded": {
		bay: {
			corners: [
				[0, 0],
				[2900, 0],
			],
			track: { system: "own", draw: "left" },
			curtains: [{ cloth: "heavy-interlined", fullness: 2.5, drop: 2000 }],
		},
		system: { ...OWN, bracket: { maxSpacing: 400, maxLoad: 7 } },
	},
	"load-not-checked": {
		bay: { track: { system: "own" }, curtains: [{ cloth: "medium-cotton", drop: 2000 }] },
		system: OWN,
	},
	"mass-not-known": {
		bay: {
			curtains: [
				{ to: 2400, cloth: "medium-cotton", drop: 2000 },
				{ from: 2400, drop: 2000 },
			],
		},
	},
	// A heavy curtain drawn back to where the track hangs 400 past its end bracket, of which two carry it.
	"bracket-lifts": {
		bay: {
			corners: [
				[0, 0],
				[2000, 0],
			],
			track: { system: "own", draw: "left" },
			curtains: [{ cloth: "heavy-interlined", drop: 2400 }],
		},
		system: { ...OWN, bracket: { maxSpacing: 1200, endMax: 800 } },
	},
	"leading-edges-on-bend": {
		bay: {
			corners: [
				[0, 0],
				[0, 1500],
				[1500, 1500],
			],
			track: { system: "own" },
			curtains: [{ to: 1435 }, { from: 1435 }],
		},
		system: OWN,
	},
	"stack-on-bend": {
		// Some 2600 of track takes 6500 of cloth, packed at 80 mm a metre to 520, on a left wall of 254.
		bay: {
			corners: [
				[0, 0],
				[0, 254],
				[2540, 254],
			],
			track: { system: "own", draw: "left" },
			curtains: [{ fullness: 2.5 }],
		},
		system: OWN,
	},
	// 1 m of track takes 2.2 m of cloth with its overlaps, packed at 480 mm a metre to 1056; in one, without an overlap, to 960.
	"stacks-meet": {
		bay: {
			corners: [
				[0, 0],
				[1000, 0],
			],
			track: { system: "own" },
			curtains: [{ heading: "goblet" }],
		},
		system: { ...OWN, packing: { goblet: 480 } },
	},
	"stack-overhangs": {
		bay: {
			corners: [
				[0, 0],
				[1000, 0],
			],
			track: { system: "own", draw: "left" },
			curtains: [{ heading: "goblet" }],
			makeUp: { overlap: 0 },
		},
		system: { ...OWN, packing: { goblet: 508 } },
	},
	"curtain-off-track": {
		bay: {
			corners: [
				[0, 0],
				[2500, 0],
			],
			curtains: [{ to: 2540 }],
		},
	},
	"curtains-not-hung": {
		bay: {
			corners: [
				[0, 0],
				[2500, 0],
			],
			track: { draw: "none" },
			curtains: [{}],
		},
	},
	"curtains-overlap": {
		bay: {
			corners: [
				[0, 0],
				[2500, 0],
			],
			curtains: [{ to: 1327 }, { from: 1200 }],
		},
	},
	"curtain-touches-behind": {
		// Gliders 80 apart at 2.5 times: folds of 80 · √(2.5² − 1) = 183.3, a quarter of it behind the track, which is 40 off the wall.
		bay: {
			corners: [
				[0, 0],
				[2500, 0],
			],
			track: { system: "own" },
			curtains: [{ fullness: 2.5 }],
		},
		system: OWN,
	},
	"unusual-figure": {
		bay: {
			corners: [
				[0, 0],
				[2500, 0],
			],
			track: { projection: 100 },
			curtains: [{ drop: 10_000 }],
		},
	},
	"bow-to-be-bent": { bay: { walls: [{}, { rise: 150 }, {}] } },
	"no-smoother-track": { bay: { walls: [{ rise: 50 }, { rise: 50 }, { rise: 50 }], track: { follow: "smoothest" } } },
	"smoothest-is-worse": {
		// The wider bend ends where the wall takes no hole, so that the bracket beside it has no place.
		bay: { walls: [{}, { noDrill: [[220, 600]] }], track: { system: "own", follow: "smoothest" } },
		system: { ...OWN, preferredRadius: 100, bracket: { maxSpacing: 800 } },
	},
	"stock-not-proved-best": {
		bay: {
			corners: [
				[0, 0],
				[90_000, 0],
			],
			// Pieces from 450 to 1350, all different, so that a great many ways to cut them are worth a try.
			track: {
				system: "own",
				joints: Array.from({ length: 99 }, (_, i) => ({ wall: 0, at: 450 * (i + 1) + 4.5 * i * i })),
			},
		},
		system: { ...OWN, joint: { clearOfBend: 0 }, stock: [{ length: 1777 }, { length: 2311 }, { length: 3001 }] },
		stockNodes: 1,
	},
	// The front wall is 2500 long with its ceiling 100 over the track; the left wall's socket stands under a hole.
	"cord-against-advice": { bay: { track: { height: 2200, cordLowest: 900 } } },
	"holes-in-cable-zones": {
		bay: {
			ceiling: 2400,
			track: { height: 2300 },
			obstacles: [{ kind: "socket", wall: 0, from: 0, to: 1500, bottom: 450, top: 536 }],
		},
	},
};

/** A sample as a job file. */
export function sampleJob({ bay, system }: FindingSample): unknown {
	return {
		format: "baywright-job",
		version: 1,
		systems: system === undefined ? [] : [system],
		bays: [{ id: "sample", corners: SAMPLE_CORNERS, ...bay }],
	};
}
