import { setCut, setFittedBracket, setSpan, spanAcross } from "@baywright/editor";
import { describe, expect, test } from "vitest";
import { rightAngled } from "../app/marks-right-angled.ts";

const [left, right] = [
	{ wall: 0, at: 500 },
	{ wall: 1, at: 400 },
];

test("a span taped again takes the place of the first, wherever its brackets are by then, and can be taken away", () => {
	const once = setSpan(rightAngled(), left, right, 560);
	const again = setSpan(once, { ...left, at: 510 }, right, 566);
	expect(again.fitted.spans).toEqual([{ from: { wall: 0, at: 510 }, to: right, value: 566 }]);
	const other = setSpan(again, { wall: 1, at: 1400 }, { wall: 2, at: 400 }, 570);
	expect(spanAcross(other, 0, 1)?.value).toBe(566);
	expect(setSpan(other, left, right, null).fitted.spans.map(({ value }) => value)).toEqual([570]);
});

test("a piece has one cut length, and none once it is cleared", () => {
	const twice = setCut(setCut(setCut(rightAngled(), "A", 1500), "B", 1600), "A", 1510);
	expect(twice.fitted.cut).toEqual([
		{ piece: "B", length: 1600 },
		{ piece: "A", length: 1510 },
	]);
	expect(setCut(twice, "A", null).fitted.cut).toEqual([{ piece: "B", length: 1600 }]);
});

test("what is sawn off the left end of a piece brings what is bent on it nearer, and only on that piece", () => {
	const done = [
		"bend-1",
		"bend-1 radius 310 sweep 486.9 middle 800 of A",
		"bend-2 radius 310 sweep 486.9 middle 500 of B",
	];
	const bay = setCut(rightAngled({ fitted: { done } }), "A", 1500);
	expect(bay.fitted.done).toEqual(done);
	expect(setCut(bay, "A", 1492, 8).fitted.done).toEqual([
		"bend-1",
		"bend-1 radius 310 sweep 486.9 middle 792 of A",
		"bend-2 radius 310 sweep 486.9 middle 500 of B",
	]);
	expect(setCut(bay, "A", 1492, null).fitted.done[1]).toBe("bend-1 radius 310 sweep 486.9");
});

describe("a bracket as it was measured", () => {
	const planned = { wall: 1, at: 500 };
	const entries = (bay: ReturnType<typeof rightAngled>) => bay.fitted.brackets;

	test("is one more of those fitted, with where the plan had it; a figure left out is as planned", () => {
		expect(entries(setFittedBracket(rightAngled(), null, planned, { at: 512 }))).toEqual([
			{ wall: 1, planned: 500, at: 512, projection: null },
		]);
		expect(entries(setFittedBracket(rightAngled(), null, planned, { projection: 45 }))).toEqual([
			{ wall: 1, planned: 500, at: 500, projection: 45 },
		]);
	});

	test("keeps the place it was first planned at, its place among the others, and the figure that is not typed", () => {
		const other = { wall: 0, planned: 300, at: 300, projection: null };
		const bay = rightAngled({ fitted: { brackets: [{ wall: 1, planned: 500, at: 512, projection: 45 }, other] } });
		// By now the plan has it where it is.
		const now = { wall: 1, at: 512 };
		expect(entries(setFittedBracket(bay, 0, now, { at: 508 }))).toEqual([
			{ wall: 1, planned: 500, at: 508, projection: 45 },
			other,
		]);
		expect(entries(setFittedBracket(bay, 0, now, { projection: 47 }))[0]).toEqual({
			wall: 1,
			planned: 500,
			at: 512,
			projection: 47,
		});
	});

	test("goes back to as planned figure by figure, and is gone with the last", () => {
		const both = setFittedBracket(setFittedBracket(rightAngled(), null, planned, { at: 512 }), 0, planned, {
			projection: 45,
		});
		const place = setFittedBracket(both, 0, { wall: 1, at: 512 }, { at: null });
		expect(entries(place)).toEqual([{ wall: 1, planned: 500, at: 500, projection: 45 }]);
		expect(entries(setFittedBracket(place, 0, planned, { projection: null }))).toEqual([]);
		const projection = setFittedBracket(both, 0, { wall: 1, at: 512 }, { projection: null });
		expect(entries(projection)).toEqual([{ wall: 1, planned: 500, at: 512, projection: null }]);
		expect(entries(setFittedBracket(projection, 0, { wall: 1, at: 512 }, { at: null }))).toEqual([]);
	});

	test("that the plan has taken to another wall was planned there, not where it is said to be now", () => {
		const bay = rightAngled({ fitted: { brackets: [{ wall: 0, planned: 800, at: 800, projection: null }] } });
		expect(entries(setFittedBracket(bay, 0, planned, { at: 505 }))).toEqual([
			{ wall: 1, planned: 500, at: 505, projection: null },
		]);
	});

	test("takes the pin that held it along, and back", () => {
		const bay = rightAngled({}, { brackets: [planned, { wall: 0, at: 300 }] });
		const moved = setFittedBracket(bay, null, planned, { at: 512 });
		expect(moved.track.brackets).toEqual([
			{ wall: 1, at: 512 },
			{ wall: 0, at: 300 },
		]);
		expect(setFittedBracket(moved, 0, { wall: 1, at: 512 }, { at: null })).toEqual(bay);
	});

	test("takes the ends of spans that were taped to it along, and no others", () => {
		const bay = setSpan(setSpan(rightAngled(), left, planned, 560), { wall: 1, at: 1400 }, { wall: 2, at: 400 }, 570);
		const moved = setFittedBracket(bay, null, planned, { at: 512 });
		expect(moved.fitted.spans).toEqual([
			{ from: left, to: { wall: 1, at: 512 }, value: 560 },
			{ from: { wall: 1, at: 1400 }, to: { wall: 2, at: 400 }, value: 570 },
		]);
		expect(setFittedBracket(moved, 0, { wall: 1, at: 512 }, { at: null })).toEqual(bay);
	});

	test("that no plan ever had goes when its place is taken back", () => {
		const bay = rightAngled({ fitted: { brackets: [{ wall: 1, planned: null, at: 640, projection: null }] } });
		expect(entries(setFittedBracket(bay, 0, { wall: 1, at: 640 }, { at: 650 }))).toEqual([
			{ wall: 1, planned: null, at: 650, projection: null },
		]);
		expect(entries(setFittedBracket(bay, 0, { wall: 1, at: 640 }, { at: null }))).toEqual([]);
	});
});
