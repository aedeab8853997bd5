import type { CurtainSetOut } from "@baywright/setout";

/** "Curtain 2", or "Curtain 2, left part" where it parts in the middle. */
export function curtainTitle(curtain: CurtainSetOut, all: readonly CurtainSetOut[]): string {
	const name = `Curtain ${(curtain.curtain ?? 0) + 1}`;
	const isParted = all.some((other) => other !== curtain && other.curtain === curtain.curtain);
	return isParted ? `${name}, ${curtain.side} part` : name;
}

/** Those that the job names, and so the workroom makes. */
export const curtainsToMake = (curtains: readonly CurtainSetOut[]): readonly CurtainSetOut[] =>
	curtains.filter(({ curtain }) => curtain !== null);
