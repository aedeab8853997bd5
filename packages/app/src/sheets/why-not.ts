import { type BayPlan, describe, type LengthUnit, severityOf } from "@baywright/setout";
import type { SheetName } from "@baywright/sheets";

/** Why a plan has no such sheet; null where that is nothing to tell, because another bay's sheet says it for all. */
export function whyNot(name: SheetName, plan: BayPlan, isFirst: boolean, unit: LengthUnit): string | null {
	if (name === "order" && !isFirst) return null;
	if (plan.chain === null) return "the bay has no walls yet.";
	if (plan.path === null && NEEDS_TRACK.includes(name)) return `no track fits yet. ${refusalOf(plan, unit)}`.trim();
	return REASONS[name];
}

const NEEDS_TRACK: readonly SheetName[] = ["bends", "strips", "order", "hand-over"];

const REASONS: Readonly<Record<SheetName, string>> = {
	survey: "there is nothing to draw it from.",
	fitting: "there is nothing to draw it from.",
	bends: "the track has no bend that is made.",
	strips: "there is nothing to cut.",
	order: "there is nothing to buy.",
	workroom: "no curtains are to be made. Choose them in Curtains.",
	"hand-over": "there is nothing to hand over.",
};

/** What stands in the track's way, first of all. */
function refusalOf({ findings, projections }: BayPlan, unit: LengthUnit): string {
	const refusal = findings.find(({ code }) => severityOf(code) === "refusal");
	return refusal === undefined ? "" : `${describe(refusal, { unit, walls: projections.length }).title}.`;
}
