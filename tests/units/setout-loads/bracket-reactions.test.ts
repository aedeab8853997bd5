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
