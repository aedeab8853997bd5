import { clearOf, parseJob, planJob, positionOf } from "@baywright/setout";
import fc from "fast-check";
import { expect, test } from "vitest";

const SEED = 2203;
const cases = fc.record({
	long: fc.integer({ min: 400, max: 4800 }),
	draw: fc.constantFrom("pair", "left", "right"),
	heading: fc.constantFrom("pencil", "pinch", "goblet", "box", "wave"),
	fullness: fc.integer({ min: 10, max: 40 }).map((tenths) => tenths / 10),
	drop: fc.integer({ min: 300, max: 3200 }),
	repeat: fc.integer({ min: 0, max: 900 }),
	match: fc.constantFrom("straight", "half-drop"),
	widths: fc.constantFrom("whole", "half"),
	thickness: fc.option(
		fc.integer({ min: 1, max: 40 }).map((tenths) => tenths / 10),
		{ nil: null },
	),
});
type Case = typeof cases extends fc.Arbitrary<infer One> ? One : never;

function planOf({ long, draw, heading, fullness, drop, repeat, match, widths, thickness }: Case) {
	const read = parseJob({
		format: "baywright-job",
		version: 1,
		cloths: [{ id: "c", width: 1370, repeat, match, mass: 300, thickness }],
		bays: [
			{
				id: "b",
				corners: [
					[0, 0],
					[5000, 0],
				],
				openings: [{ wall: 0, from: 300, to: 3000 }],
				track: { draw, start: { wall: 0, at: 100 }, end: { wall: 0, at: 100 + long } },
				curtains: [{ cloth: "c", heading, fullness, drop }],
				makeUp: { widths },
			},
		],
	});
	if (!read.ok) throw new Error(JSON.stringify(read.problems));
	const [plan] = planJob(read.job);
	if (plan === undefined || plan.path === null) throw new Error("no track");
	return { ...plan, path: plan.path };
}

const metresOf = (one: Case) => planOf(one).curtains.reduce((sum, { cutting }) => sum + (cutting?.metres ?? 0), 0);

test("stacks lie inside their curtains, and with the track left clear make up the track", () => {
	fc.assert(
		fc.property(cases, (one) => {
			const { curtains, path } = planOf(one);
			let at = 0;
			let clear = 0;
			for (const { from, to, stack } of curtains) {
				expect(stack.from).toBeGreaterThanOrEqual(from);
				expect(stack.to).toBeLessThanOrEqual(to + 1e-9);
				expect(stack.to).toBeGreaterThan(stack.from);
				expect(stack.from).toBeGreaterThanOrEqual(at - 1e-9);
				clear += stack.from - at;
				at = stack.to;
			}
			const stacked = curtains.reduce((sum, { stack }) => sum + stack.to - stack.from, 0);
			expect(clear + path.length - at + stacked).toBeCloseTo(path.length, 6);
		}),
		{ seed: SEED, numRuns: 60 },
	);
});

test("a longer drop, more fullness or a longer track never takes less cloth", () => {
	fc.assert(
		fc.property(cases, fc.integer({ min: 0, max: 500 }), (one, more) => {
			const metres = metresOf(one);
			expect(metresOf({ ...one, drop: one.drop + more })).toBeGreaterThanOrEqual(metres - 1e-9);
			expect(metresOf({ ...one, fullness: one.fullness + more / 1000 })).toBeGreaterThanOrEqual(metres - 1e-9);
			expect(metresOf({ ...one, long: Math.min(4800, one.long + more) })).toBeGreaterThanOrEqual(metres - 1e-9);
		}),
		{ seed: SEED, numRuns: 40 },
	);
});

test("the further curtains are opened the more glass is clear, from what they leave drawn to what they leave open", () => {
	fc.assert(
		fc.property(
			cases,
			fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 2, maxLength: 6 }),
			(one, some) => {
				const { curtains, glass } = planOf(one);
				const clearAt = (opened: number) => {
					const hanging = curtains.map((curtain) => positionOf(curtain, opened));
					return glass.openings.reduce((sum, opening) => sum + clearOf(opening, hanging), 0);
				};
				expect(clearAt(0)).toBeCloseTo(glass.clearDrawn, 6);
				expect(clearAt(1)).toBeCloseTo(glass.clearOpen, 6);
				let before = 0;
				for (const opened of some.toSorted((a, b) => a - b)) {
					expect(clearAt(opened)).toBeGreaterThanOrEqual(before - 1e-9);
					before = clearAt(opened);
				}
			},
		),
		{ seed: SEED, numRuns: 60 },
	);
});
