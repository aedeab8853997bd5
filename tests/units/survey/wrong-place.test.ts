import { settleBay } from "@baywright/survey";
import { expect, test } from "vitest";
import { tape } from "../../oracles/tape.ts";

const points = (places: readonly (readonly [number, number])[]) => places.map(([x, y]) => ({ x, y }));

test("a bay that comes to rest in the wrong place is looked for elsewhere: a sketch some degrees out, good readings of every kind of distance", () => {
	const rises = [0, 0, 0, 0, 0];
	const bay = {
		corners: points([
			[0, 0],
			[0, 1668],
			[408, 2199],
			[887, 1834],
			[1374, 834],
			[137, -75],
		]),
		rises,
	};
	const sketch = points([
		[0, 0],
		[0, 1652],
		[403, 2248],
		[884, 1892],
		[1243, 806],
		[-18, 86],
	]);
	const distances = [
		[0, 2],
		[3, 5],
		[1, 4],
		[0, 5],
		[4, 5],
		[1, 3],
		[2, 3],
		[0, 3],
		[0, 1],
		[2, 4],
	] as const;
	const twice = [
		[3, 5],
		[1, 4],
		[1, 3],
		[0, 2],
		[4, 5],
		[3, 5],
		[1, 4],
	] as const;
	const readings = [...distances, ...twice].map(([from, to]) => {
		const what =
			to === from + 1
				? ({ kind: "run", wall: from, sd: null } as const)
				: ({ kind: "diagonal", from, to, sd: null } as const);
		return { ...what, value: Math.round(tape(bay, what)) };
	});
	const settled = settleBay({ corners: sketch, rises, readings });
	if (!settled.ok) throw new Error(JSON.stringify(settled.faults));
	expect(settled.value.closes).toBe(true);
	settled.value.corners.forEach(({ x, y }, i) => {
		const { x: u, y: v } = bay.corners[i] as { x: number; y: number };
		expect(Math.hypot(x - u, y - v)).toBeLessThan(1.5);
	});
});

test("readings that cannot all be right leave what nobody read where it lay, however often the bay is settled", () => {
	let corners = points([
		[0, 0],
		[0, 299],
		[9, 471],
		[128, 1402],
		[157, 2167],
	]);
	const rises = [0, 0, 0, 0];
	// The last two runs together do not reach as far as was taped across them, and no angle was read.
	const readings = [
		...[297.51, 170.38, 919.14, 766.12].map((value, wall) => ({ kind: "run" as const, wall, value, sd: null })),
		{ kind: "diagonal" as const, from: 2, to: 4, value: 1701.89, sd: null },
	];
	const settledFrom = (places: typeof corners) => {
		const outcome = settleBay({ corners: places, rises, readings });
		if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
		return outcome.value;
	};
	corners = [...settledFrom(corners).corners];
	for (let time = 0; time < 5; time++) {
		const again = settledFrom(corners);
		expect(again.closes).toBe(false);
		for (const [i, { x, y }] of again.corners.entries())
			expect(Math.hypot(x - (corners[i]?.x ?? 0), y - (corners[i]?.y ?? 0)), `corner ${i}`).toBeLessThan(0.05);
		corners = [...again.corners];
	}
});
