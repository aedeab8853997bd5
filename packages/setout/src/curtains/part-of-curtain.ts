import type { CurtainSetOut } from "../bay-plan.ts";

/** Which part of a curtain is meant, where it parts in the middle and so is two. */
export function partOfCurtain(
	{ curtain, side }: CurtainSetOut,
	curtains: readonly CurtainSetOut[],
): { readonly part?: "left" | "right" } {
	return curtains.filter((other) => other.curtain === curtain).length > 1 ? { part: side } : {};
}
