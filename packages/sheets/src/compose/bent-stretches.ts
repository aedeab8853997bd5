import type { Bend, Bow } from "@baywright/geometry";
import type { BayPlan } from "@baywright/setout";
import { isBent } from "./plan-lines.ts";

/** A stretch of track that one template is for. Stations, mm. */
export interface BentStretch {
	readonly bends: readonly (Bend | Bow)[];
	/** Where its first bend begins and its last ends, no further than there is track to bend. */
	readonly from: number;
	readonly to: number;
	/** How far the template goes on along the straight beyond. */
	readonly leadFrom: number;
	readonly leadTo: number;
}

/** Bends with less straight than this between them (mm) are bent to one paper. */
const TOGETHER = 60;

/** Straight drawn beyond a bend, mm: to the bracket beside it and a little more, but so much and no more. */
const LEAST_LEAD = 60;
const GREATEST_LEAD = 170;
const PAST_BRACKET = 12;

export function bentStretches(plan: BayPlan): BentStretch[] {
	const { path, system } = plan;
	if (path === null) return [];
	const leftCut = system.endTakeUp;
	const rightCut = path.length - system.endTakeUp;
	const groups: (Bend | Bow)[][] = [];
	for (const bent of path.segments.filter(isBent)) {
		if (Math.max(bent.start, leftCut) >= Math.min(bent.start + bent.length, rightCut)) continue;
		const last = groups.at(-1)?.at(-1);
		if (last !== undefined && bent.start - (last.start + last.length) < TOGETHER) groups.at(-1)?.push(bent);
		else groups.push([bent]);
	}
	return groups.map((bends) => {
		const from = Math.max((bends[0] as Bend).start, leftCut);
		const last = bends.at(-1) as Bend;
		const to = Math.min(last.start + last.length, rightCut);
		// As far on one side as on the other, so that the same bend gives the same paper wherever it is.
		const lead = Math.max(leadBefore(plan, from), leadAfter(plan, to));
		return { bends, from, to, leadFrom: Math.max(from - lead, 0), leadTo: Math.min(to + lead, path.length) };
	});
}

function leadBefore({ brackets, system }: BayPlan, from: number): number {
	const bracket = brackets.findLast(({ station }) => station <= from + 1e-6);
	return leadTo(bracket === undefined ? 0 : from - bracket.station, system.bracket.width);
}

function leadAfter({ brackets, system }: BayPlan, to: number): number {
	const bracket = brackets.find(({ station }) => station >= to - 1e-6);
	return leadTo(bracket === undefined ? 0 : bracket.station - to, system.bracket.width);
}

const leadTo = (away: number, bracketWidth: number): number => {
	const lead = Math.max(LEAST_LEAD, away + bracketWidth / 2 + PAST_BRACKET);
	return lead > GREATEST_LEAD ? LEAST_LEAD : lead;
};
