import { bracketReactions } from "@baywright/setout";
import fc from "fast-check";
import { expect, test } from "vitest";
import { stiffnessReactions } from "../oracles/beam-stiffness.ts";

const SEED = 2207;
const hold = <Case>(cases: fc.Arbitrary<Case>, law: (one: Case) => void, numRuns: number) =>
	fc.assert(fc.property(cases, law), { seed: SEED, numRuns });

/** How near the worst place is found, as a part of the curtain's mass. */
const NEAR = 5e-3;

const share = fc.integer({ min: 0, max: 10_000 }).map((part) => part / 10_000);

/** Tracks of 300 to 9000 mm on 2 to 14 brackets no nearer than 31 mm, overhangs at both ends, one to three curtains. */
const hungTracks = fc
	.record({
		gaps: fc.array(fc.integer({ min: 31, max: 800 }), { minLength: 1, maxLength: 13 }),
		overhangs: fc.tuple(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 0, max: 300 })),
		massPerMetre: fc.integer({ min: 1, max: 30 }).map((tenths) => tenths / 10),
		drawn: fc.array(
			fc.record({ ends: fc.tuple(share, share), stack: fc.tuple(share, share), mass: fc.integer({ min: 1, max: 25 }) }),
			{ minLength: 1, maxLength: 3 },
		),
	})
	.map(({ gaps, overhangs, massPerMetre, drawn }) => {
		const brackets: number[] = [overhangs[0]];
		for (const gap of gaps) brackets.push((brackets.at(-1) as number) + gap);
		const length = (brackets.at(-1) as number) + overhangs[1];
		const curtains = drawn.map(({ ends, stack, mass }) => {
			const from = Math.min(...ends) * (length - 2);
			const to = Math.max(Math.max(...ends) * length, from + 1);
			const inside = (part: number) => from + part * (to - from);
			const start = inside(Math.min(...stack));
			return { from, to, stack: { from: start, to: Math.max(inside(Math.max(...stack)), start + 0.5) }, mass };
		});
		return { track: { length, brackets, bracketWidth: 30, massPerMetre }, curtains };
	});

type Hung = typeof hungTracks extends fc.Arbitrary<infer One> ? One : never;

const massOf = ({ track, curtains }: Hung) =>
	(track.massPerMetre * track.length) / 1000 + curtains.reduce((sum, { mass }) => sum + mass, 0);

test("what the brackets carry is what hangs there, and turns the track about neither end", () => {
	hold(
		hungTracks,
		(hung) => {
			const { track, curtains } = hung;
			const reactions = bracketReactions(track, curtains);
			const own = (track.massPerMetre * track.length) / 1000;
			for (const state of ["drawn", "stacked"] as const) {
				const load = reactions.reduce((sum, reaction) => sum + reaction[state], 0);
				expect(Math.abs(load - massOf(hung))).toBeLessThan(1e-8 * massOf(hung));
				for (const end of [0, track.length]) {
					const held = reactions.reduce((sum, r, i) => sum + r[state] * ((track.brackets[i] as number) - end), 0);
					const hangs = curtains.reduce(
						(sum, curtain) => {
							const { from, to } = state === "drawn" ? curtain : curtain.stack;
							return sum + curtain.mass * ((from + to) / 2 - end);
						},
						own * (track.length / 2 - end),
					);
					expect(Math.abs(held - hangs)).toBeLessThan(1e-8 * massOf(hung) * track.length);
				}
			}
		},
		1000,
	);
});

test("drawn and drawn back, every bracket carries what an independent stiffness method says", () => {
	hold(
		hungTracks,
		(hung) => {
			const { track, curtains } = hung;
			const own = { from: 0, to: track.length, load: (track.massPerMetre * track.length) / 1000 };
			const reactions = bracketReactions(track, curtains);
			const drawn = curtains.map(({ from, to, mass }) => ({ from, to, load: mass }));
			const stacked = curtains.map(({ stack, mass }) => ({ ...stack, load: mass }));
			const asDrawn = stiffnessReactions(track.length, track.brackets, [own, ...drawn]);
			const asStacked = stiffnessReactions(track.length, track.brackets, [own, ...stacked]);
			reactions.forEach((reaction, i) => {
				expect(Math.abs(reaction.drawn - (asDrawn[i] as number))).toBeLessThan(1e-5 * massOf(hung));
				expect(Math.abs(reaction.stacked - (asStacked[i] as number))).toBeLessThan(1e-5 * massOf(hung));
			});
		},
		150,
	);
});

test("nowhere between drawn and drawn back is a bracket loaded beyond its worst or under its least", () => {
	hold(
		fc.tuple(hungTracks, share),
		([{ track, curtains }, moved]) => {
			const told = bracketReactions(track, curtains);
			const between = curtains.map(({ from, to, stack, mass }) => {
				const present = { from: from + moved * (stack.from - from), to: to + moved * (stack.to - to) };
				return { ...present, stack: present, mass };
			});
			const mass = curtains.reduce((sum, curtain) => sum + curtain.mass, 0);
			bracketReactions(track, between).forEach(({ drawn }, i) => {
				expect(drawn).toBeLessThan((told[i]?.worst as number) + NEAR * mass);
				expect(drawn).toBeGreaterThan((told[i]?.least as number) - NEAR * mass);
			});
		},
		2000,
	);
});

test("the worst is really reached: by one curtain, somewhere on its way", () => {
	hold(
		hungTracks,
		({ track, curtains }) => {
			const [curtain] = curtains;
			if (curtain === undefined) return;
			const told = bracketReactions(track, [curtain]);
			const most = track.brackets.map(() => Number.NEGATIVE_INFINITY);
			for (let step = 0; step <= 500; step++) {
				const moved = step / 500;
				const { from, to, stack, mass } = curtain;
				const present = { from: from + moved * (stack.from - from), to: to + moved * (stack.to - to) };
				bracketReactions(track, [{ ...present, stack: present, mass }]).forEach(({ drawn }, i) => {
					most[i] = Math.max(most[i] as number, drawn);
				});
			}
			told.forEach(({ worst }, i) => {
				expect(Math.abs(worst - (most[i] as number))).toBeLessThan(NEAR * curtain.mass);
			});
		},
		40,
	);
});
