import { applyChange, type Finding, describe as inWords, planJob } from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { jobOf, PLAIN_SYSTEM, track } from "./curtain-bay.ts";

/** A bay's findings of one code: where, in words, and what each remedy leads to. */
function told(code: Finding["code"], bay: object, more: object = {}) {
	const job = jobOf(bay, more);
	const [plan] = planJob(job);
	if (plan === undefined) throw new Error("no plan");
	const findings = plan.findings.filter((finding) => finding.code === code);
	const words = findings.map((finding) => inWords(finding, { unit: "mm", walls: plan.projections.length }));
	return {
		findings,
		messages: words.map(({ message }) => message),
		labels: words.flatMap(({ remedies }) => remedies),
		after: (label: string) => {
			const i = words.findIndex(({ remedies }) => remedies.includes(label));
			const change = findings[i]?.remedies[words[i]?.remedies.indexOf(label) ?? -1]?.change;
			if (change === undefined) throw new Error(`not offered: ${label}; but ${JSON.stringify(words)}`);
			const cured = applyChange(job, change);
			if (!cured.ok) throw new Error(JSON.stringify(cured.problems));
			const [again] = planJob(cured.job);
			if (again === undefined) throw new Error("no plan");
			return again;
		},
	};
}

const codesOf = (bay: object, more: object = {}) =>
	planJob(jobOf(bay, more))[0]?.findings.map(({ code }) => code) ?? [];

/** A left wall, a front wall, a right wall: bends of 100 on the plain system's 50, so 150 of each wall goes to the bend. */
const SQUARE = [
	[0, 0],
	[0, 600],
	[2000, 600],
	[2000, 0],
];

describe("a stack on a bend", () => {
	// Track of 550 − 100, a quarter turn of 157, 1900 − 200, 157, 450: 2914. Half of it, 1457, at twice and 150 mm a metre takes 437 < 450.
	const packed = (packing: number) => ({ systems: [{ ...PLAIN_SYSTEM, packing: { goblet: packing } }] });
	const bay = {
		corners: SQUARE,
		track: { system: "plain" },
		makeUp: { overlap: 0 },
		curtains: [{ heading: "goblet" }],
	};

	test("that ends short of it is not told, one a little longer is, at either end", () => {
		expect(told("stack-on-bend", bay, packed(150)).findings).toEqual([]);
		const { messages, labels } = told("stack-on-bend", bay, packed(160));
		expect(messages).toEqual([
			"Drawn back, the left part of curtain 1 lies from 0 mm to 466 mm along the track, where it bends to radius 100 mm round corner 1: a stack there spreads like a fan, and its gliders jam.",
			"Drawn back, the right part of curtain 1 lies from 2448 mm to 2914 mm along the track, where it bends to radius 100 mm round corner 2: a stack there spreads like a fan, and its gliders jam.",
		]);
		expect(labels).toContain("Give curtain 1 a box pleat heading");
	});

	test("a longer track on the same wall brings it off the bend: by as little as does", () => {
		const shorter = { ...bay, track: { system: "plain", draw: "left", start: { wall: 0, at: 300 } } };
		// From 300 there are 150 of straight before the bend; the stack of this track is 2614 × 2 × 65 / 1000 = 340 and grows by 0.13 a mm: 190/0.87 = 218.4.
		const { labels, after } = told("stack-on-bend", { ...shorter, curtains: [{ heading: "wave" }] });
		expect(labels).toContain("Lengthen the track by 219 mm at its left end");
		const longer = after("Lengthen the track by 219 mm at its left end");
		expect(longer.path?.length).toBeCloseTo(2614.2 + 219, 0);
		expect(longer.findings.map(({ code }) => code)).not.toContain("stack-on-bend");
	});

	test("one drawn back whole parts to both sides, where half of it is short enough", () => {
		// 2914 of track takes 5828 of cloth, packed at 80 mm a metre to 466; the walls have 450 before the bend. Half of it takes 233.
		const whole = { ...bay, track: { system: "plain", draw: "left" }, curtains: [{}] };
		const { labels, after } = told("stack-on-bend", whole);
		expect(labels).toContain("Part curtain 1 to both sides");
		expect(after("Part curtain 1 to both sides").stackBack.map(({ from, to }) => Math.round(to - from))).toEqual([
			233, 233,
		]);
	});

	test("on a bow as wide as a straight it is not told", () => {
		const bowed = { track: track(0, 5000), walls: [{ rise: 150 }], curtains: [{}] };
		expect(codesOf(bowed)).not.toContain("stack-on-bend");
	});

	test("curtains that the job does not give are never told", () => {
		expect(
			codesOf({ corners: SQUARE.map(([x, y]) => [x, Math.min(y as number, 200)]), track: { system: "plain" } }),
		).not.toContain("stack-on-bend");
	});
});

describe("stacks that meet", () => {
	const many = { systems: [{ ...PLAIN_SYSTEM, packing: { box: 520 } }] };

	test("face to face: no glass comes clear between them", () => {
		const bay = { track: track(0, 2000), makeUp: { overlap: 0 }, curtains: [{ heading: "box" }] };
		const { messages, labels, after } = told("stacks-meet", bay, many);
		expect(messages).toEqual([
			"Drawn back, the two parts of curtain 1 take up 2080 mm and have 2000 mm of track: nothing is left clear between them.",
		]);
		expect(labels).toContain("Give curtain 1 a pinch pleat heading");
		expect(after("Give curtain 1 a pinch pleat heading").findings.map(({ code }) => code)).not.toContain("stacks-meet");
	});

	test("side by side: either goes to its other side", () => {
		const bay = {
			track: track(0, 4000),
			makeUp: { overlap: 0 },
			curtains: [
				{ to: 2000, stacks: "right" },
				{ from: 2000, stacks: "left" },
			],
		};
		const { messages, labels, after } = told("stacks-meet", bay);
		expect(messages).toEqual([
			"Drawn back, curtain 1 and curtain 2 stand side by side 2000 mm from the track's left end and take up 640 mm there.",
		]);
		expect(labels.slice(0, 2)).toEqual(["Stack curtain 1 to the left", "Stack curtain 2 to the right"]);
		expect(after("Stack curtain 1 to the left").stackBack).toEqual([
			{ side: "left", from: 0, to: 320 },
			{ side: "left", from: 2000, to: 2320 },
		]);
	});

	test("a stack longer than its stretch overhangs; lengthened, its end goes with the track", () => {
		// Return of 300 and a packing of 450: (L + 300) × 2 × 0.45 ≤ L from L = 2700.
		const bay = {
			track: track(100, 2600, { draw: "left" }),
			makeUp: { overlap: 0, returns: 150 },
			curtains: [{ from: 0, to: 2500, heading: "pencil" }],
		};
		const thick = { systems: [{ ...PLAIN_SYSTEM, packing: { pencil: 450, wave: 450 } }] };
		const { messages, labels, after } = told("stack-overhangs", bay, thick);
		expect(messages).toEqual([
			"Drawn back, curtain 1 takes up 2520 mm and has 2500 mm of track: 20 mm would hang over its end.",
		]);
		// One mm over is not told: 2691 − (2691 + 300) × 0.9 = −0.9.
		expect(labels).toContain("Lengthen the track by 190 mm at its right end");
		expect(after("Lengthen the track by 190 mm at its right end").curtains).toMatchObject([{ from: 0, to: 2690 }]);
	});
});

describe("curtains that meet on a bend", () => {
	const corded = { systems: [{ ...PLAIN_SYSTEM, overlapStraight: 200 }] };
	const at = (station: number) => ({
		corners: SQUARE,
		track: { system: "plain" },
		curtains: [{ to: station }, { from: station }],
	});

	test("where the system asks for straight there, given curtains are held to it where they meet", () => {
		// The left bend runs from 450 to 607: a meeting at 700 leaves 93 of the 100 that each side needs.
		expect(told("overlap-on-bend", at(1457), corded).findings).toEqual([]);
		const { messages, labels, after } = told("overlap-on-bend", at(700), corded);
		expect(messages).toEqual([
			"Curtain 1 and curtain 2 meet 700 mm from the track's finished left end and need 200 mm of straight track there; it bends to radius 100 mm round corner 1.",
		]);
		expect(labels).toEqual(["Let them meet at 708 mm along the track"]);
		expect(after("Let them meet at 708 mm along the track").curtains.map(({ to }) => Math.round(to))).toEqual([
			708, 2914,
		]);
	});

	test("where it asks for none, only a meeting on the bend itself is told", () => {
		expect(told("leading-edges-on-bend", at(700)).findings).toEqual([]);
		expect(told("leading-edges-on-bend", at(520)).messages).toEqual([
			"Curtain 1 and curtain 2 meet 520 mm from the track's left end, where it bends to radius 100 mm round corner 1.",
		]);
	});
});

describe("on the track", () => {
	test("one past its end ends with it, one beyond it is removed", () => {
		const bay = { track: track(0, 3000), curtains: [{ to: 3400 }, { from: 3200, to: 3400 }] };
		const { messages, labels } = told("curtain-off-track", bay);
		expect(messages).toEqual([
			"Curtain 1 is to hang from 0 mm to 3400 mm along the track, which is 3000 mm long.",
			"Curtain 2 is to hang from 3200 mm to 3400 mm along the track, which is 3000 mm long.",
		]);
		expect(labels).toEqual(["End curtain 1 with the track", "Remove curtain 2"]);
	});

	test("of several beyond its end each is removed by itself, and the others are told still", () => {
		const beyond = { from: 3200, to: 3400 };
		const bay = { track: track(0, 3000), curtains: [beyond, { to: 1500 }, beyond] };
		const { labels, after } = told("curtain-off-track", bay);
		expect(labels).toEqual(["Remove curtain 1", "Remove curtain 3"]);
		expect(after("Remove curtain 1").findings.map(({ code, where }) => [code, where.curtain])).toContainEqual([
			"curtain-off-track",
			1,
		]);
	});

	test("given while the draw is none, none hangs, and that is told", () => {
		const bay = { track: track(0, 3000, { draw: "none" }), curtains: [{ to: 1500 }, { from: 1500 }] };
		const { messages, labels, after } = told("curtains-not-hung", bay);
		expect(messages).toEqual([
			"The track's draw is set to none, so that the 2 curtains of this bay do not hang: no stacks, no loads and nothing of cloth in the order.",
		]);
		expect(labels).toEqual(["Draw as a pair"]);
		expect(after("Draw as a pair").curtains).toHaveLength(2);
		expect(codesOf({ track: track(0, 3000, { draw: "none" }) })).not.toContain("curtains-not-hung");
	});

	test("two that overlap meet in the middle of it; one inside another is removed", () => {
		const bay = (second: object) => ({ track: track(0, 3000), curtains: [{ to: 2000 }, second] });
		expect(told("curtains-overlap", bay({ from: 1800 })).labels).toEqual(["Let them meet at 1900 mm along the track"]);
		expect(told("curtains-overlap", bay({ from: 1999 })).findings).toEqual([]);
		const inside = told("curtains-overlap", { track: track(0, 3000), curtains: [{}, { from: 500, to: 900 }] });
		expect(inside.messages).toEqual([
			"Curtain 1 and curtain 2 overlap by 400 mm, from 500 mm to 900 mm along the track.",
		]);
		expect(inside.labels).toEqual(["Remove curtain 2"]);
	});
});

describe("what the folds touch behind", () => {
	// Gliders every 100 at twice: zigzags of √(200² − 100²) = 173.2, a quarter behind the track: 43.3; half of a wave: 86.6.
	const bay = (more: object, curtain: object = {}) => ({
		track: track(0, 4000, { height: 2300 }),
		curtains: [{ drop: 2200, ...curtain }],
		...more,
	});

	test("at 50 off the wall a pencil pleat clears it and a wave does not", () => {
		expect(codesOf(bay({}))).not.toContain("curtain-touches-behind");
		const { messages, labels, after } = told("curtain-touches-behind", bay({}, { heading: "wave" }));
		expect(messages).toEqual([
			"The folds of curtain 1 reach 87 mm behind the track, and the wall leaves 50 mm; a projection of 87 mm clears it.",
		]);
		expect(labels).toContain("Projection 87 mm");
		expect(after("Projection 87 mm").findings.map(({ code }) => code)).not.toContain("curtain-touches-behind");
	});

	test("a sill board, where the curtain hangs as low", () => {
		const openings = [{ wall: 0, from: 1000, to: 3000, sill: 900, head: 2100, sillDepth: 30 }];
		const { messages, labels } = told("curtain-touches-behind", bay({ openings }));
		expect(messages).toEqual([
			"The folds of curtain 1 reach 43 mm behind the track, and the sill board of opening 1 leaves 20 mm; a projection of 74 mm clears it.",
		]);
		expect(labels[0]).toBe("Projection 74 mm");
		expect(codesOf(bay({ openings }, { drop: 1300 }))).not.toContain("curtain-touches-behind");
	});

	test("several sill boards are told once, by the worst, and one cure is for all", () => {
		const sill = { wall: 0, sill: 900, head: 2100 };
		const openings = [
			{ ...sill, from: 300, to: 900, sillDepth: 30 },
			{ ...sill, from: 1500, to: 2500, sillDepth: 45 },
			{ ...sill, from: 3100, to: 3700, sillDepth: 30 },
		];
		// The middle one is before both curtains: four places where a curtain touches a board.
		const curtains = [
			{ to: 2000, drop: 2200 },
			{ from: 2000, drop: 2200 },
		];
		const { messages, labels, after } = told("curtain-touches-behind", { ...bay({ openings }), curtains });
		// 45 and 43.3 behind the track.
		expect(messages).toEqual([
			"The folds of curtain 1 reach 43 mm behind the track, and the sill board of opening 2 leaves 5 mm; at 3 more places they touch as well, by no more. A projection of 89 mm clears them all.",
		]);
		expect(labels).toContain("Projection 89 mm");
		expect(after("Projection 89 mm").findings.map(({ code }) => code)).not.toContain("curtain-touches-behind");
	});

	test("two waves that touch the wall get a flatter heading in one go", () => {
		const curtains = [
			{ to: 2000, heading: "wave" },
			{ from: 2000, heading: "wave" },
		];
		const { messages, labels, after } = told("curtain-touches-behind", { ...bay({}), curtains });
		expect(messages).toEqual([
			"The folds of curtain 1 reach 87 mm behind the track, and the wall leaves 50 mm; at one more place they touch as well, by no more. A projection of 87 mm clears them all.",
		]);
		expect(labels).toContain("Give the curtains a pencil pleat heading");
		expect(after("Give the curtains a pencil pleat heading").curtains.map(({ heading }) => heading)).toEqual([
			"pencil",
			"pencil",
		]);
	});

	test("an external corner comes nearer than the walls do, and its cure is tried, not reckoned", () => {
		const breast = {
			corners: [
				[0, 0],
				[1500, 0],
				[1500, 1500],
			],
			track: { system: "plain" },
			curtains: [{}],
		};
		// Round the corner a bend of 100 that stands 50 off both walls passes 50·√2 − 100·(√2 − 1) = 29 off it.
		const { messages, labels, after } = told("curtain-touches-behind", breast);
		expect(messages).toEqual(["The folds of curtain 1 reach 43 mm behind the track, and corner 1 leaves 29 mm."]);
		const projection = labels.find((label) => label.startsWith("Projection"));
		expect(after(projection ?? "").findings.map(({ code }) => code)).not.toContain("curtain-touches-behind");
	});

	test("a wall with a projection of its own is told and cured by itself", () => {
		const own = {
			corners: SQUARE,
			walls: [{}, { projection: 50 }, {}],
			track: { system: "plain" },
			curtains: [{ heading: "wave" }],
		};
		const { findings, labels, after } = told("curtain-touches-behind", own);
		expect(findings.map(({ figures }) => figures.own)).toEqual([undefined, 1]);
		expect(labels).toContain("Projection 87 mm on the front wall");
		const left = after("Projection 87 mm on the front wall").findings.filter(
			({ code }) => code === "curtain-touches-behind",
		);
		expect(left.map(({ figures }) => figures.own)).toEqual([undefined]);
	});

	test("a radiator that stands further off than the track, though the track passes over it", () => {
		const obstacles = [{ kind: "radiator", wall: 0, from: 1000, to: 2000, bottom: 100, top: 700, depth: 110 }];
		const { findings, messages } = told("curtain-touches-behind", bay({ obstacles }));
		expect(messages).toEqual([
			"The folds of curtain 1 reach 43 mm behind the track, and the radiator on the wall leaves 0 mm; a projection of 154 mm clears it.",
		]);
		expect(findings[0]?.where).toMatchObject({ curtain: 0, obstacle: 0, wall: 0 });
		const beyond = { ...bay({ obstacles }), curtains: [{ from: 2100, drop: 2200 }] };
		expect(codesOf(beyond)).not.toContain("curtain-touches-behind");
	});

	test("out of the brackets' reach another system that reaches is offered", () => {
		const obstacles = [{ kind: "radiator", wall: 0, from: 1000, to: 2000, bottom: 100, top: 700, depth: 270 }];
		const { labels } = told("curtain-touches-behind", bay({ obstacles }));
		// 270 and 43.3 behind the track: 314, of which the plain system's brackets give 300.
		expect(labels).toContain("Use Ceiling channel, projection 314 mm");
	});
});

describe("figures that nobody would expect", () => {
	const cloth = { id: "c", name: "Linen", width: 1400, repeat: 0, mass: 300 };
	const one = (curtain: object, more: object = {}, of: object = {}) =>
		told(
			"unusual-figure",
			{ track: track(0, 3000), curtains: [{ cloth: "c", ...curtain }], ...more },
			{ cloths: [{ ...cloth, ...of }] },
		).messages;

	test("each is questioned by name with what is sensible, and worked with as it stands", () => {
		expect(one({})).toEqual([]);
		expect(one({ fullness: 9 })).toEqual([
			"The fullness of curtain 1 is 9; 1.2 to 4 is sensible. It is worked with as it stands.",
		]);
		expect(one({}, {}, { mass: 30_000 })).toEqual([
			"The mass of Linen is 30000 g/m²; 20 g/m² to 1500 g/m² is sensible. It is worked with as it stands.",
		]);
		expect(one({}, {}, { repeat: 4000 })).toEqual([
			"The pattern repeat of Linen is 4000 mm; 10 mm to 1500 mm is sensible. It is worked with as it stands.",
		]);
		expect(one({}, { makeUp: { overlap: 1000 } })).toEqual([
			"The overlap of the make-up is 1000 mm; 0 mm to 400 mm is sensible. It is worked with as it stands.",
		]);
	});

	test("nothing is clamped", () => {
		const plan = planJob(
			jobOf({ track: track(0, 1000, { draw: "left" }), makeUp: { overlap: 0 }, curtains: [{ fullness: 9 }] }),
		)[0];
		expect(plan?.curtains[0]).toMatchObject({ fullness: 9, flatWidth: 9000 });
	});

	test("a drop that goes far past the floor, once the track's height is known", () => {
		const high = { track: track(0, 3000, { height: 2200 }) };
		expect(one({ drop: 2500 }, high)).toEqual([]);
		expect(one({ drop: 2600 })).toEqual([]);
		expect(one({ drop: 2600 }, high)).toEqual([
			"The finished drop of curtain 1 is 2600 mm; 150 mm to 2500 mm is sensible. It is worked with as it stands.",
		]);
	});

	test("a curtain that is hardly one", () => {
		expect(one({ from: 500, to: 560 })).toEqual([
			"The stretch of track of curtain 1 is 60 mm; 100 mm to 20000 mm is sensible. It is worked with as it stands.",
		]);
		expect(one({ from: 500, to: 600 })).toEqual([]);
	});

	test("a cloth that no curtain of the bay is made of is not asked about", () => {
		expect(
			told("unusual-figure", { track: track(0, 3000), curtains: [{}] }, { cloths: [{ ...cloth, mass: 1 }] }).findings,
		).toEqual([]);
	});
});
