import { expect, test } from "vitest";
import { longestSpan } from "../../../packages/app/src/phone/longest-span.ts";
import type { BracketMark, SiteMark } from "../../../packages/app/src/phone/marks.ts";
import { marked, rightAngled } from "./marks-right-angled.ts";

const isBracket = (mark: SiteMark): mark is SiteMark & BracketMark => mark.kind === "bracket";

test("a span past a corner is no longer than both its sides in one line and a tenth, as far as a drawn run may be off", () => {
	const bay = rightAngled();
	const brackets = marked(bay).filter(isBracket);
	const before = brackets.findLast(({ place }) => place.wall === 0);
	const after = brackets.find(({ place }) => place.wall === 1);
	const last = brackets.find(({ place }) => place.wall === 2);
	if (!before || !after || !last) throw new Error("no brackets beside the corners");
	// Walls of 900, 1800 and 900; all brackets stand 40 off, so by Pythagoras each lies √(its distance² + 40²) from the corner.
	const left = Math.hypot(900 - before.place.at, 40);
	expect(longestSpan(bay, before, after)).toBe(Math.ceil(1.1 * (left + Math.hypot(after.place.at, 40))));
	expect(longestSpan(bay, before, last)).toBe(Math.ceil(1.1 * (left + 1800 + Math.hypot(last.place.at, 40))));
});
