import {
	applyChange,
	type FindingCode,
	findingSamples,
	describe as inWords,
	type LengthUnit,
	libraryOf,
	parseJob,
	planBay,
	planJob,
	sampleJob,
	severities,
} from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { bayOf } from "../../properties/bays.ts";

/** What a finding's sample must say and offer. */
interface Case {
	/** Cures that must be offered. */
	readonly remedies: readonly string[];
	/** Figures that must be read in the sentence, in mm, cm and inches. */
	readonly says: readonly (readonly [mm: string, cm: string, inches: string])[];
}

const cases: Record<FindingCode, Case> = {
	"too-few-corners": { remedies: [], says: [["two corners", "two corners", "two corners"]] },
	"readings-cannot-settle": {
		remedies: ["leave-out-reading"],
		says: [
			["chord at corner 1", "chord at corner 1", "chord at corner 1"],
			["508 mm", "50.8 cm", '20"'],
		],
	},
	"coordinate-out-of-range": { remedies: [], says: [["100001 mm", "10000.1 cm", "3937"]] },
	"wall-too-short": { remedies: [], says: [["0.5 mm", "0.05 cm", '"']] },
	"corner-folded": { remedies: [], says: [["0.6°", "0.6°", "0.6°"]] },
	"walls-cross": { remedies: [], says: [["wall left end–1", "wall left end–1", "wall left end–1"]] },
	"bow-too-deep": {
		remedies: ["set-rise"],
		says: [
			["762.0 mm", "76.20 cm", '30"'],
			["750 mm", "75.0 cm", '29 1/2"'],
		],
	},
	"bow-too-tight": {
		remedies: ["set-projection", "use-system"],
		says: [
			["198 mm", "19.8 cm", '7 13/16"'],
			["225 mm", "22.5 cm", '8 7/8"'],
		],
	},
	"legs-do-not-meet": {
		remedies: ["same-projection"],
		says: [
			["150 mm", "15.0 cm", '5 7/8"'],
			["30 mm", "3.0 cm", '1 3/16"'],
		],
	},
	"no-room-round-corner": {
		remedies: ["set-projection", "use-system", "end-at-corner"],
		says: [
			["77 mm", "7.7 cm", '3 1/16"'],
			["100 mm", "10.0 cm", '3 15/16"'],
			["225 mm", "22.5 cm", '8 7/8"'],
			["15 mm", "1.5 cm", '9/16"'],
		],
	},
	"projection-out-of-range": {
		remedies: ["set-projection"],
		says: [
			["254 mm", "25.4 cm", '10"'],
			["150 mm", "15.0 cm", '5 7/8"'],
		],
	},
	"projection-change-at-slight-turn": {
		remedies: ["set-wall-projection"],
		says: [
			["51 mm", "5.1 cm", '2"'],
			[" 0.6°", " 0.6°", " 0.6°"],
		],
	},
	"end-off-wall": { remedies: ["track-to-end-of-bay"], says: [["1524 mm", "152.4 cm", '60"']] },
	"ends-reversed": { remedies: ["swap-ends"], says: [["right", "right", "right"]] },
	"radius-below-least": {
		remedies: ["set-radius", "release-radius"],
		says: [
			["203 mm", "20.3 cm", '8"'],
			["225 mm", "22.5 cm", '8 7/8"'],
		],
	},
	"radius-too-large": {
		remedies: ["set-radius", "release-radius"],
		says: [
			["1524 mm", "152.4 cm", '60"'],
			["1320 mm", "132.0 cm", '51 15/16"'],
		],
	},
	"leg-too-short": {
		remedies: ["use-system"],
		says: [
			["508 mm", "50.8 cm", '20"'],
			["610 mm", "61.0 cm", '24"'],
		],
	},
	"end-too-near-corner": {
		remedies: ["move-end"],
		says: [
			["230 mm", "23.0 cm", '9 1/16"'],
			["405 mm", "40.5 cm", '15 15/16"'],
		],
	},
	"track-too-short": {
		remedies: ["move-end", "track-to-end-of-bay"],
		says: [
			["152 mm", "15.2 cm", '6"'],
			["200 mm", "20.0 cm", '7 7/8"'],
		],
	},
	"track-too-near-wall": { remedies: ["move-end"], says: [["12.7 mm", "1.27 cm", '1/2"']] },
	"track-crosses-itself": { remedies: ["move-end", "use-system"], says: [["track", "track", "track"]] },
	"obstacle-in-the-way": { remedies: ["set-projection"], says: [["127 mm", "12.7 cm", '5"']] },
	"piece-longer-than-stock": {
		remedies: ["joints-auto"],
		says: [
			["6252 mm", "625.2 cm", '246 1/8"'],
			["6000 mm", "600.0 cm", '236 1/4"'],
		],
	},
	"piece-too-short": { remedies: ["joints-auto"], says: [["12.7 mm", "1.27 cm", '1/2"']] },
	"cannot-be-joined": { remedies: ["no-joints"], says: [["has no joints", "has no joints", "has no joints"]] },
	"readings-disagree": {
		remedies: ["leave-out-reading"],
		says: [
			["run of the right wall disagrees", "run of the right wall disagrees", "run of the right wall disagrees"],
			["102 mm", "10.2 cm", '4"'],
		],
	},
	"cut-length-unsure": {
		remedies: [],
		says: [
			["3.5 mm", "0.35 cm", '1/8"'],
			["diagonal", "diagonal", "diagonal"],
		],
	},
	// Walls of 1500, 2500 and 1500, 40 off at two right angles (4 × 40 less), each bend 2·310 − 310·π/2 less, end hardware 2 × 100: 4873.9.
	"cut-piece-too-long": { remedies: [], says: [["5600 mm", "560.0 cm", '220 1/2"']] },
	"cut-piece-too-short": {
		remedies: ["move-end"],
		says: [["26 mm too short", "2.6 cm too short", '1 1/16" too short']],
	},
	// Middle to middle half a bend, 2420 − 2·310, half a bend: 2286.9; bent at 3605.8 − 1293.5, which is 25.4 more.
	"cut-piece-bends-apart": {
		remedies: [],
		says: [["25 mm further apart", "2.5 cm further apart", '1" further apart']],
	},
	"piece-not-in-plan": { remedies: ["forget-cut"], says: [["1270 mm", "127.0 cm", '50"']] },
	"bracket-off-projection": { remedies: [], says: [["38 mm to 51 mm", "3.8 cm to 5.1 cm", '1 1/2" to 2"']] },
	"track-may-change": { remedies: [], says: [["does not fit", "does not fit", "does not fit"]] },
	"radius-not-used": { remedies: ["release-radius"], says: [["254 mm", "25.4 cm", '10"']] },
	"joint-off-track": { remedies: ["remove-joint"], says: [["254 mm", "25.4 cm", '10"']] },
	"joint-badly-placed": { remedies: ["move-joint", "remove-joint"], says: [["150 mm", "15.0 cm", '5 7/8"']] },
	"pin-off-track": { remedies: ["release-bracket"], says: [["254 mm", "25.4 cm", '10"']] },
	"pin-where-no-bracket-goes": { remedies: ["move-bracket", "release-bracket"], says: [["254 mm", "25.4 cm", '10"']] },
	"no-place-for-bracket": { remedies: [], says: [["left wall", "left wall", "left wall"]] },
	"brackets-too-far-across-bend": { remedies: [], says: [["254 mm", "25.4 cm", '10"']] },
	"bracket-out-of-reach": { remedies: [], says: [["45 mm", "4.5 cm", '1 3/4"']] },
	"bracket-gap-too-wide": {
		remedies: [],
		says: [
			["508 mm", "50.8 cm", '20"'],
			["380 mm", "38.0 cm", '14 15/16"'],
		],
	},
	"brackets-on-tight-bow": {
		remedies: ["set-projection", "use-system"],
		says: [
			["1524 mm", "152.4 cm", '60"'],
			["508 mm", "50.8 cm", '20"'],
		],
	},
	"straight-beside-bow-short": {
		remedies: [],
		says: [
			["25.4 mm", "2.54 cm", '1"'],
			["38 mm", "3.8 cm", '1 1/2"'],
		],
	},
	// End hardware of 100 on a radius of (1250² + 700²)/1400 − 40 = 1426: 100²/(8·1426) = 0.9 off the curve.
	"end-on-bow": {
		remedies: [],
		says: [
			["100 mm", "10.0 cm", '3 15/16"'],
			["0.9 mm", "0.09 cm", '1/16"'],
		],
	},
	"overlap-on-bend": { remedies: ["draw-to-one-side"], says: [["200 mm", "20.0 cm", '7 7/8"']] },
	// Its figures are worked out by an independent method in tests/properties/bay-loads.test.ts.
	"bracket-overloaded": {
		remedies: ["pin-brackets"],
		says: [
			["allows 7 kg on one bracket", "allows 7 kg on one bracket", "allows 7 kg on one bracket"],
			["Torsion at bends is left out", "Torsion at bends is left out", "Torsion at bends is left out"],
		],
	},
	"load-not-checked": {
		remedies: [],
		says: [["states no greatest load", "states no greatest load", "states no greatest load"]],
	},
	"mass-not-known": {
		remedies: [],
		says: [
			["1 of the 2 curtains", "1 of the 2 curtains", "1 of the 2 curtains"],
			["no cloth is chosen", "no cloth is chosen", "no cloth is chosen"],
		],
	},
	"bracket-lifts": { remedies: [], says: [["hold the track down", "hold the track down", "hold the track down"]] },
	"leading-edges-on-bend": { remedies: ["meet-at"], says: [["310 mm", "31.0 cm", '12 3/16"']] },
	// A left wall of 254 and 40 off it leave the bend 214.
	"stack-on-bend": { remedies: ["stack-to-side"], says: [["214 mm", "21.4 cm", '8 7/16"']] },
	"stacks-meet": { remedies: ["stack-to-side", "use-heading"], says: [["1000 mm", "100.0 cm", '39 3/8"']] },
	// 1000 of track with 2000 of cloth: 1016 drawn back.
	"stack-overhangs": {
		remedies: ["use-heading"],
		says: [
			["1016 mm", "101.6 cm", '40"'],
			["16 mm", "1.6 cm", '5/8"'],
		],
	},
	"curtain-off-track": {
		remedies: ["end-curtain-with-track"],
		says: [
			["2540 mm", "254.0 cm", '100"'],
			["2500 mm", "250.0 cm", '98 7/16"'],
		],
	},
	"curtains-not-hung": {
		remedies: ["draw-as-pair"],
		says: [["set to none", "set to none", "set to none"]],
	},
	"curtains-overlap": {
		remedies: ["meet-at"],
		says: [
			["127 mm", "12.7 cm", '5"'],
			["1327 mm", "132.7 cm", '52 1/4"'],
		],
	},
	"curtain-touches-behind": {
		remedies: ["set-projection", "use-heading"],
		says: [
			["46 mm", "4.6 cm", '1 13/16"'],
			["40 mm", "4.0 cm", '1 9/16"'],
		],
	},
	"unusual-figure": {
		remedies: [],
		says: [
			["10000 mm", "1000.0 cm", '393 11/16"'],
			["6000 mm", "600.0 cm", '236 1/4"'],
		],
	},
	"bow-to-be-bent": { remedies: [], says: [["radius 5243 mm", "radius 524.3 cm", "radius 206"]] },
	"no-smoother-track": {
		remedies: ["follow-walls"],
		says: [["follows the walls", "follows the walls", "follows the walls"]],
	},
	"smoothest-is-worse": { remedies: ["follow-walls"], says: [["one warning", "one warning", "one warning"]] },
	"stock-not-proved-best": { remedies: [], says: [[" mm", " cm", '"']] },
	"cord-against-advice": {
		remedies: ["raise-cord"],
		says: [
			["900 mm", "90.0 cm", '35 7/16"'],
			["1500 mm", "150.0 cm", '59 1/16"'],
		],
	},
	"holes-in-cable-zones": {
		remedies: [],
		says: [
			["top of a wall", "top of a wall", "top of a wall"],
			["above or below or level", "above or below or level", "above or below or level"],
			["Figures of Great Britain", "Figures of Great Britain", "Figures of Great Britain"],
		],
	},
};

function caseOf(code: FindingCode) {
	const { stockNodes } = findingSamples[code];
	const read = parseJob(sampleJob(findingSamples[code]));
	if (!read.ok) throw new Error(`not a job: ${JSON.stringify(read.problems)}`);
	const { job } = read;
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
