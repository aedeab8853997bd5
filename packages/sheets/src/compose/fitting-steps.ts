import {
	cordSentences,
	fixingGuidance,
	GUIDANCE_GROUND,
	guidanceSentence,
	surfacesOf,
	ZONE_ADVICE,
	ZONE_SOURCE,
} from "@baywright/setout";
import type { Block } from "../paper/flow.ts";
import { table } from "../paper/table.ts";
import { type Entry, entries } from "../paper/words.ts";
import { cautionsAt } from "./cautions-at.ts";
import { tablesOf } from "./fitting-tables.ts";
import type { SheetOf } from "./sheet-of.ts";
import { stripBlocks } from "./strip-figure.ts";

/** The work step by step; steps that there is nothing to do for are left out and the others numbered on. */
export function workBlocks(of: SheetOf): Block[] {
	const { plan, bay } = of;
	const isCeiling = bay.track.mounting === "ceiling";
	const isBent = plan.bows.length + plan.corners.filter(({ sprung, radius }) => !sprung && radius > 0).length > 0;
	let steps = 0;
	const step = (name: string): string => `${++steps}  ${name}`;
	const ticks = (name: string, list: readonly Entry[]): Block => entries(list, { heading: step(name) });
	const tick = (words: string): Entry => ({ sign: "tick", text: words });
	const tables = tablesOf(of);
	const titled = (name: string, heading: string): Block[] =>
		tables.filter((each) => each.name === name).map((each) => table({ ...each, title: step(heading) }));
	return [
		...titled("brackets", `Mark out the brackets on the ${isCeiling ? "ceiling" : "wall"}`),
		ticks("Fix the base brackets", [
			tick(
				"Mark every bracket from one corner and check it from the other, with the tape along the wall face at the height of the track.",
			),
			tick(
				isCeiling
					? "Mark the centre line at its distance from the wall."
					: "Strike the height level all round: by a level, not by the ceiling.",
			),
			...fixingEntries(of),
			...cautionsAt(of, "drill"),
			tick("Fix the base brackets and pull on each before going on."),
		]),
		...plan.pieces.flatMap((piece, i) =>
			stripBlocks(of, piece, i === 0 ? step(`Mark the track: piece ${piece.name}`) : `Piece ${piece.name}`),
		),
		...(isBent
			? [
					...titled("bends", "Bend, with length to spare at both ends"),
					ticks("Offer up", [
						tick(
							"Offer the bent track up to the template and then to the brackets. Where it does not lie on the lines, bend again: nothing is cut yet.",
						),
					]),
				]
			: []),
		...titled("pieces", "Cut"),
		...tables.filter(({ name }) => name === "stock").map(table),
		ticks("Finish and hang", [
			...cautionsAt(of, "cut"),
			tick("Deburr every cut."),
			tick(
				plan.joints.length > 0
					? "Put on the gliders, join the pieces, then put on the end hardware."
					: "Put on the gliders, then the end hardware.",
			),
			...cautionsAt(of, "hang"),
			tick("Hang the track: every bracket must hold it. Run the gliders from end to end."),
			...cordEntries(of),
			...cautionsAt(of, "cords"),
			tick("Hang the curtains, draw them right across and back, and look at every bracket once more."),
		]),
	];
}

/** How to fix into what the brackets are fixed to, and what to do where cables may lie. */
function fixingEntries({ plan }: SheetOf): Entry[] {
	const surfaces = surfacesOf(plan.fixings);
	const holes = plan.fixings.flatMap(({ zones }, i) => (zones.length > 0 ? [i + 1] : []));
	return [
		...surfaces.map((into, i): Entry => {
			const lead = `Into ${fixingGuidance(into).surface === "not known" ? "a wall or ceiling of unknown make" : fixingGuidance(into).surface}`;
			const entry = { sign: "dash", lead, text: guidanceSentence(into) } as const;
			return i === surfaces.length - 1 ? { ...entry, under: GUIDANCE_GROUND } : entry;
		}),
		...(holes.length === 0
			? []
			: [
					{
						sign: "dash",
						lead: `Cables may lie at ${whichBrackets(holes, plan.brackets.length)}`,
						text: ZONE_ADVICE,
						under: ZONE_SOURCE,
					} as const,
				]),
	];
}

function whichBrackets(numbers: readonly number[], all: number): string {
	if (numbers.length === all) return "every bracket";
	return `${numbers.length === 1 ? "bracket" : "brackets"} ${numbers.join(", ")}`;
}

function cordEntries({ plan, about }: SheetOf): Entry[] {
	if (!plan.system.corded) return [];
	const task: Entry = { sign: "tick", text: "Lead the cords; fix the tensioner and draw them taut." };
	if (plan.cords === null) return [task];
	return [{ ...task, under: cordSentences(plan.cords, plan.projections.length, about).join(" ") }];
}
