import { bracketReactions } from "@baywright/setout";
import { expect, test } from "vitest";

const track = (brackets: readonly number[]) => ({ length: 1000, brackets, bracketWidth: 30, massPerMetre: 2 });
const curtain = { from: 0, to: 1000, stack: { from: 0, to: 200 }, mass: 10 };

test("with no bracket nothing is told; one carries all", () => {
	expect(bracketReactions(track([]), [curtain])).toEqual([]);
	const [only, ...others] = bracketReactions(track([300]), [curtain]);
	expect(others).toEqual([]);
	for (const load of Object.values(only ?? {})) expect(load).toBeCloseTo(12, 9);
});

test.each([0, 1e-9, 0.5, 5, 29.9])("two brackets %d mm apart hold as one and carry alike", (apart) => {
	const near = bracketReactions(track([100, 500 - apart / 2, 500 + apart / 2, 900]), [curtain]);
	const one = bracketReactions(track([100, 500, 900]), [curtain]);
	expect(near).toHaveLength(4);
	expect(near[1]).toEqual(near[2]);
	expect((near[1]?.worst as number) * 2).toBeCloseTo(one[1]?.worst as number, 6);
	expect(near[0]?.least).toBeCloseTo(one[0]?.least as number, 6);
});

test("two brackets one width apart are two, and stay finite however thin a bracket is said to be", () => {
	const apart = bracketReactions(track([100, 485, 515, 900]), [curtain]);
	expect(apart[1]?.stacked).not.toBeCloseTo(apart[2]?.stacked as number, 3);
	const thin = bracketReactions({ ...track([100, 499, 500, 900]), bracketWidth: 0 }, [curtain]);
	const sum = thin.reduce((total, { drawn }) => total + drawn, 0);
	expect(sum).toBeCloseTo(12, 6);
});

test("a curtain whose mass is not known counts as nothing", () => {
	const own = bracketReactions(track([100, 500, 900]), []);
	expect(bracketReactions(track([100, 500, 900]), [{ ...curtain, mass: null }])).toEqual(own);
});

test("on very many brackets, unevenly apart, each one's greatest and least are found wherever the curtain is left", () => {
	// 120 brackets between 40 and 400 apart; both loads at a place are those of a curtain that hangs there drawn.
	const brackets = Array.from({ length: 120 }, (_, i) => 40 * i + 60 * ((i * i) % 7));
	const ascending = brackets
		.toSorted((a, b) => a - b)
		.filter((at, i, all) => i === 0 || at - (all[i - 1] as number) >= 40);
	const length = (ascending.at(-1) as number) + 50;
	const strip = { length, brackets: ascending, bracketWidth: 30, massPerMetre: 0 };
	const hung = { from: 0, to: length, stack: { from: 0, to: length / 10 }, mass: 10 };
	const told = bracketReactions(strip, [hung]);
	expect(ascending.length).toBeGreaterThan(60);
	const most = ascending.map(() => Number.NEGATIVE_INFINITY);
	const least = ascending.map(() => Number.POSITIVE_INFINITY);
	for (let k = 0; k <= 2000; k++) {
		const to = length - ((length - hung.stack.to) * k) / 2000;
		bracketReactions(strip, [{ ...hung, to, stack: { from: 0, to } }]).forEach(({ drawn }, i) => {
			most[i] = Math.max(most[i] as number, drawn);
			least[i] = Math.min(least[i] as number, drawn);
		});
	}
	told.forEach((each, i) => {
		// A two-thousandth of the way is 2 mm: no load changes by more than a thousandth of the mass there.
		expect(Math.abs(each.worst - (most[i] as number))).toBeLessThan(0.01);
		expect(Math.abs(each.least - (least[i] as number))).toBeLessThan(0.01);
	});
});
