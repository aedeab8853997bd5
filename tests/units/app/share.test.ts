import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { share } from "../../../packages/editor/src/share.ts";

/** What a job file can hold: its keys are known ones, and none of them is the name of an object's own parent. */
const jobLike = fc.jsonValue().filter((value) => !JSON.stringify(value).includes('"__proto__"'));

describe("what did not change keeps its identity", () => {
	it("an equal copy is the original", () => {
		fc.assert(
			fc.property(jobLike, (value) => {
				const before = JSON.parse(JSON.stringify(value));
				expect(Object.is(share(before, structuredClone(before)), before)).toBe(true);
			}),
			{ seed: 1407 },
		);
	});

	it("the result always equals what was asked for", () => {
		fc.assert(
			fc.property(jobLike, jobLike, (a, b) => {
				const [before, next] = [JSON.parse(JSON.stringify(a)), JSON.parse(JSON.stringify(b))];
				expect(share(before, next)).toEqual(next);
			}),
			{ seed: 1407 },
		);
	});

	it("only the way to the change is new", () => {
		const before = {
			bays: [
				{ corners: [[0, 0]], track: { radius: 1 } },
				{ corners: [[5, 5]], track: { radius: 2 } },
			],
		};
		const next = structuredClone(before);
		if (next.bays[0]) next.bays[0].track.radius = 9;
		const shared = share(before, next);
		expect(shared).not.toBe(before);
		expect(shared.bays[1]).toBe(before.bays[1]);
		expect(shared.bays[0]?.corners).toBe(before.bays[0]?.corners);
		expect(shared.bays[0]?.track).toEqual({ radius: 9 });
	});

	it("a key taken away is a change", () => {
		const before: Record<string, number> = { a: 1, b: 2 };
		expect(share(before, { a: 1 })).toEqual({ a: 1 });
	});
});
