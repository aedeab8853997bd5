import { type BayPlan, type CurtainSetOut, curtainName } from "@baywright/setout";
import { figures, table, words } from "../text/table.ts";
import type { Lengths } from "./lengths.ts";
import { section } from "./section.ts";

/** What the curtains take up when open, and the glass that they leave clear. */
export function curtainsText(plan: BayPlan, lengths: Lengths): string[] {
	return [...stackText(plan, lengths), ...makingText(plan, lengths), ...glassText(plan, lengths), ...coveredText(plan)];
}

function stackText({ curtains }: BayPlan, { figure }: Lengths): string[] {
	const stacks = curtains.filter(({ stack }) => stack.to > stack.from);
	if (stacks.length === 0) return [];
	const isNamed = stacks.some(({ curtain }) => curtain !== null);
	const rows = stacks.map((each) => {
		const { side, stack } = each;
		const name = isNamed ? [nameOf(each, curtains)] : [];
		return [...name, side, figure(stack.from), figure(stack.to), figure(stack.to - stack.from)];
	});
	const head = [...(isNamed ? [words("curtain")] : []), words("side"), figures("from"), figures("to")];
	return section("Stack-back, along the track from its finished left end", table([...head, figures("takes up")], rows));
}

/** What the workroom makes; nothing while the job says nothing of curtains. */
function makingText({ curtains }: BayPlan, { figure }: Lengths): string[] {
	const given = curtains.filter(({ curtain }) => curtain !== null);
	if (given.length === 0) return [];
	const rows = given.map((each) => {
		const { side, finishedWidth, flatWidth, gliders, cutting, mass } = each;
		return [
			nameOf(each, curtains),
			side,
			figure(finishedWidth),
			figure(flatWidth),
			String(gliders),
			cutting === null ? "–" : String(cutting.widths),
			cutting === null || cutting.cutDrop === null ? "–" : figure(cutting.cutDrop),
			cutting === null || cutting.metres === null ? "–" : `${cutting.metres.toFixed(2)} m`,
			mass === null ? "–" : `${mass.toFixed(1)} kg`,
		];
	});
	const heads = ["finished", "flat", "gliders", "widths", "cut drop", "cloth", "mass"].map((head) => figures(head));
	return section("Curtains", table([words("curtain"), words("drawn to"), ...heads], rows));
}

/** As the findings call it: "curtain 2", or "left part of curtain 2" where it parts in the middle. */
function nameOf(one: CurtainSetOut, all: readonly CurtainSetOut[]): string {
	const isParted = all.some((other) => other !== one && other.curtain === one.curtain);
	return curtainName(one.curtain ?? 0, isParted ? one.side : undefined).replace(/^the /, "");
}

function glassText({ glass }: BayPlan, { fine, figure }: Lengths): string[] {
	if (glass.openings.length === 0) return section("Glass: no openings given", []);
	const head = `Glass: ${fine(glass.clearOpen)} of ${fine(glass.total)} clear with the curtains open, ${share(glass.lostOpen)} of the light lost; drawn ${share(glass.lostDrawn)}`;
	if (glass.openings.length === 1) return section(head, []);
	const rows = glass.openings.map(({ opening, width, clearOpen, lostOpen }) => [
		String(opening + 1),
		figure(width),
		figure(clearOpen),
		share(lostOpen),
	]);
	return section(head, table([figures("opening"), figures("width"), figures("clear"), figures("light lost")], rows));
}

/** Obstacles that curtains hang before; nothing while the job says nothing of curtains. */
function coveredText({ covered, curtains }: BayPlan): string[] {
	if (covered.length === 0 || curtains.every(({ curtain }) => curtain === null)) return [];
	const rows = covered.map(({ obstacle, open, drawn }) => [String(obstacle + 1), share(open), share(drawn)]);
	return section("Obstacles covered", table([figures("obstacle"), figures("open"), figures("drawn")], rows));
}

const share = (part: number): string => `${Math.round(100 * part)} %`;
