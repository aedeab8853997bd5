import { applyChange, type Finding, findingSamples, describe as inWords, planJob } from "@baywright/setout";
import { describe, expect, test } from "vitest";
import { jobOf, planDrawn, refusalsOf } from "../../properties/bays.ts";

type Drawn = Readonly<Record<string, unknown>>;

const SQUARE = [
	[0, 0],
	[0, 1500],
	[2500, 1500],
	[2500, 0],
];

/** A bay's findings of one code, what each remedy leads to, and how it is worded. */
function told(bay: Drawn, code: Finding["code"], systems: readonly unknown[] = []) {
	const job = jobOf({ id: "b", corners: SQUARE, ...bay }, systems);
	const plan = planJob(job)[0];
	const findings = plan?.findings.filter((finding) => finding.code === code) ?? [];
	const words = findings.map((finding) => inWords(finding, { unit: "mm", walls: plan?.projections.length ?? 0 }));
	return {
		findings,
		messages: words.map(({ message }) => message),
		labels: words.map(({ remedies }) => remedies),
		after: (label: string) => {
			const index = words.findIndex(({ remedies }) => remedies.includes(label));
			const choice = words[index]?.remedies.indexOf(label) ?? -1;
			const change = findings[index]?.remedies[choice]?.change;
			if (change === undefined) throw new Error(`not offered: ${label}; but ${JSON.stringify(words)}`);
			const cured = applyChange(job, change);
			if (!cured.ok) throw new Error(JSON.stringify(cured.problems));
			const planned = planJob(cured.job)[0];
			if (planned === undefined) throw new Error("no plan");
			return { plan: planned, refusals: refusalsOf(planned).map((finding) => finding.code) };
		},
	};
}

describe("the end of the track too near a corner", () => {
	// The bend's least radius 225 at 40 off the wall sets back 265; 40 of straight beside it and 100 of end hardware: 405 from the corner.
	test("its nearest place along the wall is offered, and the place beyond the corner", () => {
		const { labels, messages, after } = told({ track: { start: { wall: 0, at: 1200 } } }, "end-too-near-corner");
		expect(messages).toEqual([
			"The left end of the track is 300 mm from corner 1 along the left wall; for its end hardware and the tightest bend this track makes it must be 405 mm from it.",
		]);
		expect(labels[0]?.[0]).toBe("Start at 1095 mm along the left wall");
		expect(after("Start at 1095 mm along the left wall").refusals).toEqual([]);
		const beyond = labels[0]?.find((label) => label.endsWith("along the front wall"));
		expect(after(beyond as string).refusals).toEqual([]);
	});

	test("the right end is told from its left corner", () => {
		const { labels, after } = told({ track: { end: { wall: 2, at: 300 } } }, "end-too-near-corner");
		expect(labels[0]?.[0]).toBe("End at 405 mm along the right wall");
		expect(after("End at 405 mm along the right wall").refusals).toEqual([]);
	});

	test("a wall too short from end to end is told as that, and the track may start on the next", () => {
		const corners = [
			[0, 0],
			[0, 300],
			[2500, 300],
			[2500, -1500],
		];
		const { messages, labels, after } = told({ corners }, "leg-too-short");
		expect(messages[0]).toContain("The left wall is 300 mm long");
		expect(messages[0]).toContain("405 mm, 105 mm more");
		const next = labels[0]?.find((label) => /^Start at \d+ mm along the front wall$/.test(label));
		expect(after(next as string).refusals).toEqual([]);
	});
});

describe("obstacles in the way", () => {
	const radiator = { kind: "radiator", wall: 1, from: 1000, to: 1500, depth: 90 };
	const pipe = { kind: "pipe", wall: 1, from: 1700, to: 1750, depth: 60 };

	test("on a wall with a projection of its own that wall's is changed", () => {
		const { labels, after } = told(
			{ obstacles: [radiator], walls: [{}, { projection: 50 }, {}] },
			"obstacle-in-the-way",
		);
		// 90 deep and 15 clear.
		expect(labels[0]?.[0]).toBe("Projection 105 mm on the front wall");
		expect(after("Projection 105 mm on the front wall").refusals).toEqual([]);
	});

	test("several on one wall have one cure: what the deepest needs", () => {
		const { labels, after } = told({ obstacles: [pipe, radiator] }, "obstacle-in-the-way");
		expect(labels.map((all) => all[0])).toEqual(["Projection 105 mm", "Projection 105 mm"]);
		expect(after("Projection 105 mm").refusals).toEqual([]);
	});

	test("the track may end before it", () => {
		const deep = { ...radiator, wall: 2, from: 900, to: 1100, depth: 400 };
		const { labels, after } = told({ obstacles: [deep] }, "obstacle-in-the-way");
		expect(labels[0]).toEqual(["End at 885 mm along the right wall"]);
		expect(after("End at 885 mm along the right wall").refusals).toEqual([]);
	});
});

describe("external corners", () => {
	const corners = [
		[0, 0],
		[1000, 0],
		[1000, 1000],
	];

	test("with unequal projections no one figure is said; what was found by trying is offered", () => {
		const { messages, labels, after } = told(
			{ corners, walls: [{ projection: 40 }, { projection: 60 }] },
			"no-room-round-corner",
		);
		expect(messages[0]).not.toContain("projection");
		const wall = labels[0]?.find((label) => /^Projection \d+ mm on the (left|right) wall$/.test(label));
		expect(after(wall as string).refusals).toEqual([]);
		const smaller = (wall as string).replace(/\d+/, (figure) => String(Number(figure) - 1));
		expect(labels[0]).not.toContain(smaller);
	});

	test("the longer part that plans is offered, else the other", () => {
		const long = [
			[0, 0],
			[2000, 0],
			[2000, 1000],
		];
		const track = { system: "heavy-hand-drawn" };
		const whole = told({ corners: long, track }, "no-room-round-corner");
		expect(whole.labels[0]).toContain("End the track at corner 1");
		// Holes nowhere near the right end of the longer part are no refusal, but a column all along it that no projection passes is.
		const obstacles = [{ kind: "other", wall: 0, from: 0, to: 1950, depth: 600 }];
		const blocked = told({ corners: long, track, obstacles }, "no-room-round-corner");
		expect(blocked.labels[0]).toContain("Start the track at corner 1");
		expect(blocked.labels[0]).not.toContain("End the track at corner 1");
		expect(blocked.after("Start the track at corner 1").refusals).toEqual([]);
	});
});

test("two radii set at the ends of a chamfer that a single bend would pass are both given up at once", () => {
	const corners = [
		[0, 0],
		[0, 1500],
		[100, 1600],
		[2500, 1600],
	];
	const bends = [
		{ corner: 1, radius: 225 },
		{ corner: 2, radius: 225 },
	];
	const { labels, after } = told({ corners, track: { bends } }, "leg-too-short");
	const label = labels[0]?.find((one) => one.startsWith("Fit the rad"));
	const { plan, refusals } = after(label as string);
	expect(refusals).toEqual([]);
	expect(plan.corners[0]?.kind).toBe("bridge");
});

test("of other systems those that plan without warnings come first", () => {
	const system = (id: string, acrossBendMax: number | null) => ({
		id,
		name: id,
		minRadius: { internal: 100, external: 100 },
		projection: { default: 40, min: 30, max: 100 },
		bracket: { maxSpacing: 400, acrossBendMax },
		stock: [{ length: 6000 }],
	});
	const short = [
		[0, 0],
		[0, 1500],
		[508, 1500],
		[508, 0],
	];
	const { labels } = told({ corners: short }, "leg-too-short", [system("Warned", 50), system("Quiet", null)]);
	const offered = labels[0] ?? [];
	expect(offered).toContain("Use Warned");
	expect(offered.indexOf("Use Quiet")).toBeLessThan(offered.indexOf("Use Warned"));
});

test("a piece too long because a bow takes no joint says so", () => {
	const { messages } = told(
		{
			corners: [
				[0, 0],
				[8000, 0],
			],
			walls: [{ rise: 300 }],
		},
		"piece-longer-than-stock",
	);
	expect(messages[0]).toContain("no joint can be made along the bow of the wall, where the track has no straight");
});

test("a bow that folds its corners back is named, and the greatest rise that plans is offered", () => {
	// At −1190 the front wall's face turns by 2·atan(2·1190/2500) = 87.2° at each end, which with the corner's own 90° is 177.2°.
	const { messages, labels, after } = told({ walls: [{}, { rise: -1190 }, {}] }, "corner-folded");
	expect(messages).toEqual(
		[1, 2].map(
			(corner) =>
				`Corner ${corner} has a room angle of 2.8°; it must be between 20° and 340°, and without the bow of the front wall is 90.0°.`,
		),
	);
	const label = labels[0]?.[0] as string;
	expect(labels).toEqual([[label], [label]]);
	expect(after(label).refusals).toEqual([]);
	const rise = Number(/^Rise (-\d+) mm on the front wall$/.exec(label)?.[1]);
	expect(refusalsOf(planDrawn({ id: "b", corners: SQUARE, walls: [{}, { rise: rise - 1 }, {}] }))).not.toEqual([]);
});

describe("the smoothest line and the line along the walls", () => {
	const own = {
		id: "own",
		name: "Own",
		minRadius: { internal: 100, external: 100 },
		preferredRadius: 100,
		projection: { default: 60, min: 30, max: 100 },
		clearance: 10,
		bracket: { maxSpacing: 400 },
		stock: [{ length: 6000 }],
	};
	const external = {
		corners: [
			[0, 0],
			[1000, 0],
			[1000, 1000],
		],
		track: { system: "own", follow: "smoothest" },
	};

	test("back to the walls, where the smoothest line runs into what the other passes", () => {
		// Radius 100 passes the corner at 60/cos 45° − 100(1/cos 45° − 1) = 43.4; the widest that keeps clear of it at 10.
		const pipe = { kind: "pipe", wall: 0, from: 980, to: 1000, depth: 20 };
		const { labels, after } = told({ ...external, obstacles: [pipe] }, "obstacle-in-the-way", [own]);
		expect(labels[0]?.[0]).toBe("Follow the walls");
		expect(after("Follow the walls").refusals).toEqual([]);
	});

	test("on to the smoothest line, where the other runs into what it passes", () => {
		const pipe = { kind: "pipe", wall: 1, from: 80, to: 120, depth: 60 };
		const { labels, after } = told({ track: { system: "own" }, obstacles: [pipe] }, "obstacle-in-the-way", [
			{ ...own, projection: { ...own.projection, default: 40 } },
		]);
		expect(labels[0]).toContain("Take the smoothest line");
		expect(after("Take the smoothest line").refusals).toEqual([]);
	});
});

test("every sample's remedy leads to no refusal that its bay did not have", () => {
	for (const sample of Object.values(findingSamples)) {
		const { bay, system } = sample;
		const job = jobOf({ id: "b", corners: SQUARE, ...bay }, system === undefined ? [] : [system]);
		const plan = planJob(job)[0];
		const had = new Set(plan?.findings.map(({ code }) => code));
		for (const { code, remedies } of plan?.findings ?? [])
			for (const { action, change } of remedies) {
				const cured = applyChange(job, change);
				if (!cured.ok) throw new Error(JSON.stringify(cured.problems));
				const after = planJob(cured.job)[0];
				if (after === undefined) throw new Error("no plan");
				const fresh = refusalsOf(after).filter((finding) => !had.has(finding.code));
				expect(fresh, `${code} ${action}`).toEqual([]);
			}
	}
});

describe("what comes first and what else would do", () => {
	test("a remedy that leaves nothing refused comes before one that leaves the next corner", () => {
		// A nib of 30 on 100: more projection along one of its sides lets one of its two corners through.
		const corners = [
			[0, 0],
			[1000, 0],
			[1000, -30],
			[1100, -30],
			[1100, 0],
			[2400, 0],
		];
		const { labels, after } = told({ corners, walls: [] }, "no-room-round-corner");
		expect(labels).toHaveLength(2);
		for (const offered of labels) {
			const left = offered.map((label) => after(label).refusals.length);
			expect(left[0]).toBe(0);
			expect(left.some((refusals) => refusals > 0)).toBe(true);
			expect(left).toEqual(left.toSorted((a, b) => Math.sign(a) - Math.sign(b)));
		}
	});

	test("an obstacle deeper than this system reaches is passed by one that reaches further, and the figure is said", () => {
		const pipe = { kind: "pipe", wall: 1, from: 1500, to: 1560, depth: 160 };
		const { labels, messages, after } = told({ obstacles: [pipe] }, "obstacle-in-the-way");
		expect(messages).toEqual([
			"It stands 160 mm off the front wall at track height and the track runs through it; past it on that wall it needs a projection of 175 mm.",
		]);
		expect(labels[0]).toContain("Use Ceiling channel, projection 175 mm");
		expect(after("Use Ceiling channel, projection 175 mm").refusals).toEqual([]);
	});

	test("a system is named at the projection with which its own bend passes an external corner", () => {
		const corners = [
			[0, 0],
			[1500, 0],
			[1500, 1500],
		];
		const { labels, after } = told({ corners, walls: [] }, "no-room-round-corner");
		// Least radius 180 and clearance 12 at 90°: 12 cos 45° + 180 (1 − cos 45°) = 61.2.
		expect(labels[0]).toContain("Use Fine hand-drawn, projection 62 mm");
		expect(after("Use Fine hand-drawn, projection 62 mm").refusals).toEqual([]);
	});

	test("projections too different for an almost flat corner are made alike, before a wall is given up", () => {
		const corners = [
			[0, 0],
			[1500, 0],
			[2198.69, 42.73],
		];
		const { labels } = told({ corners, walls: [{ projection: 40 }, { projection: 140 }] }, "leg-too-short");
		expect(labels[0]?.[0]).toBe("The same projection on every wall");
	});

	test("a radius too wide both for the corner's clearance and for its walls is told once, with the smaller figure", () => {
		const corners = [
			[0, 0],
			[900, 0],
			[900, 1800],
		];
		const track = { projection: 100, bends: [{ corner: 1, radius: 900 }] };
		const { messages } = told({ corners, walls: [], track }, "radius-too-large");
		// (100/cos 45° − 15)/(1/cos 45° − 1) = 305.2.
		expect(messages).toEqual(["Radius 900 mm is set at corner 1; its walls leave room for 305 mm at the most."]);
	});
});
