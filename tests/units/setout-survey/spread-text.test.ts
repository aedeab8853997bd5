import { formatSpread } from "@baywright/setout";
import { expect, test } from "vitest";

// 1.96 standard deviations hold 95 % of a normal distribution (handbook figure, from memory); 1/16" is 1.5875 mm.
test.each([
	[1, "mm", "2.0"],
	[1, "cm", "0.20"],
	[0.3, "in", '1/16"'],
	[0.809, "in", '1/16"'],
	[0.811, "in", '1/8"'],
	[0, "in", '0"'],
] as const)("a standard deviation of %d mm in %s is shown as ± %s", (sd, unit, shown) => {
	expect(formatSpread(sd, unit)).toBe(shown);
});
