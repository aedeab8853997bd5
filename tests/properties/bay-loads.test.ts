import { applyChange, type BayPlan, bracketReactions, libraryOf, planBay, planJob } from "@baywright/setout";
import fc from "fast-check";
import { expect, test } from "vitest";
import { stiffnessReactions } from "../oracles/beam-stiffness.ts";
import { bayOf, check, jobOf, ordinaryBays, planDrawn } from "./bays.ts";

const between = (min: number, max: number) => fc.integer({ min, max });

/** Curtains one by one or as the track is drawn, of built-in cloths. */
const someCurtains = fc.array(
	fc.record({
		cloth: fc.constantFrom("sheer-voile", "medium-cotton", "heavy-linen", "heavy-interlined"),
		drop: between(500, 2700),
		fullness: between(12, 30).map((tenths) => tenths / 10),
		stretch: fc.option(fc.tuple(between(0, 2500), between(100, 2500)), { nil: null }),
	}),
	{ minLength: 1, maxLength: 3 },
);

/** Ordinary bays with something hung in them. */
const hungBays = fc
	.tuple(ordinaryBays, someCurtains, fc.constantFrom("pair", "left", "right"))
	.map(([bay, curtains, draw]) => ({
		...bay,
		track: { ...bay.track, draw },
		curtains: curtains.map(({ stretch, ...made }) =>
			stretch === null ? made : { ...made, from: stretch[0], to: stretch[0] + stretch[1] },
		),
	}));

interface Strip {
	readonly length: number;
	readonly stations: readonly number[];
	readonly own: number;
	/** Curtains whose mass is known; here all are. */
	readonly curtains: readonly (BayPlan["curtains"][number] & { readonly mass: number })[];
	readonly mass: number;
}

/** What hangs on a planned track; null where the bay is refused or no bracket found a place. */
function stripOf({ path, brackets, curtains, system }: BayPlan): Strip | null {
	if (path === null || brackets.length === 0) return null;
	const own = (system.massPerMetre * path.length) / 1000;
	const hung = curtains.map((curtain) => ({ ...curtain, mass: curtain.mass as number }));
	const mass = hung.reduce((sum, curtain) => sum + curtain.mass, own);
	return { length: path.length, stations: brackets.map(({ station }) => station), own, curtains: hung, mass };
}

interface Spread {
	readonly from: number;
	readonly to: number;
	readonly load: number;
}

/** Forces and moments about an end, before and after. */
function expectBalance(strip: Strip, reactions: readonly number[], loads: readonly Spread[]): void {
	const sum = reactions.reduce((all, reaction) => all + reaction, 0);
	expect(Math.abs(sum - strip.mass)).toBeLessThan(1e-7 * strip.mass);
	if (strip.stations.length < 2) return;
	for (const end of [0, strip.length]) {
		const held = reactions.reduce((all, reaction, i) => all + reaction * ((strip.stations[i] as number) - end), 0);
		const hangs = loads.reduce((all, { from, to, load }) => all + load * ((from + to) / 2 - end), 0);
		expect(Math.abs(held - hangs)).toBeLessThan(1e-7 * strip.mass * strip.length);
	}
}

/** A curtain's mass where it lies a share of the way from drawn to drawn back. */
const leftAt = ({ from, to, stack, mass }: Strip["curtains"][number], share: number): Spread => ({
	from: from + share * (stack.from - from),
	to: to + share * (stack.to - to),
	load: mass,
});

const withOwn = (strip: Strip, curtains: readonly Spread[]): Spread[] => [
	{ from: 0, to: strip.length, load: strip.own },
	...curtains,
];

test("brackets are told in order along the track", () => {
	check(
		hungBays,
		(bay) => {
			const { brackets } = planDrawn(bay);
			expect(brackets.map(({ station }) => station)).toEqual(
				brackets.map(({ station }) => station).toSorted((a, b) => a - b),
			);
		},
		150,
	);
});

test("drawn and drawn back, the brackets of a bay carry what hangs there and turn about neither end", () => {
	let hung = 0;
	check(
		hungBays,
		(bay) => {
			const plan = planDrawn(bay);
			const strip = stripOf(plan);
			if (strip === null) return;
			if (strip.curtains.length === 0) {
				expect(plan.loads).toEqual([]);
				return;
			}
			hung++;
			const { loads } = plan;
			expect(loads.map(({ bracket }) => bracket)).toEqual(plan.brackets.map((_, i) => i));
			for (const [state, share] of [
				["drawn", 0],
				["stacked", 1],
			] as const)
				expectBalance(
					strip,
					loads.map((load) => load[state]),
					withOwn(
						strip,
						strip.curtains.map((curtain) => leftAt(curtain, share)),
					),
				);
			for (const { greatest, least, drawn, stacked, share } of loads) {
				expect(greatest).toBeGreaterThanOrEqual(Math.max(drawn, stacked) - 1e-9 * strip.mass);
				expect(least).toBeLessThanOrEqual(Math.min(drawn, stacked) + 1e-9 * strip.mass);
				expect(share).toBeCloseTo(greatest / (plan.system.bracket.maxLoad as number), 12);
			}
		},
		300,
	);
	expect(hung).toBeGreaterThan(100);
});

/** How near the worst place is found, as a part of the curtain's mass. */
const NEAR = 5e-3;

test("each bracket's greatest is reached where the curtains are left for it, and there too forces and moments balance", () => {
	let reached = 0;
	check(
		hungBays,
		(bay) => {
			const plan = planDrawn(bay);
			const strip = stripOf(plan);
			if (strip === null || strip.curtains.length === 0) return;
			const { system } = plan;
			const track = {
				length: strip.length,
				brackets: strip.stations,
				bracketWidth: system.bracket.width,
				massPerMetre: system.massPerMetre,
			};
			const reactionsWith = (curtains: readonly Spread[]) =>
				bracketReactions(
					track,
					curtains.map(({ from, to, load }) => ({ from, to, stack: { from, to }, mass: load })),
				).map(({ drawn }) => drawn);
			const worst = plan.loads.reduce((most, load) => (load.greatest > most.greatest ? load : most));
			// Curtains do not stand in each other's way here: each is left where it alone loads that bracket most.
			const left = strip.curtains.map((curtain) => {
				const tried = Array.from({ length: 201 }, (_, k) => leftAt(curtain, k / 200));
				const loads = tried.map((spread) => reactionsWith([spread])[worst.bracket] as number);
				return tried[loads.indexOf(Math.max(...loads))] as Spread;
			});
			const reactions = reactionsWith(left);
			expect(Math.abs((reactions[worst.bracket] as number) - worst.greatest)).toBeLessThan(NEAR * strip.mass);
			expectBalance(strip, reactions, withOwn(strip, left));
			reached++;
		},
		40,
	);
	expect(reached).toBeGreaterThan(10);
});

/** Nearer brackets hold as one, which the oracle's rigid points do not. */
const standApart = ({ stations }: Strip, width: number) =>
	stations.every((station, i) => i === 0 || station - (stations[i - 1] as number) >= width);

test("an independent stiffness method says the same of planned bays: drawn, drawn back, and nowhere between beyond what is told", () => {
	let compared = 0;
	check(
		fc.tuple(hungBays, fc.array(between(0, 1000), { minLength: 6, maxLength: 6 })),
		([bay, shares]) => {
			const plan = planDrawn(bay);
			const strip = stripOf(plan);
			if (strip === null || strip.curtains.length === 0 || strip.stations.length < 2) return;
			if (!standApart(strip, plan.system.bracket.width)) return;
			compared++;
			const at = (share: (i: number) => number) =>
				stiffnessReactions(
					strip.length,
					strip.stations,
					withOwn(
						strip,
						strip.curtains.map((curtain, i) => leftAt(curtain, share(i))),
					),
				);
			const drawn = at(() => 0);
			const stacked = at(() => 1);
			plan.loads.forEach((load, i) => {
				expect(Math.abs(load.drawn - (drawn[i] as number))).toBeLessThan(1e-5 * strip.mass);
				expect(Math.abs(load.stacked - (stacked[i] as number))).toBeLessThan(1e-5 * strip.mass);
			});
			// Each curtain somewhere else on its way.
			for (const shift of [0, 1, 2]) {
				const between = at((i) => (shares[(i + 2 * shift) % shares.length] as number) / 1000);
				plan.loads.forEach(({ greatest, least }, i) => {
					expect(between[i]).toBeLessThan(greatest + NEAR * strip.mass);
					expect(between[i]).toBeGreaterThan(least - NEAR * strip.mass);
				});
			}
		},
		60,
	);
	expect(compared).toBeGreaterThan(20);
});

test("what is told is what the loads say: that brackets are over the limit once, by the worst, with how many more are", () => {
	let over = 0;
	check(
		hungBays,
		(bay) => {
			const { brackets, loads, findings, system } = planDrawn(bay);
			const limit = system.bracket.maxLoad as number;
			const told = findings.filter(({ code }) => code === "bracket-overloaded");
			const heavy = loads.filter(({ greatest }) => greatest > limit);
			expect(told).toHaveLength(heavy.length === 0 ? 0 : 1);
			for (const { where, figures } of told) {
				const most = Math.max(...heavy.map(({ greatest }) => greatest));
				expect(figures.others).toBe(heavy.length - 1);
				expect(figures.load).toBeCloseTo(most, 5);
				const there = heavy.find(({ bracket }) => bracket === where.bracket);
				expect(there?.greatest).toBeCloseTo(most, 5);
				expect(where.wall).toBe(brackets[where.bracket as number]?.wall);
				over++;
			}
		},
		200,
	);
	expect(over).toBeGreaterThan(20);
});

/** Straight bays and square ones with a track that takes more brackets, and curtains that are somewhat too heavy for it. */
const heavilyHung = fc
	.record({
		front: between(1400, 3600),
		sides: fc.option(between(700, 1500), { nil: null }),
		system: fc.constantFrom("heavy-hand-drawn", "fine-hand-drawn", "ceiling-channel"),
		draw: fc.constantFrom("pair", "left", "right"),
		drop: between(1400, 2600),
		cloth: fc.constantFrom("heavy-linen", "heavy-interlined"),
	})
	.map(({ front, sides, system, draw, drop, cloth }) => ({
		id: "b",
		corners:
			sides === null
				? [
						[0, 0],
						[front, 0],
					]
				: [
						[0, 0],
						[0, sides],
						[front, sides],
						[front, 0],
					],
		track: { system, draw },
		curtains: [{ cloth, drop, fullness: 2 }],
	}));

test("brackets are pinned only where that cures: by the stiffness method no bracket is over its limit after it, drawn or drawn back", () => {
	let cured = 0;
	check(
		heavilyHung,
		(bay) => {
			const job = jobOf(bay);
			const plan = planBay(bayOf(job), libraryOf(job));
			const [forJob] = planJob(job);
			plan.findings.forEach((finding, index) => {
				const remedy = forJob?.findings[index]?.remedies.find(({ action }) => action === "pin-brackets");
				if (finding.code !== "bracket-overloaded" || remedy === undefined) return;
				const after = applyChange(job, remedy.change);
				if (!after.ok) throw new Error(JSON.stringify(after.problems));
				const now = planBay(bayOf(after.job), libraryOf(after.job), { trials: 0 });
				const limit = now.system.bracket.maxLoad as number;
				expect(now.brackets.filter(({ role }) => role === "pinned").length).toBeGreaterThanOrEqual(
					remedy.change.length,
				);
				expect(now.brackets.length).toBeGreaterThanOrEqual(plan.brackets.length);
				expect(now.findings.some(({ code }) => code === finding.code)).toBe(false);
				const strip = stripOf(now) as Strip;
				if (!standApart(strip, now.system.bracket.width)) return;
				for (const share of [0, 1]) {
					const spreads = strip.curtains.map((curtain) => leftAt(curtain, share));
					for (const reaction of stiffnessReactions(strip.length, strip.stations, withOwn(strip, spreads)))
						expect(reaction).toBeLessThan(limit + 1e-5 * strip.mass);
				}
				cured++;
			});
		},
		60,
	);
	expect(cured).toBeGreaterThan(10);
});
