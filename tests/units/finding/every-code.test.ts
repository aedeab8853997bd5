import {
	applyChange,
	type FindingCode,
	describe as inWords,
	type LengthUnit,
	libraryOf,
	planBay,
	planJob,
	severities,
} from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { bayOf, jobOf } from "../../properties/bays.ts";

/** The least that brings a finding about, beside a plain square bay: 1500, 2500, 1500. */
interface Case {
	readonly bay: Readonly<Record<string, unknown>>;
	readonly system?: Readonly<Record<string, unknown>>;
	/** Cures that must be offered. */
	readonly remedies: readonly string[];
	/** Figures that must be read in the sentence, in mm, cm and inches. */
	readonly says: readonly (readonly [mm: string, cm: string, inches: string])[];
	/** Search nodes for the stock, where the search is to be cut short. */
	readonly stockNodes?: number;
}

const CORNERS = [
	[0, 0],
	[0, 1500],
	[2500, 1500],
	[2500, 0],
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

const cases: Record<FindingCode, Case> = {
	"too-few-corners": {
		bay: { corners: [[0, 0]] },
		remedies: [],
		says: [["two corners", "two corners", "two corners"]],
	},
	"coordinate-out-of-range": {
		bay: {
			corners: [
				[0, 0],
				[100_001, 0],
			],
		},
		remedies: [],
		says: [["100001 mm", "10000.1 cm", "3937"]],
	},
	"wall-too-short": {
		bay: {
			corners: [
				[0, 0],
				[0.5, 0],
				[900, 0],
			],
		},
		remedies: [],
		says: [["0.5 mm", "0.05 cm", '"']],
	},
	"corner-folded": {
		bay: {
			corners: [
				[0, 0],
				[900, 0],
				[0, -10],
			],
		},
		remedies: [],
		says: [["0.6°", "0.6°", "0.6°"]],
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
		remedies: [],
		says: [["wall left end–1", "wall left end–1", "wall left end–1"]],
	},
	"bow-too-deep": {
		bay: { walls: [{ rise: 762 }] },
		remedies: ["set-rise"],
		says: [
			["762.0 mm", "76.20 cm", '30"'],
			["750 mm", "75.0 cm", '29 1/2"'],
		],
	},
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
		remedies: ["set-projection", "use-system"],
		says: [
			["198 mm", "19.8 cm", '7 13/16"'],
			["225 mm", "22.5 cm", '8 7/8"'],
		],
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
		remedies: [],
		says: [["corner 1", "corner 1", "corner 1"]],
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
		remedies: ["set-projection", "use-system", "end-at-corner"],
		says: [
			["77 mm", "7.7 cm", '3 1/16"'],
			["100 mm", "10.0 cm", '3 15/16"'],
			["225 mm", "22.5 cm", '8 7/8"'],
			["15 mm", "1.5 cm", '9/16"'],
		],
	},
	"projection-out-of-range": {
		bay: { track: { projection: 254 } },
		remedies: ["set-projection"],
		says: [
			["254 mm", "25.4 cm", '10"'],
			["150 mm", "15.0 cm", '5 7/8"'],
		],
	},
	"projection-change-at-slight-turn": {
		bay: {
			corners: [
				[0, 0],
				[1000, 0],
				[2000, 10],
			],
			walls: [{ projection: 50.8 }],
		},
		remedies: ["set-wall-projection"],
		says: [
			["51 mm", "5.1 cm", '2"'],
			["-0.6°", "-0.6°", "-0.6°"],
		],
	},
	"end-off-wall": {
		bay: { track: { start: { wall: 0, at: 1524 } } },
		remedies: ["track-to-end-of-bay"],
		says: [["1524 mm", "152.4 cm", '60"']],
	},
	"ends-reversed": {
		bay: { track: { start: { wall: 2, at: 500 }, end: { wall: 0, at: 500 } } },
		remedies: ["track-to-end-of-bay"],
		says: [["right", "right", "right"]],
	},
	"radius-below-least": {
		bay: { track: { bends: [{ corner: 1, radius: 203.2 }] } },
		remedies: ["set-radius", "release-radius"],
		says: [
			["203 mm", "20.3 cm", '8"'],
			["225 mm", "22.5 cm", '8 7/8"'],
		],
	},
	"radius-too-large": {
		bay: { track: { bends: [{ corner: 1, radius: 1524 }] } },
		remedies: ["set-radius", "release-radius"],
		says: [
			["1524 mm", "152.4 cm", '60"'],
			["1320 mm", "132.0 cm", '51 15/16"'],
		],
	},
	"leg-too-short": {
		bay: {
			corners: [
				[0, 0],
				[0, 1500],
				[508, 1500],
				[508, 0],
			],
		},
		remedies: ["use-system"],
		says: [
			["508 mm", "50.8 cm", '20"'],
			["610 mm", "61.0 cm", '24"'],
		],
	},
	"track-too-near-wall": {
		bay: { track: { start: { wall: 1, at: 12.7 } } },
		remedies: [],
		says: [["12.7 mm", "1.27 cm", '1/2"']],
	},
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
		remedies: [],
		says: [["track", "track", "track"]],
	},
	"obstacle-in-the-way": {
		bay: { obstacles: [{ kind: "radiator", wall: 1, from: 1000, to: 1500, depth: 127 }] },
		remedies: ["set-projection"],
		says: [["127 mm", "12.7 cm", '5"']],
	},
	"piece-longer-than-stock": {
		bay: {
			corners: [
				[0, 0],
				[6452, 0],
			],
			track: { joints: "none" },
		},
		remedies: ["joints-auto"],
		says: [
			["6252 mm", "625.2 cm", '246 1/8"'],
			["6000 mm", "600.0 cm", '236 1/4"'],
		],
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
		remedies: ["joints-auto"],
		says: [["12.7 mm", "1.27 cm", '1/2"']],
	},
	"cannot-be-joined": {
		bay: { track: { system: "own", joints: [{ wall: 1, at: 1200 }] } },
		system: OWN,
		remedies: ["no-joints"],
		says: [["has no joints", "has no joints", "has no joints"]],
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
		remedies: ["release-radius"],
		says: [["254 mm", "25.4 cm", '10"']],
	},
	"joint-off-track": {
		bay: { track: { start: { wall: 1, at: 100 }, joints: [{ wall: 0, at: 254 }] } },
		remedies: ["remove-joint"],
		says: [["254 mm", "25.4 cm", '10"']],
	},
	"joint-badly-placed": {
		bay: { track: { joints: [{ wall: 1, at: 400 }] } },
		remedies: ["move-joint", "remove-joint"],
		says: [["150 mm", "15.0 cm", '5 7/8"']],
	},
	"pin-off-track": {
		bay: { track: { start: { wall: 1, at: 100 }, brackets: [{ wall: 0, at: 254 }] } },
		remedies: ["release-bracket"],
		says: [["254 mm", "25.4 cm", '10"']],
	},
	"pin-where-no-bracket-goes": {
		bay: { track: { brackets: [{ wall: 1, at: 254 }] } },
		remedies: ["move-bracket", "release-bracket"],
		says: [["254 mm", "25.4 cm", '10"']],
	},
	"no-place-for-bracket": {
		bay: { walls: [{ noDrill: [[0, 1500]] }] },
		remedies: [],
		says: [["left wall", "left wall", "left wall"]],
	},
	"brackets-too-far-across-bend": {
		bay: { track: { system: "own" } },
		system: { ...OWN, preferredRadius: 300, bracket: { maxSpacing: 400, acrossBendMax: 254 } },
		remedies: [],
		says: [["254 mm", "25.4 cm", '10"']],
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
		remedies: [],
		says: [["45 mm", "4.5 cm", '1 3/4"']],
	},
	"bracket-gap-too-wide": {
		bay: { walls: [{}, { noDrill: [[1000, 1508]] }] },
		remedies: [],
		says: [
			["508 mm", "50.8 cm", '20"'],
			["380 mm", "38.0 cm", '14 15/16"'],
		],
	},
	"no-smoother-track": {
		bay: { walls: [{ rise: 50 }, { rise: 50 }, { rise: 50 }], track: { follow: "smoothest" } },
		remedies: [],
		says: [["follows the walls", "follows the walls", "follows the walls"]],
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
		remedies: [],
		says: [[" mm", " cm", '"']],
	},
	"kept-for-later": {
		bay: { readings: [{ kind: "run", wall: 0, value: 1500 }], ceiling: 2400 },
		remedies: [],
		says: [["readings, ceiling", "readings, ceiling", "readings, ceiling"]],
	},
};

function caseOf(code: FindingCode) {
	const { bay, system, stockNodes } = cases[code];
	const job = jobOf({ id: "b", corners: CORNERS, ...bay }, system === undefined ? [] : [system]);
	const plan = planBay(bayOf(job), libraryOf(job), stockNodes === undefined ? {} : { stockNodes });
	const findings = plan.findings.filter((finding) => finding.code === code);
	return { job, plan, findings, walls: bayOf(job).walls.length };
}

const codes = Object.keys(severities) as FindingCode[];

describe.each(codes)("%s", (code) => {
	test("comes about", () => {
		expect(caseOf(code).findings).not.toEqual([]);
	});

	test.each<[LengthUnit, 0 | 1 | 2]>([
		["mm", 0],
		["cm", 1],
		["in", 2],
	])("is said in whole sentences with its figures in %s", (unit, column) => {
		const { findings, walls } = caseOf(code);
		const described = findings.map((finding) => inWords(finding, { unit, walls }));
		for (const { title, message, remedies, severity } of described) {
			expect(severity).toBe(severities[code]);
			expect(title).toMatch(/^[A-Z].*[^.]$/);
			expect(message).toMatch(/^[A-Z].*\.$/);
			for (const text of [title, message, ...remedies])
				expect(text).not.toMatch(/undefined|null|NaN|Infinity|\[object/);
			for (const label of remedies) expect(label).toMatch(/^[A-Z].*[^.]$/);
		}
		for (const figures of cases[code].says)
			expect(described.map(({ message }) => message).join(" ")).toContain(figures[column]);
	});

	test("offers its cures, and each of them works", () => {
		const { job, findings } = caseOf(code);
		const offered = [...new Set(findings.flatMap(({ remedies }) => remedies.map(({ action }) => action)))];
		expect(offered).toEqual(expect.arrayContaining([...cases[code].remedies]));
		const fromJob = planJob(job)[0]?.findings.filter((finding) => finding.code === code) ?? [];
		for (const { remedies, where } of fromJob)
			for (const { change, action } of remedies) {
				const cured = applyChange(job, change);
				if (!cured.ok) throw new Error(`${action}: ${JSON.stringify(cured.problems)}`);
				const after = planJob(cured.job)[0]?.findings.filter((finding) => finding.code === code) ?? [];
				expect(after.map((finding) => finding.where)).not.toContainEqual(where);
			}
	});
});
