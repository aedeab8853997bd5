import { setCut, setSpan, spanAcross } from "@baywright/editor";
import { expect, test } from "vitest";
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
